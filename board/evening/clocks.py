"""How long each dish and its raw food has stood out, in minutes. Pure: (state, forecast) → clocks.

The past counts as it happened, the future as forecast. If a course is cleared and no job puts its leftovers away, their
clocks run until the host says they are put away: the board cannot see the fridge. Raw food has its own clock until its
cooking starts, by the figures of `safety.raw`; past its limit it stays listed until the course is served.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Literal

from board.evening.events import ClockWarned, Event
from board.evening.forecast import Forecast
from board.evening.leftovers import job_of, left_out_of, left_since, put_away_at, spans, status, stood_out
from board.evening.state import ClockKey, State
from board.sheet.exposure import Exposure, RawFood, before_cooking, exposures, planned, planned_before_cooking
from board.sheet.run_sheet import RawLimit, RunSheet, SpoilClock
from board.sheet.sittings import eaten_by

WARN_CLOCK_MINUTES = 20  # before a limit; common practice, no source
TOLD_AFTER = timedelta(minutes=30)  # how long leftovers stay listed past their limit; ours
NOW_ON = timedelta(seconds=1)  # so that a span starting at this very moment already counts

Where = Literal["kitchen", "table", "left", "away"]


@dataclass(frozen=True, slots=True)
class LiveClock:
    """A dish's clock at one moment. `until`: when it reaches (or reached) its limit if it stands out from now on, UTC.

    `where`: in the kitchen, on the table, left over after clearing, or put away. `job`: the plan has a job that puts it
    away. `too_long`: by the forecast, it reaches its limit before it is eaten, or before that job has put it away.
    `planned_minutes`: how long the timetable has it stand out until it is eaten, or cooked. Raw food only: `raw` names
    it in the plan's words; `cooking` is the slot that cooks it.
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
    planned_minutes: float = 0.0
    raw: str | None = None
    cooking: str | None = None

    @property
    def over(self) -> bool:
        return self.out_minutes >= self.limit_minutes


@dataclass(frozen=True, slots=True)
class LeftOver:
    """A course's leftovers, on the table or cleared: the clock of its dish with the least time left.

    `job`: the plan has a job that puts them away, in time as it looks. `cleared`: the course was cleared.
    """

    course: str
    until: datetime
    limit_minutes: int
    cleared: bool
    job: bool


def live_clocks(state: State, forecast: Forecast) -> tuple[LiveClock, ...]:
    """Clocks that run or have run, one a dish; then those of raw food. Slots left out do not count. Empty if the sheet
    has no clocks. Raises nothing."""
    sheet, now = state.sheet, forecast.now
    if not has_clocks(sheet):
        return ()
    left_out, here = left_out_of(state), now + NOW_ON
    past = spans(state, here)
    future = {id_: (each.start, each.end) for id_, each in forecast.slots.items()}
    so_far, ahead = exposures(sheet, past, left_out), exposures(sheet, future, forecast.left_out | left_out)
    found = [_clock(state, forecast, *each, here) for each in zip(so_far, ahead, planned(sheet), strict=True)]
    raw_ahead, raw_planned = (
        {raw.cooking.id: raw.minutes() for raw in each}
        for each in (before_cooking(sheet, future, forecast.left_out | left_out), planned_before_cooking(sheet))
    )
    found += _raw_clocks(state, before_cooking(sheet, past, left_out), raw_ahead, raw_planned, now, here)
    return tuple(clock for clock in found if clock is not None)


def has_clocks(sheet: RunSheet) -> bool:
    """Whether anything on the sheet has a clock."""
    return bool(sheet.clocks) or sheet.raw_limit is not None


def _clock(
    state: State, forecast: Forecast, past: Exposure, future: Exposure, wished: Exposure, here: datetime
) -> LiveClock | None:
    clock, now = past.clock, forecast.now
    where, away, job = _where(state, clock), put_away_at(state, clock), job_of(state, clock) is not None
    out = stood_out(state, past, now if away is None else min(away, now))
    on_its_way = any(each.start < each.end == here for each in past.stretches)
    running = away is None and (on_its_way or (where == "left" and not job))
    if not running and not out:
        return None
    until = now + timedelta(minutes=clock.limit_minutes - out)
    return LiveClock(
        dish=clock.dish,
        course=clock.course,
        out_minutes=out,
        limit_minutes=clock.limit_minutes,
        until=until,
        running=running,
        where=where,
        job=job,
        too_long=_too_long(state, forecast, future, where, until),
        planned_minutes=wished.minutes(eaten_by(state.sheet, clock.course, state.sheet.by_id()[clock.serve].end)),
    )


def _raw_clocks(
    state: State,
    so_far: list[RawFood],
    ahead: Mapping[str, float],
    planned: Mapping[str, float],
    now: datetime,
    here: datetime,
) -> Iterator[LiveClock | None]:
    """By cooking slot, minutes its food will have stood out when cooking starts: `ahead`, as it looks; `planned`."""
    limit, served = state.sheet.raw_limit, {course.name: course.serve for course in state.sheet.courses}
    if limit is None:
        return
    for raw in so_far:
        if status(state, served.get(raw.cooking.course or "", "")) != "finished":
            will, should = (minutes.get(raw.cooking.id, 0.0) for minutes in (ahead, planned))
            yield _raw_clock(state, raw, limit, will, should, now, here)


def _raw_clock(
    state: State, raw: RawFood, limit: RawLimit, will: float, should: float, now: datetime, here: datetime
) -> LiveClock | None:
    """The clock runs until cooking starts; after that it stays only if the limit was passed."""
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
        too_long=will > limit.minutes,
        planned_minutes=should,
        raw=raw.food,
        cooking=raw.cooking.id,
    )


def _too_long(state: State, forecast: Forecast, future: Exposure, where: Where, until: datetime) -> bool:
    """In the kitchen: whether the limit is reached before the dish has been eaten. Once served: before its job has put
    away what is left; `until`: when its limit is reached."""
    if where != "kitchen":
        job = job_of(state, future.clock)
        return job is not None and where != "away" and forecast.slots[job].end > until
    clock = future.clock
    eaten = eaten_by(state.sheet, clock.course, forecast.slots[clock.serve].end)
    return round(future.minutes(eaten)) > clock.limit_minutes


def _where(state: State, clock: SpoilClock) -> Where:
    if put_away_at(state, clock) is not None:
        return "away"
    if left_since(state, clock) is not None:
        return "left"
    return "table" if status(state, clock.serve) == "finished" else "kitchen"


def told_of(clocks: tuple[LiveClock, ...], now: datetime) -> list[LiveClock]:
    """Clocks worth a line of their own: in the kitchen or on the table, and running or past the limit."""
    return [c for c in clocks if c.where in ("kitchen", "table") and (c.running or c.over) and _is_told(c, now)]


def left_over(clocks: tuple[LiveClock, ...], now: datetime) -> list[LeftOver]:
    """One line for each course cleared but not put away, by its dish with the least time left; dropped half an hour
    after its limit."""
    return [each for each in _by_course(clocks) if each.cleared and now < each.until + TOLD_AFTER]


def next_to_put_away(clocks: Iterable[LiveClock]) -> str | None:
    """The cleared course with the least time left (even past its limit) that no job puts away; if jobs cover them all,
    the most urgent of those; None if nothing is left."""
    left = [each for each in _by_course(clocks) if each.cleared]
    return min(left, key=lambda each: (each.job, each.until)).course if left else None


def stood_too_long(clocks: Iterable[LiveClock], course: str) -> LiveClock | None:
    """The dish of a course that was put away furthest past its limit; None if none was."""
    late = [c for c in clocks if c.course == course and c.where == "away" and c.out_minutes > c.limit_minutes]
    return max(late, key=lambda each: each.out_minutes - each.limit_minutes, default=None)


def clock_of(clocks: tuple[LiveClock, ...], warned: ClockWarned) -> LiveClock | LeftOver | None:
    """The clock a warning is about, as it stands now; None if it no longer exists."""
    if warned.dish is None:
        return next((each for each in _by_course(clocks) if each.course == warned.course), None)
    wanted = (warned.dish, warned.course, warned.cooking)
    return next((each for each in clocks if (each.dish, each.course, each.cooking) == wanted), None)


def _is_told(clock: LiveClock, now: datetime) -> bool:
    return now < clock.until + TOLD_AFTER or clock.where == "kitchen"


def _by_course(clocks: Iterable[LiveClock]) -> list[LeftOver]:
    """Courses with something on the table or left over."""
    found: dict[str, LeftOver] = {}
    for each in clocks:
        if each.where not in ("table", "left"):
            continue
        known = found.get(each.course)
        if known is None or each.until < known.until:
            in_time = each.job and not each.too_long
            found[each.course] = LeftOver(each.course, each.until, each.limit_minutes, each.where == "left", in_time)
    return list(found.values())


def warn_clocks(state: State, clocks: tuple[LiveClock, ...], now: datetime) -> list[Event]:
    """Warnings not given yet, as events. In the kitchen each dish and each raw food gets its own; on the table and left
    over, one per course."""
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
        elif each.where == "kitchen" and each.running and _is_alarming(each, now):
            yield each.dish, each.course, "soon", each.cooking
    for left in _by_course(clocks):
        if now >= left.until:
            yield None, left.course, "over", None
        elif is_near(left.until, now) and not left.job:
            yield None, left.course, "soon", None
        elif left.cleared and not left.job:
            yield None, left.course, "put-away", None


def _is_alarming(clock: LiveClock, now: datetime) -> bool:
    """Near its limit, and it will pass it, or stands longer than planned: what was planned so alarms nobody."""
    return is_near(clock.until, now) and (clock.too_long or clock.out_minutes > clock.planned_minutes)


def is_near(until: datetime, now: datetime) -> bool:
    """Whether the limit is close enough for a warning."""
    return until - now <= timedelta(minutes=WARN_CLOCK_MINUTES)
