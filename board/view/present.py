"""The present of an evening, which every view is made from."""

from dataclasses import dataclass
from datetime import datetime

from board.evening.calls import Call
from board.evening.clocks import LiveClock
from board.evening.events import ClockWarned
from board.evening.forecast import Forecast, Standing
from board.evening.state import State
from board.log.write import Unkept


@dataclass(frozen=True)
class Present:
    """All there is to know at one moment."""

    now: datetime
    state: State
    forecast: Forecast
    due: tuple[Call, ...]
    coming: tuple[Call, ...]
    raised: tuple[Call, ...] = ()  # calls that came due at this very tick, be it again
    warned: tuple[Standing, ...] = ()  # what the board warned of at this very tick
    clocks: tuple[LiveClock, ...] = ()  # how long each dish has stood out; at most a minute old
    clock_warned: tuple[ClockWarned, ...] = ()  # what was said of them at this very tick
    told: tuple[str, ...] = ()  # what else the host hears at this very tick
    unkept: Unkept | None = None  # what is not on the disk yet
