"""Dishes and foods whose names say something else than what is in them: a Scotch woodcock is no bird and holds no
whisky. Common practice, no source: only their label or recipe names all of it."""

from board.facts.allergens import Allergen as A
from board.facts.foods.entry import group
from board.facts.origins import Origin as From

_MILK = (A.MILK, From.LACTOSE)
_NUTS = (A.ALMONDS, A.HAZELNUTS, A.WALNUTS, A.CASHEWS, A.PECANS, A.BRAZIL_NUTS, A.PISTACHIOS, A.MACADAMIAS)
_EU = (A.CELERY, A.MUSTARD, A.SOY, A.SULPHITES)
_MEATS = (From.MEAT, From.PORK, From.BEEF, From.POULTRY)
_CRUST = (*_MILK, A.EGGS, From.ANIMAL_FAT, From.PORK, From.GELATINE, A.BARLEY, *_EU)

OF_EGGS_AND_CHEESE = (
    *group("scotch woodcock", A.EGGS, A.FISH, A.WHEAT, *_MILK, hidden=(A.MUSTARD, From.RAW_EGG), perishable=True,
           made=True),
    *group("prairie oyster", A.EGGS, perishable=True, made=True,
           hidden=(From.ALCOHOL, From.MEAT, From.BEEF, A.FISH, A.BARLEY, A.CELERY, From.RAW_EGG)),
    *group("~glamorgan sausage = ~selsig morgannwg", *_MILK, A.WHEAT, hidden=(A.EGGS, A.MUSTARD, From.RENNET),
           made=True,
           perishable=True),
    *group("egg benedict = benedict egg", A.EGGS, A.WHEAT, *_MILK, From.PORK, From.COLD_CUTS, perishable=True,
           made=True,
           hidden=(A.MUSTARD, A.SULPHITES, From.RAW_EGG)),
    *group("egg royale", A.EGGS, A.WHEAT, *_MILK, A.FISH, From.COLD_SMOKED, hidden=(From.RAW_EGG, A.MUSTARD),
           perishable=True, made=True),
    *group("croque monsieur", A.WHEAT, *_MILK, From.PORK, From.COLD_CUTS, hidden=(A.EGGS, A.MUSTARD, From.RENNET),
           perishable=True, made=True),
    *group("croque madame", A.WHEAT, *_MILK, A.EGGS, From.PORK, From.COLD_CUTS, perishable=True, made=True,
           hidden=(A.MUSTARD, From.RENNET, From.RAW_EGG)),
)  # fmt: skip
OF_MEAT = (
    *group("vitello tonnato", From.BEEF, A.FISH, A.EGGS, hidden=(A.MUSTARD, A.CELERY, From.ALCOHOL, A.SULPHITES),
           perishable=True, made=True),
    *group("toad in the hole", From.MEAT, A.WHEAT, A.EGGS, *_MILK, raw="ground meat", perishable=True, made=True,
           hidden=(From.PORK, From.BEEF, A.OATS, *_EU)),
    *group("chicken fried steak = country fried steak", From.BEEF, A.WHEAT, raw="whole cut", perishable=True, made=True,
           hidden=(A.EGGS, *_MILK)),
    *group("beef olive = veal olive", From.BEEF, raw="ground meat", perishable=True, made=True,
           hidden=(From.PORK, From.ANIMAL_FAT, A.WHEAT, A.EGGS, A.BARLEY, *_EU)),
    *group("steak tartare = beef tartare", From.BEEF, raw="ground meat", perishable=True, made=True,
           hidden=(A.EGGS, A.FISH, A.BARLEY, A.WHEAT, *_EU)),
    *group("beef carpaccio", From.BEEF, raw="whole cut", perishable=True, made=True,
           hidden=(*_MILK, From.RENNET, A.EGGS, A.MUSTARD)),
    *group("kibbeh nayyeh", From.RED_MEAT, A.WHEAT, raw="ground meat", perishable=True, made=True,
           hidden=(From.BEEF, A.PINE_NUTS)),
    *group("mock turtle = mock turtle soup", From.BEEF, perishable=True, made=True,
           hidden=(From.PORK, A.WHEAT, A.EGGS, A.BARLEY, From.ALCOHOL, *_EU)),
    *group("bath chap", From.PORK, From.COLD_CUTS, hidden=(A.WHEAT, *_MILK, A.SOY), perishable=True, made=True),
    *group("angels on horseback", A.MOLLUSCS, From.PORK, raw="fish", perishable=True, made=True,
           hidden=(A.WHEAT, A.MILK, A.SULPHITES)),
    *group("devils on horseback", From.PORK, made=True,
           hidden=(A.SULPHITES, A.ALMONDS, A.WHEAT, A.MUSTARD)),
    *group("chitterling = chitlin, scrapple", From.PORK, raw="ground meat", perishable=True, made=True,
           hidden=(A.WHEAT, A.CELERY)),
    *group("corn dog", From.MEAT, A.WHEAT, hidden=(From.PORK, From.BEEF, A.EGGS, *_MILK, *_EU), perishable=True,
           made=True),
)  # fmt: skip
SOUPS_AND_STEWS = (
    *group("scotch broth", From.RED_MEAT, A.BARLEY, hidden=(From.BEEF, A.WHEAT, *_EU), perishable=True, made=True),
    *group("cock a leekie", From.POULTRY, hidden=(From.BEEF, A.WHEAT, A.BARLEY, *_EU), perishable=True, made=True),
    *group("irish stew, lancashire hotpot, cawl", From.RED_MEAT, perishable=True, made=True,
           hidden=(From.BEEF, A.BARLEY, A.WHEAT, A.FISH, A.MOLLUSCS, *_MILK, *_EU)),
    *group("bubble and squeak", perishable=True, made=True,
           hidden=(*_MILK, *_MEATS, From.ANIMAL_FAT, A.WHEAT, A.EGGS, A.CELERY)),
    *group("laverbread = laver bread", hidden=(A.OATS, A.WHEAT, A.CRUSTACEANS, A.MOLLUSCS, From.ANIMAL_FAT), made=True),
)  # fmt: skip
PIES = (
    *group("meat pie, sausage roll", From.MEAT, A.WHEAT, hidden=(From.BEEF, From.POULTRY, *_CRUST), perishable=True,
           made=True),
    *group("steak pie, cornish pasty", From.BEEF, A.WHEAT, perishable=True,
           made=True, hidden=(From.ALCOHOL, A.FISH, *_CRUST)),
    *group("steak and ale pie", From.BEEF, From.ALCOHOL, A.BARLEY, A.WHEAT, perishable=True, made=True,
           hidden=(A.FISH, A.MOLLUSCS, *_CRUST)),
    *group("steak and kidney pie = steak and kidney pudding", From.BEEF, A.WHEAT, perishable=True, made=True,
           hidden=(From.ALCOHOL, A.FISH, A.MOLLUSCS, *_CRUST)),
    *group("pork pie = melton mowbray pie = melton mowbray", From.PORK, From.COLD_CUTS, A.WHEAT, perishable=True,
           made=True, hidden=(*_CRUST, A.FISH)),
    *group("game pie", From.GAME, A.WHEAT, hidden=(From.POULTRY, From.RED_MEAT, From.ALCOHOL, *_CRUST), perishable=True,
           made=True),
    *group("chicken pie = chicken and mushroom pie", From.POULTRY, A.WHEAT, hidden=_CRUST, perishable=True, made=True),
    *group("scotch pie", From.RED_MEAT, A.WHEAT, hidden=(From.BEEF, *_CRUST), perishable=True, made=True),
    *group("stargazy pie = starry gazey pie", A.FISH, A.WHEAT, hidden=_CRUST, perishable=True, made=True),
    *group("coulibiac = kulebiaka", A.FISH, A.WHEAT, hidden=(A.EGGS, *_MILK, A.CELERY), perishable=True, made=True),
)  # fmt: skip
# Of fruit or sugar: nobody puts fish, meat or mustard in them.
_FILLINGS = """apple, cherry, plum, pear, peach, apricot, blackberry, blueberry, raspberry, strawberry, gooseberry,
rhubarb,
    pumpkin, chocolate, fruit, raisin, quince, damson"""
_SWEET = (*_MILK, A.EGGS, *_NUTS, A.PEANUTS, A.SOY, A.SULPHITES, From.ANIMAL_FAT, From.GELATINE)
_SHAPES = ("pie", "tart", "tartlet", "turnover", "strudel", "galette")
SWEET_PIES = (
    *(entry for filling in " ".join(_FILLINGS.split()).split(", ") for shape in _SHAPES
      for entry in group(f"{filling} {shape}", A.WHEAT, hidden=_SWEET, perishable=True, made=True)),
    *group("lemon meringue pie = lemon meringue tart", A.WHEAT, A.EGGS, hidden=_SWEET, perishable=True, made=True),
    *group("pecan pie = pecan tart", A.WHEAT, A.PECANS, hidden=_SWEET, perishable=True, made=True),
    *group("walnut tart = walnut pie", A.WHEAT, A.WALNUTS, hidden=_SWEET, perishable=True, made=True),
    *group("tarte tatin = apple tarte tatin, tarte au citron", A.WHEAT, hidden=_SWEET, perishable=True, made=True),
)  # fmt: skip
BAKED = (
    *group("welsh cake = bakestone", A.WHEAT, *_MILK, made=True,
           hidden=(A.EGGS, From.ANIMAL_FAT, From.PORK, A.SULPHITES)),
    *group("~bath oliver", A.WHEAT, hidden=(*_MILK, A.BARLEY, From.ANIMAL_FAT), made=True),
    *group("monkey bread, elephant ear = palmier", A.WHEAT, hidden=(*_MILK, A.EGGS, *_NUTS), made=True),
    *group("bear claw", A.WHEAT, A.ALMONDS, *_MILK, A.EGGS, made=True),
    *group("spotted dick = spotted dog, jam roly poly = roly poly, sussex pond pudding, clootie dumpling", A.WHEAT,
           hidden=(*_MILK, A.EGGS, From.ANIMAL_FAT, From.BEEF, A.OATS, A.SULPHITES), made=True),
)  # fmt: skip
BESIDE = (
    *group("gentlemans relish = patum peperium", A.FISH, A.MILK, hidden=(A.WHEAT, From.LACTOSE), made=True),
    *group("russian dressing", A.EGGS, hidden=(A.MUSTARD, A.FISH, A.CELERY, A.SOY, *_MILK, A.WHEAT, A.BARLEY),
           perishable=True, made=True),
    *group("rose harissa", hidden=(A.CELERY, A.MUSTARD, A.SULPHITES), made=True),
    *group("~damson cheese = ~fruit cheese = ~quince cheese = ~guava cheese = ~apple cheese, ~fruit butter = "
           "~pear butter = "
           "~pumpkin butter = ~plum butter", hidden=(A.SULPHITES,), made=True),
    *group("~fruit cocktail, ~cocktail onion", hidden=(A.SULPHITES, A.MUSTARD), made=True),
    *group("~cocktail cherry", hidden=(From.ALCOHOL, From.INSECT_COLOUR, A.SULPHITES), made=True),
    *group("lomi salmon", A.FISH, From.COLD_SMOKED, perishable=True, made=True),
)  # fmt: skip

DISHES = (*OF_EGGS_AND_CHEESE, *OF_MEAT, *SOUPS_AND_STEWS, *PIES, *SWEET_PIES, *BAKED, *BESIDE)
