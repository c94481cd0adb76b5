"""Looking back while the evening runs: what happened, line by line, and how every step stands. Pure.

All texts are single lines and safe for a terminal.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import assert_never

from board.base import words as shared
from board.base.plain import one_line
from board.evening.calls import Call
from board.evening.events import (
    BoardReopened,
    CallPutOff,
    CallRaised,
    ClockJumped,
    ClockWarned,
    CoursePushed,
    DishDropped,
    EveningClosed,
    EveningOpened,
    Event,
    GuestsDelayed,
    KeepingWarned,
    LeftoversPutAway,
    LookedIn,
    NightDrawn,
    NoteWritten,
    OfferMade,
    ReadingSkipped,
    ReadingTaken,
    SheetTaken,
    StepFinished,
    StepLeftOut,
    StepsSaid,
    StepStarted,
    StepStretched,
    StopsAccepted,
    TakenBack,
    is_answer,
)
from board.evening.readings import last_reading
from board.view import words
from board.view.board import Viewer, headline
from board.view.offer import what_it_brings
from board.view.present import Present
from board.view.reading import cooling_words, reading_words
from board.view.slipped import slip_words

LONGEST_NAME = 60


@dataclass(frozen=True, slots=True)
class Told:
    """One thing that happened. `slot` is None if it was not about a step."""

    clock: str
    sign: str
    text: str
    slot: str | None
    by_host: bool
    undone: bool


@dataclass(frozen=True, slots=True)
class StepRow:
    """One step: how it stands, and its planned and actual times."""

    slot: str
    sign: str
    name: str
    stands: str
    planned: str
    actual: str


def happened(viewer: Viewer, told: Sequence[Event], now: datetime, *, only_yours: bool = False) -> tuple[Told, ...]:
    """Everything in the log, oldest first; with `only_yours`, just what the host did. What was undone stays, marked as
    undone."""
    undone = {n for event in told if isinstance(event, TakenBack) for n in event.targets}
    by_number = {event.n: event for event in told}
    found = []
    for event in told:
        by_host = _by_host(event)
        if only_yours and not by_host:
            continue
        sign, text = _in_words(viewer, event, by_number)
        slot = getattr(event, "slot", None)
        if (by := getattr(event, "by", None)) and isinstance(by, str):
            text = words.told_by(text, one_line(by, LONGEST_NAME))
        if event.n in undone:
            text = words.told_undone(text)
        found.append(
            Told(
                viewer.clock(event.at, now),
                sign,
                one_line(text),
                slot if slot in viewer.slots else None,
                by_host,
                event.n in undone,
            )
        )
    return tuple(found)


def _by_host(event: Event) -> bool:
    return is_answer(event) or isinstance(event, TakenBack | EveningClosed)


def _in_words(viewer: Viewer, event: Event, by_number: dict[int, Event]) -> tuple[str, str]:
    """Its sign and its text."""
    signs, parts = words.LOOK_SIGNS, shared.PART_SIGN
    match event:
        case CallRaised(slot=slot, part=part, number=number):
            return parts[part], words.told_called(_called(viewer, Call(slot, part, number, event.at)))
        case StepStarted(slot=slot):
            return parts["start"], words.told_begun(_name(viewer, slot))
        case LookedIn(slot=slot):
            return parts["look-in"], words.told_looked_in(_name(viewer, slot))
        case StepFinished(slot=slot, by_itself=by_itself):
            return parts["end"], words.told_done(_name(viewer, slot), by_itself)
        case CallPutOff(slot=slot, minutes=minutes):
            return signs["later"], words.told_later(_name(viewer, slot), minutes)
        case StepLeftOut(slot=slot):
            return signs["out"], shared.left_out(_name(viewer, slot))
        case CoursePushed(course=course, minutes=minutes):
            return signs["push"], shared.pushed(course, minutes)
        case StepStretched() | GuestsDelayed() | DishDropped():
            return signs["slip"], slip_words(event, viewer.slots)
        case ClockJumped(seconds=seconds, slept=slept):
            return signs["board"], words.clock_jumped(round(seconds), slept=slept)
        case OfferMade(courses=courses, gained=gained):
            times = ((each.course, each.served, each.offered) for each in courses)
            brings = what_it_brings(viewer.clock, times, dict(gained), event.at)
            return signs["push"], words.told_offered(brings)
        case SheetTaken():
            return signs["push"], shared.OFFER_TAKEN
        case NoteWritten(text=text, slot=about):
            return signs["note"], words.told_note(text, _name(viewer, about) if about else None)
        case ReadingTaken(slot=slot, celsius=celsius):
            return signs["reading"], f"{_name(viewer, slot)}: {reading_words(viewer, slot, celsius)}"
        case ReadingSkipped(slot=slot):
            return signs["reading"], shared.told_unread(_name(viewer, slot))
        case ClockWarned(dish=dish, course=course, what=what, cooking=cooking):
            name = one_line(dish or course, LONGEST_NAME)
            return signs["past" if what == "over" else "warned"], words.told_clock(name, what, raw=cooking is not None)
        case LeftoversPutAway(course=course):
            return signs["put-away"], words.is_put_away(one_line(course, LONGEST_NAME))
        case StepsSaid(steps=steps):
            over = sum(each.finished is not None for each in steps)
            names = ", ".join(_name(viewer, each.slot) for each in steps)
            return signs["said"], words.told_said(over, len(steps) - over, names)
        case StopsAccepted():
            return signs["stops"], words.TOLD_STOPS
        case KeepingWarned(slot=slot):
            return signs["warned"], words.told_warned(_name(viewer, slot))
        case TakenBack(targets=targets):
            first = by_number.get(targets[0]) if targets else None
            return signs["back"], shared.taken_back(viewer.answer_words(first) if first else words.TOLD_NOTHING)
        case EveningClosed():
            return signs["board"], words.TOLD_CLOSED
        case BoardReopened():
            return signs["board"], words.TOLD_REOPENED
        case EveningOpened():
            return signs["board"], words.TOLD_OPENED
        case NightDrawn():
            return signs["board"], words.TOLD_NIGHT
        case _:
            assert_never(event)


def _called(viewer: Viewer, call: Call) -> str:
    slot = viewer.slots.get(call.slot)
    return one_line(headline(slot, call), 120) if slot else one_line(call.slot, LONGEST_NAME)


def _name(viewer: Viewer, slot: str) -> str:
    found = viewer.slots.get(slot)
    return one_line(found.name if found else slot, LONGEST_NAME)


def step_rows(viewer: Viewer, at: Present) -> tuple[StepRow, ...]:
    """Every step in planned order, with how it stands."""
    keeping = {each.slot for each in at.forecast.keeping}
    called = {key[0] for key in at.state.raised}
    found = []
    for slot in sorted(at.state.sheet.slots, key=lambda slot: slot.start):
        step = at.state.steps[slot.id]
        stands: str = step.status
        if stands == "finished" and slot.id in keeping:
            stands = "keeping"
        elif stands == "to-come" and slot.id in called:
            stands = "called"
        actual = _span(viewer, step.started, step.finished, at.now) if step.started else ""
        planned = _span(viewer, slot.start, slot.end, at.now)
        sign = words.STATE_SIGN[stands]
        found.append(StepRow(slot.id, sign, one_line(slot.name), shared.STATES[stands], planned, actual))
    return tuple(found)


def _span(viewer: Viewer, start: datetime, end: datetime | None, now: datetime) -> str:
    """`18:30–19:00`, with the day if that is not today; `18:30–` while it lasts."""
    begun = viewer.clock(start, now)
    return shared.from_to(begun, shared.clock(viewer.local(end)) if end else "")


def about(viewer: Viewer, at: Present, slot: str) -> str:
    """What the host recorded about a step: its last reading or that it ended without one, the outlook for its cooling,
    then its notes, newest first. Raises KeyError for an unknown slot."""
    pieces = []
    state, now = at.state, at.now
    found, read = viewer.slots[slot], last_reading(state, slot)
    if read is not None and found.core_celsius is not None:
        pieces.append(
            words.reading_at(read.celsius, viewer.clock(read.at, now), found.core_celsius, viewer.sheet.fahrenheit)
        )
    elif slot in state.unread:
        pieces.append(shared.TOLD_UNREAD)
    if cooling := cooling_words(viewer, state, at.forecast, found, now):
        pieces.append(cooling)
    for note in reversed(state.notes):
        if note.slot == slot:
            pieces.append(words.note_line(viewer.clock(note.at, now), one_line(note.text)))
    return words.about_step(pieces)
