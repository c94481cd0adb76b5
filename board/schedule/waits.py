"""Why each piece of work stands where it does: what it follows, and whose hands, oven or tools it waits for. Pure.

Read off an answer, these waits are the rule by which an evening moves when something slips: a thing starts when
it was to start, or when the last of its waits is over, whichever is later.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from board.schedule.answer import Answer
from board.schedule.question import Question, Way
from board.schedule.settings import InOven
from board.sheet.run_sheet import Wait


@dataclass(frozen=True, slots=True)
class Spell:
    """A job (or its result) that takes so much of something from minute to minute, until `free_after`/`anchor`."""

    job: int
    start: int
    end: int
    amount: int
    free_after: int
    anchor: str


def way_of(question: Question, answer: Answer, job: int) -> Way:
    return question.jobs[job].ways[answer.ways[job]]


def end_of(question: Question, answer: Answer, job: int) -> int:
    return answer.starts[job] + way_of(question, answer, job).minutes


def followers(question: Question, job: int) -> list[int]:
    return [order.second for order in question.orders if order.first == job]


def hold_until(question: Question, answer: Answer, job: int) -> tuple[int, int] | None:
    """Until which minute a result stands, and which job takes it up last; None if nothing does."""
    taking = [(answer.starts[f], f) for f in followers(question, job)]
    return max(taking) if taking else None


def spells_in_ovens(question: Question, answer: Answer) -> dict[int, list[InOven]]:
    """By oven, in order of start."""
    found: dict[int, list[InOven]] = {n: [] for n, _ in enumerate(question.ovens)}
    for n in range(len(question.jobs)):
        way = way_of(question, answer, n)
        start, end = answer.starts[n], end_of(question, answer, n)
        if way.oven is not None and end > start:
            found[way.oven.oven].append(InOven(n, start, end, way.oven))
        last = hold_until(question, answer, n) if answer.kept[n] else None
        if way.hold and way.hold.oven and last and last[0] > end:
            found[way.hold.oven.oven].append(InOven(n, end, last[0], way.hold.oven, hold=True))
    return {oven: sorted(spells, key=lambda s: (s.start, s.end, s.job)) for oven, spells in found.items()}


def resource_spells(question: Question, answer: Answer) -> dict[int, list[Spell]]:
    """By resource, in order of start."""
    found: dict[int, list[Spell]] = {}
    for n in range(len(question.jobs)):
        way = way_of(question, answer, n)
        start, end = answer.starts[n], end_of(question, answer, n)
        for demand in way.demands if end > start else ():
            found.setdefault(demand.resource, []).append(Spell(n, start, end, demand.amount, n, "end"))
        last = hold_until(question, answer, n) if answer.kept[n] else None
        if way.hold and last and last[0] > end:
            for demand in way.hold.demands:
                spell = Spell(n, end, last[0], demand.amount, last[1], "start")
                found.setdefault(demand.resource, []).append(spell)
    return {r: sorted(spells, key=lambda s: (s.start, s.end, s.job)) for r, spells in found.items()}


def shelf_spells(question: Question, answer: Answer) -> dict[int, list[Spell]]:
    """Shelves of each oven, as a resource."""
    found: dict[int, list[Spell]] = {}
    for oven, spells in spells_in_ovens(question, answer).items():
        for s in spells:
            last = hold_until(question, answer, s.job) if s.hold else None
            found.setdefault(oven, []).append(
                Spell(s.job, s.start, s.end, s.use.shelves, last[1] if last else s.job, "start" if last else "end")
            )
    return found


def handed_on(spells: Iterable[Spell], capacity: int) -> list[tuple[Spell, Spell]]:
    """Who hands what they took on to whom: each taker draws from what was free longest, its own first."""
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


def waits_of(question: Question, answer: Answer) -> list[list[Wait]]:
    """For each job its waits, but for the oven's changes of setting, which the run sheet adds."""
    found: list[dict[tuple[int, str], Wait]] = [{} for _ in question.jobs]

    def add(second: int, first: int, anchor: str, minutes: int, reason: str) -> None:
        if first == second or question.jobs[second].fixed is not None:
            return
        known = found[second].get((first, anchor))
        if known is None or known.minutes < minutes:
            wait = Wait(question.jobs[first].id, "start" if anchor == "start" else "end", minutes, reason)
            found[second][(first, anchor)] = wait

    for order in question.orders:
        if order.firm:
            add(order.second, order.first, "end", order.least, "order")
    for first, second, anchor, minutes in _hand_to_hand(question, answer):
        add(second, first, anchor, minutes, "hands")
    takings = [
        (question.resources[number].name, question.resources[number].capacity, spells)
        for number, spells in resource_spells(question, answer).items()
    ]
    takings += [
        ("oven", question.ovens[oven].shelves, spells) for oven, spells in shelf_spells(question, answer).items()
    ]
    for reason, capacity, spells in takings:
        for giver, taker in handed_on(spells, capacity):
            begins = answer.starts[taker.job]
            if taker.start == begins:
                add(taker.job, giver.free_after, giver.anchor, 0, reason)
            elif answer.starts[giver.free_after] < begins:
                # A result takes the place its step ends in; the step may not end before that is free.
                add(taker.job, giver.free_after, giver.anchor, begins - taker.start, reason)
    return [list(waits.values()) for waits in found]


def _hand_to_hand(question: Question, answer: Answer) -> list[tuple[int, int, str, int]]:
    """(first, second, anchor, minutes after first's start or end) for each piece of work that begins
    with hands just freed.

    Look-ins are left out: a stir interrupts, it does not hold up. A part at the end of a step moves with its step,
    so it holds others up but is not held up itself.
    """
    by_hand: dict[int, list[tuple[int, int, int, bool]]] = {}
    front = {n for n in range(len(question.jobs)) if way_of(question, answer, n).lane == "front-of-house"}
    for n in range(len(question.jobs)):
        who = answer.who[n]
        if who is None:
            continue
        for part in way_of(question, answer, n).parts:
            if part.kind != "look-in":
                at = answer.starts[n] + part.offset
                by_hand.setdefault(who, []).append((at, at + part.length, n, part.offset == 0))
    found = []
    for parts in by_hand.values():
        parts.sort()
        for position, (start, _, second, begins) in enumerate(parts):
            if not begins:
                continue
            for _, end, first, first_begins in reversed(parts[:position]):
                walk = question.walk if (first in front) != (second in front) else 0
                if end == end_of(question, answer, first):
                    found.append((first, second, "end", walk))  # an overrun holds the next one up
                elif end + walk <= start:
                    found.append((first, second, "start", end + walk - answer.starts[first]))
                if first_begins:
                    break
    return found
