"""Work that crosses a night when the clocks change is reckoned in elapsed time.

Source: IANA time zone database, Europe/Berlin 2026, as zoneinfo reads it: clocks go back on 25 October at 3:00 and
forward on 29 March at 2:00. So 24 hours before Sunday 19:00 is Saturday 20:00, and Saturday 18:00.
"""

import io
import re
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from rich.console import Console

from board.base import words as shared
from board.base.clock import StoppedClock
from board.output.leaves import leaves
from board.output.sheet import print_sheet
from board.output.sheet_form import outside_form
from board.plan.load import PlanFile
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.session.session import unlogged_evening
from board.sheet.run_sheet import RunSheet, restore, store
from board.view.board import Viewer

PLAN = """
event: Change of clocks
date: {date}
zone: Europe/Berlin
arrive: 18:30
guests: [4 guests]
hands:
  host:
    hours: {{day before: 10:00 - 23:00, on the day: 10:00 - 23:00}}
courses:
  - course: Only
    at: 19:00
    serve: 0 min
    dishes:
      - dish: Set cream
        steps:
          - step: chill the cream
            where: fridge
            takes: 24 h
            attended: none
            before: serve Only, at once
            keeps: 1 h in the fridge
"""
BERLIN = ZoneInfo("Europe/Berlin")


@pytest.mark.parametrize(
    ("date", "began", "offset"), [("2026-10-25", "Sat 20:00", "+02:00"), ("2026-03-29", "Sat 18:00", "+01:00")]
)
def test_a_full_day_before_sunday_seven(
    plan_from: Callable[[str], PlanFile], date: str, began: str, offset: str
) -> None:
    sheet = make_sheet(plan_from(PLAN.format(date=date)), solve)
    chill = next(slot for slot in sheet.slots if slot.name == "chill the cream")

    assert chill.start.astimezone(BERLIN).strftime("%a %H:%M") == began
    assert chill.end - chill.start == timedelta(hours=24)
    assert chill.end.astimezone(BERLIN).strftime("%a %H:%M") == "Sun 19:00"
    shown = next(s for s in outside_form(sheet, valid=True)["steps"] if s["id"] == chill.id)
    assert shown["start"].endswith(f"{began[-5:]}:00{offset}")


@pytest.mark.parametrize(
    ("utc", "told"),
    [
        ("2026-10-24T23:59", "01:59"),
        ("2026-10-25T00:00", "02:00 first"),
        ("2026-10-25T00:59", "02:59 first"),
        ("2026-10-25T01:00", "02:00 again"),
        ("2026-10-25T01:59", "02:59 again"),
        ("2026-10-25T02:00", "03:00"),
        ("2026-03-29T00:59", "01:59"),
        ("2026-03-29T01:00", "03:00"),
    ],
)
def test_a_time_that_comes_twice_says_which(utc: str, told: str) -> None:
    assert shared.clock(datetime.fromisoformat(f"{utc}+00:00").astimezone(BERLIN)) == told


@pytest.fixture
def by_night(little: RunSheet) -> RunSheet:
    """The little supper that night: chop 2:30 to 2:50, the stew on ten minutes later."""
    later = datetime(2026, 10, 25, 0, 30, tzinfo=UTC) - datetime(2026, 11, 28, 17, tzinfo=UTC)

    def moved(found: re.Match[bytes]) -> bytes:
        at = datetime.fromisoformat(found[0].decode()) + later
        return at.isoformat().replace("+00:00", "Z").encode()

    text = re.sub(rb"2026-11-28T[0-9:]+Z", moved, store(little))
    return restore(text.replace(b'"zone":"UTC"', b'"zone":"Europe/Berlin"').replace(b"2026-11-28", b"2026-10-25"))


def test_on_paper_both_are_told_apart(by_night: RunSheet) -> None:
    out = Console(file=io.StringIO(), width=100)
    print_sheet(by_night, "day", out)
    shown = out.file.getvalue()  # type: ignore[attr-defined]  # a StringIO
    (leaf,) = leaves(by_night, "wall")

    assert "02:30 first–02:00 again  Stew: chop, stew" in shown
    assert "look in: stew 02:20 again" in shown
    assert shown.count("The clocks go back") == 1
    assert [(row.start, row.end) for day in leaf.days for row in day.rows][:2] == [
        ("02:30 first", "02:50 first"),
        ("02:00 again", "03:00"),
    ]
    assert "The clocks go back" in leaf.notes[0]


def test_on_the_board_both_are_told_apart(by_night: RunSheet) -> None:
    clock = StoppedClock(by_night.slots[0].start)
    view = Viewer(by_night).view(unlogged_evening(by_night, clock).tick())

    assert view.clock == view.due[0].clock == "02:30 first"
    assert view.coming[0].clock == "02:00 again"


def test_another_night_has_nothing_of_it(little: RunSheet) -> None:
    (leaf,) = leaves(little, "wall")

    assert not any("clocks go back" in note for note in leaf.notes)
