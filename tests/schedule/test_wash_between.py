"""What runs short at the table, washed on the timetable: after the clearing, before the serving that needs it."""

import pytest

from board.checks.plan.cautions import cautions
from board.evening.state import begin
from board.plan.load import PlanFile
from board.plan.resolve.assumed import Assumed
from board.schedule.audit.validate import validate
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet.run_sheet import RunSheet
from tests.conftest import read

SUPPER = """\
event: Supper for nine
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [9 guests]
table:
  dessert spoons: 12
  wine glasses: 9
  wash between: yes
hands: {host: {hours: {on the day: '12:00 - 23:30'}}}
courses:
  - course: Broth
    at: 19:00
    eaten in: 20 min
    laid with: dessert spoon, wine glass
    dishes: [{dish: Leek broth, steps: [{step: cook the broth, takes: 20 min}]}]
  - course: Main
    at: 19:45
    eaten in: 30 min
    dishes: [{dish: Lentils, steps: [{step: cook the lentils, takes: 20 min}]}]
  - course: Sweet
    at: 20:45
    laid with: dessert spoon, wine glass
    dishes: [{dish: Pears, steps: [{step: cook the pears, takes: 20 min}]}]
jobs: [lay the table]
"""
ID = "jobs/wash-up-of-broth-for-sweet"


def plan_of(text: str) -> PlanFile:
    found = read(text)
    assert isinstance(found, PlanFile), "\n".join(snag.render() for snag in found)
    return found


@pytest.fixture(scope="module")
def sheet() -> RunSheet:
    plan = plan_of(SUPPER)
    made = make_sheet(plan, solve)
    assert validate(plan, made) == []
    return made


def test_it_lies_between_the_clearing_and_the_serving(sheet: RunSheet) -> None:
    """9 + 9 spoons of 12: 6 to wash; 9 + 9 glasses of 9: 9 to wash; 15 at half a minute is 8 minutes."""
    by_id = {slot.id: slot for slot in sheet.slots}
    wash = by_id[ID]

    assert (wash.name, wash.kind, wash.lane) == ("wash 6 dessert spoons and 9 wine glasses", "job", "worktop")
    assert (wash.end - wash.start).total_seconds() == 8 * 60
    assert by_id["clear/broth"].end <= wash.start
    assert wash.end <= by_id["serve/sweet"].start
    assert [part.who for part in wash.attended] == ["host"]
    assert sheet.given_up == ()


def test_the_evening_knows_it_like_any_other_job(sheet: RunSheet) -> None:
    assert ID in begin(sheet).steps


def test_what_is_assumed_of_it_is_told(sheet: RunSheet) -> None:
    assert Assumed("wash-a-piece", {"each": 0.5, "least": 3}) in sheet.assumed


def test_a_plan_that_does_not_ask_for_it_has_no_such_work() -> None:
    assert ID not in plan_of(SUPPER.replace("wash between: yes", "wash between: no")).filled.tasks
    assert ID not in plan_of(SUPPER.replace("dessert spoons: 12\n  wine glasses: 9", "forks: 1")).filled.tasks


def test_its_id_stays_whatever_the_numbers_and_apart_from_a_job_of_that_name() -> None:
    assert ID in plan_of(SUPPER.replace("dessert spoons: 12", "dessert spoons: 10")).filled.tasks
    own = plan_of(SUPPER.replace("[lay the table]", "[wash up of broth for sweet]"))
    assert {ID, f"{ID}-2"} <= set(own.filled.tasks)
    assert own.filled.tasks[ID].node.name == "wash up of broth for sweet"


def test_washing_wine_glasses_is_no_danger() -> None:
    assert "alcohol" not in {each.topic for each in cautions(plan_of(SUPPER))}


def test_a_course_eaten_standing_can_be_washed_up_too() -> None:
    plan = plan_of(SUPPER.replace("eaten in: 20 min", "eaten in: 20 min\n    standing: yes"))
    made = make_sheet(plan, solve)

    assert validate(plan, made) == []
    assert any(slot.id == ID for slot in made.slots)


def test_a_course_with_the_longest_name_is_washed_up_all_the_same() -> None:
    name = "B" * 300

    assert len(plan_of(SUPPER.replace("course: Broth", f"course: {name}")).filled.tasks) == 13
