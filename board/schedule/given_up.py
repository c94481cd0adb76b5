"""What a run sheet had to give up, and why. Pure."""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import datetime, timedelta

from board.schedule.clocks import stretches, total
from board.schedule.conflicts.explain import MOST_LINKS
from board.schedule.conflicts.violations import Violation
from board.schedule.dependencies import end_of, way_of
from board.schedule.problem import Hand, Job, Order, Problem, Way
from board.schedule.solution import Solution
from board.schedule.windows import allowed_starts, home_windows, stands_alone
from board.sheet.run_sheet import ORDER, Slot
from board.sheet.told import (
    Because,
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
        anytime = replace(self.problem, opens=0)
        for n, job in enumerate(self.problem.jobs):
            way, hands = way_of(self.problem, self.solution, n), self.problem.crew(self.solution.who[n])
            start = self.solution.starts[n]

            def fits(job: Job, way: Way = way, hands: Sequence[Hand] = hands, start: int = start) -> bool:
                return any(a <= start < b for a, b in allowed_starts(anytime, job, way, *hands, warm_up=False))

            if job.fixed is not None or fits(job):
                continue
            attended = sum(part.length for part in way.parts)
            if job.window is not None and fits(replace(job, window=None)):
                why = Because("not-its-time")
            else:
                why = Because("no-hours-left" if attended or not way.hot else "nobody-home")
            what = OverHours(job.id, self.at(start), self.at(start + way.minutes))
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
        return Chain(tuple(links), hours_begin=len(links) < MOST_LINKS and id_ != "guests-arrive")

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
                yield Violation("not-ready", n), GivenUp(NotReady(first, second), Because("no-hours-left"), late)
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
