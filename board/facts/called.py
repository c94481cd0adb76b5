"""When two names mean the same food: case, plurals and `fresh` do not count; every other word does. Pure."""

import re

from board.facts.phrases import COOKED_THROUGH, stems

# Singulars that end in s, and irregular plurals.
_AS_IT_IS = frozenset({
    "asparagus", "couscous", "hummus", "molasses", "swiss", "bass", "watercress", "cress", "lemongrass", "grass",
    "citrus", "octopus", "haggis", "brussels", "bouquet garnis", "cassis", "anis", "schnapps", "ras", "pastis",
    "plus", "less", "glass", "goddess", "calvados", "tapas", "gas", "seedless", "boneless", "skinless", "topless",
    "chassis", "gras", "his", "this", "is", "as",
})  # fmt: skip
_IRREGULAR = {
    "leaves": "leaf", "loaves": "loaf", "halves": "half", "calves": "calf", "knives": "knife", "chillies": "chilli",
    "chilies": "chili", "chiles": "chile", "geese": "goose", "anchovies": "anchovy", "cookies": "cookie",
    "brownies": "brownie", "pies": "pie", "olives": "olive", "chives": "chive", "endives": "endive", "cloves": "clove",
    "mousses": "mousse", "shoes": "shoe", "glasses": "glass", "dishes": "dish", "smoothies": "smoothie",
}  # fmt: skip
EGG_PARTS = {"egg yolk": "egg yolk", "yolk": "egg yolk", "egg white": "egg white"}  # sold in whole eggs
_NOT_COUNTED = frozenset({"fresh", "freshly", "the", "some"})
_WORD = re.compile(r"[^\W_]+(?:['’][^\W_]+)*")


def same_food(name: str) -> str:
    """The key of a food: `Fresh Onions` → `onion`, `plain flour` → `plain flour`. Idempotent.

    Words after a comma count: `bread, no seeds` is not `bread`. But `eggs, baked through` are just eggs to the shopper.
    """
    head, comma, tail = name.partition(",")
    if comma and not _WORD.search(head):
        return same_food(tail) if _WORD.search(tail) else name.casefold().strip()
    words = [_singular(word) for word in _WORD.findall(head.casefold())]
    kept = [word for word in words if word not in _NOT_COUNTED] or words
    rest = "" if stems(tail) in COOKED_THROUGH else " ".join(_WORD.findall(tail.casefold()))
    folded = " ".join(kept)
    return f"{folded}, {rest}" if comma and rest and folded else folded or rest or name.casefold().strip()


def as_bought(name: str) -> str:
    """The name without how it will be cooked: `eggs, baked through` → `eggs`."""
    head, _, tail = name.rpartition(",")
    return head.strip() if head.strip() and stems(tail) in COOKED_THROUGH else name


def _singular(word: str) -> str:
    if word in _AS_IT_IS or len(word) <= 3:
        return word
    if word in _IRREGULAR:
        return _IRREGULAR[word]
    if word.endswith("ies"):
        return word[:-3] + "y"
    if word.endswith("oes") or word.endswith(("shes", "ches", "xes", "sses", "zzes")):
        return word[:-2]
    return word[:-1] if word.endswith("s") and not word.endswith(("ss", "us", "is", "’s", "'s")) else word
