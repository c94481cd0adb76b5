"""A plan beside its timetable, with what the checks read off both. Pure."""

from dataclasses import dataclass

from board.checks.allergens.guests_eat import Matrix
from board.checks.plan.figures import Figures
from board.checks.sheet.clocks import DishClock, dish_clocks
from board.checks.sheet.paths import Paths
from board.plan.load import PlanFile
from board.sheet.run_sheet import RunSheet


@dataclass(frozen=True, slots=True)
class Timed:
    """What each check of a sheet is handed. `eaten`: who may eat what; `clocks`: of every dish that spoils."""

    file: PlanFile
    sheet: RunSheet
    eaten: Matrix
    say: Figures
    paths: Paths
    clocks: tuple[DishClock, ...]


def timed(file: PlanFile, sheet: RunSheet, eaten: Matrix) -> Timed:
    """All of it, worked out now."""
    return Timed(file, sheet, eaten, Figures(file), Paths(file, sheet), tuple(dish_clocks(sheet)))
