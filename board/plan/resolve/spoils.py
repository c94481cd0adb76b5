"""What spoils out of the cold: by the host's own word, else by what a dish is made of. Pure."""

from board.facts.food import facts
from board.plan.model.courses import Dish
from board.plan.model.model import Plan
from board.plan.model.work import Work
from board.plan.places import Loc


def dish_at(plan: Plan, loc: Loc) -> Dish | None:
    """The dish a path in the plan lies in; None for jobs and courses."""
    if len(loc) > 3 and loc[0] == "courses" and loc[2] == "dishes":
        return plan.courses[int(loc[1])].dishes[int(loc[3])]
    return None


def spoils(dish: Dish) -> bool:
    """By the host's own word; else one ingredient that does is enough, or a step that must cook or reheat it."""
    if dish.perishable is not None:
        return dish.perishable
    if any(step.cooks is not None or step.reheats for step in dish.steps):
        return True
    return any(food_spoils(line.food) for line in dish.ingredients)


def food_spoils(food: str) -> bool:
    """A food that is not known is taken to spoil."""
    known = facts(food)
    return known is None or known.perishable


def raw_class(food: str) -> str | None:
    """The class of food that cooks it, where it is raw and needs cooking; None for what is not known."""
    known = facts(food)
    return known.raw_class if known is not None else None


def result_spoils(plan: Plan, work: Work | None, loc: Loc) -> bool:
    """Whether what a step makes spoils; what a job makes never does, unless its host says so."""
    if work is not None and work.perishable is not None:
        return work.perishable
    dish = dish_at(plan, loc)
    return dish is not None and spoils(dish)
