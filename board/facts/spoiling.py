"""What makes a food spoil within hours in the room: as it is, once it is cut, once it is cooked. Pure.

Source: FDA Food Code 1-201.10, time/temperature control for safety food (food of animals, cooked plants, cut melons,
cut leafy greens, cut tomatoes, garlic in oil, raw seed sprouts), from memory. What keeps (baked dry, sugar, fat, hard
cheese, pickles) is common practice, no source, and means hours, not weeks.
"""

import functools
import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal

from board.facts.food import understood
from board.facts.foods.baking import PASTA
from board.facts.foods.entry import Entry
from board.facts.foods.plants import CELERY, MIXED, MUSHROOMS, VEGETABLES
from board.facts.foods.seeds import PULSES, SOY
from board.facts.held import Facts
from board.facts.phrases import stem, stems

TCS = "FDA Food Code 1-201.10, from memory"

When = Literal["as it is", "once cut", "once cooked", "never", "unknown"]


@dataclass(frozen=True, slots=True)
class Spoiling:
    """`when` it begins to spoil; `name`: the food, as the table calls it. `ready`: cooked before it was bought."""

    when: When
    name: str
    ready: bool = False


def _phrases(text: str) -> frozenset[tuple[str, ...]]:
    return frozenset(stems(name) for name in text.split(","))


def _stems(text: str) -> frozenset[str]:
    return frozenset(stem(word) for word in text.split())


def _named(*groups: Iterable[Entry]) -> frozenset[tuple[str, ...]]:
    return frozenset(stems(entry.name) for entries in groups for entry in entries)


# Of the vegetables: what is sour, salted, or no more than seasoning.
_SEASONINGS = _phrases(
    """olive, horseradish, ginger, galangal, fresh turmeric, lemongrass, rhubarb, seaweed, vine leaf, banana leaf,
    black truffle, chilli, scotch bonnet, chive, celery seed, celery salt, bouquet garni"""
)
_BOUGHT_COOKED = _phrases(
    """falafel, baked bean, refried bean, hummus, chip, onion ring, caponata, puttanesca sauce, chestnut puree, vacuum
    packed chestnut, tinned tuna, tinned salmon, tinned sardine"""
)
_GRAINS = _stems(
    """rice basmati arborio couscous bulgur semolina farro freekeh quinoa millet amaranth teff sorghum polenta cornmeal
    grits hominy buckwheat barley spelt emmer einkorn noodle vermicelli tapioca sago oat oatmeal pasta soba gnocchi"""
)
_NO_GRAIN = re.compile(r"flour|starch|bran|malt|flake|puffed|milk|drink|vinegar|oatcake|\b(?:ground rice|rice (?:paper|"
                       r"cake|cracker)|popcorn)\b")  # fmt: skip
_LEAVES = _stems(
    """lettuce leaf rocket spinach watercress cress mizuna chicory radicchio frisee endive chard kale cabbage sorrel
    microgreen purslane"""
)
_CUT_FRUIT = _stems("melon watermelon cantaloupe tomato tomatillo")
_KEPT = re.compile(r"tinned|canned|chopped tomato|passata|paste|puree|ketchup|dried|juice|sauce|jam|seed|pickle|"
                   r"\b(?:bay\b|(?:lime|curry|banana|vine|coriander|celery|fenugreek|mustard) leaf)")  # fmt: skip
_READY = re.compile(r"\b(?:cooked|boiled|tinned|canned|jarred|steamed|roast(?:ed)?|grilled|chargrilled|baked|poached|"
                    r"leftover)\b", re.IGNORECASE)  # fmt: skip
# Marked in the table by what they are made of, and dry or mere fat all the same.
_DRY = re.compile(
    r"\b(?:meringues?|dried egg|egg powder|milk powder|margarine|vegan (?:block|butter))\b", re.IGNORECASE
)
_SOFT = re.compile(r"\b(?:soft|fresh|cream|ripe)\b", re.IGNORECASE)
_CHEESE, _WHEAT = stems("cheese"), stems("wheat berry")


@functools.cache
def _cooked() -> frozenset[tuple[str, ...]]:
    return _named(VEGETABLES, CELERY, MIXED, MUSHROOMS, PULSES, SOY, PASTA) - _SEASONINGS


@functools.lru_cache(maxsize=4096)
def spoiling(food: str, unit: str = "") -> tuple[Spoiling, ...]:
    """Every food in an ingredient's words, with what makes it spoil. `unit`: what is in a `tin` or `jar` is cooked.
    Words that name no known food come out as unknown."""
    found = understood(food)
    ready = unit in ("tin", "jar") or _READY.search(food) is not None
    known = [_of(part, food, ready=ready) for part in (*found.known, *(found.named if found.unknown else ()))]
    return (*known, *(Spoiling("unknown", words) for words in found.unknown))


def _of(part: Facts, food: str, *, ready: bool) -> Spoiling:
    key = stems(part.name)
    if _DRY.search(food):
        return Spoiling("never", part.name)
    soft = key == _CHEESE and _SOFT.search(food) is not None
    if part.perishable or soft or key in _BOUGHT_COOKED:
        return Spoiling("as it is", part.name)
    if key and not _KEPT.search(part.name) and (key[-1] in _LEAVES or key[-1] in _CUT_FRUIT):
        return Spoiling("once cut", part.name)
    grain = (any(word in _GRAINS for word in key) and not _NO_GRAIN.search(part.name)) or key == _WHEAT
    if grain or key in _cooked():
        return Spoiling("once cooked", part.name, ready)
    return Spoiling("never", part.name)
