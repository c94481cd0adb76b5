"""Moments of an evening on which the clock may have been set. Pure."""

from collections.abc import Sequence
from datetime import datetime, timedelta

from board.evening.events import ClockJumped, Event


def by_one_clock(history: Sequence[Event]) -> dict[int, datetime]:
    """The moment of each event, by number, all by the clock as it was last set."""
    found: dict[int, datetime] = {}
    later = timedelta()
    for event in reversed(history):
        found[event.n] = event.at + later
        if isinstance(event, ClockJumped) and not event.slept:
            later += timedelta(seconds=event.seconds)
    return found
