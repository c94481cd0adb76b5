"""The store cupboard: oils, vinegars, salt, spices, sauces, stocks without meat."""

from board.facts.allergens import Allergen as A
from board.facts.foods.entry import group
from board.facts.origins import Origin as From

OILS = group(
    """olive oil = extra virgin olive oil, sunflower oil, rapeseed oil = canola oil, corn oil, grapeseed oil,
    truffle oil = black truffle oil = white truffle oil, basil oil = herb oil = chive oil, hemp oil, palm oil,
    avocado oil, rice bran oil, pumpkin seed oil, safflower oil, linseed oil, garlic oil, lemon oil""",
)  # fmt: skip
CHILLI_OIL = group("chilli oil = chili oil", hidden=(A.SOY, A.PEANUTS, A.SESAME))
ANY_OIL = group(
    "oil, frying oil, neutral oil, vegetable oil, vegetable fat = vegetable shortening = shortening, cooking spray",
    hidden=(A.SOY, A.PEANUTS),
)
SOY_OIL = group("soybean oil = soya oil", A.SOY)  # exempt from the EU list only where fully refined
WINE_VINEGARS = group(
    """wine vinegar = white wine vinegar = red wine vinegar, sherry vinegar, balsamic vinegar = balsamic, champagne
    vinegar""",
    hidden=(A.SULPHITES,),
)  # fmt: skip
VINEGARS = group(
        """cider vinegar = apple cider vinegar, rice vinegar, distilled vinegar = spirit vinegar, coconut vinegar,
        verjuice, date vinegar""", hidden=(A.SULPHITES,))  # fmt: skip
ANY_VINEGAR = group("vinegar", hidden=(A.SULPHITES, A.BARLEY))
MALT_VINEGAR = group("malt vinegar, black vinegar", A.BARLEY, hidden=(A.WHEAT,))
SALT_AND_SPICES = group(
    """salt = sea salt = table salt = kosher salt = flaky salt = rock salt, ~black pepper = black peppercorn =
    peppercorn = white pepper = green peppercorn, ~sichuan pepper = szechuan pepper, allspice,
    aniseed = anise = star anise, caraway = caraway seed, cardamom = cardamom pod, cayenne = cayenne pepper =
    cayenne chilli,
    chilli flake = chilli powder = chili powder = red pepper flake, cinnamon = cinnamon stick, clove, coriander
    seed = ground coriander, cumin = cumin seed, dill seed, fennel seed, fenugreek = fenugreek seed, ginger
    powder = ground ginger, juniper = juniper berry, mace, nutmeg, onion powder = onion granule, garlic powder =
    garlic granule, paprika = smoked paprika, saffron, sumac, turmeric = ground turmeric, dried
    oregano, dried thyme, dried mint, dried herb, tonka bean, smoked salt, annatto = achiote, ajwain = carom seed,
    amchur = mango powder, anardana, aleppo pepper = pul biber = urfa chilli
    = aleppo chilli = urfa biber, ancho chilli = ancho, chipotle = chipotle chilli, guajillo, gochugaru, espelette
    pepper = piment d espelette, long pepper, mahleb, mastic, black cardamom, black lime = dried lime = loomi,
    liquorice root, herbes de provence, fleur de sel = salt flake = pink salt = himalayan salt, black salt, garlic
    salt, onion salt, pepper = ground pepper, all spice, ground spice, cloves ground, lemon pepper, chilli salt,
    black onion seed, cassia bark = cassia, kashmiri chilli powder = kashmiri chilli, hot paprika = sweet paprika =
    pimenton, turmeric root, vanilla salt, szechwan pepper""",
)  # fmt: skip
# The berry of Schinus, no pepper at all; a mix of peppercorns often holds some.
PINK_PEPPER = group(
    """~pink peppercorn = ~pink pepper = ~pink pepper berry, ~mixed peppercorn = ~peppercorn mix =
    ~rainbow peppercorn""",
    kin=(A.CASHEWS, A.PISTACHIOS),
)  # fmt: skip
ASAFOETIDA = group("asafoetida = hing", hidden=(A.WHEAT,))  # most is ground with flour
SPICE_MIXES = group(
    """curry powder, garam masala, ras el hanout, five spice = chinese five spice, mixed spice, pumpkin spice,
    baharat, berbere, spice mix, spice, chaat masala, tandoori masala, sambar powder, madras curry powder,
    mulling spice, tagine spice, shawarma spice, biryani masala, fajita seasoning, seasoned salt, curry spice,
    pickling spice, italian seasoning, quatre epices, herb salt""",
    hidden=(A.MUSTARD, A.CELERY, A.SESAME, A.WHEAT), made=True,
)  # fmt: skip
SEASONINGS = (
    *group("cajun seasoning, jerk seasoning, barbecue rub, taco seasoning, seasoning", made=True,
           hidden=(A.MUSTARD, A.CELERY, A.SESAME, A.WHEAT, A.SOY, A.MILK, From.LACTOSE)),
    *group("furikake", A.SESAME, made=True, hidden=(A.FISH, A.SOY, A.WHEAT, A.EGGS, A.CRUSTACEANS)),
)  # fmt: skip
SOY_SAUCES = group(
        """soy sauce = dark soy sauce = light soy sauce = shoyu = soya sauce, ponzu,
        ketjap manis = kecap manis = sweet soy sauce = kecap, black bean sauce, fermented black
        bean = douchi, ssamjang, doenjang, yakiniku sauce, liquid amino, yellow bean sauce, gochujang,
        doubanjiang = chilli bean paste""",
    A.SOY, hidden=(A.WHEAT, A.SESAME, From.ALCOHOL, A.BARLEY), made=True,
) + group(
    "teriyaki sauce, hoisin sauce = hoisin, yakitori = yakitori sauce", A.SOY, A.WHEAT,
    hidden=(A.SESAME, From.ALCOHOL, A.BARLEY), made=True,
) + group(
    "gomadare = goma dare", A.SESAME, A.SOY, hidden=(A.WHEAT, A.FISH, From.ALCOHOL), made=True,
)  # fmt: skip
TAMARI = group("tamari = ~gluten free soy sauce", A.SOY, hidden=(A.WHEAT, From.ALCOHOL), made=True)
MISO = group(
    "miso = miso soup paste = white miso = red miso = miso paste = brown miso",
    A.SOY,
    hidden=(A.BARLEY, A.WHEAT, From.ALCOHOL),
    made=True,
)
BARLEY_MISO = group("barley miso = mugi miso", A.SOY, A.BARLEY, hidden=(A.WHEAT, From.ALCOHOL), made=True)
FISHY_SAUCES = group("brown table sauce", hidden=(A.FISH, A.BARLEY, A.WHEAT, A.SOY, A.CELERY, A.MUSTARD), made=True)
SAUCES = (
    *group("~coconut amino, aquafaba"),
    *group(
        """zhug = zhoug = schug = skhug, chermoula, chimichurri, salsa verde = green sauce, gremolata, persillade,
        pistou, sofrito""",
        made=True,
           hidden=(A.FISH, A.SULPHITES, A.MUSTARD)),
    *group("mirepoix = soffritto = soup vegetable = holy trinity, vegetable juice", A.CELERY),
    *group("giardiniera", A.CELERY, hidden=(A.MUSTARD, A.SULPHITES), made=True),
    *group("tonkatsu sauce = okonomiyaki sauce = katsu sauce = katsu curry sauce = plum sauce, ~duck sauce", made=True,
           hidden=(A.FISH, A.WHEAT, A.BARLEY, A.SOY, A.CELERY, A.MUSTARD, A.CRUSTACEANS, A.MOLLUSCS)),
    *group("lecithin", hidden=(A.SOY, A.EGGS)),
    *group("brown sauce, steak sauce", made=True,
           hidden=(A.FISH, A.BARLEY, A.WHEAT, A.RYE, A.SOY, A.CELERY, A.MUSTARD)),
    *group(
        """ketchup = tomato ketchup, barbecue sauce = bbq sauce, sweet chilli sauce, hot sauce = chilli sauce =
        pepper sauce, harissa, sriracha, tomato sauce, salsa, mint sauce, chutney = mango chutney, relish,
        pickle relish, chipotle paste, peri peri sauce""",
           hidden=(A.CELERY, A.MUSTARD, A.SULPHITES, A.WHEAT, A.BARLEY, A.SOY, A.FISH, From.HONEY), made=True),
    *group(
        """mayonnaise = mayo = mayonaise, garlic mayonnaise = aioli = allioli, garlic rouille = rouille, gribiche =
        sauce gribiche, tartare sauce = tartar sauce, remoulade, salad cream""",
        A.EGGS,
           hidden=(A.MUSTARD, A.FISH, A.MILK, A.SOY, A.CELERY), perishable=True, made=True),
    *group(
        "caesar dressing", A.EGGS, perishable=True, made=True,
        hidden=(A.MUSTARD, A.FISH, A.MILK, A.SOY, A.CELERY, From.RAW_EGG)),
    *group(
        "hollandaise = hollandaise sauce, bearnaise = bearnaise sauce = mousseline sauce = maltaise sauce",
        A.EGGS, A.MILK, From.LACTOSE, hidden=(A.MUSTARD, A.SULPHITES, From.RAW_EGG), perishable=True, made=True),
    *group(
        """pesto = basil pesto = green pesto = pesto sauce = pesto genovese, red pesto = pesto rosso""",
        A.MILK, perishable=True, made=True,
           hidden=(A.PINE_NUTS, A.CASHEWS, A.WALNUTS, A.ALMONDS, A.PISTACHIOS, A.HAZELNUTS, A.PEANUTS, From.RENNET,
                   From.LACTOSE, A.EGGS)),
    *group(
        """white sauce = bechamel = bechamel sauce = parsley sauce = veloute = roux, cheese sauce = cheddar
        sauce = fondue sauce, bread sauce""",
        A.MILK, A.WHEAT, From.LACTOSE, hidden=(A.MUSTARD, A.CELERY), perishable=True, made=True),
    *group("vinaigrette = french dressing, salad dressing = dressing = italian dressing = salad sauce", made=True,
           hidden=(A.MUSTARD, A.SULPHITES, A.EGGS, A.MILK, A.CELERY, A.FISH, A.SOY, A.SESAME, A.WHEAT, From.HONEY)),
    *group(
        """curry paste = thai curry paste = red curry paste = green curry paste = yellow curry paste = tom yum paste
        = tom yum = panang paste""",
        made=True,
           hidden=(A.CRUSTACEANS, A.FISH, A.MUSTARD, A.CELERY, A.PEANUTS, A.SOY, A.WHEAT, A.SULPHITES)),
    *group("sambal", hidden=(A.CRUSTACEANS, A.FISH, A.SULPHITES), made=True),
    *group("tapenade, caponata", made=True, hidden=(A.FISH, A.CELERY, A.PINE_NUTS)),
    *group("sage and onion stuffing = stuffing mix = bread stuffing", A.WHEAT, made=True,
           hidden=(A.EGGS, A.MILK, A.CELERY, From.ANIMAL_FAT, From.PORK)),
    *group("stuffing", made=True,
           hidden=(A.WHEAT, A.EGGS, A.MILK, A.CELERY, From.PORK, From.ANIMAL_FAT)),
    *group("creamed horseradish", A.MILK, From.LACTOSE, hidden=(A.EGGS, A.MUSTARD, A.SULPHITES), made=True),
    *group("horseradish sauce", made=True,
           hidden=(A.MILK, From.LACTOSE, A.EGGS, A.MUSTARD, A.SULPHITES)),
    *group("wasabi = wasabi paste", made=True, hidden=(A.MUSTARD, A.SOY, A.WHEAT)),
    *group("caper, caperberry, preserved lemon, artichoke heart, pickled ginger, pickled chilli",
           hidden=(A.SULPHITES,)),
    *group("yeast extract, nutritional yeast", hidden=(A.BARLEY, A.WHEAT, A.CELERY), made=True),
    *group("liquid smoke, ~monosodium glutamate = msg"),
)  # fmt: skip
_STOCK_HIDES = (A.CELERY, A.WHEAT, A.BARLEY, A.SOY, A.MILK, From.LACTOSE)
STOCKS = (
    *group(
        """vegetable stock = vegetable broth = vegetable bouillon = veg stock = veggie stock = court bouillon,
        mushroom stock""",
        perishable=True, made=True,
           hidden=(A.CELERY, A.WHEAT, A.BARLEY, A.SOY)),
    *group(
        """stock cube = bouillon cube = bouillon = stock powder = stock pot = stock concentrate = stock jelly =
        soup cube = stock granule = bouillon powder = bouillon granule""",
           hidden=(*_STOCK_HIDES, A.SULPHITES, From.MEAT, From.POULTRY, From.BEEF, From.ANIMAL_FAT), made=True),
    *group(
        """vegetable stock cube = vegetable
        bouillon powder = vegetable bouillon cube = vegetable stock powder = vegetable stock pot = veg stock cube""",
           hidden=(*_STOCK_HIDES, A.SULPHITES), made=True),
    *group(
        """chicken stock cube = chicken bouillon = chicken bouillon cube = chicken stock pot = chicken stock powder""",
        From.POULTRY, hidden=_STOCK_HIDES, made=True),
    *group(
        """beef stock cube = beef bouillon = beef bouillon cube = beef stock pot = beef extract = meat extract""",
        From.BEEF, hidden=_STOCK_HIDES, made=True),
    *group("stock = broth", perishable=True, made=True,
           hidden=(From.MEAT, From.BEEF, From.PORK, From.POULTRY, A.FISH, A.CRUSTACEANS, A.MOLLUSCS, A.SULPHITES,
                   *_STOCK_HIDES)),
)  # fmt: skip
COLOURS = (
    *group("cochineal = carmine", From.INSECT_COLOUR),
    *group("rennet = animal rennet", From.RENNET),
    *group("~vegetarian rennet = ~vegetable rennet"),
    *group("isinglass", A.FISH),
    *group("ice = ice cube, water = sparkling water = mineral water = soda water = tap water = boiling water"),
)

STORES = (
    *OILS, *CHILLI_OIL, *ANY_OIL, *SOY_OIL, *WINE_VINEGARS, *VINEGARS, *ANY_VINEGAR, *MALT_VINEGAR,
    *SALT_AND_SPICES, *PINK_PEPPER, *ASAFOETIDA,
    *SPICE_MIXES, *SEASONINGS, *SOY_SAUCES, *TAMARI, *MISO, *BARLEY_MISO, *FISHY_SAUCES, *SAUCES, *STOCKS, *COLOURS,
)  # fmt: skip
