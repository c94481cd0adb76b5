"""Clashes behind a solution's violations, the most important first, each in one plain sentence. Pure but for `can` and
`left`."""

import math
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from typing import Any

from board.schedule.conflicts.clashes import (
    HANDS,
    OVENS,
    Can,
    Clash,
    Taken,
    clash_behind,
    is_behind,
    letting_go,
    takings,
)
from board.schedule.conflicts.violations import LEVEL, Violation, amounts
from board.schedule.dependencies import end_of, hold_until, way_of
from board.schedule.problem import LITRE, Demand, OvenUse, Problem, Way
from board.schedule.solution import Solution
from board.sheet.run_sheet import ORDER
from board.sheet.told import (
    Cause,
    Causes,
    Chain,
    Fight,
    FightForHands,
    FightForOven,
    FightForThing,
    Fights,
    Held,
    Taker,
    Why,
)

MOST_SEARCHED, MOST_TRIED = 5, 15  # clashes looked for, and further violations held against those found
MOST_CAUSES, MOST_LINKS = 3, 4  # clashes behind one violation, and links of a chain that are told
Clashes = Mapping[Violation, tuple[Clash, ...]]
Left = Callable[[], float]  # seconds there are still


class _TimeIsUp(Exception):
    """No bug: what was found until now is all there is."""


def clashes_of(problem: Problem, solution: Solution, can: Can, left: Left = lambda: math.inf) -> Clashes:
    """By violation, the dearest first: each clash that by itself is enough for it. Those left out were not examined, as
    there are too many; where no time is `left`, nothing is known of the rest but what is violated."""
    bent = amounts(problem, solution)
    in_order = sorted(bent, key=lambda b: (b.level, -bent[b], b.index))[:MOST_TRIED]
    found: dict[Violation, tuple[Clash, ...]] = {}

    def in_time(asked: Problem, violation: Violation, amounts: Mapping[Violation, int]) -> bool | None:
        if left() <= 0:
            raise _TimeIsUp
        return can(asked, violation, amounts)

    try:
        for violation in in_order:
            known = list(dict.fromkeys(clash for clashes in found.values() for clash in clashes if clash.taken))
            for clash in _causes(problem, violation, bent, in_time, known):
                found[violation] = (*found.get(violation, ()), clash)
    except _TimeIsUp:
        for violation in in_order[:MOST_SEARCHED]:
            found.setdefault(violation, (Clash(violation, ()),))
    return found


def _causes(
    problem: Problem, violation: Violation, bent: Mapping[Violation, int], can: Can, known: list[Clash]
) -> Iterator[Clash]:
    """The clash behind a violation; behind a late course or work out of hours each, no two over the same takings: those
    known already, then others."""
    if can(letting_go(problem, set(takings(problem))), violation, bent) is False:
        yield from _beside_time(problem, violation, bent, can)
        return
    most = MOST_CAUSES if violation.level <= LEVEL["late"] else 1
    told: list[Clash] = []
    freed: set[Taken] = set()
    for clash in known[:MOST_SEARCHED]:
        if len(told) < most and not freed & set(clash.taken) and is_behind(clash, problem, violation, bent, can):
            yield clash
            told.append(clash)
            freed |= set(clash.taken)
    for _ in range(min(most - len(told), MOST_SEARCHED - len(known))):
        left = letting_go(problem, freed)
        if told and can(left, violation, bent) is not False:
            return
        clash = clash_behind(left, violation, bent, can)
        if clash.taken or not told:
            yield clash
        if not clash.taken:  # not proved within the search's limit this time
            return
        told.append(clash)
        freed |= set(clash.taken)


def _beside_time(problem: Problem, violation: Violation, bent: Mapping[Violation, int], can: Can) -> Iterator[Clash]:
    """Time alone forces it; and where that would make a course less late, a clash behind the rest."""
    yield Clash(violation, (), by_time=True)
    if violation.kind != "late" or bent[violation] < 2:
        return
    servings = list(problem.servings)
    late = servings[violation.index]
    servings[violation.index] = replace(late, wanted=late.wanted + bent[violation] - 1)
    later = replace(problem, servings=tuple(servings))
    if can(later, violation, bent) is False:
        clash = clash_behind(later, violation, bent, can)
        if clash.taken:
            yield clash


class Teller:
    """Tells a clash as a sheet does, with times as they stand in the solution."""

    def __init__(self, problem: Problem, solution: Solution) -> None:
        self.problem = problem
        self.solution = solution

    def tell(self, clashes: Sequence[Clash], otherwise: Why | str) -> Why | str:
        """Each clash; `otherwise`: what is told where none is known."""
        causes: list[Cause] = [
            self._fights(clash) if clash.taken else self._in_order(clash.violation)
            for clash in clashes
            if clash.taken or (clash.by_time and clash.violation.kind == "late")
        ]
        if not causes:
            return otherwise
        return Causes(tuple(causes)) if len(causes) > 1 else causes[0]

    def _in_order(self, late: Violation) -> Chain:
        """The longest way to a late course by the order of its steps alone, from itself back."""
        job, links = self.problem.servings[late.index].job, list[Held]()
        soonest: dict[int, int] = {}
        while len(links) < MOST_LINKS:
            before = [order for order in self.problem.orders if order.second == job and order.firm]
            if not before:
                break
            longest = max(before, key=lambda order: self._soonest(order.first, soonest) + order.least)
            until = end_of(self.problem, self.solution, longest.first) + longest.least
            job = longest.first
            links.append(Held(self.problem.jobs[job].id, self.problem.origin + timedelta(minutes=until), ORDER))
        far_end, ends = self.problem.jobs[job], len(links) < MOST_LINKS
        own = far_end.window is not None and far_end.window[0] > self.problem.opens
        return Chain(tuple(links), hours_begin=ends and far_end.fixed is None and not own, own_time=ends and own)

    def _soonest(self, n: int, known: dict[int, int]) -> int:
        """The minute by which a job can be over, if it waits for nothing but the order and its time."""
        if n not in known:
            job = self.problem.jobs[n]
            begins = [
                job.window[0] if job.window is not None else self.problem.opens if job.fixed is None else job.fixed
            ]
            begins += [
                self._soonest(order.first, known) + order.least
                for order in self.problem.orders
                if order.second == n and order.firm
            ]
            known[n] = max(begins) + min(way.minutes for way in job.ways)
        return known[n]

    def _fights(self, clash: Clash) -> Fights:
        """Each thing that is fought over, once."""
        kinds = dict.fromkeys(taken.what for taken in clash.taken)
        return Fights(tuple(self._over(what, [t for t in clash.taken if t.what == what]) for what in kinds))

    def _over(self, what: str | int, taken: list[Taken]) -> Fight:
        if what == HANDS:
            people = {h for t in taken for h in self.problem.jobs[t.job].hands}
            some = sorted(people) if len(people) < len(self.problem.hands) else []
            names = tuple(self.problem.hands[hand].name for hand in some)
            return FightForHands(len(people), self._takers(taken, lambda _: {}), names)
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
