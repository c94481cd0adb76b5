"""What a run sheet had to give up, and why, each in one plain sentence. Pure."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from board.base import words
from board.plan.load import PlanFile
from board.plan.phrases.durations import short
from board.plan.resolve.links import labels
from board.schedule.conflicts.violations import Violation
from board.schedule.dependencies import end_of, way_of
from board.schedule.problem import Hand, Job, Problem, Way
from board.schedule.solution import Solution
from board.schedule.windows import allowed_starts, home_windows
from board.sheet.run_sheet import GivenUp, Slot

Told = tuple[Violation | None, GivenUp]  # None: an oven heats with nobody at home, which the solver does not limit


def given_up(file: PlanFile, problem: Problem, solution: Solution, slots: list[Slot]) -> Iterator[Told]:
    """Each violation and its wording, in the order of the aims: hours, courses, keeping."""
    teller = _Teller(file, problem, solution, slots)
    yield from teller.hours()
    yield from teller.courses()
    yield from teller.keeping()


class _Teller:
    def __init__(self, file: PlanFile, problem: Problem, solution: Solution, slots: list[Slot]) -> None:
        self.problem = problem
        self.solution = solution
        self.slots = {slot.id: slot for slot in slots}
        self.zone = ZoneInfo(file.plan.zone)
        self.names = list(labels(task.node for task in file.filled.tasks.values()).values())

    def clock(self, minute: int) -> str:
        return words.day_and_clock((self.problem.origin + timedelta(minutes=minute)).astimezone(self.zone))

    def hours(self) -> Iterator[Told]:
        """Work outside its hours, heating with nobody at home, and steps that should follow at once but do not."""
        anytime = replace(self.problem, opens=0)
        for n, job in enumerate(self.problem.jobs):
            way, who = way_of(self.problem, self.solution, n), self.solution.who[n]
            hand = self.problem.hands[who] if who is not None else None
            start = self.solution.starts[n]

            def fits(job: Job, way: Way = way, hand: Hand | None = hand, start: int = start) -> bool:
                return any(a <= start < b for a, b in allowed_starts(anytime, job, way, hand, warm_up=False))

            if job.fixed is not None or fits(job):
                continue
            when = f"{self.clock(start)}–{self.clock(start + way.minutes)[-5:]}"
            attended = sum(part.length for part in way.parts)
            if job.window is not None and fits(replace(job, window=None)):
                why = words.NOT_ITS_TIME
            else:
                why = words.NO_HOURS_LEFT if attended or not way.hot else words.NOBODY_HOME
            yield (
                Violation("out-of-hours", n),
                GivenUp(words.over_hours(self.names[n], when), why, attended or way.minutes),
            )
        home = home_windows(self.problem)
        for slot in self.slots.values():
            start, end = (round((at - self.problem.origin).total_seconds() / 60) for at in (slot.start, slot.end))
            if slot.kind == "heat" and end > start and not any(a <= start and end <= b for a, b in home):
                when = f"{self.clock(start)}–{self.clock(end)[-5:]}"
                yield None, GivenUp(words.over_hours(slot.name, when), words.NOBODY_HOME, end - start)
        for n, order in enumerate(self.problem.orders):
            wait = self.solution.starts[order.second] - end_of(self.problem, self.solution, order.first)
            if order.most is not None and order.most == order.least and wait > order.most:
                first, second = self.names[order.first], self.names[order.second]
                what = words.waits_past(second, first, short(wait), short(order.most))
                because = self._because(self.problem.jobs[order.second].id)
                yield Violation("not-at-once", n), GivenUp(what, because, wait - order.most)

    def courses(self) -> Iterator[Told]:
        for n, serving in enumerate(self.problem.servings):
            late = end_of(self.problem, self.solution, serving.job) - serving.wanted
            if late > 0:
                because = self._because(self.problem.jobs[serving.job].id)
                yield Violation("late", n), GivenUp(words.late(serving.name, late), because, late)

    def _because(self, id_: str) -> str:
        """The chain of predecessors that holds a slot where it is, up to four links back."""
        links: list[str] = []
        seen = {id_}
        while len(links) < 4:
            slot = self.slots[id_]
            binding = [
                w for w in slot.waits if w.after not in seen and self._until(w.after, w.anchor, w.minutes) == slot.start
            ]
            if not binding:
                break
            wait = max(binding, key=lambda w: (w.reason != "order", self.slots[w.after].end))
            until = words.clock(self._until(wait.after, wait.anchor, wait.minutes).astimezone(self.zone))
            links.append(words.waits_for(self.slots[wait.after].name, until, wait.reason))
            id_ = wait.after
            seen.add(id_)
        if len(links) < 4 and id_ != "guests-arrive":
            links.append(words.HOURS_BEGIN)
        return "; ".join(links)

    def _until(self, id_: str, anchor: str, minutes: int) -> datetime:
        slot = self.slots[id_]
        return (slot.end if anchor == "end" else slot.start) + timedelta(minutes=minutes)

    def keeping(self) -> Iterator[Told]:
        for n, order in enumerate(self.problem.orders):
            first, second = self.names[order.first], self.names[order.second]
            wait = self.solution.starts[order.second] - end_of(self.problem, self.solution, order.first)
            at = self.clock(self.solution.starts[order.second])
            hold = way_of(self.problem, self.solution, order.first).hold
            if not order.firm and wait < order.least:
                late = order.least - wait
                yield Violation("not-ready", n), GivenUp(words.not_ready_for(first, second), words.NO_HOURS_LEFT, late)
            if order.most is not None and order.most > order.least and wait > order.most:
                what = words.waits_past(second, first, short(wait), short(order.most))
                because = self._because(self.problem.jobs[order.second].id)
                yield Violation("waits", n), GivenUp(what, because, wait - order.most)
            if hold is not None and not self.solution.kept[order.first] and wait > 0:
                what = words.no_place(first, short(wait), hold.where)
                yield Violation("no-place", order.first), GivenUp(what, words.taken_up(second, at), wait)
            elif hold is not None and hold.limit is not None and wait > hold.limit:
                what = words.past_limit(first, short(wait), short(hold.limit), hold.where)
                yield Violation("past-limit", n), GivenUp(what, words.taken_up(second, at), wait - hold.limit)
