"""What can have gone wrong now, and the wish for it. Pure: (state, forecast) → targets; target, minutes → wish."""

from dataclasses import dataclass
from typing import Literal

from board.evening.forecast import Forecast
from board.evening.slip_wishes import dropped_slots, on_the_table, oven_of, waiting_to_come
from board.evening.state import State
from board.evening.wishes import DelayGuests, DropDish, Lengthen, SlipWish
from board.sheet.run_sheet import HEAT, Slot

Kind = Literal["not-ready", "guests", "sitting", "dish", "oven", "length"]
KINDS: tuple[Kind, ...] = ("not-ready", "guests", "sitting", "dish", "oven", "length")
# Default minutes of each slip, and the most it can be: ours.
MINUTES: dict[Kind, int] = {"not-ready": 5, "guests": 10, "sitting": 10, "dish": 0, "oven": 5, "length": 5}
LONGEST = 180


@dataclass(frozen=True, slots=True)
class Target:
    """What a slip is about, by `name`: a slot's id, or a course's, dish's or oven's name.

    `slots`: what takes longer or is dropped. `going_on`: a dish's slots under way, dropped with it.
    """

    name: str
    course: str | None = None
    slots: tuple[str, ...] = ()
    going_on: tuple[str, ...] = ()


def targets(state: State, forecast: Forecast, kind: Kind, chosen: str | None = None) -> tuple[Target, ...]:
    """Possible targets of this kind of slip, the likeliest first; `chosen` is the slot the host looks at."""
    match kind:
        case "not-ready":
            return _first(chosen, _under_way(state, forecast))
        case "guests":
            return tuple(Target(id_) for id_ in waiting_to_come(state)[:1])
        case "sitting":
            course = on_the_table(state)
            return (Target(course, course),) if course else ()
        case "dish":
            return _dishes(state, forecast, chosen)
        case "oven":
            return _ovens(state, forecast)
        case "length":
            return _first(chosen, [*_to_come(state, forecast), *_under_way(state, forecast)])


def wish_for(kind: Kind, target: Target, minutes: int) -> SlipWish:
    """The wish for a slip."""
    match kind:
        case "not-ready" | "length":
            return Lengthen(target.slots, minutes)
        case "oven":
            return Lengthen(target.slots, minutes, target.name)
        case "guests":
            return DelayGuests(minutes)
        case "sitting":
            return DelayGuests(minutes, target.course)
        case "dish":
            return DropDish(
                target.name,
                target.course,
            )


def more(kind: Kind, minutes: int, step: int) -> int:
    """The next number of minutes: in ones up to five, then in fives. Only a step's length can go below 1."""
    size = abs(minutes)
    outward = step * minutes > 0
    by = 5 if size > 5 or (size == 5 and outward) else 1
    found = minutes + step * by
    if kind == "length":
        return max(-LONGEST, min(LONGEST, found or step))
    return max(1, min(LONGEST, found))


def _first(chosen: str | None, slots: list[Slot]) -> tuple[Target, ...]:
    ordered = sorted(slots, key=lambda slot: slot.id != chosen)
    return tuple(Target(slot.id, slot.course, (slot.id,)) for slot in ordered)


def _under_way(state: State, forecast: Forecast) -> list[Slot]:
    """Soonest end first, then least slack; slots whose end needs nobody come last."""
    going = [s for s in state.sheet.slots if state.steps[s.id].status == "under-way" and s.end > s.start]

    def pressing(slot: Slot) -> tuple[bool, float, float]:
        ahead = forecast.slots[slot.id]
        give = ahead.give_minutes
        return slot.ends_by_itself, ahead.end.timestamp(), float("inf") if give is None else give

    return sorted(going, key=pressing)


def _to_come(state: State, forecast: Forecast) -> list[Slot]:
    ahead = [s for s in state.sheet.slots if state.steps[s.id].status == "to-come" and s.end > s.start]
    return sorted(ahead, key=lambda slot: forecast.slots[slot.id].start)


def _dishes(state: State, forecast: Forecast, chosen: str | None) -> tuple[Target, ...]:
    """Dishes that can still be dropped: the chosen step's first, then what is on the fire or on the table, then what
    has steps to come, soonest first."""
    its: dict[tuple[str, str | None], list[Slot]] = {}
    for slot in state.sheet.slots:
        if slot.dish:
            its.setdefault((slot.dish, slot.course), []).append(slot)
    served = {course.name for course in state.sheet.courses if state.steps[course.serve].status == "finished"}
    found = []
    for (dish, course), own in its.items():
        if slots := dropped_slots(state, dish, course):
            going_on = [s for s in own if state.steps[s.id].status == "under-way"]
            at_risk = course in served or any(s.on_heat for s in going_on)
            is_chosen = any(s.id == chosen for s in own)
            left = [forecast.slots[s.id].start for s in own if not state.steps[s.id].settled]
            rank = (not is_chosen, not at_risk, not left, min(left, default=forecast.now))
            found.append((rank, Target(dish, course, slots, tuple(s.id for s in going_on))))
    return tuple(target for _, target in sorted(found, key=lambda each: each[0]))


def _ovens(state: State, forecast: Forecast) -> tuple[Target, ...]:
    """Ovens and the slots that take longer if one loses its heat: what it holds or is heating now; if nothing, what
    goes into it next while hot. The fullest oven first."""
    found = []
    for oven in dict.fromkeys(o for o in map(oven_of, state.sheet.slots) if o):
        its = [s for s in state.sheet.slots if oven_of(s) == oven and s.end > s.start]
        inside = [s.id for s in its if state.steps[s.id].status == "under-way"]
        slots = inside or [s.id for s in its if _goes_into_heated(state, s)]
        if slots:
            found.append((not inside, -len(slots), Target(oven, None, tuple(slots))))
    return tuple(target for *_, target in sorted(found, key=lambda each: each[:2]))


def _goes_into_heated(state: State, slot: Slot) -> bool:
    """Whether the slot has not started and the oven it waits for is hot."""
    heats = [w.after for w in slot.waits if w.reason == HEAT]
    return (
        state.steps[slot.id].status == "to-come"
        and bool(heats)
        and all(state.steps[h].status == "finished" for h in heats)
    )
