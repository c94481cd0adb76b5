"""The clock of a dish that spoils is a limit of the timetable: kept where any timetable keeps it, told where none does.

Limits: USDA FSIS, danger zone 40-140 °F: 2 h, and 1 h when the air is above 90 °F (32 °C). Sums by hand.
"""

from collections.abc import Callable
from dataclasses import dataclass

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from board.checks.sheet.clocks import dish_clocks
from board.checks.sheet.every import safety_check
from board.plan.load import PlanFile
from board.schedule.audit.validate import validate
from board.schedule.solver.feasible import can
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet import said
from board.sheet.run_sheet import RunSheet
from board.sheet.told import PastClock
from tests.conftest import read
from tests.schedule.conflicts.clash_cases import Worked

HEAD = """
event: Test supper
date: 2026-07-18
zone: Europe/Dublin
arrive: 18:30
air: {indoors: 26 C, outdoors: 34 C}
guests: [8 guests]
hands: {host: {hours: {on the day: '9:00 - 23:30'}}}
courses:
  - course: Main
    at: '20:15'
"""

# A butcher's cold roast. Left to themselves, all aims but its clock put both steps before the guests come: 35 on the
# bench, 100 until it is plated, 5 carried, 25 at the table.
CARVED = """
    dishes:
      - dish: Cold roast beef
        ingredients: [1.8 kg cooked roast beef (butcher)]
        steps:
          - {step: carve the roast, takes: 25 min, keeps: 2 h in the room}
          - {step: lay out the slices, takes: 10 min, keeps: 2 h in the room}
"""
# Outdoors above 32 °C: an hour, of which 5 carried and 20 at the table. What is washed lies in the fridge.
DRESSED = """
    outdoors: yes
    eaten in: 20 min
    dishes:
      - dish: Dressed salad
        ingredients: [400 g salad leaves (veg), 1 lemon (veg)]
        steps:
          - {step: wash the leaves, takes: 10 min, keeps: 4 h in the fridge}
          - {step: dress the leaves, takes: 5 min, keeps: 2 h in the room}
"""
# Of two parts in one, the custard stands out while the case bakes; the case alone does not spoil.
FILLED = """
    dishes:
      - dish: Custard tart
        ingredients: [500 ml cream (dairy), 6 eggs (dairy), 250 g plain flour (baking), 125 g butter (dairy)]
        steps:
          - {step: cook the custard, where: stovetop, takes: 20 min, until: 80 C, keeps: 2 h in the room}
          - {step: bake the case, where: oven at 180 C, takes: 30 min, after: nothing, keeps: 6 h in the room}
          - {step: fill the case, takes: 15 min, after: [cook the custard, bake the case], keeps: 2 h in the room}
"""
# The fridge has no room for it, and another way keeps it in no time at all: which way is chosen decides.
BY_ANOTHER_WAY = """
    dishes:
      - dish: Cold roast beef
        ingredients: [1.8 kg cooked roast beef (butcher)]
        steps:
          - step: carve the roast
            takes: 25 min
            keeps: 2 h in the room
            or: [{takes: 30 min, keeps: '4 h in the fridge, 4 litres'}]
"""
# What another dish takes up keeps its own clock, and goes on counting while it is carried out with all the rest.
TAKEN_UP = """
    dishes:
      - dish: Cold chicken
        ingredients: [2 cooked chickens (butcher)]
        steps:
          - {step: joint the chicken, takes: 30 min, keeps: 2 h in the room}
      - dish: Bread
        ingredients: [2 loaves bread (bakery)]
        steps:
          - {step: set out the platters, takes: 20 min, after: joint the chicken, keeps: 2 h in the room}
"""
MET = {
    "carved": CARVED, "dressed": DRESSED, "filled": FILLED, "by another way": BY_ANOTHER_WAY, "taken up": TAKEN_UP,
}  # fmt: skip

# 25 on the bench, 5 carried, 100 at the table, and in between the guests must be brought to it, which takes 5: what is
# lost already is no reason to seat them half an hour early.
TOO_LONG = """
    eaten in: 100 min
    dishes:
      - dish: Cold roast beef
        ingredients: [1.8 kg cooked roast beef (butcher)]
        steps:
          - {step: carve the roast, takes: 25 min, keeps: 2 h in the room}
"""


@pytest.fixture
def sheet_of(plan_from: Callable[[str], PlanFile]) -> Callable[[str], tuple[PlanFile, RunSheet]]:
    def make(course: str) -> tuple[PlanFile, RunSheet]:
        plan = plan_from(HEAD + course.lstrip("\n"))
        return plan, make_sheet(plan, solve, can)

    return make


Made = Callable[[str], tuple[PlanFile, RunSheet]]


@pytest.mark.parametrize("course", MET.values(), ids=MET)
def test_a_clock_that_can_be_kept_is_kept(sheet_of: Made, course: str) -> None:
    plan, sheet = sheet_of(course)

    assert dish_clocks(sheet)
    assert not [each.clock.dish for each in dish_clocks(sheet) if each.too_long]
    assert not [snag.message for snag in safety_check(plan, sheet) if snag.code == "food 10"]
    assert sheet.proved
    assert sheet.given_up == ()
    assert validate(plan, sheet) == []


def test_a_clock_that_no_timetable_keeps_is_told_with_the_finding_it_meets(sheet_of: Made) -> None:
    """No further past it than need be, and the stop stays."""
    plan, sheet = sheet_of(TOO_LONG)

    (given,) = sheet.given_up
    assert given.what == PastClock("Cold roast beef", "Main", 135, 120)
    assert given.minutes == 15
    assert said.given_up(sheet, given) == (
        "Cold roast beef stands out 2 h 15 until it is eaten, and may for 2 h (food 10): "
        "the longest is 100 min at the table"
    )
    assert sheet.proved
    assert [snag.weight.name for snag in safety_check(plan, sheet) if snag.code == "food 10"] == ["STOP"]
    assert validate(plan, sheet) == []


# Carved before the host leaves, who is back only for the evening.
CARVED_BEFORE_TWO = """
    dishes:
      - dish: Cold roast beef
        ingredients: [1.8 kg cooked roast beef (butcher)]
        steps:
          - {step: carve the roast, takes: 25 min, not after: '14:00', keeps: 8 h in the room}
"""


def test_what_stands_out_too_long_may_be_kept_in_the_fridge() -> None:
    worked = Worked(HEAD + CARVED_BEFORE_TWO.lstrip("\n"))
    (given,) = worked.sheet.given_up
    assert isinstance(given.what, PastClock)

    first = worked.ways(1)[0]
    assert (first.what, first.remains) == ("keep what comes of 'carve the roast' in the fridge", 0)
    again = Worked(first.text)
    assert again.sheet.given_up == ()
    assert not any(each.too_long for each in dish_clocks(again.sheet))


# --- small dinners whose clocks can all be kept ---------------------------------------------------------------------
@dataclass(frozen=True)
class Step:
    where: str
    minutes: int
    keeps: str
    hands: str
    takes_up: bool  # what the dish before made, too


@dataclass(frozen=True)
class Course:
    """`dishes`: of steps. All of it can be made one after another, right before the guests sit down, and be eaten
    within the hour or the two hours: in any order, for hands, rings, oven and hours are to be had all day."""

    outdoors: bool
    eaten: int
    dishes: tuple[tuple[Step, ...], ...]


steps = st.builds(
    Step,
    where=st.sampled_from(["worktop", "worktop", "stovetop, 1 ring", "oven at 180 C, 1 shelf", "fridge"]),
    minutes=st.sampled_from([5, 10, 15, 20]),
    keeps=st.sampled_from(
        ["2 h in the room", "6 h in the room", "15 min in the room", "4 h in the fridge", "30 min hot"]
    ),
    hands=st.sampled_from(["all", "2 min at the start"]),
    takes_up=st.booleans(),
)


@st.composite
def courses(draw: st.DrawFn) -> Course:
    outdoors, eaten = draw(st.booleans()), draw(st.sampled_from([10, 20, 25]))
    left = (60 if outdoors else 120) - eaten - 5 - 5  # carried out, and the guests brought to the table before
    dishes = []
    for dish in draw(st.lists(st.lists(steps, min_size=1, max_size=3), min_size=1, max_size=3)):
        fits = []
        for step in dish:
            if step.minutes <= left:
                left -= step.minutes
                fits.append(step)
        if fits:
            dishes.append(tuple(fits))
    return Course(outdoors, eaten, tuple(dishes))


def dinner(found: list[Course]) -> str:
    """The courses so far apart that no two are made at the same time."""
    lines = HEAD.partition("courses:")[0] + "kitchen: {rings: 9, ovens: {oven: {shelves: 9}}}\ncourses:\n"
    for c, course in enumerate(found):
        lines += f"  - course: Course {c}\n    at: '{['20:15', '22:45'][c]}'\n    eaten in: {course.eaten} min\n"
        lines += f"    outdoors: {'yes' if course.outdoors else 'no'}\n    dishes:\n"
        for d, dish in enumerate(course.dishes):
            lines += f"      - dish: Dish {c}{d}\n        perishable: yes\n        steps:\n"
            for n, step in enumerate(dish):
                before = [f"step {c}{d}{n - 1}"] if n else []
                before += [f"step {c}{d - 1}{len(course.dishes[d - 1]) - 1}"] if step.takes_up and d else []
                lines += (
                    f"          - {{step: 'step {c}{d}{n}', where: '{step.where}', takes: {step.minutes} min, "
                    f"attended: {step.hands}, keeps: {step.keeps}, after: [{', '.join(before) or 'nothing'}]}}\n"
                )
    return lines


@settings(max_examples=25, deadline=None)
@given(st.lists(courses(), min_size=1, max_size=2))
@pytest.mark.slow
def test_no_dinner_whose_clocks_can_be_kept_meets_a_stop(found: list[Course]) -> None:
    plan = read(dinner(found))
    assert isinstance(plan, PlanFile), [snag.render() for snag in plan]

    sheet = make_sheet(plan, solve)

    assert len(sheet.clocks) == sum(len(course.dishes) for course in found)
    assert [snag.message for snag in safety_check(plan, sheet) if snag.code == "food 10"] == []
    assert validate(plan, sheet) == []
