"""Why each piece of work stands where it does: its predecessors, and whose hands, oven or tools it waits for. Pure.

These waits, read off a solution, are the rule for an evening that slips: a thing starts at its planned time or when its
last wait is over, whichever is later.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import product

from board.schedule.oven_dial import InOven
from board.schedule.problem import Problem, Way
from board.schedule.solution import Solution
from board.sheet.run_sheet import ORDER, TABLE, Dependency


@dataclass(frozen=True, slots=True)
class Spell:
    """Minutes for which a job (or its result) uses an amount; it is freed at the `anchor` of job `free_after`."""

    job: int
    start: int
    end: int
    amount: int
    free_after: int
    anchor: str


def way_of(problem: Problem, solution: Solution, job: int) -> Way:
    return problem.jobs[job].ways[solution.ways[job]]


def end_of(problem: Problem, solution: Solution, job: int) -> int:
    return solution.starts[job] + way_of(problem, solution, job).minutes


def takers(problem: Problem, job: int) -> list[int]:
    """Those that take up what it made."""
    return [order.second for order in problem.orders if order.first == job and order.takes_up]


def hold_until(problem: Problem, solution: Solution, job: int) -> tuple[int, int] | None:
    """The minute until which a result stands, and the job that takes it up last; None if nothing does."""
    taking = [(solution.starts[f], f) for f in takers(problem, job)]
    return max(taking) if taking else None


def spells_in_ovens(problem: Problem, solution: Solution) -> dict[int, list[InOven]]:
    """Uses of each oven, in order of start."""
    found: dict[int, list[InOven]] = {n: [] for n, _ in enumerate(problem.ovens)}
    for n in range(len(problem.jobs)):
        way = way_of(problem, solution, n)
        start, end = solution.starts[n], end_of(problem, solution, n)
        if way.oven is not None and end > start:
            found[way.oven.oven].append(InOven(n, start, end, way.oven))
        last = hold_until(problem, solution, n) if solution.kept[n] else None
        ready = end + way.hold.ready_in if way.hold else end
        if way.hold and way.hold.oven and last and last[0] > ready:
            found[way.hold.oven.oven].append(InOven(n, ready, last[0], way.hold.oven, hold=True))
    return {oven: sorted(spells, key=lambda s: (s.start, s.end, s.job)) for oven, spells in found.items()}


def resource_spells(problem: Problem, solution: Solution) -> dict[int, list[Spell]]:
    """Uses of each resource, in order of start."""
    found: dict[int, list[Spell]] = {}
    for n in range(len(problem.jobs)):
        way = way_of(problem, solution, n)
        start, end = solution.starts[n], end_of(problem, solution, n)
        for demand in way.demands if end > start else ():
            found.setdefault(demand.resource, []).append(Spell(n, start, end, demand.amount, n, "end"))
        last = hold_until(problem, solution, n) if solution.kept[n] else None
        if way.hold and last and last[0] > end:
            for demand in way.hold.demands:
                spell = Spell(n, end, last[0], demand.amount, last[1], "start")
                found.setdefault(demand.resource, []).append(spell)
    return {r: sorted(spells, key=lambda s: (s.start, s.end, s.job)) for r, spells in found.items()}


def shelf_spells(problem: Problem, solution: Solution) -> dict[int, list[Spell]]:
    """Uses of each oven's shelves, as of a resource."""
    found: dict[int, list[Spell]] = {}
    for oven, spells in spells_in_ovens(problem, solution).items():
        for s in spells:
            last = hold_until(problem, solution, s.job) if s.hold else None
            found.setdefault(oven, []).append(
                Spell(s.job, s.start, s.end, s.use.shelves, last[1] if last else s.job, "start" if last else "end")
            )
    return found


def handed_on(spells: Iterable[Spell], capacity: int) -> list[tuple[Spell, Spell]]:
    """Pairs (giver, taker): each taker draws on what has been free longest, its own first."""
    pool: list[tuple[int, int, Spell | None]] = [(-(10**9), capacity, None)]
    pairs: list[tuple[Spell, Spell]] = []
    for spell in spells:
        wanted = spell.amount
        pool.sort(key=lambda p: (not (p[2] is not None and p[2].job == spell.job), p[0]))
        rest: list[tuple[int, int, Spell | None]] = []
        for free_at, amount, giver in pool:
            drawn = min(wanted, amount) if free_at <= spell.start else 0
            wanted -= drawn
            if drawn and giver is not None and giver.job != spell.job:
                pairs.append((giver, spell))
            if amount > drawn:
                rest.append((free_at, amount - drawn, giver))
        rest.append((spell.end, spell.amount, spell))
        pool = rest
    return pairs


def dependencies_of(problem: Problem, solution: Solution) -> list[list[Dependency]]:
    """Each job's waits, except for changes of an oven's setting, which the run sheet adds."""
    found: list[dict[tuple[int, str], Dependency]] = [{} for _ in problem.jobs]

    def add(second: int, first: int, anchor: str, minutes: int, reason: str) -> None:
        if first == second or problem.jobs[second].fixed is not None:
            return
        known = found[second].get((first, anchor))
        if known is None or known.minutes < minutes:
            why = ORDER if known is not None and known.reason == ORDER else reason
            wait = Dependency(problem.jobs[first].id, "start" if anchor == "start" else "end", minutes, why)
            found[second][(first, anchor)] = wait

    for order in problem.orders:
        if order.firm:
            add(order.second, order.first, "end", order.least, "order")
    for first, second, anchor, minutes in _hand_to_hand(problem, solution):
        add(second, first, anchor, minutes, "hands")
    for first, second, minutes in _after_the_quiet(problem, solution):
        add(second, first, "end", minutes, TABLE)
    takings = [
        (problem.resources[number].name, problem.resources[number].capacity, spells)
        for number, spells in resource_spells(problem, solution).items()
    ]
    takings += [
        ("oven", problem.ovens[oven].shelves, spells) for oven, spells in shelf_spells(problem, solution).items()
    ]
    for reason, capacity, spells in takings:
        for giver, taker in handed_on(spells, capacity):
            begins = solution.starts[taker.job]
            if taker.start == begins:
                add(taker.job, giver.free_after, giver.anchor, 0, reason)
            elif solution.starts[giver.free_after] < begins:
                # A result stands where its step ends, so the step may not end before that place is free.
                add(taker.job, giver.free_after, giver.anchor, begins - taker.start, reason)
    return [list(waits.values()) for waits in found]


def _after_the_quiet(problem: Problem, solution: Solution) -> Iterator[tuple[int, int, int]]:
    """(serving, job, minutes after its end) for work by those who sit that leads to no serving and stands after the
    stretch in which they are not to get up: if the course is late, so is that work."""
    sitters = {n for n, hand in enumerate(problem.hands) if hand.sits}
    served = [(end_of(problem, solution, each.job), each) for each in problem.sittings]
    for n, job in enumerate(problem.jobs):
        if not job.early or job.with_guests or sitters.isdisjoint(solution.who[n]):
            continue
        before = [(end, each) for end, each in served if end + each.minutes <= solution.starts[n]]
        if before:
            _, last = max(before, key=lambda found: found[0])
            yield last.job, n, last.minutes


def _hand_to_hand(problem: Problem, solution: Solution) -> list[tuple[int, int, str, int]]:
    """(first, second, anchor, minutes after first's start or end) for work that starts with hands just freed.

    Look-ins are left out: a stir interrupts without holding work up. A part at the end of a step moves with its step,
    so it holds others up but is not held up itself.
    """
    by_hand: dict[int, list[tuple[int, int, int, bool]]] = {}
    front = {n for n in range(len(problem.jobs)) if way_of(problem, solution, n).lane == "front-of-house"}
    for n in range(len(problem.jobs)):
        for who, part in product(solution.who[n], way_of(problem, solution, n).parts):
            if part.kind != "look-in":
                at = solution.starts[n] + part.offset
                by_hand.setdefault(who, []).append((at, at + part.length, n, part.offset == 0))
    found = []
    for parts in by_hand.values():
        parts.sort()
        for position, (start, _, second, begins) in enumerate(parts):
            if not begins:
                continue
            for _, end, first, first_begins in reversed(parts[:position]):
                walk = problem.walk if (first in front) != (second in front) else 0
                if end == end_of(problem, solution, first):
                    found.append((first, second, "end", walk))  # an overrun delays the next one
                elif end + walk <= start:
                    found.append((first, second, "start", end + walk - solution.starts[first]))
                if first_begins:
                    break
    return found
