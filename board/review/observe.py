"""A run log → how long each step really took, and which times are set aside because they say nothing. Pure.

Minutes run from the answer at a step's start to the answer at its end, all by the same clock. If the call at the end
waited while the hands that should answer it were on other work, that time is taken off: the food was ready, but nobody
was free. Nothing is taken off if the host had said that it was not ready. A call that went by unheard says nothing of
the length.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from functools import cached_property
from typing import Literal

from board.base.late import minutes_late
from board.evening.events import (
    BoardReopened,
    CallPutOff,
    CallRaised,
    ClockJumped,
    EveningOpened,
    Event,
    GuestsDelayed,
    ReadingTaken,
    StepFinished,
    StepStretched,
)
from board.evening.fold import fold_all
from board.evening.state import State, StepState, begin
from board.review.came import came
from board.review.kinds import Key, key_of_sitting, key_of_slot, sitting_label
from board.review.next_time import MISSED_MINUTES
from board.review.one_clock import by_one_clock
from board.review.trace import answered_late
from board.sheet.company import host_of
from board.sheet.run_sheet import Lasts, RunSheet, Slot, Use
from board.sheet.sittings import sitting

Aside = Literal["forgotten", "interrupted", "cold-oven", "untimed", "unheard"]
# A step that took this many times its high estimate, its last call unanswered, was left open by mistake; our choice.
FORGOTTEN_TIMES = 3
MINUTE = timedelta(minutes=1)


@dataclass(frozen=True, slots=True)
class Observed:
    """One step on one evening. `planned`: its length in that evening's plan; `aside`: why this time does not count."""

    key: Key
    name: str
    minutes: float
    planned: Lasts
    aside: Aside | None = None


@dataclass(frozen=True, slots=True)
class OvenTurn:
    """One change of an oven's setting, from `before` to `after` in °C, and the minutes it took."""

    oven: str
    before: int
    after: int
    ajar: bool
    minutes: float
    aside: Aside | None = None


@dataclass(frozen=True, slots=True)
class Noted:
    """One of the host's notes: about a step or job (`key`), about serving or clearing a `course`, or about the evening.
    `name`: what it is about, in the plan's words."""

    text: str
    name: str = ""
    key: Key | None = None
    course: str | None = None


@dataclass(frozen=True)
class PastEvening:
    """What one log says. `mark` identifies the log by its first line, whatever its file name. `sits`: how long the
    guests sat over each course, from serving to clearing; courses eaten standing are missing."""

    mark: str
    plan: str
    date: str
    rehearsal: bool
    steps: tuple[Observed, ...]
    turns: tuple[OvenTurn, ...]
    sits: tuple[Observed, ...] = ()
    notes: tuple[Noted, ...] = ()
    decided: tuple[tuple[Key, str, bool], ...] = ()  # a step, what it asks, and whether the answer was yes
    said: tuple[Key, ...] = ()  # steps whose times the host only said afterwards
    late: tuple[tuple[str, int], ...] = ()  # served courses, and the minutes from wanted to served
    came: tuple[tuple[str, int], ...] = ()  # as `came.came` gives it


def observe(opened: EveningOpened, events: Sequence[Event], mark: str = "") -> PastEvening:
    """The evening in the log of that mark. Answers that were undone, and steps that did not finish, are left out.
    Raises nothing."""
    state = fold_all(begin(opened.sheet), [opened, *events])
    told = _Told(state)
    timed = list(_timed(told))
    return PastEvening(
        mark=mark,
        plan=opened.sheet.plan,
        date=opened.sheet.date,
        rehearsal=opened.rehearsal,
        steps=tuple(
            Observed(key_of_slot(slot), slot.name, minutes, slot.lasts, aside)
            for slot, minutes, aside in timed
            if slot.kind in ("step", "job") and slot.lasts is not None
        ),
        turns=tuple(
            OvenTurn(use.what, use.before, use.celsius, use.ajar, _by_the_law(slot, minutes), aside)
            for slot, minutes, aside in timed
            for use in _turned(slot)
            if use.before is not None and use.celsius is not None
        ),
        sits=tuple(_sat(told)),
        notes=tuple(_noted(told)),
        said=tuple(
            key_of_slot(slot) for slot in opened.sheet.slots if slot.id in state.steps and state.steps[slot.id].said
        ),
        decided=tuple(
            (key_of_slot(slot), slot.decide, state.steps[slot.id].started is not None)
            for slot in state.sheet.slots
            if slot.decide and (state.steps[slot.id].started is not None or state.steps[slot.id].status == "left-out")
        ),
        late=tuple(
            (course.name, minutes_late(served, course.wanted))
            for course in state.sheet.courses
            if not (serving := state.steps[course.serve]).said and (served := serving.finished) is not None
        ),
        came=tuple(came(state)),
    )


@dataclass(frozen=True)
class _Told:
    state: State
    at: dict[int, datetime] = field(init=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "at", by_one_clock(self.state.history))

    @property
    def sheet(self) -> RunSheet:
        return self.state.sheet

    @cached_property
    def by_slot(self) -> dict[str, list[Event]]:
        """The calls and answers about each slot, oldest first."""
        found: dict[str, list[Event]] = {}
        for event in self.state.history:
            slots = event.slots if isinstance(event, StepStretched) else (getattr(event, "slot", None),)
            for slot in slots:
                if slot is not None:
                    found.setdefault(slot, []).append(event)
        return found

    @cached_property
    def breaks(self) -> list[datetime]:
        """When the board came back after sleep or after being closed."""
        return [
            self.at[event.n]
            for event in self.state.history
            if isinstance(event, BoardReopened) or (isinstance(event, ClockJumped) and event.slept)
        ]

    @cached_property
    def hands_on(self) -> list[tuple[str, str, datetime, datetime]]:
        """Slot, person, start and end of work that kept a person's hands busy from start to end."""
        return [
            (slot.id, part.who, step.started, step.finished)
            for slot in self.sheet.slots
            for part in slot.attended
            if part.kind == "all"
            and (step := self.state.steps[slot.id]).started is not None
            and step.finished is not None
        ]

    def busy(self, who: str, since: datetime, until: datetime, but: str) -> timedelta:
        """How long a person's hands were on work between two moments, leaving out the slot `but`."""
        spans = sorted(
            (max(begun, since), min(over, until))
            for id_, person, begun, over in self.hands_on
            if id_ != but and person == who and begun < until and over > since
        )
        busy, reached = timedelta(), since
        for begun, over in spans:
            busy += max(timedelta(), over - max(begun, reached))
            reached = max(reached, over)
        return busy

    @cached_property
    def unheard(self) -> dict[str, int]:
        """Minutes for which the call at a slot's end went by unheard, and nobody was at it."""
        late = answered_late(self.state, MISSED_MINUTES)
        return {each.slot.id: each.minutes for each in late if each.part == "end" and not each.slot.whole}

    @cached_property
    def host(self) -> str:
        return host_of(self.sheet)


def _timed(told: _Told) -> Iterator[tuple[Slot, float, Aside | None]]:
    for slot in told.sheet.slots:
        step = told.state.steps[slot.id]
        if step.said or slot.end == slot.start or step.started is None or step.finished is None:
            continue
        about = told.by_slot.get(slot.id, [])
        if any(isinstance(event, StepFinished) and event.by_itself for event in about):
            continue  # ended by the plan, not by an answer
        called = _first_call_at_end(told, about, step.started)
        elsewhere = _hands_elsewhere(told, slot, step, called, about)
        minutes = (step.finished - step.started - elsewhere) / MINUTE
        aside = _aside(told, slot, step, called, about, minutes)
        if aside is None and told.unheard.get(slot.id, 0) - elsewhere / MINUTE >= MISSED_MINUTES:
            aside = "unheard"
        yield slot, minutes, aside


def _noted(told: _Told) -> Iterator[Noted]:
    slots = told.sheet.by_id()
    for note in told.state.notes:
        slot = slots.get(note.slot) if note.slot is not None else None
        if slot is None:
            yield Noted(note.text)
        elif slot.kind in ("step", "job"):
            yield Noted(note.text, slot.name, key=key_of_slot(slot))
        else:
            yield Noted(note.text, slot.name, course=slot.course)


def _sat(told: _Told) -> Iterator[Observed]:
    """How long the guests sat over each course, from serving to clearing. Minutes they did not ask for are taken off:
    the delay of the clearing's call beyond the planned sitting (unless the guests were reported to sit long), and the
    time after that call when the hands for it were on other work. A clearing answered with one key was over by then, so
    its planned length is taken off too."""
    slots = told.sheet.by_id()
    for course in told.sheet.courses:
        clear, step = slots[course.clear], told.state.steps[course.clear]
        served = told.state.steps[course.serve].finished
        if step.said or told.state.steps[course.serve].said:
            continue
        if course.standing or served is None or step.status != "finished" or step.started is None:
            continue
        planned, said = sitting(told.sheet, course), _said_to_sit(told, course.name)
        cleared = step.started
        if step.finished == step.started:
            cleared -= clear.end - clear.start
        ready = served + planned.likely * MINUTE
        called = max(ready, clear.start if said else _first_call(told, clear.id, "start") or clear.start)
        off = timedelta() if said else min(called, cleared) - ready
        who = next((part.who for part in clear.attended), told.host)
        off += told.busy(who, called, cleared, but=clear.id)
        minutes = (cleared - served - max(timedelta(), off)) / MINUTE
        aside: Aside | None = None
        if minutes <= 0:
            aside = "untimed"
        elif minutes > planned.high and any(served < moment <= step.started for moment in told.breaks):
            aside = "interrupted"
        elif minutes > FORGOTTEN_TIMES * planned.high and not said:
            aside = "forgotten"
        yield Observed(key_of_sitting(course.name), sitting_label(course.name), minutes, planned, aside)


def _said_to_sit(told: _Told, course: str) -> bool:
    return any(isinstance(event, GuestsDelayed) and event.course == course for event in told.state.history)


def _first_call_at_end(told: _Told, about: list[Event], started: datetime) -> datetime | None:
    moments = (told.at[e.n] for e in about if isinstance(e, CallRaised) and e.part == "end")
    return next((moment for moment in moments if moment >= started), None)


def _first_call(told: _Told, slot: str, part: str) -> datetime | None:
    about = told.by_slot.get(slot, [])
    return next((told.at[e.n] for e in about if isinstance(e, CallRaised) and e.part == part), None)


def _said_not_ready(told: _Told, about: list[Event], called: datetime) -> bool:
    said = (CallPutOff, StepStretched, ReadingTaken)
    return any(isinstance(event, said) and told.at[event.n] >= called for event in about)


def _hands_elsewhere(
    told: _Told, slot: Slot, step: StepState, called: datetime | None, about: list[Event]
) -> timedelta:
    """How long the call at a step's end waited while the hands for it were on other work."""
    assert step.finished is not None
    if called is None or slot.whole or _said_not_ready(told, about, called):
        return timedelta()
    who = next((part.who for part in slot.attended if part.kind == "end"), told.host)
    return told.busy(who, called, step.finished, but=slot.id)


def _aside(
    told: _Told, slot: Slot, step: StepState, called: datetime | None, about: list[Event], minutes: float
) -> Aside | None:
    assert step.started is not None
    assert step.finished is not None
    if minutes <= 0:
        return "untimed"
    if any(isinstance(event, StepStretched) and event.oven is not None for event in about):
        return "cold-oven"
    high = slot.lasts.high if slot.lasts is not None else (slot.end - slot.start) / MINUTE
    if minutes > high and any(step.started < moment <= step.finished for moment in told.breaks):
        return "interrupted"
    if minutes > FORGOTTEN_TIMES * high and called is not None and not _said_not_ready(told, about, called):
        return "forgotten"
    return None


def _by_the_law(slot: Slot, minutes: float) -> float:
    """Minutes of an oven's turn. If it ended in the very minute of its call, half a minute is taken off: the timetable
    rounds up, so it was over at some time in the minute before."""
    return minutes - 0.5 if abs(minutes - (slot.end - slot.start) / MINUTE) < 0.5 else minutes


def _turned(slot: Slot) -> tuple[Use, ...]:
    return slot.uses if slot.kind == "heat" else ()
