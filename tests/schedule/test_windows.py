"""When a piece of work may start so that a stretch of it lies within hours; and who hands on what both need."""

import pytest

from board.schedule.dependencies import Spell, handed_on
from board.schedule.windows import starts_within

HOURS = [(100, 160)]


@pytest.mark.parametrize(
    ("offset", "length", "first", "last"),
    [(0, 60, 100, 100), (0, 59, 100, 101), (0, 1, 100, 159), (20, 10, 80, 130), (-15, 15, 115, 160)],
)
def test_a_stretch_lies_within_hours_from_its_first_start_to_its_last(
    offset: int, length: int, first: int, last: int
) -> None:
    assert starts_within(HOURS, offset, length) == [(first, last + 1)]


def test_a_stretch_longer_than_all_hours_lies_nowhere() -> None:
    assert starts_within(HOURS, 0, 61) == []


@pytest.mark.parametrize(("amount", "givers"), [(1, []), (2, [0]), (3, [0])])
def test_what_was_free_longest_is_taken_first_and_what_is_left_of_it_stays(amount: int, givers: list[int]) -> None:
    """Of three rings the first pot takes two; one of those is handed on only once the free one is taken."""
    spells = [Spell(0, 0, 10, 2, 0, "end"), Spell(1, 10, 20, amount, 1, "end")]

    assert [giver.job for giver, _ in handed_on(spells, 3)] == givers
