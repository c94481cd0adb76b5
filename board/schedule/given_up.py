"""What a run sheet had to give up, and why. Pure."""

from collections.abc import Iterable, Iterator
from dataclasses import replace
from datetime import datetime, timedelta

from board.schedule.clocks import stretches, total
from board.schedule.conflicts.explain import MOST_LINKS
from board.schedule.conflicts.violations import Violation
from board.schedule.dependencies import end_of, way_of
from board.schedule.intervals import Window
from board.schedule.problem import Order, Problem
from board.schedule.solution import Solution
from board.schedule.windows import allowed_starts, home_windows, stands_alone
from board.sheet.run_sheet import ORDER, Slot
from board.sheet.told import (
    Because,
    Causes,
    Chain,
    GivenUp,
    Held,
    Late,
    Longest,
    NoPlace,
    NotReady,
    OverHours,
    PastClock,
    PastLimit,
    Reason,
    TakenUp,
    WaitsPast,
)

Told = tuple[Violation | None, GivenUp]  # None: an oven heats with nobody at home, which the solver does not limit


def given_up(problem: Problem, solution: Solution, slots: list[Slot]) -> Iterator[Told]:
    """Each violation and its wording, in the order of the aims: hours, courses, clocks, keeping."""
    teller = _Teller(problem, solution, slots)
    yield from teller.hours()
    yield from teller.courses()
    yield from teller.clocks()
    yield from teller.keeping()


class _Teller:
    def __init__(self, problem: Problem, solution: Solution, slots: list[Slot]) -> None:
        self.problem = problem
        self.solution = solution
        self.slots = {slot.id: slot for slot in slots}

    def at(self, minute: int) -> datetime:
        return self.problem.origin + timedelta(minutes=minute)

    def hours(self) -> Iterator[Told]:
        """Work outside its hours, heating with nobody at home, and steps that should follow at once but do not."""
        for n, job in enumerate(self.problem.jobs):
            way, start = way_of(self.problem, self.solution, n), self.solution.starts[n]
            reasons = [Because(reason) for reason in self._broken(n)] if job.fixed is None else []
            if reasons:
                attended = sum(part.length for part in way.parts)
                what = OverHours(job.id, self.at(start), self.at(start + way.minutes))
                why = Causes(tuple(reasons)) if len(reasons) > 1 else reasons[0]
                yield Violation("out-of-hours", n), GivenUp(what, why, attended or way.minutes)
        home = home_windows(self.problem)
        for slot in self.slots.values():
            start, end = (round((at - self.problem.origin).total_seconds() / 60) for at in (slot.start, slot.end))
            if slot.kind == "heat" and end > start and not any(a <= start and end <= b for a, b in home):
                yield None, GivenUp(OverHours(slot.id, slot.start, slot.end), Because("nobody-home"), end - start)
        for n, order in enumerate(self.problem.orders):
            wait = self.solution.starts[order.second] - end_of(self.problem, self.solution, order.first)
            if order.most is not None and order.most == order.least and wait > order.most:
                yield Violation("not-at-once", n), self._waits_past(order, wait, order.most)

    def _broken(self, n: int) -> Iterator[Reason]:
        """Which of the hours a job should keep it lies outside of: its own, those of who does it, those of anybody at
        home."""
        job, way, start = self.problem.jobs[n], way_of(self.problem, self.solution, n), self.solution.starts[n]
        if job.window is not None and not _within([job.window], start, way.minutes):
            yield "not-its-time"
        hands = self.problem.crew(self.solution.who[n])
        if any(not _within(hand.free, start + part.offset, part.length) for hand in hands for part in way.parts):
            yield "no-hours-left"
        if way.hot and not _within(home_windows(self.problem), start, way.minutes):
            yield "nobody-home"

    def courses(self) -> Iterator[Told]:
        for n, serving in enumerate(self.problem.servings):
            late = end_of(self.problem, self.solution, serving.job) - serving.wanted
            if late > 0:
                because = self._because(self.problem.jobs[serving.job].id)
                yield Violation("late", n), GivenUp(Late(serving.name, late), because, late)

    def clocks(self) -> Iterator[Told]:
        """Dishes whose clock runs out before they are eaten."""
        for n, (clock, out) in enumerate(zip(self.problem.clocks, stretches(self.problem, self.solution), strict=True)):
            past = total(out) - clock.limit
            if past > 0:
                longest = max(out, key=lambda stretch: stretch.minutes)
                why = Longest(self.problem.jobs[longest.job].id, longest.what, longest.minutes)
                told = PastClock(clock.dish, clock.course, total(out), clock.limit)
                yield Violation("clock", n), GivenUp(told, why, past)

    def _waits_past(self, order: Order, wait: int, most: int) -> GivenUp:
        first, second = self.problem.jobs[order.first].id, self.problem.jobs[order.second].id
        return GivenUp(WaitsPast(first, second, wait, most), self._because(second), wait - most)

    def _because(self, id_: str) -> Chain:
        """The chain of predecessors that holds a slot where it is, up to four links back. What holds it until the very
        same minute for another reason is told beside it."""
        links: list[Held] = []
        seen = {id_}
        while len(links) < MOST_LINKS:
            slot = self.slots[id_]
            binding = [
                w for w in slot.waits if w.after not in seen and self._until(w.after, w.anchor, w.minutes) == slot.start
            ]
            if not binding:
                break
            wait = max(binding, key=lambda w: (w.reason != ORDER, self.slots[w.after].end))
            beside = [w for w in binding if w.reason != wait.reason]
            links += [Held(w.after, slot.start, w.reason) for w in (wait, *beside)]
            id_ = wait.after
            seen |= {w.after for w in (wait, *beside)}
        if len(links) == MOST_LINKS:
            return Chain(tuple(links))
        return Chain(tuple(links), hours_begin=self._hours_begin(id_), own_time=self._own_time_begins(id_))

    def _hours_begin(self, id_: str) -> bool:
        """Whether a minute earlier nobody would have hours for it, or nobody were at home."""
        n = self.problem.index.get(id_)
        if n is None or self.problem.jobs[n].fixed is not None:
            return False
        way, hands = way_of(self.problem, self.solution, n), self.problem.crew(self.solution.who[n])
        anyday = replace(self.problem.jobs[n], window=None)
        return any(a == self.solution.starts[n] for a, _ in allowed_starts(self.problem, anyday, way, *hands))

    def _own_time_begins(self, id_: str) -> bool:
        n = self.problem.index.get(id_)
        window = self.problem.jobs[n].window if n is not None else None
        return n is not None and window is not None and window[0] == self.solution.starts[n]

    def _until(self, id_: str, anchor: str, minutes: int) -> datetime:
        slot = self.slots[id_]
        return (slot.end if anchor == "end" else slot.start) + timedelta(minutes=minutes)

    def keeping(self) -> Iterator[Told]:
        for n, order in enumerate(self.problem.orders):
            first, second = self.problem.jobs[order.first].id, self.problem.jobs[order.second].id
            wait = self.solution.starts[order.second] - end_of(self.problem, self.solution, order.first)
            taken_at = self.solution.starts[order.second]
            taken_up = TakenUp(second, self.at(taken_at))
            hold = way_of(self.problem, self.solution, order.first).hold
            if not order.firm and wait < order.ready:
                late = order.ready - wait
                yield Violation("not-ready", n), GivenUp(NotReady(first, second), self._because(first), late)
            if order.most is not None and order.most > order.least and wait > order.most and not order.usual:
                yield Violation("waits", n), self._waits_past(order, wait, order.most)
            if not order.takes_up:
                continue
            if hold is not None and not self.solution.kept[order.first] and wait > 0:
                no_place = NoPlace(first, second, wait, hold.where)
                alone = stands_alone(self.problem, hold, end_of(self.problem, self.solution, order.first), taken_at)
                why = Because("nobody-home") if alone else taken_up
                yield Violation("no-place", order.first), GivenUp(no_place, why, wait)
            elif hold is not None and hold.limit is not None and wait > hold.limit:
                past = PastLimit(first, second, wait, hold.limit, hold.where)
                yield Violation("past-limit", n), GivenUp(past, taken_up, wait - hold.limit)


def _within(windows: Iterable[Window], start: int, length: int) -> bool:
    return any(a <= start and start + length <= b for a, b in windows)
