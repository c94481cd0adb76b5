"""Whether a problem has a solution without a given violation, while nothing dearer gets worse."""

from collections.abc import Callable, Mapping

from board.schedule.conflicts.violations import Violation
from board.schedule.problem import Problem
from board.schedule.solver.aims import Aims
from board.schedule.solver.limits import Limits
from board.schedule.solver.search import Clock, Effort, run
from board.schedule.solver.variables import Variables

STEADY, SECONDS = 2.0, 6.0  # the solver's deterministic units of work, and a clock's; far more than it usually needs


def can_be_whole(problem: Problem, clock: Clock | None = None) -> bool | None:
    """Whether all limits can be kept; None if the search took too long, or there is no time left on the `clock`."""
    return _solved(problem, lambda _: 0, clock or Clock(SECONDS))


def can(
    problem: Problem, violation: Violation, amounts: Mapping[Violation, int], clock: Clock | None = None
) -> bool | None:
    """Whether the violation can be avoided: True or False if proved, None if the search took too long, or there is no
    time left on the `clock`.

    `amounts` is by how much limits are broken now. Those as dear as `violation` or dearer may get no worse.
    """

    def at_most(other: Violation) -> int | None:
        return None if other.level > violation.level else 0 if other == violation else amounts.get(other, 0)

    return _solved(problem, at_most, clock or Clock(SECONDS))


def _solved(problem: Problem, at_most: Callable[[Violation], int | None], clock: Clock) -> bool | None:
    if not clock.left():
        return None
    variables = Variables(problem)
    Limits(variables).add()
    for violation, amount in Aims(variables).violations.items():
        limit = at_most(violation)
        if limit is not None:
            variables.model.add(amount <= limit)
    found = run(variables.model, Effort(STEADY, min(SECONDS, clock.left())), clock, "")
    return True if found.any else False if found.whole else None
