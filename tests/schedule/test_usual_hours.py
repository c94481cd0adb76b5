"""Jobs in plain words are done at the hour a host would do them, and no dinner waits for one. Common practice, no
source."""

from collections.abc import Callable
from datetime import timedelta

import pytest

from board.plan.load import PlanFile
from board.schedule.audit.validate import validate
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet.run_sheet import RunSheet, Slot

DINNER = """
event: Saturday dinner
date: 2026-11-28
zone: Europe/London
arrive: 19:00
guests: [6 guests]
hands:
  host:
    hours: {fri: '18:00 - 22:00', sat: '10:00 - 23:30'}
courses:
  - course: Starter
    at: 19:45
    dishes:
      - dish: Carrot soup
        steps: [{step: heat the soup, where: 'stovetop, 1 ring', takes: 10 min, keeps: 20 min hot}]
  - course: Main
    at: 20:30
    dishes:
      - dish: Mushroom pie
        steps: [{step: bake the pie, where: 'oven at 190 C, 1 shelf', takes: 40 min, keeps: 20 min hot}]
  - course: Pudding
    at: 21:20
    dishes:
      - dish: Poached pears
        steps: [{step: poach the pears, where: 'stovetop, 1 ring', takes: 30 min, keeps: 2 days in the fridge}]
jobs:
"""
PlanFrom = Callable[[str], PlanFile]


def sheet_of(plan_from: PlanFrom, *jobs: str, dinner: str = DINNER) -> RunSheet:
    plan = plan_from(dinner + "".join(f"  - {job}\n" for job in jobs))
    sheet = make_sheet(plan, solve)
    assert validate(plan, sheet) == []
    return sheet


def named(sheet: RunSheet, name: str) -> Slot:
    return next(slot for slot in sheet.slots if slot.name == name)


def minutes_before(sheet: RunSheet, name: str, event: str) -> int:
    """From the end of one to the start of the other."""
    return int((named(sheet, event).start - named(sheet, name).end) / timedelta(minutes=1))


def test_plain_jobs_of_a_saturday_dinner_stand_at_their_hours(plan_from: PlanFrom) -> None:
    sheet = sheet_of(
        plan_from,
        "light the candles", "make coffee", "arrange the flowers", "put out the ice", "iron the tablecloth",
        "lay the table", "uncork the Barolo-like red", "chill the fizz", "slice the baguette",
    )  # fmt: skip
    guests, served = "guests arrive", named(sheet, "serve Pudding").end

    assert 0 <= minutes_before(sheet, "light the candles", guests) <= 15
    assert 0 <= minutes_before(sheet, "put out the ice", guests) <= 20
    assert named(sheet, "make coffee").start >= served + timedelta(minutes=5)
    assert named(sheet, "make coffee").start <= served + timedelta(minutes=30)
    assert 0 <= minutes_before(sheet, "arrange the flowers", guests) <= 36 * 60
    assert minutes_before(sheet, "iron the tablecloth", "lay the table") >= 0
    assert 30 <= minutes_before(sheet, "uncork the Barolo-like red", "serve Main") <= 60
    assert 0 <= minutes_before(sheet, "chill the fizz", guests) <= 60
    assert 0 <= minutes_before(sheet, "slice the baguette", "serve Starter") <= 60
    assert (sheet.given_up, sheet.proved) == ((), True)


@pytest.mark.parametrize(
    ("own", "day"),
    [("day: fri", "Fri"), ("not after: 'fri 21:00'", "Fri"), ("before: heat the soup", "Sat"), ("day: sat", "Sat")],
)
def test_a_plans_own_word_goes_before_what_is_usual(plan_from: PlanFrom, own: str, day: str) -> None:
    sheet = sheet_of(plan_from, f"{{job: light the candles, {own}}}")

    assert f"{named(sheet, 'light the candles').start:%a}" == day


def test_coffee_that_a_dish_takes_up_is_made_for_the_dish(plan_from: PlanFrom) -> None:
    soaked = DINNER.replace(
        "steps: [{step: poach", "steps: [{step: soak, after: make the coffee, takes: 5 min}, {step: poach"
    )
    sheet = sheet_of(plan_from, "make the coffee", dinner=soaked)

    assert minutes_before(sheet, "make the coffee", "soak") >= 0


def test_a_job_stands_outside_its_usual_hour_before_anything_else_is_given_up(plan_from: PlanFrom) -> None:
    """The host is away for the last forty minutes: the candles are early, and nothing is late, cold or out of hours."""
    away = DINNER.replace("hours: {", "away: {rest: 'sat 18:20 - 19:00'}\n    hours: {")
    sheet = sheet_of(plan_from, "light the candles", dinner=away)

    assert minutes_before(sheet, "light the candles", "guests arrive") == 40
    assert sheet.given_up == ()
    assert sheet.proved


def test_a_course_never_waits_for_a_job_that_is_only_usual(plan_from: PlanFrom) -> None:
    sheet = sheet_of(plan_from, "open the red")

    assert {wait.after for wait in named(sheet, "serve Main").waits} & {"jobs/open-the-red"} == set()
