"""Tableware: names, where pieces lie, and what a course is usually eaten from and with. Pure.

All of it is common practice, no source; a plan's own words override it.
"""

import math
import re
from dataclasses import dataclass
from typing import Literal

Spot = Literal["left", "right", "above", "glass", "bread", "centre", "beside"]
"""Where a piece stands or lies, as one sits before it: left or right of the plate, above it, over the knives,
over the forks, in the middle, or nowhere of its own."""

WASH_MINUTES_A_PIECE = 0.5
LEAST_WASH_MINUTES = 3

_ENDINGS = (("knives", "knife"), ("loaves", "loaf"), ("ies", "y"), ("sses", "ss"), ("shes", "sh"), ("ches", "ch"),
            ("xes", "x"), ("ss", "ss"), ("us", "us"), ("s", ""), ("", ""))  # fmt: skip
_SHORTEST = 3  # letters; shorter words are taken as they are
_ONLY_PLURAL = ("tongs", "scissors", "crackers")
_TAIL = re.compile(r"(.+?)( (?:for|of|with|and|in) .+)", re.IGNORECASE)


def piece_key(name: str) -> str:
    """A piece's key for comparing: singular, lower case. `Soup Bowls` → `soup bowl`. Idempotent."""
    folded = " ".join(name.casefold().split())
    head, tail = (found[1], found[2]) if (found := _TAIL.fullmatch(folded)) else (folded, "")
    first, space, last = head.rpartition(" ")
    if last not in _ONLY_PLURAL and len(last) > _SHORTEST:
        many, one = next(each for each in _ENDINGS if last.endswith(each[0]))
        last = last.removesuffix(many) + one
    return first + space + last + tail


def counted(piece: str, count: int) -> str:
    """`12 dessert spoons`, `1 serving dish`. `piece` is a `piece_key`."""
    return f"{count} {piece if count == 1 else several(piece)}"


def several(piece: str) -> str:
    """`dessert spoon` → `dessert spoons`."""
    head, tail = (found[1], found[2]) if (found := _TAIL.fullmatch(piece)) else (piece, "")
    if head.split()[-1] in _ONLY_PLURAL:
        return piece
    if head.endswith(("knife", "loaf")):
        return head.removesuffix("fe").removesuffix("f") + "ves" + tail
    if head.endswith(("s", "sh", "ch", "x")):
        return f"{head}es{tail}"
    if re.search(r"[^aeiou]y$", head):
        return f"{head[:-1]}ies{tail}"
    return f"{head}s{tail}"


# The longest of these that ends a piece's name says where it lies; otherwise beside.
_SPOTS: tuple[tuple[Spot, tuple[str, ...]], ...] = (
    ("bread", ("bread plate", "side plate", "butter plate")),
    ("above", ("dessert spoon", "dessert fork", "pudding spoon", "pudding fork", "cake fork", "ice spoon")),
    ("beside", ("napkin ring", "coffee spoon", "teaspoon", "tea spoon", "serving spoon", "serving fork", "coffee cup",
                "tea cup", "teacup", "saucer", "finger bowl", "cruet", "jug")),
    ("left", ("fork", "napkin")),
    ("right", ("knife", "spoon", "chopstick")),
    ("glass", ("glass", "flute", "goblet", "tumbler", "beaker", "coupe")),
    ("centre", ("plate", "bowl", "dish", "ramekin", "cup", "board", "charger")),
)  # fmt: skip


def spot_of(piece: str) -> Spot:
    """Where a piece is laid. `piece` is a `piece_key`."""
    head = found[1] if (found := _TAIL.fullmatch(piece)) else piece
    ends: list[tuple[int, Spot]] = [
        (len(word), spot) for spot, words in _SPOTS for word in words if head.endswith(word)
    ]
    return max(ends, key=lambda each: each[0])[1] if ends else "beside"


_INSTEAD: dict[str, tuple[str, ...]] = {
    "dinner plate": ("main plate", "large plate", "plate"),
    "dinner fork": ("main fork", "table fork", "large fork", "fork"),
    "dinner knife": ("main knife", "table knife", "large knife", "knife"),
    "dinner spoon": ("main spoon", "table spoon", "tablespoon", "large spoon", "spoon"),
    "starter plate": ("small plate", "salad plate", "side plate", "dessert plate", "plate"),
    "starter fork": ("small fork", "salad fork", "dessert fork", "fork"),
    "starter knife": ("small knife", "side knife", "dessert knife", "knife"),
    "dessert plate": ("small plate", "starter plate", "plate"),
    "dessert bowl": ("small bowl", "bowl"),
    "dessert spoon": ("small spoon", "spoon"),
    "dessert fork": ("small fork", "starter fork", "fork"),
    "cheese plate": ("small plate", "side plate", "dessert plate", "plate"),
    "cheese knife": ("small knife", "side knife", "starter knife", "knife"),
    "soup bowl": ("soup plate", "soup cup", "bowl"),
    "soup spoon": ("table spoon", "tablespoon", "large spoon", "spoon"),
    "pasta bowl": ("deep plate", "soup plate", "bowl"),
    "water glass": ("tumbler", "beaker", "glass"),
}


def at_hand(piece: str, house: frozenset[str]) -> str:
    """The usual piece, or the substitute that this house's list has."""
    return next((name for name in (piece, *_INSTEAD.get(piece, ())) if name in house), piece)


@dataclass(frozen=True, slots=True)
class UsualCover:
    """What each guest gets with a course described by one of these words."""

    words: tuple[str, ...]
    pieces: tuple[str, ...]


MAIN = UsualCover(("main", "roast", "dinner", "second course"), ("dinner plate", "dinner knife", "dinner fork"))
STARTER = UsualCover(
    ("starter", "first course", "entrée", "antipasto", "hors d'oeuvre", "salad", "fish course", "pâté", "terrine"),
    ("starter plate", "starter knife", "starter fork"),
)
COVERS: tuple[UsualCover, ...] = (
    UsualCover(("soup", "broth", "chowder", "consommé", "bisque", "ramen", "potage", "minestrone"),
               ("soup bowl", "soup spoon")),
    UsualCover(("pasta", "risotto", "spaghetti", "noodle"), ("pasta bowl", "dinner fork", "dinner spoon")),
    UsualCover(("cheese",), ("cheese plate", "cheese knife")),
    UsualCover(("ice", "sorbet", "custard", "trifle", "fool", "crumble", "mousse"), ("dessert bowl", "dessert spoon")),
    UsualCover(("sweet", "dessert", "pudding", "cake", "afters"), ("dessert plate", "dessert spoon", "dessert fork")),
    STARTER,
    MAIN,
)  # fmt: skip
WHOLE_MEAL = ("water glass", "napkin")


def usual_cover(course: str, first_dish: str, *, main_follows: bool) -> tuple[str, ...]:
    """What a seated course is usually eaten from and with, by its name, otherwise by its first dish.

    If neither tells, it is a main course, or a starter if the main is still to come.
    """
    told = _words(course)
    for cover in COVERS:
        for named in map(_words, cover.words):
            if any(_same(told[at : at + len(named)], named) for at in range(len(told) - len(named) + 1)):
                return cover.pieces
    dish = _words(_DRESSED.split(first_dish)[0])
    for cover in COVERS:
        if any(_same(dish[-len(named) :], named) for named in map(_words, cover.words)):
            return cover.pieces
    return (STARTER if main_follows else MAIN).pieces


_DRESSED = re.compile(r",| (?:with|in|on|under) ", re.IGNORECASE)  # what follows matters less for how a dish is eaten


def _words(text: str) -> list[str]:
    return re.findall(r"[^\W_]+", text.casefold())


def names_the_main(course: str) -> bool:
    """Whether the course is called the main."""
    return any(_same([word], ["main"]) for word in _words(course))


def _same(told: list[str], named: list[str]) -> bool:
    """Whether the words match; the last may be plural."""
    return told[:-1] == named[:-1] and [piece_key(word) for word in told] == [piece_key(word) for word in named]


def wash_minutes(pieces: int) -> int:
    """Minutes to wash this many pieces by hand, dry them and put them back."""
    return max(LEAST_WASH_MINUTES, math.ceil(pieces * WASH_MINUTES_A_PIECE))
