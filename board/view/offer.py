"""A better timetable for the rest, in one line for the board. Pure; safe for a terminal."""

from collections.abc import Mapping, Sequence
from datetime import datetime

from board.base.plain import one_line
from board.view import words
from board.view.board import Viewer


def offer_line(
    viewer: Viewer, courses: Sequence[tuple[str, datetime, datetime]], gained: Mapping[str, int], now: datetime
) -> str:
    """What it brings: courses that move (name, forecast as it is, forecast by the offer), and the minutes `gained` by
    kind."""
    moved = [
        words.offer_course(one_line(name, 20), viewer.clock(then, now), viewer.clock(looks, now))
        for name, looks, then in courses
        if abs((then - looks).total_seconds()) >= 60
    ]
    gains = [words.OFFER_GAINS[what].format(minutes) for what, minutes in gained.items() if minutes > 0]
    return one_line(words.offer_line([*moved, *gains]), 200)
