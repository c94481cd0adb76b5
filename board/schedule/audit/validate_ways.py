"""Which way of a step a slot was planned by, if any: its length, lane, hands and uses must all match that way.

Part of `validate`; derived from the plan alone. Minutes are ints, moments are aware datetimes in UTC.
"""

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta

from board.plan.model.kitchen import Kitchen
from board.plan.model.model import Plan
from board.plan.phrases.durations import Attention
from board.plan.phrases.stations import Heat, Station
from board.plan.resolve.assume import FilledWay, Task
from board.sheet.run_sheet import Lasts, Slot, Use


@dataclass(frozen=True)
class Done:
    """A slot beside the task it does, the way it is done, and the oven its result is kept in, if in one."""

    task: Task
    slot: Slot
    way: FilledWay
    kept_in: str | None = None


def readings(kitchen: Kitchen, task: Task, slot: Slot, ways: list[FilledWay]) -> list[Done]:
    """How the slot may have been done: each way, and each oven its result may be kept in."""
    return [Done(task, slot, way, oven) for way in ways for oven in _kept_in(kitchen, way, slot)]


def _kept_in(kitchen: Kitchen, way: FilledWay, slot: Slot) -> list[str | None]:
    """The oven the step was in, else the first there is. A step of no minutes names no oven: any may be it."""
    if way.keeps is None or way.keeps.where.place != "oven" or way.keeps.where.heat is None:
        return [None]
    allowed = ovens_allowed(kitchen, way.keeps.where)
    own = [use.what for use in slot.uses if use.what in allowed]
    if not own and way.where.place == "oven" and slot.start == slot.end:
        own = [oven for oven in ovens_allowed(kitchen, way.where) if oven in allowed]
        return [*(own or allowed)]
    return [*(own or allowed)[:1]] or [None]


def fitting_ways(plan: Plan, task: Task, slot: Slot) -> tuple[list[FilledWay], str]:
    """The ways the slot may have been planned by; if none, also a sentence saying what fits none."""
    minutes = whole_minutes(slot.end - slot.start)
    tests: tuple[tuple[str, Callable[[FilledWay], bool]], ...] = (
        (f"takes {minutes} min, and no way of doing it does", lambda way: way.takes.likely == minutes),
        (f"may last {_spread(slot.lasts)}, and by no way of doing it does", lambda way: _lasts_as_long(way, slot)),
        (f"stands in the lane {slot.lane}, where it is not done", lambda way: way.where.lane == slot.lane),
        ("has hands on it at other times than it asks for", lambda way: _hands_are_as_asked(way, slot)),
        (
            f"does not take what it asks for: {_told(slot)}",
            lambda way: _uses_are_as_asked(plan.kitchen, way.where, slot),
        ),
        (
            "tells another way of keeping than the plan does",
            lambda way: has_no_place(slot) or _keeping_is_as_asked(way, slot),
        ),
    )
    left = list(task.ways)
    for complaint, fits in tests:
        left = [way for way in left if fits(way)]
        if not left:
            return [], f"{slot.name} {complaint}"
    return [way for number, way in enumerate(left) if way not in left[:number]], ""


def _lasts_as_long(way: FilledWay, slot: Slot) -> bool:
    return slot.lasts == Lasts(way.takes.low, way.takes.likely, way.takes.high)


def _spread(lasts: Lasts | None) -> str:
    return "as it stands" if lasts is None else f"{lasts.low} to {lasts.likely} to {lasts.high} min"


def hands_asked(attention: Attention, minutes: int) -> Iterator[tuple[int, int, str]]:
    """Which stretches need hands: from minute, to minute, kind; counted from the start of the step."""
    if attention.whole:
        if minutes:
            yield 0, minutes, "all"
        return
    opening = min(attention.start, minutes)
    closing = minutes - min(attention.end, minutes - opening)
    if opening:
        yield 0, opening, "start"
    if attention.every and attention.look:
        for look in range(attention.every, minutes, attention.every):
            if opening <= look and look + attention.look <= closing:
                yield look, look + attention.look, "look-in"
    if closing < minutes:
        yield closing, minutes, "end"


def _hands_are_as_asked(way: FilledWay, slot: Slot) -> bool:
    """Each who does it has hands on it whenever it asks for them."""
    asked = sorted(hands_asked(way.attended, whole_minutes(slot.end - slot.start)))
    told: dict[str, list[tuple[int, int, str]]] = {}
    for part in slot.attended:
        minutes = whole_minutes(part.start - slot.start), whole_minutes(part.end - slot.start)
        told.setdefault(part.who, []).append((*minutes, part.kind))
    return all(sorted(parts) == asked for parts in told.values()) if told else not asked


def _uses_are_as_asked(kitchen: Kitchen, on: Station, slot: Slot) -> bool:
    if slot.start == slot.end:
        return True  # no minutes use nothing
    baked = [use for use in slot.uses if use.celsius is not None]
    resting = [use for use in slot.uses if use.off]
    others = [use for use in slot.uses if use.celsius is None and not use.off]
    if any((use.start, use.end) != (slot.start, slot.end) for use in others):
        return False
    told = {use.what: use.amount for use in others}
    if len(told) != len(others) or told != things_asked(kitchen, on):
        return False
    if on.off:
        return not baked and _whole_oven_is_off(kitchen, on, slot, resting)
    return not resting and (_oven_is_as_asked(kitchen, on, slot, baked) if on.place == "oven" else not baked)


def _oven_is_as_asked(kitchen: Kitchen, on: Station, slot: Slot, baked: list[Use]) -> bool:
    """One oven from start to end, at settings the step accepts; each turn of the dial starts a new use."""
    ovens = {use.what for use in baked}
    seams = [slot.start, *(use.end for use in baked)]
    if len(ovens) != 1 or not ovens <= set(ovens_allowed(kitchen, on)) or seams[-1] != slot.end:
        return False
    if [use.start for use in baked] != seams[:-1] or any(use.amount != on.shelves for use in baked):
        return False
    assert on.heat is not None
    low, high = settings(on.heat)
    return all(low <= (use.celsius or 0) <= high for use in baked)


def _whole_oven_is_off(kitchen: Kitchen, on: Station, slot: Slot, resting: list[Use]) -> bool:
    """One oven with all its shelves from start to end."""
    if len(resting) != 1 or resting[0].what not in ovens_allowed(kitchen, on):
        return False
    use = resting[0]
    return (use.start, use.end) == (slot.start, slot.end) and use.amount == kitchen.ovens[use.what].shelves


def _keeping_is_as_asked(way: FilledWay, slot: Slot) -> bool:
    if way.keeps is None or slot.keeping is None:
        return way.keeps is None and slot.keeping is None
    where = way.keeps.where
    return slot.keeping.minutes == way.keeps.minutes and slot.keeping.where in (where.place, where.oven)


def _told(slot: Slot) -> str:
    heats = {use.what: f" at {use.celsius} °C" for use in slot.uses if use.celsius is not None}
    return ", ".join(f"{use.amount:g} {use.what}{heats.get(use.what, '')}" for use in slot.uses) or "nothing"


def ovens_allowed(kitchen: Kitchen, station: Station) -> list[str]:
    return [station.oven] if station.oven is not None else list(kitchen.ovens)


def settings(heat: Heat) -> tuple[int, int]:
    """The whole °C a dial may stand at; where none lies inside, the one nearest to what is wanted."""
    low, high = math.ceil(heat.low), math.floor(heat.high)
    return (low, high) if low <= high else (round(heat.want), round(heat.want))


def things_there_are(kitchen: Kitchen) -> dict[str, float]:
    """How much there is of everything but shelves. Room that the plan does not state is not counted."""
    rooms = {"fridge": kitchen.fridge, "freezer": kitchen.freezer}
    stated = {room: litres for room, litres in rooms.items() if litres is not None}
    return {"rings": kitchen.rings, **stated, **kitchen.tools}


def things_asked(kitchen: Kitchen, station: Station) -> dict[str, float]:
    """What work or a result at a station takes, shelves apart."""
    asked: dict[str, float] = dict(station.tools)
    if station.place == "stovetop" or station.rings:
        asked["rings"] = station.rings or 1
    if station.place in ("fridge", "freezer") and station.litres and station.place in things_there_are(kitchen):
        asked[station.place] = station.litres
    return asked


def whole_minutes(span: timedelta) -> int:
    return int(span.total_seconds() // 60)


def after_minutes(moment: datetime, minutes: int) -> datetime:
    return moment + timedelta(minutes=minutes)


def has_no_place(slot: Slot) -> bool:
    """Whether the sheet says its result went without the place it should be kept in."""
    return slot.keeping is not None and slot.keeping.where is None
