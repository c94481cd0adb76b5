"""How the rest of the evening looks from now. Pure: (sheet, state, now) → times; aware, in UTC.

`rule` says what moves, and nothing not yet started is put before now. If a step will be late, its predecessors that
have not started move later with it: just enough that their results do not stand past their shelf life, and never so far
that a course is delayed further.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import UTC, datetime

from board.base.late import minutes_late
from board.evening.busy import FLOATS
from board.evening.events import Part
from board.evening.rule import NEVER, Going, Pair, Played, Rule
from board.evening.state import State, StepState
from board.sheet.run_sheet import HANDS, RunSheet, Slot
from board.sheet.slack import latest_starts

MINUTE = 60.0


@dataclass(frozen=True, slots=True)
class SlotForecast:
    """A slot's start and end, forecast or actual. `give_minutes`: its slack before a course is later still."""

    start: datetime
    end: datetime
    give_minutes: int | None


@dataclass(frozen=True, slots=True)
class CourseForecast:
    """When a course goes out, or went. `late_minutes` counts from the time wanted, `slip_minutes` from that plus the
    host's own pushes; `may_slip` is what the plan allows."""

    name: str
    wanted: datetime
    served: datetime
    late_minutes: int
    slip_minutes: int
    may_slip: int
    is_served: bool
    is_left_out: bool

    @property
    def is_ahead(self) -> bool:
        return not (self.is_served or self.is_left_out)


@dataclass(frozen=True, slots=True)
class Standing:
    """A finished result that waits for its successors: since when, and until when it keeps."""

    slot: str
    since: datetime
    until: datetime
    taken_up: datetime  # when the last successor will have started
    where: str | None  # as of its `Keeping`


@dataclass(frozen=True)
class Forecast:
    """All slots and courses as forecast at `now`."""

    now: datetime
    slots: Mapping[str, SlotForecast]
    courses: tuple[CourseForecast, ...]
    keeping: tuple[Standing, ...]
    left_out: frozenset[str] = frozenset()


class Forecaster:
    """Forecasts by one sheet; what never changes about it is worked out once, so that each forecast is cheap."""

    def __init__(self, sheet: RunSheet) -> None:
        self.sheet = sheet
        self.slots = sheet.slots
        self.by_id = sheet.by_id()
        self.rule = Rule(sheet.slots, datetime.timestamp, MINUTE, FLOATS)
        self.planned, self.length = self.rule.planned, self.rule.length
        self.serve_of = {c.name: c.serve for c in sheet.courses}

    def forecast(self, state: State, now: datetime) -> Forecast:
        """The forecast at `now`; nothing not yet started is put before it. Raises nothing."""
        at = now.timestamp()
        wished = dict(self.planned)
        for course, minutes in state.pushed.items():
            if course in self.serve_of:
                wished[self.serve_of[course]] += minutes * MINUTE
        going = self._going(state, at, wished)
        played = self.rule.play(going)
        latest = self._latest(state, played)
        moved = self._moved_along(state, wished, going.lasts, played.start, latest)
        if moved != wished:
            along = self.rule.play(self._going(state, at, moved))
            if all(along.end[id_] <= played.end[id_] for id_ in self.serve_of.values()):
                played, latest = along, self._latest(state, along)
        start, end = played.start, played.end
        return Forecast(
            now=now,
            slots={
                id_: SlotForecast(
                    _moment(start[id_]),
                    _moment(end[id_]),
                    int((latest[id_] - start[id_]) // MINUTE) if id_ in latest else None,
                )
                for id_ in start
            },
            courses=self._courses(state, end),
            keeping=tuple(self._keeping(state, start)),
            left_out=frozenset(going.left_out),
        )

    def _going(self, state: State, now: float, wished: Mapping[str, float]) -> Going[float]:
        """What has happened, and the earliest start of the rest."""
        earliest: dict[str, float] = {}
        known: dict[str, tuple[float, float]] = {}
        begun: dict[str, tuple[float, float]] = {}
        left_out = set()
        lasts = self._lasts(state)
        for id_, step in state.steps.items():
            if step.status == "finished" and step.finished and step.started:
                known[id_] = step.started.timestamp(), step.finished.timestamp()
            elif step.status == "under-way" and step.started:
                begun[id_] = step.started.timestamp(), max(now, _put_off(step, "end"))
            elif step.status == "left-out":
                left_out.add(id_)
                earliest[id_] = self.planned[id_]
            else:
                earliest[id_] = max(wished[id_], now, _put_off(step, "start"))
        return Going(earliest, lasts, known, begun, left_out)

    def _lasts(self, state: State) -> Mapping[str, float]:
        """How long each slot takes, in seconds: the sheet's length plus any stretching."""
        longer = {id_: step.stretched for id_, step in state.steps.items() if step.stretched}
        if not longer:
            return self.length
        return {**self.length, **{id_: self.length[id_] + by.total_seconds() for id_, by in longer.items()}}

    def _latest(self, state: State, played: Played[float]) -> dict[str, float]:
        start, end = played.start, played.end
        due = {
            s.id: start[s.id]
            for s in self.slots
            if s.kind in ("serve", "arrive") and state.steps[s.id].status == "to-come"
        }
        lengths = {id_: end[id_] - start[id_] for id_ in start}
        return latest_starts(self.slots, lengths, due, unit=MINUTE, free=frozenset(self._free(played)))

    def _free(self, played: Played[float]) -> Iterator[Pair]:
        """Waits for hands that went another way: the second began before the first had been done with."""
        for slot in self.slots:
            for wait in slot.waits:
                if wait.reason == HANDS:
                    over = played.end[wait.after] if wait.anchor == "end" else played.start[wait.after]
                    if played.start[slot.id] < over + wait.minutes * MINUTE:
                        yield slot.id, wait.after

    def _moved_along(
        self,
        state: State,
        wished: Mapping[str, float],
        lasts: Mapping[str, float],
        start: Mapping[str, float],
        latest: Mapping[str, float],
    ) -> dict[str, float]:
        """The wished starts, each moved later where a successor is late, so that no result stands too long."""
        moved = dict(wished)
        delay: dict[str, float] = {}
        for slot in reversed(self.slots):
            if state.steps[slot.id].status != "to-come":
                delay[slot.id] = 0.0
                continue
            pull = max((self._pull(slot, lasts[slot.id], other, delay) for other in slot.then), default=0.0)
            target = self.planned[slot.id] + pull
            moved[slot.id] = max(wished[slot.id], min(target, latest.get(slot.id, target)))
            delay[slot.id] = max(start[slot.id], moved[slot.id]) - self.planned[slot.id]
        return moved

    def _pull(self, slot: Slot, lasts: float, other: str, delay: Mapping[str, float]) -> float:
        """Seconds by which a late successor should move a slot: the successor's delay less the room there is."""
        if not delay.get(other):
            return 0.0
        if slot.kind == "heat":  # else the oven would heat for nothing, or be set too soon
            return delay[other]
        allowed = slot.best_within if slot.best_within is not None else slot.keeping.minutes if slot.keeping else None
        if allowed is None:
            return 0.0
        wait = self.planned[other] - (self.planned[slot.id] + lasts)
        return max(0.0, delay[other] - max(0.0, allowed * MINUTE - wait))

    def _courses(self, state: State, end: Mapping[str, float]) -> tuple[CourseForecast, ...]:
        found = []
        pushed = 0
        for course in self.sheet.courses:
            served = _moment(end[course.serve])
            late = minutes_late(served, course.wanted)
            pushed = max(pushed, course.pushed + state.pushed.get(course.name, 0))  # a push is not a slip
            status = state.steps[course.serve].status
            found.append(
                CourseForecast(
                    name=course.name,
                    wanted=course.wanted,
                    served=served,
                    late_minutes=max(0, late),
                    slip_minutes=max(0, late - pushed),
                    may_slip=course.may_slip,
                    is_served=status == "finished",
                    is_left_out=status == "left-out",
                )
            )
        return tuple(found)

    def _keeping(self, state: State, start: Mapping[str, float]) -> list[Standing]:
        found = []
        for slot in self.slots:
            step = state.steps[slot.id]
            if slot.keeping is None or step.status != "finished" or step.finished is None:
                continue
            waiting = [o for o in slot.then if o in state.steps and state.steps[o].status == "to-come"]
            if waiting:
                until = step.finished.timestamp() + slot.keeping.minutes * MINUTE
                taken_up = max(start[o] for o in waiting)
                found.append(Standing(slot.id, step.finished, _moment(until), _moment(taken_up), slot.keeping.where))
        return found


def _put_off(step: StepState, part: Part) -> float:
    until = step.put_off.get(part)
    return until.timestamp() if until else NEVER


def _moment(seconds: float) -> datetime:
    return datetime.fromtimestamp(seconds, UTC)
