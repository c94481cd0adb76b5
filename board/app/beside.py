"""Two menus' evenings worked out beside each other; nothing is written and nothing kept."""

from collections.abc import Mapping, Sequence
from datetime import datetime
from pathlib import Path

from board.app.dishes import from_shelf
from board.app.new_plan import from_menu, machine_zone, menu_in, today_in
from board.app.timetables import in_memory
from board.base.plain import one_line
from board.checks.plan.every import stops
from board.checks.sheet.assessed import of_plan
from board.files.pantry import in_the_house
from board.files.plans import read_plan_file, shown
from board.output.menus import Seen, seen_with, seen_without
from board.plan.load import PlanFile
from board.shopping.errands import provisions

PLANS = (".yaml", ".yml")


def seen_beside(
    paths: Sequence[Path], given: Mapping[str, str | None], now: datetime, limit: float | None
) -> list[Seen]:
    """What there is to compare of each, a menu or a plan. `limit`: seconds for each timetable. Raises Trouble."""
    files = [_plan_of(path, given, now) for path in paths]
    return [_seen(shown(path), path, file, limit) for path, file in zip(paths, files, strict=True)]


def _plan_of(path: Path, given: Mapping[str, str | None], now: datetime) -> PlanFile:
    if path.suffix.casefold() in PLANS:
        return read_plan_file(path)
    zone = machine_zone()
    menu = menu_in(path, given, today_in(given.get("zone") or zone, now))
    return from_menu(menu, shown(path), given, now, zone, None, print, from_shelf).file


def _seen(name: str, path: Path, file: PlanFile, limit: float | None) -> Seen:
    plan = of_plan(file)
    stopped = stops(plan.snags)
    if stopped:
        return seen_without(one_line(name), file, len(stopped))
    timed = in_memory(plan, limit=limit)
    bought = provisions(file, timed.the_sheet, in_the_house(file, path))
    return seen_with(one_line(name), timed, bought)
