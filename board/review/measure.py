"""A run log → planned and actual times, side by side. Pure. Moments are UTC; minutes are rounded to the nearest
whole."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import zip_longest
from math import ceil

from board.base.late import minutes_late
from board.evening.events import (
    SLIPS,
    CallRaised,
    CoursePushed,
    DishDropped,
    EveningOpened,
    GuestsDelayed,
    OfferedCourse,
    OfferMade,
    SheetTaken,
    StepFinished,
    StepStarted,
    StepStretched,
)
from board.evening.gone_cold import ColdSpell, cold_spells
from board.evening.readings import lacks
from board.evening.state import Note, State
from board.review.leftovers import LeftReview, not_told, put_away
from board.sheet.left import left_over
from board.sheet.run_sheet import CourseSlot, Slot
from board.sheet.told import Stop

HAPPENED = (StepStarted, StepFinished)
MINUTE = timedelta(minutes=1)


@dataclass(frozen=True, slots=True)
class StepReview:
    """One slot as planned and as it went. A moment is None if the step did not get that far."""

    slot: Slot
    status: str
    started: datetime | None
    finished: datetime | None
    answered_late: int | None  # minutes from the call at its start to the answer
    said: bool = False  # its times are what the host said afterwards

    @property
    def planned_minutes(self) -> int:
        """Its length in the timetable."""
        return round((self.slot.end - self.slot.start).total_seconds() / 60)

    @property
    def actual_minutes(self) -> int | None:
        """From its start to its end; None until both are known."""
        if self.started is None or self.finished is None:
            return None
        return round((self.finished - self.started).total_seconds() / 60)

    @property
    def ran_over(self) -> int | None:
        """Minutes longer than planned, negative if it was quicker; None until it has ended."""
        actual = self.actual_minutes
        return None if actual is None else actual - self.planned_minutes


@dataclass(frozen=True, slots=True)
class KeptReview:
    """A result that stood: how long, its shelf life, and where."""

    slot: Slot
    stood_minutes: int
    limit_minutes: int
    where: str | None

    @property
    def over(self) -> bool:
        """Whether it stood beyond its limit."""
        return self.stood_minutes > self.limit_minutes

    @property
    def share(self) -> float:
        """Time stood as a share of the shelf life; above 1 it stood too long."""
        return self.stood_minutes / max(1, self.limit_minutes)


@dataclass(frozen=True, slots=True)
class ReadingReview:
    """A probe's reading in the core, in °C. `lacks`: how many °C it fell short."""

    slot: Slot
    at: datetime
    celsius: float
    lacks: float


@dataclass(frozen=True, slots=True)
class CourseReview:
    """One course: when it was wanted, planned and served, and by how many minutes the host pushed it.

    `at_table` and `was_at_table` run from plating to clearing, planned and actual; the actual end is None until it is
    cleared.
    """

    name: str
    wanted: datetime
    planned: datetime
    served: datetime | None
    pushed: int
    at_table: tuple[datetime, datetime]
    was_at_table: tuple[datetime, datetime | None] | None
    said: bool = False  # when it went out is what the host said afterwards, and nobody saw

    @property
    def late_minutes(self) -> int | None:
        """Minutes from wanted to served, negative if early; None until it is served, or where that was only said."""
        if self.served is None or self.said:
            return None
        return minutes_late(self.served, self.wanted)


@dataclass(frozen=True, slots=True)
class OfferReview:
    """A better timetable that the board offered: when, the courses it would move, minutes gained by kind of cost, and
    whether it was taken and stayed in use."""

    at: datetime
    courses: tuple[OfferedCourse, ...]
    gained: tuple[tuple[str, int], ...]
    taken: bool


@dataclass(frozen=True)
class Review:
    """One evening looked back on."""

    plan: str
    zone: str
    rehearsal: bool
    began: datetime
    ended: datetime
    closed: bool
    courses: tuple[CourseReview, ...]
    steps: tuple[StepReview, ...]
    notes: tuple[Note, ...]
    readings: tuple[ReadingReview, ...]
    kept: tuple[KeptReview, ...]
    fahrenheit: bool = False
    cold: tuple[ColdSpell, ...] = ()  # kept hot, and read too cold
    unread: tuple[StepReview, ...] = ()  # ended without the reading they need
    stops: tuple[Stop | str, ...] = ()  # read and accepted before the evening began
    slips: tuple[StepStretched | GuestsDelayed | DishDropped, ...] = ()  # reported to the board and not undone
    offers: tuple[OfferReview, ...] = ()
    put_away: tuple[LeftReview, ...] = ()  # leftovers, in the order they were put away
    left: tuple[str, ...] = ()  # what steps left over and is still good as the evening ends, in words
    not_told: tuple[str, ...] = ()  # courses whose leftovers nobody reported as put away

    def ran_over(self, least: int = 1) -> list[StepReview]:
        """Steps that took at least `least` minutes longer than planned, the longest overrun first."""
        over = [s for s in self.steps if s.ran_over is not None and s.ran_over >= least and s.slot.kind != "arrive"]
        return sorted(over, key=lambda s: -(s.ran_over or 0))

    def kept_longest(self) -> list[KeptReview]:
        """Results that stood, the one closest to or furthest beyond its shelf life first."""
        return sorted((k for k in self.kept if k.stood_minutes), key=lambda k: -k.share)

    def left_out(self) -> list[StepReview]:
        """Steps that the host left out before they were done; not those that a question left to them."""
        return [s for s in self.steps if s.status == "left-out" and s.finished is None and not s.slot.decide]

    def decided(self) -> list[tuple[str, bool]]:
        """Each question that was answered, and whether with a yes."""
        answered = (s for s in self.steps if s.slot.decide and (s.started is not None or s.status == "left-out"))
        return [(s.slot.decide, s.started is not None) for s in answered]

    def not_reached(self) -> list[StepReview]:
        """Steps that never began."""
        return [s for s in self.steps if s.status == "to-come"]

    def left_open(self) -> list[StepReview]:
        """Steps that began and were never reported as done."""
        return [s for s in self.steps if s.status == "under-way"]


def measured(state: State, opened: EveningOpened) -> Review:
    """The review of an evening in this state, finished or not. `opened` holds the sheet it began with."""
    first_calls = _first_calls(state)
    slots = opened.sheet.by_id()  # as the evening began, before any new timetable
    steps = tuple(_step(state, slots.get(s.id, s), first_calls.get(s.id)) for s in state.sheet.slots)
    pushes = [e for e in state.history if isinstance(e, CoursePushed)]
    happened = [e.at for e in state.history if isinstance(e, HAPPENED)]
    ended = max(happened, default=opened.at)
    courses = tuple(
        CourseReview(
            name=c.name,
            wanted=c.wanted,
            planned=c.served,
            served=state.steps[c.serve].finished,
            pushed=sum(p.minutes for p in pushes if p.course == c.name),
            at_table=(slots[c.serve].start, slots[c.clear].end),
            was_at_table=_was_at_table(state, c),
            said=state.steps[c.serve].said,
        )
        for c in opened.sheet.courses
    )
    return Review(
        left=tuple(_left(state, ended)),
        plan=opened.sheet.plan,
        zone=opened.sheet.zone,
        rehearsal=opened.rehearsal,
        began=min(happened, default=opened.at),
        ended=ended,
        closed=state.closed,
        courses=courses,
        steps=steps,
        notes=state.notes,
        readings=tuple(
            ReadingReview(slots[r.slot], r.at, r.celsius, lacks(slots[r.slot], r.celsius))
            for r in state.readings
            if r.slot in slots
        ),
        kept=tuple(found for slot in state.sheet.slots if (found := _kept(state, slot, ended)) is not None),
        fahrenheit=opened.sheet.fahrenheit,
        cold=tuple(cold_spells(state)),
        unread=tuple(step for step in steps if step.slot.id in state.unread),
        stops=state.stops_accepted,
        slips=tuple(e for e in state.history if isinstance(e, SLIPS)),
        offers=tuple(_offers(state)),
        put_away=put_away(state),
        not_told=not_told(state),
    )


def _offers(state: State) -> Iterator[OfferReview]:
    """A timetable that is taken is the one offered last."""
    told = [event for event in state.history if isinstance(event, OfferMade | SheetTaken)]
    for event, after in zip_longest(told, told[1:]):
        if isinstance(event, OfferMade):
            yield OfferReview(event.at, event.courses, event.gained, isinstance(after, SheetTaken))


def _was_at_table(state: State, course: CourseSlot) -> tuple[datetime, datetime | None] | None:
    """From plating to clearing; the end is None until it is cleared. None if it was not plated."""
    began, cleared = state.steps[course.serve].started, state.steps[course.clear].finished
    return None if began is None else (began, max(began, cleared) if cleared else None)


def _kept(state: State, slot: Slot, ended: datetime) -> KeptReview | None:
    """How long a result stood: until its last successor began, or until `ended` if one has not begun yet."""
    finished = state.steps[slot.id].finished
    if slot.keeping is None or finished is None:
        return None
    takers = [state.steps[id_] for id_ in slot.then if id_ in state.steps and state.steps[id_].status != "left-out"]
    if not takers:
        return None
    until = max(taker.started or ended for taker in takers)
    stood = max(0, ceil(round((until - finished) / MINUTE, 3)))  # a second past a limit is past it, as on the board
    return KeptReview(slot, stood, slot.keeping.minutes, slot.keeping.where)


def _left(state: State, ended: datetime) -> Iterator[str]:
    for left in state.sheet.left:
        since = state.steps[left.slot].finished
        if since is not None and left.use_by(since) > ended:
            yield left_over(state.sheet, left, since)


def _first_calls(state: State) -> dict[str, datetime]:
    """When each slot's start was first called, by slot id."""
    found: dict[str, datetime] = {}
    for event in state.history:
        if isinstance(event, CallRaised) and event.part == "start":
            found.setdefault(event.slot, event.at)
    return found


def _step(state: State, slot: Slot, called: datetime | None) -> StepReview:
    step = state.steps[slot.id]
    late = None
    if called is not None and step.started is not None and step.started >= called:
        late = round((step.started - called) / MINUTE)
    return StepReview(slot, step.status, step.started, step.finished, None if step.said else late, step.said)
