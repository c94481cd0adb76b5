"""Hands do one thing at a time, in the odds: chances that can be counted by hand."""

import itertools
from typing import Any

import msgspec
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from board.odds.draw import Minutes
from board.odds.many import odds
from board.odds.simulate import Evenings
from board.sheet.run_sheet import Lasts, RunSheet
from tests.conftest import at, follows, slot
from tests.evening.one_cook import BOTH, END, LOOK_IN, SAUCES, Brief, minute_by_minute, one_cook
from tests.examples import times

VARIES = Lasts(SAUCES.start, SAUCES.start, SAUCES.stop - 1)


def each_once(lasts: Lasts, rng: np.random.Generator, evenings: int) -> Minutes:
    """Twelve evenings, a sauce of each length in one."""
    return np.array(SAUCES, dtype=np.float64)


@pytest.mark.parametrize(("briefs", "within"), [(END, 6 / 12), (LOOK_IN, 8 / 12), (BOTH, 6 / 12), ((), 10 / 12)])
def test_hands_at_the_roast_are_not_at_the_sauce(briefs: tuple[Brief, ...], within: float) -> None:
    """Served when the sauce is done: as planned at 18:30, at most five minutes late till 18:35, so 21 minutes after
    the sauce's 18:14. With a roast that wants nobody a sauce of 12 to 21 of 12 to 23 minutes is in time: 10 of 12.

    Four minutes at the roast's end, 18:26-18:30, leave 21 - 4 = 17 for the sauce: 12 to 17, 6 of 12. A look-in of two,
    18:26-18:28, leaves 19: 8 of 12. That and two at the end, 18:28-18:30, leave 17 again.
    """
    by_hand = sum(minute_by_minute(sauce, *briefs) <= 5 for sauce in SAUCES) / len(SAUCES)

    found = odds(one_cook(*briefs, sauce=VARIES), 12, draw=each_once)

    assert found.courses[0].within == by_hand == within


@pytest.mark.parametrize("briefs", [END, LOOK_IN, BOTH])
def test_each_evening_is_as_late_as_minute_by_minute(briefs: tuple[Brief, ...]) -> None:
    evenings = Evenings(one_cook(*briefs, sauce=VARIES), each_once)

    played = evenings.play(evenings.draw(np.random.default_rng(1), len(SAUCES)))

    late = evenings.late(played, len(SAUCES))["Roast"]
    assert late.tolist() == [minute_by_minute(sauce, *briefs) for sauce in SAUCES]


@settings(max_examples=times(15), deadline=None)
@given(seed=st.integers(0, 1000))
def test_nobodys_hands_are_at_two_things_in_any_evening(lantern_sheet: RunSheet, seed: int) -> None:
    """Looks and ends follow one another; work follows work, and takes longer by what comes in the midst of it."""
    evenings = Evenings(lantern_sheet, lambda lasts, rng, n: rng.uniform(lasts.low, lasts.high + 30, n))
    count = 40

    played = evenings.play(evenings.draw(np.random.default_rng(seed), count))

    for hands in played.hands.values():
        for evening in range(count):
            briefs, works = [], []
            for each in hands.taken:
                begin, over = (np.broadcast_to(side, count)[evening] for side in (each.begin, each.over))
                if over > begin:
                    (works if each.length is None else briefs).append((begin, over, each.node))
            assert not [pair for one in (briefs, works) for pair in itertools.combinations(one, 2) if meet(*pair)]
            for begin, over, (id_, _) in works:
                within = sum(end - start for start, end, _ in briefs if meet((start, end), (begin, over)))
                assert not [b for b in briefs if b[0] < begin < b[1] - 1e-9]
                wants = evenings.rule.wanted[id_]
                if wants.whole and not evenings.rule.walk:
                    lasts = np.broadcast_to(played.end[id_] - played.start[id_] - played.longer[id_], count)[evening]
                    assert over - begin == pytest.approx(lasts + within)


def meet(one: tuple[Any, ...], other: tuple[Any, ...]) -> bool:
    return bool(one[0] < other[1] - 1e-9 and other[0] < one[1] - 1e-9)


def test_what_kept_the_hands_is_to_blame() -> None:
    """The sauce, 18:14-18:26, ran nine minutes over, four of which the roast's end took; the washing up waited for the
    same hands, and the course for it."""
    sheet = one_cook(*END, sauce=VARIES)
    wash = slot("wash", "18:30", "18:32", lasts=Lasts(2, 2, 2))
    serve = msgspec.structs.replace(sheet.slots[-1], start=at("18:32"), waits=follows("wash"))
    sheet = msgspec.structs.replace(sheet, slots=(*sheet.slots[:-1], wash, serve))

    found = odds(sheet, 1, draw=lambda lasts, rng, n: np.array([21.0]))

    assert [(each.cause.id, each.share) for each in found.blame] == [("sauce", 1.0)]
