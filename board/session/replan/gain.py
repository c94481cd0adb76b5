"""Whether a new sheet improves the rest of the evening enough to be worth the host's attention. Pure."""

from dataclasses import dataclass
from datetime import datetime, timedelta

from board.evening.company import away_by_forecast, quiet_by_forecast
from board.evening.forecast import Forecast, Forecaster
from board.evening.leftovers import left_out_of
from board.evening.state import State, StepState
from board.sheet.exposure import exposures
from board.sheet.run_sheet import RunSheet
from board.sheet.sittings import sitting

# Minutes (of LOST: dishes) gained that are worth an offer; our choice.
LATE, LOST, KEPT, UP, AWAY = 3, 1, 5, 5, 10
LEAST = {"lost": LOST, "late": LATE, "kept": KEPT, "up": UP, "away": AWAY}  # in the order of the aims
MINUTE = timedelta(minutes=1)


@dataclass(frozen=True, slots=True)
class Costs:
    """Minutes, summed up: courses late, results beyond their shelf life, work ahead of all who sit while guests are
    there. `lost`: dishes ahead that stand out for longer than their clocks give them; `up`: what is broken of the quiet
    at the table."""

    late: int
    kept: int
    away: int
    lost: int = 0
    up: int = 0


@dataclass(frozen=True)
class Offer:
    """A new sheet, the costs with the old sheet (`before`) and with it (`after`), and how both forecast the courses
    ahead."""

    sheet: RunSheet
    before: Costs
    after: Costs
    courses: tuple[tuple[str, datetime, datetime], ...]  # name, forecast as it is, forecast by the new sheet

    @property
    def gained(self) -> dict[str, int]:
        """What is gained besides the courses' own times, by kind of cost."""
        return {each: getattr(self.before, each) - getattr(self.after, each) for each in LEAST if each != "late"}


def offer(state: State, sheet: RunSheet, taken: State, now: datetime) -> Offer | None:
    """The offer of a sheet; None if the gain is too small or the most important change is a loss. `taken`: the state
    with the sheet taken."""
    old, new = Forecaster(state.sheet).forecast(state, now), Forecaster(sheet).forecast(taken, now)
    before, after = costs(state, old), costs(taken, new)
    gains = {each: getattr(before, each) - getattr(after, each) for each in LEAST}
    enough = any(gain >= LEAST[each] for each, gain in gains.items())
    dearest = next((gain for gain in gains.values() if gain), 0)  # first in the order of the aims
    if not enough or dearest < 0:
        return None
    outs = {course.name: course.served for course in new.courses}
    courses = tuple((c.name, c.served, outs[c.name]) for c in old.courses if c.is_ahead)
    return Offer(sheet, before, after, courses)


def costs(state: State, forecast: Forecast) -> Costs:
    """What it costs to go on with the state's sheet, from the forecast's moment on."""
    sheet, kept = state.sheet, 0
    for slot in sheet.slots:
        waiting = [forecast.slots[o].start for o in slot.then if o in forecast.slots and _is_ahead(state.steps[o])]
        if slot.keeping is not None and waiting and state.steps[slot.id].status != "left-out":
            stands = (max(waiting) - forecast.slots[slot.id].end) / MINUTE
            kept += max(0, round(stands - slot.keeping.minutes))
    late = sum(course.slip_minutes for course in forecast.courses if course.is_ahead)
    ahead = {id_ for id_, step in state.steps.items() if _is_ahead(step)}
    away = sum(away_by_forecast(sheet, forecast, ahead).values())
    up = sum(each.broken for each in quiet_by_forecast(sheet, forecast, ahead))
    return Costs(late, kept, away, _lost(state, forecast), up)


def _lost(state: State, forecast: Forecast) -> int:
    """Dishes still to be served whose clock runs out, by the forecast, before they are eaten."""
    times = {id_: (slot.start, slot.end) for id_, slot in forecast.slots.items()}
    courses = {course.name: course for course in state.sheet.courses}
    found = 0
    for each in exposures(state.sheet, times, forecast.left_out | left_out_of(state)):
        clock = each.clock
        if _is_ahead(state.steps[clock.serve]):
            eaten = times[clock.serve][1] + sitting(state.sheet, courses[clock.course]).likely * MINUTE
            found += each.minutes(eaten) > clock.limit_minutes
    return found


def _is_ahead(step: StepState) -> bool:
    return step.status == "to-come"
