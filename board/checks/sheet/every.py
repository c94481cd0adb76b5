"""Every check that needs the timetable, and what a sheet carries of their findings. Pure."""

from collections.abc import Callable

from board.checks.allergens.guests_eat import Matrix, matrix
from board.checks.sheet import (
    arrival,
    bought,
    contact,
    cooling,
    fridge,
    left_alone,
    left_over,
    out,
    raw,
    raw_contact,
    standing,
    table,
    usual,
)
from board.checks.sheet.timed import Timed, timed
from board.plan.load import PlanFile
from board.plan.snag import Snag, in_order
from board.sheet.run_sheet import RunSheet

SafetyCheck = Callable[[Timed], list[Snag]]

CHECKS: tuple[SafetyCheck, ...] = (
    out.dishes_are_eaten_in_time,
    raw.raw_food_is_cooked_in_time,
    out.leftovers_are_put_away_in_time,
    out.dishes_without_ingredients_have_no_clock,
    fridge.nothing_lies_cold_too_long,
    fridge.not_too_much_warm_at_once,
    bought.raw_food_is_bought_late_enough,
    cooling.hot_food_cools_in_time,
    contact.tools_are_washed_between,
    raw_contact.raw_food_touches_nothing_ready,
    left_alone.fire_is_watched,
    arrival.what_waits_for_the_guests_does,
    usual.jobs_stand_at_their_usual_hour,
    table.those_who_eat_stay_seated,
    standing.what_is_eaten_at_once_waits_for_nothing,
    left_over.what_is_left_is_offered,
)


def safety_check(file: PlanFile, sheet: RunSheet, eaten: Matrix | None = None) -> list[Snag]:
    """What is wrong, doubtful or worth knowing of the plan as the sheet times it."""
    all_of_it = timed(file, sheet, eaten if eaten is not None else matrix(file))
    return in_order([snag for each in CHECKS for snag in each(all_of_it)])
