"""Named changes to a plan: the lines they write, what the new plan then says, and what they refuse."""

import difflib
from datetime import timedelta
from zoneinfo import ZoneInfo

import pytest

from board.plan.edit.edits import (
    AddHelper,
    AddHistory,
    AddOven,
    AddWay,
    BuyDish,
    CannotEdit,
    DropDay,
    DropDish,
    Edit,
    MoreHours,
    MoreOfTool,
    MoreRings,
    MoveAway,
    PushCourse,
    SetGap,
    SetOn,
    SetOvenTime,
    SetTakes,
    SetWho,
    StretchHours,
    Together,
    apply_all,
    try_all,
    untried,
)
from board.plan.edit.save import data_of
from board.plan.load import PlanFile, read_plan
from board.plan.model.work import Way, Work
from board.plan.places import Loc
from board.plan.resolve.hours import hours_of
from tests.conftest import PLANS
from tests.examples import the_largest_slow

HEAD = """\
event: Small supper  # eight of us
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [8 guests]
"""
HANDS = """\
hands:
  host:  # alone
    hours: {sat: '9:30 - 13:00, 14:00 - 23:30'}
"""
COURSES = """\
courses:
  - course: Soup
    at: 19:15  # at the latest
    dishes:
      - dish: Leek soup
        for: 8
        ingredients: [1 kg leeks]  # well washed
        steps:
          - step: simmer the soup
            takes: 30 min
          - {step: reheat the soup, where: oven at 150 C, takes: 12 min, keeps: 20 min hot}
      # bread is from the baker
      - dish: Bread
        steps:
          - step: slice the bread
            not before: 14:00
            takes: 5 min
            or: {takes: 8 min}  # by hand

  - course: Tart
    at: 50 min after the course before
    dishes:
      - dish: Onion tart
        steps:
          - step: bake the tart
            day: on the day
            takes: 30 min
            or:
              keeps: 45 min in the room  # or so
              takes: 35 min
  - course: Cheese
    at: 40 min after the course before
    dishes:
      - dish: Cheese board
        steps: [{step: cut the cheese, takes: 5 min}]
"""
JOBS = """\
jobs:
  - lay the table  # for eight
  - {job: warm the bread, takes: 5 min, after: "slice the bread, at least 5 min"}
"""
PLAN = HEAD + HANDS + COURSES + JOBS
SOUP, REHEAT = ("courses", 0, "dishes", 0, "steps", 0), ("courses", 0, "dishes", 0, "steps", 1)
BREAD, TART = ("courses", 0, "dishes", 1, "steps", 0), ("courses", 1, "dishes", 0, "steps", 0)


def plan_of(text: str) -> PlanFile:
    found = read_plan(text, "supper.yaml")
    assert isinstance(found, PlanFile), found[0].render()
    return found


def changed(text: str, edit: Edit) -> str:
    return made((text, plan_of(text)), edit)[0]


def lines_changed(before: str, after: str) -> list[str]:
    """`- line` and `+ line`, as they differ."""
    return [line for line in difflib.ndiff(before.splitlines(), after.splitlines()) if line[0] in "+-"]


def with_kitchen(kitchen: str) -> str:
    return HEAD + kitchen + HANDS + COURSES


# Name: text, edit, the lines that differ, in full.
EXAMPLES: dict[str, tuple[str, Edit, list[str]]] = {
    "a learned length": (
        PLAN, SetTakes(SOUP, 25, 32, 40), ["-             takes: 30 min", "+             takes: 25 to 32 to 40 min"],
    ),
    "a learned length of hours": (
        PLAN, SetTakes(SOUP, 110, 125, 160),
        ["-             takes: 30 min", "+             takes: 1 h 50 to 2 h 05 to 2 h 40"],
    ),
    "a learned length of another way": (
        PLAN, SetTakes((*BREAD, "or", 0), 9, 9, 9),
        ["-             or: {takes: 8 min}  # by hand", "+             or: {takes: 9 min}  # by hand"],
    ),
    "a learned length of a job of one line": (
        PLAN, SetTakes(("jobs", 0), 28, 28, 28),
        ["-   - lay the table  # for eight", "+   - {job: lay the table, takes: 28 min}  # for eight"],
    ),
    "an oven's learned figure in its own words": (
        with_kitchen("kitchen: {ovens: {range: {heats: 14 min to 350 F, cools: 22 min from 190 to 110 C}}}\n"),
        Together((SetOvenTime("range", "heats", 17, "17 min to 180 C"), SetOvenTime("Range", "cools", 25, "x"))),
        ["- kitchen: {ovens: {range: {heats: 14 min to 350 F, cools: 22 min from 190 to 110 C}}}",
         "+ kitchen: {ovens: {range: {heats: 17 min to 350 F, cools: 25 min from 190 to 110 C}}}"],
    ),
    "an oven's first figure": (
        with_kitchen("kitchen:\n  ovens:\n    range:  # gas\n      shelves: 2\n"),
        SetOvenTime("range", "heats", 17, "17 min to 175 C"), ["+       heats: 17 min to 175 C"],
    ),
    "a learned figure of an oven that was counted": (
        with_kitchen("kitchen:\n  ovens: 1  # small\n"),
        SetOvenTime("oven", "heats", 17, "17 min to 175 C"),
        ["-   ovens: 1  # small", "+   ovens: {oven: {heats: 17 min to 175 C}}  # small"],
    ),
    "a learned figure of an oven the plan does not speak of": (
        PLAN, SetOvenTime("oven", "heats", 17, "17 min to 175 C"),
        ["+ kitchen:", "+   ovens:", "+     oven:", "+       heats: 17 min to 175 C"],
    ),
    "the first line of a history": (
        PLAN, AddHistory(("2026-11-29: all lessons; from 2026-11-28 [0000000a]",)),
        ["+ history:", "+   - '2026-11-29: all lessons; from 2026-11-28 [0000000a]'"],
    ),
    "one more line of a history": (
        PLAN + "history:\n- made in 2024  # or so\n", AddHistory(("mended",)), ["+ - mended"],
    ),
    "a helper": (
        PLAN, AddHelper("Nora", "on the day", "18:10", "18:55"),
        ["+   Nora:", "+     hours:", "+       on the day: 18:10 - 18:55", "+     hired: yes"],
    ),
    "a helper in braces": (
        PLAN.replace(HANDS, "hands: {host: {hours: {sat: '9:00 - 23:30'}}}\n"),
        AddHelper("Nora", "sat", "18:10", "18:55"),
        ["- hands: {host: {hours: {sat: '9:00 - 23:30'}}}",
         "+ hands: {host: {hours: {sat: '9:00 - 23:30'}}, Nora: {hours: {sat: 18:10 - 18:55}, hired: yes}}"],
    ),
    "an earlier start, the day in other words": (
        PLAN, StretchHours("host", "on the day", 0, start="8:45"),
        ["-     hours: {sat: '9:30 - 13:00, 14:00 - 23:30'}", "+     hours: {sat: '08:45 - 13:00, 14:00 - 23:30'}"],
    ),
    "a later end where that stretch stands first, in words": (
        PLAN.replace("9:30 - 13:00, 14:00 - 23:30", "2 pm to 11 pm,9:30 to 13:00"),
        StretchHours("host", "sat", 0, end="23:10"),
        ["-     hours: {sat: '2 pm to 11 pm,9:30 to 13:00'}", "+     hours: {sat: '2 pm to 23:10,9:30 to 13:00'}"],
    ),
    "both edges of the stretch between": (
        PLAN, StretchHours("host", "sat", 1, start="13:40", end="0:15"),
        ["-     hours: {sat: '9:30 - 13:00, 14:00 - 23:30'}", "+     hours: {sat: '9:30 - 13:00, 13:40 - 00:15'}"],
    ),
    "an earlier start in the long form": (
        PLAN.replace("'9:30 - 13:00, 14:00 - 23:30'", "[{start: 9:30, end: 13:00}]"),
        StretchHours("host", "sat", 0, start="8:45"),
        ["-     hours: {sat: [{start: 9:30, end: 13:00}]}", "+     hours: {sat: [{start: 08:45, end: 13:00}]}"],
    ),
    "an evening on a day that had no hours": (
        PLAN.replace("hours: {sat: '9:30 - 13:00, 14:00 - 23:30'}", "hours:\n      sat: 9:30 - 23:30"),
        MoreHours("host", "day before", "19:00 - 21:00"), ["+       day before: 19:00 - 21:00"],
    ),
    "dressing earlier": (
        PLAN.replace(HANDS, HANDS + "    away:\n      get dressed: 17:25 - 17:55  # the blue one\n"),
        MoveAway("host", "get dressed", "16:55", "17:25"),
        ["-       get dressed: 17:25 - 17:55  # the blue one", "+       get dressed: 16:55 - 17:25  # the blue one"],
    ),
    "dressing earlier, the day beside it": (
        PLAN.replace(HANDS, HANDS + "    away: {get dressed: 'sat, 5 pm to 5:30 pm'}\n"),
        MoveAway("host", "get dressed", "16:45", "17:15"),
        ["-     away: {get dressed: 'sat, 5 pm to 5:30 pm'}", "+     away: {get dressed: 'sat, 16:45 - 17:15'}"],
    ),
    "dressing earlier, the day a date": (
        PLAN.replace(HANDS, HANDS + "    away: {get dressed: 2026-11-28 17:00-17:30}\n"),
        MoveAway("host", "get dressed", "16:45", "17:15"),
        ["-     away: {get dressed: 2026-11-28 17:00-17:30}", "+     away: {get dressed: 2026-11-28 16:45 - 17:15}"],
    ),
    "dressing earlier in the long form": (
        PLAN.replace(HANDS, HANDS + "    away: {get dressed: {start: 17:00, end: 17:30}}\n"),
        MoveAway("host", "get dressed", "16:45", "17:15"),
        ["-     away: {get dressed: {start: 17:00, end: 17:30}}",
         "+     away: {get dressed: {start: 16:45, end: 17:15}}"],
    ),
    "somebody for a step": (PLAN, SetWho(SOUP, "host"), ["+             who: host"]),
    "somebody else for a step": (
        PLAN.replace("soup\n            takes: 30 min\n", "soup\n            takes: 30 min\n            who: [Nora]\n")
        .replace(HANDS, HANDS + "  Nora: {hours: {sat: 17:00 - 20:00}}\n"),
        SetWho(SOUP, "host"), ["-             who: [Nora]", "+             who: host"],
    ),
    "somebody for a job on one line": (
        PLAN, SetWho(("jobs", 0), "host"),
        ["-   - lay the table  # for eight", "+   - {job: lay the table, who: host}  # for eight"],
    ),
    "more hours, in their order": (
        PLAN, MoreHours("host", "sat", "13:15 - 13:45"),
        ["-     hours: {sat: '9:30 - 13:00, 14:00 - 23:30'}",
         "+     hours: {sat: '9:30 - 13:00, 13:15 - 13:45, 14:00 - 23:30'}"],
    ),
    "more hours, before all others": (
        PLAN, MoreHours("host", "on the day", "7:00 - 8:00"),
        ["-     hours: {sat: '9:30 - 13:00, 14:00 - 23:30'}",
         "+     hours: {sat: '7:00 - 8:00, 9:30 - 13:00, 14:00 - 23:30'}"],
    ),
    "more hours in the long form": (
        PLAN.replace("'9:30 - 13:00, 14:00 - 23:30'", "[{start: 9:30, end: 13:00}]"),
        MoreHours("host", "sat", "2 pm - 23:30"),
        ["-     hours: {sat: [{start: 9:30, end: 13:00}]}",
         "+     hours: {sat: [{start: 9:30, end: 13:00}, {start: 14:00, end: 23:30}]}"],
    ),
    "a course later": (
        PLAN, PushCourse("soup", "19:30"), ["-     at: 19:15  # at the latest", "+     at: 19:30  # at the latest"],
    ),
    "a course that stood so long after another": (
        PLAN, PushCourse("Tart", "20:20"), ["-     at: 50 min after the course before", "+     at: 20:20"],
    ),
    "a course sooner after another": (
        PLAN, SetGap("tart", 105),
        ["-     at: 50 min after the course before", "+     at: 1 h 45 after the course before"],
    ),
    "a course sooner after another, in the long form": (
        PLAN.replace("50 min after the course before", "{after: {minutes: 50, course: Soup}}"), SetGap("Tart", 40),
        ["-     at: {after: {minutes: 50, course: Soup}}", "+     at: {after: {minutes: 40, course: Soup}}"],
    ),
    "an oven where no kitchen is told": (
        PLAN, AddOven("second oven", "oven"), ["+ kitchen:", "+   ovens:", "+     oven: {}", "+     second oven: {}"],
    ),
    "an oven where no ovens are told": (
        with_kitchen("kitchen:\n  rings: 4\n"), AddOven("second oven", "oven"),
        ["+   ovens:", "+     oven: {}", "+     second oven: {}"],
    ),
    "one oven and another": (
        with_kitchen("kitchen:\n  ovens: 1  # small\n"), AddOven("second oven", "oven"),
        ["-   ovens: 1  # small", "+   ovens: {oven: {}, second oven: {}}  # small"],
    ),
    "two ovens and another": (
        with_kitchen("kitchen: {ovens: 2}\n"), AddOven("third oven", "oven 2"),
        ["- kitchen: {ovens: 2}", "+ kitchen: {ovens: {oven 1: {}, oven 2: {}, third oven: {}}}"],
    ),
    "an oven where there was none": (
        with_kitchen("kitchen: {ovens: 0}\n").replace("where: oven at 150 C, ", ""), AddOven("oven"),
        ["- kitchen: {ovens: 0}", "+ kitchen: {ovens: {oven: {}}}"],
    ),
    "an oven like one in lines": (
        with_kitchen("kitchen:\n  ovens:\n    big oven:\n      shelves: 3\n      high: 240 C  # or so\n  rings: 4\n"),
        AddOven("other oven", "big oven"),
        ["+     other oven:", "+       shelves: 3", "+       high: 240 C"],
    ),
    "an oven like one of which nothing is told": (
        with_kitchen("kitchen:\n  ovens:\n    oven:\n"), AddOven("other oven", "oven"), ["+     other oven: {}"],
    ),
    "two rings more than the usual four": (PLAN, MoreRings(2), ["+ kitchen:", "+   rings: 6"]),
    "a ring more": (
        with_kitchen("kitchen: {rings: 2, fridge: 40 litres}\n"), MoreRings(1),
        ["- kitchen: {rings: 2, fridge: 40 litres}", "+ kitchen: {rings: 3, fridge: 40 litres}"],
    ),
    "a tool": (PLAN, MoreOfTool("big pot", 1), ["+ kitchen:", "+   tools:", "+     big pot: 1"]),
    "a tool more": (
        with_kitchen("kitchen: {tools: {big pot: 1}}\n"), MoreOfTool("big pot", 2),
        ["- kitchen: {tools: {big pot: 1}}", "+ kitchen: {tools: {big pot: 3}}"],
    ),
    "another way where there was one": (
        PLAN, AddWay(SOUP, {"where": "oven at 150 C", "takes": "50 min"}),
        ["+             or:", "+               - where: oven at 150 C", "+                 takes: 50 min"],
    ),
    "a third way beside one in braces": (
        PLAN, AddWay(BREAD, {"takes": "3 min"}),
        ["-             or: {takes: 8 min}  # by hand",
         "+             or: [{takes: 8 min}, {takes: 3 min}]  # by hand"],
    ),
    "a third way beside one in lines": (
        PLAN, AddWay(TART, {"keeps": "1 h hot"}),
        ["-               keeps: 45 min in the room  # or so", "+               - keeps: 45 min in the room  # or so",
         "-               takes: 35 min", "+                 takes: 35 min", "+               - keeps: 1 h hot"],
    ),
    "another way for a job of one line": (
        PLAN, AddWay(("jobs", 0), {"takes": "40 min"}),
        ["-   - lay the table  # for eight", "+   - {job: lay the table, or: [{takes: 40 min}]}  # for eight"],
    ),
    "another heat": (
        PLAN, SetOn(REHEAT, "oven at 120 C, 1 shelf"),
        ["-           - {step: reheat the soup, where: oven at 150 C, takes: 12 min, keeps: 20 min hot}",
         "+           - {step: reheat the soup, where: 'oven at 120 C, 1 shelf', takes: 12 min, keeps: 20 min hot}"],
    ),
    "another place to keep": (
        PLAN, SetOn((*REHEAT, "keeps"), "30 min in the room"),
        ["-           - {step: reheat the soup, where: oven at 150 C, takes: 12 min, keeps: 20 min hot}",
         "+           - {step: reheat the soup, where: oven at 150 C, takes: 12 min, keeps: 30 min in the room}"],
    ),
    "another place to keep in another way": (
        PLAN, SetOn((*TART, "or", 0, "keeps"), "30 min hot"),
        ["-               keeps: 45 min in the room  # or so", "+               keeps: 30 min hot  # or so"],
    ),
    "a place where none was told": (PLAN, SetOn(SOUP, "stovetop, 1 ring"), ["+             where: stovetop, 1 ring"]),
    "any day": (PLAN, DropDay(TART), ["-             day: on the day"]),
    "any day and hour": (
        PLAN.replace("not before: 14:00", "day: sat\n            not before: 14:00"), DropDay(BREAD),
        ["-             day: sat", "-             not before: 14:00"],
    ),
    "any hour": (PLAN, DropDay((*BREAD, "not before")), ["-             not before: 14:00"]),
    "a dish less": (
        PLAN, DropDish("Soup", "Leek soup"),
        ["-       - dish: Leek soup", "-         for: 8", "-         ingredients: [1 kg leeks]  # well washed",
         "-         steps:", "-           - step: simmer the soup", "-             takes: 30 min",
         "-           - {step: reheat the soup, where: oven at 150 C, takes: 12 min, keeps: 20 min hot}"],
    ),
    "a dish bought": (
        PLAN, BuyDish("Soup", "Leek soup", 10),
        ["-         ingredients: [1 kg leeks]  # well washed", "-           - step: simmer the soup",
         "+           - step: plate the bought Leek soup", "-             takes: 30 min", "+             takes: 10 min",
         "-           - {step: reheat the soup, where: oven at 150 C, takes: 12 min, keeps: 20 min hot}"],
    ),
    "a dish in braces bought": (
        PLAN, BuyDish("Cheese", "Cheese board", 5),
        ["-         steps: [{step: cut the cheese, takes: 5 min}]",
         "+         steps: [{step: plate the bought Cheese board, takes: 5 min}]"],
    ),
}  # fmt: skip


@pytest.mark.parametrize(("text", "edit", "lines"), EXAMPLES.values(), ids=EXAMPLES)
def test_an_edit_changes_these_lines(text: str, edit: Edit, lines: list[str]) -> None:
    new = changed(text, edit)

    assert lines_changed(text, new) == lines
    plan_of(new)


@pytest.mark.parametrize(("text", "edit", "lines"), EXAMPLES.values(), ids=EXAMPLES)
def test_an_edit_that_is_only_tried_makes_the_plan_it_would_write(text: str, edit: Edit, lines: list[str]) -> None:
    file = plan_of(text)
    tried = try_all(untried(text, file), [edit])
    new, after = made((text, file), edit)

    assert tried is not None
    assert (tried.file.plan, tried.file.filled) == (after.plan, after.filled)
    assert tried.data == data_of(new)
    assert untried(text, file).data == data_of(text)  # which is left as it was


@pytest.mark.parametrize(("text", "edit", "lines"), EXAMPLES.values(), ids=EXAMPLES)
def test_an_edit_does_the_same_to_a_file_from_another_system(text: str, edit: Edit, lines: list[str]) -> None:
    """A byte-order mark, both signs at each line's end, and no line end at the last."""
    other = "\ufeff" + text.replace("\n", "\r\n")
    new = changed(other, edit)

    assert new == "\ufeff" + changed(text, edit).replace("\n", "\r\n")
    cut_short = text.removesuffix("\n")
    assert changed(cut_short, edit).removesuffix("\n") == changed(text, edit).removesuffix("\n")


REFUSED: dict[str, tuple[Edit, str]] = {
    "a learned figure of no oven": (SetOvenTime("range", "heats", 17, "17 min to 175 C"), "no oven is called range"),
    "a learned length of no step": (SetTakes(("courses", 9), 1, 2, 3), "no step or job"),
    "one of several that cannot be": (
        Together((SetTakes(SOUP, 1, 2, 3), SetTakes(("courses", 9), 1, 2, 3))), "no step or job",
    ),
    "hands there already": (AddHelper("host", "sat", "18:00", "19:00"), "host is among the hands already"),
    "a day that is none": (AddHelper("Nora", "some day", "18:00", "19:00"), "'some day' is not a day"),
    "a time that is none": (AddHelper("Nora", "sat", "18:00", "25:00"), "'25:00' is not a time of day"),
    "hours of nobody": (StretchHours("Nora", "sat", 0, start="8:00"), "nobody among the hands is called Nora"),
    "hours as they stand": (StretchHours("host", "sat", 0, start="9:30"), "has the hours 09:30 - 13:00 already"),
    "a stretch there is not": (StretchHours("host", "sat", 2, start="8:00"), "host has no such stretch of hours (sat)"),
    "a stretch of no hours": (StretchHours("host", "fri", 0, start="8:00"), "no such stretch of hours (fri)"),
    "a stretch on no day": (StretchHours("host", "soon", 0, start="8:00"), "'soon' is not a day"),
    "a stretch at no time": (StretchHours("host", "sat", 0, start="8"), "'8'"),
    "nobody away": (MoveAway("Nora", "get dressed", "16:00", "16:30"), "nobody among the hands is called Nora"),
    "not away": (MoveAway("host", "get dressed", "16:00", "16:30"), "host has no time away called get dressed"),
    "a step for nobody": (SetWho(SOUP, "Nora"), "nobody among the hands is called Nora"),
    "no step for somebody": (SetWho(("courses", 9), "host"), "no step or job"),
    "a gap of a course by the clock": (SetGap("Soup", 10), "Soup is wanted by the clock"),
    "a gap of no course": (SetGap("Fish", 10), "no course is called Fish"),
    "a gap that stands": (SetGap("Tart", 50), "Tart is wanted at 50 min already"),
    "hours there already": (MoreHours("host", "sat", "15:00 - 16:00"), "has the hours 15:00 - 16:00 already"),
    "hours without an end": (MoreHours("host", "sat", "15:00"), "'15:00' is not a stretch of time"),
    "more hours of nobody": (MoreHours("Nora", "sat", "15:00 - 16:00"), "nobody"),
    "a course nobody wrote": (PushCourse("Fish", "20:00"), "no course is called Fish"),
    "a time that stands": (PushCourse("Soup", "19:15"), "Soup is wanted at 19:15 already"),
    "a course before the guests": (PushCourse("Soup", "18:00"), "before the guests arrive"),
    "a course past the next": (PushCourse("Tart", "19:00"), "could not be read"),
    "an oven there already": (AddOven("oven"), "an oven is called oven already"),
    "like no oven": (AddOven("second oven", "big oven"), "no oven is called big oven"),
    "an oven called like a place": (AddOven("fridge"), "cannot be called 'fridge'"),
    "an oven with a comma": (AddOven("oven, big"), "cannot be called"),
    "no ring more": (MoreRings(0), "one more at least"),
    "more rings than a kitchen has": (MoreRings(90), "too large for `rings`"),
    "no tool more": (MoreOfTool("pan", 0), "one more at least"),
    "a way of nothing": (AddWay(("courses", 0), {"takes": "5 min"}), "no step or job"),
    "a way with nothing in it": (AddWay(SOUP, {}), "must differ"),
    "a way with a word that is none": (AddWay(SOUP, {"takse": "5 min"}), "'takse' is not a word"),
    "a way to a tool nobody has": (AddWay(SOUP, {"where": "worktop, slicer"}), "no tool called 'slicer'"),
    "a place of no step": (SetOn(("courses", 9, "dishes", 0, "steps", 0), "worktop"), "no step or job"),
    "a place that stands": (SetOn(REHEAT, "oven at 150 C"), "says so already"),
    "a place that is none": (SetOn(SOUP, "hot"), "'hot' is no lane to work in"),
    "a day where none is": (DropDay(SOUP), "says nothing of its day"),
    "an hour where none is": (DropDay((*TART, "not after")), "says nothing of its day"),
    "a course's only dish": (DropDish("Tart", "Onion tart"), "Onion tart is the only dish of Tart"),
    "a dish nobody wrote": (DropDish("Soup", "Pie"), "no dish of Soup is called Pie"),
    "a dish of no course": (BuyDish("Fish", "Pie", 5), "no course is called Fish"),
    "a dish that other work names": (DropDish("Soup", "bread"), "named in `after` or `before` of: warm the bread"),
    "a dish that other work names, bought": (BuyDish("Soup", "Bread", 5), "of: warm the bread"),
}  # fmt: skip


@pytest.mark.parametrize(("edit", "says"), REFUSED.values(), ids=REFUSED)
def test_what_cannot_be_done_is_refused_with_a_reason(edit: Edit, says: str) -> None:
    found = edit.made(PLAN, plan_of(PLAN))

    assert isinstance(found, CannotEdit), found
    assert says in found.reason
    assert try_all(untried(PLAN, plan_of(PLAN)), [edit]) is None


def test_a_text_that_is_not_the_plan_that_was_read_is_left_alone() -> None:
    found = MoreRings(1).made(PLAN.replace("8 guests", "9 guests"), plan_of(PLAN))

    assert isinstance(found, CannotEdit)
    assert "read it again" in found.reason


def test_edits_follow_one_another_and_stop_at_the_first_that_cannot_be() -> None:
    edits = [PushCourse("Soup", "19:30"), AddOven("second oven", "oven"), AddOven("third oven", "second oven")]
    made = apply_all(PLAN, plan_of(PLAN), edits)
    assert not isinstance(made, CannotEdit)
    new, file = made
    assert file.plan == plan_of(new).plan
    assert isinstance(new, str)

    assert list(plan_of(new).plan.kitchen.ovens) == ["oven", "second oven", "third oven"]
    assert plan_of(new).plan.courses[0].at.clock == "19:30"
    assert isinstance(apply_all(PLAN, plan_of(PLAN), [*edits, AddOven("oven")]), CannotEdit)


def test_a_step_that_names_an_oven_still_finds_it_among_more() -> None:
    text = with_kitchen("kitchen:\n  ovens: 2\n").replace("oven at 150 C", "oven 2 at 150 C")
    plan = plan_of(changed(text, AddOven("third oven"))).plan

    assert plan.courses[0].dishes[0].steps[1].where is not None
    assert plan.courses[0].dishes[0].steps[1].where.oven == "oven 2"


# --- the bundled plans: what each edit is to say --------------------------------------------------------------
NAMES = sorted(path.name for path in PLANS.glob("*.yaml"))


@pytest.fixture(scope="module", params=[the_largest_slow(name) for name in NAMES])
def bundled(request: pytest.FixtureRequest) -> tuple[str, PlanFile]:
    text = (PLANS / request.param).read_text(encoding="utf-8")
    return text, plan_of(text)


def made(bundled: tuple[str, PlanFile], edit: Edit) -> tuple[str, PlanFile]:
    new = edit.made(*bundled)
    assert isinstance(new, tuple), new
    return new


def lost(before: str, after: str) -> list[str]:
    """The lines that are there no longer, without their indentation."""
    return [line[1:].strip() for line in _differing(before, after) if line[0] == "-"]


def _differing(before: str, after: str) -> list[str]:
    return [*difflib.unified_diff(before.splitlines(), after.splitlines(), lineterm="", n=0)][2:]


def test_a_helper_and_hours_are_added_to_a_bundled_plan_and_no_line_is_lost(bundled: tuple[str, PlanFile]) -> None:
    text, after = made(bundled, AddHelper("Nora", "on the day", "16:10", "17:55"))
    assert lost(bundled[0], text) == []
    (start, end) = hours_of(after.plan, "Nora")[0]
    assert (end - start).total_seconds() == 105 * 60

    text, after = made(bundled, MoreHours("host", "3 days before", "18:00 - 20:00"))
    assert lost(bundled[0], text) == []
    assert len(hours_of(after.plan, "host")) == len(hours_of(bundled[1].plan, "host")) + 1

    text, after = made(bundled, StretchHours("host", "on the day", 0, start="06:30"))
    assert [line.split(":")[0] for line in lost(bundled[0], text)] == ["on the day"]
    spent = [sum((b - a).total_seconds() for a, b in hours_of(f.plan, "host")) for f in (bundled[1], after)]
    assert spent[1] > spent[0]


def test_each_course_of_a_bundled_plan_goes_five_minutes_later_in_one_line(bundled: tuple[str, PlanFile]) -> None:
    zone = ZoneInfo(bundled[1].plan.zone)
    for number, course in enumerate(bundled[1].filled.courses):
        later = course.wanted + timedelta(minutes=5)
        text, after = made(bundled, PushCourse(course.name, f"{later.astimezone(zone):%H:%M}"))
        assert len(lost(bundled[0], text)) == 1
        assert after.filled.courses[number].wanted == later


def test_a_course_that_follows_a_pushed_one_keeps_its_distance() -> None:
    before, after = plan_of(PLAN), plan_of(changed(PLAN, PushCourse("Tart", "20:20")))

    moved = [b.wanted - a.wanted for a, b in zip(before.filled.courses, after.filled.courses, strict=True)]
    assert moved == [timedelta(), timedelta(minutes=15), timedelta(minutes=15)]


def test_more_to_cook_with_is_added_to_a_bundled_plan_in_one_line(bundled: tuple[str, PlanFile]) -> None:
    kitchen = bundled[1].plan.kitchen
    like = next(iter(kitchen.ovens))
    text, after = made(bundled, AddOven("borrowed oven", like))
    assert lost(bundled[0], text) == []
    assert after.plan.kitchen.ovens["borrowed oven"] == kitchen.ovens[like]

    text, after = made(bundled, MoreRings(1))
    assert (after.plan.kitchen.rings, len(lost(bundled[0], text))) == (kitchen.rings + 1, 1)

    tool = next(iter(kitchen.tools))
    text, after = made(bundled, MoreOfTool(tool, 2))
    assert (after.plan.kitchen.tools[tool], len(lost(bundled[0], text))) == (kitchen.tools[tool] + 2, 1)


def work_at(file: PlanFile, loc: Loc) -> Work:
    return next(task.work for task in file.filled.tasks.values() if task.node.loc == loc and task.work)


def test_steps_of_a_bundled_plan_get_another_way_or_place_and_lose_their_day(bundled: tuple[str, PlanFile]) -> None:
    works = [(task.node.loc, task.work) for task in bundled[1].filled.tasks.values() if task.work]
    for loc, work in works[::19]:
        ways = work_at(made(bundled, AddWay(loc, {"takes": "44 min"}))[1], loc).or_
        assert ways[:-1] == work.or_
        assert ways[-1] == Way.model_validate({"takes": "44 min"})
    for loc in [loc for loc, work in works if work.where is not None and work.where.place == "oven"][::6]:
        text, after = made(bundled, SetOn(loc, "oven at 123 C"))
        assert len(lost(bundled[0], text)) == 1
        assert work_at(after, loc).where == Way.model_validate({"where": "oven at 123 C"}).where
    days = [loc for loc, work in works if work.day is not None]
    assert days
    text, after = made(bundled, DropDay((*days[-1], "day")))
    assert [line.split(":")[0] for line in lost(bundled[0], text)] == ["day"]
    assert work_at(after, days[-1]).day is None


def test_dishes_of_a_bundled_plan_are_dropped_or_bought_unless_others_wait_for_them(
    bundled: tuple[str, PlanFile],
) -> None:
    refused = 0
    for course in bundled[1].plan.courses:
        for dish in course.dishes[-1:]:
            bought = BuyDish(course.course, dish.dish, 12).made(*bundled)
            dropped = DropDish(course.course, dish.dish).made(*bundled)
            if isinstance(bought, CannotEdit):
                assert isinstance(dropped, CannotEdit)
                assert "named in" in bought.reason
                refused += 1
                continue
            again = next(d for c in bought[1].plan.courses for d in c.dishes if d.dish == dish.dish)
            assert [step.step for step in again.steps] == [f"plate the bought {dish.dish}"]
            assert (again.for_, again.ingredients) == (dish.for_, [])
            if isinstance(dropped, CannotEdit):
                assert len(course.dishes) == 1
                continue
            assert dish.dish not in [d.dish for c in dropped[1].plan.courses for d in c.dishes]
            assert [line for line in _differing(bundled[0], dropped[0]) if line[0] == "+"] == []
    assert refused < len(bundled[1].plan.courses)


GUESTS = """\
guests:
  - Kit (GF), severe nut allergy   # asked on the phone
  - 'Sam: shellfish'
  - Tom "Bean", over 70
  - Max can't have dairy
  - Leo: 8 months old
  - 3 others
"""


@pytest.mark.parametrize("edit", [AddHelper("Nora", "sat", "18:10", "18:55"), MoreRings(2)])
def test_an_edit_keeps_what_the_host_wrote_beside_a_guest(edit: Edit) -> None:
    text = (HEAD + HANDS + COURSES).replace("guests: [8 guests]\n", GUESTS)
    before = read_plan(text, "plan.yaml")
    assert isinstance(before, PlanFile), before

    made = apply_all(text, before, [edit])

    assert not isinstance(made, CannotEdit)
    assert GUESTS in made[0]
    assert made[1].plan.guests == before.plan.guests
