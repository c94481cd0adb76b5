"""Which fridge life a step's result has, from what cooked its dish or will cook it. Pure."""

from board.facts.lives import made_life, raw_life
from board.plan.model.model import Plan
from board.plan.phrases.food_safety import rule_class
from board.plan.resolve.links import Node
from board.plan.resolve.spoils import dish_at


def life_class(plan: Plan, node: Node) -> str | None:
    """A fridge-life class of the rule sets; None if unknown. Before its first cooking a dish is raw."""
    dish = dish_at(plan, node.loc)
    if dish is None or node.work is None:
        return None
    number = int(node.loc[-1])
    cooked = [step.cooks for step in dish.steps[: number + 1] if step.cooks]
    to_cook = [step.cooks for step in dish.steps[number + 1 :] if step.cooks]
    if not cooked and to_cook:
        return raw_life(rule_class(to_cook[0]))
    return made_life(rule_class(cooked[-1]) if cooked else None, f"{dish.dish}. {node.name}")
