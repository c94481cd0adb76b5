"""Where a bigger batch does not want as much more: salt, yeast, leavening, strong spices.

Common practice, no source; figures to start from and to taste against. A smaller batch takes them in proportion.
"""

import re
from dataclasses import dataclass

from board.facts.called import same_food

MANY = 1.5  # from this factor on, pots, heat and times are another matter


@dataclass(frozen=True, slots=True)
class ByHand:
    """`share`: for each further helping of the recipe, this much of its amount."""

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
    """What the food is, where a linear amount is wrong; None for everything else."""
    name = same_food(food)
    for row in TABLE:
        if any(_holds(name, word) for word in row.words) and not any(_holds(name, word) for word in row.never):
            return row
    return None


def hand_factor(row: ByHand, factor: float) -> float:
    """By how much its amount is really multiplied; never less than in proportion for a smaller batch."""
    return factor if factor <= 1 else 1 + (factor - 1) * row.share


def _holds(name: str, words: str) -> bool:
    return re.search(rf"(?<!\w){re.escape(words)}(?!\w)", name) is not None
