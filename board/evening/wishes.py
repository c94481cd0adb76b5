"""What the host can want of an evening, as data. Imperatives; `decide.py` decides what comes of them."""

import math
from dataclasses import dataclass
from datetime import datetime

from board.evening.events import Part, Said
from board.evening.forecast import Forecast
from board.evening.state import State
from board.sheet.run_sheet import RunSheet

LATER_MINUTES = 5  # ours


@dataclass(frozen=True, slots=True)
class Done:
    """Answers the call: started, looked in, or finished. `then`: what begins with the same key."""

    slot: str
    part: Part
    number: int = 0
    then: str | None = None


@dataclass(frozen=True, slots=True)
class HelperDone:
    """The same, by the helper `who` about a call of theirs, away from the board."""

    slot: str
    part: Part
    number: int
    who: str


@dataclass(frozen=True, slots=True)
class Settle:
    """The slot is over, whatever was called: the guests are here, the course is cleared."""

    slot: str


@dataclass(frozen=True, slots=True)
class Later:
    """Not now: call again after `minutes`."""

    slot: str
    part: Part
    number: int = 0
    minutes: int = LATER_MINUTES


@dataclass(frozen=True, slots=True)
class Say:
    """These were done, and then: told afterwards."""

    steps: tuple[Said, ...]


@dataclass(frozen=True, slots=True)
class LeaveOut:
    slot: str


@dataclass(frozen=True, slots=True)
class Push:
    """Send a course out `minutes` later than the sheet says, on top of earlier pushes."""

    course: str
    minutes: int


@dataclass(frozen=True, slots=True)
class TakeSheet:
    """Go on by this new sheet for the rest of the evening."""

    sheet: RunSheet


@dataclass(frozen=True, slots=True)
class WriteNote:
    text: str
    slot: str | None = None


@dataclass(frozen=True, slots=True)
class TakeReading:
    """A probe shows this, in °C. `part`: the call it answers too, if the core is hot enough."""

    slot: str
    celsius: float
    part: Part | None = None
    number: int = 0


@dataclass(frozen=True, slots=True)
class EndUnread:
    """End the slot without a reading."""

    slot: str


@dataclass(frozen=True, slots=True)
class PutAway:
    """The leftovers of a cleared course are in the cold."""

    course: str


@dataclass(frozen=True, slots=True)
class TakeBack:
    """Undo the last answer."""


@dataclass(frozen=True, slots=True)
class Close:
    """Close the evening."""


@dataclass(frozen=True, slots=True)
class Lengthen:
    """Each of these takes `minutes` more (below 0: fewer). `oven`: because this oven lost its heat."""

    slots: tuple[str, ...]
    minutes: int
    oven: str | None = None


@dataclass(frozen=True, slots=True)
class DelayGuests:
    """The guests come `minutes` later; with a `course`, they sit that much longer over it."""

    minutes: int
    course: str | None = None


@dataclass(frozen=True, slots=True)
class DropDish:
    """Give up a dish, with all that is done of it or under way."""

    dish: str
    course: str | None


SlipWish = Lengthen | DelayGuests | DropDish


Wish = (
    Done
    | HelperDone
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
    | Say
    | TakeBack
    | Close
)


@dataclass(frozen=True, slots=True)
class Refusal:
    """Why a wish is refused, in words for the screen."""

    words: str


def later_again(state: State, slot: str, part: Part, number: int, at: datetime) -> Later:
    """Later by five minutes; if the call is already put off, five more than that."""
    until = state.steps[slot].put_off.get(part, at)
    waits = max(0, round((until - at).total_seconds() / 60))
    return Later(slot, part, number, waits + LATER_MINUTES)


def push_from_now(state: State, forecast: Forecast, course: str, minutes: int) -> Push:
    """A push of `minutes` from the forecast time of the course. Raises KeyError for an unknown course."""
    planned = {c.name: c.served for c in state.sheet.courses}[course]
    looks = {c.name: c.served for c in forecast.courses}[course]
    slipped = math.ceil((looks - planned).total_seconds() / 60)
    return Push(course, max(0, slipped) + minutes - state.pushed.get(course, 0))
