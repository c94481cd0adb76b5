"""Published scheduling problems, entered as plans, come to their published optima, both ways round in time.

Sources, and where the numbers were copied from: `data/SOURCES.md`. FT06 = 55, LA01 = 666, FT10 = 930; PSPLIB j301_1
= 43, and 38 (the file's own `MPM-Time`) when nothing is scarce. A back-timed schedule is the mirrored problem, whose
optimum is the same. Everything goes through the plan, the timetable's problem and the model that dinners go through.
"""

import functools
from collections.abc import Callable

import pytest
from ortools.sat.python import cp_model

from board.plan.load import PlanFile
from board.schedule.audit.validate import validate
from board.schedule.problem import Problem
from board.schedule.solution import Solution
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from tests.outside.published import Problem as Published
from tests.outside.published import as_plan, j301_1, job_shop

PROBLEMS = {
    "ft06": (job_shop("ft06"), 55),
    "la01": (job_shop("la01"), 666),
    "j301_1": (j301_1(), 43),
    "j301_1 with plenty of everything": (j301_1().with_plenty(38), 38),
}
BOTH_WAYS = {
    f"{name}, {way}": (problem if way == "forwards" else problem.mirrored(), optimum)
    for name, (problem, optimum) in PROBLEMS.items()
    for way in ("forwards", "backwards")
}


def on_time_first(problem: Problem) -> Solution:
    return solve(problem, aims=("hours", "courses"))


def bare_length(problem: Published) -> int:
    """The shortest schedule by the solver alone: a model written here from the problem, sharing nothing with ours."""
    model = cp_model.CpModel()
    longest = sum(operation.minutes for operation in problem.operations)
    starts = [model.new_int_var(0, longest, "") for _ in problem.operations]
    length = model.new_int_var(0, longest, "")
    for n, operation in enumerate(problem.operations):
        model.add(length >= starts[n] + operation.minutes)
        for first in operation.follows:
            model.add(starts[n] >= starts[first] + problem.operations[first].minutes)
    for name, capacity in problem.capacity.items():
        users = [n for n, operation in enumerate(problem.operations) if operation.uses.get(name)]
        spans = [model.new_fixed_size_interval_var(starts[n], problem.operations[n].minutes, "") for n in users]
        model.add_cumulative(spans, [problem.operations[n].uses[name] for n in users], capacity)
    model.minimize(length)
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    assert solver.solve(model) == cp_model.OPTIMAL
    return solver.value(length)


@pytest.mark.parametrize(("problem", "optimum"), BOTH_WAYS.values(), ids=BOTH_WAYS)
def test_a_course_is_as_late_as_the_published_optimum(
    plan_from: Callable[[str], PlanFile], problem: Problem, optimum: int
) -> None:
    assert problem.optimum == optimum
    plan = plan_from(as_plan(problem))
    sheet = make_sheet(plan, on_time_first)

    assert sheet.courses[0].late_minutes == optimum
    assert sheet.proved
    assert validate(plan, sheet) == []


@pytest.mark.parametrize(("problem", "optimum"), BOTH_WAYS.values(), ids=BOTH_WAYS)
def test_and_so_says_the_solver_alone_of_a_model_written_apart(problem: Problem, optimum: int) -> None:
    assert bare_length(problem) == optimum


@pytest.mark.parametrize(
    ("name", "minutes_before", "late"), [("ft06", 54, 1), ("ft06", 55, 0), ("la01", 665, 1), ("la01", 666, 0)]
)
@pytest.mark.parametrize("backwards", [False, True], ids=["forwards", "backwards"])
def test_a_kitchen_open_so_long_before_is_just_enough(
    plan_from: Callable[[str], PlanFile], name: str, minutes_before: int, late: int, backwards: bool
) -> None:
    problem = job_shop(name).mirrored() if backwards else job_shop(name)
    sheet = make_sheet(plan_from(as_plan(problem, minutes_before)), on_time_first)

    assert sheet.courses[0].late_minutes == late
    assert sheet.proved


def test_time_turned_round_twice_runs_as_before() -> None:
    for problem, _ in PROBLEMS.values():
        assert problem.mirrored().mirrored() == problem
        assert problem.mirrored() != problem


@pytest.mark.slow
@pytest.mark.parametrize("backwards", [False, True], ids=["forwards", "backwards"])
def test_ft10_takes_930_minutes_given_time_to_prove_it(plan_from: Callable[[str], PlanFile], backwards: bool) -> None:
    """A minute or two of work; within the limits of a dinner the best found is 937."""
    problem = job_shop("ft10").mirrored() if backwards else job_shop("ft10")
    patient = functools.partial(solve, limit_seconds=900, aims=("hours", "courses"), steady=900.0)
    sheet = make_sheet(plan_from(as_plan(problem)), patient)

    assert sheet.courses[0].late_minutes == 930
    assert sheet.proved
