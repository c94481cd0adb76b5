"""Dishes made in a way of their own, which only their name finds. All figures: common practice, no source."""

# fmt: off
from board.importing.ways.pattern import (
    SIMMERS,
    Pattern,
    a_head,
    by_hand,
    chilled,
    cooled,
    in_oven,
    left,
    listed,
    on_ring,
    reheated,
)

ONION_SOUP = Pattern(
    name="onion soup", course="starter", words=listed("french onion soup, soupe à l'oignon, onion soup "
        "gratinée"), food="",
    ingredients=a_head("200 g onions (veg), 10 g butter (dairy), 1/4 tbsp olive oil (store cupboard), 3 g plain flour "
        "(baking), 30 ml dry white wine (drinks), 250 ml beef stock (store cupboard), 1/8 sprigs thyme (veg), 30 g "
        "baguette (bakery), 30 g gruyère, grated (dairy), to taste salt, 250 g ice (drinks)"),
    steps=(
        by_hand("slice the onions thin", 14, 18, 25, keeps="1 day in the fridge", perishable=False, uses=("onions",)),
        on_ring("cook the onions down until they are brown", 50, 60, 75, tool="big pot",
            attended="6 min at the start, 2 min every 8 min, 3 min at the end", keeps="1 h in the room",
            look="a deep brown jam, sweet, a fifth of what it was", uses=("butter", "oil"), how="Low heat and no "
            "hurry; a spoon of water whenever the bottom catches."),
        on_ring("simmer the soup with the stock", 25, 30, 35, tool="big pot", attended=SIMMERS, keeps="30 min hot",
            uses=("flour", "wine", "stock", "thyme", "salt"), how="Flour first, for a minute; then the wine, and the "
            "stock once it has boiled away."),
        cooled("soup", days="3 days"),
        reheated("soup", 12, 15, 20, tool="big pot", keeps="40 min on the stovetop, 1 ring"),
        in_oven(220, "toast the baguette slices under the cheese", 8, 10, 12, shelf=12, tool="baking sheet",
            after="reheat the soup", attended="4 min at the start, 3 min at the end", best="5 min", keeps="10 min hot",
            look="bubbling, brown at the rim", uses=("baguette", "gruyère"), how="One to float on each bowl. In bowls "
            "that take the heat, all of it goes under the grill together: they come out too hot to touch."),
    ),
)

BREAD_PUDDING = Pattern(
    name="bread pudding", course="sweet", words=listed("bread and butter pudding, bread pudding, brioche pudding, "
        "panettone pudding"), food="",
    ingredients=a_head("50 g white bread, sliced (bakery), 10 g butter (dairy), 15 g sultanas (baking), 1/2 eggs "
        "(dairy), 90 ml whole milk (dairy), 40 ml double cream (dairy), 15 g sugar (baking), to taste nutmeg (store "
        "cupboard)"),
    steps=(
        by_hand("butter the bread and layer it in the dish", 9, 11, 15, keeps="4 h in the fridge", uses=("bread",
            "butter", "sultanas")),
        by_hand("whisk the eggs, milk and cream and pour them over", 6, 8, 10, keeps="10 min in the room", uses=("eggs",
            "milk", "cream", "sugar", "nutmeg")),
        chilled("let the bread soak it up", 30, 40, 60, keeps="6 h in the fridge"),
        in_oven(170, "bake the pudding", 38, 43, 50, shelf=8, cooks="eggs", look="risen, gold, set in the middle",
            best="20 min", keeps="40 min hot"),
    ),
)

TABBOULEH = Pattern(
    name="tabbouleh", course="side", words=listed("tabbouleh, tabouleh, tabouli, tabbouli"), food="",
    ingredients=a_head("20 g fine bulgur (store cupboard), 1/2 bunches flat parsley (veg), 1/8 bunches mint (veg), "
        "60 g tomatoes (veg), 1/2 spring onions (veg), 1/4 lemons (veg), 1 tbsp olive oil (store cupboard), to "
        "taste salt"),
    steps=(
        left("soak the bulgur in cold water and drain it", 20, 25, 30, attended="2 min at the start, 3 min at the end",
            keeps="4 h in the fridge", look="swollen, with a little bite", uses=("bulgur",)),
        by_hand("chop the herbs and tomatoes", 20, 25, 33, after="nothing", keeps="3 h in the fridge",
            uses=("parsley", "mint", "tomatoes", "onions"), how="Dry leaves and a sharp knife: wet ones go to mush. "
            "More green than grain."),
        by_hand("dress the tabbouleh", 4, 5, 7, keeps="1 h in the fridge", best="30 min", after="soak the bulgur in "
            "cold water and drain it, chop the herbs and tomatoes", uses=("lemons", "oil", "salt")),
    ),
)

FONDANT = Pattern(
    name="fondant", course="sweet", words=listed("chocolate fondant, chocolate fondants, fondant "
        "au chocolat, moelleux au chocolat, lava cake, chocolate lava cake, molten chocolate cake"), food="",
    ingredients=a_head("30 g dark chocolate (baking), 28 g butter (dairy), 3/4 eggs (dairy), 25 g sugar (baking), 10 g "
        "plain flour (baking), 2 g cocoa powder (baking)"),
    steps=(
        by_hand("butter the moulds and dust them with cocoa", 6, 8, 11, keeps="4 h in the fridge", perishable=False,
            uses=("cocoa",)),
        on_ring("melt the chocolate and butter over hot water", 7, 9, 11, tool="small pot", keeps="20 min in the room",
            uses=("chocolate", "butter")),
        by_hand("whisk the eggs and sugar and fold all together", 8, 10, 13, tool="mixer", keeps="10 min in the room",
            uses=("eggs", "sugar", "flour")),
        chilled("chill the filled moulds", 30, 60, 90, keeps="1 day in the fridge"),
        in_oven(200, "bake the fondants", 11, 12, 14, shelf=12, tool="baking sheet", attended="2 min at the start, 3 "
            "min at the end", look="the top set, a soft dent to the finger", best="3 min", keeps="5 min hot",
            how="The heart is egg that has not set: at the eaters' risk, and nothing for who is pregnant, old, very "
            "young or ill. Baked 4 min longer it is a small cake."),
    ),
)

POSSET = Pattern(
    name="posset", course="sweet", words=listed("posset"), food="1/3 lemons (veg)",
    ingredients=a_head("90 ml double cream (dairy), 22 g sugar (baking)"),
    steps=(
        by_hand("press the juice out of the {it}", 6, 8, 11, keeps="4 h in the fridge", perishable=False,
            uses=("{it}",)),
        on_ring("boil the cream with the sugar", 8, 10, 12, tool="big pot", keeps="10 min in the room", uses=("cream",
            "sugar"), look="three minutes at a full bubble", how="A pot twice as big as the cream: it climbs. The "
            "juice goes in off the heat, and thickens it."),
        by_hand("pour the posset into glasses", 4, 5, 7, keeps="20 min in the room"),
        chilled("chill the possets until they set", 150, 180, 240, keeps="2 days in the fridge", look="set, with a "
            "tremble", cools="4 cm deep, glass"),
        by_hand("set out the possets", 3, 4, 6, best="20 min", keeps="40 min in the room"),
    ),
)

NEGRONI = Pattern(
    name="negroni", course="drink", words=listed("negroni, negronis, americano cocktail, boulevardier"),
    food="",
    ingredients=a_head("30 ml gin (drinks), 30 ml sweet red vermouth (drinks), 30 ml red bitter aperitif (drinks), 1/8 "
        "oranges (veg), 150 g ice (drinks)"),
    steps=(
        by_hand("cut the oranges and chill the glasses", 4, 5, 7, keeps="3 h in the fridge", perishable=False,
            uses=("oranges",)),
        by_hand("stir the drinks over ice and pour them", 8, 10, 14, best="5 min", keeps="10 min in the room",
            uses=("gin", "vermouth", "aperitif", "ice"), how="All of it is alcohol: short, one each, and something "
            "without any on the same tray."),
    ),
)

CHIPS = Pattern(
    name="chips", course="side", words=listed("chips, fries, french fries, frites, pommes frites, "
        "skinny fries, hand-cut chips"), food="250 g floury potatoes (veg)",
    ingredients=a_head("60 ml sunflower oil (store cupboard), to taste salt"),
    steps=(
        by_hand("cut the potatoes and rinse them cold", 14, 18, 24, keeps="4 h in the fridge", perishable=False,
            uses=("{it}",), how="Dried well before they meet hot fat, or it boils over."),
        on_ring("fry the chips soft in deep oil", 12, 15, 19, grows=True, tool="big pot",
            look="soft through, still pale", keeps="20 min hot", uses=("oil",), how="Oil at 140 °C and the "
            "pot a third full at most, in small goes, never left alone. If it burns: lid on, heat off, no water."),
        on_ring("fry the chips crisp in deep oil", 8, 10, 13, grows=True, tool="big pot", look="gold, and they rattle",
            best="6 min", keeps="15 min hot", uses=("salt",), how="The same oil at 185 °C; never left alone."),
    ),
)

FAMILY = (ONION_SOUP, BREAD_PUDDING, TABBOULEH, FONDANT, POSSET, NEGRONI, CHIPS)
