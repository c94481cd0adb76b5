"""The rest of an evening, worked out anew, leaves those who eat seated too: common practice, no source."""

from datetime import timedelta

import pytest
from msgspec.structs import replace

from board.base.clock import StoppedClock
from board.evening.company import quiet_by_forecast
from board.evening.events import EveningOpened, StepFinished, StepStarted
from board.evening.fold import fold_all
from board.evening.forecast import Forecaster
from board.evening.state import State, begin
from board.evening.wishes import Push
from board.plan.load import PlanFile
from board.schedule.formulate import problem_of
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.session.replan.anew import worked_out_anew
from board.session.replan.remaining import as_it_stands
from board.session.session import Evening, unlogged_evening
from board.sheet import quiet
from board.sheet.run_sheet import RunSheet
from tests.conftest import at, read

SUPPER = """\
event: Supper
date: 2026-11-28
zone: UTC
arrive: '18:30'
guests: [4 guests]
hands: {host: {hours: {on the day: '16:00 - 23:00'}}}
courses:
  - course: Soup
    at: 19:00
    eaten in: 20 min
    clear: 5 min
    dishes:
      - dish: Leek broth
        perishable: no
        steps: [{step: heat the broth, where: stovetop, takes: 10 min, keeps: 20 min hot}]
  - course: Main
    at: 19:45
    eaten in: 30 min
    dishes:
      - dish: Lentils
        perishable: no
        steps: [{step: heat the lentils, where: stovetop, takes: 12 min, keeps: 30 min hot}]
jobs:
  - {job: put the broth away, where: worktop, takes: 4 min, after: 'serve Soup, at least 55 min, at most 1 h 10'}
"""
BROTH = "jobs/put-the-broth-away"


@pytest.fixture(scope="module")
def plan() -> PlanFile:
    found = read(SUPPER)
    assert isinstance(found, PlanFile)
    return found


@pytest.fixture
def evening(plan: PlanFile) -> tuple[Evening, StoppedClock]:
    clock = StoppedClock(at("16:00"))
    return unlogged_evening(make_sheet(plan, solve), clock), clock


def done_till(sheet: RunSheet, moment: str) -> State:
    """All that was to end by then begun and ended at its minute."""
    opened = EveningOpened(n=1, at=at("15:00"), rehearsal=False, sheet=sheet)
    done = [slot for slot in sheet.slots if slot.end <= at(moment)]
    events = [StepStarted(n=0, at=slot.start, slot=slot.id) for slot in done]
    ends = [StepFinished(n=0, at=slot.end, slot=slot.id) for slot in done]
    happened = sorted([*events, *ends], key=lambda event: event.at)
    return fold_all(begin(sheet), [opened, *(replace(event, n=n) for n, event in enumerate(happened, 2))])


def test_as_planned_it_comes_right_after_the_stretch(evening: tuple[Evening, StoppedClock]) -> None:
    """Main is out at 19:45, and nobody gets up till 19:57."""
    assert evening[0].state.sheet.by_id()[BROTH].start == at("19:57")


def test_if_the_course_is_late_so_is_what_comes_after_the_stretch(evening: tuple[Evening, StoppedClock]) -> None:
    """Not worked out anew: the call for the leftovers comes twelve minutes after the pushed course is out."""
    board, _ = evening
    board.wish(Push("Main", 15))
    forecast = board.tick().forecast

    assert forecast.slots["serve/main"].end >= at("20:00")
    assert forecast.slots[BROTH].start == forecast.slots["serve/main"].end + timedelta(minutes=12)
    assert [each.missing for each in quiet_by_forecast(board.state.sheet, forecast)] == [0, 0]


def test_worked_out_anew_the_rest_minds_it(plan: PlanFile, evening: tuple[Evening, StoppedClock]) -> None:
    board, clock = evening
    board.wish(Push("Main", 12))
    clock.set(at("16:05"))
    fresh = worked_out_anew(plan, board.tick().state, clock.now())

    assert fresh is not None
    assert [each.ups for each in quiet.as_planned(fresh)] == [(), ()]


@pytest.mark.parametrize(("since", "left"), [(0, 12), (5, 7), (12, 0), (20, 0)])
def test_of_a_course_that_is_out_what_is_left_of_its_stretch_counts(
    plan: PlanFile, evening: tuple[Evening, StoppedClock], since: int, left: int
) -> None:
    state = done_till(evening[0].state.sheet, "19:00")
    forecast = Forecaster(state.sheet).forecast(state, at(f"19:{since:02}"))
    sittings = as_it_stands(problem_of(plan.plan, plan.filled), state, forecast).sittings

    assert [(each.name, each.minutes) for each in sittings] == ([("Soup", left)] if left else []) + [("Main", 12)]
