"""Work that takes two people: both are free whenever it needs hands, on paper, on the board and in the odds."""

from collections.abc import Callable
from datetime import timedelta

import numpy as np
import pytest
from msgspec.structs import replace

from board.evening.calls import Call
from board.evening.forecast import Forecaster
from board.evening.hands import called
from board.evening.state import begin
from board.odds.draw import three_point
from board.odds.simulate import Evenings
from board.output.leaves import leaves
from board.plan.load import PlanFile, read_plan
from board.schedule.audit.validate import validate
from board.schedule.formulate import problem_of
from board.schedule.list_scheduling import list_schedule
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import to_run_sheet
from board.sheet.blocks import blocks
from board.sheet.quiet import as_planned
from board.sheet.run_sheet import RunSheet
from board.view.board import Viewer
from tests.conftest import at
from tests.schedule.audit.tampering import with_slot

PLAN = """
event: Ham for six
date: 2026-11-28
zone: Europe/Dublin
arrive: '18:30'
guests: 6
kitchen: {ovens: 1, rings: 4, tools: {carving board: 1}, wash up: no}
hands:
  host: {hours: {on the day: '15:00 - 23:00'}}
  Anneli: {hours: {on the day: '16:00 - 18:00, 18:20 - 23:00'}}
courses:
  - course: Main
    at: '19:30'
    dishes:
      - dish: Ham
        steps:
          - {step: bake, where: 'oven at 180 C', takes: 2 h, attended: '5 min at the start, 5 min at the end',
             hands: 2, keeps: 30 min hot}
          - {step: carve, where: worktop, takes: 5 to 10 to 15 min, hands: 2, keeps: 10 min}
      - dish: Sauce
        steps: [{step: whisk, where: stovetop, takes: 10 to 15 to 40 min, who: Anneli, keeps: 30 min}]
"""
BAKE, CARVE = "ham/bake", "ham/carve"


@pytest.fixture(scope="module")
def ham() -> PlanFile:
    found = read_plan(PLAN, "ham.yaml")
    assert isinstance(found, PlanFile)
    return found


@pytest.fixture(scope="module")
def sheet(ham: PlanFile) -> RunSheet:
    problem = problem_of(ham.plan, ham.filled)
    return to_run_sheet(ham, problem, solve(problem))


def test_both_are_on_it_whenever_it_needs_hands(ham: PlanFile, sheet: RunSheet) -> None:
    bake, carve = sheet.by_id()[BAKE], sheet.by_id()[CARVE]

    assert {(part.who, part.kind) for part in bake.attended} == {
        (who, kind) for who in ("host", "Anneli") for kind in ("start", "end")
    }
    assert {(part.who, part.start, part.end) for part in carve.attended} == {
        (who, carve.start, carve.end) for who in ("host", "Anneli")
    }
    assert validate(ham, sheet) == []


def test_it_does_not_begin_or_end_while_one_of_them_is_out(ham: PlanFile, sheet: RunSheet) -> None:
    """Anneli is there from 16:00 and not from 18:00 to 18:20; each end of the bake lies in her hours."""
    bake = sheet.by_id()[BAKE]
    at_her = [(part.start, part.end) for part in bake.attended if part.who == "Anneli"]

    assert all((at("16:00") <= start and end <= at("18:00")) or at("18:20") <= start for start, end in at_her)
    assert bake.end - bake.start == timedelta(hours=2)


def test_the_validator_wants_both(ham: PlanFile, sheet: RunSheet) -> None:
    carve = sheet.by_id()[CARVE]
    alone = with_slot(sheet, CARVE, attended=carve.attended[:1])
    shorter = tuple(
        replace(part, start=part.end - timedelta(minutes=2)) if part.who == "host" else part for part in carve.attended
    )
    for_less = with_slot(sheet, CARVE, attended=shorter)

    assert "carve takes 2 of them, and is given to host" in validate(ham, alone)
    assert any("other times than it asks for" in found for found in validate(ham, for_less))


def test_without_a_search_both_are_on_it_too(ham: PlanFile) -> None:
    problem = problem_of(ham.plan, ham.filled)
    found = list_schedule(problem)

    assert found is not None
    assert found.who[problem.index[CARVE]] == (0, 1)
    assert validate(ham, to_run_sheet(ham, problem, found)) == []


def test_one_who_is_named_twice_is_one(plan_from: Callable[[str], PlanFile]) -> None:
    plan = plan_from(PLAN.replace("hands: 2, keeps: 10", "hands: 2, who: [host, host, Anneli], keeps: 10"))

    problem = problem_of(plan.plan, plan.filled)

    assert problem.jobs[problem.index[CARVE]].hands == (0, 1)


def test_paper_and_calls_name_both(sheet: RunSheet) -> None:
    theirs = {block.who for block in blocks(sheet) for step in block.steps if step.id == CARVE}
    (hers,) = leaves(sheet, "Anneli")
    row = next(row for day in hers.days for row in day.rows if row.what.startswith("carve"))

    assert theirs == {"host", "Anneli"} == called(sheet, sheet.by_id()[CARVE], "start")
    assert "with host" in row.told
    assert Viewer(sheet).detail(sheet.by_id()[CARVE], Call(CARVE, "start", 0, at("19:00"))).startswith("host, Anneli")


def test_two_who_get_up_for_one_thing_break_the_quiet_once(sheet: RunSheet) -> None:
    (main,) = as_planned(sheet)
    carve = sheet.by_id()[CARVE]
    since = replace(main.course, served=carve.start, sits=10)
    moved = with_slot(sheet, main.course.serve, start=carve.start, end=carve.start)
    (broken,) = as_planned(replace(moved, courses=(since,)))

    assert [up.part.who for up in broken.ups if up.slot.id == CARVE] == ["host", "Anneli"]
    assert broken.broken - broken.missing == 10  # minutes that both carve


def test_one_who_is_kept_longer_keeps_the_other_waiting(sheet: RunSheet) -> None:
    """Anneli's sauce runs half an hour over: what she carves with the host begins when she is free."""
    whisk, carve = sheet.by_id()["sauce/whisk"], sheet.by_id()[CARVE]
    assert whisk.end <= carve.start
    long = replace(whisk, end=carve.start + timedelta(minutes=20))
    slots = tuple(
        replace(long, attended=tuple(replace(part, end=long.end) for part in whisk.attended)) if each is whisk else each
        for each in sheet.slots
    )
    late = replace(sheet, slots=slots)

    forecast = Forecaster(late).forecast(begin(late), at("15:00"))

    assert forecast.slots[CARVE].start == long.end
    assert forecast.courses[0].late_minutes == 20


def test_played_again_for_many_evenings_it_is_as_played_from_the_start(sheet: RunSheet) -> None:
    evenings = Evenings(sheet, three_point)
    drawn = evenings.draw(np.random.default_rng(7), 200)
    played = evenings.play(drawn)
    for each in evenings.varying:
        sooner = {**drawn, each.cause: drawn[each.cause] - 1}
        again, anew = evenings.play_sooner(drawn, played, each), evenings.play(sooner)
        assert all(np.array_equal(again.end[id_], anew.end[id_]) for id_ in anew.end)
    carved = played.stretches[CARVE, False]
    assert np.all(carved[0].begin >= np.maximum(played.end[BAKE], played.end["sauce/whisk"]))
