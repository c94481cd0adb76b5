"""How long what each dish is made of has stood out, as the evening goes. Pure: (state, forecast) → clocks; minutes.

What has happened counts as it happened; the rest as it now looks. When a course is cleared and no job puts away what
is left of it, its clocks run on until the host says that it is put away: the board does not see a fridge. Raw food has
a clock of its own until its cooking begins, by the figures of `safety.raw`; once its limit is passed it is told of
until it would be served.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Literal

from board.evening.events import ClockWarned, Event
from board.evening.forecast import Forecast
from board.evening.leftovers import job_of, left_out_of, left_since, put_away_at, spans, status, stood_out
from board.evening.state import ClockKey, State
from board.sheet.exposure import Exposure, RawFood, before_cooking, exposures
from board.sheet.run_sheet import RawLimit, RunSheet, SpoilClock

WARN_CLOCK_MINUTES = 20  # before a limit; common practice, no source
TOLD_AFTER = timedelta(minutes=30)  # so long past its limit what is left of a course is still told of; ours
NOW_ON = timedelta(seconds=1)  # what stands out from this very moment on stands out

Where = Literal["kitchen", "table", "left", "away"]


@dataclass(frozen=True, slots=True)
class LiveClock:
    """A dish's clock at a moment. `until`: when its limit is (or was) reached, if it stands out from now on.

    `where`: in the kitchen, on the table, left over when its course is cleared, or put away. `job`: one puts it away.
    `too_long`: as it now looks the limit is reached before the dish is eaten. Of raw food, `raw` is what it is, in the
    plan's words, and `cooking` the slot that cooks it, before which it may stand out.
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
    raw: str | None = None
    cooking: str | None = None

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
    """Every dish's clock that has run or is running, then those of raw food; nothing of what was left out. A sheet
    without clocks: nothing."""
    sheet, now = state.sheet, forecast.now
    if not has_clocks(sheet):
        return ()
    left_out, here = left_out_of(state), now + NOW_ON
    past = spans(state, here)
    future = {id_: (each.start, each.end) for id_, each in forecast.slots.items()}
    so_far, ahead = exposures(sheet, past, left_out), exposures(sheet, future, forecast.left_out | left_out)
    found = [_clock(state, first, second, now, here) for first, second in zip(so_far, ahead, strict=True)]
    raw_ahead = {raw.cooking.id: raw.minutes() for raw in before_cooking(sheet, future, forecast.left_out | left_out)}
    found += _raw_clocks(state, before_cooking(sheet, past, left_out), raw_ahead, now, here)
    return tuple(clock for clock in found if clock is not None)


def has_clocks(sheet: RunSheet) -> bool:
    """Whether anything on a sheet has a clock."""
    return bool(sheet.clocks) or sheet.raw_limit is not None


def _clock(state: State, past: Exposure, future: Exposure, now: datetime, here: datetime) -> LiveClock | None:
    clock = past.clock
    where, away, job = _where(state, clock), put_away_at(state, clock), job_of(state, clock) is not None
    out = stood_out(state, past, now if away is None else min(away, now))
    on_its_way = any(each.start < each.end == here for each in past.stretches)
    running = away is None and (on_its_way or (where == "left" and not job))
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


def _raw_clocks(
    state: State, so_far: list[RawFood], ahead: Mapping[str, float], now: datetime, here: datetime
) -> Iterator[LiveClock | None]:
    """`ahead`: minutes it will have stood out when its cooking begins, by the slot that cooks it."""
    limit, served = state.sheet.raw_limit, {course.name: course.serve for course in state.sheet.courses}
    if limit is None:
        return
    for raw in so_far:
        if status(state, served.get(raw.cooking.course or "", "")) != "finished":
            yield _raw_clock(state, raw, limit, ahead.get(raw.cooking.id, 0.0) > limit.minutes, now, here)


def _raw_clock(
    state: State, raw: RawFood, limit: RawLimit, too_long: bool, now: datetime, here: datetime
) -> LiveClock | None:
    """Until its cooking begins; after that, only where its limit was passed."""
    out, to_come = raw.minutes(now), status(state, raw.cooking.id) == "to-come"
    running = to_come and any(each.start < each.end == here for each in raw.stretches)
    if not running and (not out or (not to_come and out <= limit.minutes)):
        return None
    return LiveClock(
        dish=raw.cooking.dish or raw.cooking.name,
        course=raw.cooking.course or "",
        out_minutes=out,
        limit_minutes=limit.minutes,
        until=now + timedelta(minutes=limit.minutes - out),
        running=running,
        where="kitchen",
        job=False,
        too_long=too_long,
        raw=raw.food,
        cooking=raw.cooking.id,
    )


def _before_eaten(future: Exposure, runs_out: datetime) -> bool:
    """Whether a limit is reached before the dish is off the table."""
    eaten = max((each.end for each in future.stretches if each.what in ("during", "kept", "table")), default=runs_out)
    return runs_out < eaten


def _where(state: State, clock: SpoilClock) -> Where:
    if put_away_at(state, clock) is not None:
        return "away"
    if left_since(state, clock) is not None:
        return "left"
    return "table" if status(state, clock.serve) == "finished" else "kitchen"


def told_of(clocks: tuple[LiveClock, ...], now: datetime) -> list[LiveClock]:
    """Those worth a line of their own: what is in the kitchen or on the table, and runs or has run out."""
    return [c for c in clocks if c.where in ("kitchen", "table") and (c.running or c.over) and _is_told(c, now)]


def left_over(clocks: tuple[LiveClock, ...], now: datetime) -> list[LeftOver]:
    """A line for each course that is cleared and not put away, by its dish with the least time; for half an hour past
    its limit."""
    return [each for each in _by_course(clocks) if each.cleared and now < each.until + TOLD_AFTER]


def next_to_put_away(clocks: Iterable[LiveClock]) -> str | None:
    """The cleared course with the least time left, past its limit or not, that no job puts away; where jobs do for all
    that are left, the first of those."""
    left = [each for each in _by_course(clocks) if each.cleared]
    return min(left, key=lambda each: (each.job, each.until)).course if left else None


def stood_too_long(clocks: Iterable[LiveClock], course: str) -> LiveClock | None:
    """The dish of a course that was put away furthest past its limit."""
    late = [c for c in clocks if c.course == course and c.where == "away" and c.out_minutes > c.limit_minutes]
    return max(late, key=lambda each: each.out_minutes - each.limit_minutes, default=None)


def clock_of(clocks: tuple[LiveClock, ...], warned: ClockWarned) -> LiveClock | LeftOver | None:
    """What a warning is about, as it stands now; None where nothing of it stands any more."""
    if warned.dish is None:
        return next((each for each in _by_course(clocks) if each.course == warned.course), None)
    wanted = (warned.dish, warned.course, warned.cooking)
    return next((each for each in clocks if (each.dish, each.course, each.cooking) == wanted), None)


def _is_told(clock: LiveClock, now: datetime) -> bool:
    return now < clock.until + TOLD_AFTER or clock.where == "kitchen"


def _by_course(clocks: Iterable[LiveClock]) -> list[LeftOver]:
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
    """What is to be said of the clocks and was not said yet, as events: a dish in the kitchen by itself, and what is
    raw in it by itself, what is on the table or left over once a course."""
    found: list[Event] = []
    for key in _warnings(clocks, now):
        if key not in state.clock_warned:
            dish, course, what, cooking = key
            n = state.last_n + 1 + len(found)
            found.append(ClockWarned(n=n, at=now, dish=dish, course=course, what=what, cooking=cooking))
    return found


def _warnings(clocks: tuple[LiveClock, ...], now: datetime) -> Iterator[ClockKey]:
    for each in clocks:
        if each.where == "kitchen" and each.over:
            yield each.dish, each.course, "over", each.cooking
        elif each.where == "kitchen" and each.running and is_near(each.until, now):
            yield each.dish, each.course, "soon", each.cooking
    for left in _by_course(clocks):
        if now >= left.until:
            yield None, left.course, "over", None
        elif is_near(left.until, now):
            yield None, left.course, "soon", None
        elif left.cleared and not left.job:
            yield None, left.course, "put-away", None


def is_near(until: datetime, now: datetime) -> bool:
    """So near its limit that the board warns of it."""
    return until - now <= timedelta(minutes=WARN_CLOCK_MINUTES)
