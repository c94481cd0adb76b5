"""Ways of preparing food that bring something with them: `breaded`, `almandine`, `au gratin`. They name no food of
their own: the food they stand beside stays the main thing. What they hold is common practice, no source."""

from board.facts.allergens import Allergen as A
from board.facts.foods.entry import group
from board.facts.origins import Origin as From

_MILK = (A.MILK, From.LACTOSE)
_NUTS = (A.ALMONDS, A.HAZELNUTS, A.WALNUTS, A.CASHEWS, A.PECANS, A.BRAZIL_NUTS, A.PISTACHIOS, A.MACADAMIAS)

WAYS = (
    *group(
        """breaded, bread crumbed = breadcrumbed, crumb coated = crumbed, panko crusted = panko coated =
        panko crumbed, milanese = alla milanese = a la milanese, schnitzel style, katsu, escalope style,
        viennoise, pane, panee = panne, cotoletta, southern fried, kentucky style, bread coated, tonkatsu""",
        A.WHEAT, hidden=(A.EGGS, *_MILK, A.MUSTARD), made=True),
    *group("beer battered = in beer batter", A.WHEAT, A.BARLEY, From.ALCOHOL, hidden=(A.EGGS, *_MILK), made=True),
    *group("battered, in batter = batter coated, fritto misto, pakora style, popcorn style",
           A.WHEAT, hidden=(A.EGGS, *_MILK, A.BARLEY, From.ALCOHOL), made=True),
    *group("tempura = tempura batter = tempura style", A.WHEAT, hidden=(A.EGGS, A.SOY), made=True),
    *group("floured, dusted with flour = flour dusted, dredged, dredged in flour", A.WHEAT),
    *group(
        """almandine, amandine = almondine, almond crusted = almond crumbed = almond coated, bakewell""",
        A.ALMONDS, hidden=_MILK, made=True),
    *group(
        """nut crusted = nut crumbed = nut coated = in a nut crust""",
        *_NUTS, hidden=(A.PEANUTS, A.PINE_NUTS), made=True),
    *group("pistachio crusted = pistachio crumbed", A.PISTACHIOS, made=True),
    *group("sesame crusted = sesame coated = sesame crumbed", A.SESAME, made=True),
    *group("herb crusted = in a herb crust = crusted", hidden=(A.WHEAT, A.EGGS, *_MILK, A.MUSTARD, *_NUTS), made=True),
    *group("parmesan crusted, parmentier style", *_MILK, hidden=(A.WHEAT, A.EGGS, From.RENNET), made=True),
    *group("creamed, in cream = a la creme = in a cream sauce", *_MILK,
           hidden=(A.WHEAT,), made=True),
    *group("creamy", hidden=_MILK),
    *group("malted", A.BARLEY, hidden=(A.WHEAT,)),
    *group("sulphured = sulfured", A.SULPHITES),
    *group("parmigiana = alla parmigiana = a la parmigiana", A.WHEAT, *_MILK, hidden=(A.EGGS, From.RENNET), made=True),
    *group(
        """buttered, butter basted = butter fried = fried in butter = butter roasted = butter poached = butter
        braised, in butter = butter glazed = confit in butter, beurre noisette = beurre noir""",
        A.MILK, hidden=(From.LACTOSE,), made=True),
    *group(
        """beurre blanc = beurre manie style = butter sauce, meuniere = a la meuniere, maitre d hotel, cafe de
        paris""",
        A.MILK, hidden=(From.LACTOSE, A.WHEAT), made=True),
    *group(
        """au gratin = gratin = gratinated, gratineed = gratinee, cheese crusted, cheesy, cheesed, cheese
        topped, cheese filled = cheese stuffed, alfredo = alfredo sauce, dauphinoise, gratin dauphinois =
        dauphinois, boulangere au gratin, mornay = mornay
        sauce, saag paneer style, raclette style""",
        *_MILK, hidden=(A.WHEAT, A.EGGS, From.RENNET, A.MUSTARD, A.BARLEY, From.ALCOHOL), made=True),
    *group("rarebit = welsh rarebit = welsh rabbit", A.WHEAT, *_MILK, made=True,
           hidden=(A.BARLEY, From.ALCOHOL, A.MUSTARD, A.FISH, A.EGGS, From.RENNET)),
    *group("polonaise = a la polonaise", A.EGGS, A.WHEAT, A.MILK, made=True),
    # with spinach and cheese; on its own, a biscuit of almonds
    *group("florentine = a la florentine", *_MILK, hidden=(A.ALMONDS, A.HAZELNUTS, A.WHEAT, A.EGGS), made=True),
    *group("thermidor", *_MILK, hidden=(A.WHEAT, A.EGGS, A.MUSTARD, From.ALCOHOL, A.CRUSTACEANS), made=True),
    *group("stroganoff, stroganov", *_MILK, hidden=(A.WHEAT, A.MUSTARD, From.ALCOHOL), made=True),
    *group("carbonara = carbonara sauce = carbonara style", A.EGGS, *_MILK, From.PORK, made=True,
           hidden=(A.WHEAT, From.RENNET, From.RAW_EGG)),
    *group("kyiv, kiev", A.WHEAT, *_MILK, hidden=(A.EGGS,), made=True),
    *group("cordon bleu", A.WHEAT, *_MILK, From.PORK, hidden=(A.EGGS,), made=True),
    *group("wellington, en croute = in pastry = in puff pastry = pastry wrapped", A.WHEAT,
           hidden=(A.EGGS, *_MILK, From.PORK), made=True),
    *group("in blanket = in their blanket", From.PORK, made=True),
    *group("korma = korma sauce = korma paste", made=True,
           hidden=(A.ALMONDS, A.CASHEWS, A.COCONUT, A.PISTACHIOS, *_MILK, A.MUSTARD, A.CELERY)),
    *group("pasanda = pasanda sauce", A.ALMONDS, *_MILK, hidden=(A.CASHEWS, A.MUSTARD, A.CELERY), made=True),
    *group(
        """tikka masala = tikka masala sauce, tikka = tikka paste = tikka marinade = tikka style, tandoori = tandoori
        style, tandoori marinade, makhani = makhani sauce = butter sauce makhani, malai""",
        *_MILK, hidden=(A.CASHEWS, A.ALMONDS, A.MUSTARD, A.CELERY), made=True),
    *group(
        """curried, in curry sauce = curry sauce = curry style, madras = madras sauce, balti = balti sauce,
        jalfrezi = jalfrezi sauce, rogan josh, bhuna, vindaloo = vindaloo paste, masala, dopiaza, dhansak,
        biryani, biriyani, curry = thai curry = green curry = red curry, rendang, massaman = massaman curry =
        massaman paste, laksa = laksa paste""",
        made=True,
        hidden=(A.MUSTARD, A.CELERY, *_MILK, A.CASHEWS, A.ALMONDS, A.PEANUTS, A.COCONUT, A.CRUSTACEANS, A.FISH, A.WHEAT,
                A.SOY)),
    *group("teriyaki = teriyaki glazed = teriyaki marinated", A.SOY,
           hidden=(A.WHEAT, A.SESAME, From.ALCOHOL, A.BARLEY), made=True),
    *group("soy glazed = soy marinated = soy braised = soy cured = red cooked", A.SOY, hidden=(A.WHEAT,), made=True),
    *group("miso glazed = miso marinated = miso roasted", A.SOY, hidden=(A.BARLEY, A.WHEAT, From.ALCOHOL), made=True),
    *group(
        """sweet and sour = sweet and sour sauce, kung pao = kung po, chow mein, stir fry sauce,
        szechuan style = sichuan style, bulgogi, ~char siu = ~char siu sauce = ~chinese barbecue, adobo = adobo
        sauce""",
        made=True,
        hidden=(A.SOY, A.WHEAT, A.SESAME, A.PEANUTS, A.CASHEWS, A.MOLLUSCS, A.CRUSTACEANS, A.FISH, A.EGGS,
                From.ALCOHOL)),
    *group("honey glazed = honey roast = honey roasted = honey baked = honey cured", From.HONEY, hidden=(A.MUSTARD,)),
    *group("maple glazed = maple cured = maple roasted"),
    *group("mustard glazed = mustard crusted = devilled, deviled", A.MUSTARD, hidden=(A.WHEAT, *_MILK), made=True),
    *group("praline coated = praline topped", A.HAZELNUTS, hidden=(A.ALMONDS, *_MILK, A.PECANS), made=True),
    *group("caesar = caesar style", A.EGGS, hidden=(A.FISH, *_MILK, A.MUSTARD, From.RAW_EGG), made=True),
    *group("nicoise = a la nicoise", A.FISH, hidden=(A.EGGS,), made=True),
    *group("puttanesca = alla puttanesca", A.FISH, made=True),
    *group("scalloped", hidden=(*_MILK, A.WHEAT), made=True),
    *group(
        """chasseur = a la chasseur = forestiere, mushroom chasseur""",
        From.ALCOHOL, hidden=(A.SULPHITES, A.WHEAT, A.MILK), made=True),
    *group("jugged", hidden=(From.ALCOHOL, A.WHEAT), made=True),
    *group("tonnato = tonnato sauce", A.FISH, A.EGGS, made=True),
    *group(
        """beer braised = braised in beer = beer glazed, carbonnade, carbonade""",
        A.BARLEY, From.ALCOHOL, hidden=(A.WHEAT,), made=True),
    *group(
        """wine braised = wine poached = red wine braised = poached in wine, bourguignon, bourguignonne = a la
        bourguignonne, au vin, marsala style, brandied, in brandy, flambe, flambeed, boozy, drunken, a la mariniere =
        mariniere, marchand de vin, madeira sauce, bordelaise, rum soaked = soaked in rum, sherried, spiked, tipsy,
        port glazed""",
        From.ALCOHOL, hidden=(A.SULPHITES, A.WHEAT, *_MILK), made=True),
    *group("bacon wrapped = wrapped in bacon = larded, barded, pancetta wrapped, ham wrapped",
           From.PORK, made=True),
    *group("anchovy stuffed", A.FISH, made=True),
    *group("chocolate coated = chocolate covered = chocolate dipped, enrobed", made=True,
           hidden=(*_MILK, A.SOY, *_NUTS, A.PEANUTS)),
    *group("yogurt coated = yogurt marinated = yoghurt coated", *_MILK, made=True),
    *group("nutty, nutted", hidden=(*_NUTS, A.PEANUTS), made=True),
    *group("confit", hidden=(From.ANIMAL_FAT,)),
    *group("mole = mole sauce = mole poblano", made=True,
           hidden=(A.ALMONDS, A.PEANUTS, A.SESAME, A.WALNUTS, A.PECANS, A.WHEAT)),
    *group("romesco = romesco sauce", A.ALMONDS, hidden=(A.HAZELNUTS, A.WHEAT, A.SULPHITES), made=True),
    *group("dukkah crusted = dukkah coated = dukka crusted", A.HAZELNUTS, A.SESAME, hidden=_NUTS, made=True),
)  # fmt: skip
