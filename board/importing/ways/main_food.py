"""What a dish's name says it is made of, and how much a head. Pure; common practice, no source."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import ceil
from typing import Literal

from board.facts.food import facts
from board.facts.mentions import FORMS, mentioned
from board.facts.origins import Origin
from board.facts.phrases import holds, stem, stems, words_of
from board.facts.seasoning import seasons
from board.facts.sections import as_called, section_of
from board.importing.ways.pattern import Minutes, Pattern
from board.plan.phrases.food_safety import FoodClass

Kind = Literal["poultry", "ground meat", "whole cut", "fish", "eggs", "other", ""]  # "": no food known in it

# Dishes whose name tells their food without naming it.
_MEANT = {
    "hummus": "chickpeas", "houmous": "chickpeas", "guacamole": "avocado", "baba ganoush": "aubergines", "tzatziki":
        "cucumber",
    "tapenade": "olives", "welsh rarebit": "cheddar", "rarebit": "cheddar", "gougere": "gruyère", "gazpacho":
        "tomatoes", "salmorejo": "tomatoes",
    "vichyssoise": "leeks", "borscht": "beetroot", "spanish omelette": "potatoes", "carbonara": "bacon", "bolognese":
        "minced beef",
    "lasagne": "minced beef", "lasagna": "minced beef", "moussaka": "minced lamb", "pissaladiere": "onions", "gravlax":
        "salmon", "gravadlax": "salmon",
    "moule": "mussels", "prawn cocktail": "cooked prawns", "shrimp cocktail": "cooked prawns", "osso buco": "veal "
        "shin", "coq au vin": "chicken legs",
    "pulled pork": "pork shoulder", "prime rib": "rib of beef", "steak frites": "beef steaks", "steak": "beef steaks",
        "goulash": "beef",
    "bourguignon": "beef", "stroganoff": "beef", "chili con carne": "minced beef", "chilli con carne": "minced beef",
        "blanquette": "veal", "navarin": "lamb",
    "hamburger": "minced beef", "burger": "minced beef", "meatball": "minced beef", "meatloaf": "minced beef",
        "shepherd pie": "minced lamb",
    "cottage pie": "minced beef", "fish pie": "white fish", "fish and chips": "white fish",
        "battered fish": "white fish", "calamari": "squid",
        "french fry": "potatoes", "fry": "potatoes", "onion ring": "onions", "chips": "potatoes", "sweet potato fry":
        "sweet potatoes",
    "rosti": "potatoes", "latke": "potatoes", "champ": "potatoes", "dauphinoise": "potatoes", "scalloped potato":
        "potatoes", "caponata": "aubergines", "ratatouille": "courgettes",
    "quiche lorraine": "bacon", "cauliflower cheese": "cauliflower", "cauli cheese": "cauliflower",
    "egg mayo": "hard-boiled eggs", "egg sandwich": "hard-boiled eggs", "tatty": "potatoes",
    "guac": "avocados", "broccoli cheese": "broccoli", "stuffed pepper":
        "peppers", "bangers and mash": "pork sausages", "sausage roll": "sausages", "tarte tatin": "apples",
        "brown betty": "apples", "chocolate": "dark chocolate", "custard tart": "vanilla pods", "coleslaw": "white "
        "cabbage", "egg mayonnaise": "eggs",
    "dolma": "vine leaves", "dolmade": "vine leaves", "dal": "lentils", "dhal": "lentils", "rogan josh": "lamb",
        "sole": "sole fillets", "tiramisu": "coffee", "caesar salad": "romaine lettuce",
}  # fmt: skip
# Cuts that stand behind the beast's name.
_CUTS = frozenset(
    stems("cheek chop tenderloin loin fillet steak shank shin neck cutlet breast leg thigh wing rump haunch saddle")
)

# Pieces a head, and eaters that a whole bird feeds when it is roast.
_PIECES = {
    "duck leg": 1.0, "chicken leg": 1, "chicken thigh": 2, "chicken drumstick": 2, "chicken breast": 1,
        "duck breast": 0.75,
    "lamb shank": 1, "lamb chop": 2, "lamb cutlet": 3, "pork chop": 1, "veal chop": 1, "beef steak": 1,
    "sirloin steak": 1, "rump steak": 1, "fillet steak": 1, "scallop": 3,
        "oyster": 3, "quail": 2,
    "poussin": 1, "partridge": 1, "pigeon": 1, "rack of lamb": 0.35, "lobster": 0.5, "artichoke": 1, "avocado": 0.5,
}  # fmt: skip
_WHOLE_BIRDS = {"chicken": 4, "duck": 3, "guinea fowl": 3, "pheasant": 2.5, "capon": 6}
_ROASTED_WHOLE = ("roast bird", "pot-roasted")
# Grams a head of raw meat and fish as a main dish; less before it.
_GRAMS = {"poultry": 200, "ground meat": 140, "whole cut": 200, "fish": 160}
_SHARE = {"nibbles": Fraction(2, 5), "starter": Fraction(1, 2)}
_A_HEAD = {
    "bacon": 40,
    "turkey": 450,
    "goose": 600,
    "oxtail": 350,
    "short rib": 350,
    "mussel": 400,
    "clam": 350,
    "veal shin": 300,
    "leg of lamb": 330,  # with its bone, as the two below
    "lamb shoulder": 380,
    "rib of beef": 400,
}
# Grams of a piece, for what nobody buys by weight.
_PIECE_GRAMS = {
    "lemon": 100, "lime": 60, "orange": 180, "apple": 150, "pear": 160, "peach": 140, "egg": 50, "cauliflower": 800,
    "pineapple": 1000, "melon": 1000, "banana": 120, "mango": 300, "aubergine": 300, "eggplant": 300, "cabbage": 900,
        "cucumber": 300,
    "red cabbage": 900, "white cabbage": 900, "lettuce": 300, "romaine lettuce": 300, "fennel": 250, "quince": 300,
        "grapefruit": 300,
}  # fmt: skip
_FLAVOURS = {
    "vanilla": 0.5, "garlic": 8, "ginger": 8, "mint": 4, "thyme": 2, "basil": 5, "parsley": 6, "dill": 5, "rosemary": 2,
        "sage": 2, "coffee": 5,
    "mustard": 6, "horseradish": 8, "lemon": 15, "chilli": 4, "saffron": 0.05, "bacon": 40, "honey": 10,
}  # fmt: skip
# Pieces a head of what is bought beside a dish.
_EACH = {"bun": 1.0, "roll": 1, "scone": 1, "muffin": 1, "pitta": 1, "naan": 0.5, "egg": 1, "dumpling": 3, "blini": 3}
_SPIRITS = frozenset(stems("brandy rum sherry port whisky whiskey gin liqueur"))
_MANY = frozenset(
    stems(
        "tomato onion leek mushroom potato carrot pea apple pear plum lemon lime orange parsnip pepper courgette "
        "aubergine lentil chickpea "
        "bean raspberry strawberry gooseberry cranberry blackcurrant blueberry peach apricot cherry fig prawn scallop "
        "egg walnut pecan almond leg clam mussel "
        "chop cheek thigh breast steak shank drumstick cutlet sausage olive radish cucumber beet artichoke vegetable "
        "oyster"
    )
)
# The first that a dish holds decides how hot it gets: by the charts, those that need most heat first.
_HOTTEST: tuple[FoodClass, ...] = ("stuffed", "casserole", "poultry", "ground meat", "eggs", "fish", "whole cut")


@dataclass(frozen=True)
class NamedFood:
    """A food in a dish's name, as it is written there. `kind`: its class when raw, "other" for what has none."""

    said: str
    kind: Kind
    made: bool = False  # of several things, as a label tells

    @property
    def is_drink(self) -> bool:
        """Whether it is wine, spirits and the like."""
        known = facts(self.said)
        return known is not None and Origin.ALCOHOL in known.origins


def foods_in(dish: str, done: Sequence[tuple[str, ...]], forms: Sequence[tuple[str, ...]]) -> tuple[NamedFood, ...]:
    """The foods in a dish's name, in order. `done`: words that say what was done; `forms`: that name the dish itself,
    which count as foods only after the others."""
    taken = {word for phrase in done for word in phrase} - _SAYS_READY
    shapes = {word for phrase in forms if len(phrase) == 1 for word in phrase}
    dish = _SQUASH.sub(r"\1winter squash", dish)
    passes = (taken | (FORMS - _ALSO_FOODS) | shapes, taken | (FORMS - _ALSO_FOODS), taken)
    found: dict[str, NamedFood] = {}
    first = (*_read(_COMPOUND.sub(r"\1", dish), passes[0]), *_read(dish, passes[0]))
    gap = _GOES_WITH.search(dish)
    thing = stems(dish[: gap.start()] if gap is not None else dish)
    own = [each for each in first if holds(thing, stems(each.said))]
    meant = tuple(_meant(dish, {word for each in own for word in stems(each.said)}))
    beside = tuple(each for each in first if each not in own)
    read = (*first, *_read(dish, passes[1]), *_read(dish, passes[2]))
    if meant:  # a chocolate and pear tart is of pears
        read = (*beside, *meant) if gap is not None and gap[0].strip().casefold() == "and" else (*meant, *beside)
    for each in read:
        if not any(holds(stems(known), stems(each.said)) or holds(stems(each.said), stems(known)) for known in found):
            found[each.said] = each
    return tuple(found.values())


_GOES_WITH = re.compile(r"\s*,\s*|\s+(?:with|and|in|on)\s+", re.IGNORECASE)
_SQUASH = re.compile(
    r"^((?:roast(?:ed)?|baked|spiced|stuffed|creamy)\s+|)squash\b", re.IGNORECASE
)  # orange squash is drunk
_COMPOUND = re.compile(r"\b\w+-(\w+ed)\b")  # beetroot-cured salmon is salmon first


_SAYS_READY = frozenset(stems("smoked"))  # smoked salmon is a food, eaten as it is
_ALSO_FOODS = frozenset(stems("sausage steak burger meatball ravioli noodle caramel truffle cracker"))


def _read(dish: str, taken: set[str] | frozenset[str]) -> Iterator[NamedFood]:
    words = words_of(dish)
    left = " ".join("." if stem(word) in taken else word for word in words)
    for each in mentioned(left):
        said = _with_cut(each.said, words)
        known = facts(said)
        if known is not None:
            yield NamedFood(_many(said), each.food.raw_class or "other", known.made)


def _with_cut(said: str, words: tuple[str, ...]) -> str:
    """`lamb chops` where the name has `lamb` with `chops` behind it."""
    own = tuple(said.split())
    for n in range(len(words) - len(own)):
        if words[n : n + len(own)] == own and stem(words[n + len(own)]) in _CUTS:
            whole = f"{said} {words[n + len(own)]}"
            return whole if facts(whole) is not None else said
    return said


def _meant(dish: str, named: set[str]) -> Iterator[NamedFood]:
    """What the dish is known to be made of, where its name tells no food (`named`) but those of that name itself."""
    words = stems(dish)
    for name, food in _MEANT.items():
        said = stems(name)
        if (words == said if name in _BY_ITSELF else holds(words, said)) and named <= set(said):
            known = facts(food)
            if known is not None and not (is_meatless(dish) and known.raw_class not in (None, "eggs")):
                yield NamedFood(food, known.raw_class or "other")
            return


_BY_ITSELF = ("chips",)
_MEATLESS = frozenset(stems("vegan vegetarian veggie veg meatless meatfree vegetable mushroom lentil bean nut tofu"))


def is_meatless(dish: str) -> bool:
    """Whether its name says there is no meat or fish in it: `vegan lasagne`, `meat-free chilli`."""
    words = stems(dish)
    return (
        bool(_MEATLESS.intersection(words[:2])) or holds(words, stems("meat free")) or holds(words, ("plant", "based"))
    )


def without_meat(line: str) -> str | None:
    """An ingredient line of the tables for a dish without meat; None if it is meat or fish."""
    if line.endswith(("(butcher)", "(fishmonger)")):
        return None
    return line.replace("chicken stock", "vegetable stock")


def _many(said: str) -> str:
    """`leek` as a shop has it: leeks."""
    if stem(said.split()[-1]) not in _MANY or said.endswith("s"):
        return said
    if said.endswith("y"):
        return said[:-1] + "ies"
    return said + ("es" if said.endswith(("o", "ch", "sh")) else "s")


def hottest(*classes: str) -> FoodClass | None:
    """The class of those given that needs most heat; None if none is a class."""
    return next((each for each in _HOTTEST if each in classes), None)


def minutes_of(food: NamedFood | None, dish: str, pattern: Pattern) -> Minutes | None:
    """The minutes that a dish's own food needs in this way; None where the pattern's will do."""
    longest = sorted((pattern.own or {}).items(), key=lambda each: -len(each[0].split()))
    for words in (stems(food.said), ()) if food is not None else (stems(dish),):
        for name, minutes in longest:
            if holds(words, stems(name)):
                return minutes
    return None


def main_line(food: NamedFood, pattern: Pattern, eaters: int) -> str:
    """The ingredient line of the dish's own food."""
    words, tail = stems(food.said), f"{food.said} ({_section(food)})"
    match = _HEAD.fullmatch(pattern.food)
    if match is not None and match[2] not in (None, "g"):  # by the bottle, or in millilitres
        return line_for(pattern.food.replace(match[3], tail), eaters)
    grams = Fraction(_GRAMS.get(food.kind, 0)) or _grams_of(pattern.food)
    grams = next((Fraction(each) for name, each in _A_HEAD.items() if words == stems(name)), grams)
    share = pattern.share or _SHARE.get(pattern.course, Fraction(1)) if food.kind in _GRAMS else Fraction(1)
    if pattern.name in _ROASTED_WHOLE and (each := _WHOLE_BIRDS.get(" ".join(words))):
        birds = ceil(eaters / each)
        return f"{birds} whole {tail if birds == 1 or food.said.endswith('fowl') else tail.replace(' (', 's (', 1)}"
    if (pieces := next((few for name, few in _PIECES.items() if words == stems(name)), None)) is not None:
        return _counted(ceil(eaters * pieces), tail)
    if (weight := next((heavy for name, heavy in _PIECE_GRAMS.items() if words == stems(name)), None)) is not None:
        return _counted(round(float(grams * eaters) / weight), tail)
    return f"{measured(grams * share * eaters, 'g')} {tail}"


def beside_line(food: NamedFood, eaters: int) -> str:
    """The line of a food that the name gives beside the main one."""
    tail = f"{food.said} ({_section(food)})"
    if food.is_drink:
        return f"{measured(Fraction(10 if _SPIRITS & set(stems(food.said)) else 50) * eaters, 'ml')} {tail}"
    pieces = next((few for name, few in _EACH.items() if stems(food.said)[-1:] == stems(name)[-1:]), None)
    if food.made and pieces is not None:
        return _counted(ceil(pieces * eaters), tail)
    if seasons(food.said) and not any(holds(stems(food.said), stems(name)) for name in _FLAVOURS):
        return f"to taste {tail}"
    few = next((few for name, few in _FLAVOURS.items() if holds(stems(food.said), stems(name))), 40)
    weight = next((heavy for name, heavy in _PIECE_GRAMS.items() if stems(food.said) == stems(name)), None)
    if weight is not None:
        return _counted(round(few * eaters / weight), tail)
    return f"{measured(Fraction(few) * eaters, 'g')} {tail}"


def _section(food: NamedFood) -> str:
    """The shop's section; a name that no table has may be anything that grows, or that a deli makes."""
    found = as_called(section_of(food.said), ("fishmonger",))
    return "deli" if food.made and found in ("", "veg") else found or "veg"


_HEAD = re.compile(
    r"(\d+(?:\.\d+)?(?:/\d+)?)\s+(?:(g|ml|tsp|tbsp|bunches|cloves|sticks|sheets|sprigs|bottles)\s+)?(.+)"
)
_ONE = {"bunches": "bunch", "cloves": "clove", "sticks": "stick", "sheets": "sheet", "sprigs": "sprig", "bottles":
    "bottle"}  # fmt: skip
_PLURAL = re.compile(r"(?<=[a-z])(oes|ves|ies|s)(?=$|,| \()")
_SINGLE = {"oes": "o", "ves": "f", "ies": "y", "s": ""}


def line_for(a_head: str, eaters: int) -> str:
    """`1/4 onions (veg)` a head, as an ingredient line for all who eat. A line without a figure stays."""
    match = _HEAD.fullmatch(a_head)
    if match is None:
        return a_head
    amount, unit, food = Fraction(match[1]) * eaters, match[2] or "", match[3]
    if unit in ("g", "ml"):
        return f"{measured(amount, unit)} {food}"
    whole = max(1, ceil(amount))
    if unit:
        return f"{whole} {_ONE.get(unit, unit) if whole == 1 else unit} {food}"
    return _counted(whole, food)


def _counted(count: int, food: str) -> str:
    """So many of it, one at least: `1 onion (veg)` of onions."""
    return f"{count} {food}" if count > 1 else f"1 {_PLURAL.sub(lambda end: _SINGLE[end[1]], food, count=1)}"


def measured(amount: Fraction, unit: str) -> str:
    """Grams or millilitres as a shop and a cook's scales give them: in steps of 5, from 100 in steps of 10."""
    step = 1 if amount < 20 else 5 if amount < 100 else 10 if amount < 1000 else 50
    figure = max(1, ceil(amount / step) * step)
    return f"{figure} {unit}" if figure < 1000 else f"{figure / 1000:g} {'kg' if unit == 'g' else 'l'}"


def _grams_of(a_head: str) -> Fraction:
    match = _HEAD.fullmatch(a_head)
    return Fraction(match[1]) if match is not None and match[2] in ("g", "ml") else Fraction(60)
