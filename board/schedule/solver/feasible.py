"""Whether a question has an answer in which something does not bend, and nothing dearer bends further than it did."""

from collections.abc import Callable, Mapping

from ortools.sat.python import cp_model
from ortools.sat.python.cp_model import CpSolver

from board.schedule.conflicts.bends import Bend
from board.schedule.question import Question
from board.schedule.solver.aims import Aims
from board.schedule.solver.limits import Limits
from board.schedule.solver.variables import Variables

STEADY = 2.0  # the solver's own steady units of work; far more than it usually needs


def can_be_whole(question: Question) -> bool | None:
    """Whether nothing needs to bend at all; None where the search was too long."""
    return _solved(question, lambda _: 0)


def can(question: Question, bend: Bend, amounts: Mapping[Bend, int]) -> bool | None:
    """True or False where that is proved, None where the search was too long.

    `amounts` is how far things bend now; what is as dear as `bend` or dearer may bend no further, the rest freely.
    """

    def at_most(other: Bend) -> int | None:
        return None if other.level > bend.level else 0 if other == bend else amounts.get(other, 0)

    return _solved(question, at_most)


def _solved(question: Question, at_most: Callable[[Bend], int | None]) -> bool | None:
    variables = Variables(question)
    Limits(variables).add()
    for bend, amount in Aims(variables).bends.items():
        limit = at_most(bend)
        if limit is not None:
            variables.model.add(amount <= limit)
    solver = CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.random_seed = 1
    solver.parameters.max_deterministic_time = STEADY
    status = solver.solve(variables.model)
    if status in (cp_model.OPTIMAL, cp_model.FEASIBLE):
        return True
    return False if status == cp_model.INFEASIBLE else None
