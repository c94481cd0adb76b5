"""Guesses in the order in which they decide, and what `check` says of them."""

from collections.abc import Callable
from datetime import timedelta

import msgspec
import pytest

from board.checks.plan.every import check
from board.checks.plan.guesses import guesses, guesses_are_confirmed
from board.plan.load import PlanFile
from board.plan.snag import About, Snag, Weight
from board.sheet import said
from board.sheet.guesses import guesses as told_on_the_sheet
from board.sheet.run_sheet import Attended, CourseSlot, RunSheet, Slot
from tests.conftest import HEAD, at

PLAN = (
    HEAD
    + """
courses:
  - course: Main
    at: 19:30
    dishes:
      - dish: Duck legs
        ingredients: [8 duck legs]
        steps:
          - step: peel the shallots
            takes: 10 min
            keeps: 4 h in the room
            guessed: [takes, keeps]
          - step: braise the legs
            where: oven at 160 C
            takes: 2 h
            cooks: poultry
            guessed: [where, takes, cooks]
      - dish: Gratin
        ingredients: [1 kg potatoes]
        steps:
          - step: bake the gratin
            where: oven at 160 C
            takes: 60 min
            guessed: [takes, attended]
"""
)
GIVE = {"peel": 30, "braise": 12, "bake": 4}


@pytest.fixture
def file(plan_from: Callable[[str], PlanFile]) -> PlanFile:
    return plan_from(PLAN)


@pytest.fixture
def sheet(file: PlanFile) -> RunSheet:
    """Every step a line with its own give; the peeled shallots stand three of their four hours."""
    begins = {"peel": at("13:50"), "braise": at("17:00"), "bake": at("18:00")}
    slots = []
    for id_, task in file.filled.tasks.items():
        if task.node.kind == "step":
            verb = task.node.name.split()[0]
            start = begins[verb]
            end = start + timedelta(minutes=task.ways[0].takes.likely)
            then = tuple(i for i in file.filled.tasks if "braise" in i) if verb == "peel" else ()
            hands = (Attended(start, end, "host", "all"),)
            slots.append(Slot(id_, task.node.name, "step", "worktop", start, end, "Duck legs", "Main", hands,
                              give_minutes=GIVE[verb], then=then))  # fmt: skip
    course = CourseSlot("Main", at("19:30"), at("19:30"), "serve/main", "clear/main", 10)
    return RunSheet("Test supper", "Europe/Dublin", file.digest, "2026-11-28", at("18:30"), (course,), tuple(slots),
                    assumed=file.filled.assumed)  # fmt: skip


def test_what_decides_most_comes_first_and_says_what_hangs_on_it(file: PlanFile, sheet: RunSheet) -> None:
    found = [(each.step.split()[0], each.key, each.why) for each in guesses(file, (), sheet)]

    assert found == [
        ("braise", "cooks", "decides how hot the food must get"),
        ("bake", "takes", "decides when Main is ready: give 4 min"),
        ("braise", "where", "decides when Main is ready: give 12 min"),
        ("braise", "takes", "decides when Main is ready: give 12 min"),
        ("peel", "keeps", "decides how long it may stand"),
        ("peel", "takes", ""),  # twice its ten minutes would still leave twenty of give
        ("bake", "attended", ""),  # no such line
    ]


def test_what_stands_behind_a_stop_comes_before_all(file: PlanFile, sheet: RunSheet) -> None:
    task = next(id_ for id_ in file.filled.tasks if "bake" in id_)
    stop = Snag("food 10", Weight.STOP, "…", about=About(tasks=(task,)))
    mind = Snag("food 12", Weight.MIND, "…", about=About(tasks=tuple(file.filled.tasks)))

    first, second, *_ = guesses(file, [mind, stop], sheet)

    assert (first.step, first.why) == ("bake the gratin", "stands behind a stop (food 10)")
    assert second.key == "cooks"


@pytest.mark.parametrize(("give", "decides"), [(29, True), (30, False)])
def test_a_length_decides_where_half_as_much_again_uses_up_its_give(
    file: PlanFile, sheet: RunSheet, give: int, decides: bool
) -> None:
    slots = tuple(msgspec.structs.replace(slot, give_minutes=give) for slot in sheet.slots)
    found = guesses(file, (), msgspec.structs.replace(sheet, slots=slots))

    bake = next(each for each in found if each.step.startswith("bake") and each.key == "takes")  # 60 min
    assert bool(bake.why) is decides


def test_check_tells_all_in_one_line_and_asks_once_a_dish(file: PlanFile, sheet: RunSheet) -> None:
    told = [snag.message for snag in guesses_are_confirmed(file, (), sheet)]

    assert told == [
        "7 guesses are not confirmed: Duck legs 5, Gratin 2",
        "braise the legs: `cooks: poultry` is a guess, and decides how hot the food must get",
        "bake the gratin: `takes: 60 min` is a guess, and decides when Main is ready: give 4 min",
        "bake the gratin: `attended` is told to be guessed, and the step has no such line",
    ]


def test_without_a_timetable_what_safety_hangs_on_is_still_asked(file: PlanFile) -> None:
    told = [snag.message for snag in check(file) if snag.code == "unsure 1"]

    assert len(told) == 3
    assert any("`cooks: poultry`" in message for message in told)


def test_the_sheet_tells_at_its_line_what_was_guessed(file: PlanFile, sheet: RunSheet) -> None:
    lines = told_on_the_sheet(sheet)
    braise = next(id_ for id_ in lines if "braise" in id_)

    assert "where, takes, cooks guessed" in said.guessed(lines[braise])
