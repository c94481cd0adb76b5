"""The oven's dial over time: every setting suits all that is inside, and the oven has its minutes to come to it."""

from datetime import UTC, datetime

from hypothesis import given
from hypothesis import settings as runs
from hypothesis import strategies as st

from board.facts.heat import minutes_between
from board.plan.model.kitchen import Oven
from board.schedule.formulate import oven_rates
from board.schedule.oven_dial import Change, InOven, changes, settings
from board.schedule.problem import OvenFacts, OvenUse, Problem

OVEN = OvenFacts("oven", 9, oven_rates(Oven()))
MIDNIGHT = datetime(2026, 6, 6, tzinfo=UTC)
KITCHEN = Problem(MIDNIGHT, 10_000, (), (), (), (OVEN,), (), ())


def spell(job: int, start: int, end: int, low: int, want: int, high: int) -> InOven:
    return InOven(job, start, end, OvenUse(0, 1, low, want, high))


def suits_all(spells: list[InOven]) -> bool:
    return all(
        s.use.low <= each.celsius <= s.use.high for each in settings(spells, OVEN.change_minutes) for s in each.spells
    )


def test_what_comes_in_later_does_not_push_the_dial_past_what_is_inside() -> None:
    """A bake that takes 105 to 125 °C, beside it one up to 105, and after that one a result kept at 110 at least."""
    bake, gentle, kept = spell(0, 0, 60, 105, 120, 125), spell(1, 35, 55, 75, 80, 105), spell(2, 60, 90, 110, 120, 130)

    assert [(each.start, each.celsius) for each in settings([bake, gentle, kept], OVEN.change_minutes)] == [
        (0, 120), (35, 105), (55, 105), (60, 120),
    ]  # fmt: skip


@runs(max_examples=500, deadline=None)
@given(st.lists(st.tuples(st.integers(0, 12), st.integers(1, 6), st.integers(0, 8), st.integers(0, 4)), max_size=6))
def test_whatever_may_share_the_oven_is_suited(drawn: list[tuple[int, int, int, int]]) -> None:
    """Drawn: start, length, the middle of the range, half its width. What shares a moment must share a heat."""
    spells: list[InOven] = []
    for n, (start, length, middle, width) in enumerate(drawn):
        new = spell(n, start, start + length, middle - width, middle, middle + width)
        inside = [s for s in spells if s.start < new.end and new.start < s.end]
        if all(s.use.low <= new.use.high and new.use.low <= s.use.high for s in inside):
            spells.append(new)

    assert suits_all(spells)


@runs(max_examples=200, deadline=None)
@given(st.lists(st.tuples(st.integers(0, 90), st.integers(1, 60), st.integers(4, 9), st.integers(0, 4)), max_size=7))
def test_the_oven_has_its_minutes_for_every_turn(drawn: list[tuple[int, int, int, int]]) -> None:
    """Drawn: start, length, the middle of the range in 20 °C, half its width in 5 °C. What no one setting suits has the
    minutes between that the oven needs; what one setting suits may follow on at once."""
    spells: list[InOven] = []
    for n, (start, length, middle, width) in enumerate(drawn):
        new = spell(n, start, start + length, 20 * middle - 5 * width, 20 * middle, 20 * middle + 5 * width)
        if all(_there_is_time(one, new) for one in spells):
            spells.append(new)
    dial = settings(sorted(spells, key=lambda s: (s.start, s.end, s.job)), OVEN.change_minutes)

    assert suits_all(spells)
    for turn in changes(KITCHEN, 0, dial):
        if turn.before is not None:
            assert turn.end - turn.start == OVEN.change_minutes(turn.before, turn.celsius)
            for each in (s for s in spells if s.start < turn.end and turn.start < s.end):
                assert each.use.low <= turn.celsius <= each.use.high or _is_out_in_time(turn, each)


def _there_is_time(one: InOven, other: InOven) -> bool:
    first, second = sorted((one, other), key=lambda s: s.start)
    change = OVEN.change_minutes(first.use.want, second.use.want)
    return first.use.meets(second.use) or first.end + change <= second.start


def _is_out_in_time(turn: Change, each: InOven) -> bool:
    """Whether it leaves before the oven gets too hot or too cold for it."""
    assert turn.before is not None
    bound = each.use.high if turn.celsius > turn.before else each.use.low
    return each.end <= turn.end and each.end - turn.start <= minutes_between(OVEN.rates, turn.before, bound)
