"""A better timetable for the rest, in one line for the board. Pure; safe for a terminal."""

from collections.abc import Mapping, Sequence
from datetime import datetime

from board.base.plain import one_line
from board.view import words
from board.view.board import Viewer


def offer_line(
    viewer: Viewer, courses: Sequence[tuple[str, datetime, datetime]], gained: Mapping[str, int], now: datetime
) -> str:
    """The key and what it brings: courses that go out earlier (name, forecast as it is, forecast by the offer), the
    minutes `gained` by kind; then courses that go out later."""
    earlier: list[str] = []
    later: list[str] = []
    for name, looks, then in courses:
        if abs((then - looks).total_seconds()) >= 60:
            told = words.offer_course(one_line(name, 20), viewer.clock(then, now), viewer.clock(looks, now))
            (earlier if then < looks else later).append(told)
    gains = [words.OFFER_GAINS[what].format(minutes) for what, minutes in gained.items() if minutes > 0]
    return one_line(words.offer_line([*earlier, *gains, *later]), 200)
