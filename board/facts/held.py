"""What each food of the table holds, by the stems of its names; foods put together, and foods made free from something.
Pure."""

import functools
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from board.facts.allergens import Allergen
from board.facts.foods.baking import BAKING
from board.facts.foods.dairy import DAIRY
from board.facts.foods.dishes import DISHES
from board.facts.foods.drinks import DRINKS
from board.facts.foods.entry import COMMON_PRACTICE, Entry, RawClass
from board.facts.foods.meat import MEAT
from board.facts.foods.plants import FRUIT, PLANTS
from board.facts.foods.ready import READY
from board.facts.foods.sea import SEA
from board.facts.foods.seeds import SEEDS_AND_PULSES
from board.facts.foods.stores import STORES
from board.facts.foods.ways import WAYS
from board.facts.origins import ANIMAL, Origin, Trait
from board.facts.phrases import holds, stems

ENTRIES: tuple[Entry, ...] = (
    *DAIRY, *MEAT, *SEA, *BAKING, *PLANTS, *SEEDS_AND_PULSES, *STORES, *DRINKS, *READY, *WAYS, *DISHES,
)  # fmt: skip
HEAVIEST_FIRST: tuple[RawClass, ...] = ("poultry", "ground meat", "eggs", "fish", "whole cut")
Stems = tuple[str, ...]
_FLESH: frozenset[Trait] = frozenset(
    {Origin.MEAT, Origin.RED_MEAT, Origin.GAME, Origin.BEEF, Origin.PORK, Origin.POULTRY, Origin.LIVER,
     Origin.CURED_MEAT, Origin.COLD_CUTS, Origin.FISH, Origin.SMOKED_FISH, Origin.COLD_SMOKED, Origin.RAW_FISH,
     Origin.MERCURY_FISH, Origin.CRUSTACEAN, Origin.MOLLUSC, Origin.GELATINE, Origin.ANIMAL_FAT, Origin.RENNET,
     Origin.INSECT_COLOUR, Origin.FININGS}
)  # fmt: skip
# Words that say where nothing in a food comes from. They are no word about traces: what it may hold of an allergen is
# still asked about. UK FSA, vegan labels and allergens, from memory.
LIFTED_BY: Mapping[str, frozenset[Trait]] = {
    **dict.fromkeys(("vegan", "plant based"), _FLESH | ANIMAL | {Origin.LACTOSE, Origin.RAW_EGG}),
    **dict.fromkeys(("vegetarian", "veggy", "meatless", "meat free"), _FLESH),
}


@dataclass(frozen=True, slots=True)
class Hidden:
    """A trait that a food often or possibly has without its name saying so; `source` tells which."""

    what: Trait
    source: str = COMMON_PRACTICE


@dataclass(frozen=True, slots=True)
class Facts:
    """What is known of a food. `raw_class`: its cooking class; None if it is not raw or needs no cooking. `perishable`:
    spoils unchilled. `made`: made of several things; only its label names them all. `words`: the stems that find it;
    empty if its words name no food in it."""

    name: str
    allergens: frozenset[Allergen]
    origins: frozenset[Origin]
    raw_class: RawClass | None
    perishable: bool
    hidden: tuple[Hidden, ...] = ()
    made: bool = False
    words: Stems = ()

    @property
    def traits(self) -> frozenset[Trait]:
        return self.allergens | self.origins


@functools.cache
def table() -> dict[Stems, Facts]:
    """Every food of the table, by the stems of each name."""
    return {stems(entry.phrase): _facts_of(entry) for entry in ENTRIES}


def names_of(food: Facts) -> tuple[Stems, ...]:
    """The stems of every name of a table food: passata is strained tomatoes."""
    return _names().get(food.name, ())


@functools.cache
def _names() -> dict[str, tuple[Stems, ...]]:
    found: dict[str, tuple[Stems, ...]] = {}
    for entry in ENTRIES:
        if not entry.likeness:
            found[entry.name] = (*found.get(entry.name, ()), stems(entry.phrase))
    return found


def _facts_of(entry: Entry) -> Facts:
    allergens = frozenset(t for t in entry.traits if isinstance(t, Allergen))
    origins = frozenset(t for t in entry.traits if isinstance(t, Origin))
    phrase = stems(entry.phrase)
    lifted = frozenset[Trait]().union(*(said for word, said in LIFTED_BY.items() if holds(phrase, tuple(word.split()))))
    hidden = tuple(Hidden(t) for t in sorted(entry.hidden - lifted, key=lambda t: t.value))
    hidden += tuple(Hidden(trait, source) for trait, source in entry.told)
    words = () if entry.likeness else phrase
    return Facts(entry.name, allergens, origins, entry.raw_class, entry.perishable, hidden, entry.made, words)


def together(parts: Sequence[Facts], head: Facts) -> Facts:
    """Everything in several foods, under one's name; the raw class is the one that needs most heat."""
    traits = frozenset[Trait]().union(*(part.traits for part in parts))
    hidden = dict.fromkeys(h for part in parts for h in part.hidden if h.what not in traits)
    classes = {part.raw_class for part in parts}
    return Facts(
        head.name,
        frozenset(t for t in traits if isinstance(t, Allergen)),
        frozenset(t for t in traits if isinstance(t, Origin)),
        next((each for each in HEAVIEST_FIRST if each in classes), None),
        any(part.perishable for part in parts),
        tuple(hidden),
        any(part.made for part in parts),
        head.words,
    )


def in_one(parts: Sequence[Facts], *, cooked: bool, dried: bool) -> Facts:
    """One run of words' foods as one: `chestnut mushrooms`, `cod in batter`, `dried cherries`. As `settled` gives
    them."""
    head = parts[0]
    if len(parts) == 1 and head.words in _OF_THEIR_OWN:
        head = replace(head, hidden=(*head.hidden, *(Hidden(each) for each in _MAIN if each not in head.traits)))
    if head.words in _STILL_RAW and head.raw_class is None:
        head = replace(head, raw_class=together(parts, head).raw_class)
    if dried and head.words in _FRUIT:
        head = replace(head, hidden=(*head.hidden, Hidden(Allergen.SULPHITES)))
    return replace(together((head, *parts[1:]), head), raw_class=None if cooked else head.raw_class)


def settled(parts: Sequence[Facts]) -> list[tuple[int, Facts]]:
    """The foods of one run by number, the main one first, given last word first: a way of cooking comes last, a salmon
    steak is salmon, a bean burger may hold meat."""
    order = sorted(range(len(parts)), key=lambda n: parts[n].words in _WAYS)
    if parts[order[0]].words in _CUTS and len(order) > 1:
        del order[0]
    found = [(n, parts[n]) for n in order]
    others = any(Origin.MEAT in part.traits for _, part in found[1:])
    if found[0][1].words in _SHAPES and len(found) > 1 and not others:
        found[0] = (found[0][0], in_doubt(found[0][1], frozenset({Origin.MEAT})))
    return found


# Meat on their own; beside another food only its cut.
_CUTS = frozenset(stems(word) for word in ("steak", "bone", "hock", "chuck", "rib", "brisket", "sirloin"))
_SHAPES = frozenset(
    stems(word)
    for word in ("burger", "patty", "sausage", "meatball", "meatloaf", "pate", "terrine", "mince", "kofta", "schnitzel")
)
# What is shaped and sold raw, of whatever stands before it: a pork schnitzel, a lamb kebab.
_STILL_RAW = frozenset(
    stems(word) for word in ("schnitzel", "kebab", "skewer", "escalope", "cutlet", "rissole", "dumpling")
)
# Ways that are a dish where they stand alone; a main food that nobody names is in it.
_OF_THEIR_OWN = frozenset(
    stems(word)
    for word in (
        "katsu", "tonkatsu", "milanese", "cotoletta", "fritto misto", "tempura", "thermidor", "stroganoff", "stroganov",
        "kyiv", "kiev", "cordon bleu", "wellington", "en croute", "korma", "pasanda", "tikka", "tikka masala",
        "tandoori",
        "makhani", "madras", "balti", "jalfrezi", "rogan josh", "bhuna", "vindaloo", "dopiaza", "dhansak", "biryani",
        "biriyani", "curry", "thai curry", "green curry", "red curry", "rendang", "massaman", "massaman curry", "laksa",
        "teriyaki", "sweet and sour", "kung pao", "kung po", "chow mein", "bulgogi", "char siu", "adobo", "chasseur",
        "carbonnade", "carbonade", "bourguignon", "bourguignonne", "au vin", "confit", "yakitori",
    )
)  # fmt: skip
_MAIN: tuple[Trait, ...] = (
    Origin.MEAT, Origin.RED_MEAT, Origin.BEEF, Origin.PORK, Origin.POULTRY, Allergen.FISH, Origin.FISH,
    Allergen.CRUSTACEANS, Origin.CRUSTACEAN, Allergen.MOLLUSCS, Origin.MOLLUSC,
)  # fmt: skip
_FRUIT = frozenset(stems(entry.phrase) for entry in FRUIT)
_WAYS = frozenset(stems(entry.phrase) for entry in WAYS)

# What is put in place of what a food is free from; common practice, no source.
_INSTEAD: dict[Trait, tuple[Trait, ...]] = {
    Origin.DAIRY: (Allergen.SOY, Allergen.OATS, Allergen.ALMONDS, Allergen.CASHEWS, Allergen.COCONUT),
    Origin.GLUTEN: (Allergen.SOY, Allergen.LUPIN, Allergen.EGGS),
    Origin.MEAT: (Allergen.SOY, Allergen.WHEAT, Allergen.EGGS, Allergen.MILK),
    Origin.FISH: (Allergen.SOY, Allergen.WHEAT),
    Origin.CRUSTACEAN: (Allergen.SOY, Allergen.WHEAT),
    Origin.EGG: (Allergen.SOY,),
}
# `Free from gluten` leaves wheat open (wheat starch without gluten exists), and `vegan` is no word about traces.
_OPEN_BY = {
    Origin.GLUTEN: frozenset[Trait]({Allergen.WHEAT, Allergen.RYE, Allergen.BARLEY}),
    Origin.FININGS: frozenset[Trait]({Allergen.MILK, Allergen.EGGS}),
}


def free_from(food: Facts, cleared: frozenset[Trait]) -> Facts:
    """A food that its name says to be free from something: gluten-free cake, vegan mince. What may be put in its place
    is hidden in it."""
    if Allergen.OATS in food.traits:  # oats without gluten are still oats
        cleared -= {Allergen.OATS, Origin.OATS}
    if not cleared:
        return food
    open_ = frozenset[Trait]().union(*(traits for word, traits in _OPEN_BY.items() if word in cleared))
    if Origin.MEAT in cleared:
        open_ |= {Allergen.FISH, Allergen.CRUSTACEANS, Allergen.MOLLUSCS} - cleared
    left = in_doubt(food, open_) if cleared & food.traits else food
    kept = left.traits - cleared
    also = [Hidden(each) for trait, others in _INSTEAD.items() if trait in food.traits & cleared for each in others]
    hidden = [h for h in (*left.hidden, *also) if h.what not in cleared | kept]
    return replace(
        left,
        allergens=frozenset(t for t in kept if isinstance(t, Allergen)),
        origins=frozenset(t for t in kept if isinstance(t, Origin)),
        hidden=tuple(dict.fromkeys(hidden)),
        made=left.made or bool(also),
        raw_class=None if also and Origin.MEAT in cleared | {Origin.MEAT} - food.traits else left.raw_class,
    )


def in_doubt(food: Facts, doubted: frozenset[Trait]) -> Facts:
    """The same food, where it only may hold these."""
    held = sorted(food.traits & doubted, key=lambda trait: trait.value)
    return replace(
        food,
        allergens=food.allergens - doubted,
        origins=food.origins - doubted,
        hidden=(*food.hidden, *(Hidden(trait) for trait in held)),
    )
