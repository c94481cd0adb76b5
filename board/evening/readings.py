"""Readings of a probe: which step can be read, what is lacking, how long it was held, when it is asked again. Pure."""

import math
from dataclasses import dataclass
from datetime import datetime, timedelta

from board.evening.forecast import Forecast, Standing
from board.evening.state import Reading, State, StepState
from board.facts.degrees import is_cooling
from board.facts.safety import lacking
from board.sheet.run_sheet import Slot

READ_AGAIN_MINUTES = 3  # until a probe is read again; common practice, no source
WARN_MINUTES = 10  # before what stands keeps no longer; ours
EXACT_MINUTES = 1e-6  # room for binary fractions of a hold, and for nothing else


@dataclass(frozen=True, slots=True)
class Again:
    """The call at a slot's end comes so many minutes after a reading: its core lacks something, or `holds` it."""

    minutes: int
    holds: bool


def takes_readings(slot: Slot) -> bool:
    """Whether a probe is of use there: a core temperature is wanted, or it cools."""
    return slot.core_celsius is not None or slot.cooling is not None


def lacks(slot: Slot, celsius: float) -> float:
    """°C by which the core falls short of what the step wants; 0 when it is there, or nothing is wanted."""
    if slot.core_celsius is None:
        return 0.0
    return lacking(celsius, slot.core_celsius, cooling=is_cooling(slot.lane, slot.core_celsius))


def last_reading(state: State, slot: str) -> Reading | None:
    """The newest reading of a slot's present go; one from before it was begun (and taken back) counts no more."""
    found = readings_of(state, slot)
    return found[-1] if found else None


def readings_of(state: State, slot: str) -> list[Reading]:
    """All readings of a slot's present go, oldest first."""
    started = state.steps[slot].started
    return [each for each in state.readings if each.slot == slot and started is not None and each.at >= started]


def wants_reading(state: State, slot: Slot) -> bool:
    """Whether a slot under way has a core temperature that no reading, or only one that falls short, was taken of."""
    if slot.core_celsius is None or state.steps[slot.id].status != "under-way":
        return False
    read = last_reading(state, slot.id)
    return read is None or lacks(slot, read.celsius) > 0


def held_since(state: State, slot: Slot) -> datetime | None:
    """Since when its core was at what is wanted at every reading; None where the last one falls short."""
    since = None
    for each in readings_of(state, slot.id):
        if lacks(slot, each.celsius) > 0:
            since = None
        elif since is None:
            since = each.at
    return since


def hold_left(state: State, slot: Slot, at: datetime) -> float:
    """Minutes for which its core has yet to be held, counted from its first sufficient reading; all of them without."""
    since = held_since(state, slot)
    held = (at - since) / timedelta(minutes=1) if since is not None else 0.0
    left = slot.hold_minutes - held
    return left if left > EXACT_MINUTES else 0.0


def end_due(slot: Slot, step: StepState) -> datetime:
    """When the call at the end of a slot under way is due."""
    started = step.started or slot.start
    return max(started + (slot.end - slot.start), step.put_off.get("end", started))


def asked_again(state: State, slot: Slot, celsius: float, at: datetime) -> Again | None:
    """What a reading at that moment does to the call at the slot's end: it puts it off where the end comes up before
    the core is what is wanted, and was held there. None: it changes nothing."""
    step = state.steps[slot.id]
    if step.status != "under-way" or slot.core_celsius is None:
        return None
    is_short = lacks(slot, celsius) > 0
    minutes = READ_AGAIN_MINUTES if is_short else math.ceil(hold_left(state, slot, at) - EXACT_MINUTES)
    comes_up = end_due(slot, step) < at + timedelta(minutes=minutes)
    return Again(minutes, holds=not is_short) if minutes > 0 and comes_up else None


def can_be_read(state: State, forecast: Forecast, first: str | None = None) -> list[str]:
    """Slots a probe may be put into: `first` if it is one, then those under way by their end, then what stands."""
    wanted = {slot.id for slot in state.sheet.slots if takes_readings(slot)}
    under_way = [id_ for id_ in wanted if state.steps[id_].status == "under-way"]
    under_way.sort(key=lambda id_: (forecast.slots[id_].end, id_))
    standing = [each.slot for each in sorted(forecast.keeping, key=lambda each: each.until) if each.slot in wanted]
    return sorted([*under_way, *standing], key=lambda id_: id_ != first)


def warns_from(standing: Standing) -> datetime:
    """When the board says that a result soon keeps no longer: 10 minutes before, and not in its first half."""
    half = (standing.until - standing.since) / 2
    return standing.until - min(timedelta(minutes=WARN_MINUTES), half)
