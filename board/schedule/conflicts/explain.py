"""Clashes behind a solution's violations, the most important first, each in one plain sentence. Pure but for `can`."""

from collections.abc import Callable, Iterable, Mapping, Sequence
from datetime import timedelta
from zoneinfo import ZoneInfo

from board.base import words
from board.schedule.conflicts.clashes import HANDS, OVENS, Can, Clash, Taken, clash_behind, is_behind
from board.schedule.conflicts.violations import Violation, amounts
from board.schedule.dependencies import end_of, hold_until, way_of
from board.schedule.problem import LITRE, Demand, OvenUse, Problem, Way
from board.schedule.solution import Solution

MOST_SEARCHED, MOST_TRIED = 5, 15  # clashes searched for, and further violations tried against those found
MOST_NAMED = 5  # steps of a clash that are named


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
    """Says a clash in words, with times as they stand in the solution."""

    def __init__(self, problem: Problem, solution: Solution, names: Sequence[str], zone: ZoneInfo) -> None:
        self.problem = problem
        self.solution = solution
        self.names = names
        self.zone = zone

    def tell(self, clash: Clash) -> str:
        """One sentence for each thing fought over."""
        kinds = dict.fromkeys(taken.what for taken in clash.taken)
        return "; ".join(self._over(what, [t for t in clash.taken if t.what == what]) for what in kinds)

    def _over(self, what: str | int, taken: list[Taken]) -> str:
        if what == HANDS:
            return self._over_hands(taken)
        if what == OVENS:
            return self._over_ovens(taken)
        assert isinstance(what, int)
        resource = self.problem.resources[what]
        room = resource.name in ("fridge", "freezer")
        capacity = resource.capacity / LITRE if room else resource.capacity
        listed = self._listed(taken, lambda t: self._amount(t, what, room=room))
        return words.clash_over(words.all_there_is(resource.name, capacity), listed)

    def _over_hands(self, taken: list[Taken]) -> str:
        listed = self._listed(taken, lambda _: "")
        if len(taken) == 1:
            return words.clash_of_hours(listed)
        people = {h for t in taken for h in self.problem.jobs[t.job].hands}
        return words.clash_over(words.hands_there_are(len(people)), listed)

    def _over_ovens(self, taken: list[Taken]) -> str:
        uses = {t: self._oven_use(t) for t in taken}
        ovens = {use.oven for use in uses.values()}
        named = self.problem.ovens[ovens.pop()].name if len(ovens) == 1 else None
        agree = all(a.agrees(b) for a in uses.values() for b in uses.values())
        listed = self._listed(taken, lambda t: words.accepts(uses[t].low, uses[t].high, off=uses[t].off))
        shelves = max(self.problem.ovens[use.oven].shelves for use in uses.values())
        return words.clash_over_oven(named, listed, shelves if agree else None)

    def _oven_use(self, taken: Taken) -> OvenUse:
        ways = [way_of(self.problem, self.solution, taken.job), *self.problem.jobs[taken.job].ways]
        return next(use for way in ways if (use := _oven_of(way, kept=taken.kept)) is not None)

    def _amount(self, taken: Taken, resource: int, *, room: bool) -> str:
        ways = [way_of(self.problem, self.solution, taken.job), *self.problem.jobs[taken.job].ways]
        demands = (d for way in ways for d in _demands_of(way, kept=taken.kept) if d.resource == resource)
        amount = next(demand.amount for demand in demands)
        return f"{amount / LITRE:g} l" if room else f"{amount}" if amount > 1 else ""

    def _listed(self, taken: list[Taken], more: Callable[[Taken], str]) -> str:
        def one(each: Taken) -> str:
            name = self.names[each.job]
            pieces = [self._when(each), more(each)]
            tail = ", ".join(piece for piece in pieces if piece)
            return f"{words.keeping_it(name) if each.kept else name}{f' ({tail})' if tail else ''}"

        in_time = sorted(taken, key=lambda t: (self.solution.starts[t.job], t.kept))
        return words.some_of([one(each) for each in in_time], MOST_NAMED)

    def _when(self, taken: Taken) -> str:
        start, end = self.solution.starts[taken.job], end_of(self.problem, self.solution, taken.job)
        if taken.kept:
            last = hold_until(self.problem, self.solution, taken.job)
            start, end = end, last[0] if last else end
        if end <= start:
            return ""
        first, second = (
            (self.problem.origin + timedelta(minutes=minute)).astimezone(self.zone) for minute in (start, end)
        )
        return f"{words.day_and_clock(first)}–{words.clock(second)}"


def _oven_of(way: Way, *, kept: bool) -> OvenUse | None:
    if kept:
        return way.hold.oven if way.hold is not None else None
    return way.oven


def _demands_of(way: Way, *, kept: bool) -> Iterable[Demand]:
    if kept:
        return way.hold.demands if way.hold is not None else ()
    return way.demands


Clashes = Mapping[Violation, Clash]
