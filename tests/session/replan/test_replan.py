"""What is left of an evening, worked out anew: the present is given, nothing that happened moves, and it helps."""

import random
from dataclasses import replace
from datetime import timedelta

import pytest

from board.base.clock import StoppedClock
from board.checks.sheet.clocks import dish_clocks
from board.evening.decide import decide
from board.evening.fold import fold_all
from board.evening.forecast import Forecaster
from board.evening.state import StepState
from board.evening.wishes import DelayGuests, Done, Later, LeaveOut, Push, Refusal, TakeBack, TakeSheet
from board.plan.load import PlanFile, read_plan
from board.schedule.formulate import problem_of
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.session.replan.anew import worked_out_anew
from board.session.replan.gain import costs, offer
from board.session.replan.remaining import as_it_stands
from board.session.session import unlogged_evening
from board.sheet.run_sheet import RunSheet
from board.sheet.told import Chain
from tests.conftest import PLANS, at, read
from tests.examples import first
from tests.session.replan.conftest import BAKE, ROLL, Slipping


def test_the_sheet_begins_with_the_slow_way(pie_sheet: RunSheet) -> None:
    """60 min of baking need less looking in, so they are planned; the quick way waits for a slip."""
    bake = pie_sheet.by_id()[BAKE]

    assert bake.end - bake.start == timedelta(minutes=60)
    assert pie_sheet.given_up == ()


def test_a_slip_is_made_up_for_by_the_quicker_way(pie: PlanFile, slipping: Slipping) -> None:
    slipping.until(at("18:31"))
    evening = slipping.evening
    looks = evening.tick().forecast.courses[0]
    fresh = worked_out_anew(pie, evening.state, slipping.clock.now())

    assert looks.late_minutes >= 10
    assert fresh is not None
    bake = fresh.by_id()[BAKE]
    assert bake.end - bake.start == timedelta(minutes=35)
    assert evening.wish(TakeSheet(fresh)) is None
    slipping.to_the_end()
    assert evening.tick().forecast.courses[0].late_minutes == 0


def test_what_has_begun_stays_as_it_was(pie: PlanFile, slipping: Slipping) -> None:
    slipping.until(at("18:20"))
    evening = slipping.evening
    evening.wish(Done(ROLL, "start"))
    slipping.clock.set(at("18:33"))
    before = evening.tick().state
    fresh = worked_out_anew(pie, before, slipping.clock.now())

    assert fresh is not None
    assert before.steps[ROLL].status == "under-way"
    assert fresh.by_id()[ROLL].start == before.sheet.by_id()[ROLL].start
    evening.wish(TakeSheet(fresh))
    assert evening.state.steps[ROLL] == before.steps[ROLL]
    ahead = [s for s in fresh.slots if s.id in evening.state.steps and evening.state.steps[s.id].status == "to-come"]
    assert min(slot.start for slot in ahead) >= at("18:33")


def test_the_guests_time_is_from_when_they_come_to_the_last_course_there_will_be(
    pie: PlanFile, slipping: Slipping
) -> None:
    problem, evening = problem_of(pie.plan, pie.filled), slipping.evening
    evening.wish(DelayGuests(20))
    evening.tick()

    assert problem.arrives == round((at("19:00") - problem.origin).total_seconds() / 60)
    left = as_it_stands(problem, evening.state, evening.look())
    assert (left.arrives, left.dinner_over) == (problem.arrives + 20, problem.dinner_over)

    evening.wish(LeaveOut(evening.sheet.courses[-1].clear))
    assert as_it_stands(problem, evening.state, evening.look()).dinner_over is None


def test_what_it_gives_up_is_told_of_its_own_slots(pie: PlanFile, slipping: Slipping) -> None:
    """The oven is heated a second time, under a number of its own, and that is what holds the course."""
    slipping.until(at("18:45"))
    fresh = worked_out_anew(pie, slipping.evening.state, slipping.clock.now())

    assert fresh is not None
    chains = [given.why for given in fresh.given_up if isinstance(given.why, Chain)]
    held_by = {link.after for chain in chains for link in chain.links}
    assert "dial/oven-2" in held_by <= set(fresh.by_id())


def test_what_is_worked_out_anew_switches_the_oven_off_too(pie: PlanFile, slipping: Slipping) -> None:
    slipping.until(at("18:45"))
    fresh = worked_out_anew(pie, slipping.evening.state, slipping.clock.now())

    assert fresh is not None
    (off,) = [slot for slot in fresh.slots if slot.kind == "off"]
    assert off.start == fresh.by_id()[BAKE].end
    assert [wait.after for wait in off.waits] == [BAKE]


def test_an_oven_that_waits_to_be_switched_off_still_does(
    pie: PlanFile, slipping: Slipping, pie_sheet: RunSheet
) -> None:
    (off,) = [slot.id for slot in pie_sheet.slots if slot.kind == "off"]
    (heat,) = [slot.id for slot in pie_sheet.slots if slot.kind == "heat"]
    state = slipping.evening.state
    over = pie_sheet.by_id()[BAKE].end
    done = StepState("finished", pie_sheet.by_id()[BAKE].start, over)
    waiting = replace(state, steps={**state.steps, ROLL: done, heat: done, BAKE: done})
    fresh = worked_out_anew(pie, waiting, over + timedelta(minutes=1))

    assert fresh is not None
    assert off in fresh.by_id()
    switched = replace(waiting, steps={**waiting.steps, off: StepState("finished", over, over)})
    problem = problem_of(pie.plan, pie.filled)
    for each, celsius in ((waiting, 180), (switched, None)):
        look = Forecaster(pie_sheet).forecast(each, over + timedelta(minutes=1))
        assert as_it_stands(problem, each, look).ovens_now[0].celsius == celsius


def test_taking_it_back_is_as_if_it_had_not_been(pie: PlanFile, slipping: Slipping) -> None:
    slipping.until(at("18:31"))
    evening = slipping.evening
    before = evening.state
    fresh = worked_out_anew(pie, before, slipping.clock.now())
    assert fresh is not None
    evening.wish(TakeSheet(fresh))
    assert evening.sheet is not before.sheet
    evening.wish(TakeBack())

    assert evening.sheet == before.sheet
    assert evening.state.steps == before.steps
    assert evening.state.pushed == before.pushed


def test_a_sheet_the_evening_has_moved_on_from_is_refused(pie: PlanFile, slipping: Slipping) -> None:
    slipping.until(at("18:31"))
    stale = worked_out_anew(pie, slipping.evening.state, slipping.clock.now())
    assert stale is not None
    moved = [slot for slot in stale.slots if slot.kind == "heat"]
    assert moved
    slipping.to_the_end()

    assert isinstance(slipping.evening.wish(TakeSheet(stale)), Refusal)


def test_a_push_is_in_the_new_times_and_is_no_slip(pie: PlanFile, slipping: Slipping) -> None:
    slipping.until(at("18:05"))
    evening = slipping.evening
    evening.wish(Push("Main", 20))
    fresh = worked_out_anew(pie, evening.state, slipping.clock.now())
    assert fresh is not None
    evening.wish(TakeSheet(fresh))
    course = evening.tick().forecast.courses[0]

    assert course.served == at("19:50")
    assert (course.late_minutes, course.slip_minutes) == (20, 0)
    assert fresh.courses[0].pushed == 20


def test_the_question_of_what_is_left_starts_from_now(pie: PlanFile, slipping: Slipping) -> None:
    slipping.until(at("18:31"))
    evening = slipping.evening
    present = evening.tick()
    problem = problem_of(pie.plan, pie.filled)
    left = as_it_stands(problem, present.state, present.forecast)
    now = round((slipping.clock.now() - problem.origin).total_seconds() / 60)

    assert all(job.earliest >= now or job.fixed is not None for job in left.jobs)
    assert left.opens == now
    oven = left.ovens_now[0]
    assert oven.celsius == 180  # it was heated for the slow way when it was called
    assert oven.free_from >= now


@pytest.mark.parametrize("seed", first(1, range(6)))
def test_any_evening_can_be_gone_on_with_by_a_sheet_worked_out_anew(seed: int) -> None:
    """Random slips, a step left out now and then; the fresh sheet is taken each time, better or not."""
    chance = random.Random(seed)
    file = read_plan((PLANS / "two-ring-flat.yaml").read_text(encoding="utf-8"), "two-ring-flat.yaml")
    assert isinstance(file, PlanFile)
    sheet = make_sheet(file, lambda problem: solve(problem, 10))
    clock = StoppedClock(min(slot.start for slot in sheet.slots))
    evening = unlogged_evening(sheet, clock)
    taken = 0
    for _ in range(2000):
        present = evening.tick()
        if present.due:
            call = present.due[0]
            wishes = [Later(call.slot, call.part, call.number, chance.choice([5, 10]))]
            if chance.random() > 0.12:
                wishes.insert(0, Done(*call.key))
            elif chance.random() < 0.1 and call.part == "start":
                wishes.insert(0, LeaveOut(call.slot))
            next(wish for wish in wishes if not isinstance(evening.wish(wish), Refusal))
        elif present.coming:
            clock.set(present.coming[0].due)
        else:
            break
        if taken < 3 and chance.random() < 0.03:
            done = {id_: step for id_, step in evening.state.steps.items() if step.status in ("finished", "under-way")}
            fresh = worked_out_anew(file, evening.state, clock.now(), limit=1.0)
            assert fresh is not None
            assert evening.wish(TakeSheet(fresh)) is None
            assert {id_: evening.state.steps[id_] for id_ in done} == done
            taken += 1

    assert taken
    assert [id_ for id_, step in evening.state.steps.items() if not step.settled] == []


def test_only_what_is_better_by_enough_is_offered(pie: PlanFile, slipping: Slipping) -> None:
    slipping.until(at("18:31"))
    state, now = slipping.evening.state, slipping.clock.now()
    fresh = worked_out_anew(pie, state, now)
    assert fresh is not None
    events = decide(state, TakeSheet(fresh), now)
    assert not isinstance(events, Refusal)
    found = offer(state, fresh, fold_all(state, events), now)

    assert found is not None
    assert found.before.late >= 10
    assert found.after.late == 0
    assert [name for name, _, _ in found.courses] == ["Main"]
    assert offer(state, state.sheet, state, now) is None  # going on as it is gains nothing


CARVED = """
event: Cold supper
date: 2026-11-28
zone: UTC
arrive: 18:30
guests: [4 guests]
hands: {host: {hours: {on the day: '9:00 - 23:30'}}}
courses:
  - course: Main
    at: '20:15'
    dishes:
      - dish: Cold roast beef
        ingredients: [1.8 kg cooked roast beef (butcher)]
        steps: [{step: carve the roast, takes: 25 min, keeps: 2 h in the room}]
"""


def test_what_is_not_begun_waits_for_a_course_put_off_that_its_dish_keeps_to_its_clock() -> None:
    """Two hours by USDA FSIS; carved as planned, half an hour more than it may stand out."""
    plan = read(CARVED)
    assert isinstance(plan, PlanFile)
    evening = unlogged_evening(make_sheet(plan, solve), StoppedClock(at("18:00")))
    evening.wish(Push("Main", 60))
    before = evening.tick()
    fresh = worked_out_anew(plan, before.state, at("18:00"))

    assert fresh is not None
    assert costs(before.state, before.forecast).lost == 1
    assert not any(each.too_long for each in dish_clocks(fresh))
    evening.wish(TakeSheet(fresh))
    found = offer(before.state, fresh, evening.state, at("18:00"))
    assert found is not None
    assert found.gained["lost"] == 1
