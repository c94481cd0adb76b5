"""Pickles, dressings, sauces and drinks. All figures: common practice, no source."""

# fmt: off
from board.importing.ways.pattern import (
    SIMMERS,
    Pattern,
    a_head,
    by_hand,
    chilled,
    listed,
    on_ring,
)

PICKLES = Pattern(
    name="pickled", course="nibbles", done=listed("pickled, quick-pickled, soused, fermented"), words=listed(
        "pickles, pickle, kimchi, giardiniera, chow-chow, escabeche"), of=frozenset({"other"}),
        food="60 g cucumbers (veg)",
    ingredients=a_head("30 ml cider vinegar (store cupboard), 30 ml water, 8 g sugar (baking), 1 g salt"),
    steps=(
        by_hand("slice the {it}", 8, 10, 14, keeps="1 day in the fridge", perishable=False, uses=("{it}",)),
        on_ring("boil the vinegar with the sugar", 6, 7, 9, tool="small pot", keeps="30 min in the room",
            perishable=False, uses=("vinegar", "water", "sugar", "salt")),
        chilled("pickle the {it} in the vinegar", 180, 240, 360, keeps="5 days in the fridge", perishable=False),
        by_hand("put the {it} in bowls", 2, 3, 4, best="2 h", keeps="3 h in the room", perishable=False),
    ),
)

CHUTNEY = Pattern(
    name="chutney or relish", course="side", words=listed("chutney, relish, jam, marmalade, onion marmalade, "
        "mostarda"), food="50 g apples (veg)",
    ingredients=a_head("10 g sugar (baking), 10 ml cider vinegar (store cupboard), 1/12 onions (veg), to taste salt"),
    steps=(
        by_hand("chop the {it}", 6, 8, 11, keeps="4 h in the fridge", perishable=False),
        on_ring("simmer the {it} down", 20, 25, 35, tool="small pot",
            attended="4 min at the start, 1 min every 6 min, 2 min at the end", look="thick, a spoon leaves a path",
            keeps="2 h in the room", uses=("{it}", "sugar", "vinegar", "onions", "salt")),
        chilled("chill the relish", 60, 90, 120, keeps="5 days in the fridge"),
        by_hand("put the relish in bowls", 2, 3, 4, best="1 h", keeps="2 h in the room"),
    ),
)

FRUIT_SAUCE = Pattern(
    name="fruit sauce", course="side", words=listed("cranberry sauce, apple sauce, applesauce, fruit sauce, coulis, "
        "raspberry coulis, redcurrant sauce, plum sauce, gooseberry sauce, rhubarb sauce, cherry sauce"),
        food="60 g apples (veg)", of=frozenset({"fruit", "other"}),
    ingredients=a_head("8 g sugar (baking), 10 ml water"),
    steps=(
        on_ring("simmer the {it} with the sugar", 12, 15, 20, tool="small pot", perishable=False,
            attended="3 min at the start, 1 min every 5 min, 2 min at the end", look="soft, it falls apart",
            keeps="2 h in the room", uses=("{it}", "sugar", "water"),
                how="Peeled, cored or stoned first where it must be. Taste it: how much sugar it wants differs."),
        chilled("chill the sauce", 60, 90, 120, keeps="4 days in the fridge"),
        by_hand("put the sauce in bowls", 2, 3, 4, best="1 h", keeps="2 h in the room", perishable=False),
    ),
)

BREAD_SAUCE = Pattern(
    name="bread sauce", course="side", words=listed("bread sauce"), food="",
    ingredients=a_head("70 ml whole milk (dairy), 12 g white bread (bakery), 1/10 onions (veg), 4 g butter (dairy), "
        "to taste cloves (store cupboard), to taste salt"),
    steps=(
        on_ring("infuse the milk with the onion", 15, 20, 25, tool="small pot",
            attended="4 min at the start, 1 min at the end", keeps="1 h on the stovetop, 1 ring",
            uses=("milk", "onions", "cloves"), how="To a simmer, then off the heat with a lid on; strain it."),
        on_ring("stir in the bread until it thickens", 6, 8, 10, tool="small pot", look="thick, it drops off the spoon",
            best="20 min", keeps="40 min on the stovetop, 1 ring", uses=("bread", "butter", "salt")),
    ),
)

DRESSING = Pattern(
    name="dressing", course="side", words=listed("dressing, vinaigrette, salad dressing, french dressing, ranch "
        "dressing"), food="",
    ingredients=a_head("1 tbsp olive oil (store cupboard), 1/3 tbsp red wine vinegar (store cupboard), 1/12 tbsp "
        "mustard (store cupboard), to taste salt"),
    steps=(by_hand("shake the dressing", 3, 4, 6, keeps="3 days in the fridge", perishable=False, uses=("oil",
        "vinegar", "mustard", "salt")),),
)

HERB_SAUCE = Pattern(
    name="herb sauce", course="side", words=listed("pesto, salsa verde, chimichurri, green sauce, "
        "gremolata, herb oil, zhoug, persillade, horseradish sauce, tartare sauce, yoghurt sauce, yogurt sauce, "
        "raita, sauce gribiche, tahini sauce"), food="",
    ingredients=a_head("1/4 bunches parsley (veg), 1 tbsp olive oil (store cupboard), 1/4 tbsp capers (store "
        "cupboard), 1/12 lemons (veg), to taste salt"),
    steps=(by_hand("chop the herbs and stir the sauce", 8, 10, 14, keeps="6 h in the fridge", best="8 h", uses=(
        "parsley", "oil", "capers", "lemons", "salt")),),
)

MINT_SAUCE = Pattern(
    name="mint sauce", course="side", words=listed("mint sauce"), food="",
    ingredients=a_head("6 g mint (veg), 1 tbsp white wine vinegar (store cupboard), 3 g sugar (baking), to taste salt"),
    steps=(by_hand("chop the mint and stir the sauce", 6, 8, 11, keeps="1 day in the fridge", best="8 h",
        perishable=False, uses=("mint", "vinegar", "sugar", "salt"), how="Two spoons of hot water on the mint and "
        "sugar first, then the vinegar; half an hour draws it."),),
)

MAYONNAISE = Pattern(
    name="mayonnaise", course="side", words=listed("mayonnaise, mayo, aioli, aïoli, rouille, marie rose sauce"),
        food="",
    ingredients=a_head("1/8 egg yolks, pasteurised (dairy), 25 ml sunflower oil (store cupboard), 1/12 lemons "
        "(veg), 1/16 tbsp mustard (store cupboard), to taste salt"),
    steps=(by_hand("whisk the mayonnaise", 9, 11, 14, keeps="1 day in the fridge", uses=("egg yolks", "oil", "lemons",
        "mustard", "salt"), how="Drop by drop, then in a thread. Pasteurised yolks: raw egg is not for everybody."),),
)

HOLLANDAISE = Pattern(
    name="warm butter sauce with egg", course="side", words=listed("hollandaise, béarnaise, hollandaise sauce, "
        "béarnaise sauce, mousseline sauce, maltaise"), food="",
    ingredients=a_head("3/8 egg yolks, pasteurised (dairy), 30 g butter (dairy), 1/8 lemons (veg), to taste salt"),
    steps=(on_ring("whisk the egg yolks and butter to a warm sauce", 13, 16, 20, tool="small pot", cooks="eggs",
        look="thick and light, no butter at the edge", best="10 min", keeps="20 min hot", uses=("egg yolks", "butter",
        "lemons", "salt"), how="Over steam, never hotter than the hand bears at the bowl's side for a moment; a "
        "spoon of water saves it when it parts."),),
)

BUTTER_SAUCE = Pattern(
    name="butter sauce", course="side", words=listed("beurre blanc, brown butter, beurre noisette, butter sauce, "
        "lemon butter, garlic butter, herb butter, cafe de paris butter, caper butter, flavoured butter"), food="",
    ingredients=a_head("18 g butter (dairy), 1/16 shallots (veg), 15 ml white wine (drinks), 1/16 lemons (veg), to "
        "taste salt"),
    steps=(on_ring("boil down the wine and whisk in the butter", 10, 12, 15, tool="small pot",
        look="creamy, it coats a spoon", best="8 min", keeps="15 min hot", uses=("butter", "shallots", "wine",
        "lemons", "salt")),),
)

WHITE_SAUCE = Pattern(
    name="white sauce", course="side", words=listed("white sauce, béchamel, bechamel, cheese sauce, mornay, parsley "
        "sauce, onion sauce, soubise, mustard sauce, cream sauce, country gravy, queso"), food="",
    ingredients=a_head("60 ml whole milk (dairy), 5 g butter (dairy), 5 g plain flour (baking), to taste nutmeg "
        "(store cupboard), to taste salt"),
    steps=(on_ring("cook the white sauce", 14, 16, 20, tool="small pot", look="coats a spoon, no taste of flour",
        best="20 min", keeps="40 min hot", uses=("milk", "butter", "flour", "nutmeg", "salt"), how="Butter and "
        "flour first, two minutes without colour; the milk in three goes, then five minutes at a murmur."),),
)

GRAVY = Pattern(
    name="gravy", course="side", words=listed("gravy, brown sauce, velouté sauce, demi-glace, espagnole, red wine "
        "sauce, peppercorn sauce, pepper sauce, mushroom sauce, madeira sauce, bordelaise, port sauce, pan sauce, "
        "onion gravy"), alone=("sauce",), food="",
    ingredients=a_head("90 ml chicken stock (store cupboard), 5 g plain flour (baking), 5 g butter (dairy), 1/12 "
        "onions (veg), to taste salt"),
    steps=(on_ring("boil down the stock and thicken the gravy", 20, 25, 32, tool="small pot",
        attended="7 min at the start, 1 min every 8 min, 3 min at the end", look="coats a spoon", best="1 h",
        keeps="2 h on the stovetop, 1 ring", uses=("stock", "flour", "butter", "onions", "salt"), how="Brown the "
        "onions in butter, stir in the flour, then the stock by degrees; the juice of a roast goes in at the end. A "
        "lid on it while it waits, and a splash of water before it goes out."),),
)

TOMATO_SAUCE = Pattern(
    name="tomato sauce", course="side", words=listed("tomato sauce, marinara, pomodoro, sugo, passata, barbecue "
        "sauce, bbq sauce, ketchup, romesco"), food="",
    ingredients=a_head("90 g tinned tomatoes (store cupboard), 1/12 onions (veg), 1/4 cloves garlic (veg), 1/4 tbsp "
        "olive oil (store cupboard), to taste salt"),
    steps=(on_ring("simmer the tomato sauce", 28, 33, 40, tool="medium pot", attended=SIMMERS,
        look="thick, oil at the edge", best="30 min", keeps="1 h on the stovetop, 1 ring", uses=("tomatoes", "onions",
        "garlic", "oil", "salt")),),
)

SWEET_SAUCE = Pattern(
    name="sweet sauce", course="sweet", words=listed("chocolate sauce, caramel sauce, toffee sauce, butterscotch "
        "sauce, fudge sauce, hot fudge, brandy butter, brandy sauce, whipped cream, chantilly"), food="",
    ingredients=a_head("15 g dark chocolate (baking), 20 ml double cream (dairy), 4 g sugar (baking)"),
    steps=(on_ring("boil the cream and melt the rest in it", 8, 10, 12, tool="small pot", look="smooth and glossy",
        best="30 min", keeps="45 min hot", uses=("chocolate", "cream", "sugar")),),
)

PUNCH = Pattern(
    name="cocktail or punch", course="drink", words=listed("cocktail, cocktails, punch, spritz, gin and tonic, "
        "martini, sangria, kir, kir royale, bellini, margarita, mojito, bloody mary, old fashioned, "
        "aperitif, apéritif, eggnog, pimms cup"), food="",
    ingredients=a_head("50 ml gin (drinks), 120 ml tonic water (drinks), 1/6 lemons (veg), 150 g ice (drinks)"),
    steps=(
        by_hand("cut the lemons and chill the glasses", 5, 6, 8, keeps="3 h in the fridge", perishable=False, uses=(
            "lemons",)),
        by_hand("mix and pour the drinks", 8, 10, 14, best="5 min", keeps="10 min in the room", uses=("gin", "tonic",
            "ice"), how="One measure each, and something without alcohol on the same tray for who drives or does "
            "not drink."),
    ),
)

WINE = Pattern(
    name="wine, opened", bought=True, course="drink", words=listed("wine, wines, prosecco, champagne, cava, "
        "sparkling wine, red wine, white wine, rosé, rosé wine, dessert wine, sherry, port, beer, beers, cider, "
        "sake, digestif, digestifs, liqueur, liqueurs, brandy, whisky, whiskey, grappa, cremant, fizz, bubbly"),
        food="2/5 bottles white wine (drinks)",
    steps=(
        chilled("chill the {it}", 120, 120, 180, keeps="3 days in the fridge", perishable=False, uses=("{it}",),
            how="Red wine stands in the room instead."),
        by_hand("open and pour the {it}", 4, 5, 8, best="20 min", keeps="3 h in the room", perishable=False,
            how="Two glasses a guest; water beside it."),
    ),
)

SOFT_DRINK = Pattern(
    name="drink without alcohol", course="drink", words=listed("lemonade, orange squash, lemon squash, fruit "
        "squash, cordial, juice, mocktail, alcohol-free punch, fruit punch, ginger beer, iced tea, ice tea, "
        "elderflower, water, sparkling water, soft drinks, soda, shrub, smoothie, kombucha, agua fresca, limeade, "
        "lassi, milkshake"), food="",
    ingredients=a_head("1/3 lemons (veg), 12 g sugar (baking), 200 ml sparkling water (drinks), 100 g ice (drinks)"),
    steps=(
        by_hand("squeeze the lemons and stir in the sugar", 7, 9, 12, keeps="1 day in the fridge", perishable=False,
            uses=("lemons", "sugar")),
        by_hand("top up and pour the drink", 4, 5, 8, best="10 min", keeps="20 min in the room", perishable=False,
            uses=("water", "ice")),
    ),
)

HOT_DRINK = Pattern(
    name="hot spiced drink", course="drink", words=listed("mulled wine, glühwein, gluhwein, mulled cider, hot "
        "toddy, hot punch, mulled apple juice, glögg, hot buttered rum"), food="180 ml red wine (drinks)",
    ingredients=a_head("10 g sugar (baking), 1/6 oranges (veg), 1/6 cinnamon sticks (store cupboard)"),
    steps=(on_ring("warm the {it} with the spices", 20, 25, 30, tool="big pot",
        attended="4 min at the start, 1 min every 10 min, 1 min at the end", look="it steams and does not boil",
        best="30 min", keeps="1 h 30 on the stovetop, 1 ring", perishable=False, uses=("{it}", "sugar", "oranges",
        "cinnamon"), how="Alcohol burns: no flame near the pot's mouth, and something without it for who drives."),),
)

HOT_MILK = Pattern(
    name="hot milk drink", course="drink", words=listed("hot chocolate, cocoa, chai, hot milk, golden milk, "
        "drinking chocolate"),
    ingredients=a_head("180 ml whole milk (dairy), 20 g dark chocolate (baking), 5 g sugar (baking)"),
    steps=(on_ring("heat the milk and whisk in the rest", 10, 12, 15, tool="medium pot",
        look="it steams, and a foam stands on it", best="8 min", keeps="20 min hot", uses=("milk", "chocolate",
        "sugar")),),
)

COFFEE = Pattern(
    name="coffee", course="drink", words=listed("coffee, espresso, cappuccino, coffees, filter coffee, decaf, "
        "latte"), food="",
    ingredients=a_head("9 g coffee (store cupboard), 20 ml whole milk (dairy)"),
    steps=(on_ring("brew the coffee", 8, 10, 13, tool="small pot", attended="", best="12 min", keeps="25 min hot",
        uses=("coffee", "milk"), how="Water just off the boil; the milk stands on the table."),),
)

TEA = Pattern(
    name="tea", course="drink", words=listed("tea, teas, mint tea, herbal tea, green tea, infusion, tisane, fresh "
        "mint tea, afternoon tea"), food="",
    ingredients=a_head("2.5 g tea (store cupboard), 15 ml whole milk (dairy)"),
    steps=(on_ring("boil the water and draw the tea", 9, 11, 14, tool="small pot", best="8 min", keeps="20 min hot",
        uses=("tea", "milk")),),
)

FAMILY = (PICKLES, CHUTNEY, FRUIT_SAUCE, BREAD_SAUCE, DRESSING, HERB_SAUCE, MINT_SAUCE, MAYONNAISE,
    HOLLANDAISE, BUTTER_SAUCE, WHITE_SAUCE,
    TOMATO_SAUCE, SWEET_SAUCE, GRAVY, PUNCH, WINE, SOFT_DRINK, HOT_DRINK, HOT_MILK, COFFEE, TEA)
