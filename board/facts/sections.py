"""The section of the shop where a food stands. Common practice, no source: shops differ, and what a plan says goes
first. Pure."""

import functools
import re
from collections.abc import Iterable

from board.facts.called import same_food
from board.facts.food import understood
from board.facts.foods import baking, dairy, dishes, drinks, meat, plants, ready, sea, seeds, stores, ways
from board.facts.foods.entry import Entry
from board.facts.held import Stems
from board.facts.phrases import folded, stems

# A section, and what else a host may call it.
SECTIONS: dict[str, tuple[str, ...]] = {
    "veg": ("vegetables", "fruit and veg", "fruit", "greengrocer", "produce", "market"),
    "butcher": ("meat",),
    "fish": ("fishmonger", "fish counter", "seafood"),
    "deli": ("delicatessen", "deli counter"),
    "dairy": ("chiller", "chilled", "fridge"),
    "bakery": ("baker", "bread"),
    "baking": ("home baking",),
    "store cupboard": ("pantry", "cupboard", "dry goods", "groceries", "grocer"),
    "freezer": ("frozen",),
    "drinks": ("drink", "wine merchant", "off licence"),
    "florist": ("flowers",),
    "household": (),
}

_BAKERY = (
    *baking.BREAD, *baking.GRAIN_BREAD, *baking.RYE_BREAD, *baking.RICH_BREAD, *baking.EGG_BREAD,
    *baking.EGG_AND_MILK_BREAD, *baking.MALT_LOAF, *baking.RYE_SOURDOUGH, *baking.OTHER_BREAD, *baking.FREE_BREAD,
    *baking.CORN_BREAD, *seeds.SIMIT, *ready.NUT_BAKES, *dishes.BAKED, *dishes.SWEET_PIES,
)  # fmt: skip
_BAKING = (
    *baking.WHEAT, *baking.MALTED_FLOUR, *baking.RYE, *baking.TRITICALE, *baking.SPECIAL_FLOURS, *baking.SUGAR,
    *baking.FREE_SUGARS,
    *baking.RAISING, *baking.BAKING_POWDER, *baking.COLOURING, *baking.STARTER, *baking.CUSTARD_POWDER,
    *baking.EXTRACTS, *baking.CHOCOLATE, *baking.MILK_CHOCOLATE, *seeds.NUTS, *seeds.NUT_MIXES, *meat.GELATINE,
    *dairy.IN_TINS_AND_DRY, *dairy.MALTED_MILK, *plants.DRIED_FRUIT,
)  # fmt: skip
_DAIRY = (*dairy.DAIRY, *baking.RAW_DOUGH, *baking.PASTRY, *baking.SUET_PASTRY, *baking.BUTTER_PASTRY)
_DELI = (
    *meat.COOKED_HAM, *meat.CURED, *meat.CURED_BEEF, *meat.NOT_PORK_BACON, *meat.LIVER_SAUSAGE, *meat.PATE,
    *meat.POULTRY_PATE, *meat.VEGETARIAN_SAUSAGE, *baking.FILLED_PASTA, *baking.GNOCCHI, *baking.ROLLS,
    *baking.EGG_ROLLS, *baking.FRESH_ROLLS, *seeds.SOY_FRESH, *seeds.TEMPEH, *sea.CURED, *seeds.FALAFEL,
    *seeds.SESAME_MIXES,
    *(entry for entry in (*ready.READY, *dishes.DISHES) if entry.perishable),
)  # fmt: skip
_VEG = (
    *plants.VEGETABLES, *plants.SPROUTS, *plants.CELERY, *plants.MIXED, *plants.MUSHROOMS, *plants.HERBS, *plants.FRUIT,
    *plants.MIXED_FRUIT,
)  # fmt: skip
_CUPBOARD = (
    *baking.BAKING, *seeds.SEEDS_AND_PULSES, *plants.MADE_OF_PLANTS, *stores.STORES, *meat.STOCK, *sea.IN_TINS,
    *sea.FISH_SAUCES, *sea.FISH_LIVER, *ready.READY, *ways.WAYS, *dishes.DISHES,
)  # fmt: skip
# In this order: the first that has it says where it stands.
_STANDS: tuple[tuple[str, tuple[Entry, ...]], ...] = (
    ("freezer", (*dairy.FROZEN, *dairy.SORBET)), ("bakery", _BAKERY), ("baking", _BAKING), ("dairy", _DAIRY),
    ("deli", _DELI), ("veg", _VEG), ("store cupboard", _CUPBOARD), ("butcher", meat.MEAT), ("fish", sea.SEA),
    ("drinks", drinks.DRINKS),
)  # fmt: skip
# These stand otherwise than the foods that hold the same.
_OTHERWISE = {
    "baking": """cornflour, potato flour, tapioca flour, arrowroot, rice flour, sweet rice flour, cassava flour,
        plantain flour, custard powder, marzipan, royal icing, fondant icing, icing, sprinkle, glace cherry,
        desiccated coconut, coconut flake, coconut sugar, fresh yeast, coconut flour, meringue, meringue nest,
        meringue powder, powdered egg, dried egg white, edible glitter, gold leaf, oat flour, barley flour, corn
        flour, kuzu, praline, praline paste, golden syrup, creamed coconut, ground rice, cake mix, crumble topping,
        almond flour""",
    "dairy": "fresh yeast, suet",
    "store cupboard": """bulgur, couscous, giant couscous, pearl couscous, freekeh, farro, spelt, pearled spelt,
        emmer, einkorn, semolina, wheat berry, cracked wheat, khorasan wheat, kamut, bran, wheat bran, wheat germ,
        nori, seaweed, celery seed, celery salt, breadcrumb, panko, crouton, breadstick, crispbread, rusk, matzo,
        melba toast, papadum, taco shell, tortilla chip, dried porcini, dried mushroom, mushroom powder, sun dried
        tomato, black garlic, garlic paste, bamboo shoot, water chestnut, palm heart, tamarind, vine leaf, roasted
        pepper, piquillo pepper, olive, black olive, green olive, kalamata olive, kimchi, sauerkraut, peanut,
        evaporated milk, pickled egg, century egg, salted duck egg, cracker, oyster cracker, tahini, zaatar,
        everything seasoning, worcestershire sauce, fish sauce, dashi, oyster sauce, vegetarian oyster sauce, shrimp
        paste, dried shrimp, prawn cracker, xo sauce, gravy granules, instant noodle, soup mix, instant soup, tinned
        soup, lecithin, mole, peanut sauce, salted anchovy, anchovy, tomato soup, cup soup, onion soup mix, guar gum,
        ghee, butter oil, cream cracker, bay leaf, bay, pickled herring""",
    "deli": """taramasalata, salmon mousse, tuna melt, coleslaw, potato salad, smoked tofu, stuffed olive, baba
        ganoush, stuffed vine leaf, dolma""",
    "bakery": """cake, sponge cake, scone, doughnut, pancake, waffle, brownie, gingerbread, shortcake, crepe, blini,
        cheesecake, tiramisu, gateau, swiss roll, carrot cake, chocolate cake, coffee cake, lemon tart, treacle tart,
        custard tart, pastel de nata, eclair, profiterole, victoria sponge, cupcake, pound cake, angel cake,
        madeleine, lemon drizzle cake, madeira cake, christmas pudding, christmas cake, stollen, mince pie, walnut
        bread, walnut cake, teacake, baklava, bakewell tart""",
    "freezer": "chip, oven chip, french fry, hash brown, onion ring, potato waffle, fish finger",
    "veg": "lemon juice, lime juice, chestnut, cobnut, mustard leaf, mustard cress",
    "drinks": """juice, orange juice, apple juice, pineapple juice, tomato juice, grape juice, pomegranate juice,
        cranberry juice, ice, ice cube, grapefruit juice, pear juice, carrot juice, cherry juice, vegetable juice,
        water, sparkling water, mineral water, soda water, drinking chocolate, bloody mary mix, barley water""",
    "fish": """cod roe, fish soup, seafood bisque, fish bone, salt cod, boqueron, fish ball, poke, ceviche, sashimi""",
}  # fmt: skip
# No food, but bought for the evening.
_THINGS = re.compile(
    r"\b(?:(?P<florist>flowers?|bouquets?|tulips?|roses)|(?P<household>candles?|tea ?lights?|lanterns?|napkins?|"
    r"serviettes?|matches|foil|cling ?film|(?:baking|kitchen|greaseproof) paper|parchment|paper towels?|toothpicks?|"
    r"(?:wooden|bamboo|metal) skewers?|cocktail sticks?|kitchen string|charcoal|firewood|kindling|fuel|lamp oil|"
    r"(?:bin|freezer) bags?|washing.?up liquid|place cards?|batteries))$"
)
_KEPT_COLD = re.compile(r"\bfrozen\b|\bice ?creams?\b|\bsorbets?\b")
_KEPT_LONG = re.compile(r"\b(?:tinned|canned|dried|jarred|bottled|pickled|in (?:brine|oil|a jar|a tin))\b")
_IN_JARS = ("tin", "jar")


def section_of(food: str, unit: str = "") -> str:
    """The section for a food as a host writes it, counted in a unit (`tin`); empty if nothing in it is known."""
    name = folded(food)
    if _KEPT_COLD.search(name):
        return "freezer"
    found = _by_name().get(stems(name)) or _by_name().get(stems(same_food(name)))
    if not found and (thing := _THINGS.search(name)):
        return thing.lastgroup or ""
    found = found or _by_head(food)
    if found in ("veg", "fish", "") and (unit in _IN_JARS or _KEPT_LONG.search(name)):
        return "store cupboard"
    return found


def as_called(section: str, written: Iterable[str]) -> str:
    """The section in the words of a plan, of which these name one each."""
    others = [each for each in written if each.casefold() in SECTIONS.get(section, ())]
    return section if section in written or not others else others[0]


def _by_head(food: str) -> str:
    """Where the first food in its words stands; empty if there is none."""
    known = understood(food).known
    return _by_name().get(stems(known[0].name), "") if known else ""


@functools.cache
def _by_name() -> dict[Stems, str]:
    names = {
        stems(name): section for section, text in _OTHERWISE.items() for name in " ".join(text.split()).split(", ")
    }
    found: dict[Stems, str] = {}
    for section, entries in _STANDS:
        for entry in entries:
            found.setdefault(stems(entry.phrase), names.get(stems(entry.name), section))
    return {**found, **names}
