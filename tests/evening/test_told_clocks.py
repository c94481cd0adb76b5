"""Which of the clocks are told of, and which leftovers are asked for: by hand, each just before and just at its limit.

Two hours out is the usual limit (USDA FSIS, "Danger Zone", from memory); how long before and after it the board speaks
is ours.
"""

from datetime import datetime, timedelta
from typing import Any

import pytest

from board.evening.clocks import (
    LeftOver,
    LiveClock,
    clock_of,
    is_near,
    left_over,
    next_to_put_away,
    stood_too_long,
    told_of,
    warn_clocks,
)
from board.evening.events import ClockWarned
from tests.conftest import Host, at

NOW = at("20:00")


def clock(until: str, where: str = "kitchen", **changes: Any) -> LiveClock:
    """A dish's two hours; out for as long as they then have run."""
    out = 120 - (at(until) - NOW) / timedelta(minutes=1)
    usual = {"dish": "Custard", "course": "Sweet", "limit_minutes": 120, "running": True, "job": False}
    return LiveClock(out_minutes=out, until=at(until), where=where, **{**usual, **changes})  # type: ignore[arg-type]


@pytest.mark.parametrize(("until", "near"), [("20:19", True), ("20:20", True), ("20:21", False)])
def test_a_limit_is_near_from_twenty_minutes_before(until: str, near: bool) -> None:
    assert is_near(at(until), NOW) == near


@pytest.mark.parametrize(("until", "over"), [("20:01", False), ("20:00", True), ("19:59", True)])
def test_a_clock_is_over_at_its_limit(until: str, over: bool) -> None:
    assert clock(until).over == over


@pytest.mark.parametrize(
    ("found", "told"),
    [
        (clock("21:00"), True),
        (clock("21:00", running=False), False),
        (clock("19:59", running=False), True),
        (clock("12:00", running=False), True),  # in the kitchen it may still be served: told for good
        (clock("19:31", "table"), True),
        (clock("19:30", "table"), False),
        (clock("21:00", "left"), False),
        (clock("21:00", "away"), False),
    ],
)
def test_what_may_still_be_eaten_is_told_while_it_runs_or_has_run_out(found: LiveClock, told: bool) -> None:
    assert told_of((found,), NOW) == [found] * told


@pytest.mark.parametrize(
    ("until", "where", "told"), [("19:31", "left", True), ("19:30", "left", False), ("19:31", "table", False)]
)
def test_what_is_left_of_a_cleared_course_is_told_for_half_an_hour_past_its_limit(
    until: str, where: str, told: bool
) -> None:
    assert [each.course for each in left_over((clock(until, where),), NOW)] == ["Sweet"] * told


def test_each_warning_of_one_moment_has_a_number_of_its_own(host: Host) -> None:
    state = host.at("17:00").state
    found = warn_clocks(state, (clock("20:10"), clock("20:10", dish="Cream"), clock("19:59", dish="Fool")), NOW)

    assert [event.n for event in found] == [state.last_n + n for n in (1, 2, 3)]


def test_a_warning_of_leftovers_is_about_its_own_course() -> None:
    clocks = (clock("20:30", "left"), clock("20:10", "left", course="Main"))
    warned = ClockWarned(n=1, at=NOW, dish=None, course="Main", what="soon")
    found = clock_of(clocks, warned)

    assert isinstance(found, LeftOver)
    assert (found.course, found.until) == ("Main", at("20:10"))
    assert clock_of(clocks[:1], warned) is None


def test_a_course_goes_by_its_dish_with_the_least_time() -> None:
    several = (clock("20:30", "left"), clock("20:10", "left", dish="Cream"), clock("20:20", "left", dish="Fool"))

    assert [each.until for each in left_over(several, NOW)] == [at("20:10")]


@pytest.mark.parametrize(
    ("sweet", "main", "first"),
    [
        (clock("20:30", "left"), clock("20:29", "left", course="Main"), "Main"),
        (clock("20:30", "left"), clock("20:31", "left", course="Main"), "Sweet"),
        (clock("20:30", "left"), clock("20:10", "left", course="Main", job=True), "Sweet"),
        (clock("20:30", "table"), clock("20:40", "left", course="Main"), "Main"),
        (clock("20:30", "table"), clock("20:40", "away", course="Main"), None),
    ],
)
def test_what_no_job_puts_away_and_has_the_least_time_is_put_away_next(
    sweet: LiveClock, main: LiveClock, first: str | None
) -> None:
    assert next_to_put_away((sweet, main)) == first


@pytest.mark.parametrize(
    ("out", "where", "told"), [(120.0, "away", False), (120.5, "away", True), (121.0, "left", False)]
)
def test_what_was_put_away_past_its_limit_stood_too_long(out: float, where: str, told: bool) -> None:
    found = _out(out, where)

    assert stood_too_long((found,), "Sweet") == (found if told else None)
    assert stood_too_long((found,), "Main") is None


def _out(minutes: float, where: str, dish: str = "Custard") -> LiveClock:
    until: datetime = NOW + timedelta(minutes=120 - minutes)
    return LiveClock(dish, "Sweet", minutes, 120, until, False, where, False)  # type: ignore[arg-type]


def test_the_dish_furthest_past_its_limit_is_the_one_told() -> None:
    worst = _out(150, "away", "Cream")

    assert stood_too_long((_out(130, "away"), worst, _out(140, "away", "Fool")), "Sweet") == worst


def test_past_its_limit_counts_by_each_dishs_own_limit() -> None:
    """An hour where it was above 90 °F, two elsewhere: 15 minutes past the hour are more than 10 past the two."""
    hot = LiveClock("Cream", "Sweet", 75, 60, at("19:45"), False, "away", False)

    assert stood_too_long((_out(130, "away"), hot), "Sweet") == hot
