"""The oven's dial over time: every setting suits all that is inside while it stands."""

from hypothesis import given
from hypothesis import settings as runs
from hypothesis import strategies as st

from board.schedule.oven_dial import InOven, settings
from board.schedule.problem import OvenUse


def spell(job: int, start: int, end: int, low: int, want: int, high: int) -> InOven:
    return InOven(job, start, end, OvenUse(0, 1, low, want, high))


def suits_all(spells: list[InOven]) -> bool:
    return all(s.use.low <= each.celsius <= s.use.high for each in settings(spells) for s in each.spells)


def test_what_comes_in_later_does_not_push_the_dial_past_what_is_inside() -> None:
    """A bake that takes 105 to 125 °C, beside it one up to 105, and after that one a result kept at 110 at least."""
    bake, gentle, kept = spell(0, 0, 60, 105, 120, 125), spell(1, 35, 55, 75, 80, 105), spell(2, 60, 90, 110, 120, 130)

    assert [(each.start, each.celsius) for each in settings([bake, gentle, kept])] == [
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
