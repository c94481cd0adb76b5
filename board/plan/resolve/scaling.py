"""A dish's ingredients scaled to those it feeds: exact figures beside kitchen measures. Pure.

Amounts grow in proportion; salt, yeast, leavening and strong spices by factors of their own; counted things are rounded
up for the kitchen only. A rounded figure is never used in a calculation. Times are not scaled.
"""

import math
from dataclasses import dataclass

from board.facts.by_hand import MANY, ByHand, by_hand, hand_factor
from board.plan.model.courses import Course, Dish
from board.plan.model.model import Plan
from board.plan.phrases.quantities import Ingredient
from board.plan.resolve.served import count_of, served

WHOLE_UNITS = ("", "bottle", "tin", "jar", "pack", "sheet", "slice", "clove", "sprig", "bunch", "stick")


@dataclass(frozen=True, slots=True)
class Scaled:
    """One ingredient of a dish. `low` and `high`: exact, in the unit as written; None if it has no figure.

    `factor`: the multiplier used. `hand`: why it differs from the dish's factor. `whole`: counted things, rounded up;
    None if they are whole already or not counted.
    """

    line: Ingredient
    low: float | None
    high: float | None
    factor: float
    hand: ByHand | None = None
    whole: tuple[int, int] | None = None

    @property
    def to_have(self) -> tuple[float | None, float | None]:
        """Low and high of what must be there: counted things whole."""
        return (self.low, self.high) if self.whole is None else (float(self.whole[0]), float(self.whole[1]))


def guests_fed(plan: Plan, course: Course, dish: Dish) -> int | None:
    """How many a dish must feed; None if it does not say how many it is written for.

    If the course's dishes feed the table as written (one alone or all together), none is scaled up. Otherwise each
    feeds everyone it is served to. `scale` overrides both.
    """
    at = next(n for n, other in enumerate(course.dishes) if other is dish)
    eaters = count_of(plan, served(plan, course)[at])
    if dish.for_ is None or dish.scale == "as written" or not eaters:
        return dish.for_
    if dish.scale == "linear" or dish.for_ >= eaters:
        return eaters
    sizes = [each.for_ for each in course.dishes if each.for_ is not None]
    fed_as_written = max(sizes) >= plan.guest_count or sum(sizes) >= plan.guest_count
    return dish.for_ if fed_as_written else eaters


def factor_of(plan: Plan, course: Course, dish: Dish) -> float:
    """The multiplier of a dish's amounts; 1 as written."""
    fed = guests_fed(plan, course, dish)
    return fed / dish.for_ if fed is not None and dish.for_ else 1.0


def scale(line: Ingredient, factor: float) -> Scaled:
    """One ingredient at a dish's factor."""
    if line.low is None or line.high is None:
        return Scaled(line, None, None, 1.0)
    hand = by_hand(line.food) if factor > 1 else None
    own = hand_factor(hand, factor) if hand else factor
    low, high = line.low * own, line.high * own
    return Scaled(line, low, high, own, hand, _whole(line.unit, low, high) if own != 1 else None)


def outgrows_its_times(factor: float) -> bool:
    """Whether a dish grew so much that its times and pots, which are not scaled, need a look."""
    return factor > MANY


def _whole(unit: str, low: float, high: float) -> tuple[int, int] | None:
    """Counted things, rounded up; ignores float error above a whole number."""
    if unit not in WHOLE_UNITS:
        return None
    up = (whole_up(low), whole_up(high))
    return up if abs(up[0] - low) > 1e-9 or abs(up[1] - high) > 1e-9 else None


def whole_up(amount: float) -> int:
    """Rounded up; ignores float error above a whole number."""
    return math.ceil(amount - 1e-9)
