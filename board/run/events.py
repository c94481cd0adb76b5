"""What happened, in the past tense. Frozen; one JSON line each in the run log. Times are aware, in UTC.

`n` counts the events of one evening from 1, so that one can be named (taken back) and a lost one is noticed.
"""

from typing import Annotated, Literal

import msgspec

from board.timetable.run_sheet import Moment, RunSheet

FORMAT = 1  # of the run log; raised when a line changes its meaning

Minutes = Annotated[int, msgspec.Meta(ge=-10_000, le=10_000)]
Part = Literal["start", "look-in", "end"]


class _Event(msgspec.Struct, frozen=True, tag_field="event", kw_only=True):
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


class NoteWritten(_Event, frozen=True, tag=True, kw_only=True):
    text: str
    slot: str | None = None


class TakenBack(_Event, frozen=True, tag=True, kw_only=True):
    """These events, by number, are as if they had not happened."""

    targets: tuple[int, ...]


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
    | NoteWritten
    | TakenBack
    | EveningClosed
)

# What the host may do, and can take back.
ANSWERS = (StepStarted, LookedIn, StepFinished, CallPutOff, StepLeftOut, CoursePushed, SheetTaken, NoteWritten)
