"""Whether a question has an answer in which something does not bend, and nothing dearer bends further than it did."""

from collections.abc import Mapping

from ortools.sat.python import cp_model
from ortools.sat.python.cp_model import CpSolver

from board.timetable.bends import Bend
from board.timetable.cpsat.aims import Aims
from board.timetable.cpsat.limits import Limits
from board.timetable.cpsat.variables import Variables
from board.timetable.question import Question

STEADY = 2.0  # the solver's own steady units of work; far more than it usually needs


def can(question: Question, bend: Bend, amounts: Mapping[Bend, int]) -> bool | None:
    """True or False where that is proved, None where the search was too long.

    `amounts` is how far things bend now; what is as dear as `bend` or dearer may bend no further, the rest freely.
    """
    variables = Variables(question)
    Limits(variables).add()
    aims = Aims(variables)
    for other, amount in aims.bends.items():
        if other.level <= bend.level:
            variables.model.add(amount <= (0 if other == bend else amounts.get(other, 0)))
    solver = CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.random_seed = 1
    solver.parameters.max_deterministic_time = STEADY
    status = solver.solve(variables.model)
    if status in (cp_model.OPTIMAL, cp_model.FEASIBLE):
        return True
    return False if status == cp_model.INFEASIBLE else None
