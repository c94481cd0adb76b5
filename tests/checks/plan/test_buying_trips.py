"""buying 3: a shopping trip that has no place in the hours of who goes."""

import pytest

from board.checks.plan.buying import trips_have_a_place
from board.plan.load import PlanFile, read_plan

PLAN = """
event: Supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 19:00
guests: [4 guests]
hands:
  host:
    hours: {{fri: '16:00 - 18:00, 18:00 - 21:00', on the day: '10:00 - 23:00'}}
    away: {{dress: sat 17:30 - 18:00}}
shopping: {{{trip}}}
courses:
  - course: Main
    at: 19:45
    dishes: [{{dish: Rice, steps: [{{step: cook it, takes: 20 min}}]}}]
"""


def said(trip: str) -> list[str]:
    file = read_plan(PLAN.format(trip=trip), "plan.yaml")
    assert isinstance(file, PlanFile), [snag.render() for snag in file]
    found = trips_have_a_place(file)
    assert all("shopping" in (snag.place.text if snag.place else "") for snag in found)
    return [snag.message for snag in found]


@pytest.mark.parametrize(
    "trip", ["fri: '16:00 - 17:30'", "fri: '17:30 - 19:00'", "fri: '16:00 - 21:00'", "sat: '10:00 - 11:00'"]
)
def test_a_trip_within_hours_is_not_told_of(trip: str) -> None:
    assert said(trip) == []


@pytest.mark.parametrize(
    ("trip", "told"),
    [
        ("fri: '15:59 - 17:00'", "go shopping (fri), 15:59 to 17:00, lies outside host's hours"),
        ("fri: '20:00 - 21:01'", "go shopping (fri), 20:00 to 21:01, lies outside host's hours"),
        ("thu: '17:00 - 18:00'", "go shopping (thu), 17:00 to 18:00, lies outside host's hours"),
        ("sat: '17:00 - 17:31'", "go shopping (sat), 17:00 to 17:31, lies while host is to dress"),
    ],
)
def test_a_trip_without_a_place_is(trip: str, told: str) -> None:
    assert said(trip) == [told]
