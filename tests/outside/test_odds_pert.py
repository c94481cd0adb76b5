"""The odds against the published three-point estimate, a textbook network, and enumeration of all outcomes.

Malcolm, Roseboom, Clark and Fazar, Operations Research 7(5), 1959: mean (a + 4m + b)/6, variance ((b − a)/6)²; along
a path both add up. Worked example: Taylor, *Introduction to Management Science*, ch. 8, solved problem: seven
activities, path 1–3–5–7, expected 24 days, P(28 days or fewer) = 0.9633 by the normal distribution.
"""

import itertools
import math
from collections.abc import Mapping, Sequence
from fractions import Fraction

import networkx as nx
import numpy as np
import pytest

from board.odds.draw import Minutes, shape, three_point
from board.odds.many import odds
from board.odds.simulate import Evenings
from board.sheet.run_sheet import Lasts, RunSheet
from tests.odds.little import Piece, fixed, sheet_of

EVENINGS = 200_000

# Activity: a, m, b, and mean and variance by the formulae as the book rounds them. Read.
TABLE = {
    1: (5, 8, 17, 9, 4),
    2: (7, 10, 13, 10, 1),
    3: (3, 5, 7, 5, 4 / 9),
    4: (1, 3, 5, 3, 4 / 9),
    5: (4, 6, 8, 6, 4 / 9),
    6: (3, 3, 3, 3, 0),
    7: (3, 4, 5, 4, 1 / 9),
}
CRITICAL = (1, 3, 5, 7)
EXPECTED, WITHIN_28 = 24, 0.9633


@pytest.mark.parametrize("lasts", [Lasts(a, m, b) for a, m, b, _, _ in TABLE.values() if a < b]
                         + [Lasts(10, 10, 40), Lasts(10, 40, 40), Lasts(0, 1, 1)])  # fmt: skip
def test_the_beta_has_both_moments_exactly(lasts: Lasts) -> None:
    """Moments of a beta (any handbook): mean α/(α + β), variance αβ/((α + β)²(α + β + 1)), on [0, 1]."""
    alpha, beta = shape(lasts)
    width, total = lasts.high - lasts.low, alpha + beta

    assert alpha > 0
    assert beta > 0
    assert lasts.low + width * alpha / total == pytest.approx((lasts.low + 4 * lasts.likely + lasts.high) / 6)
    variance = width**2 * alpha * beta / (total**2 * (total + 1))
    assert variance == pytest.approx(((lasts.high - lasts.low) / 6) ** 2)


@pytest.mark.parametrize("activity", [n for n, row in TABLE.items() if row[0] < row[2]])
def test_what_is_drawn_has_the_tables_mean_and_variance(activity: int) -> None:
    a, m, b, mean, variance = TABLE[activity]

    drawn = three_point(Lasts(a, m, b), np.random.default_rng(activity), EVENINGS)

    assert a <= drawn.min()
    assert drawn.max() <= b
    assert drawn.mean() == pytest.approx(mean, abs=5 * math.sqrt(variance / EVENINGS))
    assert drawn.var() == pytest.approx(variance, rel=0.02)


def hurried(lasting: Sequence[Lasts]) -> RunSheet:
    """A chain planned as if each took its shortest time, so that none ever waits for the clock."""
    pieces, start, before = {}, 0, ()
    for number, lasts in enumerate(lasting):
        pieces[f"step {number}"] = Piece(start, lasts, before)
        start, before = start + lasts.low, (f"step {number}",)
    pieces["serve"] = Piece(start, fixed(0), before)
    return sheet_of(pieces, wanted=28 - 5)


def test_a_chain_is_as_long_as_the_book_says() -> None:
    """Wanted 5 before 28, so that out within 5 min is out by 28. The book's 0.9633 is the normal distribution's, which
    is 0.011 above the sum of these four skewed lengths (the four densities, convolved below, give 0.952)."""
    chain = [Lasts(*TABLE[n][:3]) for n in CRITICAL]
    evenings = Evenings(sheet := hurried(chain), three_point)
    drawn = evenings.draw(np.random.default_rng(1), EVENINGS)

    out = evenings.late(evenings.play(drawn), EVENINGS)["Course"] + 23
    chance = odds(sheet, 100_000, 2).courses[0].within

    variance = sum(TABLE[n][4] for n in CRITICAL)
    assert out.mean() == pytest.approx(EXPECTED, abs=5 * math.sqrt(variance / EVENINGS))
    assert out.var() == pytest.approx(variance, rel=0.02)
    assert chance == pytest.approx(WITHIN_28, abs=0.015)
    assert chance == pytest.approx(summed_within(chain, 28), abs=0.003)


def summed_within(chain: Sequence[Lasts], most: float) -> float:
    """P(sum ≤ most): each beta's mass put into bins of 1/200 min from its density, and the masses convolved."""
    step = 1 / 200
    total, low = np.array([1.0]), 0.0
    for lasts in chain:
        alpha, beta = shape(lasts)
        width = lasts.high - lasts.low
        x = (np.arange(width / step) + 0.5) * step / width
        mass = x ** (alpha - 1) * (1 - x) ** (beta - 1)
        total, low = np.convolve(total, mass / mass.sum()), low + lasts.low + step / 2
    return float(total[: round((most - low) / step) + 1].sum())


# The critical-path network of the same chapter, arcs node–node, with two lengths each, equally likely.
ARCS = {
    "1-2": (7, 12),
    "1-3": (10, 11),
    "2-4": (6, 9),
    "3-4": (5, 9),
    "3-5": (4, 13),
    "4-5": (3, 6),
    "5-6": (2, 5),
}


def corners(count: int) -> "Corners":
    return Corners(list(itertools.product((False, True), repeat=count)))


class Corners:
    """Draws low or high: the n-th thing drawn takes, over the evenings, the n-th place of all outcomes."""

    def __init__(self, outcomes: list[tuple[bool, ...]]) -> None:
        self.outcomes = outcomes
        self.drawn = 0

    def __call__(self, lasts: Lasts, rng: np.random.Generator, evenings: int) -> Minutes:
        high = [outcome[self.drawn] for outcome in self.outcomes]
        self.drawn += 1
        return np.array([lasts.high if is_high else lasts.low for is_high in high], dtype=np.float64)


EARLIEST = {"1-2": 0, "1-3": 0, "2-4": 7, "3-4": 10, "3-5": 10, "4-5": 15, "5-6": 18}  # the table's ES
LENGTH = 20


def before(arc: str) -> list[str]:
    return [other for other in ARCS if other.split("-")[1] == arc.split("-")[0]]


def network() -> RunSheet:
    """Planned with the shorter lengths, as the textbook table has it."""
    pieces = {arc: Piece(EARLIEST[arc], Lasts(short, short, long), before(arc)) for arc, (short, long) in ARCS.items()}
    return sheet_of({**pieces, "serve": Piece(LENGTH, fixed(0), ["5-6"])}, wanted=LENGTH)


def longest(lengths: Mapping[str, int]) -> int:
    """Oracle: networkx's longest path."""
    graph = nx.DiGraph()
    graph.add_edges_from((*arc.split("-"), {"weight": minutes}) for arc, minutes in lengths.items())
    return int(nx.dag_longest_path_length(graph))


def test_every_outcome_of_the_network_is_as_long_as_its_longest_path() -> None:
    outcomes = list(itertools.product((False, True), repeat=len(ARCS)))
    lengths = [
        longest({arc: ARCS[arc][is_high] for arc, is_high in zip(ARCS, outcome, strict=True)}) for outcome in outcomes
    ]

    course = odds(network(), len(outcomes), draw=corners(len(ARCS))).courses[0]

    assert course.within == Fraction(sum(length <= 25 for length in lengths), len(lengths))
    assert course.spread == {late: [n - 20 for n in lengths].count(late) for late in {n - 20 for n in lengths}}
    assert course.mean_late == sum(max(0, length - 20) for length in lengths) / len(lengths)
    ordered = sorted(lengths)
    for share, when in course.by.items():
        # The smallest length that at least this share of the outcomes does not exceed.
        wanted = ordered[math.ceil(Fraction(str(share)) * len(ordered)) - 1]
        assert (when - course.wanted).total_seconds() / 60 == wanted - 20


def test_a_minute_less_on_an_arc_brings_what_the_enumeration_says() -> None:
    outcomes = list(itertools.product((False, True), repeat=len(ARCS)))

    found = odds(network(), len(outcomes), draw=corners(len(ARCS)))

    for each in found.help:
        more, saved = 0, 0
        for outcome in outcomes:
            lengths = {arc: ARCS[arc][is_high] for arc, is_high in zip(ARCS, outcome, strict=True)}
            usual = released(lengths)
            sooner = released({**lengths, each.cause.id: lengths[each.cause.id] - 1})
            more += (sooner <= 25) - (usual <= 25)
            saved += usual - sooner
        assert each.gain["Course"] == more / len(outcomes), each.cause.id
        assert each.saved["Course"] == pytest.approx(saved / len(outcomes)), each.cause.id


def released(lengths: Mapping[str, int]) -> int:
    """Oracle: networkx's longest path, where nothing begins before its planned time, the serving neither."""
    graph = nx.DiGraph()
    graph.add_edges_from(("clock", arc, {"weight": minute}) for arc, minute in EARLIEST.items())
    graph.add_edges_from((first, arc, {"weight": lengths[first]}) for arc in ARCS for first in before(arc))
    graph.add_edge("5-6", "serve", weight=lengths["5-6"])
    graph.add_edge("clock", "serve", weight=LENGTH)
    return int(nx.dag_longest_path_length(graph))
