"""Events → state. Pure: the same events always make the same state."""

import dataclasses
from collections.abc import Iterable, Mapping
from datetime import datetime, timedelta
from types import MappingProxyType
from typing import TypeVar, assert_never

from board.run.events import (
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
    LookedIn,
    NoteWritten,
    Part,
    ReadingSkipped,
    ReadingTaken,
    SheetTaken,
    StepFinished,
    StepLeftOut,
    StepStarted,
    StepStretched,
    StopsAccepted,
    TakenBack,
)
from board.run.slipped import guests_expected, stretched
from board.run.state import Note, Reading, State, StepState, begin, replace
from board.timetable.run_sheet import RunSheet

NOT_PUT_OFF: Mapping[Part, datetime] = MappingProxyType({})

K = TypeVar("K")
V = TypeVar("V")


def fold_all(state: State, events: Iterable[Event]) -> State:
    """One after the other."""
    for event in events:
        state = fold(state, event)
    return state


def fold(state: State, event: Event) -> State:
    """The state after one more event. An event about a slot the sheet lacks changes nothing but the count."""
    if isinstance(event, TakenBack):
        kept = [past for past in state.history if past.n not in event.targets]
        return replace(fold_all(begin(_first_sheet(state)), kept), last_n=event.n)
    state = replace(state, history=(*state.history, event), last_n=event.n)
    match event:
        case CallRaised(slot=slot, part=part, number=number):
            return replace(state, raised=_with(state.raised, (slot, part, number), event.at))
        case StepStarted(slot=slot):
            step = _step(state, slot)
            started = replace(step, status="under-way", started=event.at, put_off=NOT_PUT_OFF)
            # Calls of an earlier go that was taken back wait no longer either.
            return _put(_answered(state, slot), slot, started)
        case LookedIn(slot=slot, number=number):
            step = _step(state, slot)
            left: Mapping[Part, datetime] = MappingProxyType(
                {part: until for part, until in step.put_off.items() if part != "look-in"}
            )
            looked = replace(step, looked_in=max(step.looked_in, number + 1), put_off=left)
            return _put(_answered(state, slot, "look-in"), slot, looked)
        case StepFinished(slot=slot, by_itself=by_itself):
            step = _step(state, slot)
            begun = step.started or event.at
            ended = min(event.at, begun + _length(state, slot)) if by_itself else event.at
            over = replace(step, status="finished", started=begun, finished=ended, put_off=NOT_PUT_OFF)
            return _put(_answered(state, slot), slot, over)
        case CallPutOff(slot=slot, part=part, minutes=minutes):
            until = event.at + timedelta(minutes=minutes)
            step = _step(state, slot)
            return _put(_answered(state, slot, part), slot, replace(step, put_off=_with(step.put_off, part, until)))
        case StepLeftOut(slot=slot):
            return _put(_answered(state, slot), slot, replace(_step(state, slot), status="left-out"))
        case CoursePushed(course=course, minutes=minutes):
            return replace(state, pushed=_with(state.pushed, course, state.pushed.get(course, 0) + minutes))
        case SheetTaken(sheet=sheet):
            return _by_another_sheet(state, sheet)
        case StepStretched(slots=slots, minutes=minutes):
            for slot in slots:
                state = _put(_answered(state, slot, "end"), slot, stretched(state, slot, minutes, event.at))
            return state
        case GuestsDelayed(slots=slots, minutes=minutes):
            for slot in slots:
                until = guests_expected(state, slot, event.at) + timedelta(minutes=minutes)
                step = _step(state, slot)
                later = replace(step, put_off=_with(step.put_off, "start", until))
                state = _put(_answered(state, slot, "start"), slot, later)
            return state
        case DishDropped(slots=slots):
            for slot in slots:
                state = _put(_answered(state, slot), slot, replace(_step(state, slot), status="left-out"))
            return state
        case NoteWritten(text=text, slot=about):
            return replace(state, notes=(*state.notes, Note(event.n, event.at, text, about)))
        case ReadingTaken(slot=slot, celsius=celsius):
            return replace(state, readings=(*state.readings, Reading(event.n, event.at, slot, celsius)))
        case ReadingSkipped(slot=slot):
            return replace(state, unread=(*state.unread, slot))
        case ClockWarned(dish=dish, course=course, what=what):
            return replace(state, clock_warned=state.clock_warned | {(dish, course, what)})
        case StopsAccepted(stops=stops):
            return replace(state, stops_accepted=stops)
        case KeepingWarned(slot=slot):
            return replace(state, warned=_with(state.warned, slot, event.at))
        case ClockJumped(seconds=seconds, slept=slept):
            return replace(state if slept else _shifted(state, timedelta(seconds=seconds)), jumped=event)
        case EveningClosed():
            return replace(state, closed=True)
        case BoardReopened():
            return replace(state, closed=False)
        case EveningOpened():
            return state
        case _:
            assert_never(event)


def _first_sheet(state: State) -> RunSheet:
    """The one the evening began with."""
    opened = next((event for event in state.history if isinstance(event, EveningOpened)), None)
    return opened.sheet if opened is not None else state.sheet


def _by_another_sheet(state: State, sheet: RunSheet) -> State:
    """What has begun goes on; the pushes are in the new times; calls for what was to come are raised anew."""
    begun = {id_ for id_, step in state.steps.items() if step.status != "to-come"}
    steps = {slot.id: _as_planned_anew(state.steps.get(slot.id, StepState())) for slot in sheet.slots}
    raised = {key: at for key, at in state.raised.items() if key[0] in begun and key[0] in steps}
    return replace(
        state,
        sheet=sheet,
        steps=MappingProxyType(steps),
        raised=MappingProxyType(raised),
        pushed=MappingProxyType({}),
    )


def _as_planned_anew(step: StepState) -> StepState:
    """What has not begun takes as long as the new sheet says, in which the stretching is."""
    return replace(step, stretched=timedelta()) if step.status == "to-come" else step


def _shifted(state: State, by: timedelta) -> State:
    """All that was, told by a clock that was set by so much: how long ago it is stays what it was."""

    def step(old: StepState) -> StepState:
        return replace(
            old,
            started=old.started and old.started + by,
            finished=old.finished and old.finished + by,
            put_off=MappingProxyType({part: until + by for part, until in old.put_off.items()}),
        )

    return replace(
        state,
        steps=MappingProxyType({id_: step(old) for id_, old in state.steps.items()}),
        raised=MappingProxyType({key: at + by for key, at in state.raised.items()}),
        readings=tuple(dataclasses.replace(each, at=each.at + by) for each in state.readings),
        warned=MappingProxyType({slot: at + by for slot, at in state.warned.items()}),
    )


def _length(state: State, slot: str) -> timedelta:
    return next((_step(state, slot).lasts(s) for s in state.sheet.slots if s.id == slot), timedelta())


def _step(state: State, slot: str) -> StepState:
    return state.steps.get(slot) or StepState()


def _put(state: State, slot: str, step: StepState) -> State:
    if slot not in state.steps:
        return state
    return replace(state, steps=_with(state.steps, slot, step))


def _answered(state: State, slot: str, part: str | None = None) -> State:
    """No call of that slot (and part) waits any longer."""
    left = {key: at for key, at in state.raised.items() if key[0] != slot or (part is not None and key[1] != part)}
    return replace(state, raised=MappingProxyType(left))


def _with(mapping: Mapping[K, V], key: K, value: V) -> Mapping[K, V]:
    return MappingProxyType({**mapping, key: value})
