"""Whether the kitchen can do what a run sheet asks of it: rings, room, tools, and ovens with their heat.

Part of `validate`; derived from the plan alone. Moments are aware datetimes in UTC, settings are °C.
"""

import math
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import combinations
from zoneinfo import ZoneInfo

from board.kitchen.heat import (
    ROOM_CELSIUS,
    OvenRates,
    cooling_constant,
    default_rates,
    heating_rate,
    minutes_between,
)
from board.plan.assume import Filled
from board.plan.model import Oven, Plan
from board.timetable.run_sheet import Slot
from board.timetable.validate_ways import (
    Done,
    after_minutes,
    has_no_place,
    ovens_allowed,
    settings,
    things_asked,
    things_there_are,
)
from board.words import day_and_clock

OFF_AFTER = timedelta(minutes=90)  # an oven that stood empty this long has been turned off
A_TRIFLE = 1e-6  # litres and minutes are added up as floats


@dataclass(frozen=True)
class Taking:
    """So much of something, for a while, by a step or by its result."""

    what: str
    amount: float
    start: datetime
    end: datetime
    name: str


@dataclass(frozen=True)
class Stay:
    """A step, or its result kept warm, in an oven: the settings it accepts, the one it wants, the one it had.

    `had` is the setting when it came out, as the sheet tells it; None for a result: no sheet tells it.
    """

    id: str
    name: str
    oven: str
    shelves: int
    start: datetime
    end: datetime
    accepts: tuple[int, int]
    wants: float
    had: int | None
    kept: bool

    def meets(self, other: "Stay") -> bool:
        """One setting would do for both."""
        return self.accepts[0] <= other.accepts[1] and other.accepts[0] <= self.accepts[1]

    def accepts_setting(self, celsius: int) -> bool:
        return self.accepts[0] <= celsius <= self.accepts[1]

    @property
    def stood_at(self) -> set[float]:
        """The settings the oven may have stood at when it came out; for a result any it accepts."""
        return {self.wants, *map(float, self.accepts)} if self.had is None else {self.wants, float(self.had)}


@dataclass(frozen=True)
class Kitchen:
    """Everything that stands in the kitchen, and when."""

    plan: Plan
    filled: Filled
    takings: list[Taking]
    stays: list[Stay]
    heatings: list[Slot]

    def clock(self, at: datetime) -> str:
        return day_and_clock(at.astimezone(ZoneInfo(self.plan.zone)))


def kitchen_snags(plan: Plan, filled: Filled, done: list[Done], slots: tuple[Slot, ...]) -> Iterator[str]:
    """A sentence for each thing the kitchen cannot do."""
    heatings = [slot for slot in slots if slot.kind == "heat" and slot.uses]
    kitchen = Kitchen(plan, filled, [], [], heatings)
    starts = {each.slot.id: each.slot.start for each in done}
    for each in done:
        _place_step(kitchen, each)
        _place_result(kitchen, each, starts)
    yield from _nothing_is_taken_twice(kitchen)
    yield from _shelves_suffice(kitchen)
    yield from _things_together_share_a_setting(kitchen)
    yield from _the_dial_shows_one_setting(kitchen, slots)
    yield from _an_oven_has_time_to_change(kitchen)
    yield from _steps_go_into_a_ready_oven(kitchen)
    yield from _nothing_suffers_from_a_heating(kitchen)


def _place_step(kitchen: Kitchen, each: Done) -> None:
    slot, on = each.slot, each.way.on
    if slot.start == slot.end:
        return
    for what, amount in things_asked(kitchen.plan.kitchen, on).items():
        kitchen.takings.append(Taking(what, amount, slot.start, slot.end, slot.name))
    baked = [use for use in slot.uses if use.celsius is not None]
    if on.heat is not None and baked:
        kitchen.stays.append(
            Stay(
                id=slot.id,
                name=slot.name,
                oven=baked[0].what,
                shelves=on.shelves or 1,
                start=slot.start,
                end=slot.end,
                accepts=settings(on.heat),
                wants=on.heat.want,
                had=baked[-1].celsius,
                kept=False,
            )
        )


def _place_result(kitchen: Kitchen, each: Done, starts: dict[str, datetime]) -> None:
    """The result stands from the end of its step until the last of those that follow takes it up."""
    slot, keeps = each.slot, each.way.keeps
    followers = [link.second for link in kitchen.filled.links if link.first == slot.id]
    until = max((starts[id_] for id_ in followers if id_ in starts), default=slot.end)
    if keeps is None or until <= slot.end or has_no_place(slot):
        return
    name = f"what {slot.name} made"
    for what, amount in things_asked(kitchen.plan.kitchen, keeps.where).items():
        kitchen.takings.append(Taking(what, amount, slot.end, until, name))
    allowed = ovens_allowed(kitchen.plan.kitchen, keeps.where)
    if keeps.where.heat is not None and keeps.where.place == "oven" and allowed:
        own = next((use.what for use in slot.uses if use.what in allowed), allowed[0])
        kitchen.stays.append(
            Stay(
                id=slot.id,
                name=name,
                oven=own,
                shelves=keeps.where.shelves or 1,
                start=slot.end,
                end=until,
                accepts=settings(keeps.where.heat),
                wants=keeps.where.heat.want,
                had=None,
                kept=True,
            )
        )


def _nothing_is_taken_twice(kitchen: Kitchen) -> Iterator[str]:
    for what, there_is in things_there_are(kitchen.plan.kitchen).items():
        taking = [each for each in kitchen.takings if each.what == what]
        yield from _more_than_there_is(kitchen, what, there_is, taking)


def _shelves_suffice(kitchen: Kitchen) -> Iterator[str]:
    for name, oven in kitchen.plan.kitchen.ovens.items():
        taking = [
            Taking(name, stay.shelves, stay.start, stay.end, stay.name) for stay in kitchen.stays if stay.oven == name
        ]
        yield from _more_than_there_is(kitchen, f"shelves of the {name}", oven.shelves, taking)


def _more_than_there_is(kitchen: Kitchen, what: str, there_is: float, taking: list[Taking]) -> Iterator[str]:
    """What is in use only ever grows when something begins, so it is counted then."""
    for at in sorted({each.start for each in taking}):
        now = [each for each in taking if each.start <= at < each.end]
        in_use = sum(each.amount for each in now)
        if in_use > there_is + A_TRIFLE:
            names = ", ".join(each.name for each in now)
            yield f"{in_use:g} {what} are in use at {kitchen.clock(at)}, and there are {there_is:g}: {names}"


def _pairs(kitchen: Kitchen) -> Iterator[tuple[Stay, Stay]]:
    """Every two stays in the same oven, the one that starts first before the other."""
    in_order = sorted(kitchen.stays, key=lambda stay: (stay.start, stay.end))
    return ((one, other) for one, other in combinations(in_order, 2) if one.oven == other.oven)


def _things_together_share_a_setting(kitchen: Kitchen) -> Iterator[str]:
    """Ranges that meet two by two all meet in one point, so pairs are enough (Helly's theorem on a line)."""
    for earlier, later in _pairs(kitchen):
        if later.start < earlier.end and not earlier.meets(later):
            at = kitchen.clock(later.start)
            yield f"no setting does for both {earlier.name} and {later.name}, in the {later.oven} at {at}"


def _the_dial_shows_one_setting(kitchen: Kitchen, slots: tuple[Slot, ...]) -> Iterator[str]:
    uses = [(use, slot) for slot in slots if slot.kind != "heat" for use in slot.uses if use.celsius is not None]
    for (one, first), (other, second) in combinations(uses, 2):
        together = one.what == other.what and one.start < other.end and other.start < one.end
        if together and one.celsius != other.celsius:
            at = kitchen.clock(max(one.start, other.start))
            yield f"the {one.what} is told two settings at {at}: for {first.name} and {second.name}"


def _an_oven_has_time_to_change(kitchen: Kitchen) -> Iterator[str]:
    for earlier, later in _pairs(kitchen):
        turned_inside = earlier.id == later.id or _is_turned_with_the_food_inside(kitchen, earlier, later)
        if earlier.meets(later) or turned_inside or later.start < earlier.end:
            continue
        needed = _minutes(kitchen, later.oven, earlier.wants, later.wants)
        if _moment_after(earlier.end, needed) > later.start:
            yield (
                f"{later.name} goes into the {later.oven} at {kitchen.clock(later.start)}, "
                f"but it needs {needed:g} min to change after {earlier.name} at {kitchen.clock(earlier.end)}"
            )


def _is_turned_with_the_food_inside(kitchen: Kitchen, earlier: Stay, later: Stay) -> bool:
    """A kept result that its one follower takes up, or a step that follows at once and did: nothing leaves the oven."""
    if later.kept or earlier.end != later.start:
        return False
    followers = [link for link in kitchen.filled.links if link.first == earlier.id]
    if earlier.kept:
        return [link.second for link in followers] == [later.id]
    return any(link.second == later.id and link.most == link.least for link in followers)


def _steps_go_into_a_ready_oven(kitchen: Kitchen) -> Iterator[str]:
    for stay in kitchen.stays:
        before = [other for other, later in _pairs(kitchen) if later is stay and other.id != stay.id]
        last = max(before, key=lambda other: (min(other.end, stay.start), other.start), default=None)
        if stay.kept or (last is not None and _still_stands_right(last, stay)):
            continue
        inside = [other for other, later in _pairs(kitchen) if later is stay and other.end == stay.start]
        if any(_is_turned_with_the_food_inside(kitchen, other, stay) for other in inside):
            continue
        if not any(_heats_in_time(kitchen, heating, last, stay) for heating in kitchen.heatings):
            yield (
                f"{stay.name} goes into the {stay.oven} at {kitchen.clock(stay.start)}, "
                "and it is not brought to its heat in time"
            )


def _still_stands_right(last: Stay, stay: Stay) -> bool:
    """The oven is on, and stands where the step accepts it."""
    if stay.start - last.end >= OFF_AFTER:
        return False
    return last.meets(stay) if last.had is None else stay.accepts_setting(last.had)


def _heats_in_time(kitchen: Kitchen, heating: Slot, last: Stay | None, stay: Stay) -> bool:
    """Turned early enough, in an oven nobody turns elsewhere in between.

    Where one setting would have done for both, the dial may as well be turned as the last thing comes out.
    """
    oven, celsius = _turned(heating)
    right = oven == stay.oven and stay.accepts_setting(celsius)
    fresh = heating.end <= stay.start < heating.end + OFF_AFTER
    if not right or not fresh or (last is not None and heating.end < last.start):
        return False
    needed = min(_minutes(kitchen, oven, start, celsius) for start in _comes_from(heating, last, stay))
    if last is not None and last.meets(stay) and heating.start <= last.end:
        return True
    return _moment_after(heating.start, needed) <= stay.start


def _comes_from(heating: Slot, last: Stay | None, stay: Stay) -> set[float]:
    """The settings the oven may have had before: off for long it is cold, near that it may be either."""
    if last is None or heating.start - last.end >= OFF_AFTER:
        return {ROOM_CELSIUS}
    if stay.start - last.end >= OFF_AFTER:
        return {ROOM_CELSIUS, *last.stood_at}
    return last.stood_at


def _nothing_suffers_from_a_heating(kitchen: Kitchen) -> Iterator[str]:
    for heating in kitchen.heatings:
        oven, celsius = _turned(heating)
        for stay in kitchen.stays:
            inside = stay.oven == oven and stay.start < heating.end and heating.start < stay.end
            if inside and not stay.accepts_setting(celsius):
                at = kitchen.clock(heating.start)
                yield f"{stay.name} is in the {oven} as it goes to {celsius} °C at {at}, not its own setting"


def _turned(heating: Slot) -> tuple[str, int]:
    return heating.uses[0].what, heating.uses[0].celsius or 0


def _minutes(kitchen: Kitchen, oven: str, start: float, end: float) -> float:
    """Whole minutes the oven needs from one setting to another; infinite where it never gets there."""
    needed = minutes_between(_rates(kitchen.plan.kitchen.ovens[oven]), start, end)
    return needed if math.isinf(needed) else math.ceil(needed - A_TRIFLE)


def _rates(oven: Oven) -> OvenRates:
    usual = default_rates()
    heats, cools = oven.heats, oven.cools
    return OvenRates(
        heating_rate(heats.minutes, heats.start, heats.end) if heats else usual.heating,
        cooling_constant(cools.minutes, cools.start, cools.end) if cools else usual.cooling,
    )


def _moment_after(moment: datetime, minutes: float) -> datetime:
    return datetime.max.replace(tzinfo=moment.tzinfo) if math.isinf(minutes) else after_minutes(moment, int(minutes))
