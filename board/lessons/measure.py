"""A run log → what was planned and what happened, side by side. Pure."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from board.run.events import CallRaised, CoursePushed, EveningOpened, Event, StepFinished, StepStarted
from board.run.fold import fold_all
from board.run.state import Note, State, begin
from board.timetable.run_sheet import Slot


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
class CourseReview:
    """One course: wanted, planned, pushed by the host, and when it was on the table."""

    name: str
    wanted: datetime
    planned: datetime
    served: datetime | None
    pushed: int

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

    def ran_over(self, least: int = 1) -> list[StepReview]:
        """Steps that took longer than planned, the longest overrun first."""
        over = [s for s in self.steps if s.ran_over is not None and s.ran_over >= least and s.slot.kind != "arrive"]
        return sorted(over, key=lambda s: -(s.ran_over or 0))

    def left_out(self) -> list[StepReview]:
        return [s for s in self.steps if s.status == "left-out"]

    def not_reached(self) -> list[StepReview]:
        return [s for s in self.steps if s.status in ("to-come", "under-way")]


def review(opened: EveningOpened, events: Sequence[Event]) -> Review:
    """The evening of a log. Times come from the log alone."""
    state = fold_all(begin(opened.sheet), [opened, *events])
    first_calls = _first_calls(state)
    planned = opened.sheet.by_id()  # as the evening began, whatever was worked out anew since
    steps = tuple(_step(state, planned.get(s.id, s), first_calls.get(s.id)) for s in state.sheet.slots)
    pushes = [e for e in state.history if isinstance(e, CoursePushed)]
    courses = tuple(
        CourseReview(
            name=c.name,
            wanted=c.wanted,
            planned=c.served,
            served=state.steps[c.serve].finished,
            pushed=sum(p.minutes for p in pushes if p.course == c.name),
        )
        for c in opened.sheet.courses
    )
    happened = [e.at for e in state.history if isinstance(e, StepStarted | StepFinished)]
    return Review(
        plan=opened.sheet.plan,
        zone=opened.sheet.zone,
        rehearsal=opened.rehearsal,
        began=min(happened, default=opened.at),
        ended=max(happened, default=opened.at),
        closed=state.closed,
        courses=courses,
        steps=steps,
        notes=state.notes,
    )


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
        late = round((step.started - called) / timedelta(minutes=1))
    return StepReview(slot, step.status, step.started, step.finished, late)
