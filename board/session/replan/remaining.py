"""A plan's problem with the evening so far as given: what is done stays done, the rest starts from now. Pure.

Minutes count from the problem's origin; now is the next whole minute. A finished step takes no more time, hands or
equipment; its result still stands and has used up part of its shelf life, and of its dish's clock. A step under way
continues from now.
"""

import math
from collections.abc import Mapping
from dataclasses import replace
from datetime import datetime, timedelta

from board.evening.forecast import Forecast
from board.evening.leftovers import spans
from board.evening.state import State
from board.schedule.clocks import clocks_of
from board.schedule.oven_dial import COLD_AFTER_MINUTES
from board.schedule.problem import Clock, Job, Order, OvenNow, OvenUse, Part, Problem, Serving, Sitting, Stood, Way
from board.sheet.company import last_clear
from board.sheet.exposure import Span
from board.sheet.run_sheet import Slot, Use
from board.sheet.told import DialTurn


def as_it_stands(problem: Problem, state: State, forecast: Forecast) -> Problem:
    """The problem of the rest. Raises KeyError if the sheet is of another plan."""
    return _Given(problem, state, forecast).problem_left()


def where_it_looks(problem: Problem, forecast: Forecast) -> list[int]:
    """The forecast start of each job, in minutes from the origin, as a hint for the solver. Raises KeyError, as
    above."""
    starts = (forecast.slots[job.id].start for job in problem.jobs)
    return [max(0, math.ceil((start - problem.origin).total_seconds() / 60)) for start in starts]


class _Given:
    def __init__(self, problem: Problem, state: State, forecast: Forecast) -> None:
        self.problem = problem
        self.state = state
        self.forecast = forecast
        self.slots: Mapping[str, Slot] = state.sheet.by_id()
        self.now = math.ceil(self.minute(forecast.now))
        self.busy_until: dict[str, int] = {}

    def minute(self, at: datetime) -> float:
        return (at - self.problem.origin).total_seconds() / 60

    def status(self, job: int) -> str:
        return self.state.steps[self.problem.jobs[job].id].status

    def problem_left(self) -> Problem:
        problem = self.problem
        clear = last_clear(self.state.sheet, self.forecast.left_out)
        jobs = tuple(self._job(n, job) for n, job in enumerate(problem.jobs))
        clocks, stood = self._clocks(jobs)
        servings = tuple(
            self._serving(serving) for serving in problem.servings if self.status(serving.job) == "to-come"
        )
        return replace(
            problem,
            jobs=jobs,
            orders=tuple(self._order(order) for order in problem.orders if self.status(order.second) == "to-come"),
            servings=servings,
            hands=tuple(hand.later(self._arrives() - problem.arrives) for hand in problem.hands),
            opens=self.now,
            horizon=max(problem.horizon, self.now + problem.horizon - problem.opens),
            ovens_now=self._ovens_now(),
            arrives=self._arrives(),
            dinner_over=None if clear is None else problem.index[clear],
            clocks=clocks,
            stood=stood,
            sittings=tuple(left for sitting in problem.sittings if (left := self._sitting(sitting)).minutes),
        )

    def _clocks(self, jobs: tuple[Job, ...]) -> tuple[tuple[Clock, ...], tuple[Stood, ...]]:
        """The clocks of dishes that are still to be served, without what was left out."""
        eaten = {self.problem.jobs[clock.serve].id: clock.eaten for clock in self.problem.clocks}
        ahead = [
            c for c in self.state.sheet.clocks if c.serve in eaten and self.state.steps[c.serve].status == "to-come"
        ]
        passed = [slot for slot in self.slots.values() if self.state.steps[slot.id].status != "left-out"]
        clocks, stood = clocks_of({job.id: (n, job) for n, job in enumerate(jobs)}, passed, ahead, eaten)
        so_far = spans(self.state, self.problem.origin + timedelta(minutes=self.now))
        return clocks, tuple(replace(each, gone=self._gone(each, so_far)) for each in stood)

    def _gone(self, stood: Stood, so_far: Mapping[str, Span]) -> int:
        """Minutes for which it has stood out until now, as it happened."""
        slot = self.slots[self.problem.jobs[stood.job].id]
        start, end = so_far[slot.id]
        out = slot.exposed
        if stood.until is not None:
            out = slot.keeping is not None and slot.keeping.exposed
            start, end = end, so_far[self.problem.jobs[stood.until].id][0]
        return max(0, math.ceil((end - start) / timedelta(minutes=1))) if out else 0

    def _arrives(self) -> int:
        """When the guests arrived, or are forecast to."""
        arrive = next((slot for slot in self.slots.values() if slot.kind == "arrive"), None)
        return self.problem.arrives if arrive is None else math.ceil(self.minute(self.forecast.slots[arrive.id].start))

    def _sitting(self, sitting: Sitting) -> Sitting:
        """What is left of it, where its course is served already."""
        stood = self._stood(sitting.job) if self.status(sitting.job) == "finished" else 0
        none = self.status(sitting.job) == "left-out"
        return replace(sitting, minutes=0 if none else max(0, sitting.minutes - stood))

    def _serving(self, serving: Serving) -> Serving:
        return replace(serving, wanted=serving.wanted + self.state.pushed.get(serving.name, 0) + self._pushed(serving))

    def _pushed(self, serving: Serving) -> int:
        """Minutes of earlier pushes that the evening's current sheet already includes."""
        return next(c.pushed for c in self.state.sheet.courses if c.name == serving.name)

    def _job(self, n: int, job: Job) -> Job:
        status, slot = self.status(n), self.slots[job.id]
        if status == "left-out":
            gone = replace(job.ways[0], minutes=0, parts=(), demands=(), oven=None, hold=None, hot=False)
            return replace(job, ways=(gone,), window=None, fixed=None, earliest=self.now, best_within=None)
        if status == "finished":
            return self._finished(n, job, slot)
        if status == "under-way":
            return self._under_way(job, slot)
        return self._to_come(job, slot)

    def _finished(self, n: int, job: Job, slot: Slot) -> Job:
        way = job.ways[slot.way]
        stood = self._stood(n)
        hold = way.hold
        if hold is not None:
            limit = None if hold.limit is None else max(0, hold.limit - stood)
            hold = replace(hold, limit=limit, ready_in=max(0, hold.ready_in - stood))
        best = max(0, job.best_within - stood) if job.best_within is not None else None
        over = replace(way, minutes=0, parts=(), demands=(), oven=None, hold=hold, hot=False)
        return replace(job, ways=(over,), fixed=self.now, window=None, best_within=best)

    def _stood(self, n: int) -> int:
        """Whole minutes since it finished."""
        finished = self.state.steps[self.problem.jobs[n].id].finished
        return max(0, math.floor(self.now - self.minute(finished))) if finished is not None else 0

    def _under_way(self, job: Job, slot: Slot) -> Job:
        way = job.ways[slot.way]
        started = self.state.steps[job.id].started or self.forecast.now
        gone = self.now - math.floor(self.minute(started))
        left = max(1, math.ceil(self.minute(self.forecast.slots[job.id].end)) - self.now)
        parts = self._parts_left(slot, way, gone, left)
        rest = replace(way, minutes=left, parts=parts, warm_up=0, oven=self._as_set(way.oven, slot))
        return replace(job, ways=(rest,), fixed=self.now, window=None)

    def _as_set(self, oven: OvenUse | None, slot: Slot) -> OvenUse | None:
        """Its use of an oven, at what the dial is set to, which stays as it is till the end."""
        set_to = next((use.celsius for use in slot.uses if use.celsius is not None), None)
        if oven is None or set_to is None or oven.off:
            return oven
        return replace(oven, want=set_to, low=set_to, high=set_to)

    def _parts_left(self, slot: Slot, way: Way, gone: int, left: int) -> tuple[Part, ...]:
        """Attended parts still ahead. Two of the same person's that would overlap are done one after the other."""
        busy_until = max((self.busy_until.get(who, 0) for who in slot.people), default=0)
        found = []
        for part in way.parts:
            end = min(left, part.offset + part.length - gone)
            if part.kind in ("all", "end"):
                end = left
            length = left if part.kind == "all" else part.length
            start = max(0, end - length, busy_until)
            if end > start and part.kind != "look-in":
                found.append(Part(start, end - start, part.kind))
                self.busy_until |= dict.fromkeys(slot.people, end)
                busy_until = end
        return tuple(found)

    def _to_come(self, job: Job, slot: Slot) -> Job:
        put_off = self.state.steps[job.id].put_off.get("start")
        earliest = max(self.now, math.ceil(self.minute(put_off)) if put_off is not None else 0)
        looks = self.forecast.slots[job.id]
        longer = round((looks.end - looks.start).total_seconds() / 60) - job.ways[slot.way].minutes
        ways = tuple(_lasting(way, longer) for way in job.ways) if longer else job.ways
        fixed = max(job.fixed, earliest) if job.fixed is not None else None
        return replace(job, ways=ways, earliest=earliest, fixed=fixed)

    def _order(self, order: Order) -> Order:
        status = self.status(order.first)
        if status == "to-come" or (status == "under-way" and order.most is None):
            return order
        if status == "left-out":
            return replace(order, least=0, most=None)
        if order.most is not None and order.most == order.least:
            return replace(order, least=0, most=None)  # too late for 'at once': the sooner the better
        stood = self._stood(order.first) if status == "finished" else 0
        most = max(0, order.most - stood) if order.most is not None else None
        return replace(order, least=max(0, order.least - stood), most=most)

    def _ovens_now(self) -> dict[int, OvenNow]:
        """What each dial was last set to; an oven that has been unused for long counts as cold."""
        found = {n: OvenNow(None, 0, self.now) for n, _ in enumerate(self.problem.ovens)}
        names = {facts.name: n for n, facts in enumerate(self.problem.ovens)}
        for slot in self.state.sheet.slots:
            step = self.state.steps[slot.id]
            switched = slot.named if slot.kind == "off" and step.status == "finished" else None
            if isinstance(switched, DialTurn) and switched.oven in names:
                found[names[switched.oven]] = OvenNow(None, self._used_until(switched.oven), self.now)
            if (slot.kind != "heat" and slot.turn is None) or step.started is None or step.status == "left-out":
                continue
            turned = Use(slot.turn.oven, 0, slot.start, slot.start, slot.turn.celsius) if slot.turn else slot.uses[0]
            oven, celsius = turned.what, turned.celsius
            ready = math.ceil(self.minute(step.started if slot.turn else self.forecast.slots[slot.id].end))
            used_until = max(ready, self._used_until(oven))
            is_on = celsius is not None and self.now - used_until < COLD_AFTER_MINUTES
            found[names[oven]] = OvenNow(celsius if is_on else None, used_until, max(self.now, ready))
        return found

    def _used_until(self, oven: str) -> int:
        """When an oven was last in use; now, if something is in it."""
        ends = [0.0]
        for slot in self.state.sheet.slots:
            step = self.state.steps[slot.id]
            if slot.kind == "heat" or not any(use.what == oven and use.celsius is not None for use in slot.uses):
                continue
            if step.status == "under-way":
                ends.append(self.now)
            elif step.finished is not None:
                ends.append(self.minute(step.finished))
        return math.floor(max(ends))


def _lasting(way: Way, longer: int) -> Way:
    """The way made longer by this many minutes (shorter if negative): hands are on its start and end as before, as far
    as there is time for both, and on the look-ins that lie before its end."""
    minutes = max(0, way.minutes + longer)
    length = {part.kind: part.length for part in way.parts}
    start = min(length.get("start", 0), minutes)
    end = min(length.get("end", 0), minutes - start)
    parts = []
    for part in way.parts:
        if part.kind == "all":
            parts.append(Part(0, minutes, "all"))
        elif part.kind == "start":
            parts.append(Part(0, start, "start"))
        elif part.kind == "end":
            parts.append(Part(minutes - end, end, "end"))
        elif part.offset + part.length <= minutes - end:
            parts.append(part)
    return replace(way, minutes=minutes, parts=tuple(part for part in parts if part.length))
