"""Under which head of a chart of fridge lives a food falls, by what cooks it and what it is called. Pure.

The words are common practice, no source; the lives themselves stand in the rule sets.
"""

import re

_BY_WORDS: tuple[tuple[str, str], ...] = (
    (r"ice cream|ices?|sorbets?|granitas?", ""),  # frozen: no life in a fridge
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


def raw_life(cooks: str) -> str | None:
    """The class of what is still to be cooked, by the class of food that cooks it."""
    return _RAW.get(cooks)


def made_life(cooks: str | None, called: str) -> str | None:
    """The class of what is ready: by what it is called first, else by the class of food it was cooked as. None where
    neither tells."""
    for words, life in _BY_WORDS:
        if re.search(rf"\b(?:{words})\b", called, re.IGNORECASE):
            return life or None
    return _COOKED.get(cooks) if cooks is not None else None
