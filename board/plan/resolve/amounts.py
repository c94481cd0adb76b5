"""Adds up amounts of one food: converted to one kind where possible, otherwise side by side. Pure.

A kind is what amounts add up in: `g`, `ml`, `each` (pieces), or a unit that only counts itself (`bunch`).
"""

from collections.abc import Iterable
from dataclasses import dataclass

from board.facts.units import EXACT, ROUNDED, Standard, cups, grams, volume
from board.facts.weights import cup_weight, piece_weight

GRAMS, MILLILITRES, EACH = "g", "ml", "each"


@dataclass(frozen=True, slots=True)
class Amount:
    """Low and high of a kind; both None: some, without a figure (`to taste` is then the kind)."""

    kind: str
    low: float | None
    high: float | None

    def __add__(self, other: "Amount") -> "Amount":
        """Raises ValueError if the kinds differ, or only one has a figure."""
        if self.kind != other.kind or (self.low is None) != (other.low is None):
            raise ValueError(f"{self} and {other} are not added up")
        if self.low is None or self.high is None or other.low is None or other.high is None:
            return self
        return Amount(self.kind, self.low + other.low, self.high + other.high)


def standard_of(units: str | None) -> Standard:
    """The plan's cups and spoons: exact for US measures, otherwise the rounded table."""
    return EXACT if units == "us" else ROUNDED


@dataclass(frozen=True, slots=True)
class Measure:
    """Converts amounts of one food to as few kinds as possible, by one standard of cups and spoons."""

    food: str
    standard: Standard
    by_weight: bool  # weigh volumes
    by_piece: bool  # count weights as pieces

    def amount(self, low: float | None, high: float | None, unit: str) -> Amount:
        """`unit` as in a plan; "" for pieces."""
        if low is None or high is None:
            return Amount(unit or EACH, None, None)
        kind, factor = self._kind(unit)
        return Amount(kind, low * factor, high * factor)

    def _kind(self, unit: str) -> tuple[str, float]:
        kind, factor = GRAMS, grams(1, unit)
        if factor is None:
            kind, factor = self._of_volume(unit)
        if factor is None:
            counted = piece_weight(self.food, unit) if unit and self.by_weight else None
            kind, factor = (GRAMS, counted.grams) if counted else (unit or EACH, 1.0)
        piece = piece_weight(self.food)
        if self.by_piece and kind == GRAMS and piece is not None:
            kind, factor = EACH, factor / piece.grams
        return kind, factor

    def _of_volume(self, unit: str) -> tuple[str, float | None]:
        held, weight = volume(1, unit, self.standard), cup_weight(self.food)
        of_cup = cups(1, unit, self.standard)
        if self.by_weight and weight is not None and of_cup is not None:
            return GRAMS, of_cup * weight.grams
        return MILLILITRES, held.millilitres if held is not None else None


def measure_for(food: str, units: Iterable[str], standard: Standard) -> Measure:
    """The measure that joins these units of a food. Volumes become weights only beside weights, weights become pieces
    only beside pieces, and only if a table has the food's weight."""
    units = set(units)
    weighed = any(grams(1, unit) is not None for unit in units)
    poured = any(cups(1, unit, standard) is not None for unit in units)
    counted = "" in units and piece_weight(food) is not None
    by_weight = (weighed or counted) and (poured or any(piece_weight(food, unit) for unit in units if unit))
    return Measure(food, standard, by_weight and (weighed or cup_weight(food) is not None), counted)


def total(amounts: Iterable[Amount]) -> tuple[Amount, ...]:
    """One amount per kind, in order of first appearance; what has no figure (`a bunch`) stands apart from what has."""
    found: dict[tuple[str, bool], Amount] = {}
    for amount in amounts:
        key = amount.kind, amount.low is None
        found[key] = found[key] + amount if key in found else amount
    return tuple(found.values())
