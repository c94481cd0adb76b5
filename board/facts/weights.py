"""What foods weigh by the cup and by the piece. Other foods are never guessed. Pure.

`SR` is the USDA National Nutrient Database for Standard Reference (SR Legacy, FoodData Central), its gram weights for
household measures; those marked `from memory` were not read again.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from board.facts.called import as_measured, same_food

SR = "USDA SR"
MEMORY = "USDA SR, from memory"
AS_GRANULATED = "weighed as granulated sugar; common practice, no source"

_CUPS: dict[str, dict[str, float]] = {
    SR: {
        "granulated sugar, sugar": 200, "packed brown sugar, brown sugar": 220,
        "plain flour": 125, "butter, unsalted butter, salted butter": 227, "whole milk": 244,
        "heavy cream": 238, "plain whole yogurt": 245, "honey": 339,
        "olive oil": 216, "long-grain rice": 185, "cornflour": 128, "salt, table salt": 292,
        "cocoa, cocoa powder": 86, "oats, rolled oats": 81, "chopped onion": 160, "water": 237,
    },
    AS_GRANULATED: {"caster sugar": 200},
    MEMORY: {
        "icing sugar": 120, "strong white flour": 137, "wholemeal flour": 120,
        "rye flour": 102, "cornmeal": 122, "sour cream": 230, "cream cheese": 232, "buttermilk": 245,
        "vegetable oil, sunflower oil, rapeseed oil": 218, "molasses": 337, "corn syrup": 341,
        "tomato paste": 262, "cider vinegar": 239, "soy sauce": 255, "lentils, green lentils, brown lentils": 192,
        "chickpeas, dried chickpeas": 200, "black beans, dried black beans": 194, "quinoa": 170, "bulgur": 140,
        "couscous": 173, "pearl barley, pearled barley": 200, "whole almonds": 143, "chopped walnuts": 117,
        "pecan halves": 99, "raisins": 145, "dry breadcrumbs": 108, "grated parmesan": 100, "shredded cheddar": 113,
        "chopped parsley": 60, "sliced mushrooms": 70, "grated carrot": 110, "chopped celery": 101,
        "diced potatoes": 150, "blueberries": 148, "raspberries": 123, "frozen peas": 134,
    },
}  # fmt: skip
# One piece, in grams: a large egg, SR (read); its white and yolk, a clove of garlic, SR from memory.
_PIECES: dict[str, tuple[float, str]] = {
    "egg, large egg": (50, SR),
    "egg white": (33, MEMORY),
    "egg yolk": (17, MEMORY),
}
# (food, unit that counts it) → grams; SR, from memory.
_COUNTED = {("garlic", "clove"): 3.0, ("butter", "stick"): 113.0}


@dataclass(frozen=True, slots=True)
class Weight:
    """Grams of a cup or a piece, with the figure's source."""

    grams: float
    source: str


CUP_WEIGHTS: Mapping[str, Weight] = {
    as_measured(name): Weight(weight, source)
    for source, foods in _CUPS.items()
    for names, weight in foods.items()
    for name in names.split(", ")
}
PIECE_WEIGHTS: Mapping[str, Weight] = {
    same_food(name): Weight(*found) for names, found in _PIECES.items() for name in names.split(", ")
}


def cup_weight(food: str) -> Weight | None:
    """As it is cut, else as it is bought: melted butter weighs what butter does. None if unknown."""
    return CUP_WEIGHTS.get(as_measured(food)) or CUP_WEIGHTS.get(same_food(food))


def piece_weight(food: str, unit: str = "") -> Weight | None:
    """One piece, or one clove or stick; None if unknown."""
    if unit:
        found = _COUNTED.get((same_food(food), unit))
        return Weight(found, MEMORY) if found is not None else None
    return PIECE_WEIGHTS.get(same_food(food))
