"""How the evening stands: the fold of all its events. Frozen; never edited."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from types import MappingProxyType
from typing import Any, Literal, TypeVar

from board.evening.events import ClockJumped, ClockWarning, EveningOpened, Event, Part
from board.sheet.run_sheet import RunSheet, Slot
from board.sheet.told import Stop

Status = Literal["to-come", "under-way", "finished", "left-out"]
CallKey = tuple[str, Part, int]  # slot, part, number
# dish (None: all leftovers), course, warning, and the slot that cooks raw food (None: the clock of what is eaten)
ClockKey = tuple[str | None, str, ClockWarning, str | None]


@dataclass(frozen=True)
class StepState:
    """How one slot stands. `put_off`: by part, no call before then. `looked_in`: number of look-ins settled.
    `stretched`: time added to the sheet's length. `said`: its times are the host's word, given afterwards."""

    status: Status = "to-come"
    started: datetime | None = None
    finished: datetime | None = None
    looked_in: int = 0
    put_off: Mapping[Part, datetime] = field(default_factory=lambda: MappingProxyType({}))
    stretched: timedelta = timedelta()
    said: bool = False

    @property
    def settled(self) -> bool:
        return self.status in ("finished", "left-out")

    def lasts(self, slot: Slot) -> timedelta:
        """How long the slot takes, as far as is known."""
        return slot.end - slot.start + self.stretched


TO_COME = StepState()


@dataclass(frozen=True, slots=True)
class Note:
    """A note of the host's."""

    n: int
    at: datetime
    text: str
    slot: str | None


@dataclass(frozen=True, slots=True)
class Reading:
    """A probe reading in the middle of what a step makes, °C."""

    n: int
    at: datetime
    slot: str
    celsius: float


@dataclass(frozen=True)
class State:
    """The evening. `raised`: unanswered calls, and when each was raised."""

    sheet: RunSheet
    steps: Mapping[str, StepState]
    raised: Mapping[CallKey, datetime] = field(default_factory=lambda: MappingProxyType({}))
    pushed: Mapping[str, int] = field(default_factory=lambda: MappingProxyType({}))  # course → minutes
    notes: tuple[Note, ...] = ()
    readings: tuple[Reading, ...] = ()
    warned: Mapping[str, datetime] = field(
        default_factory=lambda: MappingProxyType({})
    )  # slot → when the board warned that its result will soon be past its best
    unread: tuple[str, ...] = ()  # slots ended without the reading they want
    clock_warned: frozenset[ClockKey] = frozenset()
    put_away: Mapping[str, datetime] = field(
        default_factory=lambda: MappingProxyType({})
    )  # course → when the host said its leftovers are in the cold
    stops_accepted: tuple[Stop | str, ...] = ()
    history: tuple[Event, ...] = ()  # what counts: neither events taken back nor the taking back
    last_n: int = 0
    jumped: ClockJumped | None = None  # the last jump of the clock
    closed: bool = False


T = TypeVar("T", "State", "StepState")


def replace(thing: T, **changes: Any) -> T:
    """Like `dataclasses.replace`, ten times as fast: a long log needs a thousand. Names are not checked."""
    new = object.__new__(type(thing))
    new.__dict__.update(thing.__dict__, **changes)
    return new


def first_sheet(history: Iterable[Event], now: RunSheet) -> RunSheet:
    """The one the evening began with, whatever it goes by now."""
    opened = next((event for event in history if isinstance(event, EveningOpened)), None)
    return opened.sheet if opened is not None else now


def begin(sheet: RunSheet) -> State:
    """The state before anything has happened."""
    return State(sheet, MappingProxyType(dict.fromkeys((slot.id for slot in sheet.slots), TO_COME)))
