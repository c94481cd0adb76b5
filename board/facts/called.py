"""When two names mean the same food to a shopper: case, plurals, spelling, its other names, its size and how it will be
cut do not count; every other word does. Pure."""

import functools
import re
from collections.abc import Sequence

from board.facts.cutting import only_done, said_of_it
from board.facts.other_names import first_name, spelt
from board.facts.phrases import COOKED_THROUGH, folded, stems

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
_NOT_COUNTED = frozenset({"freshly", "the", "some"})
_WORD = re.compile(r"[^\W_]+(?:['’][^\W_]+)*")
_OWN = re.compile(r"(?:['’]s)+$")


@functools.lru_cache(maxsize=4096)
def same_food(name: str) -> str:
    """The key of a food: `Fresh Onions, chopped` → `onion`, `eggplants` → `aubergine`. Idempotent.

    Other words after a comma count: `bread, no seeds` is not `bread`. `eggs, baked through` are just eggs.
    """
    return _key(name, uncut=True)


@functools.lru_cache(maxsize=4096)
def as_measured(name: str) -> str:
    """The same key where size and cut count, for what a cup of it weighs: `chopped onion` is not `onion`."""
    return _key(name, uncut=False)


def as_bought(name: str) -> str:
    """The name without how it will be cut or cooked: `finely chopped onions` → `onions`."""
    head, comma, tail = name.partition(",")
    found = list(_WORD.finditer(head))
    if not found:
        return name
    words = [_word(match.group()) for match in found]
    kept = said_of_it(words, fresh=True)
    less = _between(head, [match.span() for match in found], kept)
    shown = " ".join(less.split()) if len(kept) < len(words) else head.strip()
    return shown if not comma or only_done(tail) else f"{shown},{tail}"


@functools.lru_cache(maxsize=4096)
def plain_key(name: str) -> str:
    """The key of a food under the name it has here, not its first one: `eggplants` → `eggplant`."""
    return _key(name, uncut=True, other_names=False)


def _key(name: str, *, uncut: bool, other_names: bool = True) -> str:
    name = folded(name)
    head, comma, tail = name.partition(",")
    if comma and not _WORD.search(head):
        return _key(tail, uncut=uncut, other_names=other_names) if _WORD.search(tail) else name
    words = [_word(word) for word in _WORD.findall(head)]
    words = spelt([word for word in words if word not in _NOT_COUNTED] or words)
    before: list[str] = []
    while words != before:  # `large zucchini, fresh` has its first name before its size goes
        before, words = words, first_name(words) if other_names else words
        words = [words[n] for n in said_of_it(words, fresh=False)] if uncut else words
    key = " ".join(words)
    rest = "" if only_done(tail) and (uncut or stems(tail) in COOKED_THROUGH) else " ".join(_WORD.findall(tail))
    return f"{key}, {rest}" if comma and rest and key else key or rest or name


def _between(text: str, spans: Sequence[tuple[int, int]], kept: Sequence[int]) -> str:
    """A text without the words that are not kept."""
    for n in reversed(range(len(spans))):
        if n not in kept:
            text = f"{text[: spans[n][0]]} {text[spans[n][1] :]}"
    return text


def _word(word: str) -> str:
    """Lower case, no accents, singular, nobody's own: `goat's` → `goat`."""
    letters = folded(word)
    return _singular(_OWN.sub("", letters) or letters)


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
