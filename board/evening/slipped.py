"""What a slip does to one slot's state. Pure."""

from dataclasses import replace
from datetime import datetime, timedelta
from types import MappingProxyType

from board.evening.events import Part
from board.evening.state import State, StepState
from board.sheet.run_sheet import ORDER, Slot


def stretched(state: State, id_: str, minutes: int, at: datetime) -> StepState:
    """The step with `minutes` more than it is now forecast to take; below 0, fewer than it was to take.

    A settled step, or one not in the sheet, is unchanged.
    """
    step, slot = state.steps.get(id_, StepState()), _slot(state, id_)
    if slot is None or step.settled:
        return step
    looks = step.lasts(slot)
    if minutes > 0 and step.started is not None:
        looks = max(looks, at - step.started, step.put_off.get("end", step.started) - step.started)
    left: dict[Part, datetime] = {part: until for part, until in step.put_off.items() if part != "end"}
    longer = max(timedelta(), looks + timedelta(minutes=minutes)) - (slot.end - slot.start)
    return replace(step, stretched=longer, put_off=MappingProxyType(left))


def guests_expected(state: State, id_: str, at: datetime) -> datetime:
    """When the guests were expected to arrive, or to have eaten what this slot waits for. Never before `at`."""
    slot = _slot(state, id_)
    if slot is None:
        return at
    known = [at, state.steps[id_].put_off.get("start", at)]
    if slot.kind == "arrive":
        known.append(slot.start)
    for wait in slot.waits:
        over = state.steps[wait.after].finished
        if wait.reason == ORDER and wait.anchor == "end" and over is not None:
            known.append(over + timedelta(minutes=wait.minutes))
    return max(known)


def _slot(state: State, id_: str) -> Slot | None:
    return next((slot for slot in state.sheet.slots if slot.id == id_), None)
