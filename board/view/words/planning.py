"""What the planning table says of a plan and its days."""

from collections.abc import Sequence

from board.base.words.evening import LANES

COURSES_ROW = "Courses"


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
