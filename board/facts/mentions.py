"""Foods that a dish's name or a step's words name: `Chicken satay`, `stir in the peanut butter`. Verbs (`toast the
nuts`), tools (`fish slice`), likenesses (`like breadcrumbs`) and what is left out (`without nuts`) are none. Pure."""

import functools
import re
from dataclasses import dataclass

from board.facts.allergens import TREE_NUTS, Allergen
from board.facts.diets import DIETS
from board.facts.food import understood
from board.facts.foods.entry import COMMON_PRACTICE
from board.facts.foods.ready import READY
from board.facts.foods.ways import WAYS
from board.facts.held import Facts, Stems, table
from board.facts.named import named
from board.facts.origins import Origin, Trait
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
    if len(mention.words) == 1 and mention.words[0] in FLOURED and with_flour(foods):
        return True
    return any(holds(food, mention.words) for food in foods)


def with_flour(foods: tuple[Stems, ...]) -> bool:
    """Whether one of them is flour, of whatever."""
    return any("flour" in food for food in foods)


def told_by_a_name(mention: Mention, *, is_the_dish: bool) -> tuple[tuple[Facts, ...], frozenset[Trait]]:
    """The foods that a dish's name says are in it, and what such a dish often holds.

    A form alone (`tart`) says nothing if it is the dish, and what it is made of beside one. A food and a form (`almond
    tart`, `potato salad`) say the food. A dish known by its name (`Bakewell tart`, `korma`) says all the table knows.
    """
    food, form = mention.food, mention.words[-1] in FORMS
    if form and len(mention.words) == 1 and mention.words not in _OF_NUTS:
        return ((), frozenset()) if is_the_dish else ((food,), frozenset())
    often = frozenset(each.what for each in food.hidden if each.source == COMMON_PRACTICE)
    if food.traits >= _PLAIN_BAKE:
        often -= _WRITTEN_WHERE_ADDED
    if form and mention.words not in _BY_TRADITION:
        parts = understood(mention.said.rsplit(" ", 1)[0])
        held = frozenset[Trait]().union(*(part.traits for part in parts.known))
        if parts.known and not parts.unknown and held <= food.traits | often:  # mince pies hold no mince
            is_way = any(part.words in _WAYS for part in parts.known)
            return parts.known, often if is_way else frozenset()
    by_its_food = not form and mention.words[-1:] in table() and _is_of_foods(mention)  # onion gravy
    return (food,), often if mention.words in _DISHES and not by_its_food else frozenset()


def _is_of_foods(mention: Mention) -> bool:
    before = understood(mention.said.rsplit(" ", 1)[0])
    return len(mention.words) > 1 and bool(before.known) and not before.unknown


_WAYS = frozenset(stems(entry.phrase) for entry in WAYS)
# Of these the table tells what is often put on or in them, which a host's own list says better.
_FILLED = listed_words(
    """bruschetta crostini sandwich toastie burrito quesadilla enchilada fajita gyro ratatouille peperonata mezze
    antipasti antipasto charcuterie tapas hotpot takeaway"""
)
_DISHES = (_WAYS | frozenset(stems(entry.phrase) for entry in READY)) - {(word,) for word in _FILLED}
_OF_NUTS = frozenset(stems(words) for words in ("macaroon", "macaron"))
_BY_TRADITION = frozenset(stems(words) for words in ("miso soup", "fruit cake", "plum pudding"))  # more than the food
_PLAIN_BAKE: frozenset[Trait] = frozenset({Allergen.WHEAT, Allergen.MILK, Allergen.EGGS})
_WRITTEN_WHERE_ADDED: frozenset[Trait] = TREE_NUTS | {Allergen.PEANUTS, Allergen.SOY, Allergen.SULPHITES}


def said_free(text: str) -> frozenset[Trait]:
    """What a dish's name says is not in it: `gluten-free trifle`, `tart without nuts`, `vegan korma`."""
    words_in_it = set(stems(text))
    found = next((lifted for words, lifted in _SUBSTITUTED if words & words_in_it), frozenset[Trait]())
    for match in _FREE.finditer(text):
        words = (match["before"] or match["after"]).split()
        runs = (words[-2:], words[-1:]) if match["before"] else (words[:2], words[:1])
        group = next(filter(None, (named(" ".join(run)) for run in runs)), None)
        found |= frozenset() if group is None else group.cleared
    return found


_FREE = re.compile(
    r"\b(?P<before>(?:[a-z]+[ -])?[a-z]+)[ -]free\b|\b(?:without|no|free (?:from|of))\s+(?P<after>[a-z]+(?: [a-z]+)?)",
    re.IGNORECASE,
)
_OF_WATER = frozenset[Trait]({Allergen.FISH, Allergen.CRUSTACEANS, Allergen.MOLLUSCS})
_SUBSTITUTED: tuple[tuple[frozenset[str], frozenset[Trait]], ...] = (
    (frozenset(stems("vegan mock plant faux imitation")),
     DIETS["vegan"].never | _OF_WATER | {Allergen.MILK, Allergen.EGGS, Origin.LACTOSE}),
    (frozenset(stems("vegetarian veggie meatless")), DIETS["vegetarian"].never | _OF_WATER),
)  # fmt: skip
