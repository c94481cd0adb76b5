"""What the board says of itself at one tick, each line once, and whether it is grave. Pure."""

from collections.abc import Iterator, Sequence
from typing import Protocol

from board.base import words
from board.evening.events import ClockWarned
from board.evening.forecast import Standing
from board.view.standing import At, Standings


class Heard(At, Protocol):
    """The moment, with what is new at it."""

    @property
    def warned(self) -> Sequence[Standing]: ...
    @property
    def clock_warned(self) -> Sequence[ClockWarned]: ...
    @property
    def told(self) -> Sequence[str]: ...


def said_at(present: Heard, standings: Standings) -> Iterator[tuple[str, bool]]:
    """What soon keeps no longer, what is said of clocks for the first time, and what else the host hears."""
    for each in present.warned:
        yield standings.soon_over(each, present.now), False
    if present.clock_warned:
        told = [standings.clock_warning(each, present) for each in present.clock_warned]
        yield words.said_together(told), any(each.what == "over" for each in present.clock_warned)
    if present.told:
        yield words.said_together(present.told), False
