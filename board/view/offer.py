"""A better timetable for the rest, in one line. Pure; safe for a terminal."""

from collections.abc import Callable, Iterable, Mapping, Sequence
from datetime import datetime

from board.base.plain import one_line
from board.view import words
from board.view.board import Viewer


def offer_line(
    viewer: Viewer, courses: Sequence[tuple[str, datetime, datetime]], gained: Mapping[str, int], now: datetime
) -> str:
    """The key and what it brings."""
    return one_line(words.offer_line(what_it_brings(viewer.clock, courses, gained, now)), 200)


def what_it_brings(
    clock: Callable[[datetime, datetime], str],
    courses: Iterable[tuple[str, datetime, datetime]],
    gained: Mapping[str, int],
    now: datetime,
) -> str:
    """Courses that go out later (name, forecast as it is, forecast by the offer), which is what it costs and is never
    cut; then those that go out earlier, and the minutes `gained` by kind. `clock` tells a moment to whoever hears of it
    now."""
    earlier: list[str] = []
    later: list[str] = []
    for name, looks, then in courses:
        if abs((then - looks).total_seconds()) >= 60:
            told = words.offer_course(one_line(name, 20), clock(then, now), clock(looks, now))
            (earlier if then < looks else later).append(told)
    if later:
        later[0] = words.offer_later(later[0])
    gains = [words.OFFER_GAINS[what].format(minutes) for what, minutes in gained.items() if minutes > 0]
    return "; ".join(", ".join(part) for part in (later, [*earlier, *gains]) if part)
