"""Problem → Solution with OR-Tools CP-SAT. One worker and a fixed seed: the same problem has the same solution.

Aims are solved in order, each fixed before the next. First it tries for zero in all costly aims at once: a sound plan
reaches it, and zero needs no further proof.
"""

import math
import threading
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from ortools.sat.python import cp_model
from ortools.sat.python.cp_model import CpSolver, CpSolverSolutionCallback, LinearExpr, LinearExprT

from board.schedule.problem import Problem
from board.schedule.solution import AIMS, COSTLY, AimResult, Solution
from board.schedule.solver.aims import Aims
from board.schedule.solver.limits import Limits
from board.schedule.solver.variables import Variables

SEED = 1
STEADY = 8.0  # the solver's deterministic units of work for a costly aim; the same on every machine
STEADY_FOR_THE_REST = 1.0  # for each other aim, which a sound plan proves with a tenth of it
TOUCH = 0.06  # for each finishing touch
LIMIT_SECONDS = 60.0


class NoAnswer(Exception):
    """Time ran out, or the search was stopped, before any solution was found; not a bug, but rare."""


@dataclass(frozen=True, slots=True)
class Progress:
    """How far the search is: the current aim, its best value so far and its proved lower bound."""

    aim: str
    value: int
    bound: int


Watch = Callable[[Progress], None]


def solve(
    problem: Problem,
    limit_seconds: float = LIMIT_SECONDS,
    aims: tuple[str, ...] = AIMS,
    watch: Watch | None = None,
    steady: float = STEADY,
    near: Sequence[int] | None = None,
) -> Solution:
    """The best solution found, aim by aim. A KeyboardInterrupt ends the search with the best so far. Raises NoAnswer.

    `steady` bounds each costly aim in the solver's own units, the same on every machine; `limit_seconds` bounds the
    whole. `near`: likely starts, one per job, from which the search begins.
    """
    return _Search(problem, limit_seconds, aims, watch, steady, near).run()


class _Watcher(CpSolverSolutionCallback):
    """Tells each better solution."""

    def __init__(self, aim: str, watch: Watch, scale: int) -> None:
        super().__init__()
        self.aim = aim
        self.watch = watch
        self.scale = scale

    def on_solution_callback(self) -> None:
        best, bound = round(self.objective_value), math.ceil(self.best_objective_bound - 1e-6)
        self.watch(Progress(self.aim, best // self.scale, bound // self.scale))


class _Search:
    def __init__(
        self,
        problem: Problem,
        limit_seconds: float,
        aims: tuple[str, ...],
        watch: Watch | None,
        steady: float,
        near: Sequence[int] | None,
    ) -> None:
        self.near = near
        self.problem = problem
        self.began = time.perf_counter()
        self.limit = limit_seconds
        self.wanted = aims
        self.watch = watch
        self.steady = steady
        self.stopped = False
        self.results: list[AimResult] = []
        self.best: Solution | None = None
        self._fresh()

    def _fresh(self) -> None:
        self.variables = Variables(self.problem)
        Limits(self.variables).add()
        self.aims = Aims(self.variables)
        self.sums = self.aims.all()
        self.model = self.variables.model
        for job, start in zip(self.variables.jobs, self.near or (), strict=False):
            if job.job.fixed is None:
                self.model.add_hint(job.start, start)

    def run(self) -> Solution:
        rest = [aim for aim in self.wanted if aim not in COSTLY]
        if not self._all_nought(rest[:1]):
            self._fresh()
            rest = list(self.wanted)
        for aim in rest:
            if not any(result.aim == aim for result in self.results):
                self._level(aim)
        if self.wanted == AIMS and self._may_go_on():
            self._touch()
        if self.best is None:
            raise NoAnswer
        return replace(self.best, aims=tuple(self.results), seconds=time.perf_counter() - self.began)

    def _all_nought(self, first: list[str]) -> bool:
        """Whether the costly aims can all be zero; if so, the first of the others is solved with them."""
        for aim in COSTLY:
            if aim in self.wanted:
                self.model.add(self.sums[aim] == 0)
        nought = [AimResult(aim, 0, 0) for aim in COSTLY if aim in self.wanted]
        if first:
            found = self._least(first[0], self.steady)
            self.results = [*nought, found] if found is not None else []
            return found is not None
        status, solver = self._solve(self.steady, COSTLY[0])
        if status not in (cp_model.OPTIMAL, cp_model.FEASIBLE):
            return False
        self.results = nought
        self._keep(solver)
        return True

    def _level(self, aim: str) -> None:
        """Minimises one aim and fixes it."""
        if aim == "usual" and self._at_usual_hours():
            self.model.add(self.sums[aim] <= 0)
            self.results.append(AimResult(aim, 0, 0))
            return
        if self._may_go_on() or self.best is None:
            found = self._least(aim, self.steady if aim in COSTLY else STEADY_FOR_THE_REST)
            if found is not None:
                self.results.append(found)
                return
        if self.best is not None:
            value = self._value_now(aim)
            self.results.append(AimResult(aim, value, 0, searched=False))
            self.model.add(self.sums[aim] <= value)

    def _at_usual_hours(self) -> bool:
        """Whether the best so far has every job at its usual hour, if any has one."""
        return self.aims.odd is None or (self.best is not None and not self.last.value(self.aims.odd))

    def _least(self, aim: str, steady: float) -> AimResult | None:
        """The least of an aim, which it then fixes; None if nothing was found. What stays open is tried once more,
        without linear relaxations, which weigh down a search that is all about order.

        Among the least of freshness, one with every job at its usual hour goes first: most often that aim is then met.
        """
        tie = self.aims.odd if aim == "freshness" and "usual" in self.wanted else None
        self.model.minimize(self.sums[aim] if tie is None else LinearExpr.weighted_sum([self.sums[aim], tie], [2, 1]))
        scale = 1 if tie is None else 2
        found: AimResult | None = None
        for linear in (True, False):
            status, solver = self._solve(steady, aim, linear=linear, scale=scale)
            if status in (cp_model.OPTIMAL, cp_model.FEASIBLE):
                value = round(solver.objective_value) // scale
                bound = math.ceil(solver.best_objective_bound - 1e-6) // scale
                if found is None or value <= found.value:
                    self._keep(solver)
                found = (
                    AimResult(aim, min(value, found.value), max(bound, found.bound))
                    if found
                    else AimResult(aim, value, bound)
                )
            if found is None or found.proved or not self._may_go_on():
                break
        if found is not None:
            self.model.add(self.sums[aim] <= found.value)
        return found

    def _touch(self) -> None:
        """Chooses among equals as well as a short search can; nothing is claimed of it."""
        for name, expression in (("prompt", self.aims.prompt()), ("touch", self.aims.touch())):
            self.model.minimize(expression)
            status, solver = self._solve(TOUCH, name)
            if status in (cp_model.OPTIMAL, cp_model.FEASIBLE):
                self.model.add(expression <= round(solver.objective_value))
                self._keep(solver)

    def _may_go_on(self) -> bool:
        return not self.stopped and self._left() > 0

    def _left(self) -> float:
        return self.limit - (time.perf_counter() - self.began)

    def _solve(
        self, steady: float, aim: str, *, linear: bool = True, scale: int = 1
    ) -> tuple[cp_model.CpSolverStatus, CpSolver]:
        """Solves in a thread, so that a keyboard interrupt is heard during the search. `scale`: how much of the
        objective makes a minute of the aim."""
        solver = CpSolver()
        solver.parameters.num_workers = 1
        solver.parameters.random_seed = SEED
        solver.parameters.max_deterministic_time = steady
        if not linear:
            solver.parameters.linearization_level = 0
        solver.parameters.max_time_in_seconds = max(0.05, self._left())
        solver.parameters.catch_sigint_signal = False
        watcher = _Watcher(aim, self.watch, scale) if self.watch is not None else None
        found: list[cp_model.CpSolverStatus] = []
        over = threading.Event()

        def search() -> None:
            try:
                found.append(solver.solve(self.model, watcher))
            finally:
                over.set()

        threading.Thread(target=search, daemon=True).start()
        while not over.is_set():
            try:
                over.wait(0.2)
            except KeyboardInterrupt:
                self.stopped = True
                solver.stop_search()
        return (found[0] if found else cp_model.UNKNOWN), solver

    def _keep(self, solver: CpSolver) -> None:
        """Keeps the solution as a hint for the next level."""
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
        self.best = Solution(tuple(starts), tuple(ways), tuple(who), tuple(kept), (), 0.0)

    def _value_now(self, aim: str) -> int:
        expression: LinearExprT = self.sums[aim]
        return self.last.value(expression)
