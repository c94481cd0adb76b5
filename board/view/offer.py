"""A better timetable for what is left, in one line for the board. Pure; the words are safe for a terminal."""

from datetime import datetime
from typing import Protocol

from board.base import words
from board.base.plain import one_line
from board.view.board import Viewer


class Minutes(Protocol):
    """What going on one way costs."""

    @property
    def late(self) -> int: ...
    @property
    def kept(self) -> int: ...
    @property
    def away(self) -> int: ...


class Better(Protocol):
    """What is offered."""

    @property
    def before(self) -> Minutes: ...
    @property
    def after(self) -> Minutes: ...
    @property
    def courses(self) -> tuple[tuple[str, datetime, datetime], ...]: ...


def offer_line(viewer: Viewer, better: Better, now: datetime) -> str:
    """What it brings: courses that go out sooner or later, minutes kept too long, minutes with the guests."""
    moved = [
        words.offer_course(one_line(name, 20), viewer.clock(then, now), viewer.clock(looks, now))
        for name, looks, then in better.courses
        if abs((then - looks).total_seconds()) >= 60
    ]
    gains = [
        words.OFFER_GAINS[what].format(before - after)
        for what, before, after in (
            ("kept", better.before.kept, better.after.kept),
            ("away", better.before.away, better.after.away),
        )
        if before - after > 0
    ]
    return one_line(words.offer_line([*moved, *gains]), 200)
