"""Which of the usual drinks a drink poured with a course is. Common practice, no source. Pure."""

from board.facts.food import understood
from board.facts.foods import drinks
from board.facts.foods.entry import Entry
from board.facts.foods.plants import MADE_OF_PLANTS
from board.facts.origins import Origin

_SPARKLING = ("sparkling wine", "cremant", "lambrusco")
_BY_THE_SMALL_GLASS = (
    "dessert wine", "sauternes", "ginger wine", "ice wine", "fino", "manzanilla sherry", "amontillado", "oloroso",
    "cream sherry", "dry sherry", "medium sherry", "pedro ximenez", "cooking sherry", "cooking wine", "ruby port",
    "rum raisin wine", "banyuls", "sherry", "port", "madeira", "marsala", "vermouth",
)  # fmt: skip
_HOT = ("tea", "coffee", "matcha", "earl grey", "chamomile tea", "coffee granule", "espresso powder", "tea bag",
        "jasmine tea", "herbal tea", "fruit tea", "chai", "latte", "horchata", "grenadine")  # fmt: skip


def _names(*groups: tuple[Entry, ...]) -> frozenset[str]:
    return frozenset(entry.name for group in groups for entry in group)


_WINE = _names(drinks.WINE) - {*_SPARKLING, *_BY_THE_SMALL_GLASS}
_BEER = _names(drinks.BEER, drinks.WHEAT_BEER, drinks.FREE_BEER)
_SOFT = _names(drinks.SOFT, drinks.SOFT_MIXED) - {*_HOT}
_SOFT |= {entry.name for entry in MADE_OF_PLANTS if entry.phrase.endswith("juice")}
_WITHOUT = _names(drinks.WITHOUT_ALCOHOL)


def kind_of_drink(drink: str) -> str:
    """`wine`, `sparkling`, `beer`, `soft drinks` or `water`; empty for every other drink, and what is none."""
    known = understood(drink.replace("non-alcoholic", "alcohol-free")).known
    if not known:
        return ""
    name, strong = known[0].name, Origin.ALCOHOL in known[0].origins
    if name in _WITHOUT or name in _SOFT:
        return "soft drinks"
    for kind, names in (("wine", _WINE), ("sparkling", _SPARKLING), ("beer", _BEER)):
        if name in names:
            kind = "sparkling" if kind == "wine" and "sparkling" in drink.casefold() else kind
            return kind if strong else "soft drinks"
    return name if name == "water" else ""
