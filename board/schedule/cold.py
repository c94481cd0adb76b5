"""What a timetable puts into the fridge and the freezer, from when to when. Pure."""

from collections.abc import Iterator
from datetime import timedelta

from board.plan.load import PlanFile
from board.plan.model.kitchen import Kitchen
from board.plan.phrases.stations import Station
from board.plan.resolve.assume import Task
from board.schedule.dependencies import end_of, hold_until, way_of
from board.schedule.problem import Problem
from board.schedule.solution import Solution
from board.sheet.run_sheet import InCold

PLACES = ("fridge", "freezer")


def rooms(kitchen: Kitchen) -> dict[str, float]:
    """Litres, of what the plan gives them for."""
    given = {"fridge": kitchen.fridge, "freezer": kitchen.freezer}
    return {place: litres for place, litres in given.items() if litres is not None}


def in_the_cold(file: PlanFile, problem: Problem, solution: Solution) -> Iterator[InCold]:
    """While it is worked on there, and then while its result is kept there until it is taken up: bottles until they
    are opened."""
    for n, task in enumerate(file.filled.tasks.values()):
        way = way_of(problem, solution, n)
        chosen = task.ways[way.number]
        start, end = solution.starts[n], end_of(problem, solution, n)
        kept = hold_until(problem, solution, n) if solution.kept[n] and chosen.keeps is not None else None
        stays = [(chosen.where, start, end)]
        if kept is not None and chosen.keeps is not None:
            stays.append((chosen.keeps.where, end, kept[0]))
        for station, begin, over in stays:
            if station.place in PLACES and over > begin and not _next_to_nothing(task, station):
                since, until = (problem.origin + timedelta(minutes=minute) for minute in (begin, over))
                yield InCold(station.place, problem.jobs[n].id, since, until, station.litres)


def _next_to_nothing(task: Task, station: Station) -> bool:
    """A usual job that needs no room worth counting, as `check` tells it was assumed."""
    if task.node.kind == "step" or task.work is None:
        return False
    return station.litres is None and task.work.where is None and task.work.thaws is None
