"""What the planning table says of a plan and its days."""

from collections.abc import Sequence
from datetime import datetime

from board.base.words.evening import LANES
from board.base.words.times import clock, day_and_clock

COURSES_ROW = "Courses"
TRIED_COSTS_NOTHING = "nothing else moves, and nothing is lost"
TRIED_NONE = "no timetable was found with it"
TRIED_UNPROVED = "not proved: there may be a better answer"


def hands_of(who: str, length: str) -> str:
    return f"{who} {length}"


def heats(settings: Sequence[str]) -> str:
    return f"oven {', '.join(settings)}"


def heat_row(oven: str) -> str:
    return f"Heat, {oven}" if oven != "oven" else "Heat"


def cold_full(place: str, litres: float, room: float | None) -> str:
    return f"{place} {litres:g} l" if room is None else f"{place} {litres:g} of {room:g} l"


def told_beside(pieces: Sequence[str]) -> str:
    return "   ".join(pieces)


def lane_name(lane: str, left_out: int) -> str:
    return f"{LANES[lane]} +{left_out}" if left_out else LANES[lane]


def tried_moves(name: str, before: datetime, now: datetime) -> str:
    if before == now:
        return f"{name} stays at {clock(now)}"
    one_day = before.date() == now.date()
    return f"{name} {clock(before)} → {clock(now)}" if one_day else f"{name} → {day_and_clock(now)}"


def tried_gives_up(lost: Sequence[str]) -> str:
    return f"gives up: {'; '.join(lost)}"


def tried_others(others: Sequence[str], more: int) -> str:
    return f"moves too: {'; '.join(others)}{f'; and {more} more' if more else ''}"
