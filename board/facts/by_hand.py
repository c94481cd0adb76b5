"""What does not grow in proportion with a bigger batch: salt, yeast, leavening, strong spices. Pure.

Common practice, no source; figures to start from and adjust by taste. For a smaller batch they shrink in proportion.
"""

import re
from dataclasses import dataclass

from board.facts.called import same_food

MANY = 1.5  # from this factor on, pots, heat and times change too


@dataclass(frozen=True, slots=True)
class ByHand:
    """`share`: the part of its amount added for each further batch of the recipe."""

    kind: str
    share: float
    words: tuple[str, ...]
    never: tuple[str, ...] = ()


TABLE: tuple[ByHand, ...] = (
    ByHand("salt", 0.75, ("salt",), ("salt cod", "salt beef", "salted", "unsalted", "salt marsh", "celery salt")),
    ByHand("yeast", 0.75, ("yeast",), ("yeast extract", "nutritional yeast")),
    ByHand("leavening", 0.9, ("baking powder", "baking soda", "bicarbonate")),
    ByHand(
        "strong spices",
        0.5,
        ("cayenne", "chilli", "chili", "chile", "clove", "cinnamon", "nutmeg",
         "mace", "allspice", "star anise", "cardamom", "saffron", "black pepper", "white pepper", "peppercorn",
         "ginger powder", "ground ginger", "cumin", "juniper"),
        ("sweet chilli", "chilli sauce", "chilli oil", "chili sauce", "chili oil", "garlic clove"),
    ),
)  # fmt: skip


def by_hand(food: str) -> ByHand | None:
    """The row of a food that does not scale in proportion; None for all others."""
    name = same_food(food)
    for row in TABLE:
        if any(_holds(name, word) for word in row.words) and not any(_holds(name, word) for word in row.never):
            return row
    return None


def hand_factor(row: ByHand, factor: float) -> float:
    """The multiplier for its amount; a smaller batch stays in proportion."""
    return factor if factor <= 1 else 1 + (factor - 1) * row.share


def _holds(name: str, words: str) -> bool:
    return re.search(rf"(?<!\w){re.escape(words)}(?!\w)", name) is not None
