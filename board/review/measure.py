"""A run log → what was planned and what happened, side by side. Pure."""

from dataclasses import dataclass
from datetime import datetime, timedelta

from board.evening.events import (
    SLIPS,
    CallRaised,
    CoursePushed,
    DishDropped,
    EveningOpened,
    GuestsDelayed,
    StepFinished,
    StepStarted,
    StepStretched,
)
from board.evening.readings import lacks
from board.evening.state import Note, State
from board.review.leftovers import LeftReview, not_told, put_away
from board.sheet.run_sheet import CourseSlot, Slot
from board.sheet.told import Stop

HAPPENED = (StepStarted, StepFinished)
MINUTE = timedelta(minutes=1)


@dataclass(frozen=True, slots=True)
class StepReview:
    """One slot. Moments in UTC; None where it did not come to that. Minutes are rounded to the nearest whole."""

    slot: Slot
    status: str
    started: datetime | None
    finished: datetime | None
    answered_late: int | None  # minutes from the call at its start to the answer

    @property
    def planned_minutes(self) -> int:
        return round((self.slot.end - self.slot.start).total_seconds() / 60)

    @property
    def actual_minutes(self) -> int | None:
        if self.started is None or self.finished is None:
            return None
        return round((self.finished - self.started).total_seconds() / 60)

    @property
    def ran_over(self) -> int | None:
        """Minutes longer than planned; below zero when it was quicker."""
        actual = self.actual_minutes
        return None if actual is None else actual - self.planned_minutes


@dataclass(frozen=True, slots=True)
class KeptReview:
    """A result that stood: how long, how long it keeps at the most, and where."""

    slot: Slot
    stood_minutes: int
    limit_minutes: int
    where: str | None

    @property
    def share(self) -> float:
        """Of its limit; above 1 it stood too long."""
        return self.stood_minutes / max(1, self.limit_minutes)


@dataclass(frozen=True, slots=True)
class ReadingReview:
    """A probe in the core, °C, and by how much it fell short of what was wanted."""

    slot: Slot
    at: datetime
    celsius: float
    lacks: float


@dataclass(frozen=True, slots=True)
class CourseReview:
    """One course: wanted, planned, pushed by the host, and when it was on the table.

    `at_table` and `was_at_table` go from plating to clearing, as planned and as it was (not ended while it lasts).
    """

    name: str
    wanted: datetime
    planned: datetime
    served: datetime | None
    pushed: int
    at_table: tuple[datetime, datetime]
    was_at_table: tuple[datetime, datetime | None] | None

    @property
    def late_minutes(self) -> int | None:
        if self.served is None:
            return None
        return round((self.served - self.wanted).total_seconds() / 60)


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
    unread: tuple[StepReview, ...] = ()  # ended without the reading they want
    stops: tuple[Stop | str, ...] = ()  # read and accepted before the evening began
    slips: tuple[StepStretched | GuestsDelayed | DishDropped, ...] = ()  # told to the board, and not taken back
    put_away: tuple[LeftReview, ...] = ()  # what was left of courses, in the order it went into the cold
    not_told: tuple[str, ...] = ()  # courses of which nobody said when that was

    def ran_over(self, least: int = 1) -> list[StepReview]:
        """Steps that took longer than planned, the longest overrun first."""
        over = [s for s in self.steps if s.ran_over is not None and s.ran_over >= least and s.slot.kind != "arrive"]
        return sorted(over, key=lambda s: -(s.ran_over or 0))

    def kept_longest(self) -> list[KeptReview]:
        """What stood, the longest against its limit first."""
        return sorted((k for k in self.kept if k.stood_minutes), key=lambda k: -k.share)

    def left_out(self) -> list[StepReview]:
        return [s for s in self.steps if s.status == "left-out"]

    def not_reached(self) -> list[StepReview]:
        return [s for s in self.steps if s.status == "to-come"]

    def left_open(self) -> list[StepReview]:
        """Begun, and never told to be over."""
        return [s for s in self.steps if s.status == "under-way"]


def measured(state: State, opened: EveningOpened) -> Review:
    """The evening as it stands in a state, from what happened so far."""
    first_calls = _first_calls(state)
    slots = opened.sheet.by_id()  # as the evening began, whatever was worked out anew since
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
        )
        for c in opened.sheet.courses
    )
    return Review(
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
        unread=tuple(step for step in steps if step.slot.id in state.unread),
        stops=state.stops_accepted,
        slips=tuple(e for e in state.history if isinstance(e, SLIPS)),
        put_away=put_away(state),
        not_told=not_told(state),
    )


def _was_at_table(state: State, course: CourseSlot) -> tuple[datetime, datetime | None] | None:
    """From plating to clearing, while it lasts without an end; None while it is not plated."""
    began, cleared = state.steps[course.serve].started, state.steps[course.clear].finished
    return None if began is None else (began, max(began, cleared) if cleared else None)


def _kept(state: State, slot: Slot, ended: datetime) -> KeptReview | None:
    """How long a result stood: until the last that takes it up began, or to this moment while one has yet to."""
    finished = state.steps[slot.id].finished
    if slot.keeping is None or finished is None:
        return None
    takers = [state.steps[id_] for id_ in slot.then if id_ in state.steps and state.steps[id_].status != "left-out"]
    if not takers:
        return None
    until = max(taker.started or ended for taker in takers)
    stood = max(0, round((until - finished) / MINUTE))
    return KeptReview(slot, stood, slot.keeping.minutes, slot.keeping.where)


def _first_calls(state: State) -> dict[str, datetime]:
    """When each slot's start was first called."""
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
    return StepReview(slot, step.status, step.started, step.finished, late)
