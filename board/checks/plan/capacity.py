"""Whether the kitchen has what single steps ask of it. A step that asks for more can never be done: stop."""

from collections.abc import Iterator

from board.base import words as shared
from board.plan.load import PlanFile
from board.plan.phrases.stations import Station
from board.plan.places import Loc
from board.plan.resolve.assume import Task
from board.plan.snag import Snag, Weight


def stations(task: Task) -> Iterator[tuple[Station, Loc]]:
    """Every place a task may use, with its path in the plan."""
    for number, way in enumerate(task.ways):
        loc: Loc = task.node.loc if number == 0 else (*task.node.loc, "or", number - 1)
        yield way.where, (*loc, "where")
        if way.keeps is not None:
            yield way.keeps.where, (*loc, "keeps")


def what_is_used_is_there(file: PlanFile) -> list[Snag]:
    """kitchen 1 rings, kitchen 2 tools, kitchen 3 shelves, kitchen 4 room in fridge or freezer, kitchen 5 an oven at
    all."""
    found = []
    for task in file.filled.tasks.values():
        if task.work is None:
            continue
        for station, loc in stations(task):
            for code, what, asked, there in _amounts(file, station):
                if asked > there:
                    message = f"{task.node.name} asks for {asked:g} {what}, and there are {there:g}"
                    mend = "Ask for less, or add to what the kitchen has."
                    found.append(Snag(code, Weight.STOP, message, mend, file.places.of(loc)))
    return list(dict.fromkeys(found))


def _amounts(file: PlanFile, station: Station) -> Iterator[tuple[str, str, float, float]]:
    kitchen = file.plan.kitchen
    if station.place == "stovetop" or station.rings:
        yield "kitchen 1", "rings", station.rings or 1, kitchen.rings
    for tool, count in station.tools.items():
        yield "kitchen 2", tool, count, kitchen.tools.get(tool, 0)
    if station.place == "oven":
        ovens = [kitchen.ovens[station.oven]] if station.oven else list(kitchen.ovens.values())
        if ovens:
            yield "kitchen 3", "shelves", station.shelves or 1, max(oven.shelves for oven in ovens)
        else:
            yield "kitchen 5", "oven", 1, 0
    room = {"fridge": kitchen.fridge, "freezer": kitchen.freezer}.get(station.place)
    if room is not None and station.litres is not None:
        yield "kitchen 4", f"litres of {station.place}", station.litres, room


def ovens_reach_their_settings(file: PlanFile) -> list[Snag]:
    """kitchen 6: a temperature no oven reaches. kitchen 7: temperature and shelves exist, but not in one oven."""
    found = []
    ovens = file.plan.kitchen.ovens
    for task in file.filled.tasks.values():
        for station, loc in stations(task):
            if station.place != "oven" or station.heat is None or not ovens:
                continue
            possible = {station.oven: ovens[station.oven]} if station.oven else ovens
            hot = [oven for oven in possible.values() if oven.low <= station.heat.want <= oven.high]
            shelves = station.shelves or 1
            place = file.places.of(loc)
            if not hot:
                reach = " and ".join(
                    f"the {name} goes from {shared.degrees(o.low)} to {shared.degrees(o.high)}"
                    for name, o in possible.items()
                )
                message = f"{task.node.name} wants {_degrees(station.heat.want)}, and {reach}"
                mend = "Change the setting, or the oven's low and high under kitchen."
                found.append(Snag("kitchen 6", Weight.STOP, message, mend, place))
            elif all(oven.shelves < shelves for oven in hot) and any(o.shelves >= shelves for o in possible.values()):
                heat = _degrees(station.heat.want)
                message = f"{task.node.name} wants {shelves} shelves at {heat}, and no one oven has both"
                mend = "Ask for fewer shelves, or make two steps of it, one for each oven."
                found.append(Snag("kitchen 7", Weight.STOP, message, mend, place))
    return list(dict.fromkeys(found))


def _degrees(celsius: float) -> str:
    """`180 °C (356 °F)`: whichever of the two the host's dial shows."""
    return shared.dial(round(celsius))
