"""The present moment of an evening; every view is made from it."""

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
    """Everything known at one moment. `now` is an aware datetime."""

    now: datetime
    state: State
    forecast: Forecast
    due: tuple[Call, ...]
    coming: tuple[Call, ...]
    raised: tuple[Call, ...] = ()  # calls that came due at this tick, also for a second time
    warned: tuple[Standing, ...] = ()  # results the board warned of at this tick
    clocks: tuple[LiveClock, ...] = ()  # how long each dish has stood out; at most a minute old
    clock_warned: tuple[ClockWarned, ...] = ()  # warnings about them at this tick
    told: tuple[str, ...] = ()  # anything else the host hears at this tick
    unkept: Unkept | None = None  # what is not on disk yet; None if nothing
    copy_trouble: str = ""  # why the second copy lacks lines
    behind: bool = False  # whether calls were overtaken, and there is something to tell in one go
