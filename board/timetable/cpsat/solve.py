"""Question → Answer with OR-Tools CP-SAT: one worker, a fixed seed, so the same question has the same answer.

Levels are solved in order and fixed. First it is tried whether every costly aim can be nought at once, since for
a sound plan it can, and nought needs no further proof.
"""

import time

from ortools.sat.python import cp_model
from ortools.sat.python.cp_model import CpSolver, LinearExprT

from board.timetable.answer import AIMS, AimResult, Answer
from board.timetable.cpsat.aims import Aims
from board.timetable.cpsat.limits import Limits
from board.timetable.cpsat.variables import Variables
from board.timetable.question import Question

SEED = 1
COSTLY = ("hours", "courses", "keeps")  # what a sound plan brings to nought
STEADY = 8.0  # the solver's own steady units of work for one aim; the same on every machine
TOUCH = 0.12  # and for the finishing touch
LIMIT_SECONDS = 60.0


class NoAnswer(Exception):
    """The time was up before any answer was found; not a bug, but rare: the model always has one."""


def solve(question: Question, limit_seconds: float = LIMIT_SECONDS, aims: tuple[str, ...] = AIMS) -> Answer:
    """The best answer found, aim by aim. Raises NoAnswer."""
    return _Search(question, limit_seconds, aims).run()


class _Search:
    def __init__(self, question: Question, limit_seconds: float, aims: tuple[str, ...]) -> None:
        self.question = question
        self.began = time.perf_counter()
        self.limit = limit_seconds
        self.wanted = aims
        self.results: list[AimResult] = []
        self.best: Answer | None = None
        self._fresh()

    def _fresh(self) -> None:
        self.variables = Variables(self.question)
        Limits(self.variables).add()
        self.aims = Aims(self.variables)
        self.sums = self.aims.all()
        self.model = self.variables.model

    def run(self) -> Answer:
        rest = [aim for aim in self.wanted if aim not in COSTLY]
        if not self._all_nought(rest[:1]):
            self._fresh()
            rest = list(self.wanted)
        for aim in rest:
            if not any(result.aim == aim for result in self.results):
                self._level(aim)
        if self.wanted == AIMS:
            self._touch()
        if self.best is None:
            raise NoAnswer
        return self.best

    def _all_nought(self, first: list[str]) -> bool:
        """Whether the costly aims can all be nought; if so the first of the rest is solved along with it."""
        fixed = [self.model.add(self.sums[aim] == 0) for aim in COSTLY if aim in self.wanted]
        if first:
            self.model.minimize(self.sums[first[0]])
        status, solver = self._solve(STEADY)
        if status not in (cp_model.OPTIMAL, cp_model.FEASIBLE):
            return False
        del fixed
        self.results = [AimResult(aim, 0, 0) for aim in COSTLY if aim in self.wanted]
        if first:
            self._settle(first[0], solver)
        self._keep(solver)
        return True

    def _level(self, aim: str) -> None:
        if self._left() <= 0 and self.best is not None:
            self.results.append(AimResult(aim, self._value_now(aim), 0))
            return
        self.model.minimize(self.sums[aim])
        status, solver = self._solve(STEADY)
        if status in (cp_model.OPTIMAL, cp_model.FEASIBLE):
            self._settle(aim, solver)
            self._keep(solver)
        elif self.best is not None:
            self.results.append(AimResult(aim, self._value_now(aim), 0))

    def _settle(self, aim: str, solver: CpSolver) -> None:
        value, bound = round(solver.objective_value), round(solver.best_objective_bound)
        self.results.append(AimResult(aim, value, bound))
        self.model.add(self.sums[aim] <= value)

    def _touch(self) -> None:
        if self._left() <= 0:
            return
        self.model.minimize(self.aims.touch())
        status, solver = self._solve(TOUCH)
        if status in (cp_model.OPTIMAL, cp_model.FEASIBLE):
            self._keep(solver)

    def _left(self) -> float:
        return self.limit - (time.perf_counter() - self.began)

    def _solve(self, steady: float) -> tuple[cp_model.CpSolverStatus, CpSolver]:
        solver = CpSolver()
        solver.parameters.num_workers = 1
        solver.parameters.random_seed = SEED
        solver.parameters.max_deterministic_time = steady
        solver.parameters.max_time_in_seconds = max(0.05, self._left())
        return solver.solve(self.model), solver

    def _keep(self, solver: CpSolver) -> None:
        """Remembers the answer, and starts the next level from it."""
        self.last = solver
        self.model.clear_hints()  # type: ignore[no-untyped-call]  # ortools leaves it untyped
        for index in range(len(self.model.proto.variables)):
            variable = self.model.get_int_var_from_proto_index(index)
            self.model.add_hint(variable, solver.value(variable))
        starts, ways, who, kept = [], [], [], []
        for job in self.variables.jobs:
            starts.append(solver.value(job.start))
            ways.append(next(n for n, literal in enumerate(job.ways) if solver.value(literal)))
            needs = bool(job.job.ways[ways[-1]].parts)
            who.append(next((h for h, literal in job.who.items() if solver.value(literal)), None) if needs else None)
            kept.append(bool(solver.value(job.kept)))
        seconds = time.perf_counter() - self.began
        self.best = Answer(tuple(starts), tuple(ways), tuple(who), tuple(kept), tuple(self.results), seconds)

    def _value_now(self, aim: str) -> int:
        expression: LinearExprT = self.sums[aim]
        return self.last.value(expression)
