"""Everything that stands in the kitchen and when, read off a run sheet: what is taken, what is in which oven.

Part of `validate`; derived from the plan alone. Moments are aware datetimes in UTC, settings are °C.
"""

from dataclasses import dataclass
from datetime import datetime
from zoneinfo import ZoneInfo

import msgspec

from board.base.words import day_and_clock
from board.facts.heat import ROOM_CELSIUS
from board.plan.model.model import Plan
from board.plan.resolve.assume import Filled
from board.schedule.audit.validate_heat import heat_of, whole_minutes_needed
from board.schedule.audit.validate_ways import Done, after_minutes, has_no_place, settings, things_asked
from board.sheet.run_sheet import Slot, Use


@dataclass(frozen=True)
class Taking:
    """An amount of something in use by a step or its result, for an interval."""

    what: str
    amount: float
    start: datetime
    end: datetime
    name: str


@dataclass(frozen=True)
class Stay:
    """A step, or its result kept warm, in an oven: the settings it accepts, the one it wants, the one it had.

    `had` is the sheet's setting when it came out; None for a kept result, since sheets do not give one.
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
        """Settings the oven may have had when it came out; for a kept result, any it accepts."""
        return {self.wants, *map(float, self.accepts)} if self.had is None else {self.wants, float(self.had)}


@dataclass(frozen=True)
class Rest:
    """A step in the falling heat of a switched-off oven, and the bake it follows (None: there is none).

    `asked`: the setting that bake asks for, °C; `likely`: the minutes it cools for.
    """

    id: str
    name: str
    oven: str
    start: datetime
    end: datetime
    bake: Slot | None
    asked: float
    likely: int
    ajar: bool


@dataclass(frozen=True)
class Kitchen:
    """Everything that stands in the kitchen, and when."""

    plan: Plan
    filled: Filled
    takings: list[Taking]
    stays: list[Stay]
    rests: list[Rest]
    heatings: list[Slot]

    def clock(self, at: datetime) -> str:
        return day_and_clock(at.astimezone(ZoneInfo(self.plan.zone)))


def kitchen_of(plan: Plan, filled: Filled, done: list[Done], slots: tuple[Slot, ...]) -> Kitchen:
    """The kitchen over the whole run sheet, each piece of work done by the way that was read off it."""
    heatings = [each for slot in slots for each in _turning(slot)]
    kitchen = Kitchen(plan, filled, [], [], [], heatings)
    by_id = {each.slot.id: each for each in done}
    starts = {id_: each.slot.start for id_, each in by_id.items()}
    for each in done:
        _place_step(kitchen, each)
        _place_rest(kitchen, each, by_id)
        _place_result(kitchen, each, starts)
    return kitchen


def _turning(slot: Slot) -> list[Slot]:
    """The turn of a dial that a slot is, or that is told as it begins and takes no minutes."""
    if slot.kind == "heat":
        return [slot] if slot.uses else []
    if slot.turn is None:
        return []
    use = Use(slot.turn.oven, 0, slot.start, slot.start, slot.turn.celsius, before=slot.turn.before)
    return [msgspec.structs.replace(slot, kind="heat", end=slot.start, uses=(use,))]


def _place_step(kitchen: Kitchen, each: Done) -> None:
    slot, on = each.slot, each.way.where
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


def _place_rest(kitchen: Kitchen, each: Done, done: dict[str, Done]) -> None:
    """By the plan, a rest follows at once the one step that was baked."""
    slot, way = each.slot, each.way
    ovens = [use.what for use in slot.uses if use.off]
    if not way.where.off or not ovens:
        return
    at_once = [
        link.first for link in kitchen.filled.taken_up if link.second == slot.id and link.most == link.least == 0
    ]
    baked = [(done[id_], done[id_].way.where.heat) for id_ in at_once if id_ in done]
    bake, heat = next(((first, heat) for first, heat in baked if heat is not None), (None, None))
    kitchen.rests.append(
        Rest(
            id=slot.id,
            name=slot.name,
            oven=ovens[0],
            start=slot.start,
            end=slot.end,
            bake=bake.slot if bake else None,
            asked=heat.want if heat else ROOM_CELSIUS,
            likely=way.takes.likely,
            ajar=way.where.ajar,
        )
    )


def _place_result(kitchen: Kitchen, each: Done, starts: dict[str, datetime]) -> None:
    """A result stands from the end of its step until its last successor starts; in an oven, once that is ready."""
    slot, keeps = each.slot, each.way.keeps
    followers = [link.second for link in kitchen.filled.taken_up if link.first == slot.id]
    until = max((starts[id_] for id_ in followers if id_ in starts), default=slot.end)
    if keeps is None or until <= slot.end or has_no_place(slot):
        return
    name = f"what {slot.name} made"
    for what, amount in things_asked(kitchen.plan.kitchen, keeps.where).items():
        kitchen.takings.append(Taking(what, amount, slot.end, until, name))
    goes_in = each.slot.end if each.kept_in is None else _oven_is_ready(kitchen, each, each.kept_in)
    if each.kept_in is not None and keeps.where.heat is not None and goes_in < until:
        kitchen.stays.append(
            Stay(
                id=slot.id,
                name=name,
                oven=each.kept_in,
                shelves=keeps.where.shelves or 1,
                start=goes_in,
                end=until,
                accepts=settings(keeps.where.heat),
                wants=keeps.where.heat.want,
                had=None,
                kept=True,
            )
        )


def _oven_is_ready(kitchen: Kitchen, each: Done, oven: str) -> datetime:
    """When a result goes into the oven it is kept in: at the end of its step, unless it was baked or rested in that
    same oven, at another heat; then once the oven has changed."""
    slot, wants = each.slot, each.way.keeps.where.heat if each.way.keeps else None
    rest = next((rest for rest in kitchen.rests if rest.id == slot.id and rest.oven == oven), None)
    stay = next((stay for stay in kitchen.stays if stay.id == slot.id and stay.oven == oven), None)
    if wants is None or (rest is None and stay is None):
        return slot.end
    heat, (low, high) = heat_of(kitchen.plan.kitchen.ovens[oven]), settings(wants)
    if rest is not None:
        left = round(heat.left(rest.asked, rest.likely, ajar=rest.ajar))
        had, there = left, low <= left <= high
    else:
        assert stay is not None
        had, there = round(stay.wants), stay.accepts[0] <= high and low <= stay.accepts[1]
    return slot.end if there else after_minutes(slot.end, whole_minutes_needed(heat, had, round(wants.want)))
