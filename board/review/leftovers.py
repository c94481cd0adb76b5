"""What was left of each course of an evening: when it was put away, and how long it had stood out by then. Pure."""

from dataclasses import dataclass
from datetime import datetime
from math import ceil

from board.evening.leftovers import job_of, left_out_of, left_since, put_away_at, spans, status, stood_out
from board.evening.state import State
from board.sheet.exposure import exposures
from board.sheet.run_sheet import SpoilClock


@dataclass(frozen=True, slots=True)
class LeftReview:
    """A course whose leftovers were put away, with its dish that had stood out longest against its limit by then.

    A minute that was begun counts as a whole one.
    """

    course: str
    at: datetime
    dish: str
    stood_minutes: int
    limit_minutes: int

    @property
    def over(self) -> bool:
        return self.stood_minutes > self.limit_minutes


def put_away(state: State) -> tuple[LeftReview, ...]:
    """What was put away, by a job or as the host said, in that order in time."""
    moments = [at for clock in state.sheet.clocks if (at := put_away_at(state, clock)) is not None]
    if not moments:
        return ()
    found: dict[str, LeftReview] = {}
    for past in exposures(state.sheet, spans(state, max(moments)), left_out_of(state)):
        clock, at = past.clock, put_away_at(state, past.clock)
        if at is None or status(state, clock.serve) != "finished":
            continue
        stood = ceil(round(stood_out(state, past, at), 3))
        each, known = LeftReview(clock.course, at, clock.dish, stood, clock.limit_minutes), found.get(clock.course)
        if known is None or stood - clock.limit_minutes > known.stood_minutes - known.limit_minutes:
            found[clock.course] = each
    return tuple(sorted(found.values(), key=lambda each: each.at))


def not_told(state: State) -> tuple[str, ...]:
    """Courses that went out, and of which nobody said when what was left was put away; while the evening lasts, only
    those that are cleared and for which no job is still to come."""
    return tuple(dict.fromkeys(clock.course for clock in state.sheet.clocks if _is_untold(state, clock)))


def _is_untold(state: State, clock: SpoilClock) -> bool:
    if status(state, clock.serve) != "finished" or put_away_at(state, clock) is not None:
        return False
    return state.closed or (left_since(state, clock) is not None and job_of(state, clock) is None)
