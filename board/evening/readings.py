"""Probe readings in °C: which steps can be read, what is lacking, how long it was held, when to read again. Pure."""

import math
from dataclasses import dataclass
from datetime import datetime, timedelta

from board.evening.forecast import Forecast, Standing
from board.evening.gone_cold import kept_hot
from board.evening.state import Reading, State, StepState
from board.facts.degrees import is_cooling
from board.facts.safety import lacking
from board.sheet.run_sheet import Slot

READ_AGAIN_MINUTES = 3  # until a probe is read again; common practice, no source
WARN_MINUTES = 10  # before a waiting result is past its best; ours
EXACT_MINUTES = 1e-6  # tolerance for binary fractions in a hold, and for nothing else


@dataclass(frozen=True, slots=True)
class Again:
    """The end call comes again in `minutes`: the core falls short, or (`holds`) must be held longer."""

    minutes: int
    holds: bool


def takes_readings(slot: Slot) -> bool:
    """Whether a probe is useful there: the step wants a core temperature, it cools, or its result is kept hot."""
    return slot.core_celsius is not None or slot.cooling is not None or kept_hot(slot)


def lacks(slot: Slot, celsius: float) -> float:
    """°C by which the core falls short of what the step wants; 0 if it does not, or nothing is wanted."""
    if slot.core_celsius is None:
        return 0.0
    return lacking(celsius, slot.core_celsius, cooling=is_cooling(slot.lane, slot.core_celsius))


def last_reading(state: State, slot: str) -> Reading | None:
    """A slot's newest reading since it was last started (those before an undone start do not count), or None."""
    found = readings_of(state, slot)
    return found[-1] if found else None


def readings_of(state: State, slot: str) -> list[Reading]:
    """All readings since the slot was last started, oldest first."""
    started = state.steps[slot].started
    return [each for each in state.readings if each.slot == slot and started is not None and each.at >= started]


def wants_reading(state: State, slot: Slot) -> bool:
    """Whether a slot under way wants a core temperature and has no reading, or only one that falls short."""
    if slot.core_celsius is None or state.steps[slot.id].status != "under-way":
        return False
    read = last_reading(state, slot.id)
    return read is None or lacks(slot, read.celsius) > 0


def held_since(state: State, slot: Slot) -> datetime | None:
    """Since when every reading has been high enough; None if the last one falls short."""
    since = None
    for each in readings_of(state, slot.id):
        if lacks(slot, each.celsius) > 0:
            since = None
        elif since is None:
            since = each.at
    return since


def hold_left(state: State, slot: Slot, at: datetime) -> float:
    """Minutes the core must still be held, from its first sufficient reading; the whole hold without one."""
    since = held_since(state, slot)
    held = (at - since) / timedelta(minutes=1) if since is not None else 0.0
    left = slot.hold_minutes - held
    return left if left > EXACT_MINUTES else 0.0


def end_due(slot: Slot, step: StepState) -> datetime:
    """When the end call of a slot under way is due."""
    started = step.started or slot.start
    return max(started + (slot.end - slot.start), step.put_off.get("end", started))


def asked_again(state: State, slot: Slot, celsius: float, at: datetime) -> Again | None:
    """How a reading delays the end call: put off if the end is near and the core falls short or was not held long
    enough. None: the reading changes nothing."""
    step = state.steps[slot.id]
    if step.status != "under-way" or slot.core_celsius is None:
        return None
    is_short = lacks(slot, celsius) > 0
    minutes = READ_AGAIN_MINUTES if is_short else math.ceil(hold_left(state, slot, at) - EXACT_MINUTES)
    comes_up = end_due(slot, step) < at + timedelta(minutes=minutes)
    return Again(minutes, holds=not is_short) if minutes > 0 and comes_up else None


def can_be_read(state: State, forecast: Forecast, first: str | None = None) -> list[str]:
    """Ids of slots a probe can read: `first` if it is one, then those under way by end, then waiting results."""
    wanted = {slot.id for slot in state.sheet.slots if takes_readings(slot)}
    under_way = [id_ for id_ in wanted if state.steps[id_].status == "under-way"]
    under_way.sort(key=lambda id_: (forecast.slots[id_].end, id_))
    standing = [each.slot for each in sorted(forecast.keeping, key=lambda each: each.until) if each.slot in wanted]
    return sorted([*under_way, *standing], key=lambda id_: id_ != first)


def is_past_best(state: State, standing: Standing, now: datetime) -> bool:
    """Whether a result will be past its best before it is taken up, or already stands longer than in the timetable;
    never for what the timetable lets stand so long."""
    slots = state.sheet.by_id()
    slot = slots[standing.slot]
    takers = [slots[id_].start for id_ in slot.then if id_ in slots]
    planned = standing.since + (max(takers) - slot.end if takers else timedelta())
    return now > planned or standing.taken_up > max(standing.until, planned)


def warns_from(standing: Standing) -> datetime:
    """When to warn that a result will soon be past its best: 10 minutes ahead, but not in its first half."""
    half = (standing.until - standing.since) / 2
    return standing.until - min(timedelta(minutes=WARN_MINUTES), half)
