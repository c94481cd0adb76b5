"""Foods that a dish's name or a step's words name: `Chicken satay`, `stir in the peanut butter`. Verbs (`toast the
nuts`), tools (`fish slice`), likenesses (`like breadcrumbs`) and what is left out (`without nuts`) are none. Pure."""

import functools
import re
from dataclasses import dataclass

from board.facts.held import Facts, Stems, table
from board.facts.phrases import holds, listed_words, stem, stems, words_of
from board.facts.reading import read

_LEFT_OUT = re.compile(
    r"\b(?:without|no|not|never|free (?:from|of)|instead of|rather than|avoid|away from|clear of|nothing|nor|except|"
    r"check (?:for|whether)|in case of|ask)\b[^.;,]*",
    re.IGNORECASE,
)
_LIKENESS = re.compile(
    r"\b(?:like|resembl\w+|(?:size|shape|texture|colou?r|consistency|thickness|shade) of|smells?|thick(?:ness)? as|"
    r"as \w+ as)\b[^.;,]*|\bnut of\b|\b\w+[ -](?:sized|shaped|colou?red)\b|"
    r"\b\w+-(?:size|like|brown|free|thick|green|yellow|pink)\b",
    re.IGNORECASE,
)
# Words that also say what is done: `toast the nuts`, `char the peppers`, `mince the garlic`, `wrap in foil`.
_ALSO_DONE = listed_words(
    """toast char mince wrap roll crisp chip seed bone cream bread fish pickle squash pulse root leaf ling sole skate
    perch stock sponge crumb chuck steak tongue game port stout spirit date cracker stuffing crumble mash glaze
    dip stew curry sauce batter dress sandwich pie butterfly shell smelt scale juice spice season ice water cake
    marinade brine cure smoke salt pepper sugar oil puree"""
)
_DONE_TO = listed_words(
    """the it them its their this these that those each every all both half any some a an your one in into out up
    down over off on until till for to with lightly finely well gently quickly briefly evenly together again back
    slowly carefully thinly and"""
)
# Nouns that make a tool, a piece of furniture or a part of a meal of the food before them.
_TOOLS = listed_words(
    """slice knife knives board jug cup timer brush tin grater fork glass flute bucket stand cloth towel press mallet
    wheel machine cutter basin kettle server tongs pick cracker scissors cooler shaker mill mat coaster lamp
    course station shop counter drawer box thermometer stone whisk spoon pan rack mould ladle warmer plate plates
    fridge cellar list crate opener stopper spinner strainer ring dish ramekin cutlery bowl grinder cart trolley
    table salamander man monger"""
)
# A food's part by another food's name: the oysters of a bird, the heart of a lettuce.
_NO_FOOD = frozenset(
    stems(words)
    for words in ("egg cup", "oyster of", "ice", "water", "bone", "leaf", "root", "seed", "rib", "heart", "juice",
                  "chip", "dip", "mash", "crumb", "dough", "batter", "crust", "loaf", "wrap")
)  # fmt: skip


# What a recipe makes of its ingredients: named in a dish's name, it is the dish.
FORMS = listed_words(
    """pie tart tartlet cake cheesecake pudding crumble cobbler pasty turnover strudel pancake crepe waffle biscuit
    cookie scone muffin brownie dumpling fritter croquette burger patty sausage meatball quiche omelette frittata
    bread roll bun loaf flatbread focaccia pizza lasagne gnocchi ravioli pasta noodle custard mousse cream pavlova
    meringue trifle souffle parfait gelato cracker oatcake flapjack shortbread galette bake gratin terrine pate
    roulade soup stew casserole curry risotto paella salad sandwich toast taco kebab sorbet fool brulee caramel
    fudge truffle sauce dip macaroon macaron sponge gateau torte clafoutis blini samosa bhaji falafel rissole
    stuffing dressing steak"""
)
# Made of flour, whichever it is.
FLOURED = listed_words("pastry dough batter crust sponge bread cake roll base loaf bun crumble")


@dataclass(frozen=True, slots=True)
class Mention:
    """A food and the words that name it."""

    words: Stems
    said: str
    food: Facts


@functools.lru_cache(maxsize=4096)
def mentioned(text: str) -> tuple[Mention, ...]:
    """The foods in a name or a step, in order."""
    found: list[Mention] = []
    left = _LIKENESS.sub(" . ", _LEFT_OUT.sub(" . ", text))
    for clause in re.split(r"[.;:!?,()\[\]]+|\bthen\b|\band\b", left):
        words = words_of(clause)
        keys = tuple(stem(word) for word in words)
        for hit in sorted(read(words, table(), beside=False).all_hits, key=lambda hit: hit.start):
            said = keys[hit.start : hit.end]
            if said not in _NO_FOOD and not _is_done(keys, hit.start, hit.end) and not _is_a_tool(keys, hit.end):
                found.append(Mention(said, " ".join(words[hit.start : hit.end]), hit.food))
    return tuple(dict.fromkeys(found))


def _is_done(keys: Stems, start: int, end: int) -> bool:
    if end - start > 1 or keys[start] not in _ALSO_DONE:
        return False
    return start == 0 or (end < len(keys) and keys[end] in _DONE_TO and keys[start - 1] not in _DONE_TO)


def _is_a_tool(keys: Stems, end: int) -> bool:
    return end < len(keys) and keys[end] in _TOOLS


def accounted_for(mention: Mention, foods: tuple[Stems, ...]) -> bool:
    """Whether an ingredient goes by the words of the mention, as rice flour does by flour; or is a dough's flour."""
    if mention.words[-1] in FLOURED and any("flour" in food for food in foods):
        return True
    return any(holds(food, mention.words) for food in foods)
