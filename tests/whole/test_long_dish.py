"""A dish of many steps, one after another or forking and joining again, is read, placed, checked and played."""

from collections.abc import Callable

import pytest

from board.base.clock import StoppedClock
from board.checks.sheet.assessed import of_plan, with_sheet
from board.plan.load import PlanFile
from board.schedule.audit.validate import validate
from board.schedule.formulate import problem_of
from board.schedule.list_scheduling import list_schedule
from board.schedule.to_run_sheet import to_run_sheet
from board.session.session import unlogged_evening
from board.sheet.exposure import planned, planned_before_cooking
from tests.conftest import HEAD

STEPS = 400  # Python's stack ends at a thousand calls, and a step may take several


def row(step: str, after: str = "") -> str:
    lines = [f"          - step: {step} {n}\n            takes: 1 min\n" for n in range(STEPS)]
    lines[0] += after
    return "".join(lines)


def courses(*dishes: str) -> str:
    return HEAD + "courses:\n  - course: Main\n    at: 19:30\n    dishes:\n" + "".join(dishes)


def dish(name: str, food: str, steps: str) -> str:
    return f"      - dish: {name}\n        for: 8\n        ingredients: [{food}]\n        steps:\n{steps}"


COOKED = """\
          - step: roast the chicken
            where: stovetop
            takes: 40 min
            until: 74 C
"""


@pytest.mark.slow
@pytest.mark.parametrize(
    "text",
    [
        courses(dish("Chicken", "2 kg chicken", COOKED + row("turn the chicken"))),
        courses(dish("Salad", "2 kg chicken", row("turn the chicken") + COOKED)),
        courses(
            dish("Chicken", "2 kg chicken", COOKED),
            dish("Platter", "1 kg carrots", row("turn the carrots", "            after: roast the chicken\n")),
        ),
    ],
    ids=["what is cooked", "what is raw", "what another dish takes up"],
)
def test_no_row_of_steps_is_too_long(plan_from: Callable[[str], PlanFile], text: str) -> None:
    plan = plan_from(text)
    problem = problem_of(plan.plan, plan.filled)
    solution = list_schedule(problem)
    assert solution is not None
    sheet = to_run_sheet(plan, problem, solution)

    assert validate(plan, sheet) == []
    assert with_sheet(of_plan(plan), sheet).the_sheet.slots
    assert max(each.minutes() for each in (*planned(sheet), *planned_before_cooking(sheet))) >= STEPS
    evening = unlogged_evening(sheet, StoppedClock(sheet.slots[0].start))
    assert evening.tick().coming


def test_steps_that_fork_and_join_again_take_no_longer_for_it(plan_from: Callable[[str], PlanFile]) -> None:
    """Thirty forks are a milliard of ways through the dish."""
    steps = "          - step: wash it 0\n            takes: 1 min\n"
    for n in range(30):
        for side in ("left", "right"):
            steps += f"          - {{step: cut the {side} {n}, takes: 1 min, after: wash it {n}}}\n"
        joins = f"[cut the left {n}, cut the right {n}]"
        steps += f"          - {{step: wash it {n + 1}, takes: 1 min, after: {joins}}}\n"

    plan = plan_from(courses(dish("Slaw", "2 kg carrots", steps)))

    assert len(plan.filled.tasks) > 91
