"""How long what each dish is made of has stood out, as the evening goes. Pure: (state, forecast) → clocks; minutes.

What has happened counts as it happened; the rest as it now looks. When a course is cleared and no job puts away what
is left of it, its clocks run on: the board does not see a fridge.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Literal

from board.run.events import ClockWarned, ClockWarning, Event
from board.run.forecast import Forecast
from board.run.state import State
from board.safety.exposure import Exposure, Span, exposures
from board.timetable.run_sheet import SpoilClock

WARN_CLOCK_MINUTES = 20  # before a limit; common practice, no source
TOLD_AFTER = timedelta(minutes=30)  # so long past its limit what is left of a course is still told of
NOW_ON = timedelta(seconds=1)  # what stands out from this very moment on stands out

Where = Literal["kitchen", "table", "left", "away"]


@dataclass(frozen=True, slots=True)
class LiveClock:
    """A dish's clock at a moment. `until`: when its limit is (or was) reached, if it stands out from now on.

    `where`: in the kitchen, on the table, left over when its course is cleared, or put away. `job`: one puts it away.
    `too_long`: as it now looks the limit is reached before the dish is eaten.
    """

    dish: str
    course: str
    out_minutes: float
    limit_minutes: int
    until: datetime
    running: bool
    where: Where
    job: bool
    too_long: bool = False

    @property
    def over(self) -> bool:
        return self.out_minutes >= self.limit_minutes


@dataclass(frozen=True, slots=True)
class LeftOver:
    """What is left of a course stands on the table, or was cleared from it: its dish with the least time, by its clock.

    `job`: one puts it away. `cleared`: the course is.
    """

    course: str
    until: datetime
    limit_minutes: int
    cleared: bool
    job: bool


def live_clocks(state: State, forecast: Forecast) -> tuple[LiveClock, ...]:
    """Every dish's clock that has run or is running; nothing of what was left out. A sheet without clocks: nothing."""
    if not state.sheet.clocks:
        return ()
    now, left_out = forecast.now, frozenset(i for i, s in state.steps.items() if s.status == "left-out")
    here = now + NOW_ON
    so_far = exposures(state.sheet, {id_: _until_now(state, id_, here) for id_ in state.steps}, left_out)
    times = {id_: (each.start, each.end) for id_, each in forecast.slots.items()}
    ahead = exposures(state.sheet, times, forecast.left_out | left_out)
    found = (_clock(state, past, future, now, here) for past, future in zip(so_far, ahead, strict=True))
    return tuple(clock for clock in found if clock is not None)


def _until_now(state: State, id_: str, here: datetime) -> Span:
    """What a slot has had of its time."""
    step = state.steps[id_]
    start = step.started or here
    return start, max(start, step.finished or here)


def _clock(state: State, past: Exposure, future: Exposure, now: datetime, here: datetime) -> LiveClock | None:
    clock = past.clock
    where, out = _where(state, clock), past.minutes(now)
    running = any(each.start < each.end == here for each in past.stretches)
    job = clock.away is not None and _status(state, clock.away) not in ("left-out", "")
    cleared = _cleared(state, clock)
    if where == "left" and not job and cleared is not None:
        running = True
        out += max(0.0, (now - cleared) / timedelta(minutes=1))
    if not running and not out:
        return None
    runs_out = future.runs_out()
    return LiveClock(
        dish=clock.dish,
        course=clock.course,
        out_minutes=out,
        limit_minutes=clock.limit_minutes,
        until=now + timedelta(minutes=clock.limit_minutes - out),
        running=running,
        where=where,
        job=job,
        too_long=where == "kitchen" and runs_out is not None and _before_eaten(future, runs_out),
    )


def _before_eaten(future: Exposure, runs_out: datetime) -> bool:
    """Whether a limit is reached before the dish is off the table."""
    eaten = max((each.end for each in future.stretches if each.what in ("during", "kept", "table")), default=runs_out)
    return runs_out < eaten


def _where(state: State, clock: SpoilClock) -> Where:
    if clock.away is not None and _status(state, clock.away) == "finished":
        return "away"
    if _status(state, clock.clear) in ("finished", "left-out") and _status(state, clock.serve) == "finished":
        return "left"
    return "table" if _status(state, clock.serve) == "finished" else "kitchen"


def _status(state: State, id_: str) -> str:
    return state.steps[id_].status if id_ in state.steps else ""


def _cleared(state: State, clock: SpoilClock) -> datetime | None:
    """Since when what is left stands about; where the clearing was left out, since the course went out."""
    last = clock.serve if _status(state, clock.clear) == "left-out" else clock.clear
    return state.steps[last].finished if last in state.steps else None


def told_of(clocks: tuple[LiveClock, ...], now: datetime) -> list[LiveClock]:
    """Those worth a line of their own: what is in the kitchen or on the table, and runs or has run out."""
    return [c for c in clocks if c.where in ("kitchen", "table") and (c.running or c.over) and _is_told(c, now)]


def left_over(clocks: tuple[LiveClock, ...], now: datetime) -> list[LeftOver]:
    """A line for each course that is cleared and not put away, by its dish with the least time; for half an hour past
    its limit."""
    return [each for each in _by_course(clocks) if each.cleared and now < each.until + TOLD_AFTER]


def clock_of(clocks: tuple[LiveClock, ...], warned: ClockWarned) -> LiveClock | LeftOver | None:
    """What a warning is about, as it stands now; None where nothing of it stands any more."""
    if warned.dish is None:
        return next((each for each in _by_course(clocks) if each.course == warned.course), None)
    return next((each for each in clocks if (each.dish, each.course) == (warned.dish, warned.course)), None)


def _is_told(clock: LiveClock, now: datetime) -> bool:
    return now < clock.until + TOLD_AFTER or clock.where == "kitchen"


def _by_course(clocks: tuple[LiveClock, ...]) -> list[LeftOver]:
    """Courses of which something is on the table or left over."""
    found: dict[str, LeftOver] = {}
    for each in clocks:
        if each.where not in ("table", "left"):
            continue
        known = found.get(each.course)
        if known is None or each.until < known.until:
            found[each.course] = LeftOver(each.course, each.until, each.limit_minutes, each.where == "left", each.job)
    return list(found.values())


def warn_clocks(state: State, clocks: tuple[LiveClock, ...], now: datetime) -> list[Event]:
    """What is to be said of the clocks and was not said yet, as events: a dish in the kitchen by itself, what is on
    the table or left over once a course."""
    found: list[Event] = []
    for dish, course, what in _warnings(clocks, now):
        if (dish, course, what) not in state.clock_warned:
            found.append(ClockWarned(n=state.last_n + 1 + len(found), at=now, dish=dish, course=course, what=what))
    return found


def _warnings(clocks: tuple[LiveClock, ...], now: datetime) -> Iterator[tuple[str | None, str, ClockWarning]]:
    for each in clocks:
        if each.where == "kitchen" and each.over:
            yield each.dish, each.course, "over"
        elif each.where == "kitchen" and each.running and is_near(each.until, now):
            yield each.dish, each.course, "soon"
    for left in _by_course(clocks):
        if now >= left.until:
            yield None, left.course, "over"
        elif is_near(left.until, now):
            yield None, left.course, "soon"
        elif left.cleared and not left.job:
            yield None, left.course, "put-away"


def is_near(until: datetime, now: datetime) -> bool:
    """So near its limit that the board warns of it."""
    return until - now <= timedelta(minutes=WARN_CLOCK_MINUTES)
