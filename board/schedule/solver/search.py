"""One run of CP-SAT over a model, heard by the keyboard, and what it found as starts, ways and hands."""

import math
import threading
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from board.schedule.solution import Solution
from board.schedule.solver.library import cp_model
from board.schedule.solver.variables import Variables

SEED = 1
EASY_CONFLICTS = 10  # by when a half that is not found is given up
HEARD_SECONDS = 0.1  # by when a search that is stopped has ended, about


@dataclass(frozen=True, slots=True)
class Progress:
    """How far the search is: the current aim, its best value so far and its proved lower bound."""

    aim: str
    value: int
    bound: int


Watch = Callable[[Progress], None]


class Clock:
    """The time a whole search may take, and whether it was stopped: by the keyboard, or by who else sets `halt`."""

    def __init__(self, seconds: float, halt: threading.Event | None = None) -> None:
        self.began = time.perf_counter()
        self.seconds = seconds
        self.halt = halt if halt is not None else threading.Event()

    def spent(self) -> float:
        """Seconds since the search began."""
        return time.perf_counter() - self.began

    def left(self) -> float:
        """Seconds; 0 where it was stopped."""
        return 0.0 if self.halt.is_set() else max(0.0, self.seconds - self.spent())


class _Watcher(cp_model.CpSolverSolutionCallback):
    """Tells each better solution."""

    def __init__(self, aim: str, watch: Watch) -> None:
        super().__init__()
        self.aim = aim
        self.watch = watch

    def on_solution_callback(self) -> None:
        self.watch(Progress(self.aim, round(self.objective_value), math.ceil(self.best_objective_bound - 1e-6)))


@dataclass(frozen=True, slots=True)
class Effort:
    """How a run searches. `steady`: the solver's own units of work, the same on every machine; `seconds`: no longer;
    `linear`: with linear relaxations, which weigh down a search that is all about order; `probing`: tries each yes or
    no before it begins, which for many hundred pieces takes longer than the search; `halving`: goes down by halves of
    what is left while that is easy, not from each timetable to one that is a minute better; `fixed`: what is hinted is
    so."""

    steady: float
    seconds: float
    linear: bool = True
    probing: bool = True
    halving: bool = False
    fixed: bool = False


@dataclass(frozen=True, slots=True)
class Found:
    """What a run came to."""

    solver: cp_model.CpSolver
    status: cp_model.CpSolverStatus

    @property
    def any(self) -> bool:
        return self.status in (cp_model.OPTIMAL, cp_model.FEASIBLE)

    @property
    def whole(self) -> bool:
        """Whether it searched all there is, one way or the other."""
        return self.status in (cp_model.OPTIMAL, cp_model.INFEASIBLE)

    @property
    def value(self) -> int:
        return round(self.solver.objective_value)

    @property
    def bound(self) -> int:
        return math.ceil(self.solver.best_objective_bound - 1e-6)


def run(model: cp_model.CpModel, effort: Effort, clock: Clock, aim: str, watch: Watch | None = None) -> Found:
    """Solves in a thread, so that a stopped clock, and a keyboard interrupt, which stops it, are heard meanwhile."""
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.random_seed = SEED
    solver.parameters.max_deterministic_time = effort.steady
    solver.parameters.max_time_in_seconds = max(0.05, effort.seconds)
    solver.parameters.catch_sigint_signal = False
    solver.parameters.max_presolve_iterations = 1  # more of it takes longer than it saves
    solver.parameters.fix_variables_to_their_hinted_value = effort.fixed
    if not effort.linear:
        solver.parameters.linearization_level = 0
    if not effort.probing:
        solver.parameters.cp_model_probing_level = 0
    if effort.halving:
        solver.parameters.binary_search_num_conflicts = EASY_CONFLICTS
    watcher = _Watcher(aim, watch) if watch is not None else None
    status = [cp_model.UNKNOWN]
    over = threading.Event()

    def search() -> None:
        try:
            status[0] = solver.solve(model, watcher)
        finally:
            over.set()

    threading.Thread(target=search, daemon=True).start()
    while not over.is_set():
        try:
            over.wait(HEARD_SECONDS)
        except KeyboardInterrupt:
            clock.halt.set()
        if clock.halt.is_set():
            solver.stop_search()
    return Found(solver, status[0])


def set_domain(model: cp_model.CpModel, index: int, domain: Sequence[int]) -> None:
    """Gives a variable another domain: the ends of its intervals."""
    bounds = model.proto.variables[index].domain
    bounds.clear()
    bounds.extend(domain)


def hint_all(model: cp_model.CpModel, solver: cp_model.CpSolver) -> None:
    """Makes what a run found the point the next one begins at."""
    model.clear_hints()  # type: ignore[no-untyped-call]  # ortools leaves it untyped
    found = list(solver.response_proto.solution)
    model.proto.solution_hint.vars.extend(range(len(found)))
    model.proto.solution_hint.values.extend(found)


def hint_decided(variables: Variables, decided: Solution) -> None:
    """Hints starts, ways, hands and places of a solution; what follows from them is left to the solver."""
    hints: dict[int, tuple[cp_model.IntVar, int]] = {}  # by index, since what is always true is one variable
    for n, job in enumerate(variables.jobs):
        decisions = [(way, number == decided.ways[n]) for number, way in enumerate(job.ways)]
        if decided.who[n]:
            decisions += [(who, hand in decided.who[n]) for hand, who in job.who.items()]
        for variable, value in [*decisions, (job.kept, decided.kept[n]), (job.start, decided.starts[n])]:
            hints[variable.index] = (variable, value)
    variables.model.clear_hints()  # type: ignore[no-untyped-call]
    for variable, value in hints.values():
        variables.model.add_hint(variable, value)


def decided_by(variables: Variables, solver: cp_model.CpSolver) -> Solution:
    """What a run decided; its aims are not told."""
    starts, ways, who, kept = [], [], [], []
    for job in variables.jobs:
        starts.append(solver.value(job.start))
        ways.append(next(n for n, literal in enumerate(job.ways) if solver.value(literal)))
        needs = bool(job.job.ways[ways[-1]].parts)
        who.append(tuple(hand for hand, literal in job.who.items() if needs and solver.value(literal)))
        kept.append(bool(solver.value(job.kept)))
    return Solution(tuple(starts), tuple(ways), tuple(who), tuple(kept), (), 0.0)


def values(expressions: Sequence[cp_model.LinearExprT], solver: cp_model.CpSolver) -> tuple[int, ...]:
    """Of each, in a run's solution."""
    return tuple(solver.value(each) for each in expressions)
