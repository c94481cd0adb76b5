"""Times away by what happens, and for how long alone: when they are, and what is told. Meal hours are common practice,
no source."""

from collections.abc import Callable
from datetime import UTC, datetime, timedelta

import pytest

from board.plan.load import PlanFile
from board.plan.resolve.absences import absences, free_of
from board.sheet import said
from tests.conftest import read

PlanFrom = Callable[[str], PlanFile]
TEXT = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: {arrive}
guests: [8 guests]
shopping: {shopping}
hands:
  host:
    hours: {hours}
    away:
      {away}
courses:
  - course: Soup
    at: 19:15
    eaten in: 30 min
    dishes: [{{dish: Leeks, steps: [{{step: heat, takes: 5 min}}]}}]
  - course: Main
    at: 70 min after the course before
    dishes: [{{dish: Lentils, steps: [{{step: boil, takes: 5 min}}]}}]
"""
TWO_DAYS = "{fri: '17:00 - 22:00', sat: '10:00 - 23:30'}"


def text(away: str, *, hours: str = TWO_DAYS, shopping: str = "{}", arrive: str = "18:30") -> str:
    return TEXT.format(away=away, hours=hours, shopping=shopping, arrive=arrive)


def span(file: PlanFile) -> tuple[str, str]:
    (only,) = absences(file.plan, "host")
    return f"{only.start:%a %H:%M}", f"{only.end:%H:%M}"


@pytest.mark.parametrize(
    ("away", "when"),
    [
        ("dress: '17:25 - 17:55'", ("Sat 17:25", "17:55")),
        ("greet: 10 min from guests arrive", ("Sat 18:30", "18:40")),
        ("dress: 25 min before guests arrive", ("Sat 18:05", "18:30")),
        ("dress: 25 min from 1 h before the guests arrive", ("Sat 17:30", "17:55")),
        ("sit down: 30 min from Main served", ("Sat 20:25", "20:55")),
        ("sit down: 15 min from serve Soup", ("Sat 19:15", "19:30")),
        ("toast: 10 min from Soup is cleared", ("Sat 19:45", "19:55")),
        ("call home: 10 min before main cleared", ("Sat 20:40", "20:50")),
    ],
)  # fmt: skip
def test_it_goes_by_the_plans_own_times(plan_from: PlanFrom, away: str, when: tuple[str, str]) -> None:
    assert span(plan_from(text(away))) == when


def test_guests_asked_for_later_take_along_what_goes_by_them(plan_from: PlanFrom) -> None:
    assert span(plan_from(text("greet: 10 min from guests arrive", arrive="19:00"))) == ("Sat 19:00", "19:10")


@pytest.mark.parametrize(
    ("away", "more", "when"),
    [
        ("supper on Friday: 30 min", {}, ("Fri 18:30", "19:00")),
        ("supper: fri, 1 h", {}, ("Fri 18:30", "19:30")),
        ("supper the day before: 45 min", {}, ("Fri 18:30", "19:15")),
        ("supper: 30 min", {"hours": "{fri: '17:00 - 22:00'}"}, ("Fri 18:30", "19:00")),
        ("supper on Friday: 30 min", {"hours": "{fri: '19:00 - 22:00'}"}, ("Fri 19:00", "19:30")),
        ("supper on Friday: 30 min", {"shopping": "{fri: '18:15 - 19:20'}"}, ("Fri 19:30", "20:00")),
        ("supper on Friday: 3 h", {}, ("Fri 18:00", "21:00")),
        ("lunch on Saturday: 30 min", {}, ("Sat 12:30", "13:00")),
        ("supper on Saturday: 30 min", {}, ("Sat 17:30", "18:00")),  # half an hour before the guests, it is over
    ],
)  # fmt: skip
def test_a_length_alone_is_a_meal_in_its_hours(
    plan_from: PlanFrom, away: str, more: dict[str, str], when: tuple[str, str]
) -> None:
    file = plan_from(text(away, **more))

    assert span(file) == when
    what = away.partition(":")[0]
    assert f"host is away {when[0]} to {when[1]}, as no time is given: {what}" in map(said.assumed, file.filled.assumed)


def test_hands_are_free_but_for_what_goes_by_the_guests_when_that_is_asked(plan_from: PlanFrom) -> None:
    file = plan_from(text("greet: 10 min from guests arrive", hours="{sat: '18:00 - 19:00'}"))
    six = datetime(2026, 11, 28, 18, tzinfo=UTC)

    def after(*minutes: int) -> tuple[datetime, ...]:
        return tuple(six + timedelta(minutes=each) for each in minutes)

    assert free_of(file.plan, "host") == [after(0, 30), after(40, 60)]
    assert free_of(file.plan, "host", tied=False) == [after(0, 60)]


@pytest.mark.parametrize(
    ("away", "code", "said"),
    [
        ("greet: 10 min from guests arive", "plan 8", "'guests arive'. Did you mean 'guests arrive'?"),
        ("sit: 10 min from Mian served", "plan 8", "Did you mean 'Main served'?"),
        ("supper: 30 min", "plan 6", "'supper' is 30 min long, and host has hours on several days or none"),
        ("greet: 10 min after guests arrive", "plan 7", "Write 10 min from guests arrive"),
        ("greet: a while", "plan 7", "10 min from guests arrive"),
    ],
)  # fmt: skip
def test_what_goes_by_nothing_is_told_once_where_it_stands(away: str, code: str, said: str) -> None:
    found = read(text(away))

    assert isinstance(found, list)
    (snag,) = found
    assert snag.place is not None
    assert (snag.code, snag.place.line) == (code, 11)
    assert said in snag.render()
    assert snag.mend
