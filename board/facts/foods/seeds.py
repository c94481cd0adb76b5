"""Pulses, nuts and seeds, and what is made of them."""

from board.facts.allergens import Allergen as A
from board.facts.foods.entry import group
from board.facts.origins import Origin as From

_NUTS = {
    "almond": A.ALMONDS, "hazelnut": A.HAZELNUTS, "filbert": A.HAZELNUTS, "cobnut": A.HAZELNUTS, "walnut": A.WALNUTS,
    "cashew": A.CASHEWS, "cashew nut": A.CASHEWS, "pecan": A.PECANS, "pecan nut": A.PECANS, "brazil nut": A.BRAZIL_NUTS,
    "pistachio": A.PISTACHIOS, "pistachio nut": A.PISTACHIOS, "macadamia": A.MACADAMIAS,
    "macadamia nut": A.MACADAMIAS, "pine nut": A.PINE_NUTS, "pinon nut": A.PINE_NUTS, "chestnut": A.CHESTNUTS,
}  # fmt: skip
_SHAPES = ("", " butter", " oil", " paste", " meal")
_ALL_NUTS = (A.ALMONDS, A.HAZELNUTS, A.WALNUTS, A.CASHEWS, A.PECANS, A.BRAZIL_NUTS, A.PISTACHIOS, A.MACADAMIAS)

NUTS = tuple(entry for nut, a in _NUTS.items() for shape in _SHAPES for entry in group(nut + shape, a))
NUT_MIXES = (
    *group("nut = mixed nut, tree nut", *_ALL_NUTS, hidden=(A.PINE_NUTS, A.PEANUTS, A.CHESTNUTS)),
    *group("chestnut puree, vacuum packed chestnut, marron glace", A.CHESTNUTS),
    *group("flaked almond = almond flake = slivered almond, ground almond, marcona almond", A.ALMONDS),
    *group("nut butter = mixed nut butter, ~nut milk = ~nut drink", *_ALL_NUTS, hidden=(A.PEANUTS,), made=True),
    *group("~seed butter = ~sunflower seed butter", hidden=(A.SESAME,)),
    *group("dukkah", A.HAZELNUTS, A.SESAME, made=True, hidden=(*_ALL_NUTS, A.PEANUTS)),
    *group("nut roast", *_ALL_NUTS, made=True, hidden=(A.WHEAT, A.EGGS, A.CELERY, A.SOY, A.MILK)),
)
PEANUTS = group("peanut = groundnut = monkey nut, peanut butter, peanut oil = groundnut oil", A.PEANUTS)
SATAY = group("satay sauce = peanut sauce = satay", A.PEANUTS, made=True,
              hidden=(A.SOY, A.FISH, A.CRUSTACEANS, A.WHEAT, A.SESAME))  # fmt: skip
COCONUT = group(
    """coconut, ~coconut milk, coconut oil, creamed coconut, coconut sugar, coconut water, toasted coconut,
    ~coconut butter""",
    A.COCONUT,
)  # fmt: skip
COCONUT_CREAM = group(
    "tinned coconut milk = canned coconut milk, desiccated coconut = shredded coconut = dried coconut, coconut flake",
    A.COCONUT,
    hidden=(A.SULPHITES,),
)
SESAME = group(
    "sesame = sesame seed = black sesame seed, tahini = sesame paste, sesame oil = toasted sesame oil, gomasio",
    A.SESAME,
)
HALVA = group(
    "halva", A.SESAME, made=True, hidden=(*_ALL_NUTS, A.PEANUTS, A.WHEAT, A.MILK, From.LACTOSE, A.EGGS)
)  # fmt: skip
SESAME_MIXES = (
    *group("hummus = houmous", A.SESAME, perishable=True, made=True),
    *group("zaatar, everything seasoning, baba ganoush", A.SESAME, made=True, hidden=(A.WHEAT, A.MUSTARD)),
)
MUSTARD = group(
    """mustard = dijon mustard = wholegrain mustard = whole grain mustard = yellow mustard = grainy mustard, mustard
    seed = yellow mustard seed = black mustard seed, mustard oil, mustard leaf = mustard green, mustard cress""",
    A.MUSTARD, hidden=(A.SULPHITES,),
)  # fmt: skip
# Often stretched with wheat flour.
MUSTARD_POWDER = group(
    "mustard powder = dry mustard = english mustard = english mustard powder", A.MUSTARD, hidden=(A.WHEAT, A.SULPHITES)
)
HONEY_MUSTARD = group("honey mustard", A.MUSTARD, From.HONEY, made=True)
LUPIN = group("lupin = lupini = lupin bean = lupini bean = lupin seed", A.LUPIN)
SEEDS = group(
    """sunflower seed, pumpkin seed = pepita, poppy seed, chia seed = chia, linseed = flax = flaxseed, hemp seed,
    nigella seed = nigella, psyllium = psyllium husk, ~tiger nut, melon seed""",
)  # fmt: skip
MIXED_SEEDS = group("seed = mixed seed", hidden=(A.SESAME, A.MUSTARD), made=True)
PULSES = group(
    """lentil, green lentil, red lentil, brown lentil, puy lentil = black lentil = beluga lentil, chickpea =
    garbanzo bean = garbanzo, split pea, dried pea, black eyed pea = black eyed bean, bean = mixed bean, ~butter
    bean = lima bean, cannellini bean = white bean, haricot bean = navy bean, ~kidney bean = red kidney bean,
    borlotti bean = cranberry bean, black bean = turtle bean, pinto bean, flageolet bean, mung bean, urad dal,
    dal = dhal = lentil dal, dried bean, gigantes bean, pulse""",
)  # fmt: skip
SOY = group(
    """soybean = soya bean = soy bean, edamame, soy mince = textured vegetable protein = soya mince, soy lecithin,
    soy protein""",
    A.SOY,
)  # fmt: skip
SOY_FRESH = group(
    "tofu = bean curd = beancurd, silken tofu, smoked tofu, tempeh, yuba = tofu skin, natto", A.SOY, perishable=True
)
FALAFEL = group("falafel", hidden=(A.WHEAT, A.SESAME), made=True)

SEEDS_AND_PULSES = (
    *NUTS, *NUT_MIXES, *PEANUTS, *SATAY, *COCONUT, *COCONUT_CREAM, *SESAME, *HALVA, *SESAME_MIXES, *MUSTARD,
    *MUSTARD_POWDER, *HONEY_MUSTARD,
    *LUPIN, *SEEDS, *MIXED_SEEDS, *PULSES, *SOY, *SOY_FRESH, *FALAFEL,
)  # fmt: skip
