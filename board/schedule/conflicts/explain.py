"""Clashes behind a solution's violations, the most important first, each in one plain sentence. Pure but for `can`."""

from collections.abc import Callable, Iterable, Mapping
from datetime import datetime, timedelta
from typing import Any

from board.schedule.conflicts.clashes import HANDS, OVENS, Can, Clash, Taken, clash_behind, is_behind
from board.schedule.conflicts.violations import Violation, amounts
from board.schedule.dependencies import end_of, hold_until, way_of
from board.schedule.problem import LITRE, Demand, OvenUse, Problem, Way
from board.schedule.solution import Solution
from board.sheet.told import Fight, FightForHands, FightForOven, FightForThing, Fights, Taker

MOST_SEARCHED, MOST_TRIED = 5, 15  # clashes looked for, and further things tried against those found


def clashes_of(problem: Problem, solution: Solution, can: Can) -> dict[Violation, Clash]:
    """By violation, the dearest first; those left out were not examined, as there are too many."""
    bent = amounts(problem, solution)
    found: dict[Violation, Clash] = {}
    for violation in sorted(bent, key=lambda b: (b.level, -bent[b], b.index))[:MOST_TRIED]:
        known = next((c for c in found.values() if c.taken and is_behind(c, problem, violation, bent, can)), None)
        if known is not None:
            found[violation] = known
        elif len(set(found.values())) < MOST_SEARCHED:
            found[violation] = clash_behind(problem, violation, bent, can)
    return found


class Teller:
    """Tells a clash as a sheet does, with times as they stand in the solution."""

    def __init__(self, problem: Problem, solution: Solution) -> None:
        self.problem = problem
        self.solution = solution

    def tell(self, clash: Clash) -> Fights:
        """Each thing that is fought over, once."""
        kinds = dict.fromkeys(taken.what for taken in clash.taken)
        return Fights(tuple(self._over(what, [t for t in clash.taken if t.what == what]) for what in kinds))

    def _over(self, what: str | int, taken: list[Taken]) -> Fight:
        if what == HANDS:
            people = {h for t in taken for h in self.problem.jobs[t.job].hands}
            return FightForHands(len(people), self._takers(taken, lambda _: {}))
        if what == OVENS:
            return self._over_ovens(taken)
        assert isinstance(what, int)
        resource = self.problem.resources[what]
        unit = LITRE if resource.name in ("fridge", "freezer") else 1
        takers = self._takers(taken, lambda t: {"amount": self._amount(t, what) / unit})
        return FightForThing(resource.name, resource.capacity / unit, takers)

    def _over_ovens(self, taken: list[Taken]) -> Fight:
        uses = {t: self._oven_use(t) for t in taken}
        ovens = {use.oven for use in uses.values()}
        named = self.problem.ovens[ovens.pop()].name if len(ovens) == 1 else None
        agree = all(a.agrees(b) for a in uses.values() for b in uses.values())
        takers = self._takers(taken, lambda t: {"low": uses[t].low, "high": uses[t].high, "off": uses[t].off})
        shelves = max(self.problem.ovens[use.oven].shelves for use in uses.values())
        return FightForOven(named, shelves if agree else None, takers)

    def _oven_use(self, taken: Taken) -> OvenUse:
        ways = [way_of(self.problem, self.solution, taken.job), *self.problem.jobs[taken.job].ways]
        return next(use for way in ways if (use := _oven_of(way, kept=taken.kept)) is not None)

    def _amount(self, taken: Taken, resource: int) -> int:
        ways = [way_of(self.problem, self.solution, taken.job), *self.problem.jobs[taken.job].ways]
        demands = (d for way in ways for d in _demands_of(way, kept=taken.kept) if d.resource == resource)
        return next(demand.amount for demand in demands)

    def _takers(self, taken: list[Taken], more: Callable[[Taken], dict[str, Any]]) -> tuple[Taker, ...]:
        """In the order of time; `more`: what else is told of each."""
        in_time = sorted(taken, key=lambda t: (self.solution.starts[t.job], t.kept))
        return tuple(Taker(self.problem.jobs[t.job].id, t.kept, *self._when(t), **more(t)) for t in in_time)

    def _when(self, taken: Taken) -> tuple[datetime | None, datetime | None]:
        start, end = self.solution.starts[taken.job], end_of(self.problem, self.solution, taken.job)
        if taken.kept:
            last = hold_until(self.problem, self.solution, taken.job)
            start, end = end, last[0] if last else end
        if end <= start:
            return None, None
        return self.problem.origin + timedelta(minutes=start), self.problem.origin + timedelta(minutes=end)


def _oven_of(way: Way, *, kept: bool) -> OvenUse | None:
    if kept:
        return way.hold.oven if way.hold is not None else None
    return way.oven


def _demands_of(way: Way, *, kept: bool) -> Iterable[Demand]:
    if kept:
        return way.hold.demands if way.hold is not None else ()
    return way.demands


Clashes = Mapping[Violation, Clash]
