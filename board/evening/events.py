"""What happened, in the past tense. Frozen; one JSON line each in the run log. Times are aware, in UTC.

`n` counts the events of one evening from 1, so that one can be named (taken back) and a lost one is noticed.
"""

from collections.abc import Iterable
from datetime import datetime
from typing import Annotated, Literal

import msgspec

from board.sheet.run_sheet import Moment, RunSheet
from board.sheet.told import Stop

FORMAT = 1  # of the run log; raised when a line changes its meaning

Minutes = Annotated[int, msgspec.Meta(ge=-10_000, le=10_000)]
Part = Literal["start", "look-in", "end"]
ClockWarning = Literal["soon", "over", "put-away"]


class _Event(msgspec.Struct, frozen=True, gc=False, tag_field="event", kw_only=True):
    n: int
    at: Moment


class EveningOpened(_Event, frozen=True, tag=True, kw_only=True):
    """The first line of a log: the whole run sheet, so that a log can be read without the plan."""

    format: int = FORMAT
    rehearsal: bool
    sheet: RunSheet


class BoardReopened(_Event, frozen=True, tag=True, kw_only=True):
    """The board came back after it was closed or died."""


class CallRaised(_Event, frozen=True, tag=True, kw_only=True):
    """The board asked for something: at a step's start, its look-in `number` (from 0), or its end."""

    slot: str
    part: Part
    number: int = 0


class StepStarted(_Event, frozen=True, tag=True, kw_only=True):
    slot: str


class LookedIn(_Event, frozen=True, tag=True, kw_only=True):
    """A look-in was done; earlier ones that were overtaken count as done with it."""

    slot: str
    number: int


class StepFinished(_Event, frozen=True, tag=True, kw_only=True):
    """`by_itself`: nobody was needed at its end (it stood in the fridge), so the board ended it and asked nothing."""

    slot: str
    by_itself: bool = False


class CallPutOff(_Event, frozen=True, tag=True, kw_only=True):
    """The host said later: the call comes again after so many minutes."""

    slot: str
    part: Part
    number: int = 0
    minutes: Minutes


class StepLeftOut(_Event, frozen=True, tag=True, kw_only=True):
    slot: str


class CoursePushed(_Event, frozen=True, tag=True, kw_only=True):
    """A course is to go out so many minutes later than planned, on top of what it was pushed before."""

    course: str
    minutes: Minutes


class SheetTaken(_Event, frozen=True, tag=True, kw_only=True):
    """The host took a timetable worked out anew for what was left. What has begun is in it as it was planned."""

    sheet: RunSheet


class StepStretched(_Event, frozen=True, tag=True, kw_only=True):
    """Each of these takes so many minutes more (below 0: fewer) than it now looked like taking; one under way, at the
    least so many from now. `oven`: all of them because that oven lost its heat."""

    slots: tuple[str, ...]
    minutes: Minutes
    oven: str | None = None


class GuestsDelayed(_Event, frozen=True, tag=True, kw_only=True):
    """What waits for the guests begins so many minutes later than it now looked: their coming, or, with a `course`,
    what follows when that is eaten."""

    slots: tuple[str, ...]
    minutes: Minutes
    course: str | None = None


class DishDropped(_Event, frozen=True, tag=True, kw_only=True):
    """A dish is not made any further: all these slots are left out at once."""

    dish: str
    course: str | None
    slots: tuple[str, ...]


class NoteWritten(_Event, frozen=True, tag=True, kw_only=True):
    text: str
    slot: str | None = None


class ReadingTaken(_Event, frozen=True, tag=True, kw_only=True):
    """A probe in the middle of what a step made, or is making."""

    slot: str
    celsius: Annotated[float, msgspec.Meta(ge=-100, le=600)]


class ReadingSkipped(_Event, frozen=True, tag=True, kw_only=True):
    """A step that wants a core temperature was ended without a reading."""

    slot: str


class KeepingWarned(_Event, frozen=True, tag=True, kw_only=True):
    """The board said that what a step made soon keeps no longer."""

    slot: str


class ClockWarned(_Event, frozen=True, tag=True, kw_only=True):
    """The board said how a dish's clock stands; `dish` None: the clocks of all that is left of the course.

    soon: its limit comes near; over: it is reached; put-away: the course is cleared, and no job puts away what is left.
    `cooking`: the slot that cooks it, of a clock of raw food; None: the clock of what is eaten.
    """

    dish: str | None
    course: str
    what: ClockWarning
    cooking: str | None = None


class LeftoversPutAway(_Event, frozen=True, tag=True, kw_only=True):
    """The host said that what was left of a cleared course is put away, in the cold."""

    course: str


class StopsAccepted(_Event, frozen=True, tag=True, kw_only=True):
    """The host read what must be mended before anybody eats, and began all the same."""

    stops: tuple[Stop | str, ...]


class TakenBack(_Event, frozen=True, tag=True, kw_only=True):
    """These events, by number, are as if they had not happened."""

    targets: tuple[int, ...]


class ClockJumped(_Event, frozen=True, tag=True, kw_only=True):
    """The clock went so many seconds further (or less far) than time did between two ticks; `at` is after it.

    `slept`: the machine stood still meanwhile, so that the time did pass. Else somebody, or a time server, set it.
    """

    seconds: float
    slept: bool = False


class EveningClosed(_Event, frozen=True, tag=True, kw_only=True):
    """The host ended the evening on the board."""


Event = (
    EveningOpened
    | BoardReopened
    | CallRaised
    | StepStarted
    | LookedIn
    | StepFinished
    | CallPutOff
    | StepLeftOut
    | CoursePushed
    | SheetTaken
    | StepStretched
    | GuestsDelayed
    | DishDropped
    | NoteWritten
    | ReadingTaken
    | ReadingSkipped
    | KeepingWarned
    | ClockWarned
    | LeftoversPutAway
    | StopsAccepted
    | TakenBack
    | ClockJumped
    | EveningClosed
)

# What the host may do, and can take back.
SLIPS = (StepStretched, GuestsDelayed, DishDropped)
ANSWERS = (
    StepStarted,
    LookedIn,
    StepFinished,
    CallPutOff,
    StepLeftOut,
    CoursePushed,
    *SLIPS,
    SheetTaken,
    NoteWritten,
    ReadingTaken,
    ReadingSkipped,
    LeftoversPutAway,
)


def is_answer(event: Event) -> bool:
    """Whether the host did it; a step that the board ended by itself asked nobody."""
    return isinstance(event, ANSWERS) and not (isinstance(event, StepFinished) and event.by_itself)


def newest(events: Iterable[Event]) -> datetime | None:
    """When, by the clock as it is now, the last thing happened."""
    last: datetime | None = None
    for event in events:
        set_anew = isinstance(event, ClockJumped) and not event.slept
        last = event.at if last is None or set_anew else max(last, event.at)
    return last
