"""Every check of a plan, and the snags they find, heaviest first. Pure."""

from collections import Counter
from collections.abc import Callable, Iterable

from board.checks.allergens import poured
from board.checks.allergens.guest_snags import guests_can_eat_what_they_are_served
from board.checks.allergens.guests_eat import Matrix, matrix
from board.checks.plan import (
    before_cooking,
    buying,
    by_hand,
    by_heat,
    capacity,
    completeness,
    cooking,
    decided,
    going_in,
    holding,
    how_hot,
    keeping,
    never_harmless,
    order,
    portions,
    tableware,
    words_and_keys,
)
from board.checks.plan import presence as hours
from board.checks.plan import time_windows as fit
from board.checks.plan import written_hours as days
from board.checks.plan.guesses import guesses_are_confirmed
from board.plan.load import PlanFile
from board.plan.snag import About, Snag, Weight, in_order

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
    days.unknown_jobs_have_a_time,
    fit.work_fits_the_times_it_is_given,
    fit.work_fits_somebodys_hours,
    keeping.results_keep_until_they_are_taken_up,
    keeping.no_time_is_longer_than_usual,
    completeness.dishes_feed_the_guests,
    portions.portions_suffice,
    decided.nothing_safe_hangs_on_a_question,
    completeness.fridge_room_is_given,
    completeness.names_are_not_the_programs_own,
    cooking.what_is_cooked_gets_hot_enough,
    how_hot.raw_food_is_cooked,
    before_cooking.frozen_meat_has_time,
    before_cooking.nothing_thaws_in_the_room,
    before_cooking.nothing_marinates_in_the_room,
    before_cooking.no_bird_is_stuffed_ahead,
    before_cooking.raw_poultry_is_not_washed,
    before_cooking.raw_marinade_is_boiled,
    before_cooking.flour_is_baked,
    by_heat.cooking_is_done_in_one_go,
    by_heat.birds_get_a_hot_oven,
    by_heat.nothing_is_reheated_twice,
    never_harmless.raw_fish_was_frozen,
    never_harmless.beans_are_boiled,
    never_harmless.oil_stays_cold,
    never_harmless.nothing_is_poisonous,
    cooking.what_is_cooked_rests,
    cooking.what_is_reheated_gets_hot_enough,
    cooking.what_is_reheated_gets_hot_soon,
    holding.what_is_kept_hot_is_hot_enough,
    holding.what_a_tool_cooks_is_hot_enough,
    holding.the_fridge_is_cold_enough,
    holding.what_thaws_has_time_to,
    holding.what_keeps_cold_keeps_so_long,
    completeness.everybody_is_served_something,
    poured.drinks_are_asked_about,
    tableware.pieces_suffice,
    tableware.everybody_has_a_chair,
    tableware.what_is_laid_is_listed,
    tableware.everybody_has_a_seat,
    buying.packs_and_prices_are_of_what_is_needed,
    buying.prices_by_the_pack_have_a_pack,
    buying.trips_have_a_place,
    buying.what_is_poured_is_bought,
    buying.food_is_bought_before_it_is_used,
    buying.points_have_one_meaning,
    going_in.no_more_goes_in_than_there_is,
    by_hand.long_work_says_its_hands,
    words_and_keys.words_say_what_keys_say,
    order.steps_can_be_done_in_their_order,
)


def check(plan_file: PlanFile, eaten: Matrix | None = None) -> list[Snag]:
    """What is wrong, doubtful or worth knowing. `eaten`: who may eat what, where that is worked out already."""
    found = [snag for each in CHECKS for snag in each(plan_file)]
    eaten = eaten if eaten is not None else matrix(plan_file)
    found += guests_can_eat_what_they_are_served(plan_file, eaten)
    return in_order([*found, *guesses_are_confirmed(plan_file, found)])


def stops(snags: Iterable[Snag]) -> list[Snag]:
    """What must be mended before a timetable can be made; what could hurt a guest stops no timetable."""
    return [snag for snag in snags if snag.weight is Weight.STOP and not snag.safety]


def endangers(before: Iterable[Snag], after: Iterable[Snag]) -> bool:
    """Whether a changed plan, by its snags, could hurt somebody in a way that the plan before could not."""
    return bool(_dangers(after) - _dangers(before))


def _dangers(snags: Iterable[Snag]) -> Counter[tuple[str, About]]:
    """How many stops of each code are about somebody's safety, and the same work, dish, guests and food."""
    return Counter((snag.code, snag.about) for snag in snags if snag.safety and snag.weight is Weight.STOP)
