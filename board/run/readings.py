"""Readings of the core, and how near its limit what stands is: which step, what is lacking, when to warn. Pure."""

from datetime import datetime, timedelta

from board.kitchen.degrees import is_cooling
from board.kitchen.safety import lacking
from board.run.forecast import Forecast, Standing
from board.run.state import Reading, State, StepState
from board.timetable.run_sheet import Slot

READ_AGAIN_MINUTES = 3  # common practice, no source
WARN_MINUTES = 10  # before what stands keeps no longer


def lacks(slot: Slot, celsius: float) -> float:
    """°C by which the core falls short of what the step wants; 0 when it is there, or nothing is wanted."""
    if slot.core_celsius is None:
        return 0.0
    return lacking(celsius, slot.core_celsius, cooling=is_cooling(slot.lane, slot.core_celsius))


def last_reading(state: State, slot: str) -> Reading | None:
    """The newest reading of a slot's present go; one from before it was begun (and taken back) counts no more."""
    started = state.steps[slot].started
    found = next((each for each in reversed(state.readings) if each.slot == slot), None)
    return found if found is not None and started is not None and found.at >= started else None


def end_due(slot: Slot, step: StepState) -> datetime:
    """When the call at the end of a slot under way is due."""
    started = step.started or slot.start
    return max(started + (slot.end - slot.start), step.put_off.get("end", started))


def is_put_off(slot: Slot, step: StepState, celsius: float, at: datetime) -> bool:
    """Whether a reading at that moment puts the call at the slot's end off: it falls short, and the end comes up."""
    again = at + timedelta(minutes=READ_AGAIN_MINUTES)
    return step.status == "under-way" and lacks(slot, celsius) > 0 and end_due(slot, step) < again


def can_be_read(state: State, forecast: Forecast, first: str | None = None) -> list[str]:
    """Slots a probe may be put into: `first` if it is one, then those under way by their end, then what stands."""
    wanted = {slot.id for slot in state.sheet.slots if slot.core_celsius is not None}
    under_way = [id_ for id_ in wanted if state.steps[id_].status == "under-way"]
    under_way.sort(key=lambda id_: (forecast.slots[id_].end, id_))
    standing = [each.slot for each in sorted(forecast.keeping, key=lambda each: each.until) if each.slot in wanted]
    return sorted([*under_way, *standing], key=lambda id_: id_ != first)


def warns_from(standing: Standing) -> datetime:
    """When the board says that a result soon keeps no longer: 10 minutes before, and not in its first half."""
    half = (standing.until - standing.since) / 2
    return standing.until - min(timedelta(minutes=WARN_MINUTES), half)
