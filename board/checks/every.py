"""Every check of a plan, and the snags they find, heaviest first. Pure."""

from collections.abc import Callable

from board.checks import capacity, completeness, days, fit, hours, keeping
from board.plan.load import PlanFile
from board.plan.snag import Snag, Weight, in_order

Check = Callable[[PlanFile], list[Snag]]

CHECKS: tuple[Check, ...] = (
    capacity.what_is_used_is_there,
    capacity.ovens_reach_their_settings,
    hours.days_have_hours,
    hours.somebody_is_there_when_guests_arrive,
    hours.somebody_is_there_to_serve,
    hours.clock_times_are_plain,
    days.stretches_end_after_they_begin,
    days.hours_lie_before_the_event_is_over,
    days.everybody_has_hours,
    fit.work_fits_the_times_it_is_given,
    fit.work_fits_somebodys_hours,
    keeping.results_keep_until_they_are_taken_up,
    completeness.dishes_feed_the_guests,
    completeness.fridge_room_is_given,
    completeness.names_are_not_the_programs_own,
    completeness.guesses_are_confirmed,
)


def check(plan_file: PlanFile) -> list[Snag]:
    """What is wrong, doubtful or worth knowing."""
    return in_order([snag for each in CHECKS for snag in each(plan_file)])


def stops(plan_file: PlanFile) -> list[Snag]:
    """What must be mended before anything is cooked."""
    return [snag for snag in check(plan_file) if snag.weight is Weight.STOP]
