"""Meat, poultry, and what is made of them."""

from board.facts.allergens import Allergen as A
from board.facts.foods.entry import Entry, group
from board.facts.origins import Origin as From

_RED, _GAME = (From.RED_MEAT,), (From.RED_MEAT, From.GAME)
# What counts as game: FDA Food Code 1-201.10, game animal, and its poultry's game birds; in the UK farmed guinea fowl
# and rabbit too are sold as game. From memory.
_BEASTS = {
    "beef": (From.BEEF,), "veal": (From.BEEF,), "ox": (From.BEEF,), "bison": _GAME, "lamb": _RED, "mutton": _RED,
    "hogget": _RED, "pork": (From.PORK,), "wild boar": (From.PORK, From.GAME), "boar": (From.PORK, From.GAME),
    "venison": _GAME, "goat": _RED, "kid": _RED, "elk": _GAME, "reindeer": _GAME, "deer": _GAME, "horse": _RED,
    "kangaroo": _GAME, "ostrich": (From.MEAT,), "rabbit": _GAME, "hare": _GAME,
}  # fmt: skip
_BIRDS = """chicken, poussin, turkey, duck, goose, poultry, capon, hen, duckling, gosling, cockerel,
    giblet = gizzard, chicken heart, chicken oyster, chicken carcass, chicken bone, chicken skin, spatchcock"""
_GAME_BIRDS = """quail, pheasant, partridge, pigeon = wood pigeon = squab, grouse, wild duck = mallard = teal = wigeon,
    woodcock, snipe, ~wild goose, game bird"""


# What bought burgers and meatballs are bound and kept with.
_BOUND = (A.WHEAT, A.EGGS, A.MILK, From.LACTOSE, A.SOY, A.SULPHITES, A.CELERY, A.MUSTARD)


def _minced(beast: str, *origins: From) -> tuple[Entry, ...]:
    names = f"{beast} mince = minced {beast} = ground {beast}"
    shaped = f"{beast} burger = {beast} patty, {beast} meatball = {beast} meat ball"
    return (
        *group(names, *origins, raw="ground meat", perishable=True),
        *group(shaped, *origins, raw="ground meat", perishable=True, hidden=_BOUND, made=True),
    )


ANY_MEAT = (
    *group("meat, stewing meat, diced meat, roast meat", From.MEAT, hidden=(From.PORK, From.BEEF, From.GAME),
           raw="whole cut", perishable=True),
    *group("game, wild game, game meat", From.GAME, hidden=(From.RED_MEAT, From.PORK), raw="whole cut",
           perishable=True),
    *group("elk, moose, reindeer, deer, kangaroo", *_GAME, raw="whole cut", perishable=True),
)  # fmt: skip
CUTS = tuple(e for beast, o in _BEASTS.items() for e in group(beast, *o, raw="whole cut", perishable=True))
NAMED_CUTS = (
    *group(
        """steak, sirloin, rump steak, rib eye = ribeye, fillet steak, flank steak, skirt steak, hanger steak, t
        bone steak, bavette, onglet, porterhouse, entrecote, cote de boeuf, chateaubriand, feather blade, tri
        tip, flank, skirt, ~oyster blade = ~oyster blade steak, brisket, chuck, short rib, silverside, topside,
        oxtail, ox cheek, scotch fillet = scotch steak, rose veal""",
        From.BEEF, raw="whole cut", perishable=True,
    ),
    *group(
        """pork belly, pork shoulder, spare rib, ham hock, gammon, unsmoked gammon, hock, pigs trotter, pigs cheek,
        suckling pig = piglet, pork crackling = crackling = pork scratching = pork rind = chicharron, baby back rib,
        pork chop, belly pork,
    pigs ear, spareribs = sparerib, boston butt = pork butt, pigs foot""",
        From.PORK, raw="whole cut", perishable=True,
    ),
    *group("leg of lamb, lamb shank, rack of lamb", From.RED_MEAT, raw="whole cut", perishable=True),
)  # fmt: skip
MINCED = tuple(entry for beast, origins in _BEASTS.items() for entry in _minced(beast, *origins))
MINCE = group(
    "mince = minced meat = ground meat", From.MEAT, hidden=(From.PORK, From.BEEF), raw="ground meat", perishable=True
)
SHAPED = group(
    "burger = burger patty = patty = hamburger = slider, kofta = kofte = kofta mix, "
    "meatball = meat ball, meatloaf = meat loaf",
    From.MEAT, raw="ground meat",
    hidden=(From.PORK, From.BEEF, *_BOUND), perishable=True, made=True,
)  # fmt: skip
BIRDS = (
    *group("roast chicken = rotisserie chicken, duck confit = confit duck", From.POULTRY, perishable=True),
    *group(_BIRDS, From.POULTRY, raw="poultry", perishable=True),
    *group(_GAME_BIRDS, From.POULTRY, From.GAME, raw="poultry", perishable=True),
    *group("guinea fowl", From.POULTRY, raw="poultry", perishable=True, hidden=(From.GAME,)),
)
MINCED_BIRDS = group(
    """minced chicken = ground chicken = chicken mince, minced turkey = ground turkey = turkey mince, chicken wing,
    chicken thigh, chicken drumstick, chicken breast, duck leg, duck breast, turkey crown""",
    From.POULTRY, raw="poultry", perishable=True,
)  # fmt: skip
LIVER = (
    *group("liver", From.LIVER, raw="whole cut", perishable=True, hidden=(From.RED_MEAT,)),
    *group("calfs liver, ox liver = beef liver = veal liver", From.LIVER, From.BEEF, raw="whole cut", perishable=True),
    *group("lambs liver", From.LIVER, From.RED_MEAT, raw="whole cut", perishable=True),
    *group("pigs liver", From.PORK, From.LIVER, raw="whole cut", perishable=True),
    *group("chicken liver, duck liver, foie gras", From.POULTRY, From.LIVER, raw="poultry", perishable=True),
)
OFFAL = group(
    """offal, brain, frogs leg, alligator, ~sweetbread = ~calf sweetbread = ~lamb sweetbread,
    ~rocky mountain oyster = ~mountain oyster = ~lamb fry = ~calf fry, kidney, tripe, tongue,
    bone, marrowbone = marrow bone""",
    From.MEAT, hidden=(From.BEEF, From.PORK),
    raw="whole cut", perishable=True,
)  # fmt: skip
LAMB_OFFAL = group("lambs kidney, lambs heart", From.RED_MEAT, raw="whole cut", perishable=True)
BEEF_OFFAL = group(
    """ox tongue, ox kidney, ox heart = beef heart, bone marrow, beef bone, veal bone, beef marrowbone""",
    From.BEEF, raw="whole cut", perishable=True
)  # fmt: skip
BACON = group(
    """bacon, streaky bacon, back bacon, smoked bacon, bacon rasher = streaky rasher = back rasher, bacon bit,
    canadian bacon, lardon
    = bacon lardon, pancetta, guanciale""",
    From.PORK, raw="whole cut",
    perishable=True,
)  # fmt: skip
NOT_PORK_BACON = (
    *group("turkey bacon = turkey rasher, chicken bacon, duck bacon", From.POULTRY, raw="poultry", perishable=True,
           made=True, hidden=(A.SOY, A.MILK, A.CELERY)),
    *group("turkey ham = chicken ham", From.POULTRY, From.COLD_CUTS, perishable=True, made=True,
           hidden=(A.SOY, A.MILK, From.LACTOSE, A.CELERY)),
    *group("beef bacon", From.BEEF, raw="whole cut", perishable=True, made=True, hidden=(A.SOY, A.MILK)),
)  # fmt: skip
_HAM_HIDES = (A.MILK, From.LACTOSE, A.SOY, A.CELERY)
COOKED_HAM = (
    *group("ham, cooked ham, boiled ham", From.PORK, From.COLD_CUTS,
           perishable=True, hidden=_HAM_HIDES, made=True),
    *group("ham hock terrine, ~head cheese = ~headcheese = brawn = coppa di testa", From.PORK, From.COLD_CUTS,
           perishable=True, hidden=(*_HAM_HIDES, From.PATE, From.GELATINE), made=True),
    *group("pulled pork", From.PORK, perishable=True, hidden=_HAM_HIDES, made=True),
    *group("~cold cut = ~deli meat = ~luncheon meat = ~sandwich meat", From.MEAT, From.COLD_CUTS, perishable=True,
           made=True, hidden=(*_HAM_HIDES, From.PORK, From.BEEF, From.POULTRY)),
)  # fmt: skip
CURED = group(
    """cured ham, air dried ham, dry cured ham, parma ham = prosciutto, serrano ham, salami, chorizo, saucisson,
    pepperoni, nduja, coppa, lonza, speck, mortadella, soppressata, jamon = jamon iberico = jamon serrano =
    iberico ham, black forest ham, bayonne ham, finocchiona, kabanos = cabanossi, landjager, culatello, capicola
    = capocollo, sobrasada, longaniza, linguica, lap cheong = chinese sausage, bologna = cervelat, teewurst =
    mettwurst, cooking chorizo, salami stick""",
    From.PORK, From.CURED_MEAT, perishable=True, hidden=(A.MILK, From.LACTOSE, A.PISTACHIOS), made=True,
)  # fmt: skip
CURED_BEEF = group(
    """beef jerky = jerky, bresaola, pastrami, salt beef = corned beef, biltong""",
    From.BEEF, From.CURED_MEAT,
                   perishable=True, made=True)  # fmt: skip
SAUSAGE = group(
    """sausage, sausagemeat = sausage meat, breakfast sausage, cocktail sausage = chipolata,
    donner meat = doner meat, shawarma""",
    From.MEAT, raw="ground meat", perishable=True, made=True,
    hidden=(From.PORK, From.BEEF, A.WHEAT, A.OATS, A.SULPHITES, A.MILK, From.LACTOSE, A.SOY, A.MUSTARD, A.CELERY),
)  # fmt: skip
WITH_LIVER = (  # named by the NHS among the foods with liver, from memory
    *group("haggis", From.MEAT, From.LIVER, A.OATS, raw="ground meat", perishable=True, made=True,
           hidden=(From.RED_MEAT, From.PORK, From.BEEF, From.ANIMAL_FAT, A.WHEAT, A.BARLEY, A.MILK, A.SULPHITES)),
    *group("faggot = faggots and pea", From.PORK, From.LIVER, raw="ground meat", perishable=True, made=True,
           hidden=(From.BEEF, From.ANIMAL_FAT, A.WHEAT, A.BARLEY, A.EGGS, A.MILK, A.SOY, A.CELERY, A.MUSTARD,
                   A.SULPHITES)),
)  # fmt: skip
PORK_SAUSAGE = group(
    """pork sausage, bratwurst, black pudding = blood sausage, ~white pudding, hot dog sausage = frankfurter =
    hot dog = wiener = knackwurst = weisswurst, toulouse sausage = cumberland sausage = lincolnshire sausage =
    italian sausage, morcilla = boudin = boudin noir, kielbasa, andouille, pig in blanket""",
    From.PORK, raw="ground meat", perishable=True, made=True,
    hidden=(A.WHEAT, A.OATS, A.BARLEY, A.SULPHITES, A.MILK, From.LACTOSE, A.SOY, A.MUSTARD, A.CELERY),
)  # fmt: skip
POULTRY_SAUSAGE = group(
    "chicken sausage, turkey sausage", From.POULTRY, raw="poultry", perishable=True, made=True,
    hidden=(From.PORK, A.WHEAT, A.SULPHITES, A.MILK, From.LACTOSE, A.SOY),
)  # fmt: skip
OTHER_SAUSAGE = group(
    "lamb sausage, merguez", From.RED_MEAT, raw="ground meat", perishable=True, made=True,
    hidden=(From.PORK, From.BEEF, A.WHEAT, A.SULPHITES, A.MILK, From.LACTOSE, A.SOY, A.MUSTARD, A.CELERY),
)  # fmt: skip
BEEF_SAUSAGE = group(
    "beef sausage, boerewors", From.BEEF, raw="ground meat", perishable=True, made=True,
    hidden=(From.PORK, A.WHEAT, A.SULPHITES, A.MILK, From.LACTOSE, A.SOY, A.MUSTARD, A.CELERY),
)  # fmt: skip
VEGETARIAN_SAUSAGE = group(
    "~vegetarian sausage = ~vegan sausage = ~meat free sausage, ~vegetarian mince = ~vegan mince = ~meat free mince",
    perishable=True, made=True, hidden=(A.WHEAT, A.EGGS, A.MILK, From.LACTOSE, A.SOY, A.CELERY, A.MUSTARD),
)  # fmt: skip
LIVER_SAUSAGE = group(
    "liverwurst = leberwurst = liver sausage", From.PORK, From.LIVER, From.PATE, perishable=True, made=True,
    hidden=(A.MILK, From.LACTOSE, A.WHEAT, A.MUSTARD, A.CELERY, A.EGGS, A.SOY),
)  # fmt: skip
PATE = group(
    "pate, terrine, rillettes", From.MEAT, From.PATE, perishable=True, made=True,
    hidden=(From.GAME, From.PORK, From.POULTRY, From.BEEF, From.LIVER, A.MILK, From.LACTOSE, A.EGGS, From.ALCOHOL,
            A.WHEAT),
)  # fmt: skip
POULTRY_PATE = group(
    "chicken liver pate, duck pate", From.POULTRY, From.PATE, From.LIVER, perishable=True, made=True,
    hidden=(From.PORK, A.MILK, From.LACTOSE, A.EGGS, From.ALCOHOL, A.WHEAT),
)  # fmt: skip
FAT = (
    *group("lard, pork fat, bacon fat", From.PORK, From.ANIMAL_FAT),
    *group("dripping = beef dripping, suet = beef suet, tallow, marrow fat", From.BEEF, From.ANIMAL_FAT,
           hidden=(A.WHEAT,)),
    *group("duck fat, goose fat, chicken fat = schmaltz", From.POULTRY, From.ANIMAL_FAT),
    *group("~vegetable suet = ~vegetarian suet", hidden=(A.WHEAT,), made=True),
)  # fmt: skip
GELATINE = group(
    "gelatine = gelatin = leaf gelatine = sheet gelatine, aspic, jelly cubes",
    From.GELATINE,
    hidden=(From.PORK, From.BEEF, A.FISH),
)
_STOCK = (A.CELERY, A.WHEAT, A.BARLEY, A.MILK, From.LACTOSE, A.SOY, A.SULPHITES)
STOCK = (
    *group("chicken stock = chicken broth, turkey stock, duck stock", From.POULTRY, hidden=_STOCK, perishable=True,
           made=True),
    *group("game stock", From.GAME, hidden=(*_STOCK, From.POULTRY, From.RED_MEAT), perishable=True, made=True),
    *group("beef stock = beef broth, veal stock, demi glace, bone broth, beef consomme", From.BEEF, hidden=_STOCK,
           perishable=True, made=True),
    *group("pork stock, ham stock", From.PORK, hidden=_STOCK, perishable=True, made=True),
    *group("lamb stock", From.RED_MEAT, hidden=_STOCK, perishable=True, made=True),
    *group("meat stock = meat broth, brown stock", From.MEAT, hidden=(*_STOCK, From.BEEF, From.PORK, From.POULTRY),
           perishable=True, made=True),
    *group("gravy, gravy granules = gravy powder", perishable=True, made=True,
           hidden=(*_STOCK, From.MEAT, From.BEEF, From.PORK, From.POULTRY)),
)  # fmt: skip

MEAT = (
    *ANY_MEAT, *CUTS, *NAMED_CUTS, *MINCED, *MINCE, *SHAPED, *BIRDS, *MINCED_BIRDS, *LIVER, *OFFAL,
    *LAMB_OFFAL, *BEEF_OFFAL, *BACON, *COOKED_HAM, *NOT_PORK_BACON, *LIVER_SAUSAGE,
    *CURED, *CURED_BEEF, *SAUSAGE, *WITH_LIVER, *PORK_SAUSAGE, *POULTRY_SAUSAGE, *OTHER_SAUSAGE, *BEEF_SAUSAGE,
    *VEGETARIAN_SAUSAGE, *PATE, *POULTRY_PATE,
    *FAT, *GELATINE, *STOCK,
)  # fmt: skip
