"""A large problem bettered piece by piece: all stands but a neighbourhood, which is solved anew, over and over.

Large neighbourhood search (Shaw, "Using constraint programming and local search methods to solve vehicle routing
problems", CP 1998) over one course, one stretch of time, or around what is dearest, in turn.
"""

import random
from collections.abc import Callable, Sequence

from board.schedule.conflicts.violations import Violation, amounts
from board.schedule.problem import Problem
from board.schedule.solution import Solution
from board.schedule.solver.library import cp_model
from board.schedule.solver.search import SEED, Clock, Effort, Found, decided_by, hint_all, run, set_domain, values
from board.schedule.solver.variables import Variables

# Ours: pieces moved at a time, at first, at least and at most; the work for each; fruitless turns before it ends.
FIRST_PIECES, FEWEST_PIECES, MOST_PIECES = 30, 12, 90
STEADY, SECONDS, FRUITLESS = 0.1, 1.0, 60
HEAVIEST = 10**10  # no aim is weighted more, so that sums stay whole numbers of the solver


class Neighbourhoods:
    """Betters a solution for several aims in strict order. The run it begins with must hold a whole solution."""

    def __init__(self, variables: Variables, aims: Sequence[cp_model.LinearExprT], begin: Found, clock: Clock) -> None:
        self.v = variables
        self.model = variables.model
        self.problem: Problem = variables.problem
        self.aims = aims
        self.best = begin
        self.clock = clock
        self.chance = random.Random(SEED)
        self.pieces = FIRST_PIECES
        self.domains = [list(variable.domain) for variable in self.model.proto.variables]
        self.course_of = _courses(self.problem)

    def better(self, seconds: float, tell: Callable[[tuple[int, ...]], None]) -> Found:
        """The best after so many seconds, or once many turns in a row brought nothing. `tell` hears of each better
        one by its aims."""
        until = self.clock.spent() + min(seconds, self.clock.left())
        now = values(self.aims, self.best.solver)
        fruitless = turn = 0
        while any(now) and fruitless < FRUITLESS and self.clock.left() and self.clock.spent() < until:
            free = self._free(decided_by(self.v, self.best.solver), turn)
            turn += 1
            found = self._solved(free, now, until - self.clock.spent())
            self._fit_size(found)
            fruitless += 1
            if not found.any or (reached := values(self.aims, found.solver)) > now:
                continue
            if reached < now:
                fruitless = 0
                tell(reached)
            now, self.best = reached, found
        return self.best

    def _solved(self, free: set[int], now: tuple[int, ...], seconds: float) -> Found:
        hint_all(self.model, self.best.solver)
        held = [index for n in range(len(self.v.jobs)) if n not in free for index in self._decisions(n)]
        for index in held:
            set_domain(self.model, index, [self._value(index)] * 2)
        self.model.minimize(_weighted(self.aims, now))
        effort = Effort(STEADY, min(SECONDS, seconds), linear=False, probing=False)
        found = run(self.model, effort, self.clock, "")
        for index in held:
            set_domain(self.model, index, self.domains[index])
        return found

    def _fit_size(self, found: Found) -> None:
        """As many pieces at a time as can be searched whole."""
        if found.whole:
            self.pieces = min(MOST_PIECES, self.pieces + 2)
        else:
            self.pieces = max(FEWEST_PIECES, self.pieces - 3)

    def _decisions(self, n: int) -> list[int]:
        """The variables that are one job's, by index."""
        job = self.v.jobs[n]
        return [each.index for each in (job.start, *job.ways, *job.who.values(), job.over, job.kept)]

    def _value(self, index: int) -> int:
        return self.best.solver.value(self.model.get_int_var_from_proto_index(index))

    # --- which pieces are free
    def _free(self, at: Solution, turn: int) -> set[int]:
        kind = turn % 3
        if kind == 0 and (dear := self._dear(at)):
            return self._around(at, self.chance.choice(dear))
        middle = self.chance.randrange(len(self.v.jobs))
        return self._in_course(at, middle) if kind == 1 else self._around(at, middle)

    def _dear(self, at: Solution) -> list[int]:
        """Jobs at which limits are broken, the more often the worse."""
        return [
            n
            for violation, by in amounts(self.problem, at).items()
            for n in self._of(violation)
            for _ in range(1 + by // 60)
        ]

    def _of(self, violation: Violation) -> tuple[int, ...]:
        if violation.kind in ("out-of-hours", "no-place"):
            return (violation.index,)
        if violation.kind == "late":
            return (self.problem.servings[violation.index].job,)
        if violation.kind == "clock":
            return (self.problem.clocks[violation.index].serve,)
        order = self.problem.orders[violation.index]
        return (order.first, order.second)

    def _around(self, at: Solution, middle: int) -> set[int]:
        """The nearest in time, and all that leads to it or follows it."""
        when = at.starts[middle]
        nearest = sorted(range(len(at.starts)), key=lambda n: (abs(at.starts[n] - when), n))
        own = self._thread(middle)
        return {*own, *nearest[: max(1, self.pieces - len(own))]}

    def _thread(self, n: int) -> set[int]:
        found, todo = {n}, [n]
        while todo:
            job = todo.pop()
            for order in self.problem.orders:
                other = order.second if order.first == job else order.first if order.second == job else None
                if other is not None and other not in found and not self._is_joint(other):
                    found.add(other)
                    todo.append(other)
        return found

    def _is_joint(self, n: int) -> bool:
        """Whether threads of many dishes meet at it."""
        return any(serving.job == n for serving in self.problem.servings) or self.v.jobs[n].job.fixed is not None

    def _in_course(self, at: Solution, middle: int) -> set[int]:
        """Pieces of one course, the nearest in time first, and its serving."""
        course, when = self.course_of.get(middle), at.starts[middle]
        own = [n for n in range(len(at.starts)) if self.course_of.get(n) == course]
        return set(sorted(own, key=lambda n: (abs(at.starts[n] - when), n))[: self.pieces])


def _courses(problem: Problem) -> dict[int, int]:
    """By job, the serving it leads to first; nothing for those that lead to none."""
    before: dict[int, list[int]] = {}
    for order in problem.orders:
        before.setdefault(order.second, []).append(order.first)
    found: dict[int, int] = {}
    for serving in sorted(problem.servings, key=lambda s: s.wanted):
        todo = [serving.job]
        while todo:
            job = todo.pop()
            if job not in found:
                found[job] = serving.job
                todo += before.get(job, [])
    return found


def _weighted(aims: Sequence[cp_model.LinearExprT], now: Sequence[int]) -> cp_model.LinearExprT:
    """One sum that is less exactly where the aims are less in their strict order, as far as whole numbers reach: no
    lesser aim can outweigh one minute of a greater one while it gets no worse than it is."""
    weight, terms = 1, []
    for aim, value in zip(reversed(aims), reversed(now), strict=True):
        terms.append(aim * weight)
        weight = min(HEAVIEST, weight * (value + 1))
    return cp_model.LinearExpr.sum(terms)
