"""Yolks and whites come out of the eggs that are bought: the yolk and the white of one egg are both used. Pure."""

from collections.abc import Iterator, Sequence

from board.facts.called import EGG_PARTS
from board.facts.units import grams
from board.facts.weights import piece_weight
from board.shopping.needs import Need

EGG = "egg"

Figures = tuple[float | None, float | None, str, str]  # low, high, measure ("" for pieces), food as written


def bought_as(need: Need) -> str:
    """The key of what is bought for a need: `egg` for so many yolks or whites, counted or weighed."""
    return EGG if _a_piece(need) is not None else need.key


def figures_of(needs: Sequence[Need], *, whole: bool) -> Iterator[Figures]:
    """The amounts of one item's needs; of yolks and whites as many eggs as the more numerous of the two asks for.
    `whole`: counted things are whole."""
    pieces: dict[str, tuple[float, float]] = {}
    for need in needs:
        low, high = need.scaled.to_have if whole else (need.scaled.low, need.scaled.high)
        each = _a_piece(need)
        if each is None or low is None or high is None:
            yield low, high, need.line.measure, need.line.food
            continue
        part = EGG_PARTS[need.key]
        so_far = pieces.get(part, (0.0, 0.0))
        pieces[part] = (so_far[0] + low / each, so_far[1] + high / each)
    if pieces:
        yield max(low for low, _ in pieces.values()), max(high for _, high in pieces.values()), "", EGG


def _a_piece(need: Need) -> float | None:
    """How much of a need's measure one yolk or white is; None for everything else."""
    part = EGG_PARTS.get(need.key)
    if part is None or need.line.low is None:
        return None
    if not need.line.measure:
        return 1.0
    weight, unit = piece_weight(part), grams(1, need.line.measure)
    return weight.grams / unit if weight is not None and unit else None
