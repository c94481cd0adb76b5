"""Whether each oven can be as hot as a run sheet asks, in the time it has; and left alone while something rests in it.

Part of `validate`; derived from the plan alone. Moments are aware datetimes in UTC, settings are °C.
"""

import math
from collections.abc import Iterator
from datetime import datetime, timedelta
from itertools import combinations

from board.facts.heat import ROOM_CELSIUS
from board.schedule.audit.validate_heat import A_TRIFLE, heat_of
from board.schedule.audit.validate_stays import Kitchen, Rest, Stay
from board.schedule.audit.validate_ways import after_minutes, whole_minutes
from board.sheet.run_sheet import Slot

OFF_AFTER = timedelta(minutes=90)  # an oven that stood empty this long has been turned off; ours


def oven_snags(kitchen: Kitchen, slots: tuple[Slot, ...]) -> Iterator[str]:
    """A sentence for each thing the ovens cannot do."""
    yield from _things_together_share_a_setting(kitchen)
    yield from _the_dial_shows_one_setting(kitchen, slots)
    yield from _a_bake_has_one_setting(kitchen, slots)
    yield from _rests_follow_their_bake(kitchen)
    yield from _rests_are_left_alone(kitchen)
    yield from _an_oven_has_time_to_change(kitchen)
    yield from _steps_go_into_a_ready_oven(kitchen)
    yield from _results_are_kept_at_their_heat(kitchen)
    yield from _nothing_suffers_from_a_heating(kitchen)
    yield from _a_turn_takes_its_minutes(kitchen)


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


def _a_bake_has_one_setting(kitchen: Kitchen, slots: tuple[Slot, ...]) -> Iterator[str]:
    """From its start to its end: it is told one, and nobody turns the dial meanwhile."""
    for slot in slots:
        told = dict.fromkeys(use.celsius for use in slot.uses if slot.kind != "heat" and use.celsius is not None)
        if len(told) > 1:
            yield f"{slot.name} is told {len(told)} settings: {', '.join(f'{each} °C' for each in told)}"
    for heating in kitchen.heatings:
        oven, celsius = _turned(heating)
        for bake in kitchen.stays:
            if bake.oven == oven and not bake.kept and bake.start < heating.end and heating.start < bake.end:
                at = kitchen.clock(heating.start)
                yield f"the {oven} is turned to {celsius} °C at {at}, while {bake.name} bakes"


def _an_oven_has_time_to_change(kitchen: Kitchen) -> Iterator[str]:
    for earlier, later in _pairs(kitchen):
        turned_inside = earlier.id == later.id or _is_turned_with_the_food_inside(kitchen, earlier, later)
        if (
            earlier.meets(later)
            or turned_inside
            or later.start < earlier.end
            or _rested_between(kitchen, earlier, later)
        ):
            continue
        needed = _minutes(kitchen, later.oven, _setting(earlier, later), _setting(later, earlier))
        if _moment_after(earlier.end, needed) > later.start:
            yield (
                f"{later.name} goes into the {later.oven} at {kitchen.clock(later.start)}, "
                f"but it needs {needed:g} min to change after {earlier.name} at {kitchen.clock(earlier.end)}"
            )


def _setting(stay: Stay, other: Stay) -> float:
    """What a bake was told; for what is kept, what it bears nearest to the other's."""
    if stay.had is not None:
        return stay.had
    low, high = stay.accepts
    return min(max(other.wants if other.had is None else other.had, low), high)


def _is_turned_with_the_food_inside(kitchen: Kitchen, earlier: Stay, later: Stay) -> bool:
    """Nothing leaves the oven: the later stay is a kept result's one successor, or follows a step at once."""
    if later.kept or earlier.end != later.start:
        return False
    followers = [link for link in kitchen.filled.taken_up if link.first == earlier.id]
    if earlier.kept:
        return [link.second for link in followers] == [later.id]
    return any(link.second == later.id and link.most == link.least for link in followers)


def _rested_between(kitchen: Kitchen, earlier: Stay, later: Stay) -> bool:
    """The oven was switched off in between, so it does not start from the earlier setting."""
    rests = [rest for rest in kitchen.rests if rest.oven == earlier.oven]
    return any(earlier.end <= rest.start and rest.end <= later.start for rest in rests)


def _steps_go_into_a_ready_oven(kitchen: Kitchen) -> Iterator[str]:
    for stay in kitchen.stays:
        last = _last_in_the_oven(kitchen, stay)
        if stay.kept or _still_stands_right(last, stay) or _comes_to_heat_from_its_rest(kitchen, last, stay):
            continue
        inside = [other for other, later in _pairs(kitchen) if later is stay and other.end == stay.start]
        if any(_is_turned_with_the_food_inside(kitchen, other, stay) for other in inside):
            continue
        if not any(_heats_in_time(kitchen, heating, last, stay) for heating in kitchen.heatings):
            yield (
                f"{stay.name} goes into the {stay.oven} at {kitchen.clock(stay.start)}, "
                "and it is not brought to its heat in time"
            )


def _comes_to_heat_from_its_rest(kitchen: Kitchen, last: Stay | Rest | None, stay: Stay) -> bool:
    """It follows its rest at once, in the same oven, and comes to heat with it."""
    if not isinstance(last, Rest) or last.end != stay.start:
        return False
    followers = [link for link in kitchen.filled.taken_up if link.first == last.id]
    return any(link.second == stay.id and link.most == link.least for link in followers)


def _results_are_kept_at_their_heat(kitchen: Kitchen) -> Iterator[str]:
    """The dial was last turned to a heat they bear; and after a rest, the oven must reheat in time for them too."""
    for stay in kitchen.stays:
        if not stay.kept:
            continue
        reading = _dial_at(kitchen.heatings, stay.oven, stay.start)
        if reading is None or not stay.accepts_setting(reading):
            told = "off" if reading is None else f"at {reading} °C"
            yield f"{stay.name} goes into the {stay.oven} at {kitchen.clock(stay.start)}, and that is {told}"
        rest = _last_in_the_oven(kitchen, stay)
        if not isinstance(rest, Rest) or rest.id == stay.id or stay.start < rest.end:
            continue
        heat, left = heat_of(kitchen.plan.kitchen.ovens[stay.oven]), _left_by(kitchen, rest)
        gap = whole_minutes(stay.start - rest.end)
        if not any(heat.is_there_in(gap, left, celsius) for celsius in stay.stood_at):
            yield (
                f"{stay.name} goes into the {stay.oven} at {kitchen.clock(stay.start)}, {gap} min after {rest.name}: "
                f"too soon to stand at {stay.wants:g} °C"
            )


def _dial_at(heatings: list[Slot], oven: str, at: datetime) -> int | None:
    """What the oven was last brought to, °C; None if it never was."""
    turned = [(heating.end, _turned(heating)[1]) for heating in heatings if _turned(heating)[0] == oven]
    return max((each for each in turned if each[0] <= at), default=(at, None))[1]


def _a_turn_takes_its_minutes(kitchen: Kitchen) -> Iterator[str]:
    """From one setting to the next, in an oven that stayed on; but none where it is turned over food that stays in."""
    for heating in kitchen.heatings:
        oven, celsius = _turned(heating)
        inside = [stay for stay in kitchen.stays if stay.oven == oven]
        rests = [rest.end for rest in kitchen.rests if rest.oven == oven and rest.end <= heating.start]
        last = max((stay.end for stay in inside if stay.start < heating.end), default=None)
        before = _dial_at([other for other in kitchen.heatings if other is not heating], oven, heating.start)
        rested = last is not None and any(end >= last for end in rests)
        if before is None or last is None or rested or heating.end - last >= OFF_AFTER:
            continue  # switched off before: how long it then takes is weighed as something goes in
        over = [
            one.end == heating.end == other.start and _is_turned_with_the_food_inside(kitchen, one, other)
            for one in inside
            for other in inside
        ]
        length = whole_minutes(heating.end - heating.start)
        if not any(over) and not heat_of(kitchen.plan.kitchen.ovens[oven]).is_there_in(length, before, celsius):
            at = kitchen.clock(heating.start)
            yield f"the {oven} is turned from {before} to {celsius} °C at {at} within {length} min: too short"


def _last_in_the_oven(kitchen: Kitchen, stay: Stay) -> Stay | Rest | None:
    """What is in the oven when the stay starts; if nothing, what left it last."""
    before: list[Stay | Rest] = [other for other, later in _pairs(kitchen) if later is stay and other.id != stay.id]
    before += [rest for rest in kitchen.rests if rest.oven == stay.oven and rest.start <= stay.start]
    return max(before, key=lambda other: (min(other.end, stay.start), other.start), default=None)


def _still_stands_right(last: Stay | Rest | None, stay: Stay) -> bool:
    """The oven is on, and stands where the step accepts it."""
    if not isinstance(last, Stay) or _was_switched_off(last, stay):
        return False
    return last.meets(stay) if last.had is None else stay.accepts_setting(last.had)


def _was_switched_off(last: Stay, stay: Stay) -> bool:
    return stay.start - last.end >= OFF_AFTER


def _heats_in_time(kitchen: Kitchen, heating: Slot, last: Stay | Rest | None, stay: Stay) -> bool:
    """Turned early enough, in an oven nobody turns elsewhere in between."""
    oven, celsius = _turned(heating)
    right = oven == stay.oven and stay.accepts_setting(celsius)
    fresh = heating.end <= stay.start < heating.end + OFF_AFTER
    if not right or not fresh:
        return False
    if isinstance(last, Stay) and not _was_switched_off(last, stay):
        return _is_turned_in_time(kitchen, heating, last, stay)
    length = whole_minutes(heating.end - heating.start)
    heat = heat_of(kitchen.plan.kitchen.ovens[oven])
    return any(heat.is_there_in(length, left, celsius) for left in _left(kitchen, last, heating))


def _is_turned_in_time(kitchen: Kitchen, heating: Slot, last: Stay, stay: Stay) -> bool:
    """Whether an oven that is still on is turned in time."""
    if heating.end < last.start:
        return False
    oven, celsius = _turned(heating)
    needed = min(_minutes(kitchen, oven, start, celsius) for start in last.stood_at)
    return _moment_after(heating.start, needed) <= stay.start


def _left(kitchen: Kitchen, last: Stay | Rest | None, heating: Slot) -> set[float]:
    """How hot a switched-off oven may still be when it is switched on again, °C."""
    if last is None:
        return {ROOM_CELSIUS}
    heat = heat_of(kitchen.plan.kitchen.ovens[last.oven])
    since = whole_minutes(heating.start - last.end)
    had = {_left_by(kitchen, last)} if isinstance(last, Rest) else last.stood_at
    return {heat.left(celsius, since) for celsius in had}


def _left_by(kitchen: Kitchen, rest: Rest) -> float:
    """How hot the oven still is as the rest ends, °C; from then on its door is shut."""
    return heat_of(kitchen.plan.kitchen.ovens[rest.oven]).left(rest.asked, rest.likely, ajar=rest.ajar)


def _rests_follow_their_bake(kitchen: Kitchen) -> Iterator[str]:
    for rest in kitchen.rests:
        bake = rest.bake
        if bake is None:
            yield f"{rest.name} rests in the {rest.oven}, switched off, after nothing that was baked"
            continue
        if rest.start != bake.end:
            at, out = kitchen.clock(rest.start), kitchen.clock(bake.end)
            yield f"{rest.name} begins at {at}, and the oven is switched off as {bake.name} ends, at {out}"
        ovens = [use.what for use in bake.uses]  # a bake of no minutes takes none
        if bake.end > bake.start and rest.oven not in ovens:
            yield f"{rest.name} rests in the {rest.oven}, which {bake.name} was not in"


def _rests_are_left_alone(kitchen: Kitchen) -> Iterator[str]:
    for rest in kitchen.rests:
        others: list[Stay | Rest] = [*kitchen.stays, *(other for other in kitchen.rests if other is not rest)]
        for other in others:
            if other.oven == rest.oven and other.start < rest.end and rest.start < other.end:
                at = kitchen.clock(max(other.start, rest.start))
                yield f"{other.name} is in the {rest.oven} at {at}, while {rest.name} rests in it, switched off"
        for heating in kitchen.heatings:
            if _turned(heating)[0] == rest.oven and heating.start < rest.end and rest.start < heating.end:
                at = kitchen.clock(max(heating.start, rest.start))
                yield f"the {rest.oven} is turned to {_turned(heating)[1]} °C at {at}, while {rest.name} rests in it"


def _nothing_suffers_from_a_heating(kitchen: Kitchen) -> Iterator[str]:
    for heating in kitchen.heatings:
        oven, celsius = _turned(heating)
        for stay in kitchen.stays:
            inside = stay.oven == oven and stay.start < heating.end and heating.start < stay.end
            if inside and not stay.accepts_setting(celsius) and not _is_out_in_time(kitchen, heating, stay):
                at = kitchen.clock(heating.start)
                yield f"{stay.name} is in the {oven} as it goes to {celsius} °C at {at}, not its own setting"


def _is_out_in_time(kitchen: Kitchen, heating: Slot, stay: Stay) -> bool:
    """Whether what does not bear the new heat leaves while the oven is still as it bears it."""
    oven, celsius = _turned(heating)
    before = _dial_at([other for other in kitchen.heatings if other is not heating], oven, heating.start)
    if before is None or stay.end > heating.end:
        return False
    heat, minutes = heat_of(kitchen.plan.kitchen.ovens[oven]), whole_minutes(stay.end - heating.start)
    low, high = stay.accepts
    return heat.minutes(before, high if celsius > before else low) >= minutes


def _turned(heating: Slot) -> tuple[str, int]:
    return heating.uses[0].what, heating.uses[0].celsius or 0


def _minutes(kitchen: Kitchen, oven: str, start: float, end: float) -> float:
    """Whole minutes the oven needs from one setting to another; infinite where it never gets there."""
    needed = heat_of(kitchen.plan.kitchen.ovens[oven]).minutes(start, end)
    return needed if math.isinf(needed) else math.ceil(needed - A_TRIFLE)


def _moment_after(moment: datetime, minutes: float) -> datetime:
    return datetime.max.replace(tzinfo=moment.tzinfo) if math.isinf(minutes) else after_minutes(moment, int(minutes))
