"""Wishes whose minutes the host counts from now, not from the sheet. Pure: (state, what, minutes) → wish."""

import math
from datetime import datetime

from board.evening.events import Part
from board.evening.forecast import Forecast
from board.evening.state import State
from board.evening.wishes import LATER_MINUTES, Later, Push


def later_again(state: State, slot: str, part: Part, number: int, at: datetime) -> Later:
    """Later by five minutes; what was put off already, by five more than that."""
    until = state.steps[slot].put_off.get(part, at)
    waits = max(0, round((until - at).total_seconds() / 60))
    return Later(slot, part, number, waits + LATER_MINUTES)


def push_from_now(state: State, forecast: Forecast, course: str, minutes: int) -> Push:
    """A push by so many minutes from when the course now looks like going out. Raises KeyError: no such course."""
    planned = {c.name: c.served for c in state.sheet.courses}[course]
    looks = {c.name: c.served for c in forecast.courses}[course]
    slipped = math.ceil((looks - planned).total_seconds() / 60)
    return Push(course, max(0, slipped) + minutes - state.pushed.get(course, 0))
