"""The leftovers of each course: when they were put away, and how long they had stood out by then. Pure."""

from dataclasses import dataclass
from datetime import datetime
from math import ceil

from board.evening.leftovers import job_of, left_out_of, left_since, put_away_at, spans, status, stood_out
from board.evening.state import State
from board.sheet.exposure import exposures
from board.sheet.run_sheet import SpoilClock


@dataclass(frozen=True, slots=True)
class LeftReview:
    """A course whose leftovers were put away at `at`, and the dish that was then furthest beyond its limit, or nearest
    to it. Minutes are rounded up."""

    course: str
    at: datetime
    dish: str
    stood_minutes: int
    limit_minutes: int

    @property
    def over(self) -> bool:
        """Whether the dish stood out beyond its limit."""
        return self.stood_minutes > self.limit_minutes


def put_away(state: State) -> tuple[LeftReview, ...]:
    """What was put away, by a job or as the host said, in order of time."""
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
    """Served courses whose leftovers nobody has reported as put away. During the evening, only courses that are cleared
    and have no job for it ahead."""
    return tuple(dict.fromkeys(clock.course for clock in state.sheet.clocks if _is_untold(state, clock)))


def _is_untold(state: State, clock: SpoilClock) -> bool:
    if status(state, clock.serve) != "finished" or put_away_at(state, clock) is not None:
        return False
    return state.closed or (left_since(state, clock) is not None and job_of(state, clock) is None)
