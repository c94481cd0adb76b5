"""Food that was to be heated through and whose heating the host left out. Pure."""

from dataclasses import dataclass

from board.evening.events import DishDropped
from board.evening.readings import last_reading
from board.evening.state import Reading, State
from board.facts.degrees import is_cooling
from board.sheet.run_sheet import Slot


@dataclass(frozen=True, slots=True)
class Unheated:
    """The step that was left out, and what a probe showed in it last."""

    slot: Slot
    read: Reading | None


def heats_through(slot: Slot) -> bool:
    """Whether it cooks food or heats it again, so that it may be eaten."""
    wants_heat = slot.core_celsius is not None and not is_cooling(slot.lane, slot.core_celsius)
    return slot.fresh or slot.cooks is not None or wants_heat


def left_cold(state: State, slot: Slot) -> bool:
    """Whether its food was to be heated and was not, and goes out all the same: not where a question left it out, or
    the dish was given up."""
    step = state.steps[slot.id]
    if step.status != "left-out" or step.finished is not None or slot.decide or not heats_through(slot):
        return False
    return not any(isinstance(event, DishDropped) and slot.id in event.slots for event in state.history)


def unheated(state: State, id_: str) -> tuple[Unheated, ...]:
    """Of what goes into a slot: each heating that was left out and that no later one of the same food made good."""
    sheet, found = state.sheet, []
    for slot in (each for each in sheet.slots if left_cold(state, each)):
        then = sheet.taking_up(slot.id)
        later = (each for each in sheet.slots if each.id in then and each.id != id_ and heats_through(each))
        if id_ in then and not any(state.steps[each.id].status == "finished" for each in later):
            found.append(Unheated(slot, last_reading(state, slot.id)))
    return tuple(found)
