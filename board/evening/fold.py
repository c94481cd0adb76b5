"""Events → state. Pure: the same events always make the same state.

Many events are folded into one private draft, so that a long log does not copy the state at every event.
"""

import dataclasses
from collections.abc import Iterable, Mapping
from datetime import datetime, timedelta
from types import MappingProxyType
from typing import Any, assert_never

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
    Part,
    ReadingSkipped,
    ReadingTaken,
    Said,
    SheetTaken,
    StepFinished,
    StepLeftOut,
    StepsSaid,
    StepStarted,
    StepStretched,
    StopsAccepted,
    TakenBack,
)
from board.evening.slipped import guests_expected, stretched
from board.evening.state import TO_COME, CallKey, Note, Reading, State, StepState, begin, first_sheet, replace
from board.sheet.run_sheet import RunSheet

NOT_PUT_OFF: Mapping[Part, datetime] = MappingProxyType({})


def fold_all(state: State, events: Iterable[Event]) -> State:
    """The state after all the events, in order; `state` itself is unchanged. An event about a slot the sheet lacks
    changes only the history and count."""
    draft = None
    for event in events:
        if draft is None:
            draft = _Draft(state)
        draft.take(event)
    return state if draft is None else draft.frozen()


class _Draft:
    """A state while events are folded in. `state` belongs to the draft, and its mappings are those beside it."""

    def __init__(self, state: State) -> None:
        self._begin(state)

    def _begin(self, state: State) -> None:
        self.steps: dict[str, StepState] = dict(state.steps)
        self.raised: dict[CallKey, datetime] = dict(state.raised)
        self.pushed: dict[str, int] = dict(state.pushed)
        self.warned: dict[str, datetime] = dict(state.warned)
        self.history: list[Event] = list(state.history)
        self.last_n = state.last_n
        own: dict[str, Mapping[Any, Any]] = {
            "steps": self.steps, "raised": self.raised, "pushed": self.pushed, "warned": self.warned,
        }  # fmt: skip
        self.state = replace(state, **own)

    def frozen(self) -> State:
        """The state as it is now; the draft must not be used afterwards."""
        return replace(
            self.state,
            steps=MappingProxyType(self.steps),
            raised=MappingProxyType(self.raised),
            pushed=MappingProxyType(self.pushed),
            warned=MappingProxyType(self.warned),
            history=tuple(self.history),
            last_n=self.last_n,
        )

    def take(self, event: Event) -> None:
        state = self.state
        if not isinstance(event, TakenBack):
            self.history.append(event)
        match event:
            case CallRaised(slot=slot, part=part, number=number):
                self.raised[slot, part, number] = event.at
            case StepStarted(slot=slot):
                # Calls raised before an undone start stop waiting too.
                self._answered(slot)
                self._put(slot, status="under-way", started=event.at, put_off=NOT_PUT_OFF)
            case LookedIn(slot=slot, number=number):
                step = self._step(slot)
                left: Mapping[Part, datetime] = MappingProxyType(
                    {part: until for part, until in step.put_off.items() if part != "look-in"}
                )
                self._answered(slot, "look-in")
                self._put(slot, looked_in=max(step.looked_in, number + 1), put_off=left)
            case StepFinished(slot=slot, by_itself=by_itself):
                begun = self._step(slot).started or event.at
                ended = min(event.at, begun + self._length(slot)) if by_itself else event.at
                self._answered(slot)
                self._put(slot, status="finished", started=begun, finished=ended, put_off=NOT_PUT_OFF)
            case KeepingWarned(slot=slot):
                self.warned[slot] = event.at
            case ClockWarned(dish=dish, course=course, what=what, cooking=cooking):
                self._set(clock_warned=state.clock_warned | {(dish, course, what, cooking)})
            case CallPutOff(slot=slot, part=part, minutes=minutes):
                self._answered(slot, part)
                self._put_off(slot, part, event.at + timedelta(minutes=minutes))
            case StepLeftOut(slot=slot):
                self._leave_out(slot)
            case CoursePushed(course=course, minutes=minutes):
                self.pushed[course] = self.pushed.get(course, 0) + minutes
            case SheetTaken(sheet=sheet):
                self._by_another_sheet(sheet)
            case StepStretched(slots=slots, minutes=minutes):
                for slot in slots:
                    longer = stretched(state, slot, minutes, event.at)
                    self._answered(slot, "end")
                    if slot in self.steps:
                        self.steps[slot] = longer
            case GuestsDelayed(slots=slots, minutes=minutes):
                for slot in slots:
                    until = guests_expected(state, slot, event.at) + timedelta(minutes=minutes)
                    self._answered(slot, "start")
                    self._put_off(slot, "start", until)
            case DishDropped(slots=slots):
                for slot in slots:
                    self._leave_out(slot)
            case NoteWritten(text=text, slot=about):
                self._set(notes=(*state.notes, Note(event.n, event.at, text, about)))
            case ReadingTaken(slot=slot, celsius=celsius):
                self._answered(slot, "reheat")
                self._set(readings=(*state.readings, Reading(event.n, event.at, slot, celsius)))
            case ReadingSkipped(slot=slot):
                self._set(unread=(*state.unread, slot))
            case StepsSaid(steps=steps):
                for said in steps:
                    self._said(said)
            case LeftoversPutAway(course=course):
                self._set(put_away=MappingProxyType({**state.put_away, course: event.at}))
            case StopsAccepted(stops=stops):
                self._set(stops_accepted=stops)
            case ClockJumped(seconds=seconds, slept=slept):
                if not slept:
                    self._shift(timedelta(seconds=seconds))
                self._set(jumped=event)
            case EveningClosed():
                self._set(closed=True)
            case BoardReopened():
                self._set(closed=False)
            case EveningOpened() | NightDrawn() | OfferMade():
                pass
            case TakenBack():
                self._take_back(event)
            case _:
                assert_never(event)
        self.last_n = event.n

    def _said(self, said: Said) -> None:
        """A core temperature it wanted is as unknown as if its end had been answered without a reading."""
        over = said.finished is not None
        self._answered(said.slot)
        self._put(
            said.slot,
            status="finished" if over else "under-way",
            started=said.started,
            finished=said.finished,
            put_off=NOT_PUT_OFF,
            said=True,
        )
        wants = any(slot.id == said.slot and slot.core_celsius is not None for slot in self.state.sheet.slots)
        if over and wants and not any(each.slot == said.slot for each in self.state.readings):
            self._set(unread=(*self.state.unread, said.slot))

    def _take_back(self, event: TakenBack) -> None:
        """Folds the whole history again without the events taken back."""
        kept = [past for past in self.history if past.n not in event.targets]
        self._begin(begin(first_sheet(self.history, self.state.sheet)))
        for past in kept:
            self.take(past)

    def _by_another_sheet(self, sheet: RunSheet) -> None:
        """Started steps carry on; the new times already hold the pushes; calls for later steps are raised again."""
        begun = {id_ for id_, step in self.steps.items() if step.status != "to-come"}
        before = dict(self.steps)
        self.steps.clear()
        self.steps.update((slot.id, _as_planned_anew(before.get(slot.id, TO_COME))) for slot in sheet.slots)
        for key in [key for key in self.raised if key[0] not in begun or key[0] not in self.steps]:
            del self.raised[key]
        self.pushed.clear()
        self._set(sheet=sheet)

    def _shift(self, by: timedelta) -> None:
        """Moves all past times by as much as the clock was set, so that how long ago each was stays the same."""
        for id_, step in self.steps.items():
            self.steps[id_] = _shifted(step, by)
        for key in self.raised:
            self.raised[key] += by
        for slot in self.warned:
            self.warned[slot] += by
        self._set(
            readings=tuple(dataclasses.replace(each, at=each.at + by) for each in self.state.readings),
            put_away=MappingProxyType({course: when + by for course, when in self.state.put_away.items()}),
        )

    def _length(self, slot: str) -> timedelta:
        return next((self._step(slot).lasts(s) for s in self.state.sheet.slots if s.id == slot), timedelta())

    def _step(self, slot: str) -> StepState:
        return self.steps.get(slot, TO_COME)

    def _put(self, slot: str, **changes: Any) -> None:
        if slot in self.steps:
            self.steps[slot] = replace(self.steps[slot], **changes)

    def _put_off(self, slot: str, part: Part, until: datetime) -> None:
        self._put(slot, put_off=MappingProxyType({**self._step(slot).put_off, part: until}))

    def _leave_out(self, slot: str) -> None:
        self._answered(slot)
        self._put(slot, status="left-out")

    def _answered(self, slot: str, part: str | None = None) -> None:
        """No call of that slot (and part) waits any more."""
        for key in [key for key in self.raised if key[0] == slot and part in (None, key[1])]:
            del self.raised[key]

    def _set(self, **changes: Any) -> None:
        self.state.__dict__.update(changes)


def _as_planned_anew(step: StepState) -> StepState:
    """A step not started takes as long as the new sheet says, which already includes any stretching."""
    return replace(step, stretched=timedelta()) if step.status == "to-come" else step


def _shifted(step: StepState, by: timedelta) -> StepState:
    return replace(
        step,
        started=step.started and step.started + by,
        finished=step.finished and step.finished + by,
        put_off=MappingProxyType({part: until + by for part, until in step.put_off.items()}),
    )
