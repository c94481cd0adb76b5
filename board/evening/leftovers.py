"""A course's leftovers: since when they stand out, what puts them away, and when that was. Pure: state → facts.

Either a job of the plan puts them away or the host says so; the board cannot see the fridge.
"""

from datetime import datetime, timedelta

from board.evening.state import State
from board.sheet.exposure import Exposure, Span
from board.sheet.run_sheet import SpoilClock


def spans(state: State, here: datetime) -> dict[str, Span]:
    """The part of each slot that lies before `here`: start and end, in UTC."""
    found = {}
    for id_, step in state.steps.items():
        start = step.started or here
        found[id_] = (start, max(start, step.finished or here))
    return found


def left_out_of(state: State) -> frozenset[str]:
    """Ids of the slots left out."""
    return frozenset(id_ for id_, step in state.steps.items() if step.status == "left-out")


def status(state: State, id_: str) -> str:
    """A slot's status; empty if the sheet lacks it."""
    return state.steps[id_].status if id_ in state.steps else ""


def left_since(state: State, clock: SpoilClock) -> datetime | None:
    """Since when leftovers stand out: from clearing or, if that was left out, from serving; None before."""
    if status(state, clock.serve) != "finished" or status(state, clock.clear) not in ("finished", "left-out"):
        return None
    return state.steps[clock.clear].finished or state.steps[clock.serve].finished


def job_of(state: State, clock: SpoilClock) -> str | None:
    """The slot that puts it away; None if no job does, or that job was left out."""
    return clock.away if clock.away is not None and status(state, clock.away) not in ("left-out", "") else None


def put_away_at(state: State, clock: SpoilClock) -> datetime | None:
    """When it was put away: at its job's end, or when the host said so; None if it was not."""
    if clock.away is not None and status(state, clock.away) == "finished":
        return state.steps[clock.away].finished
    return state.put_away.get(clock.course) if left_since(state, clock) is not None else None


def stood_out(state: State, past: Exposure, until: datetime) -> float:
    """Minutes a dish had stood out by `until`, including those since clearing."""
    since = left_since(state, past.clock)
    if since is None or job_of(state, past.clock) is not None:  # the way to a job is an interval of its own
        return past.minutes(until)
    return past.minutes(until) + max(0.0, (until - since) / timedelta(minutes=1))
