"""Problem → Solution with OR-Tools CP-SAT. One worker and a fixed seed: the same problem has the same solution.

Aims are solved in order, each fixed before the next. First it tries for zero in all costly aims at once: a sound plan
reaches it, and zero needs no further proof. A large problem begins with a list schedule, bettered piece by piece.
"""

import math
import threading
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import replace
from typing import Literal

from board.schedule.list_scheduling import list_schedule
from board.schedule.problem import Problem
from board.schedule.solution import AIMS, COSTLY, OUTSIDE, AimResult, Solution
from board.schedule.solver.aims import Aims
from board.schedule.solver.batches import Batches
from board.schedule.solver.library import cp_model
from board.schedule.solver.limits import Limits
from board.schedule.solver.neighbourhoods import Neighbourhoods
from board.schedule.solver.search import (
    Clock,
    Effort,
    Found,
    Watch,
    decided_by,
    hint_all,
    hint_decided,
    run,
    set_domain,
)
from board.schedule.solver.search import (
    Progress as Progress,
)
from board.schedule.solver.sharing import shared_out
from board.schedule.solver.variables import Variables

STEADY = 8.0  # the solver's deterministic units of work for a costly aim; the same on every machine
STEADY_FOR_THE_REST = 1.0  # for each other aim, which a sound plan proves with a tenth of it
AT_FIRST = 0.05  # for a first try at what may well be proved at once
HANDS, TOGETHER, TOUCH = 0.04, 0.04, 0.06  # for each finishing touch
LIMIT_SECONDS = 60.0
FIRST_SECONDS = 5.0  # for what follows from a first answer; it takes a tenth of a second
OF_THE_COSTLY, OF_THE_REST = 0.5, 0.6  # of the time left, to better a large problem piece by piece; ours
STEADY_TO_STAY = 0.3  # to find one near a large timetable that was known
NEAR_SECONDS = 0.2  # of the time left, to better that piece by piece; ours
OFTEN_NOUGHT = ("usual", "rest")  # of most plans, so that one search does for each and the aim after it
LARGE = 150  # pieces of work from which one search of all of them takes too long; ours


Stay = Literal["last", "first"]  # after all aims, or before all that are not costly


class NoAnswer(Exception):
    """Time ran out, or the search was stopped, before any solution was found; not a bug, but rare."""


def solve(
    problem: Problem,
    limit_seconds: float = LIMIT_SECONDS,
    aims: tuple[str, ...] = AIMS,
    watch: Watch | None = None,
    steady: float = STEADY,
    near: Sequence[int | None] | None = None,
    *,
    stay: Stay | None = None,
    halt: threading.Event | None = None,
) -> Solution:
    """The best solution found, aim by aim. A KeyboardInterrupt, or `halt` once it is set, ends the search with the best
    so far. Raises NoAnswer.

    `steady` bounds each costly aim in the solver's own units, the same on every machine; `limit_seconds` bounds the
    whole. `near`: likely starts, one per job (None: not known), from which the search begins; with `stay`, as few jobs
    as may be begin at another time, among timetables equal in all aims, or `first`, in the costly ones; what then moves
    goes by the other aims, of which nothing is claimed.
    """
    return _Search(problem, Clock(limit_seconds, halt), aims, watch, steady, near, stay=stay).run()


class _Search:
    def __init__(
        self,
        problem: Problem,
        clock: Clock,
        aims: tuple[str, ...],
        watch: Watch | None,
        steady: float,
        near: Sequence[int | None] | None,
        *,
        stay: Stay | None,
    ) -> None:
        self.near = near
        self.stay = stay
        self.problem = problem
        self.clock = clock
        self.wanted = aims
        self.costly = [aim for aim in COSTLY if aim in aims]
        self.watch = watch
        self.steady = steady
        self.large = len(problem.jobs) > LARGE
        self.tight = False  # whether all sums are as the best solution has them
        self.hopeless = False  # whether nought in all costly aims is proved not to be had
        self.results: list[AimResult] = []
        self.best: Solution | None = None

    def _fresh(self, *, costly_only: bool = False) -> None:
        self.variables = Variables(self.problem)
        Limits(self.variables).add()
        self.aims = Aims(self.variables)
        self.sums = self.aims.costly() if costly_only else self.aims.soon()
        self.later = [self.aims.of_the_days, self.aims.late]
        if self.large and not costly_only:
            self._add_sums(self.wanted[-1])
        self.model = self.variables.model
        for job, start in zip(self.variables.jobs, self.near or (), strict=False):
            if job.job.fixed is None and start is not None:
                self.model.add_hint(job.start, start)

    def run(self) -> Solution:
        rest = [aim for aim in self.wanted if aim not in (*COSTLY, OUTSIDE)]
        if self.large and self.stay and self.wanted == AIMS and self._stay_near(rest):
            return self._ended()
        if self.stay == "first" and not self.large:
            self._stay_before()
            return self._ended()
        grown = False
        if not (self._looks_easy() and self._all_nought(rest[:1])):
            grown = not self.hopeless and self._grown()
            self._fresh()
            if not (grown and self._stand_on_grown()):
                rest = list(self.wanted)
        for number, aim in enumerate(rest):
            if not any(result.aim == aim for result in self.results):
                betters = grown and aim not in COSTLY and (number == 0 or rest[number - 1] in COSTLY)
                if not self._know(rest[-1] if betters else aim):
                    break
                if betters:
                    self._better_piece_by_piece(rest[number:], OF_THE_REST)
                if not (aim in OFTEN_NOUGHT and self._nought_beside(aim, rest[number + 1 :])):
                    self._level(aim, self._share(len(rest) - number))
        if self.stay and self.best is not None and self.clock.left():
            self._stay(STEADY_FOR_THE_REST, self.clock.left())
        return self._ended()

    def _ended(self) -> Solution:
        if self.wanted == AIMS and self.best is not None and self.clock.left():
            self._touch(self.best)
        if self.best is None:
            self._fall_back()
        if self.best is None:
            raise NoAnswer
        return replace(self.best, aims=tuple(self.results), seconds=self.clock.spent())

    def _nought_seconds(self) -> float:
        """For nought in all costly aims, before another way is tried."""
        return self.clock.left() * (1 / 4 if self.large else 3 / 5)

    def _looks_easy(self) -> bool:
        """Whether one search may soon reach nought in all costly aims: of few pieces, or from starts that are known."""
        return not self.large or self.near is not None

    def _stay_before(self) -> None:
        """The costly aims, then as little moved as may be, then the rest for what has moved."""
        rest = [aim for aim in self.wanted if aim not in COSTLY]
        if not self._all_nought([]):
            self._fresh()
            for aim in self.costly:
                self._level(aim, self.clock.left())
        if self.best is None or not self.clock.left():
            return
        self._stay(STEADY_FOR_THE_REST, self.clock.left())
        moved = self._moved(self.best)
        for aim in rest:
            if not self._know(aim):
                break
            with self._only(moved):
                self._level(aim, self.clock.left())
            found = self.results.pop()
            self.results.append(replace(found, bound=0, searched=not found.value))

    # --- large problems
    def _stay_near(self, rest: list[str]) -> bool:
        """Whether, with nought in all costly aims, a timetable stands near the one that was known, bettered piece by
        piece for a while. Its aims are as they come."""
        self._fresh()
        self.results = self._stay_nought()
        self._stay(STEADY_TO_STAY, self.clock.left() / 2)
        if self.best is None:
            self.results = []
            return False
        self._better_piece_by_piece(rest, NEAR_SECONDS)
        self._tighten()
        for aim in rest:
            value = self._value_now(aim)
            self.results.append(AimResult(aim, value, 0, searched=not value))
            self.model.add(self.sums[aim] <= value)
        return True

    def _grown(self) -> bool:
        """Whether a list schedule stands, bettered for the costly aims."""
        self._fresh(costly_only=True)
        if not self._stand_on(list_schedule(self.problem)):
            return False
        self._better_piece_by_piece(self.costly, OF_THE_COSTLY)
        return True

    def _fall_back(self) -> None:
        """Where no search found anything in time, a list schedule stands; its aims are as they come."""
        self._fresh()
        self._know(self.wanted[-1])
        if self._stand_on(list_schedule(self.problem)):
            self.results = [AimResult(aim, self._value_now(aim), 0, searched=False) for aim in self.wanted]

    def _stand_on(self, solution: Solution | None) -> bool:
        """Whether a solution keeps the model's limits; it is then what is bettered."""
        if solution is None:
            return False
        hint_decided(self.variables, solution)
        self.model.minimize(cp_model.LinearExpr.sum(list(self.sums.values())))  # each is then as it comes, and no more
        found = run(self.model, Effort(self.steady, FIRST_SECONDS, probing=False, fixed=True), self.clock, "")
        if found.any:
            self._keep(found)
            self.tight = True
        return found.any

    def _stand_on_grown(self) -> bool:
        """Whether the costly aims are all nought; they then stay so."""
        if not self._stand_on(self.best):
            self.best = None  # of another model, whose sums are not these
            return False
        if any(self._value_now(aim) for aim in self.costly):
            return False
        self.results = self._stay_nought()
        return True

    def _stay_nought(self) -> list[AimResult]:
        """Holds the costly aims to nought, and what is so with them."""
        for aim in self.costly:
            self.model.add(self.sums[aim] == 0)
        self.sums[OUTSIDE] = cp_model.LinearExpr.sum([])
        return [AimResult(aim, 0, 0) for aim in self.wanted if aim in (*self.costly, OUTSIDE)]

    def _better_piece_by_piece(self, aims: Sequence[str], share: float) -> None:
        def tell(now: tuple[int, ...]) -> None:
            if self.watch is not None:
                worst = next((n for n, value in enumerate(now) if value), len(now) - 1)
                self.watch(Progress(aims[worst], now[worst], 0))

        sums = [self.sums[aim] for aim in aims]
        search = Neighbourhoods(self.variables, sums, self.found, self.clock)
        self._keep(search.better(share * self.clock.left(), tell))

    def _share(self, levels: int) -> float:
        """Seconds for the next of so many searches: all there are, but for a large problem, which would take them."""
        return self.clock.left() / levels if self.large else self.clock.left()

    # --- aim by aim
    def _know(self, aim: str) -> bool:
        """Adds the sums that come late, once one of them is wanted, as the best solution has them. False: the search
        was stopped meanwhile, and what is still wanted stays unknown."""
        new = self._add_outside(aim)
        if aim not in self.sums:
            self._add_sums(aim)
            new = True
        if not new or self.best is None or self._stand_on(self.best):
            return True
        self.clock.halt.set()
        left = self.wanted[len(self.results) :]
        self.results += [AimResult(each, self.problem.horizon, 0, searched=False) for each in left]
        return False

    def _add_outside(self, aim: str) -> bool:
        """Adds the sum of `OUTSIDE` for the first aim that wants it. Whether its variables are new: where hours are
        kept, it has none."""
        if aim in COSTLY or OUTSIDE not in self.wanted or OUTSIDE in self.sums:
            return False
        if self.best is not None and not self._value_now(COSTLY[0]):
            self.sums[OUTSIDE] = cp_model.LinearExpr.sum([])
            return False
        self.sums |= self.aims.outside()
        return True

    def _all_nought(self, first: list[str]) -> bool:
        """Whether the costly aims can all be zero; if so, the first of the others is solved with them."""
        self._fresh()
        nought = self._stay_nought()
        if first:
            self._know(first[0])
            found = self._least(first[0], self.steady, self._nought_seconds())
            self.results = [*nought, found] if found is not None else []
            return found is not None
        effort = Effort(self.steady, self._nought_seconds(), probing=not self.large)
        either = run(self.model, effort, self.clock, COSTLY[0], self.watch)
        self.hopeless = either.whole and not either.any
        if not either.any:
            return False
        self.results = nought
        self._keep(either)
        return True

    def _nought_beside(self, aim: str, following: list[str]) -> bool:
        """Whether an aim was found to be nought in a short search for the least of the one after it, which may then
        be known as well."""
        if not following or self.best is None or self.large or not self._value_now(aim):
            return False
        is_nought = self.model.new_int_var(1, 1, "nought")
        self.model.add(self.sums[aim] <= 0).only_enforce_if(is_nought)
        self.model.minimize(self.sums[following[0]])
        found = run(
            self.model, Effort(AT_FIRST, self.clock.left(), linear=False, probing=False), self.clock, aim, self.watch
        )
        if not found.any:
            set_domain(self.model, is_nought.index, [0, 1])
            return False
        self._keep(found)
        self.results.append(AimResult(aim, 0, 0))
        if found.whole:
            self.results.append(AimResult(following[0], found.value, found.bound))
            self.model.add(self.sums[following[0]] <= found.value)
        return True

    def _add_sums(self, aim: str) -> None:
        """Those that come late, as far as one of them is reached."""
        while aim not in self.sums:
            self.sums |= self.later.pop(0)()

    def _level(self, aim: str, seconds: float) -> None:
        """Minimises one aim and fixes it. Nought is the least of any."""
        if self.best is None or (seconds and self._value_now(aim)):
            found = self._least(aim, self.steady if aim in COSTLY else STEADY_FOR_THE_REST, seconds)
            if found is not None:
                self.results.append(found)
                if self.large:
                    self._tighten()
                return
        if self.best is not None:
            if self._value_now(aim):
                self._tighten()
            value = self._value_now(aim)
            self.results.append(AimResult(aim, value, 0, searched=not value))
            self.model.add(self.sums[aim] <= value)

    def _tighten(self) -> None:
        """Makes every sum as small as the solution has it: a run leaves those it did not minimise at what they may be
        at the most."""
        if not self.tight:
            self._stand_on(self.best)

    def _least(self, aim: str, steady: float, seconds: float) -> AimResult | None:
        """The least of an aim, which it then fixes; None if nothing was found. From a solution, a short search without
        linear relaxations proves most; what it leaves open is searched with them, and then without."""
        self.model.minimize(self.sums[aim])
        least: AimResult | None = None
        until = self.clock.spent() + seconds
        tries = [(False, AT_FIRST), (True, steady), (False, steady)]
        for linear, work in tries if self.best is not None or self.near is not None else tries[1:]:
            probing = not self.large and work > AT_FIRST
            halving = aim in COSTLY and not self.large
            effort = Effort(work, until - self.clock.spent(), linear=linear, probing=probing, halving=halving)
            found = run(self.model, effort, self.clock, aim, self.watch)
            self.hopeless = found.whole and not found.any
            if found.any:
                if least is None or found.value <= least.value:
                    self._keep(found)
                value = found.value if least is None else min(found.value, least.value)
                least = AimResult(aim, value, max(found.bound, least.bound if least is not None else found.bound))
            settled = least is not None and least.proved
            if self.hopeless or settled or self.clock.spent() >= until or not self.clock.left():
                break
        if least is not None:
            self.model.add(self.sums[aim] <= least.value)
        return least

    def _stay(self, steady: float, seconds: float) -> None:
        """As few jobs as may be begin at another time than was known; nothing is claimed of it."""
        moved = []
        for job, start in zip(self.variables.jobs, self.near or (), strict=True):
            if job.job.fixed is None and start is not None:
                elsewhere = self.model.new_bool_var("moved")
                self.model.add(job.start == start).only_enforce_if(~elsewhere)
                self.model.add_hint(elsewhere, self.best is not None and self.found.solver.value(job.start) != start)
                moved.append(elsewhere)
        self._finish("stay", cp_model.LinearExpr.sum(moved), steady, seconds)

    def _touch(self, best: Solution) -> None:
        """Chooses among equals as well as short searches can, day by day; nothing is claimed of it. What was to stay
        and did is left alone."""
        moved = self._moved(best)
        if not moved:
            return
        if len(self.problem.hands) > 1:
            with self._only(moved, who=True):
                self._finish("hands", shared_out(self.variables), HANDS)
        batches = Batches(self.variables, self.best or best)
        apart = batches.apart()
        for day in batches.days():
            with self._only(day & moved):
                self._finish("together", apart, TOGETHER)
        with self._only(batches.evening() & moved):
            self._finish("prompt", self.aims.prompt(), TOUCH)
        ragged = batches.ragged(self.best or best)
        with self._only(moved):
            self._finish("touch", cp_model.LinearExpr.sum([self.aims.touch(), *ragged]), TOUCH)

    def _moved(self, best: Solution) -> set[int]:
        """The jobs that begin at another time than was known; all of them, where none was to stay."""
        known = self.near if self.stay and self.near is not None else [None] * len(best.starts)
        return {n for n, (start, was) in enumerate(zip(best.starts, known, strict=True)) if start != was}

    @contextmanager
    def _only(self, free: set[int], *, who: bool = False) -> Iterator[None]:
        """Meanwhile all that is decided of other jobs stays as it was found; with `who`, of these too, but for whose
        hands do it."""
        decided = [
            variable.index
            for n, job in enumerate(self.variables.jobs)
            for variable in (job.start, *job.ways, job.over, job.kept, *(() if who and n in free else job.who.values()))
            if who or n not in free
        ]
        domains = {index: list(self.model.proto.variables[index].domain) for index in decided}
        for index in domains:
            value = self.found.solver.value(self.model.get_int_var_from_proto_index(index))
            set_domain(self.model, index, [value, value])
        yield
        for index, domain in domains.items():
            set_domain(self.model, index, domain)

    def _finish(self, name: str, expression: cp_model.LinearExprT, steady: float, seconds: float = math.inf) -> None:
        """One choice among equals. What the clock cut short would differ from one run to the next, and is left."""
        self.model.minimize(expression)
        effort = Effort(
            steady,
            min(seconds, self.clock.left()),
            probing=not self.stay and not self.large,
            linear=not self.stay,
        )
        found = run(self.model, effort, self.clock, name, self.watch)
        if found.any and (found.whole or self.clock.left()):
            self.model.add(expression <= found.value)
            self._keep(found)

    def _keep(self, found: Found) -> None:
        """Keeps the solution as the point where the next search begins."""
        self.found = found
        self.tight = False
        hint_all(self.model, found.solver)
        self.best = decided_by(self.variables, found.solver)

    def _value_now(self, aim: str) -> int:
        return self.found.solver.value(self.sums[aim])
