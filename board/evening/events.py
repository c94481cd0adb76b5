"""What happened, in the past tense. Frozen; one JSON line each in the run log. Times are aware, in UTC.

`n` counts an evening's events from 1, so that one can be named when taken back and a lost one is noticed.
"""

from collections.abc import Iterable
from datetime import datetime
from typing import Annotated, Literal

import msgspec

from board.sheet.run_sheet import Moment, RunSheet
from board.sheet.told import Stop

FORMAT = 2  # of the run log; raised when a line's meaning changes. 2: the opening is three lines

Minutes = Annotated[int, msgspec.Meta(ge=-10_000, le=10_000)]
Part = Literal["start", "look-in", "end", "reheat"]  # reheat: what is kept hot was read too cold
ClockWarning = Literal["soon", "over", "put-away"]


class _Event(msgspec.Struct, frozen=True, gc=False, tag_field="event", kw_only=True):
    n: int
    at: Moment


class _Answer(_Event, frozen=True, gc=False, kw_only=True):
    """An answer. `by`: the helper who gave it, from elsewhere than the board."""

    by: str | msgspec.UnsetType = msgspec.UNSET


class EveningOpened(_Event, frozen=True, tag=True, kw_only=True):
    """How a log begins. It holds the whole run sheet, so the log can be read without the plan."""

    format: int = FORMAT
    rehearsal: bool
    sheet: RunSheet


class BoardReopened(_Event, frozen=True, tag=True, kw_only=True):
    """The board was opened again after being closed or killed."""


class CallRaised(_Event, frozen=True, tag=True, kw_only=True):
    """The board raised a call: at a step's start, at its look-in `number` (from 0), at its end, or to heat it again."""

    slot: str
    part: Part
    number: int = 0


class StepStarted(_Answer, frozen=True, tag=True, kw_only=True):
    """`along`: with the key that ended the step before it."""

    slot: str
    along: bool | msgspec.UnsetType = msgspec.UNSET


class LookedIn(_Answer, frozen=True, tag=True, kw_only=True):
    """A look-in was done; any earlier look-ins still open count as done too."""

    slot: str
    number: int


class StepFinished(_Answer, frozen=True, tag=True, kw_only=True):
    """A step ended. `by_itself`: its end needs nobody (it stood in the fridge), so the board ended it unasked."""

    slot: str
    by_itself: bool = False


class CallPutOff(_Event, frozen=True, tag=True, kw_only=True):
    """The host said later: the call comes again after `minutes`."""

    slot: str
    part: Part
    number: int = 0
    minutes: Minutes


class StepLeftOut(_Event, frozen=True, tag=True, kw_only=True):
    slot: str


class CoursePushed(_Event, frozen=True, tag=True, kw_only=True):
    """A course goes out `minutes` later than planned, on top of earlier pushes."""

    course: str
    minutes: Minutes


class OfferedCourse(msgspec.Struct, frozen=True, gc=False):
    """When a course is served as it looks, and by what is offered."""

    course: str
    served: Moment
    offered: Moment


class OfferMade(_Event, frozen=True, tag=True, kw_only=True):
    """The board offered a better timetable for the rest. Left, unless a `SheetTaken` comes before the next offer.
    `gained`: minutes (`lost`: dishes) beside the courses' own, by kind of cost."""

    courses: tuple[OfferedCourse, ...]
    gained: tuple[tuple[str, int], ...]


class SheetTaken(_Event, frozen=True, tag=True, kw_only=True):
    """The host accepted a new timetable for the rest. Steps that had started keep their planned times in it."""

    sheet: RunSheet


class StepStretched(_Event, frozen=True, tag=True, kw_only=True):
    """Each slot takes `minutes` more (below 0: fewer) than forecast; one under way runs at least that long from now.
    `oven`: they all take longer because this oven lost its heat."""

    slots: tuple[str, ...]
    minutes: Minutes
    oven: str | None = None


class GuestsDelayed(_Event, frozen=True, tag=True, kw_only=True):
    """What waits for the guests starts `minutes` later than forecast: their arrival or, with a `course`, whatever
    follows once it is eaten."""

    slots: tuple[str, ...]
    minutes: Minutes
    course: str | None = None


class DishDropped(_Event, frozen=True, tag=True, kw_only=True):
    """A dish is given up: all these slots are left out at once."""

    dish: str
    course: str | None
    slots: tuple[str, ...]


class NoteWritten(_Event, frozen=True, tag=True, kw_only=True):
    text: str
    slot: str | None = None


class ReadingTaken(_Event, frozen=True, tag=True, kw_only=True):
    """A probe reading, in °C, from the middle of what a step makes or made."""

    slot: str
    celsius: Annotated[float, msgspec.Meta(ge=-100, le=600)]


class ReadingSkipped(_Event, frozen=True, tag=True, kw_only=True):
    """A step that wants a core temperature was ended without one."""

    slot: str


class KeepingWarned(_Event, frozen=True, tag=True, kw_only=True):
    """The board warned that a step's result will soon be past its best."""

    slot: str


class ClockWarned(_Event, frozen=True, tag=True, kw_only=True):
    """The board warned about a dish's clock; `dish` None: about all the leftovers of the course.

    soon: the limit is near; over: it is reached; put-away: the course is cleared and no job puts its leftovers away.
    `cooking`: for raw food, the slot that cooks it; None: the clock of what is eaten.
    """

    dish: str | None
    course: str
    what: ClockWarning
    cooking: str | None = None


class Said(msgspec.Struct, frozen=True, gc=False):
    """One slot of `StepsSaid`. `finished` None: it is under way."""

    slot: str
    started: Moment
    finished: Moment | None = None


class StepsSaid(_Event, frozen=True, tag=True, kw_only=True):
    """The host told the board afterwards what had been done and when, in one answer: said, not seen."""

    steps: tuple[Said, ...]


class LeftoversPutAway(_Event, frozen=True, tag=True, kw_only=True):
    """The host said that a cleared course's leftovers are put away in the cold."""

    course: str


class StopsAccepted(_Event, frozen=True, tag=True, kw_only=True):
    """The host read the stops (to be mended before anybody eats) and began all the same."""

    stops: tuple[Stop | str, ...]


class NightDrawn(_Event, frozen=True, tag=True, kw_only=True):
    """From here on a rehearsal goes by a night of mishaps: how long slots really take, how long courses are eaten, how
    late guests are, how long calls at a slot's end go unheard, which oven is slow; minutes, by slot id or course.

    `evenings`: from how many, beside the plan, the lengths were drawn.
    """

    lasts: tuple[tuple[str, int], ...]
    sits: tuple[tuple[str, int], ...]
    guests_late: int
    forgotten: tuple[tuple[str, int], ...]
    oven: str | None
    evenings: int


class TakenBack(_Event, frozen=True, tag=True, kw_only=True):
    """The events with these numbers no longer count."""

    targets: tuple[int, ...]


class ClockJumped(_Event, frozen=True, tag=True, kw_only=True):
    """Between two ticks the clock moved `seconds` further (below 0: less far) than time did; `at` is after the jump.

    `slept`: the machine slept, so the time really passed. Otherwise a person or a time server set the clock.
    """

    seconds: float
    slept: bool = False


class EveningClosed(_Event, frozen=True, tag=True, kw_only=True):
    """The host closed the evening on the board."""


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
    | OfferMade
    | SheetTaken
    | StepStretched
    | GuestsDelayed
    | DishDropped
    | NoteWritten
    | ReadingTaken
    | ReadingSkipped
    | StepsSaid
    | KeepingWarned
    | ClockWarned
    | LeftoversPutAway
    | StopsAccepted
    | NightDrawn
    | TakenBack
    | ClockJumped
    | EveningClosed
)

# What the host can do, and can take back.
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
    StepsSaid,
    LeftoversPutAway,
)


def is_answer(event: Event) -> bool:
    """Whether the host did it; a step the board ended by itself does not count."""
    return isinstance(event, ANSWERS) and not (isinstance(event, StepFinished) and event.by_itself)


def newest(events: Iterable[Event]) -> datetime | None:
    """When the last event happened, by the clock as set now; None without events."""
    last: datetime | None = None
    for event in events:
        set_anew = isinstance(event, ClockJumped) and not event.slept
        last = event.at if last is None or set_anew else max(last, event.at)
    return last
