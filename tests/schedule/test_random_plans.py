"""Whatever a plan asks, there is a run sheet, and the validator finds nothing in it that was not told. What it tells of
clocks given up is what the check will say of them."""

import msgspec
import pytest

from board.checks.sheet.clocks import dish_clocks
from board.plan.load import PlanFile, read_plan
from board.schedule.audit.validate import validate
from board.schedule.audit.validate_ways import fitting_ways
from board.schedule.formulate import problem_of
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet.company import busiest
from board.sheet.run_sheet import RunSheet, Slot
from board.sheet.told import PastClock
from tests.examples import first
from tests.schedule.random_plans import plan_text


@pytest.mark.parametrize("seed", first(5, range(40)))
def test_every_random_plan_has_a_sheet_that_holds(seed: int) -> None:
    plan = read_plan(plan_text(seed), f"random-{seed}.yaml")
    assert isinstance(plan, PlanFile), [snag.render() for snag in plan]

    sheet = make_sheet(plan, lambda problem: solve(problem, limit_seconds=6))

    assert validate(plan, sheet) == []
    assert ways_told_amiss(plan, sheet) == []
    assert clocks_given_up(sheet) == {
        (each.clock.dish, each.clock.course): (each.out_minutes, each.clock.limit_minutes)
        for each in dish_clocks(sheet)
        if each.too_long
    }


def clocks_given_up(sheet: RunSheet) -> dict[tuple[str, str], tuple[int, int]]:
    """By dish and course, how long it is told to stand out, and may."""
    told = [each.what for each in sheet.given_up if isinstance(each.what, PastClock)]
    return {(each.dish, each.course): (each.stands, each.limit) for each in told}


def ways_told_amiss(plan: PlanFile, sheet: RunSheet) -> list[str]:
    """Slots that name another way of the plan than the validator reads off them; an oven's dial has none to name."""
    return [slot.id for slot in sheet.slots if not _names_its_way(plan, slot)]


def _names_its_way(plan: PlanFile, slot: Slot) -> bool:
    if slot.of_a_dial:
        return slot.plan_way is msgspec.UNSET
    task = plan.filled.tasks[slot.id]
    return slot.plan_way is not msgspec.UNSET and task.ways[slot.plan_way] in fitting_ways(plan.plan, task, slot)[0]


@pytest.mark.parametrize(("seed", "dishes"), first(1, [(0, 4), (4, 8), (5, 9)]))
def test_the_busiest_half_hour_that_is_made_least_is_the_one_told(seed: int, dishes: int) -> None:
    """Minutes of work within it, also where a stretch of work reaches over its edge."""
    plan = read_plan(plan_text(seed, dishes), f"random-{seed}.yaml")
    assert isinstance(plan, PlanFile)
    solution = solve(problem_of(plan.plan, plan.filled))
    least = next(aim for aim in solution.aims if aim.aim == "busiest")
    _, minutes = busiest(make_sheet(plan, lambda _: solution))

    assert least.proved
    assert minutes == least.value > 0
