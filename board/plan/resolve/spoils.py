"""What spoils unchilled: by the host's word, otherwise by a dish's ingredients. Pure."""

from board.facts.food import facts
from board.facts.food import raw_class as raw_class
from board.plan.model.courses import Dish
from board.plan.model.model import Plan
from board.plan.model.work import Work
from board.plan.places import Loc


def dish_at(plan: Plan, loc: Loc) -> Dish | None:
    """The dish that a path lies in; None for jobs and courses."""
    if len(loc) > 3 and loc[0] == "courses" and loc[2] == "dishes":
        return plan.courses[int(loc[1])].dishes[int(loc[3])]
    return None


def spoils(dish: Dish) -> bool:
    """By the host's word; otherwise one perishable ingredient is enough, or a step that cooks or reheats."""
    if dish.perishable is not None:
        return dish.perishable
    if any(step.cooks is not None or step.reheats for step in dish.steps):
        return True
    return any(food_spoils(line.food) for line in dish.ingredients)


def food_spoils(food: str) -> bool:
    """An unknown food counts as perishable."""
    known = facts(food)
    return known is None or known.perishable


def result_spoils(plan: Plan, work: Work | None, loc: Loc) -> bool:
    """Whether a step's result spoils; a job's never does, unless the host says so."""
    if work is not None and work.perishable is not None:
        return work.perishable
    dish = dish_at(plan, loc)
    return dish is not None and spoils(dish)
