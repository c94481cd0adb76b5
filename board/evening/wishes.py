"""What the host can want of an evening, as data. Imperatives; what comes of them is decided in `decide.py`."""

import math
from dataclasses import dataclass
from datetime import datetime

from board.evening.events import Part
from board.evening.forecast import Forecast
from board.evening.state import State
from board.sheet.run_sheet import RunSheet

LATER_MINUTES = 5  # ours


@dataclass(frozen=True, slots=True)
class Done:
    """The call is answered: begun, looked in, or finished."""

    slot: str
    part: Part
    number: int = 0


@dataclass(frozen=True, slots=True)
class Settle:
    """The slot is over and done with, whatever was called: the guests are here, the course is cleared."""

    slot: str


@dataclass(frozen=True, slots=True)
class Later:
    """Not now: ask again after so many minutes."""

    slot: str
    part: Part
    number: int = 0
    minutes: int = LATER_MINUTES


@dataclass(frozen=True, slots=True)
class LeaveOut:
    slot: str


@dataclass(frozen=True, slots=True)
class Push:
    """Send a course out so many minutes later than the sheet says, on top of earlier pushes."""

    course: str
    minutes: int


@dataclass(frozen=True, slots=True)
class TakeSheet:
    """Go on by this sheet, which was worked out anew for what is left."""

    sheet: RunSheet


@dataclass(frozen=True, slots=True)
class WriteNote:
    text: str
    slot: str | None = None


@dataclass(frozen=True, slots=True)
class TakeReading:
    """A probe shows so much, in °C. `part`: the call that it answers too, where the core is what is wanted."""

    slot: str
    celsius: float
    part: Part | None = None
    number: int = 0


@dataclass(frozen=True, slots=True)
class EndUnread:
    """The slot is over, and no probe was put into it."""

    slot: str


@dataclass(frozen=True, slots=True)
class PutAway:
    """What is left of a cleared course is in the cold."""

    course: str


@dataclass(frozen=True, slots=True)
class TakeBack:
    """The last answer was a mistake."""


@dataclass(frozen=True, slots=True)
class Close:
    """The evening is over."""


@dataclass(frozen=True, slots=True)
class Lengthen:
    """Each of these takes so many minutes more, or fewer. `oven`: because it lost its heat."""

    slots: tuple[str, ...]
    minutes: int
    oven: str | None = None


@dataclass(frozen=True, slots=True)
class DelayGuests:
    """The guests come so many minutes later; with a `course`, they sit so much longer over it."""

    minutes: int
    course: str | None = None


@dataclass(frozen=True, slots=True)
class DropDish:
    """A dish is not made. `under_way`: what of it has begun is left out too."""

    dish: str
    course: str | None
    under_way: bool = False


SlipWish = Lengthen | DelayGuests | DropDish


Wish = (
    Done
    | Settle
    | Later
    | LeaveOut
    | Push
    | SlipWish
    | TakeSheet
    | WriteNote
    | TakeReading
    | EndUnread
    | PutAway
    | TakeBack
    | Close
)


@dataclass(frozen=True, slots=True)
class Refusal:
    """Why a wish cannot be had, in words for the screen."""

    words: str


def later_again(state: State, slot: str, part: Part, number: int, at: datetime) -> Later:
    """Later by five minutes; what was put off already, by five more than that."""
    until = state.steps[slot].put_off.get(part, at)
    waits = max(0, round((until - at).total_seconds() / 60))
    return Later(slot, part, number, waits + LATER_MINUTES)


def push_from_now(state: State, forecast: Forecast, course: str, minutes: int) -> Push:
    """A push by so many minutes from when the course now looks like going out. Raises KeyError: no such course."""
    planned = {c.name: c.served for c in state.sheet.courses}[course]
    looks = {c.name: c.served for c in forecast.courses}[course]
    slipped = math.ceil((looks - planned).total_seconds() / 60)
    return Push(course, max(0, slipped) + minutes - state.pushed.get(course, 0))
