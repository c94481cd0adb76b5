"""A better timetable for what is left, in one line for the board. Pure; the words are safe for a terminal."""

from collections.abc import Mapping, Sequence
from datetime import datetime

from board.base import words
from board.base.plain import one_line
from board.view.board import Viewer


def offer_line(
    viewer: Viewer, courses: Sequence[tuple[str, datetime, datetime]], gained: Mapping[str, int], now: datetime
) -> str:
    """What it brings: courses that go out sooner or later (as it looks, and by it), minutes kept too long, minutes
    with the guests."""
    moved = [
        words.offer_course(one_line(name, 20), viewer.clock(then, now), viewer.clock(looks, now))
        for name, looks, then in courses
        if abs((then - looks).total_seconds()) >= 60
    ]
    gains = [words.OFFER_GAINS[what].format(minutes) for what, minutes in gained.items() if minutes > 0]
    return one_line(words.offer_line([*moved, *gains]), 200)
