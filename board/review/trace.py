"""What made each course late, from the times in the log: back along the waits to the first cause. Pure.

The walk begins at the serving. A step began late because a predecessor was late, its call was answered late, or the
host put it off; it ended late because it took longer, or because its end was answered late. The walk notes the delays a
step added, goes on with the predecessor that let it start last, and stops at a step that began on time.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Literal

from board.base.late import minutes_late
from board.evening.company import away_as_it_was
from board.evening.events import (
    CallPutOff,
    CallRaised,
    GuestsDelayed,
    ReadingTaken,
    SheetTaken,
    StepStretched,
)
from board.evening.state import State, first_sheet
from board.review.one_clock import by_one_clock
from board.sheet.company import as_planned
from board.sheet.run_sheet import CourseSlot, Slot

Why = Literal["began late", "took longer", "answered late", "guests", "taken"]
LATE_MINUTES = 1  # below this it is not a delay; our choice
MINUTE = timedelta(minutes=1)


@dataclass(frozen=True, slots=True)
class Link:
    """One step on the way to a late course, and the minutes of delay it added itself. `taken`: of its serving, that the
    timetable which was taken had it so much later than wanted, for what had gone wrong till then."""

    slot: Slot
    why: Why
    minutes: int


@dataclass(frozen=True, slots=True)
class Traced:
    """A late course: the links from its first cause to its serving."""

    course: str
    late_minutes: int
    links: tuple[Link, ...]

    @property
    def first(self) -> Link | None:
        """The first cause; None if the log shows none."""
        return self.links[0] if self.links else None


@dataclass(frozen=True, slots=True)
class Answer:
    """A call answered late: from call to answer, by one clock."""

    slot: Slot
    part: str
    minutes: int
    called: datetime
    answered: datetime


def answered_late(state: State, least: int = 2) -> list[Answer]:
    """Calls at a start or an end that waited at least `least` minutes, the longest first. A clock set by hand changes
    nothing.

    Putting the call off, saying that it is not ready, and saying that the guests are late are answers too.
    """
    at, slots = by_one_clock(state.history), state.sheet.by_id()
    found: dict[tuple[str, str], Answer] = {}
    said = _said(state, at)
    for event in state.history:
        if not isinstance(event, CallRaised) or event.part == "look-in" or event.slot not in slots:
            continue
        step = state.steps[event.slot]
        moment = step.started if event.part == "start" else step.finished
        if moment is None or step.said or (event.slot, event.part) in found:
            continue
        moment = min([moment, *(m for m in said.get(event.slot, ()) if m >= at[event.n])])
        minutes = round((moment - at[event.n]) / MINUTE)
        if minutes >= least:
            found[event.slot, event.part] = Answer(slots[event.slot], event.part, minutes, at[event.n], moment)
    return sorted(found.values(), key=lambda each: -each.minutes)


def _said(state: State, at: dict[int, datetime]) -> dict[str, list[datetime]]:
    """When the host gave an answer other than done, by slot id."""
    found: dict[str, list[datetime]] = {}
    for event in state.history:
        slots: tuple[str, ...] = ()
        if isinstance(event, StepStretched | GuestsDelayed):
            slots = event.slots
        elif isinstance(event, CallPutOff | ReadingTaken):
            slots = (event.slot,)
        for slot in slots:
            found.setdefault(slot, []).append(at[event.n])
    return found


def traced(state: State) -> list[Traced]:
    """Each course that was served late, in the order of the sheet."""
    found = []
    for course in state.sheet.courses:
        served = state.steps[course.serve].finished
        late = minutes_late(served, course.wanted) if served is not None else 0
        if late >= LATE_MINUTES:
            links = [*_back(state, course), *_when_taken(state, course)]
            found.append(Traced(course.name, late, tuple(reversed(links))))
    return found


def _when_taken(state: State, course: CourseSlot) -> list[Link]:
    """How late the last timetable that was taken had it: before it, another is what the walk would have to go by."""
    taken = next((e.sheet for e in reversed(state.history) if isinstance(e, SheetTaken)), None)
    planned = next((c for c in taken.courses if c.name == course.name), None) if taken is not None else None
    late = minutes_late(planned.served, planned.wanted) if planned is not None else 0
    return [Link(state.sheet.by_id()[course.serve], "taken", late)] if late >= LATE_MINUTES else []


def _back(state: State, course: CourseSlot) -> list[Link]:
    """The links from the serving back to the first cause."""
    slots, at = state.sheet.by_id(), by_one_clock(state.history)
    called = {
        e.slot: at[e.n] for e in reversed(state.history) if isinstance(e, CallRaised) and e.part == "start"
    }  # the first call of each
    late_ends = {a.slot.id: a.minutes for a in answered_late(state, LATE_MINUTES) if a.part == "end"}
    links: list[Link] = []
    here: Slot | None = slots[course.serve]
    seen: set[str] = set()
    while here is not None and here.id not in seen:
        seen.add(here.id)
        step = state.steps[here.id]
        if step.started is None:
            break
        over = round(((step.finished or step.started) - step.started - (here.end - here.start)) / MINUTE)
        if here.kind not in ("arrive", "serve", "clear"):
            unheard = min(over, late_ends.get(here.id, 0))
            if unheard >= LATE_MINUTES:
                links.append(Link(here, "answered late", unheard))
            if over - unheard >= LATE_MINUTES:
                links.append(Link(here, "took longer", over - unheard))
        began_late = minutes_late(step.started, here.start)
        if began_late < LATE_MINUTES:
            break
        waited_for, free = _last_wait(state, here)
        waited = round((step.started - max(here.start, free or here.start, called.get(here.id, here.start))) / MINUTE)
        if waited >= LATE_MINUTES:
            links.append(Link(here, _why_waited(state, here, called), waited))
        elif here.kind == "arrive":
            links.append(Link(here, "guests", began_late))
        held = free is not None and free > here.start
        here = slots.get(waited_for) if waited_for is not None and held else None
    return links


def _why_waited(state: State, slot: Slot, called: Mapping[str, datetime]) -> Why:
    """The reason a start waited: guests reported late or sitting long, a call put off, or a call that nobody
    answered."""
    if slot.kind == "arrive" or any(isinstance(e, GuestsDelayed) and slot.id in e.slots for e in state.history):
        return "guests"
    put_off = any(isinstance(e, CallPutOff) and e.slot == slot.id and e.part == "start" for e in state.history)
    return "answered late" if slot.id in called and not put_off else "began late"


def _last_wait(state: State, slot: Slot) -> tuple[str | None, datetime | None]:
    """The predecessor that let a slot start last, and when; None and None if there is none."""
    found: tuple[str | None, datetime | None] = (None, None)
    for wait in slot.waits:
        other = state.steps.get(wait.after)
        moment = None if other is None else other.finished if wait.anchor == "end" else other.started
        if moment is None:
            continue
        free = moment + timedelta(minutes=wait.minutes)
        if found[1] is None or free > found[1]:
            found = wait.after, free
    return found


def away_planned_and_actual(state: State) -> tuple[dict[str, int], dict[str, int]]:
    """Minutes in the kitchen while guests were there, of each who sits: by the first sheet, and as it went."""
    return as_planned(first_sheet(state.history, state.sheet)), away_as_it_was(state)
