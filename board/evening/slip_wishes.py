"""The host says what went wrong → what happens, or the words of a refusal. Pure."""

from datetime import datetime, timedelta
from typing import assert_never

from board.base import words as shared
from board.evening import words
from board.evening.events import DishDropped, GuestsDelayed, StepStretched
from board.evening.state import State
from board.evening.wishes import DelayGuests, DropDish, Lengthen, SlipWish
from board.sheet.run_sheet import HEAT, ORDER, RunSheet, Slot
from board.sheet.sittings import sitting_wait

LEAST = timedelta(minutes=1)  # no step gets shorter than this; ours


def decide_slip(state: State, wish: SlipWish, at: datetime) -> StepStretched | GuestsDelayed | DishDropped | str:
    """The event of a slip, numbered on from the state's last, or why it is refused."""
    match wish:
        case Lengthen():
            return _stretch(state, wish, at)
        case DelayGuests():
            return _delay(state, wish, at)
        case DropDish():
            return _drop(state, wish, at)
        case _:
            assert_never(wish)


def _stretch(state: State, wish: Lengthen, at: datetime) -> StepStretched | str:
    if not wish.minutes or not wish.slots:
        return words.NOTHING_CHANGES
    by_id = state.sheet.by_id()
    for id_ in wish.slots:
        slot, step = by_id[id_], state.steps[id_]
        if step.settled:
            return words.already_settled(slot.name)
        if slot.start == slot.end or step.lasts(slot) + timedelta(minutes=wish.minutes) < LEAST:
            return words.cannot_take_less(slot.name)
    return StepStretched(n=state.last_n + 1, at=at, slots=wish.slots, minutes=wish.minutes, oven=wish.oven)


def _delay(state: State, wish: DelayGuests, at: datetime) -> GuestsDelayed | str:
    if wish.minutes < 1:
        return words.NOTHING_CHANGES
    slots = waiting_to_come(state) if wish.course is None else waiting_for_guests(state, wish.course)
    if not slots:
        return shared.ARRIVED_ALREADY if wish.course is None else words.NOTHING_ON_TABLE
    return GuestsDelayed(n=state.last_n + 1, at=at, slots=slots, minutes=wish.minutes, course=wish.course)


def _drop(state: State, wish: DropDish, at: datetime) -> DishDropped | str:
    slots = dropped_slots(state, wish.dish, wish.course)
    if not slots:
        return words.cannot_drop(wish.dish)
    return DishDropped(n=state.last_n + 1, at=at, dish=wish.dish, course=wish.course, slots=slots)


def waiting_to_come(state: State) -> tuple[str, ...]:
    """The arrival slot while the guests are expected; else nothing."""
    return tuple(s.id for s in state.sheet.slots if s.kind == "arrive" and not state.steps[s.id].settled)


def on_the_table(state: State) -> str | None:
    """The course served last, while it is being eaten; else None."""
    served = [c.name for c in state.sheet.courses if state.steps[c.serve].status == "finished"]
    return served[-1] if served and waiting_for_guests(state, served[-1]) else None


def waiting_for_guests(state: State, name: str) -> tuple[str, ...]:
    """Slots that wait until the guests have eaten this course; empty once one of them has started. Clearing a standing
    course does not count: it can happen at any time."""
    course = next((c for c in state.sheet.courses if c.name == name), None)
    if course is None or state.steps[course.serve].status != "finished":
        return ()
    waiting = [slot for slot in state.sheet.slots if sitting_wait(slot, course) is not None]
    telling = [slot for slot in waiting if slot.kind != "clear"] if course.standing else []
    if any(state.steps[slot.id].status != "to-come" for slot in telling or waiting):
        return ()
    return tuple(slot.id for slot in waiting if state.steps[slot.id].status == "to-come")


def dropped_slots(state: State, dish: str, course: str | None) -> tuple[str, ...]:
    """Slots to leave out with a dish: its steps, done or not, heating only they need, and serving and clearing if the
    course is then empty and has not gone out. Empty once the course is cleared, or if nothing of it is left."""
    sheet = state.sheet
    its = next((c for c in sheet.courses if c.name == course), None)
    if its is not None and state.steps[its.clear].status != "to-come":
        return ()
    own = [s for s in sheet.slots if (s.dish, s.course) == (dish, course)]
    gone = {s.id for s in own if state.steps[s.id].status != "left-out"}
    if not gone:
        return ()
    gone |= set(_needless_heats(state, gone))
    if its is not None and state.steps[its.serve].status != "finished" and not _anything_left(state, course, gone):
        gone |= {its.serve, its.clear} & set(state.steps)
    return tuple(s.id for s in sheet.slots if s.id in gone)


def _needless_heats(state: State, gone: set[str]) -> list[str]:
    """Heatings not started that only the dropped slots need. One before a later heating of its oven stays."""
    left = {id_ for id_, step in state.steps.items() if step.status == "left-out"} | gone
    found = []
    for heat in (s for s in state.sheet.slots if s.kind == "heat" and state.steps[s.id].status == "to-come"):
        served = [s.id for s in state.sheet.slots if any(w.after == heat.id and w.reason == HEAT for w in s.waits)]
        again = [
            s for s in state.sheet.slots if s.kind == "heat" and oven_of(s) == oven_of(heat) and s.start > heat.end
        ]
        if served and left.issuperset(served) and not gone.isdisjoint(served) and not again:
            found.append(heat.id)
    return found


def _anything_left(state: State, course: str | None, gone: set[str]) -> bool:
    """Whether any step of the course is done or still to be done."""
    steps = [s.id for s in state.sheet.slots if s.course == course and s.dish is not None]
    return any(id_ not in gone and state.steps[id_].status != "left-out" for id_ in steps)


def go_on_without(sheet: RunSheet, slots: tuple[str, ...]) -> list[Slot]:
    """Steps and jobs that wait for one of these slots and are not among them; not servings, which wait for all."""
    gone = set(slots)
    return [
        s
        for s in sheet.slots
        if s.id not in gone
        and s.kind in ("step", "job")
        and any(w.after in gone and w.reason == ORDER and w.anchor == "end" for w in s.waits)
    ]


def oven_of(slot: Slot) -> str | None:
    """The oven a slot is in with heat on; None if it is in none."""
    return next((u.what for u in slot.uses if u.celsius is not None and not u.off), None)
