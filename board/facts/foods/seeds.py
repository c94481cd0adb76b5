"""Pulses, nuts and seeds, and what is made of them."""

from board.facts.allergens import Allergen as A
from board.facts.foods.entry import group
from board.facts.origins import Origin as From

_NUTS = {
    "almond": A.ALMONDS, "hazelnut": A.HAZELNUTS, "filbert": A.HAZELNUTS, "cobnut": A.HAZELNUTS, "walnut":
    A.WALNUTS, "cashew": A.CASHEWS, "cashew nut": A.CASHEWS, "pecan": A.PECANS, "pecan nut": A.PECANS,
    "brazil nut": A.BRAZIL_NUTS, "pistachio": A.PISTACHIOS, "pistachio nut": A.PISTACHIOS, "macadamia": A.MACADAMIAS,
    "macadamia nut": A.MACADAMIAS, "pine kernel": A.PINE_NUTS, "pignoli": A.PINE_NUTS, "pinoli": A.PINE_NUTS,
    "pine nut": A.PINE_NUTS, "pinon nut": A.PINE_NUTS, "chestnut": A.CHESTNUTS,
}  # fmt: skip
_SHAPES = ("", " butter", " oil", " paste", " meal", " flour", " crumb")
_ALL_NUTS = (A.ALMONDS, A.HAZELNUTS, A.WALNUTS, A.CASHEWS, A.PECANS, A.BRAZIL_NUTS, A.PISTACHIOS, A.MACADAMIAS)

NUTS = tuple(entry for nut, a in _NUTS.items() for shape in _SHAPES for entry in group(nut + shape, a))
NUT_MIXES = (
    *group("nut = mixed nut, tree nut", *_ALL_NUTS, hidden=(A.PINE_NUTS, A.PEANUTS, A.CHESTNUTS)),
    *group("chestnut puree, vacuum packed chestnut, marron glace", A.CHESTNUTS),
    *group(
        """flaked almond = almond flake = slivered almond, ground almond, marcona almond, bitter almond, nibbed
        almond, almondy""",
        A.ALMONDS,
    ),
    *group("nut butter = mixed nut butter, ~nut milk = ~nut drink", *_ALL_NUTS, hidden=(A.PEANUTS,), made=True),
    *group("~seed butter = ~sunflower seed butter", hidden=(A.SESAME,)),
    *group("~pistachio milk", A.PISTACHIOS),
    *group("~walnut milk", A.WALNUTS),
    *group("~macadamia milk", A.MACADAMIAS),
    *group("~kola nut, ~betel nut, ~gingko nut = ~ginkgo nut, ~corn nut, ~shea butter = ~shea nut, ~candlenut"),
    *group("~soy nut = ~soya nut", A.SOY),
    *group("muhammara", A.WALNUTS, hidden=(A.WHEAT, A.CASHEWS), made=True),
    *group("nut oil", *_ALL_NUTS, hidden=(A.PEANUTS,)),
    *group("nut flour = nut meal", *_ALL_NUTS),
    *group(
        "walnut bread, walnut cake, coffee and walnut cake",
        A.WALNUTS,
        A.WHEAT,
        hidden=(A.EGGS, A.MILK, From.LACTOSE),
        made=True,
    ),
    *group("walnut whip", A.WALNUTS, hidden=(A.WHEAT, A.EGGS, A.MILK, From.LACTOSE, A.SOY), made=True),
    *group("dukkah = dukka = duqqa = duqqah = dukah", A.HAZELNUTS, A.SESAME, made=True, hidden=(*_ALL_NUTS, A.PEANUTS)),
    *group("nut roast", *_ALL_NUTS, made=True, hidden=(A.WHEAT, A.EGGS, A.CELERY, A.SOY, A.MILK)),
)
PEANUTS = group(
    "peanut = groundnut = monkey nut = ground nut = goober, peanut butter = creamy peanut butter = crunchy peanut "
    "butter, beer nut, arachis oil, peanut flour, peanut powder, peanut oil = groundnut oil",
    A.PEANUTS,
)
PEANUT_SWEETS = group("chikki = peanut brittle", A.PEANUTS, made=True, hidden=(A.WHEAT, A.MILK, A.SESAME)) + group(
    "peanut cookie", A.PEANUTS, A.WHEAT, made=True, hidden=(A.MILK, A.EGGS, A.SOY)
)
SIMIT = group(
    "simit = sesame bagel = sesame roll = sesame bread", A.SESAME, A.WHEAT, made=True, hidden=(A.MILK, A.EGGS)
)
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
    """sesame = sesame seed = black sesame seed = benne seed = benne, tahini = sesame paste = tahina = tehina =
    tahin = tahini paste = tahini sauce, til = til seed, gingelly oil = til oil, shichimi togarashi = shichimi =
    togarashi, gomashio, sesame snap, sesame oil = toasted sesame oil, gomasio""",
    A.SESAME,
)
HALVA = group(
    """halva = halvah = halwa = helva = halawa""",
    A.SESAME, made=True, hidden=(*_ALL_NUTS, A.PEANUTS, A.WHEAT, A.MILK, From.LACTOSE, A.EGGS)
)  # fmt: skip
SESAME_MIXES = (
    *group("hummus = houmous = hummous = humous = humus", A.SESAME, perishable=True, made=True),
    *group(
        """zaatar = za atar = zahtar, everything seasoning, baba ganoush = baba ghanoush = baba ganouj =
        moutabal = mutabal""",
        A.SESAME,
        made=True,
        hidden=(A.WHEAT, A.MUSTARD),
    ),
)
MUSTARD = group(
    """mustard = dijon mustard = dijon = wholegrain mustard = whole grain mustard = yellow mustard = grainy
    mustard, mustard seed = yellow mustard seed = black mustard seed, mustard oil, mustard leaf = mustard green,
    mustard cress""",
    A.MUSTARD, hidden=(A.SULPHITES,),
)  # fmt: skip
# Often stretched with wheat flour.
MUSTARD_POWDER = group(
    "mustard powder = dry mustard = english mustard = english mustard powder", A.MUSTARD, hidden=(A.WHEAT, A.SULPHITES)
)
MUSTARD_PICKLES = group(
    """piccalilli, mostarda, kasundi, mustard sauce, mustard dressing, panch phoron = panch
    phoran""",
    A.MUSTARD,
    hidden=(A.SULPHITES, A.WHEAT, A.EGGS, A.CELERY, A.MILK), made=True,
)  # fmt: skip
MUSTARD_MAYONNAISE = group(
    "mustard mayonnaise = mustard mayo", A.MUSTARD, A.EGGS, hidden=(A.SULPHITES, A.WHEAT, A.CELERY, A.MILK), made=True,
    perishable=True,
)  # fmt: skip
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
    bean = lima bean, cannellini bean = white bean = cannellini = great northern bean, haricot bean = navy bean,
    ~kidney bean = red kidney bean, borlotti bean = cranberry bean, black bean = turtle bean, pinto bean =
    pinto, flageolet bean, mung bean, urad dal, dal = dhal = lentil dal = daal, ~pigeon pea = ~toor dal = ~gungo
    pea = ~gungo, cow pea = cowpea, chana dal = chana, marrowfat pea, ~horse gram, aduki bean = adzuki bean,
    butterbean, ~butter bean mash, dried bean, gigantes bean, pulse""",
)  # fmt: skip
SOY = group(
    """soybean = soya bean = soy bean, edamame, soy mince = textured vegetable protein = tvp = soya mince, soy lecithin,
    soy protein, soya chunk, kinako, okara, soy curl, tofu puff = aburaage = inari, soy crumb, soy, soya""",
    A.SOY,
)  # fmt: skip
SOY_FRESH = group(
    """tofu = bean curd = beancurd = bean curd sheet, fermented tofu = fermented bean curd, silken tofu, smoked
    tofu, yuba = tofu skin, natto""",
    A.SOY,
    perishable=True,
)
# Grown on soybeans alone, or with barley, wheat or oats among them.
TEMPEH = group("tempeh", A.SOY, hidden=(A.WHEAT, A.BARLEY, A.OATS), perishable=True)
BACON_OF_PLANTS = (
    *group("~tofu bacon = ~soy bacon = ~soya bacon = ~tofu ham = ~soy chorizo = ~soya chorizo = ~soy jerky, ~soy ham",
           A.SOY,
           hidden=(A.WHEAT, A.EGGS, A.MILK, A.CELERY, A.MUSTARD, A.BARLEY), perishable=True, made=True),
    *group("~tempeh bacon", A.SOY, hidden=(A.WHEAT, A.BARLEY, A.OATS), perishable=True, made=True),
    *group("~coconut bacon", A.COCONUT, hidden=(A.SOY, A.WHEAT, A.SULPHITES), made=True),
    *group("~mushroom bacon = ~carrot bacon = ~aubergine bacon = ~eggplant bacon = ~rice paper bacon = ~banana "
           "peel bacon"
           " = ~mushroom jerky", hidden=(A.SOY, A.WHEAT, A.BARLEY), made=True),
)  # fmt: skip
FALAFEL = group("falafel = felafel", hidden=(A.WHEAT, A.SESAME), made=True)

SEEDS_AND_PULSES = (
    *NUTS, *NUT_MIXES, *PEANUTS, *PEANUT_SWEETS, *SIMIT, *SATAY, *COCONUT, *COCONUT_CREAM, *SESAME, *HALVA,
    *SESAME_MIXES, *MUSTARD,
    *MUSTARD_POWDER, *HONEY_MUSTARD, *MUSTARD_MAYONNAISE, *MUSTARD_PICKLES,
    *LUPIN, *SEEDS, *MIXED_SEEDS, *PULSES, *SOY, *SOY_FRESH, *TEMPEH, *BACON_OF_PLANTS, *FALAFEL,
)  # fmt: skip
