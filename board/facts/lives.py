"""The heading of a fridge-life chart that a food falls under, by what cooks it and its name. Pure.

The words are common practice, no source; the lives are in the rule sets.
"""

import re

_BY_WORDS: tuple[tuple[str, str], ...] = (
    (r"ice cream|ices?|sorbets?|granitas?", ""),  # frozen: no fridge life
    (r"soups?|broths?|stocks?|stews?|braises?|chowders?|ragouts?|currys?|curries|gravy|gravies", "soup or stew"),
    (r"custards?|creams?|mousses?|panna cottas?|trifles?", "custard"),
    (r"(?:potato|egg|chicken|ham|tuna|pasta) salads?", "dressed salad"),
    (r"(?:hard|hard-)\s?(?:boiled|cooked) eggs?", "hard-cooked eggs"),
)
_COOKED = {
    "poultry": "cooked meat or poultry", "ground meat": "cooked meat or poultry", "whole cut": "cooked meat or poultry",
    "injected meat": "cooked meat or poultry", "stuffed": "cooked meat or poultry", "fish": "cooked meat or poultry",
    "casserole": "cooked meat or poultry", "leftovers": "cooked meat or poultry",
}  # fmt: skip
_RAW = {
    "poultry": "raw poultry", "ground meat": "raw ground meat", "whole cut": "raw whole cut",
    "injected meat": "raw whole cut", "fish": "raw fish",
}  # fmt: skip


COOKED = "other cooked food"


def raw_life(cooks: str) -> str | None:
    """The life class of food still to be cooked, from its cooking class; None if there is none."""
    return _RAW.get(cooks)


def made_life(cooks: str | None, called: str) -> str | None:
    """The life class of ready food: by its name, otherwise by the class it was cooked as. None if neither tells."""
    for words, life in _BY_WORDS:
        if re.search(rf"\b(?:{words})\b", called, re.IGNORECASE):
            return life or None
    return _COOKED.get(cooks) if cooks is not None else None
