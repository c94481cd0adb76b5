"""Once a course is served, those who eat stay seated; and their minutes in the kitchen are shared out.

Nothing outside the project gives a figure: that a host sits down with the guests, and that who is hired does not, is
common practice, no source; 12 and 8 minutes are ours.
"""

import re
from collections.abc import Callable
from datetime import datetime
from io import StringIO
from zoneinfo import ZoneInfo

import msgspec
import pytest
from rich.console import Console

from board.checks.sheet.every import safety_check
from board.output.sheet import print_sheet
from board.plan.load import PlanFile
from board.plan.resolve.assumed import Assumed
from board.plan.snag import Weight
from board.schedule.audit.validate import validate
from board.schedule.conflicts.price import costs
from board.schedule.formulate import problem_of
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import to_run_sheet
from board.sheet import company, quiet
from board.sheet.quiet import Quiet
from board.sheet.run_sheet import RunSheet

PlanFrom = Callable[[str], PlanFile]
ZONE = ZoneInfo("Europe/Dublin")
HOST = "host: {hours: {on the day: '15:00 - 23:30'}}"
SOUP = """\
  - course: Soup
    at: 19:00
    eaten in: 20 min
    dishes:
      - dish: Squash soup
        ingredients: [1 kg squash, 1 l water]
        perishable: no
        steps:
          - {step: heat the soup, where: 'stovetop, 1 ring', takes: 15 min, attended: all, keeps: 10 min hot}
"""
STEW = """\
  - course: Main
    at: 19:45
    eaten in: 35 min
    dishes:
      - dish: Bean stew
        ingredients: [1 kg white beans, 4 carrots]
        perishable: no
        steps:
          - step: warm the stew
            where: stovetop, 1 ring
            takes: 20 min
            attended: 2 min at the start
            keeps: 1 h hot
"""
FRUIT = """\
  - course: Fruit
    at: 20:40
    eaten in: 25 min
    dishes:
      - dish: Oranges
        ingredients: [9 oranges]
        perishable: no
        steps: [{step: slice the oranges, takes: 10 min, keeps: 6 h in the fridge}]
"""


def supper(courses: str = SOUP + STEW + FRUIT, jobs: str = "", hands: str = HOST) -> str:
    return (
        "event: Supper\ndate: 2026-11-28\nzone: Europe/Dublin\narrive: '18:30'\nguests: [5 guests]\n"
        f"kitchen: {{rings: 3}}\nhands: {{{hands}}}\ncourses:\n{courses}" + (f"jobs:\n{jobs}" if jobs else "")
    )


@pytest.fixture
def timed(plan_from: PlanFrom) -> Callable[[str], RunSheet]:
    """A plan's timetable, which holds, and whose aims are what its sheet shows."""

    def make(text: str) -> RunSheet:
        plan = plan_from(text)
        problem = problem_of(plan.plan, plan.filled)
        solution = solve(problem)
        sheet = to_run_sheet(plan, problem, solution)
        values = {aim.aim: aim.value for aim in solution.aims}
        minutes = company.as_planned(sheet).values()
        weighed = sum(minutes) if len(minutes) < 2 else sum(map(company.weight, minutes))
        assert solution.proved
        assert validate(plan, sheet) == []
        assert values["table"] == sum(each.broken for each in quiet.as_planned(sheet))
        assert values["company"] == weighed
        return sheet

    return make


Timed = Callable[[str], RunSheet]


def of(sheet: RunSheet, course: str) -> Quiet:
    return next(each for each in quiet.as_planned(sheet) if each.course.name == course)


def clock(at: datetime) -> str:
    return at.astimezone(ZONE).strftime("%H:%M")


# --- what could be done before or after ------------------------------------------------------------------------------
@pytest.mark.parametrize(
    "job",
    [
        "{job: put the soup away, puts away: Soup, where: worktop, takes: 3 min, after: 'clear Soup, at most 45 min'}",
        "{job: box the rest of the soup, takes: 5 min, after: 'serve Soup, at least 30 min, at most 1 h'}",
        "{job: fold the coats on the bed, takes: 10 min, after: 'serve Soup, at least 35 min, at most 1 h 20'}",
        "{job: trim the candles, takes: 4 min, after: 'serve Main, at most 30 min'}",
        "{job: feed the cat, takes: 2 min, not before: '19:46', not after: '20:30'}",
    ],
)
def test_nobody_gets_up_for_what_can_wait(timed: Timed, job: str) -> None:
    """At the table's front or in the kitchen, of this course or of the one before."""
    sheet = timed(supper(jobs=f"  - {job}\n"))

    assert [each.ups for each in quiet.as_planned(sheet)] == [(), (), ()]
    assert [each.missing for each in quiet.as_planned(sheet)] == [0, 0, 0]


def test_nor_for_clearing_what_was_eaten_standing(timed: Timed) -> None:
    """A standing course before is cleared when there is time for it, though not at the guests' expense."""
    nuts = SOUP.replace("Soup\n", "Nuts\n").replace("19:00", "18:35") + "    standing: yes\n"
    sheet = timed(supper(nuts.replace("Squash soup", "Nuts") + SOUP.replace("heat the soup", "warm the soup") + STEW))

    assert [each.course.name for each in quiet.as_planned(sheet)] == ["Soup", "Main"]
    assert [each.missing for each in quiet.as_planned(sheet)] == [0, 0]


def test_of_a_step_with_look_ins_none_falls_into_the_first_minutes_if_it_can_start_elsewhere(timed: Timed) -> None:
    """A dish kept hot long enough is heated before the guests sit down, or after they have sat."""
    looked = STEW.replace("2 min at the start", "2 min at the start, 1 min every 6 min")
    sheet = timed(supper(SOUP + looked.replace("1 h hot", "1 h 30 hot") + FRUIT))

    assert [each.missing for each in quiet.as_planned(sheet)] == [0, 0, 0]


def test_what_is_done_beside_the_guests_gets_nobody_up(timed: Timed) -> None:
    job = "{job: carve at the table, with guests: yes, takes: 5 min, after: 'serve Main, at once'}"
    sheet = timed(supper(jobs=f"  - {job}\n"))

    assert of(sheet, "Main").ups == ()


# --- what cannot -----------------------------------------------------------------------------------------------------
TART = """\
      - dish: Leek tart
        ingredients: [4 leeks, 250 g flour]
        perishable: no
        steps:
          - step: bake the tart
            where: oven at 190 C (190 to 190 C), 1 shelf
            takes: 40 min
            attended: 2 min at the start, 2 min every 15 min, 2 min at the end
            best within: 5 min
            keeps: 10 min hot
"""


def test_what_is_on_the_heat_and_cannot_wait_gets_them_up_and_is_told_with_what_it_is_for(
    plan_from: PlanFrom, timed: Timed
) -> None:
    """40 min of baking end with the plating of 19:45, so the tart is put in at 18:55 to 19:00, while the soup is
    plated, or just after; the looks 15 and 30 minutes later miss the first twelve minutes."""
    text = supper(SOUP + STEW + TART + FRUIT)
    sheet = timed(text)
    broken = of(sheet, "Soup")
    found = [snag for snag in safety_check(plan_from(text), sheet) if snag.code == "table 6"]

    assert broken.missing > 0
    assert {(up.slot.name, up.leads_to.name if up.leads_to else "") for up in broken.ups} == {("bake the tart", "Main")}
    assert [(snag.weight, clock(broken.until) in snag.message) for snag in found] == [(Weight.MIND, True)]
    assert "for 'bake the tart' (Main 19:45)" in found[0].message


def test_once_somebody_is_up_what_can_wait_waits_all_the_same(timed: Timed) -> None:
    job = "{job: rinse the pots, takes: 6 min, after: 'serve Soup, at most 40 min'}"
    sheet = timed(supper(SOUP + STEW + TART + FRUIT, jobs=f"  - {job}\n"))

    assert {up.slot.name for up in of(sheet, "Soup").ups} == {"bake the tart"}


# --- for how long ----------------------------------------------------------------------------------------------------
@pytest.mark.parametrize(
    ("change", "minutes"),
    [
        (("", ""), 12),
        (("at: 19:00", "at: 19:00\n    sit: 15 min"), 15),
        (("at: 19:00", "at: 19:00\n    sit: 0 min"), 0),
        (("at: 19:00", "at: 19:00\n    standing: yes"), 0),
        (("at: 19:00", "at: 19:00\n    sit: 25 min"), 20),  # eaten in 20 min, and then cleared
        (("eaten in: 20 min", "sit: 40 min"), 40),  # where nothing says how long it is eaten
        (("eaten in: 20 min", "eaten in: 6 min"), 6),
        (("10 min hot", "2 h in the fridge"), 8),
        (("10 min hot", "3 h in the room, best within: 2 h"), 8),
        (("10 min hot", "3 h in the room, best within: 10 min"), 12),
    ],
)
def test_twelve_minutes_over_what_is_hot_and_eight_over_the_rest_unless_the_plan_says(
    plan_from: PlanFrom, change: tuple[str, str], minutes: int
) -> None:
    plan = plan_from(supper(SOUP.replace(*change) + STEW + FRUIT))

    assert plan.filled.courses[0].sit == minutes


ROAST = "{step: roast it, where: oven at 200 C, takes: 50 min}"
BOIL = "step: boil it, where: stovetop, takes: 20 min"


@pytest.mark.parametrize(
    ("steps", "minutes"),
    [
        (
            f"[{ROAST}, {{step: let it rest, takes: 20 min}}, {{step: carve, takes: 8 min}}]",
            12,
        ),
        (f"[{ROAST}, {{step: chill it, where: fridge, takes: 3 h}}]", 8),
        (
            f"[{{{BOIL}}}, {{step: dress it, after: 'boil it, at least 2 h', takes: 5 min}}]",
            8,
        ),
        (
            f"[{{{BOIL}, keeps: 1 day in the fridge}}, {{step: dress it, takes: 5 min}}]",
            8,
        ),
        ("[{step: chop it, takes: 5 min}, {step: toss it, takes: 5 min}]", 8),
        ("[{step: grill it, where: oven at 230 C, takes: 9 min}]", 12),
    ],
)
def test_a_dish_is_hot_as_long_as_nothing_cools_it(plan_from: PlanFrom, steps: str, minutes: int) -> None:
    pudding = f"  - course: Late\n    at: 20:40\n    dishes: [{{dish: Thing, perishable: no, steps: {steps}}}]\n"
    plan = plan_from(supper(SOUP + pudding))

    assert plan.filled.courses[1].sit == minutes
    kind = "sit-hot" if minutes == 12 else "sit"
    assert any(each.kind == kind and "Late" in each.about for each in plan.filled.assumed)


def test_plates_that_are_warmed_are_no_hot_course(plan_from: PlanFrom) -> None:
    warm = "{step: warm the plates, where: oven at 80 C, takes: 20 min, keeps: 1 h hot}"
    plates = f"{{dish: Plates, ingredients: nothing, steps: [{warm}]}}"
    ham = "{dish: Ham, steps: [{step: slice it, takes: 5 min}]}"
    cold = f"  - course: Late\n    at: 20:40\n    dishes: [{plates}, {ham}]\n"

    assert plan_from(supper(SOUP + cold)).filled.courses[1].sit == 8


def test_what_is_assumed_is_told(plan_from: PlanFrom) -> None:
    plan = plan_from(supper(SOUP.replace("at: 19:00", "at: 19:00\n    sit: 9 min") + STEW + FRUIT))

    assert Assumed("sit-hot", {"minutes": 12}, ("Main",), ("serve/main",)) in plan.filled.assumed
    assert Assumed("sit", {"minutes": 8}, ("Fruit",), ("serve/fruit",)) in plan.filled.assumed


# --- who -------------------------------------------------------------------------------------------------------------
PAIR = "Ada: {hours: {on the day: '15:00 - 23:30'}}, Ben: {hours: {on the day: '15:00 - 23:30'}%s}"
TEN_LATE = "  - {job: put the soup away, where: worktop, takes: 5 min, after: 'serve Main, at most 4 min'}\n"


def test_who_helps_and_eats_stays_seated_and_who_is_hired_gets_up(timed: Timed) -> None:
    both = timed(supper(jobs=TEN_LATE, hands=PAIR % ""))
    hired = timed(supper(jobs=TEN_LATE, hands=PAIR % ", hired: yes"))

    assert of(both, "Main").missing >= 8
    assert [each.ups for each in quiet.as_planned(hired)] == [(), (), ()]
    assert hired.by_id()["jobs/put-the-soup-away"].attended[0].who == "Ben"
    assert (company.sitters(both), company.sitters(hired)) == (("Ada", "Ben"), ("Ada",))


def test_where_everybody_is_hired_nobody_is_asked_to_sit(timed: Timed) -> None:
    sheet = timed(supper(jobs=TEN_LATE, hands="cook: {hired: yes, hours: {on the day: '15:00 - 23:30'}}"))

    assert (quiet.as_planned(sheet), company.as_planned(sheet)) == ((), {})


@pytest.mark.parametrize("away", ["", ", away: {bath: '18:00 - 18:20'}"])
def test_the_kitchen_is_shared_out_between_those_who_eat(timed: Timed, away: str) -> None:
    """Eight jobs of six minutes once the guests are there: nobody does nearly all of them."""
    jobs = "".join(
        f"  - {{job: stir pot {n}, where: 'stovetop, 1 ring', takes: 6 min, not before: '18:30', not after: '22:00'}}\n"
        for n in range(8)
    )
    minutes = company.as_planned(timed(supper(jobs=jobs, hands=PAIR % away)))

    assert set(minutes) == {"Ada", "Ben"}
    assert max(minutes.values()) - min(minutes.values()) <= company.QUARTER


def test_who_comes_late_is_not_made_up_for_by_working_all_evening(timed: Timed) -> None:
    """What weighs is minutes with the guests there, not minutes of hours."""
    late = "Ada: {hours: {on the day: '15:00 - 23:30'}}, Ben: {hours: {on the day: '18:00 - 23:30'}}"
    jobs = "".join(
        f"  - {{job: wash rack {n}, where: worktop, takes: 7 min, not before: '18:40', not after: '22:00'}}\n"
        for n in range(6)
    )
    minutes = company.as_planned(timed(supper(jobs=jobs, hands=late)))

    assert max(minutes.values()) - min(minutes.values()) <= company.QUARTER


@pytest.mark.parametrize(("one", "other"), [(6, 128), (0, 40), (20, 50), (31, 62)])
def test_an_even_share_weighs_less(one: int, other: int) -> None:
    half = (one + other) // 2

    assert company.weight(half) + company.weight(one + other - half) < company.weight(one) + company.weight(other)


@pytest.mark.parametrize("minutes", range(0, 200, 7))
def test_a_minute_weighs_one_more_with_every_quarter_of_an_hour(minutes: int) -> None:
    assert company.weight(minutes) == sum(1 + n // 15 for n in range(minutes))


def printed(sheet: RunSheet) -> str:
    out = Console(file=StringIO(), width=200, color_system=None)
    print_sheet(sheet, "day", out)
    assert isinstance(out.file, StringIO)
    return out.file.getvalue()


def test_the_heading_tells_till_when_they_sit_and_each_ones_minutes(timed: Timed) -> None:
    told = printed(timed(supper(jobs=TEN_LATE, hands=PAIR % "")))
    alone = printed(timed(supper(SOUP + STEW + TART + FRUIT)))

    assert "Sat 19:45 Main, sit till 19:49\n" in told
    assert re.search(r"^ +up 19:49 (Ada|Ben) for 'put the soup away' *$", told, re.MULTILINE)
    assert re.search(r"^ +Ada \d+ min, Ben \d+ min in the kitchen while", told, re.MULTILINE)
    assert re.search(r"^ +up 19:\d\d for 'bake the tart' \(Main 19:45\) *$", alone, re.MULTILINE)
    assert re.search(r"^ +\d+ min in the kitchen while", alone, re.MULTILINE)


# --- what the validator sees -----------------------------------------------------------------------------------------
def test_a_sheet_that_tells_it_otherwise_does_not_hold(plan_from: PlanFrom, timed: Timed) -> None:
    text = supper(hands=PAIR % ", hired: yes")
    plan, sheet = plan_from(text), timed(text)
    first, *others = sheet.courses
    longer = msgspec.structs.replace(sheet, courses=(msgspec.structs.replace(first, sits=99), *others))
    all_sit = msgspec.structs.replace(sheet, hired_hands=msgspec.UNSET)

    assert "Soup is told to be sat over for 99 min, and is for 12" in validate(plan, longer)
    assert "Ben is told to sit at the table, unlike in the plan" in validate(plan, all_sit)


# --- what a change costs ---------------------------------------------------------------------------------------------
def test_a_change_that_gets_them_up_sooner_says_so(timed: Timed) -> None:
    quietly, up = timed(supper()), timed(supper(jobs=TEN_LATE))

    assert "you get up 4 min into Main" in costs(quietly, up, 0)
    assert "you get up" not in costs(up, quietly, 0)
