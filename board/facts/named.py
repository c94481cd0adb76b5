"""Words for what is in food, on labels and from hosts and guests: `tree nuts`, `dairy`, `shellfish`, `gluten`. Pure."""

from dataclasses import dataclass

from board.facts.allergens import LIKE_NUTS, TREE_NUTS, Allergen
from board.facts.origins import ANIMAL, Origin, Trait
from board.facts.phrases import stems

A = Allergen


@dataclass(frozen=True, slots=True)
class Named:
    """One such word. `holds`: what a food that contains it has, and what a guest who says it must not have. `cleared`:
    what a food free from it lacks. `asks`: what a guest who says it may also mean."""

    word: str
    holds: frozenset[Trait]
    cleared: frozenset[Trait]
    asks: frozenset[Trait] = frozenset()


def named(word: str) -> Named | None:
    """What a word names, singular or plural; None if unknown."""
    return _BY_STEMS.get(stems(word))


def known_words() -> tuple[str, ...]:
    """Every known word, as written."""
    return tuple(word for words, *_ in _WORDS for word in words)


_MILK: frozenset[Trait] = frozenset({A.MILK, Origin.DAIRY, Origin.LACTOSE})
_FISH: frozenset[Trait] = frozenset(
    {A.FISH, Origin.FISH, Origin.SMOKED_FISH, Origin.COLD_SMOKED, Origin.MERCURY_FISH, Origin.RAW_FISH}
)
_CRUSTACEANS: frozenset[Trait] = frozenset({A.CRUSTACEANS, Origin.CRUSTACEAN})
_MOLLUSCS: frozenset[Trait] = frozenset({A.MOLLUSCS, Origin.MOLLUSC})
_MEAT: frozenset[Trait] = frozenset(
    {
        Origin.MEAT, Origin.RED_MEAT, Origin.GAME, Origin.BEEF, Origin.PORK, Origin.POULTRY, Origin.LIVER,
        Origin.CURED_MEAT, Origin.COLD_CUTS,
    }
)  # fmt: skip
_OF_SOME_BEAST: frozenset[Trait] = frozenset({Origin.ANIMAL_FAT, Origin.GELATINE})  # the animal is seldom stated
_NUTS: frozenset[Trait] = frozenset(TREE_NUTS | {A.PEANUTS})


def _one(*traits: Trait) -> frozenset[Trait]:
    return frozenset(traits)


# Words; what they hold; what `free from` clears, if different; what to ask a guest about. Wheat is not cleared by `free
# from gluten`: wheat starch without gluten exists.
_WORDS: tuple[tuple[tuple[str, ...], frozenset[Trait], frozenset[Trait] | None, frozenset[Trait]], ...] = (
    (("wheat", "spelt", "khorasan"), _one(A.WHEAT), None, _one()),
    (("rye",), _one(A.RYE), None, _one()),
    (("barley",), _one(A.BARLEY), None, _one()),
    (("oats",), _one(A.OATS), _one(A.OATS, Origin.OATS), _one()),
    (("gluten", "cereals containing gluten", "gluten cereals"), _one(Origin.GLUTEN),
     _one(Origin.GLUTEN, Origin.OATS), _one(Origin.OATS)),
    (("crustaceans", "crustacean shellfish"), _one(A.CRUSTACEANS), _CRUSTACEANS, _one()),
    (("molluscs", "mollusks"), _one(A.MOLLUSCS), _MOLLUSCS, _one()),
    (("shellfish",), _one(A.CRUSTACEANS, A.MOLLUSCS), _CRUSTACEANS | _MOLLUSCS, _one()),
    (("seafood",), _one(A.CRUSTACEANS, A.MOLLUSCS, A.FISH), _CRUSTACEANS | _MOLLUSCS | _FISH, _one()),
    (("fish",), _one(A.FISH), _FISH, _one()),
    (("eggs",), _one(A.EGGS), _one(A.EGGS, Origin.EGG, Origin.RAW_EGG), _one()),
    (("milk", "dairy", "milk products", "dairy products", "milk protein", "cows milk"), _one(A.MILK), _MILK, _one()),
    (("lactose",), _one(Origin.LACTOSE), None, _one()),
    (("peanuts", "groundnuts"), _one(A.PEANUTS), None, _one()),
    (("nuts",), _NUTS, None, frozenset(LIKE_NUTS)),
    (("tree nuts",), frozenset(TREE_NUTS), None, frozenset(LIKE_NUTS)),
    (("almonds",), _one(A.ALMONDS), None, _one()),
    (("hazelnuts", "filberts"), _one(A.HAZELNUTS), None, _one()),
    (("walnuts",), _one(A.WALNUTS), None, _one()),
    (("cashews", "cashew nuts"), _one(A.CASHEWS), None, _one()),
    (("pecans", "pecan nuts"), _one(A.PECANS), None, _one()),
    (("Brazil nuts",), _one(A.BRAZIL_NUTS), None, _one()),
    (("pistachios", "pistachio nuts"), _one(A.PISTACHIOS), None, _one()),
    (("macadamias", "macadamia nuts"), _one(A.MACADAMIAS), None, _one()),
    (("pine nuts",), _one(A.PINE_NUTS), None, _one()),
    (("chestnuts",), _one(A.CHESTNUTS), None, _one()),
    (("coconut",), _one(A.COCONUT), None, _one()),
    (("soy", "soya", "soybeans", "soya beans"), _one(A.SOY), None, _one()),
    (("celery", "celeriac"), _one(A.CELERY), None, _one()),
    (("mustard",), _one(A.MUSTARD), None, _one()),
    (("sesame", "sesame seeds"), _one(A.SESAME), None, _one()),
    (("sulphites", "sulfites", "sulphur dioxide", "sulfur dioxide"), _one(A.SULPHITES), None, _one()),
    (("lupin",), _one(A.LUPIN), None, _one()),
    (("meat",), _one(Origin.MEAT), _MEAT, _one()),
    (("red meat", "red meats", "mammal meat"), _one(Origin.RED_MEAT), None, _OF_SOME_BEAST),
    # An allergy to what all mammals but ourselves hold: their meat and fat, and for many milk and gelatine too. US CDC,
    # alpha-gal syndrome, from memory.
    (("alpha-gal", "alpha gal", "alpha-gal syndrome"), _one(Origin.RED_MEAT), None,
     _OF_SOME_BEAST | _MILK),
    (("game", "game meat", "game birds"), _one(Origin.GAME), None, _one()),
    (("beef",), _one(Origin.BEEF), None, _OF_SOME_BEAST),
    (("pork",), _one(Origin.PORK), None, _OF_SOME_BEAST),
    (("poultry",), _one(Origin.POULTRY), None, _one()),
    (("honey",), _one(Origin.HONEY), None, _one()),
    (("gelatine", "gelatin"), _one(Origin.GELATINE), None, _one()),
    (("animal rennet", "rennet"), _one(Origin.RENNET), None, _one()),
    (("animal fat",), _one(Origin.ANIMAL_FAT), None, _one()),
    (("animal products",), frozenset(ANIMAL), frozenset(ANIMAL), _one()),
    (("insect colour", "cochineal", "carmine"), _one(Origin.INSECT_COLOUR), None, _one()),
    (("animal finings", "isinglass"), _one(Origin.FININGS), None, _one()),
    (("alcohol",), _one(Origin.ALCOHOL), None, _one()),
)  # fmt: skip
_BY_STEMS = {
    stems(word): Named(words[0], holds, holds if cleared is None else cleared, asks)
    for words, holds, cleared, asks in _WORDS
    for word in words
}
