"""What another time for a step would do, said before it is taken."""

from datetime import timedelta

import msgspec

from board.sheet.run_sheet import RunSheet
from board.sheet.told import GivenUp, Late, Longest
from board.view.tried import MOST_MOVED, told


def later(sheet: RunSheet, minutes: int, *slots: str) -> RunSheet:
    by = timedelta(minutes=minutes)
    moved = [
        msgspec.structs.replace(each, start=each.start + by, end=each.end + by) if each.id in slots else each
        for each in sheet.slots
    ]
    return msgspec.structs.replace(sheet, slots=tuple(moved))


def test_a_time_that_moves_nothing_else_says_so(lantern_sheet: RunSheet) -> None:
    slot = next(each for each in lantern_sheet.slots if each.name == "braise the beef")

    assert told(lantern_sheet, later(lantern_sheet, 30, slot.id), slot.id) == (
        f"braise the beef {slot.start:%H:%M} → {slot.start + timedelta(minutes=30):%H:%M}",
        "nothing else moves, and nothing is lost",
    )


def test_what_moves_too_is_told_by_name_as_far_as_a_host_reads_and_the_rest_counted(lantern_sheet: RunSheet) -> None:
    slot, *others = [each for each in lantern_sheet.slots if each.kind == "step"][: MOST_MOVED + 3]
    lines = told(lantern_sheet, later(lantern_sheet, 5, slot.id, *(each.id for each in others)), slot.id)

    assert lines[-1].startswith(f"moves too: {others[0].name}")
    assert lines[-1].endswith("and 2 more")


def test_courses_and_what_is_given_up_come_before_what_moves(lantern_sheet: RunSheet) -> None:
    slot = lantern_sheet.slots[0]
    lost = GivenUp(Late("Main", 20), Longest(slot.id, "kept", 90), 5)
    courses = tuple(
        msgspec.structs.replace(each, served=each.served + timedelta(minutes=20)) if each.name == "Main" else each
        for each in lantern_sheet.courses
    )
    after = msgspec.structs.replace(later(lantern_sheet, 15, slot.id), courses=courses, given_up=(lost,), proved=False)
    lines = told(lantern_sheet, after, slot.id)

    assert "Main 20:15 → 20:35" in lines[1]
    assert lines[2] == "gives up: Main goes out 20 min late"
    assert lines[-1] == "not proved: there may be a better answer"
    assert told(after, after, slot.id)[1] == "nothing else moves, and nothing is lost"  # given up before, too


def test_without_a_timetable_it_says_why(lantern_sheet: RunSheet) -> None:
    assert told(lantern_sheet, None, "x", "the soup \x1b waits for itself") == ("the soup \ufffd waits for itself",)
    assert told(lantern_sheet, None, "x") == ("no timetable was found with it",)
