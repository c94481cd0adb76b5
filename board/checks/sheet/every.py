"""Every check of food safety that needs the timetable, and what a sheet carries of what they find. Pure."""

from collections.abc import Callable

import msgspec

from board.checks.allergens.plates import plates
from board.checks.plan.cautions import cautions
from board.checks.plan.every import check
from board.checks.sheet import contact, cooling, fridge, out, raw
from board.plan.load import PlanFile
from board.plan.snag import Snag, Weight, in_order
from board.sheet.run_sheet import RunSheet
from board.sheet.told import Stop

SafetyCheck = Callable[[PlanFile, RunSheet], list[Snag]]

CHECKS: tuple[SafetyCheck, ...] = (
    out.dishes_are_eaten_in_time,
    raw.raw_food_is_cooked_in_time,
    out.leftovers_are_put_away_in_time,
    out.dishes_without_ingredients_have_no_clock,
    fridge.nothing_lies_cold_too_long,
    fridge.not_too_much_warm_at_once,
    cooling.hot_food_cools_in_time,
    contact.tools_are_washed_between,
)


def safety_check(file: PlanFile, sheet: RunSheet) -> list[Snag]:
    """What is wrong, doubtful or worth knowing of the plan as the sheet times it."""
    return in_order([snag for each in CHECKS for snag in each(file, sheet)])


def with_warnings(file: PlanFile, sheet: RunSheet) -> RunSheet:
    """The sheet with each thing that must be mended before anybody eats, with the usual cautions, and with
    whose plate is different."""
    snags = in_order([*check(file), *safety_check(file, sheet)])
    stops = dict.fromkeys(Stop(s.code, s.message) for s in snags if s.weight is Weight.STOP and s.safety)
    whose = plates(file)
    courses = tuple(msgspec.structs.replace(course, plates=whose.get(course.name, ())) for course in sheet.courses)
    return msgspec.structs.replace(sheet, stops=tuple(stops), cautions=cautions(file), courses=courses)
