"""Whether a problem has a solution without a given violation, while nothing dearer gets worse."""

from collections.abc import Callable, Mapping

from board.schedule.conflicts.violations import Violation
from board.schedule.problem import Problem
from board.schedule.solver.aims import Aims
from board.schedule.solver.library import cp_model
from board.schedule.solver.limits import Limits
from board.schedule.solver.variables import Variables

STEADY = 2.0  # the solver's deterministic units of work; far more than it usually needs


def can_be_whole(problem: Problem) -> bool | None:
    """Whether all limits can be kept; None if the search took too long."""
    return _solved(problem, lambda _: 0)


def can(problem: Problem, violation: Violation, amounts: Mapping[Violation, int]) -> bool | None:
    """Whether the violation can be avoided: True or False if proved, None if the search took too long.

    `amounts` is by how much limits are broken now. Those as dear as `violation` or dearer may get no worse.
    """

    def at_most(other: Violation) -> int | None:
        return None if other.level > violation.level else 0 if other == violation else amounts.get(other, 0)

    return _solved(problem, at_most)


def _solved(problem: Problem, at_most: Callable[[Violation], int | None]) -> bool | None:
    variables = Variables(problem)
    Limits(variables).add()
    for violation, amount in Aims(variables).violations.items():
        limit = at_most(violation)
        if limit is not None:
            variables.model.add(amount <= limit)
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.random_seed = 1
    solver.parameters.max_deterministic_time = STEADY
    status = solver.solve(variables.model)
    if status in (cp_model.OPTIMAL, cp_model.FEASIBLE):
        return True
    return False if status == cp_model.INFEASIBLE else None
