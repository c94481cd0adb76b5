"""When a piece of work may start so that a stretch of it lies within hours."""

from dataclasses import replace
from typing import Any

import pytest

from board.schedule.problem import Hand, Job, Part
from board.schedule.windows import allowed_starts, starts_within
from tests.schedule.by_hand import ALWAYS, job, kitchen

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


DAY = ((100, 160),)


def host(free: tuple[tuple[int, int], ...] = ALWAYS, home: tuple[tuple[int, int], ...] = ALWAYS) -> Hand:
    return Hand("host", free, home)


def starts(made: Job, hand: Hand | None = None, *, warm_up: bool = True, **kitchens: Any) -> list[tuple[int, int]]:
    """First and last start of each stretch."""
    found = allowed_starts(kitchen(made, **kitchens), made, made.ways[0], hand, warm_up=warm_up)
    return [(first, beyond - 1) for first, beyond in found]


def test_what_needs_nobody_starts_at_any_minute_of_the_day() -> None:
    assert starts(job("chill", 20, ()), opens=5) == [(5, 1000)]


def test_every_hands_on_stretch_lies_within_hours_and_what_is_between_need_not() -> None:
    """Put on for 5 minutes, taken off for 5 an hour later; hours from 100 to 160 and from 170 to 230."""
    soup = job("soup", 60, (Part(0, 5, "start"), Part(55, 5, "end")))

    assert starts(soup, host(((100, 160), (170, 230)))) == [(100, 100), (115, 155), (170, 170)]


def test_nothing_is_lit_while_nobody_is_at_home() -> None:
    simmer = job("simmer", 50, (), hot=True)
    away = (Hand("host", ALWAYS, DAY), Hand("Ines", ALWAYS, ((155, 200),)))

    assert starts(simmer, hands=away[:1]) == [(100, 110)]
    assert starts(simmer, hands=away) == [(100, 150)]  # one comes home before the other goes out
    assert starts(job("chill", 50, ()), hands=away[:1]) == [(0, 1000)]


def test_nor_while_the_oven_heats_for_it() -> None:
    bake, home = job("bake", 20, (), hot=True, warm_up=15), (host(home=DAY),)

    assert starts(bake, hands=home) == [(115, 140)]
    assert starts(bake, hands=home, warm_up=False) == [(100, 140)]


@pytest.mark.parametrize(("minutes", "found"), [(10, [(40, 60)]), (30, [(40, 40)]), (31, [])])
def test_work_given_a_time_begins_and_ends_within_it(minutes: int, found: list[tuple[int, int]]) -> None:
    assert starts(replace(job("glaze", minutes, ()), window=(40, 70))) == found
