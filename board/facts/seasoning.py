"""Whether a food seasons or fattens a dish rather than makes it: spices, herbs, oils, sugar, spirits, coffee and tea,
by the groups of the table of foods. Pure; common practice, no source."""

import functools

from board.facts.food import facts
from board.facts.foods import baking, dairy, drinks, meat, plants, seeds, stores
from board.facts.phrases import words_of

_GROUPS = (
    stores.OILS, stores.CHILLI_OIL, stores.ANY_OIL, stores.SOY_OIL, stores.WINE_VINEGARS, stores.VINEGARS,
    stores.ANY_VINEGAR, stores.MALT_VINEGAR, stores.SALT_AND_SPICES, stores.PINK_PEPPER, stores.ASAFOETIDA,
    stores.SPICE_MIXES, stores.SEASONINGS, stores.SOY_SAUCES, stores.TAMARI, stores.MISO, stores.FISHY_SAUCES,
    stores.COLOURS, plants.HERBS, baking.SUGAR, baking.FREE_SUGARS, baking.HONEY, baking.RAISING,
    baking.BAKING_POWDER, baking.COLOURING, baking.EXTRACTS, dairy.BUTTER, dairy.FLAVOURED_BUTTER, dairy.MARGARINE,
    meat.FAT, seeds.MUSTARD, seeds.MUSTARD_POWDER, drinks.SPIRITS, drinks.LIQUEURS, drinks.SOFT,
)  # fmt: skip
_BY_NAME = frozenset(("ginger", "garlic", "horseradish", "chilli", "vanilla", "vanilla pod", "rose water"))


def seasons(food: str) -> bool:
    """Whether it goes in by the pinch or the spoon; False for a food that the table does not have."""
    if words_of(food)[-1:] == ("peppers",):  # a vegetable; the spice has no plural
        return False
    known = facts(food)
    return known is not None and known.name in _names()


@functools.cache
def _names() -> frozenset[str]:
    return _BY_NAME | {entry.name for entries in _GROUPS for entry in entries}
