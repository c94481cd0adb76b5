"""What is left of a course: since when it stands about, what puts it away, and when that was. Pure: state → facts.

A job of the plan puts it away, or the host says that it is put away; the board does not see a fridge.
"""

from datetime import datetime, timedelta

from board.evening.state import State
from board.sheet.exposure import Exposure, Span
from board.sheet.run_sheet import SpoilClock


def spans(state: State, here: datetime) -> dict[str, Span]:
    """What each slot has had of its time, until a moment."""
    found = {}
    for id_, step in state.steps.items():
        start = step.started or here
        found[id_] = (start, max(start, step.finished or here))
    return found


def left_out_of(state: State) -> frozenset[str]:
    """The slots that were left out."""
    return frozenset(id_ for id_, step in state.steps.items() if step.status == "left-out")


def status(state: State, id_: str) -> str:
    """How a slot stands; empty where the sheet lacks it."""
    return state.steps[id_].status if id_ in state.steps else ""


def left_since(state: State, clock: SpoilClock) -> datetime | None:
    """Since when what is left stands about: since its course was cleared or, where the clearing was left out, went
    out."""
    if status(state, clock.serve) != "finished" or status(state, clock.clear) not in ("finished", "left-out"):
        return None
    return state.steps[clock.clear].finished or state.steps[clock.serve].finished


def job_of(state: State, clock: SpoilClock) -> str | None:
    """The slot that puts it away, or did; None where no job does, or it was left out."""
    return clock.away if clock.away is not None and status(state, clock.away) not in ("left-out", "") else None


def put_away_at(state: State, clock: SpoilClock) -> datetime | None:
    """When it was put away: at the end of its job, or when the host said so."""
    if clock.away is not None and status(state, clock.away) == "finished":
        return state.steps[clock.away].finished
    return state.put_away.get(clock.course) if left_since(state, clock) is not None else None


def stood_out(state: State, past: Exposure, until: datetime) -> float:
    """Minutes for which a dish stood out until a moment, with those since its course was cleared."""
    since = left_since(state, past.clock)
    if since is None or job_of(state, past.clock) is not None:  # the way to a job is a stretch of its own
        return past.minutes(until)
    return past.minutes(until) + max(0.0, (until - since) / timedelta(minutes=1))
