"""The first picture: what now, what next, are we all right, in lines that fit any terminal."""

from datetime import timedelta

import pytest
from rich.cells import cell_len

from board.base.clock import StoppedClock
from board.session.session import Evening, unlogged_evening
from board.sheet.run_sheet import RunSheet
from board.view import words
from board.view.board import Viewer
from board.view.first import first_lines


def at_the_first_calls(sheet: RunSheet) -> Evening:
    first = min(slot.start for slot in sheet.slots)
    return unlogged_evening(sheet, StoppedClock(first + timedelta(minutes=2)))


def test_the_due_call_stands_before_what_comes_next(lantern_sheet: RunSheet) -> None:
    evening = at_the_first_calls(lantern_sheet)
    view = Viewer(lantern_sheet).view(evening.peek())
    lines = first_lines(view, 100, 24)

    assert lines[0].startswith(f" {view.standing_sign} {view.standing} ")
    assert view.course is not None
    assert view.course.told in lines[0]
    assert "Lantern supper" in lines[1]
    assert view.clock in lines[2]
    due = next(number for number, line in enumerate(lines) if view.due[0].headline in line)
    following = next(number for number, line in enumerate(lines) if line.startswith(f" {view.coming[0].clock}"))
    assert due < following
    assert lines[-1] == words.OPENING


@pytest.mark.parametrize(("columns", "rows"), [(60, 18), (80, 24), (120, 36), (10, 3), (2, 1)])
def test_it_fits(lantern_sheet: RunSheet, columns: int, rows: int) -> None:
    lines = first_lines(Viewer(lantern_sheet).view(at_the_first_calls(lantern_sheet).peek()), columns, rows)

    assert len(lines) <= rows
    assert all(cell_len(line) <= columns for line in lines)


def test_peeking_raises_no_call_and_keeps_nothing(lantern_sheet: RunSheet) -> None:
    evening = at_the_first_calls(lantern_sheet)
    before = len(evening.told)
    seen = evening.peek()

    assert seen.due
    assert len(evening.told) == before
    assert {call.key for call in evening.tick().raised} == {call.key for call in seen.due}  # the bell is heard after it
