"""What a run sheet tells beside its times, as codes and what they are about: what it gives up and why, what must be
mended, cautions, plates, an oven's turn. `said` has the words.

Sheets once held sentences. Where a plain string stands in place of one of these, it is such a sentence out of an older
run log, and is shown as it stands. Slots are named by their ids; moments are aware, in UTC.
"""

from datetime import datetime
from typing import Annotated, Literal

import msgspec

from board.plan.snag import THE_PLAN, About

Moment = Annotated[datetime, msgspec.Meta(tz=True)]  # aware; what is read back from a file without a zone is refused


class _Told(msgspec.Struct, frozen=True, gc=False, tag_field="code"):
    """One of several, told apart by its code."""


# --- what could not be had ------------------------------------------------------------------------------------
class OverHours(_Told, frozen=True, gc=False, tag="over-hours"):
    """A slot outside the hours that were given."""

    slot: str
    start: Moment
    end: Moment


class Late(_Told, frozen=True, gc=False, tag="late"):
    """A course that goes out so many minutes late."""

    course: str
    minutes: int


class NotReady(_Told, frozen=True, gc=False, tag="not-ready"):
    """A slot that is not over when the next begins."""

    slot: str
    following: str


class WaitsPast(_Told, frozen=True, gc=False, tag="waits-past"):
    """A slot that begins so many minutes after another, and should have begun within fewer."""

    slot: str
    following: str
    waits: int
    most: int


class NoPlace(_Told, frozen=True, gc=False, tag="no-place"):
    """What a slot made stands so many minutes without the place it should be kept in."""

    slot: str
    following: str
    stands: int
    where: str


class PastLimit(_Told, frozen=True, gc=False, tag="past-limit"):
    """What a slot made stands so many minutes until the next, and keeps fewer."""

    slot: str
    following: str
    stands: int
    limit: int
    where: str


class PastClock(_Told, frozen=True, gc=False, tag="past-clock"):
    """A dish that stands neither hot nor cold enough for so many minutes until it is eaten, and may for fewer."""

    dish: str
    course: str
    stands: int
    limit: int


What = OverHours | Late | PastClock | NotReady | WaitsPast | NoPlace | PastLimit


# --- what is not proved -----------------------------------------------------------------------------------------
class StillOpen(msgspec.Struct, frozen=True, gc=False):
    """An aim, by its name in the solution, that may be bettered by so many minutes; None: it was not looked into."""

    aim: str
    by: int | None = None


# --- and why --------------------------------------------------------------------------------------------------
Reason = Literal["not-its-time", "no-hours-left", "nobody-home"]


class Because(_Told, frozen=True, gc=False, tag="because"):
    """It does not fit into its own time, no free hands have hours for it, or something hot would run alone."""

    reason: Reason


class Held(msgspec.Struct, frozen=True, gc=False):
    """A link of a chain: it waits for that slot until then; `reason` as of a `Dependency`."""

    after: str
    until: Moment
    reason: str


class Chain(_Told, frozen=True, gc=False, tag="chain"):
    """What holds it, from itself back. At the far end, `hours_begin`: the hours given begin only then; `own_time`: so
    does the time that it was given itself."""

    links: tuple[Held, ...]
    hours_begin: bool = False
    own_time: bool = False


class TakenUp(_Told, frozen=True, gc=False, tag="taken-up"):
    """It is taken up only then, by that slot."""

    slot: str
    at: Moment


class Longest(_Told, frozen=True, gc=False, tag="longest"):
    """The longest of what adds up: while a slot lasts, what it made kept after it, or at the table after a serving."""

    slot: str
    kind: Literal["during", "kept", "table"]
    minutes: int


class Taker(msgspec.Struct, frozen=True, gc=False):
    """A slot, or what it made while that is `kept`, that takes something: from when to when (None: for no time), how
    much of it, or which settings of an oven it bears (°C; `off`: switched off)."""

    slot: str
    kept: bool
    start: Moment | None = None
    end: Moment | None = None
    amount: float | None = None
    low: int | None = None
    high: int | None = None
    off: bool = False


class FightForThing(_Told, frozen=True, gc=False, tag="thing"):
    """More is wanted of something than there is: rings, litres of a fridge, tools."""

    thing: str
    there_is: float
    takers: tuple[Taker, ...]


class FightForHands(_Told, frozen=True, gc=False, tag="hands", omit_defaults=True):
    """More is to be done than so many people can; where it is one thing, no free hours of theirs suit it. `names`: who
    they are, where they are not all there are; a line without them is as it was before there were any."""

    people: int
    takers: tuple[Taker, ...]
    names: tuple[str, ...] = ()


class FightForOven(_Told, frozen=True, gc=False, tag="oven"):
    """An oven, or any (None), cannot take all of it. `shelves`: there are so many, where one setting would do."""

    oven: str | None
    shelves: int | None
    takers: tuple[Taker, ...]


Fight = FightForThing | FightForHands | FightForOven


class Fights(_Told, frozen=True, gc=False, tag="clash"):
    """What is fought over by the fewest slots that cannot all have it."""

    over: tuple[Fight, ...]


Cause = Because | Chain | TakenUp | Longest | Fights


class Causes(_Told, frozen=True, gc=False, tag="causes"):
    """Several, each of which is enough by itself; or time, and what comes on top of it."""

    each: tuple[Cause, ...]


Why = Cause | Causes


class GivenUp(msgspec.Struct, frozen=True, gc=False):
    """Something that could not be had, why, and by how many minutes."""

    what: What | str
    why: Why | str
    minutes: int


# --- what must be known -----------------------------------------------------------------------------------------
class Stop(msgspec.Struct, frozen=True, gc=False):
    """A finding that must be mended before anybody eats: its code (of `plan.findings`), what the check said of it when
    it was shown, and what it is about, which sheets did not always hold."""

    finding: str
    message: str
    about: About = THE_PLAN


def which(stop: Stop | str) -> tuple[str, About] | str:
    """What tells a stop from others, however the check words it."""
    return stop if isinstance(stop, str) else (stop.finding, stop.about)


class Caution(msgspec.Struct, frozen=True, gc=False):
    """One danger, and what in the plan it is about, in the plan's words (unsafe for a terminal as they are)."""

    topic: str
    about: tuple[str, ...]


class Plate(msgspec.Struct, frozen=True, gc=False):
    """A guest whose plate is different at a course, with what they said of themselves: the dishes made for them, those
    they are not served, and those to be asked about before."""

    guest: str
    needs: tuple[str, ...]
    own: tuple[str, ...] = ()
    never: tuple[str, ...] = ()
    asked: tuple[str, ...] = ()


# --- what an oven is to do --------------------------------------------------------------------------------------
OFF = 0  # °C of a dial that is turned off


class DialTurn(msgspec.Struct, frozen=True, gc=False):
    """The dial of an oven, or of the rings, is turned to so many °C, from what it was (None: from cold), and the door
    left `ajar`; `OFF`: it is switched off.
    `fahrenheit`: °F is told first; `as_written`: and the plan is written in what is told first."""

    oven: str
    celsius: int
    before: int | None = None
    ajar: bool = False
    fahrenheit: bool = False
    as_written: bool = True


class OvenOff(msgspec.Struct, frozen=True, gc=False):
    """An oven is switched off, and all stays inside."""

    oven: str
    ajar: bool
