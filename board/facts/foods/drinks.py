"""Drinks, alcoholic and not."""

from board.facts.allergens import Allergen as A
from board.facts.foods.entry import group
from board.facts.origins import Origin as From

WINE = group(
    """wine = grape wine, red wine, white wine, rose wine, dry white wine, sparkling wine = prosecco = cava =
    champagne, dessert
    wine, sauternes = sauterne = muscat = moscato = tokaj = tokaji = vin santo, bordeaux = claret, burgundy, chablis,
    riesling, chardonnay, merlot, pinot noir, pinot grigio, sauvignon blanc, cabernet sauvignon = cabernet, shiraz =
    syrah, malbec, rioja, chianti, cremant = sekt, lambrusco, vinho verde, beaujolais, barolo, gewurztraminer, rose,
    sangria, gluhwein, fino, manzanilla sherry, amontillado, oloroso, cream sherry, dry sherry, medium sherry,
    pedro ximenez, cooking sherry, ruby port = tawny port, cooking wine, ginger wine, valpolicella,
    montepulciano, zinfandel, tempranillo, gruner veltliner, muscadet, sancerre, ice wine, plum wine, rum raisin
    wine, vin jaune, banyuls, sherry, port, madeira, marsala, vermouth, mulled wine""",
    From.ALCOHOL, hidden=(A.SULPHITES, From.FININGS), fined=(A.EGGS, A.MILK),
)  # fmt: skip
CIDER = group(
    "cider = dry cider = hard cider = apple cider, perry = pear cider",
    From.ALCOHOL, hidden=(A.SULPHITES, From.FININGS), fined=(A.FISH,),
)  # fmt: skip
BEER = group(
    """beer = lager = ale = stout = dark beer = porter = pale ale = bitter beer = ipa = pilsner = pilsener, brown
    ale, shandy, mild ale""",
    From.ALCOHOL, A.BARLEY,
             hidden=(A.WHEAT, A.SULPHITES, From.FININGS))  # fmt: skip
WHEAT_BEER = group("wheat beer = white beer", From.ALCOHOL, A.BARLEY, A.WHEAT, hidden=(A.SULPHITES, From.FININGS))
FREE_BEER = group("~gluten free beer", From.ALCOHOL, hidden=(A.BARLEY,))
# Grain and nuts for distilling are exempt from the EU list; other things may be added afterwards.
SPIRITS = group(
    """brandy = cognac = calvados, rum = dark rum = white rum, whisky = whiskey = bourbon, gin, vodka, tequila =
    mezcal, kirsch, grappa, armagnac, eau de vie, schnapps, scotch = scotch whisky = rye whiskey = irish whiskey,
    absinthe, ouzo = raki =
    arak, triple sec = curacao, creme de menthe = creme de cacao, maraschino, sambuca, cachaca, pisco, aperitif,
    cocktail = punch = mojito = margarita = martini = gin and tonic, cherry brandy, spiced
    rum, sloe liqueur, hard seltzer, aquavit, pastis = anise liqueur, orange liqueur, coffee liqueur, fruit liqueur =
    cassis = creme de cassis, elderflower liqueur, sake, mirin, bitters,
    spirit, sloe gin, limoncello""",
    From.ALCOHOL,
)  # fmt: skip
RICE_WINE = group("rice wine = shaoxing wine", From.ALCOHOL, hidden=(A.WHEAT,))  # begun with wheat
LIQUEURS = (
    *group(
        "liqueur", From.ALCOHOL, hidden=(A.MILK, From.LACTOSE, A.EGGS, A.ALMONDS, A.HAZELNUTS, A.WALNUTS), made=True
    ),
    *group("amaretto = almond liqueur", From.ALCOHOL, hidden=(A.ALMONDS,)),
    *group("hazelnut liqueur", From.ALCOHOL, A.HAZELNUTS),
    *group("walnut liqueur = nocino", From.ALCOHOL, A.WALNUTS),
    *group("cream liqueur = irish cream", From.ALCOHOL, A.MILK, From.LACTOSE),
    *group("egg liqueur = advocaat", From.ALCOHOL, A.EGGS, hidden=(A.MILK, From.LACTOSE)),
    *group("eggnog = egg nog", From.ALCOHOL, A.EGGS, hidden=(A.MILK, From.LACTOSE, From.RAW_EGG), made=True),
)
# Up to about half a per cent may stay in: common practice, no source.
WITHOUT_ALCOHOL = (
    *group("~alcohol free wine = ~non alcoholic wine = ~dealcoholised wine",
           hidden=(From.ALCOHOL, A.SULPHITES, From.FININGS), fined=(A.EGGS, A.MILK)),
    *group("~alcohol free cider = ~non alcoholic cider", hidden=(From.ALCOHOL, A.SULPHITES, From.FININGS),
           fined=(A.FISH,)),
    *group("~alcohol free beer = ~non alcoholic beer", A.BARLEY, hidden=(From.ALCOHOL, A.WHEAT)),
)  # fmt: skip
SOFT = group(
    """~ginger beer, ~root beer, ~ginger ale, ~cream soda, tonic water = tonic, tea = green tea = black tea,
    coffee = ground coffee = filter coffee = espresso = coffee bean = instant coffee = decaf coffee,
    sparkling apple juice, matcha, earl grey = earl grey tea, chamomile tea = rooibos = peppermint tea = mint tea,
    coffee granule, espresso powder, tea bag, jasmine tea, bitter lemon""",
)  # fmt: skip
SOFT_MIXED = (
    *group("""lemonade = lemon drink, cola, herbal tea = herbal tea bag, fruit tea = fruit tea bag, chai, grenadine,
        iced tea""", made=True),
    *group("cordial, elderflower cordial, squash drink", hidden=(A.SULPHITES,), made=True),
    *group("horchata", hidden=(A.ALMONDS,), made=True),
    *group(
        """smoothie, latte = cappuccino = iced coffee, bubble tea""",
        hidden=(A.MILK, From.LACTOSE, A.BARLEY, A.SOY,
           A.OATS), made=True),
    *group("malt drink = malted drink", A.BARLEY, hidden=(A.MILK, From.LACTOSE, A.SOY, A.WHEAT), made=True),
    *group("kombucha", hidden=(From.ALCOHOL,), made=True),
)  # fmt: skip

DRINKS = (
    *WINE, *CIDER, *BEER, *WHEAT_BEER, *FREE_BEER, *SPIRITS, *RICE_WINE, *LIQUEURS, *WITHOUT_ALCOHOL, *SOFT,
    *SOFT_MIXED,
)  # fmt: skip
