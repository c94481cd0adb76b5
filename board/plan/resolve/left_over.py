"""What a step leaves over that another dish can take: how long it keeps cold, and who needs that food. Pure."""

from collections.abc import Iterator
from dataclasses import dataclass

from board.facts.called import EGG_PARTS, same_food
from board.facts.food import raw_class
from board.facts.lives import COOKED, made_life, raw_life
from board.facts.raw_keeps import raw_keep
from board.facts.rule_set import RuleSet
from board.plan.model.model import Plan
from board.plan.phrases.food_safety import rule_class
from board.plan.phrases.quantities import Ingredient
from board.plan.places import Loc
from board.plan.resolve.going_in import foods_of, matching
from board.plan.resolve.scaling import Scaled, factor_of, scale

STORE_DAYS = 90  # what keeps so long as it is bought keeps opened, too; ours
SPLIT_EGGS = "raw egg whites or yolks"


@dataclass(frozen=True, slots=True)
class Left:
    """One line of `leaves`: at which step, of which dish, scaled as that is; how many days it keeps in the fridge."""

    loc: Loc
    step: Loc
    dish: str
    scaled: Scaled
    days: int
    source: str


@dataclass(frozen=True, slots=True)
class Needs:
    """Another dish that needs the food of what is left: how much, at which of its steps; None: none says."""

    course: str
    dish: str
    at: Loc
    step: Loc | None
    scaled: Scaled


def all_left(plan: Plan, rules: RuleSet) -> Iterator[Left]:
    """Every line, in order."""
    for c, course in enumerate(plan.courses):
        for d, dish in enumerate(course.dishes):
            factor = factor_of(plan, course, dish)
            for s, step in enumerate(dish.steps):
                at: Loc = ("courses", c, "dishes", d, "steps", s)
                for n, line in enumerate(step.leaves):
                    days, source = keeps(line.food, rules)
                    yield Left((*at, "leaves", n), at, dish.dish, scale(line, factor), days, source)


def keeps(food: str, rules: RuleSet) -> tuple[int, str]:
    """Days in the fridge once it is left over, and what says so: the rule set's lower figure for split eggs, raw meat
    and fish and what goes by the name of a ready dish; else as it keeps when bought, at most as long as cooked food,
    unless it keeps for months."""
    raw = raw_class(food)
    life = SPLIT_EGGS if same_food(food) in EGG_PARTS else made_life(None, food)
    life = life or (raw_life(rule_class(raw)) if raw is not None else None)
    if life is not None and life in rules.fridge_lives:
        return int(rules.fridge_lives[life].lower_days), rules.fridge_lives[life].source
    bought, cooked = raw_keep(food), rules.fridge_lives[COOKED]
    if bought.days >= STORE_DAYS or bought.days <= cooked.lower_days:
        return bought.days, bought.source
    return int(cooked.lower_days), cooked.source


def who_needs(plan: Plan, left: Left) -> Iterator[Needs]:
    """Dishes other than its own that need that very food. A yolk is no egg."""
    split = same_food(left.scaled.line.food) in EGG_PARTS
    for c, course in enumerate(plan.courses):
        for d, dish in enumerate(course.dishes):
            at: Loc = ("courses", c, "dishes", d)
            line = next((line for _, line in foods_of(dish) if _is_of(line, left.scaled.line, split=split)), None)
            if at != left.loc[:4] and line is not None:
                steps = (
                    s
                    for s, step in enumerate(dish.steps)
                    if any(_is_of(use, left.scaled.line, split=split) for use in step.uses)
                )
                first = next(steps, None)
                step = (*at, "steps", first) if first is not None else None
                yield Needs(course.course, dish.dish, at, step, scale(line, factor_of(plan, course, dish)))


def _is_of(line: Ingredient, left: Ingredient, *, split: bool) -> bool:
    if split:
        return same_food(line.food) == same_food(left.food)
    return bool(matching(line, [left]))
