"""How the evening stands: the fold of all its events. Frozen; nothing edits it."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from types import MappingProxyType
from typing import Any, Literal, TypeVar

from board.evening.events import ClockJumped, ClockWarning, Event, Part
from board.sheet.run_sheet import RunSheet, Slot
from board.sheet.told import Stop

Status = Literal["to-come", "under-way", "finished", "left-out"]
CallKey = tuple[str, Part, int]  # slot, part, number
# dish (None: all that is left), course, what was said, and which slot cooks it (None: the clock of what is eaten)
ClockKey = tuple[str | None, str, ClockWarning, str | None]


@dataclass(frozen=True)
class StepState:
    """Where one slot stands. `put_off`: by part, no call of it comes before then. `looked_in`: look-ins settled.
    `stretched`: how much longer than the sheet says it takes."""

    status: Status = "to-come"
    started: datetime | None = None
    finished: datetime | None = None
    looked_in: int = 0
    put_off: Mapping[Part, datetime] = field(default_factory=lambda: MappingProxyType({}))
    stretched: timedelta = timedelta()

    @property
    def settled(self) -> bool:
        return self.status in ("finished", "left-out")

    def lasts(self, slot: Slot) -> timedelta:
        """How long that slot takes, as far as is known."""
        return slot.end - slot.start + self.stretched


TO_COME = StepState()


@dataclass(frozen=True, slots=True)
class Note:
    """Something the host wrote down."""

    n: int
    at: datetime
    text: str
    slot: str | None


@dataclass(frozen=True, slots=True)
class Reading:
    """What a probe showed in the middle of what a step made, °C."""

    n: int
    at: datetime
    slot: str
    celsius: float


@dataclass(frozen=True)
class State:
    """The evening. `raised` holds the calls that wait for an answer, with when each was raised."""

    sheet: RunSheet
    steps: Mapping[str, StepState]
    raised: Mapping[CallKey, datetime] = field(default_factory=lambda: MappingProxyType({}))
    pushed: Mapping[str, int] = field(default_factory=lambda: MappingProxyType({}))  # course → minutes
    notes: tuple[Note, ...] = ()
    readings: tuple[Reading, ...] = ()
    warned: Mapping[str, datetime] = field(
        default_factory=lambda: MappingProxyType({})
    )  # slot → that it keeps no longer
    unread: tuple[str, ...] = ()  # slots ended without the reading they want
    clock_warned: frozenset[ClockKey] = frozenset()
    put_away: Mapping[str, datetime] = field(
        default_factory=lambda: MappingProxyType({})
    )  # course → when the host said that what was left of it is in the cold
    stops_accepted: tuple[Stop | str, ...] = ()
    history: tuple[Event, ...] = ()  # what counts: neither taken back nor a taking back
    last_n: int = 0
    jumped: ClockJumped | None = None  # the last time the clock did
    closed: bool = False


T = TypeVar("T", "State", "StepState")


def replace(thing: T, **changes: Any) -> T:
    """Like `dataclasses.replace` in a tenth of its time: a long log is a thousand of these. Names are not checked."""
    new = object.__new__(type(thing))
    new.__dict__.update(thing.__dict__, **changes)
    return new


def begin(sheet: RunSheet) -> State:
    """Before anything has happened."""
    return State(sheet, MappingProxyType(dict.fromkeys((slot.id for slot in sheet.slots), TO_COME)))
