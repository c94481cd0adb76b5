"""What is due now and what comes next. Pure: (forecast, state, now) → calls, the costliest to delay first."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import Literal

from board.evening.events import Part
from board.evening.forecast import Forecast
from board.evening.gone_cold import gone_cold
from board.evening.state import CallKey, State, StepState
from board.sheet.run_sheet import HEAT, Slot

Sound = Literal["burns", "begin", "look-in"]
AT_THE_DOOR = timedelta(minutes=3)  # from when they are due; ours


@dataclass(frozen=True, slots=True)
class Call:
    """A timed prompt; times in UTC. `raised`: None until it is. `silent`: the step ends by itself, so it is never
    shown. `burns`: it ends something hot that nobody stands at. `spoils`: food kept hot was read too cold.
    `overtaken`: the step, had it started when called, would be over by now. `in_hand`: the end of work that hands are
    on all along; nobody need be told. `then`: what the same hands begin as soon as this is over, or what goes into an
    oven that has its heat.
    """

    slot: str
    part: Part
    number: int
    due: datetime
    raised: datetime | None = None
    give_minutes: int | None = None
    silent: bool = False
    burns: bool = False
    spoils: bool = False
    overtaken: bool = False
    in_hand: bool = False
    then: str | None = None

    @property
    def key(self) -> CallKey:
        return (self.slot, self.part, self.number)

    @property
    def sound(self) -> Sound | None:
        """What it sounds like; None: not at all."""
        if self.silent or (self.in_hand and self.then is None):
            return None
        return "burns" if self.burns or self.spoils else "look-in" if self.part == "look-in" else "begin"


def calls(forecast: Forecast, state: State) -> tuple[list[Call], list[Call]]:
    """Calls due at `forecast.now`, the costliest to delay first; then later calls, soonest first. Raises nothing."""
    due: list[tuple[float, Call]] = []
    coming: list[Call] = []
    for slot, call in _all(forecast, state):
        if call.due <= forecast.now:
            due.append((_cost(call, slot, forecast.now), call))
        else:
            coming.append(call)
    due.sort(key=lambda each: (each[0], each[1].raised or each[1].due))
    return [call for _, call in due], sorted(coming, key=lambda call: call.due)


def _cost(call: Call, slot: Slot, now: datetime) -> float:
    """Minutes to spare before a delay hurts; the smallest is the costliest. First the guests at the door, then what
    burns, then what is too cold; last the end of work in hand. Who is not there soon after the hour is not at the door:
    the clock called them, no bell."""
    if slot.kind == "arrive":
        return -3.0 if now < call.due + AT_THE_DOOR else -0.5
    if call.burns:
        return -2.0
    if call.spoils:
        return -1.0
    if call.in_hand:
        return 20_000.0
    if call.part == "look-in":
        return 1.0
    return 10_000.0 if call.give_minutes is None else float(max(0, call.give_minutes))


def _all(forecast: Forecast, state: State) -> Iterator[tuple[Slot, Call]]:
    cold = gone_cold(state)
    for slot in state.sheet.slots:
        step = state.steps[slot.id]
        if slot.id in cold:
            read = cold[slot.id].read.at
            due = max(read, step.put_off.get("reheat", read))
            yield slot, replace(_call(state, slot, "reheat", 0, due, None), spoils=True)
        elif step.status == "to-come":
            ahead = forecast.slots[slot.id]
            free = all(state.steps[w.after].settled for w in slot.waits if w.must)
            if ahead.start > forecast.now:
                # It may have been raised and then moved later: it waits for its new time.
                yield slot, Call(slot.id, "start", 0, ahead.start, None, ahead.give_minutes)
            elif free:
                call = _call(state, slot, "start", 0, ahead.start, ahead.give_minutes)
                yield slot, replace(call, overtaken=_is_overtaken(call, step.lasts(slot), forecast.now))
        elif step.status == "under-way" and step.started is not None:
            for call in _while_under_way(forecast, state, slot, step, step.started):
                yield slot, call


def _is_overtaken(call: Call, lasts: timedelta, now: datetime) -> bool:
    """Whether a call to start has waited as long as the whole step takes."""
    return lasts > timedelta(0) and call.raised is not None and now >= call.raised + lasts


def _while_under_way(
    forecast: Forecast, state: State, slot: Slot, step: StepState, started: datetime
) -> Iterator[Call]:
    end = max(started + step.lasts(slot), step.put_off.get("end", started))
    offsets = [part.start - slot.start for part in slot.parts if part.kind == "look-in"]
    open_ones = [
        (number, max(started + offset, step.put_off.get("look-in", started)))
        for number, offset in enumerate(offsets)
        if number >= step.looked_in
    ]
    past = [look for look in open_ones if look[1] <= forecast.now]
    if open_ones and end > forecast.now:
        # If several look-ins are due, the last stands for all of them.
        number, due = past[-1] if past else open_ones[0]
        if due < end:
            yield _call(state, slot, "look-in", number, due, None)
    silent = slot.ends_by_itself
    call = _call(state, slot, "end", 0, end, forecast.slots[slot.id].give_minutes, silent=silent)
    is_up = call.due <= forecast.now
    yield replace(call, in_hand=slot.whole, then=_next_in_hand(forecast, state, slot) if is_up else None)


def _next_in_hand(forecast: Forecast, state: State, slot: Slot) -> str | None:
    """What is begun at once when a step is over: what waits for nothing else, is due, and wants the same hands; of an
    oven's change, what its heat is for. The most pressing of several."""
    found = [
        (_give(forecast, other), other.start, other.id)
        for other in state.sheet.slots
        if state.steps[other.id].status == "to-come"
        and forecast.slots[other.id].start <= forecast.now
        and all(wait.after == slot.id or state.steps[wait.after].settled for wait in other.waits if wait.must)
        and (_same_hands(slot, other) if slot.whole else _wants_heat_of(other, slot))
    ]
    return min(found)[2] if found else None


def _give(forecast: Forecast, slot: Slot) -> float:
    give = forecast.slots[slot.id].give_minutes
    return 10_000.0 if give is None else give


def _same_hands(slot: Slot, other: Slot) -> bool:
    return any(part.kind in ("all", "start") and part.who in slot.people for part in other.attended)


def _wants_heat_of(other: Slot, change: Slot) -> bool:
    return change.kind == "heat" and any(wait.after == change.id and wait.reason == HEAT for wait in other.waits)


def _call(
    state: State, slot: Slot, part: Part, number: int, due: datetime, give: int | None, *, silent: bool = False
) -> Call:
    raised = state.raised.get((slot.id, part, number))
    burns = part == "end" and slot.on_heat and slot.kind != "heat" and not slot.whole
    return Call(slot.id, part, number, min(raised, due) if raised else due, raised, give, silent, burns)
