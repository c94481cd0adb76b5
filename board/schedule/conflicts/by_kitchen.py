"""Changes to where things are cooked and kept, and to what there is to cook with. Pure."""

import math
from collections.abc import Iterator
from itertools import permutations

from board.facts.oven_bends import COOLEST_CELSIUS, MOST_CELSIUS, bears_another_heat, minutes_at
from board.facts.rule_sets import rule_set
from board.facts.safety import HOT_HOLDING_CELSIUS
from board.plan.edit.edits import AddOven, AddWay, Edit, MoreOfTool, MoreRings, MoreRoom, SetOn, SetTakes
from board.plan.phrases.stations import Heat, Keep, Station
from board.plan.phrases.to_phrase import keep_text, setting_text, station_text
from board.plan.places import Loc
from board.schedule.conflicts import words
from board.schedule.conflicts.by_hands import at_another_time, is_held, unused
from board.schedule.conflicts.clashes import OVENS, Taken
from board.schedule.conflicts.proposal import Clashed, Proposal
from board.schedule.problem import LITRE

# What is tried, and in which order: ours.
WIDEST = 25  # °C that what is kept hot may be asked to accept beyond what it says; common practice, no source
HOTTER = 70  # °C by which what is only heated through may stand hotter; common practice, no source
SHARE, BESIDE, KEEP, MORE, OVEN = 4, 6, 6, 12, 30  # weights


def proposed(clashed: Clashed) -> Iterator[Proposal]:
    """A setting is shared, something is kept elsewhere, or there is more to cook with."""
    yield from _share_a_setting(clashed)
    yield from _heat_through_beside(clashed)
    yield from _keep_it_elsewhere(clashed)
    yield from _keep_it_cold(clashed)
    yield from _more_of(clashed)


def _in_the_oven(clashed: Clashed) -> Iterator[tuple[Taken, Heat, Station, Taken, Heat]]:
    """Each thing of the clash that is in an oven with its heat and place, and each other with its heat."""
    for one, other in permutations([taken for taken in clashed.clash.taken if taken.what == OVENS], 2):
        station, beside = _station(clashed, one), _station(clashed, other)
        if station is not None and beside is not None and station.heat is not None and beside.heat is not None:
            yield one, station.heat, station, other, beside.heat


def _share_a_setting(clashed: Clashed) -> Iterator[Proposal]:
    """A dish that bears it is cooked at another's heat, for longer or shorter; what stands kept accepts that too."""
    for taken, heat, station, other, beside in _in_the_oven(clashed):
        found = _kept_at(clashed, taken, heat, station, beside) if taken.kept else None
        yield from [found] if found is not None else _bent(clashed, taken, heat, station, other, beside)


def _kept_at(clashed: Clashed, taken: Taken, heat: Heat, station: Station, beside: Heat) -> Proposal | None:
    """Food that is kept hot stays so."""
    wider = _reaching(heat, beside)
    if wider is None or wider.low < min(heat.low, HOT_HOLDING_CELSIUS):
        return None
    reach = wider.low if wider.low < heat.low else wider.high
    what = words.way_share(clashed.name(taken.job), round(reach))
    weight = SHARE + round(abs(reach - heat.want) / 5)
    return Proposal((what,), (_set(clashed, taken, station, wider),), weight, f"share {taken.job}")


def _bent(
    clashed: Clashed, taken: Taken, heat: Heat, station: Station, other: Taken, beside: Heat
) -> Iterator[Proposal]:
    node = clashed.case.tasks[taken.job].node
    at = max(beside.low, min(beside.high, heat.want))
    near = 0 < abs(at - heat.want) <= MOST_CELSIUS and min(at, heat.want) >= COOLEST_CELSIUS
    if taken.kept or heat.meets(beside) or not near or not bears_another_heat(node.dish or "", node.name):
        return
    takes = clashed.case.way(taken.job).takes
    low, likely, high = (minutes_at(each, heat.want, at) for each in (takes.low, takes.likely, takes.high))
    place, fahrenheit = station_text(station.model_copy(update={"heat": None})), clashed.in_fahrenheit
    head, comma, rest = place.partition(", ")
    edits = (
        SetOn((*clashed.loc(taken.job), "where"), f"{head} at {setting_text(at, fahrenheit=fahrenheit)}{comma}{rest}"),
        SetTakes(clashed.loc(taken.job), low, likely, high),
    )
    beside_it = clashed.case.tasks[other.job].node.dish or clashed.name(other.job)
    longer = likely - takes.likely
    what = words.way_bend(node.name, round(heat.want), round(at), beside_it, longer, in_fahrenheit=fahrenheit)
    yield Proposal((what,), edits, SHARE + round(abs(at - heat.want) / 5), f"share {taken.job}")


def _heat_through_beside(clashed: Clashed) -> Iterator[Proposal]:
    """What was cooked before, and is only heated to a core temperature the plan gives, stands in the hotter oven of
    another; if its own cooking is held to a day or time, that may be sooner too."""
    hot_enough = rule_set(clashed.file.plan.rules).reheat.degrees
    for taken, heat, station, other, beside in _in_the_oven(clashed):
        care = clashed.case.tasks[taken.job].care
        known = care.reheats and care.core is not None and hot_enough.at_least(care.core.celsius)
        if taken.kept or not known or not 0 < beside.low - heat.high <= HOTTER or care.core is None:
            continue
        wider = heat.model_copy(update={"high": float(math.ceil(beside.low))})
        edit = _set(clashed, taken, station, wider)
        name = clashed.name(taken.job)
        what = words.way_beside(name, clashed.name(other.job), round(wider.high), round(care.core.celsius))
        weight = BESIDE + round((wider.high - heat.want) / 10)
        through = Proposal((what,), (edit,), weight, f"beside {taken.job}")
        yield through
        for cooked in _cooked_before(clashed, taken.job):
            yield at_another_time(clashed, cooked).and_(through, 0)


def _cooked_before(clashed: Clashed, job: int) -> Iterator[int]:
    """The steps of its dish that cook in an oven and are held to a day or time, and say how long they keep."""
    mine = clashed.case.tasks[job].node
    for n, task in enumerate(clashed.case.tasks[:job]):
        of_it = (task.node.course, task.node.dish) == (mine.course, mine.dish)
        if of_it and is_held(clashed, n) and clashed.case.way(n).where.place == "oven":
            yield n


def _station(clashed: Clashed, taken: Taken) -> Station | None:
    way = clashed.case.way(taken.job)
    if taken.kept:
        return way.keeps.where if way.keeps is not None else None
    return way.where


def _set(clashed: Clashed, taken: Taken, station: Station, heat: Heat) -> SetOn:
    """The edit by which it stands at that heat."""
    wider = station.model_copy(update={"heat": heat})
    place: Loc = (*clashed.loc(taken.job), "keeps" if taken.kept else "where")
    if not taken.kept:
        return SetOn(place, station_text(wider))
    return SetOn(place, keep_text(Keep(minutes=_keeps(clashed, taken).minutes, where=wider)))


def _keeps(clashed: Clashed, taken: Taken) -> Keep:
    keeps = clashed.case.way(taken.job).keeps
    assert keeps is not None  # it is kept somewhere
    return keeps


def _reaching(heat: Heat, other: Heat) -> Heat | None:
    """The heat with its range just wide enough to overlap the other's; None if that asks too much."""
    if other.high < heat.low and heat.low - other.high <= WIDEST:
        return heat.model_copy(update={"low": float(math.floor(other.high))})
    if other.low > heat.high and other.low - heat.high <= WIDEST:
        return heat.model_copy(update={"high": float(math.ceil(other.low))})
    return None


def _keep_it_elsewhere(clashed: Clashed) -> Iterator[Proposal]:
    """A hot result on a ring or in an insulated box, for as long as it keeps where it was."""
    for taken in clashed.clash.taken:
        if not taken.kept or not _keeps(clashed, taken).where.on_heat:
            continue
        minutes = _keeps(clashed, taken).minutes
        places = [(Station(place="stovetop", rings=1), words.ON_A_RING), (Station(place="hot"), words.IN_A_BOX)]
        for n, (place, where) in enumerate(places):
            if place.place == _keeps(clashed, taken).where.place:
                continue
            way = {"keeps": keep_text(Keep(minutes=minutes, where=place))}
            what = words.way_keep(clashed.name(taken.job), where, HOT_HOLDING_CELSIUS)
            edit = AddWay(clashed.case.tasks[taken.job].node.loc, way)
            yield Proposal((what,), (edit,), KEEP + 2 * n, f"keep {taken.job} {where}")


def _keep_it_cold(clashed: Clashed) -> Iterator[Proposal]:
    """In the fridge, what stands out while its clock runs: for as long as it keeps, or stands now."""
    for stretch in clashed.on_the_clock():
        if stretch.what == "kept" and stretch.minutes:
            keeps = _keeps(clashed, Taken(stretch.job, "fridge", kept=True))
            minutes = max(keeps.minutes, stretch.minutes)
            way = {"keeps": keep_text(Keep(minutes=minutes, where=Station(place="fridge")))}
            edit = AddWay(clashed.case.tasks[stretch.job].node.loc, way)
            what = words.way_cold(clashed.name(stretch.job))
            yield Proposal((what,), (edit,), KEEP, f"cold {stretch.job}")


def _more_of(clashed: Clashed) -> Iterator[Proposal]:
    kitchen = clashed.file.plan.kitchen
    if clashed.over_ovens:
        like = next(iter(kitchen.ovens), None)
        edit: Edit = AddOven(unused(words.SECOND_OVEN, kitchen.ovens), like)
        yield Proposal((words.WAY_OVEN,), (edit,), OVEN, "oven")
    for kind in clashed.kinds:
        if not isinstance(kind, int):
            continue
        resource = clashed.problem.resources[kind]
        if resource.name == "rings":
            for number in (1, 2):
                what = words.way_rings(number)
                yield Proposal((what,), (MoreRings(number),), MORE * number, "rings", grows=True)
        elif resource.name in ("fridge", "freezer"):
            for litres in (10, 20, 40):
                edit = MoreRoom(resource.name, resource.capacity / LITRE + litres)
                what = words.way_room(resource.name, litres)
                yield Proposal((what,), (edit,), MORE + litres // 4, resource.name, grows=True)
        else:
            edit = MoreOfTool(resource.name, 1)
            yield Proposal((words.way_tool(resource.name),), (edit,), MORE, f"tool {resource.name}")
