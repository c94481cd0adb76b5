"""Which fridge life a step's result has: by its branch, from what cooked it or will cook it. Pure."""

from board.facts.lives import COOKED, made_life, raw_life
from board.plan.phrases.food_safety import rule_class
from board.plan.resolve.become import Become
from board.plan.resolve.links import Node


def life_class(become: Become, node: Node) -> str | None:
    """A fridge-life class of the rule sets; None if unknown. Before its first cooking food is raw. What another branch
    of the dish is cooked as counts only once the two have met."""
    if become.cooked is None and not become.heated and become.to_cook is not None:
        return raw_life(rule_class(become.to_cook))
    cooked = rule_class(become.cooked) if become.cooked is not None else None
    return made_life(cooked, f"{node.dish}. {node.name}") or (COOKED if become.heated and become.spoils else None)
