"""Amounts as read in a shop and measured by hand: suitable units, rounded beside exact figures. Pure.

A rounded figure is for people only; nothing is calculated from it.
"""

import math
from collections.abc import Collection

from board.base.plain import one_line
from board.facts.units import CUPS, GRAMS, METRIC_MILLILITRES, OF_MANY_SIZES
from board.plan.resolve.amounts import EACH, Amount, measure_for, standard_of
from board.plan.resolve.amounts import GRAMS as BY_GRAMS
from board.plan.resolve.amounts import MILLILITRES as BY_MILLILITRES
from board.sheet.run_sheet import Slot

TO_TASTE = "to taste"
_FRACTIONS = {0.25: "¼", 1 / 3: "⅓", 0.5: "½", 2 / 3: "⅔", 0.75: "¾"}
_MANY = {"bunch": "bunches", "pinch": "pinches", "fl oz": "fl oz", "tbsp": "tbsp", "tsp": "tsp"}
_SYMBOLS = {*GRAMS, *METRIC_MILLILITRES}
# Steps a hand can weigh or pour, by display unit; g and ml steps depend on the amount.
_STEPS = {"kg": 0.05, "l": 0.05, "cl": 1.0, "oz": 0.5, "lb": 0.25, "cup": 0.25, "fl oz": 0.5, "tbsp": 0.5, "tsp": 0.25}


def amount_words(amount: Amount, units: str | None, written: Collection[str]) -> str:
    """`1.2 kg`, `2–3 tbsp`, `4`, `to taste`. `units`: the plan's; `written`: the host's units for this food."""
    if amount.low is None or amount.high is None:
        return amount.kind
    unit, factor = _unit_for(amount.kind, amount.high, units, written)
    low, high = amount.low / factor, amount.high / factor
    figures = _figure(high, unit) if math.isclose(low, high) else f"{_figure(low, unit)}–{_figure(high, unit)}"
    return f"{figures} {_unit_word(unit, high)}".strip()


def by_hand_words(kind: str, amount: float, units: str | None, written: Collection[str]) -> tuple[str, str]:
    """The amount rounded up to a hand measure, and the exact one, or "" if they are equal."""
    unit, factor = _unit_for(kind, amount, units, written)
    exact = amount / factor
    rounded = hand_round(exact, unit)
    shown = f"{_figure(rounded, unit)} {_unit_word(unit, rounded)}".strip()
    same = math.isclose(rounded, exact, rel_tol=1e-6)
    return shown, "" if same else f"{_figure(exact, unit)} {_unit_word(unit, exact)}".strip()


def sizes_taken(food: str, amount: Amount, units: str | None, written: Collection[str]) -> list[tuple[str, str]]:
    """Of each unit of many sizes behind an amount that is shown by the metric measure, the size that was taken: `pint`,
    `568.3 ml`."""
    if amount.high is None or _unit_for(amount.kind, amount.high, units, written)[0] not in ("g", "kg", "ml", "l"):
        return []
    sums = measure_for(food, written, standard_of(units))
    return [(unit, amount_words(sums.amount(1, 1, unit), units, ())) for unit in OF_MANY_SIZES if unit in written]


def amounts_of(slot: Slot, units: str | None) -> tuple[str, ...]:
    """What goes in as a slot begins, each a safe line."""
    return tuple(one_line(at_hand(each.low, each.high, each.measure, each.food, units), 120) for each in slot.goes_in)


def at_hand(low: float | None, high: float | None, measure: str, food: str, units: str | None) -> str:
    """`190 g butter`, `2–3 tbsp oil`, `1⅓ onions`, `salt`: what is weighed and counted out at the worktop.
    Weights and volumes are rounded up for the hand, pieces are as exact as they stand. Not yet safe to show."""
    if low is None or high is None:
        return food if measure == TO_TASTE else f"{measure} {food}".strip()
    sums = measure_for(food, {measure}, standard_of(units))
    amount = sums.amount(low, high, measure)
    if low != high or amount.kind not in (BY_GRAMS, BY_MILLILITRES) or amount.high is None:
        return f"{amount_words(amount, units, {measure})} {food}"
    return f"{by_hand_words(amount.kind, amount.high, units, {measure})[0]} {food}"


def hand_round(amount: float, unit: str) -> float:
    """Rounded up to the unit's step, ignoring float error. Counted things: the next whole number."""
    step = _STEPS.get(unit, 1.0)
    if unit in ("g", "ml"):
        step = next((s for below, s in ((20, 1.0), (200, 5.0), (2000, 10.0)) if amount < below), 50.0)
    return math.ceil(amount / step - 1e-6) * step


def _unit_for(kind: str, size: float, units: str | None, written: Collection[str]) -> tuple[str, float]:
    """The display unit for a kind, and how many of the kind it holds."""
    if kind not in (BY_GRAMS, BY_MILLILITRES):
        return ("" if kind == EACH else kind), 1.0
    size *= 1 + 1e-9  # three teaspoons are a tablespoon, whatever floats make of them
    if kind == BY_GRAMS:
        known = dict(GRAMS)
        metric, us = ("kg" if size >= 1000 else "g"), ("lb" if size >= GRAMS["lb"] else "oz")
    else:
        cup = standard_of(units).cup_millilitres
        known = {**METRIC_MILLILITRES, **{name: cup * share for name, share in CUPS.items()}}
        metric = "l" if size >= 1000 else "ml"
        us = "cup" if size >= cup / 4 else "tbsp" if size >= known["tbsp"] else "tsp"
    alone = next(iter(set(written))) if len(set(written)) == 1 else None
    if units is None and alone in known:
        unit = metric if alone in ("g", "kg", "ml", "l") else alone
    elif units == "metric" and alone in ("tbsp", "tsp"):
        unit = alone  # every kitchen measures in spoons
    else:
        unit = us if units == "us" else metric
    return unit, known[unit]


def _figure(value: float, unit: str) -> str:
    """Up to four digits; fractions if easier to read than decimals."""
    whole = math.floor(value + 1e-9)
    if unit not in _SYMBOLS:
        for share, sign in _FRACTIONS.items():
            if abs(value - whole - share) < 1e-6:
                return f"{whole or ''}{sign}"
    return f"{value:.4g}" if value < 10_000 else f"{value:.0f}"


def _unit_word(unit: str, amount: float) -> str:
    if not unit or unit.split()[-1] in _SYMBOLS or amount <= 1:
        return unit
    return _MANY.get(unit, f"{unit}s")
