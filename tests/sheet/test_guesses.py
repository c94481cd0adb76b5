"""Which assumed figures a line of the sheet tells: those of which half would have moved it. Reckoned by hand."""

import io
from typing import Any

import msgspec
import pytest

from board.plan.resolve.assumed import Assumed, Kind
from board.sheet import said
from board.sheet.guesses import guesses
from board.sheet.run_sheet import RunSheet
from board.sheet.told import DialTurn
from tests.conftest import slot


def told_at(sheet: RunSheet, id_: str, *assumed: Assumed | str) -> list[str]:
    sheet = msgspec.structs.replace(sheet, assumed=assumed)
    return said.guessed(guesses(sheet).get(id_, ()))


def of(kind: Kind, *tasks: str, **values: Any) -> Assumed:
    return Assumed(kind, values, tasks, tasks)


# The stew is ready at 18:30 and the sauce at 18:45; both are served at 18:50.
WHAT = {
    "half would have moved it": (
        of("keeps-as", "stew", minutes=30, kept="hot", of="stew"), "stew", ["keeps 30 min off the heat: assumed"],
    ),
    "half would have done": (of("keeps-as", "sauce", minutes=15, kept="hot", of="gravy"), "sauce", []),
    "it stands longer than it keeps": (of("keeps", "stew", minutes=10), "stew", ["keeps 10 min: assumed, say keeps:"]),
    "in the fridge": (
        of("keeps-cold", "stew", minutes=39), "stew", ["keeps 39 min in the fridge: assumed, say keeps:"],
    ),
    "longer than is usual, by the plan's times": (
        of("keeps-past", "stew", minutes=39, kept="fridge", stands=30, usual=30, usually="hot", of="stew"), "stew",
        ["keeps 39 min in the fridge: your times"],
    ),
    "by the plan's times": (
        of("keeps-by-times", "stew", minutes=39, kept="room"), "stew",
        ["keeps 39 min in the room: your times, say keeps:"],
    ),
    "best within": (of("best-within", "stew", minutes=39), "stew", ["best within 39 min: assumed"]),
    "best within long enough": (of("best-within", "stew", minutes=40), "stew", []),
    "a length": (of("takes", "chop", minutes=20), "chop", ["20 min: assumed"]),
    "a short one": (of("takes", "chop", minutes=5), "chop", []),
    "one that nobody knows": (of("takes", "chop", minutes=5, ours=True), "chop", ["5 min: assumed, say takes:"]),
    "an hour": (of("soon-before", "chop", most=45, event="guests"), "chop", ["usual hour: assumed"]),
    "hands at something long": (
        of("hands-throughout", "chop", minutes=45), "chop", ["hands all the time: assumed, say attended:"],
    ),
    "work and standing in one": (
        of("hands-in-part", "chop", work=20, minutes=90), "chop", ["hands 20 min of 1 h 30: assumed, say attended:"],
    ),
    "hands at what is known": (of("place-and-hands", "chop", place="worktop"), "chop", []),
    "work at a long table": (
        of("serve", "chop", minutes=15, guests=24), "chop", ["15 min for 24 guests: assumed, say serve:"],
    ),
    "work at a small one": (of("serve", "chop", minutes=5), "chop", []),
    "a day": (of("soon-before", "chop", most=36 * 60, event="guests"), "chop", []),
    "no hour": (of("any-time", "chop"), "chop", ["hour: assumed, say before:"]),
    "a guessed hour": (of("last-hours", "chop", most=180), "chop", ["hour: a guess, say before:"]),
    "how long the last course is eaten": (of("eaten", "clear", minutes=30), "clear", []),
    "what moves nothing": (of("ring", "stew"), "stew", []),
    "another step": (of("keeps", "sauce", minutes=2), "stew", []),
    "a sentence out of an older log": ("keeps 2 h in the room: stew", "stew", []),
}  # fmt: skip


@pytest.mark.parametrize("name", WHAT)
def test_a_line_tells_what_was_assumed_where_that_decided_it(little: RunSheet, name: str) -> None:
    assumed, id_, wanted = WHAT[name]

    assert told_at(little, id_, assumed) == wanted


def test_of_two_that_say_the_same_the_stricter_is_told(little: RunSheet) -> None:
    keeps, best = of("keeps-as", "stew", minutes=30, kept="hot", of="stew"), of("best-within", "stew", minutes=15)

    assert told_at(little, "stew", best, keeps) == ["keeps 30 min off the heat: assumed"]


def test_a_usual_job_tells_hour_and_length_in_one(little: RunSheet) -> None:
    hour, takes = of("soon-before", "chop", most=45, event="guests"), of("takes", "chop", minutes=20)

    assert told_at(little, "chop", hour, takes) == ["usual hour and length: assumed"]


def test_how_long_a_course_is_eaten_is_told_where_another_follows(little: RunSheet) -> None:
    more = msgspec.structs.replace(little.courses[0], name="Sweet", serve="sweet", clear="last")
    sheet = msgspec.structs.replace(little, courses=(*little.courses, more))

    assert told_at(sheet, "clear", of("eaten", "clear", minutes=30)) == ["eaten in 30 min: assumed"]


def test_an_ovens_rate_is_told_once(little: RunSheet) -> None:
    turns = [
        slot(f"heat-{n}", "17:00", "17:15", kind="heat", lane="oven", named=DialTurn("oven", celsius))
        for n, celsius in enumerate((180, 220))
    ]
    sheet = msgspec.structs.replace(little, slots=(*turns, *little.slots))
    rate = Assumed("oven-heats", {"to": 175.0, "minutes": 15}, ("oven",))

    assert told_at(sheet, "heat-0", rate) == ["heating time: assumed"]
    assert told_at(sheet, "heat-1", rate) == []


def test_the_sheets_of_paper_and_for_programs_tell_it(little: RunSheet) -> None:
    from rich.console import Console

    from board.output.leaves import WALL, leaves
    from board.output.sheet import print_sheet
    from board.output.sheet_form import outside_form

    keeps = of("keeps-as", "stew", minutes=30, kept="hot", of="stew")
    sheet = msgspec.structs.replace(little, assumed=(keeps, of("takes", "chop", minutes=20)))
    out = Console(width=200, record=True, file=io.StringIO())
    print_sheet(sheet, "day", out)
    wall, own = leaves(sheet, WALL)[0], leaves(sheet, "host")[0]

    assert "keeps 30 min off the heat: assumed" in out.export_text()
    assert [each["assumed"] for each in outside_form(sheet, valid=True)["steps"] if each["assumed"]] == [
        ["20 min: assumed"], ["keeps 30 min off the heat: assumed"],
    ]  # fmt: skip
    assert [any("assumed" in told for told in row.told) for row in wall.days[0].rows[:2]] == [False, True]
    assert [any("assumed" in told for told in row.told) for row in own.days[0].rows[:2]] == [True, True]
