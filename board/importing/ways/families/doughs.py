"""Tarts, breads, cakes and biscuits. All figures: common practice, no source."""

# fmt: off
from board.importing.ways.pattern import (
    ENDS,
    THE_FOOD,
    Pattern,
    a_head,
    by_hand,
    chilled,
    in_oven,
    left,
    listed,
    on_ring,
)

TARTLETS = Pattern(
    name="tartlets", course="nibbles", words=listed(
        "tartlets, tartlet, mini quiches, mini tarts, small tarts, barquettes"), food="70 g onions (veg)",
    own={"onion": (35, 40, 50), "mushroom": (15, 18, 22), "leek": (18, 20, 25), "tomato": (20, 25, 30), "spinach": (8,
        10, 12)},
    ingredients=a_head("30 g plain flour (baking), 15 g butter (dairy), 1/3 eggs, baked through (dairy), 20 ml "
        "double cream (dairy), 1/4 tbsp olive oil (store cupboard), to taste salt"),
    steps=(
        by_hand("rub the pastry together", 10, 13, 17, keeps="15 min in the room", uses=("flour", "butter", "salt")),
        chilled("rest the pastry cold", 45, 60, 75, keeps="2 days in the fridge"),
        on_ring("cook the {it} down", 18, 22, 28, own=True, after="nothing", tool="frying pan",
            attended="5 min at the start, 1 min every 10 min, 2 min at the end", look="soft, no water left in the pan",
            keeps="20 min in the room", uses=("{it}", "oil")),
        left("cool the {it} in a flat dish", 20, 25, 30, cools="2 cm deep, metal, cold water",
            keeps="1 day in the fridge"),
        by_hand("line the tins and fill them", 18, 22, 28, after="rest the pastry cold, cool the {it} in a flat dish",
            keeps="6 h in the fridge", uses=("eggs", "cream")),
        in_oven(190, "bake the tartlets", 20, 22, 26, shelf=8, tool="baking sheet", cooks="eggs",
            look="set in the middle, edges brown", best="25 min", keeps="35 min in the room"),
    ),
)

QUICHE = Pattern(
    name="quiche", course="starter", words=listed("quiche, flan savoury, savoury tart, onion tart, leek tart, "
        "tomato tart, mushroom tart, spinach tart, cheese tart, asparagus tart, zwiebelkuchen, goat's cheese tart, "
        "goat cheese tart, vegetable tart, savory tart"), food="80 g leeks (veg)",
    own={"onion": (35, 40, 50), "mushroom": (15, 18, 22), "spinach": (8, 10, 12)},
    ingredients=a_head("35 g plain flour (baking), 18 g butter (dairy), 1/2 eggs (dairy), 40 ml double cream "
        "(dairy), 30 ml whole milk (dairy), 15 g cheese, grated (dairy), to taste salt, to taste nutmeg (store "
        "cupboard)"),
    steps=(
        by_hand("rub the pastry together", 10, 13, 17, keeps="15 min in the room", uses=("flour", "butter", "salt")),
        chilled("rest the pastry cold", 45, 60, 75, keeps="2 days in the fridge"),
        by_hand("roll out the pastry and line the tin", 12, 15, 20, keeps="1 day in the fridge"),
        in_oven(190, "blind-bake the case", 26, 30, 34, shelf=10, attended="3 min at the start, 4 min at the end",
            look="pale gold and dry", keeps="6 h in the room", perishable=False,
            how="Lined and weighted for 18 minutes, then bare until it is dry."),
        on_ring("soften the {it}", 15, 18, 24, own=True, after="nothing", tool="frying pan", cooks=THE_FOOD,
            look="soft, no water left in the pan", keeps="1 h in the room", uses=("{it}",)),
        by_hand("beat the eggs and cream and fill the case", 5, 6, 8, after="blind-bake the case, soften the {it}",
            keeps="10 min in the room", uses=("eggs", "cream", "milk", "cheese", "nutmeg")),
        in_oven(170, "bake the quiche", 30, 35, 40, shelf=10, cooks="eggs",
            look="set at the rim, a slight quiver in the middle", best="40 min", keeps="1 h in the room"),
    ),
)

FRUIT_TART = Pattern(
    name="fruit tart or pie", course="sweet", words=listed("apple pie, fruit tart, fruit pie, tarte tatin, apple "
        "tart, plum tart, pear tart, cherry pie, blueberry pie, peach pie, rhubarb pie, rhubarb tart, apricot tart, "
        "strudel, apple strudel, galette, bakewell tart, frangipane tart, linzer torte, pecan pie, pumpkin pie, "
        "treacle tart, mince pies, berry pie, strawberry rhubarb pie, sweet pie, turnovers, jalousie, fig tart"),
        of=frozenset({"other"}), food="110 g apples (veg)",
    ingredients=a_head("40 g plain flour (baking), 22 g butter (dairy), 15 g sugar (baking), 1/8 eggs, baked "
        "through (dairy), to taste salt"),
    steps=(
        by_hand("rub the pastry together", 10, 13, 17, keeps="15 min in the room", uses=("flour", "butter", "salt")),
        chilled("rest the pastry cold", 45, 60, 75, keeps="2 days in the fridge"),
        by_hand("cut the {it} and fill the pastry", 20, 25, 32, keeps="2 h in the fridge", uses=("{it}", "sugar",
            "eggs")),
        in_oven(190, "bake the pie", 42, 48, 55, shelf=8, tool="baking sheet",
            look="deep gold, juice bubbles at the edge", keeps="8 h in the room", perishable=False),
        by_hand("cut and plate the pie", 5, 7, 10, best="20 min", keeps="1 h in the room"),
    ),
)

FILLED_TART = Pattern(
    name="tart, blind-baked", course="sweet", words=listed("lemon tart, tarte au citron, chocolate tart, custard "
        "tart, sweet tart, tart, lemon pie, key lime pie, banoffee pie, cream pie, chess pie, egg custard tart"),
        food="50 g lemons (veg)",
    ingredients=a_head("35 g plain flour (baking), 20 g butter (dairy), 25 g sugar (baking), 5/8 eggs (dairy), 35 "
        "ml double cream (dairy), to taste salt"),
    steps=(
        by_hand("rub the pastry together", 10, 13, 17, keeps="15 min in the room", uses=("flour", "butter")),
        chilled("rest the pastry cold", 45, 60, 75, keeps="2 days in the fridge"),
        by_hand("roll out the pastry and line the tin", 12, 15, 20, keeps="1 day in the fridge"),
        in_oven(180, "blind-bake the case", 28, 32, 36, shelf=10, attended="3 min at the start, 4 min at the end",
            look="gold and dry all over", keeps="8 h in the room", perishable=False),
        by_hand("whisk the eggs, cream and sugar for the filling", 8, 10, 13, keeps="15 min in the room", uses=("{it}",
            "eggs", "cream", "sugar")),
        in_oven(150, "bake the filled tart", 30, 35, 42, shelf=10, cooks="eggs",
            look="set, a quiver in the middle the size of a coin", keeps="1 h in the room"),
        chilled("chill the tart", 60, 90, 120, cools="3 cm deep, metal", keeps="1 day in the fridge"),
        by_hand("cut and plate the tart", 5, 7, 10, best="20 min", keeps="45 min in the room"),
    ),
)

CRUMBLE = Pattern(
    name="crumble", course="sweet", words=listed("crumble, apple crisp, berry crisp, peach crisp, pear crisp, "
        "rhubarb crisp, cherry crisp, fruit crisp, plum crisp, cobbler, brown betty, streusel, buckle, grunt"),
        of=frozenset({"other"}), food="140 g apples (veg)",
    ingredients=a_head("25 g plain flour (baking), 18 g butter (dairy), 25 g sugar (baking), 12 g rolled oats "
        "(store cupboard)"),
    steps=(
        by_hand("rub the crumble together", 7, 9, 12, keeps="2 days in the fridge", perishable=False, uses=("flour",
            "butter", "sugar", "oats")),
        by_hand("cut the {it} into the dish", 12, 15, 20, after="nothing", keeps="4 h in the fridge", perishable=False,
            uses=("{it}",)),
        in_oven(180, "bake the crumble", 35, 40, 45, shelf=8,
            after="rub the crumble together, cut the {it} into the dish", look="gold, juice bubbles up at the rim",
            best="30 min", keeps="45 min hot"),
    ),
)

SPONGE = Pattern(
    name="cake", course="sweet", words=listed("cake, sponge, victoria sponge, gateau, gâteau, torte, torta, "
        "cupcakes, muffins, madeleines, loaf cake, carrot cake, chocolate cake, bundt, pound cake, genoise, coffee "
        "cake, angel food cake, lamington, swiss roll, roulade, yule log, bûche, lemon drizzle, gingerbread, "
        "parkin, upside-down cake, upside down cake, fruit cake, fruitcake, babka"), food="",
    ingredients=a_head("25 g plain flour (baking), 25 g butter (dairy), 25 g sugar (baking), 1/2 eggs, baked "
        "through (dairy), 1 g baking powder (baking)"),
    steps=(
        by_hand("mix the cake", 14, 18, 24, keeps="10 min in the room", tool="mixer", uses=("flour", "butter", "sugar",
            "eggs", "baking powder"), how="Everything at the warmth of the room; butter and sugar first, then eggs "
            "one by one, flour last."),
        in_oven(170, "bake the cake", 30, 35, 42, shelf=12, attended=ENDS, cooks="eggs",
            look="springs back, a skewer comes out dry", keeps="15 min in the room"),
        left("cool the cake", 60, 75, 90, keeps="2 days in the room", perishable=False),
        by_hand("finish and cut the cake", 10, 13, 18, best="1 h", keeps="3 h in the room", perishable=False),
    ),
)

BROWNIES = Pattern(
    name="brownies", course="sweet", words=listed("brownies, brownie, blondies, flourless chocolate cake, chocolate "
        "torte"), food="",
    ingredients=a_head("25 g dark chocolate (baking), 22 g butter (dairy), 25 g sugar (baking), 1/3 eggs, baked "
        "through (dairy), 12 g plain flour (baking)"),
    steps=(
        on_ring("melt the chocolate and butter", 8, 10, 13, tool="small pot", keeps="30 min in the room",
            perishable=False, uses=("chocolate", "butter")),
        by_hand("stir in the eggs, sugar and flour", 7, 9, 12, keeps="20 min in the room", uses=("eggs", "sugar",
            "flour")),
        in_oven(170, "bake the brownies", 25, 28, 33, shelf=16, attended=ENDS, cooks="eggs",
            look="a crust on top, the middle just set", keeps="2 days in the room", perishable=False),
        by_hand("cut the brownies", 4, 5, 7, best="2 h", keeps="6 h in the room", perishable=False),
    ),
)

BISCUITS = Pattern(
    name="biscuits", course="sweet", words=listed("biscuits, biscuit, cookies, cookie, shortbread, tuiles, "
        "macaroons, amaretti, biscotti, cantuccini, florentines, langues de chat, snickerdoodles, sablés, sables, "
        "flapjacks, brandy snaps, macarons"), food="",
    ingredients=a_head("25 g plain flour (baking), 17 g butter (dairy), 10 g sugar (baking), to taste salt"),
    steps=(
        by_hand("mix the biscuit dough", 10, 13, 17, keeps="15 min in the room", tool="mixer", uses=("flour", "butter",
            "sugar", "salt")),
        chilled("rest the dough cold", 30, 45, 60, keeps="2 days in the fridge"),
        by_hand("roll and cut the biscuits", 14, 18, 24, keeps="2 h in the fridge"),
        in_oven(170, "bake the biscuits", 14, 16, 19, shelf=8, tool="baking sheet",
            attended="2 min at the start, 1 min every 6 min, 2 min at the end", look="pale gold at the rim",
            keeps="3 days in the room", perishable=False),
    ),
)

MERINGUES = Pattern(
    name="meringues", course="sweet", words=listed("meringue, meringues, pavlova, pav, eton mess, vacherin, dacquoise"),
        food="",
    ingredients=a_head("1/2 egg whites (dairy), 28 g sugar (baking), 30 ml double cream (dairy), 1/32 tbsp white "
        "vinegar (store cupboard)"),
    steps=(
        by_hand("whisk the egg whites and sugar stiff", 12, 15, 18, tool="mixer", keeps="5 min in the room", uses=(
            "egg whites", "sugar", "vinegar"), leaves="1/2 egg yolks", how="A bowl with no trace of fat; the sugar "
            "a spoon at a time, until it stands."),
        in_oven(110, "bake the meringues", 80, 90, 105, shelf=10, tool="baking sheet", attended="5 min at the start",
            look="they lift off the paper", keeps="3 days in the room", perishable=False, how="Leave them in the "
            "switched-off oven with the door ajar if it is free; then in a tin, away from damp."),
        by_hand("whip the cream and plate the meringues", 10, 12, 16, best="15 min", keeps="25 min in the room", uses=(
            "cream",)),
    ),
)

# By weight two parts water and two of egg to one of butter and one of flour; common practice, no source.
CHEESE_CHOUX = Pattern(
    name="choux with cheese", course="nibbles", words=listed("gougères, gougeres, cheese puffs, cheese choux"),
    food="10 g gruyère, grated (dairy)",
    ingredients=a_head("8 g butter (dairy), 8 g plain flour (baking), 1/4 eggs, baked through (dairy)"),
    steps=(
        on_ring("cook the choux paste", 10, 12, 15, tool="saucepan", keeps="15 min in the room", uses=(
            "butter", "flour")),
        by_hand("beat in the eggs and cheese and pipe it", 12, 15, 20, keeps="15 min in the room", uses=(
            "eggs", "{it}")),
        in_oven(200, "bake the choux", 22, 26, 30, shelf=10, tool="baking sheet", look="deep gold and firm at the "
            "sides, else they fall", perishable=False, best="40 min", keeps="4 h in the room"),
    ),
)

SWEET_CHOUX = Pattern(
    name="choux with cream", course="sweet", words=listed("profiteroles, profiterole, éclairs, eclairs, éclair, "
        "eclair, cream puffs, choux buns, choux, croquembouche, paris-brest, paris brest, religieuses"), food="",
    ingredients=a_head("10 g butter (dairy), 10 g plain flour (baking), 3/8 eggs, baked through (dairy), "
        "40 ml double cream (dairy), 20 g dark chocolate (baking)"),
    steps=(
        on_ring("cook the choux paste", 10, 12, 15, tool="saucepan", keeps="15 min in the room", uses=(
            "butter", "flour")),
        by_hand("beat in the eggs and pipe it", 12, 15, 20, keeps="15 min in the room", uses=("eggs",)),
        in_oven(200, "bake the choux", 24, 28, 34, shelf=10, tool="baking sheet", look="deep gold and firm at the "
            "sides, else they fall", perishable=False, keeps="10 h in the room", how="A hole in each for the steam; "
            "let them dry a few minutes in the switched-off oven."),
        by_hand("whip the cream and fill the choux", 12, 15, 20, best="1 h", keeps="2 h in the fridge", uses=(
            "cream",)),
        on_ring("melt the chocolate over the choux", 6, 8, 10, tool="saucepan", best="15 min", keeps="25 min in the "
            "room", uses=("chocolate",)),
    ),
)

YEAST_BREAD = Pattern(
    name="yeast bread", course="side", words=listed("bread, loaf, rolls, bread rolls, focaccia, sourdough, challah, "
        "brioche, baguette, ciabatta, buns, dinner rolls, parker house rolls, rye bread, fougasse, pull-apart "
        "bread, garlic knots, cinnamon rolls, cinnamon buns, hot cross buns, doughnuts, donuts, bagels"), food="",
    ingredients=a_head("70 g strong white flour (baking), 1 g dried yeast (baking), 1/6 tbsp olive oil (store "
        "cupboard), 1 g salt"),
    steps=(
        by_hand("mix and knead the dough", 14, 18, 24, tool="mixer", keeps="10 min in the room", uses=("flour",
            "yeast", "oil", "salt")),
        left("let the dough rise", 75, 90, 120, look="twice its size", keeps="12 h in the fridge"),
        by_hand("shape the dough", 10, 12, 16, keeps="10 min in the room"),
        left("let the loaves rise", 35, 45, 60, look="a finger leaves a dent that comes back slowly",
            keeps="20 min in the room"),
        in_oven(220, "bake the bread", 25, 30, 36, shelf=10, tool="baking sheet", attended=ENDS,
            look="brown, hollow when knocked below", keeps="8 h in the room", perishable=False),
        by_hand("slice the bread", 4, 5, 7, best="45 min", keeps="2 h in the room", perishable=False),
    ),
)

BOUGHT_BREAD = Pattern(
    name="bread as bought", course="side", words=listed("bread and butter, bread basket, crusty bread, warm bread, "
        "bought bread, bread with butter"), food="",
    ingredients=a_head("70 g bread (bakery), 12 g butter (dairy)"),
    steps=(by_hand("slice the bread and set out the butter", 5, 6, 8, best="30 min", keeps="1 h 30 in the room", uses=(
        "bread", "butter")),),
)

QUICK_BREAD = Pattern(
    name="quick bread", course="side", words=listed("soda bread, scones, scone, cornbread, corn bread, buttermilk "
        "biscuits, banana bread, quick bread, savoury muffins, damper, cheese scones, drop scones, irish soda "
        "bread, zucchini bread"), food="",
    ingredients=a_head("60 g plain flour (baking), 12 g butter (dairy), 40 ml buttermilk (dairy), 2 g baking powder "
        "(baking), to taste salt"),
    steps=(
        by_hand("mix the dough", 8, 10, 13, keeps="10 min in the room", uses=("flour", "butter", "buttermilk",
            "baking powder", "salt"), how="Quickly and no longer than it needs; straight into the oven."),
        in_oven(210, "bake the quick bread", 18, 22, 30, shelf=10, tool="baking sheet", attended=ENDS,
            look="brown, hollow when knocked below", best="1 h", keeps="6 h in the room", perishable=False),
    ),
)

FLATBREAD = Pattern(
    name="flatbread", course="side", words=listed("flatbread, flatbreads, naan, chapati, chapatis, roti, pita, "
        "pitta, tortillas, lavash, paratha, piadina, farinata, socca, injera"), food="",
    ingredients=a_head("60 g plain flour (baking), 25 g plain yoghurt (dairy), 1/6 tbsp olive oil (store cupboard), "
        "to taste salt"),
    steps=(
        by_hand("mix and knead the dough", 8, 10, 14, keeps="10 min in the room", uses=("flour", "yoghurt", "oil",
            "salt")),
        left("rest the dough", 25, 30, 45, keeps="6 h in the fridge"),
        on_ring("bake the flatbreads in a dry pan", 16, 20, 26, grows=True, rings=2, tool="frying pan",
            look="blisters, dark spots on both sides", best="12 min", keeps="40 min hot"),
    ),
)

PANCAKES = Pattern(
    name="pancakes", course="sweet", words=listed("pancakes, pancake, crêpes, crepes, crepe, crêpe, waffles, crêpes "
        "suzette, crepes suzette, kaiserschmarrn, palatschinken, blintzes"), food="",
    ingredients=a_head("30 g plain flour (baking), 1/2 eggs (dairy), 75 ml whole milk (dairy), 8 g butter (dairy), "
        "8 g sugar (baking)"),
    steps=(
        by_hand("whisk the batter", 6, 8, 10, keeps="12 h in the fridge", uses=("flour", "eggs", "milk")),
        on_ring("fry the pancakes", 20, 25, 32, grows=True, rings=2, tool="frying pan", cooks="eggs",
            look="brown below, no wet batter on top", best="10 min", keeps="40 min hot", uses=("butter", "sugar")),
    ),
)

STEAMED_PUDDING = Pattern(
    name="pudding, baked or steamed", course="sweet", words=listed("sticky toffee pudding, steamed pudding, sponge "
        "pudding, treacle sponge, spotted dick, christmas pudding, plum pudding, jam sponge, summer pudding baked, "
        "malva pudding, self-saucing pudding, sussex pond pudding"), food="",
    ingredients=a_head("25 g plain flour (baking), 18 g butter (dairy), 25 g brown sugar (baking), 1/3 eggs, baked "
        "through (dairy), 20 g dates (store cupboard), 30 ml double cream (dairy), 1 g baking powder (baking)"),
    steps=(
        by_hand("mix the pudding", 14, 18, 24, keeps="15 min in the room", uses=("flour", "butter", "sugar", "eggs",
            "dates", "baking powder")),
        in_oven(170, "bake the sponge pudding", 40, 45, 52, shelf=10, attended=ENDS, cooks="eggs",
            look="springs back, a skewer comes out dry", best="30 min", keeps="45 min hot"),
        on_ring("boil the cream for the sauce", 8, 10, 13, after="nothing", tool="small pot", best="20 min",
            keeps="30 min hot", uses=("cream",)),
    ),
)

FAMILY = (TARTLETS, QUICHE, FRUIT_TART, FILLED_TART, CRUMBLE, STEAMED_PUDDING, BROWNIES, SPONGE, BISCUITS, MERINGUES,
    CHEESE_CHOUX, SWEET_CHOUX, PANCAKES, YEAST_BREAD, BOUGHT_BREAD, QUICK_BREAD, FLATBREAD)
