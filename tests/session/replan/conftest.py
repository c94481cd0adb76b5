"""A supper in which a quicker way of baking, dearer in looking in, makes up for a slip."""

from datetime import datetime

import pytest

from board.base.clock import StoppedClock
from board.evening.wishes import Later
from board.plan.load import PlanFile
from board.rehearsal.player import AtOnce, Deed, advance
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.session.session import Evening, Present, unlogged_evening
from board.sheet.run_sheet import RunSheet
from tests.conftest import at, read

PIE = """
event: Pie supper
date: 2026-11-28
zone: UTC
arrive: 19:00
guests: [4 guests]
hands:
  host:
    hours:
      on the day: 18:00 - 23:30
courses:
  - course: Main
    at: 19:30
    dishes:
      - dish: Pie
        steps:
          - step: roll out and fill the pie
            takes: 10 min
          - step: bake the pie
            where: oven at 180 C
            takes: 60 min
            attended: 2 min at the start, 2 min at the end
            keeps: 20 min
            or:
              - where: oven at 220 C
                takes: 35 min
                attended: 2 min at the start, 1 min every 5 min, 2 min at the end
"""
ROLL, BAKE = "pie/roll-out-and-fill-the-pie", "pie/bake-the-pie"


@pytest.fixture(scope="session")
def pie() -> PlanFile:
    found = read(PIE)
    assert isinstance(found, PlanFile)
    return found


@pytest.fixture(scope="session")
def pie_sheet(pie: PlanFile) -> RunSheet:
    return make_sheet(pie, solve)


class Slipping:
    """An evening of the pie: everything is answered when called, but the rolling out is put off until a moment."""

    def __init__(self, sheet: RunSheet) -> None:
        self.clock = StoppedClock(at("17:55"))
        self.evening: Evening = unlogged_evening(sheet, self.clock)

    def until(self, moment: datetime) -> None:
        """Rolling out is put off each time it is called."""
        list(advance(self.evening, self.clock, _PuttingOff(), moment))
        self.clock.set(moment)
        self.evening.tick()

    def to_the_end(self) -> None:
        """Every call answered when it comes."""
        list(advance(self.evening, self.clock, AtOnce()))


class _PuttingOff(AtOnce):
    def deed(self, present: Present) -> Deed | None:
        call = next(iter(present.due), None)
        return Deed(Later(*call.key)) if call is not None and call.slot == ROLL else super().deed(present)


@pytest.fixture
def slipping(pie_sheet: RunSheet) -> Slipping:
    return Slipping(pie_sheet)
