"""Whether raw meat and fish are bought in time to be cooked fresh. Pure."""

from collections.abc import Iterator
from datetime import datetime
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.checks.sheet.timed import Timed
from board.facts.called import same_food
from board.facts.food import raw_class
from board.facts.raw_keeps import RawKeep, raw_keep
from board.plan.model.courses import Dish
from board.plan.phrases.quantities import Ingredient
from board.plan.places import Loc
from board.plan.resolve.going_in import foods_of
from board.plan.resolve.trips import Trip, trips
from board.plan.snag import Snag, Weight

Begun = tuple[Dish, Loc, datetime]


def raw_food_is_bought_late_enough(timed: Timed) -> list[Snag]:
    """buying 5: the last trip before a dish with raw meat, poultry or fish is begun lies more days before it than the
    food keeps raw, by the upper figure of its chart; what is bought frozen, or is in the house, is left out. Source:
    `raw_keep`."""
    shopping = trips(timed.file.plan)
    house = {same_food(entry.food) for entry in timed.file.plan.pantry if not entry.file}
    found = []
    for dish, loc, begun in _dishes(timed) if shopping else ():
        trip = max((each for each in shopping if each.end <= begun), key=lambda each: each.end, default=None)
        for at, line in foods_of(dish):
            keep = raw_keep(line.food, line.section)
            if trip is None or keep.most is None or raw_class(line.food) is None or same_food(line.food) in house:
                continue
            days = (begun.astimezone(ZoneInfo(timed.sheet.zone)).date() - trip.day).days
            if days > keep.most:
                found.append(_too_early(timed, dish, line, trip, days, keep, (*loc, *at)))
    return found


def _dishes(timed: Timed) -> Iterator[Begun]:
    """Each dish that has slots, where it stands, and when its first step begins."""
    for c, course in enumerate(timed.file.plan.courses):
        for d, dish in enumerate(course.dishes):
            starts = [s.start for s in timed.sheet.slots if (s.dish, s.course) == (dish.dish, course.course)]
            if starts:
                yield dish, ("courses", c, "dishes", d), min(starts)


def _too_early(timed: Timed, dish: Dish, line: Ingredient, trip: Trip, days: int, keep: RawKeep, loc: Loc) -> Snag:
    when = shared.day_and_clock(trip.start.astimezone(ZoneInfo(timed.sheet.zone)))
    message = (
        f"{line.food} can be bought on {when} at the latest, {days} days before {dish.dish} is begun; "
        f"raw, it keeps {keep.days} to {keep.most} days in the fridge"
    )
    mend = "Add a later shopping trip, freeze it on the day, or buy it frozen: `1 kg chicken thighs, frozen`."
    place = timed.file.places.of(loc)
    return Snag("buying 5", Weight.MIND, message, mend, place, safety=True, source=keep.source)
