"""Nibbles, soups, eggs and pasta. All figures: common practice, no source."""

# fmt: off
from fractions import Fraction

from board.importing.ways.pattern import (
    ENDS,
    THE_FOOD,
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

OLIVES = Pattern(
    name="marinated", course="nibbles", done=listed("marinated, dressed"), words=listed(
        "marinated olives, marinated feta, antipasti, marinated peppers"), of=frozenset({"other"}),
        food="35 g olives (store cupboard)",
    ingredients=a_head("1/4 tbsp olive oil (store cupboard), 1/8 lemons (veg), 1/8 sprigs thyme (veg), 0.5 g chilli "
        "flakes (store cupboard)"),
    steps=(
        by_hand("toss the {it} with lemon and oil", 6, 8, 10, keeps="4 h in the room", uses=("{it}", "oil", "lemons",
            "thyme", "chilli"), perishable=None, how="Drain them first. If they stand longer than the evening, they "
            "go into the fridge and come out an hour before."),
        by_hand("put the {it} in bowls", 2, 3, 4, best="2 h", keeps="3 h in the room"),
    ),
)

SET_OUT = Pattern(
    name="set out as bought", bought=True, course="nibbles", words=listed("crisps, potato chips, tortilla chips, "
        "mixed nuts, salted nuts, pretzels, breadsticks, grissini, crackers, trail mix, popcorn, crudités, "
        "crudites, charcuterie, cold cuts, cured meats, salami, prosciutto, serrano ham, parma "
        "ham, oatcakes, water biscuits, quince paste, membrillo, fruit cheese, cornichons, chocolates, petits "
        "fours, mints, turkish delight, fruit bowl"), alone=listed("olive, nut, almond, "
        "cashew, radish, ham, grapes, date, chocolate, fresh fruit"), food="35 g olives (store cupboard)",
    steps=(
        by_hand("put the {it} in bowls", 4, 5, 7, best="2 h", keeps="2 h in the room", uses=("{it}",)),
    ),
)

ROASTED_NUTS = Pattern(
    name="roasted nuts", course="nibbles", words=listed("roasted nuts, spiced nuts, candied nuts, toasted nuts, "
        "roast almonds, roasted almonds, spiced almonds, candied pecans, spiced cashews, roasted chickpeas, glazed "
        "nuts, smoked almonds, salted almonds"), food="30 g almonds (store cupboard)",
    ingredients=a_head("1/8 tbsp olive oil (store cupboard), 0.5 g smoked paprika (store cupboard), to taste salt"),
    steps=(
        in_oven(160, "roast the {it}", 14, 16, 20, shelf=16, tool="baking sheet",
            attended="3 min at the start, 1 min every 6 min, 2 min at the end",
            look="a shade darker, they smell of toast", keeps="3 days in the room", uses=("{it}", "oil", "paprika",
            "salt")),
        by_hand("put the {it} in bowls", 2, 3, 4, best="3 h", keeps="4 h in the room"),
    ),
)

DIP = Pattern(
    name="dip", course="nibbles", words=listed("dip, hummus, houmous, guacamole, guac, baba ganoush, baba ghanoush, "
        "tzatziki, tapenade, taramasalata, muhammara, labneh, salsa, artichoke dip, spinach dip, whipped feta, "
        "spread, rillettes of mackerel, mackerel pâté, smoked mackerel pâté"),
        food="50 g chickpeas, tinned (store cupboard)",
    ingredients=a_head("1/3 tbsp olive oil (store cupboard), 1/8 lemons (veg), 1/8 cloves garlic (veg), 40 g "
        "flatbread (bakery), to taste salt"),
    steps=(
        by_hand("blend the {it} for the dip", 10, 12, 16, tool="stick blender", keeps="1 day in the fridge", uses=(
            "{it}", "oil", "lemons", "garlic", "salt"), how="What is not eaten raw, as beetroot, beans and "
            "aubergine, is cooked and cold, or bought so."),
        by_hand("put the dip in bowls and cut the bread", 5, 6, 8, best="45 min", keeps="1 h in the room", uses=(
            "flatbread", "{beside}")),
    ),
)

TOASTS = Pattern(
    name="topped toasts", course="nibbles", words=listed("crostini, bruschetta, toasts, toast, canapés, canapes, "
        "tartines, rarebit, smørrebrød, crispbreads, garlic bread, bread and dips, tea sandwiches, sandwiches, "
        "gougeres on toast"), food="40 g tomatoes (veg)",
    ingredients=a_head("40 g bread (bakery), 1/3 tbsp olive oil (store cupboard), 1/8 cloves garlic (veg), 1/8 "
        "bunches basil (veg), to taste salt"),
    steps=(
        by_hand("chop the {it} for the topping", 10, 12, 16, keeps="6 h in the fridge", uses=("{it}", "basil", "salt")),
        in_oven(200, "toast the bread slices", 7, 8, 10, shelf=12, tool="baking sheet", moist=True,
            attended="3 min at the start, 2 min at the end", after="nothing", look="gold at the rim",
            keeps="4 h in the room", perishable=False, uses=("bread", "oil", "garlic")),
        by_hand("top the toasts", 10, 13, 18, after="chop the {it} for the topping, toast the bread slices",
            best="15 min", keeps="30 min in the room"),
    ),
)

CHEESE_BISCUITS = Pattern(
    name="savoury bakes", course="nibbles", words=listed("cheese straws, cheese "
        "twists, cheese biscuits, savoury biscuits, sausage rolls, vol-au-vents, palmiers, parmesan crisps, cheese "
        "crisps, empanadas, pastry twists, pigs in blankets, devils on horseback, puff pastry twists"),
        food="25 g cheese, grated (dairy)",
    ingredients=a_head("30 g puff pastry (chilled), 1/10 eggs (dairy)"),
    steps=(
        by_hand("roll out, fill and cut the pastry", 18, 22, 28, keeps="1 day in the fridge", uses=("{it}", "pastry",
            "eggs")),
        in_oven(200, "bake the pastry pieces", 20, 22, 26, shelf=10, tool="baking sheet", cooks=THE_FOOD,
            look="risen, deep gold, crisp", best="40 min", keeps="1 h 30 in the room"),
    ),
)

BAKED_CHEESE = Pattern(
    name="baked cheese", course="starter", words=listed("baked camembert, baked brie, baked feta, baked goat cheese, "
        "baked goats' cheese, baked vacherin, baked ricotta"), food="60 g camembert (dairy)",
    ingredients=a_head("1/10 sprigs thyme (veg), 1/8 tbsp olive oil (store cupboard)"),
    steps=(
        in_oven(180, "bake the {it}", 15, 18, 22, shelf=10, tool="baking dish",
            attended="4 min at the start, 2 min at the end", look="soft to the middle when it is pressed",
            best="8 min", keeps="15 min hot", uses=("{it}", "thyme", "oil"),
                how="Scored and oiled, in a dish that just holds it: it runs."),
    ),
)

HOT_SOUP = Pattern(
    name="soup", course="starter", words=listed("soup, velouté, veloute, chowder, bisque, minestrone, borscht, "
        "borsch, potage, crème of, cream of, cullen skink, vichyssoise hot, goulash soup, mulligatawny, ramen, pho, "
        "laksa"), food="140 g vegetables (veg)",
    own={"tomato": (25, 30, 35), "pea": (12, 15, 18), "lentil": (35, 40, 45), "chicken": (45, 55, 65), "fish": (15, 18,
        22), "beef": (100, 120, 140), "onion": (50, 60, 75), "mushroom": (22, 25, 30), "bean": (35, 40, 50),
        "chestnut": (25, 30, 35)},
    ingredients=a_head("1/6 onions (veg), 60 g potatoes (veg), 5 g butter (dairy), 200 ml vegetable stock (store "
        "cupboard), to taste salt, 250 g ice (drinks)"),
    steps=(
        by_hand("cut the {it} and onions", 10, 13, 18, keeps="1 day in the fridge", perishable=None, uses=("{it}",
            "{beside}")),
        on_ring("simmer the soup", 28, 32, 38, own=True, tool="big pot",
            attended="6 min at the start, 1 min every 15 min, 1 min at the end", cooks=THE_FOOD,
            look="a spoon crushes what is in it", keeps="30 min hot", uses=("onions", "potatoes", "butter", "stock",
            "salt"), how="Soften the onions in the butter first, with a lid on; then all of it with the stock."),
        by_hand("blend the soup", 5, 7, 9, tool="stick blender", keeps="20 min hot", how="Never a full jug, the lid "
            "held with a cloth: hot soup jumps. Leave it as it is if it is a soup of pieces."),
        cooled("soup"),
        reheated("soup", 12, 15, 20, best="15 min", keeps="40 min on the stovetop, 1 ring", tool="big pot",
            look="it steams all over, thin it now if need be"),
    ),
)

COLD_SOUP = Pattern(
    name="cold soup", course="starter", words=listed("cold soup, chilled soup, gazpacho, salmorejo, ajo blanco, "
        "vichyssoise, iced soup"), food="180 g tomatoes (veg)",
    ingredients=a_head("40 g peppers (veg), 1/8 cloves garlic (veg), 1/2 tbsp olive oil (store cupboard), 1/6 tbsp "
        "sherry vinegar (store cupboard), 15 g bread (bakery), to taste salt"),
    steps=(
        by_hand("blend the {it} for the soup", 14, 18, 24, tool="stick blender", keeps="15 min in the room", uses=(
            "{it}", "peppers", "garlic", "oil", "vinegar", "bread", "salt")),
        chilled("chill the soup", 120, 180, 240, keeps="1 day in the fridge"),
        by_hand("ladle out the soup", 3, 4, 6, best="8 min", keeps="20 min in the room",
            how="Cold dulls salt: taste it again now."),
    ),
)

BROTH = Pattern(
    name="broth or stock", course="starter", words=listed("broth, consommé, consomme, bouillon, stock, bone broth, "
        "dashi, jus, tea of mushrooms, wonton soup, chicken noodle soup, chicken soup"),
        food="150 g chicken wings (butcher)",
    own={"chicken": (120, 150, 180), "beef": (210, 240, 270), "vegetable": (45, 50, 60), "fish": (25, 30, 35),
        "mushroom": (45, 50, 60)},
    ingredients=a_head("1/6 onions (veg), 1/4 carrots (veg), 1/6 sticks celery (veg), 1/8 bay leaves (store "
        "cupboard), to taste salt, 250 g ice (drinks)"),
    steps=(
        on_ring("simmer the {it} for the broth", 120, 150, 180, own=True, tool="big pot",
            attended="8 min at the start, 1 min every 30 min, 2 min at the end", cooks=THE_FOOD,
            look="clear, and it tastes of something", keeps="30 min hot", uses=("{it}", "onions", "carrots", "celery",
            "bay"), how="From cold water; skimmed as it comes up, never stirred, never boiling."),
        by_hand("strain the broth", 5, 6, 8, keeps="15 min hot"),
        cooled("broth", 5, "3 days"),
        reheated("broth", 12, 15, 20, best="15 min", uses=("salt",), tool="big pot",
            how="Lift off the fat, bring it up to a simmer, and salt it only now."),
    ),
)

SOUFFLE = Pattern(
    name="soufflé", course="starter", words=listed("soufflé, souffle, soufflés, twice-baked soufflé"),
        food="30 g cheese, grated (dairy)",
    ingredients=a_head("3/4 eggs (dairy), 10 g plain flour (baking), 12 g butter (dairy), 55 ml whole milk (dairy), "
        "to taste salt"),
    steps=(
        on_ring("cook the base of flour, butter and milk", 12, 14, 17, tool="small pot", keeps="2 h in the fridge",
            uses=("flour", "butter", "milk"), look="thick and smooth, it leaves the side of the pot"),
        by_hand("stir the yolks and {it} into the base", 5, 6, 8, keeps="2 h in the fridge", uses=("{it}", "eggs"),
            how="Whites in a clean bowl of their own."),
        by_hand("whisk the egg whites and fold them in", 8, 10, 13, keeps="10 min in the room", uses=("salt",),
            tool="mixer"),
        in_oven(190, "bake the soufflé", 14, 16, 19, shelf=8, attended="2 min at the start, 3 min at the end",
            cooks="eggs", look="risen by half, it shakes a little in the middle", best="2 min", keeps="3 min hot",
            how="Guests wait for it, not it for them. The door stays shut."),
    ),
)

OMELETTE = Pattern(
    name="omelette", course="main", words=listed("omelette, omelet, frittata, tortilla, spanish omelette, tortilla "
        "española, egg bake, shakshuka, scrambled eggs, strata"), food="80 g vegetables (veg)",
    ingredients=a_head("2 eggs (dairy), 1/2 tbsp olive oil (store cupboard), 1/6 onions (veg), to taste salt"),
    steps=(
        by_hand("slice the {it} and onions", 8, 10, 14, keeps="8 h in the fridge", perishable=False),
        on_ring("soften the {it} and onions", 14, 17, 22, tool="frying pan", keeps="45 min in the room", uses=("{it}",
            "onions", "oil")),
        on_ring("cook the eggs through", 12, 15, 19, grows=True, rings=2, tool="frying pan", cooks="eggs",
            look="set all the way through", best="20 min", keeps="30 min hot", uses=("eggs", "salt")),
    ),
)

EGGS = Pattern(
    name="boiled eggs", course="starter", words=listed("deviled eggs, devilled eggs, egg mayonnaise, oeufs "
        "mayonnaise, stuffed eggs, scotch eggs, eggs mimosa, hard-boiled eggs, boiled eggs"), alone=listed("egg"),
        food="1 eggs (dairy)",
    ingredients=a_head("1/2 tbsp mayonnaise, from a jar (store cupboard), 1/16 tbsp mustard (store cupboard), 1/8 "
        "bunches chives (veg), to taste salt"),
    steps=(
        on_ring("hard-boil the eggs", 16, 18, 20, tool="big pot", attended=ENDS, cooks="eggs",
            look="one cut open is set to the middle", keeps="1 h in the room", uses=("{it}",)),
        left("cool the eggs in cold water and peel them", 25, 30, 40, attended="2 min at the start, 10 min at the end",
            cools="4 cm deep, metal, cold water", keeps="2 days in the fridge"),
        by_hand("fill or top the eggs", 12, 15, 20, best="30 min", keeps="1 h in the fridge", uses=("mayonnaise",
            "mustard", "chives", "salt")),
    ),
)

POACHED_EGGS = Pattern(
    name="poached or fried eggs", course="side", words=listed("poached eggs, fried eggs"), food="1 eggs (dairy)",
    ingredients=a_head("1/4 tbsp butter (dairy), to taste salt"),
    steps=(
        on_ring("cook the {it}", 8, 10, 14, tool="big pot", cooks="eggs", look="white and yolk are set", best="8 min",
            keeps="15 min hot", uses=("{it}", "butter", "salt"), how="In goes of four, each broken into a cup first. "
            "A soft yolk is at the eater's risk."),
    ),
)

PASTA = Pattern(
    name="pasta", course="main", share=Fraction(1, 2), words=listed("pasta, spaghetti, linguine, tagliatelle, "
        "fettuccine, penne, rigatoni, orecchiette, pappardelle, macaroni, noodles, carbonara, cacio e pepe, "
        "ravioli, tortellini, orzo, soba, udon, bolognese, spaghetti bolognese, puttanesca, amatriciana, arrabbiata"),
        food="120 g tomatoes, tinned (store cupboard)",
    own={"minced beef": (60, 70, 85), "beef": (90, 105, 125), "bolognese": (75, 90, 110), "sausage": (30, 35, 40),
        "mushroom": (15, 18, 22), "clam": (8, 10, 12), "prawn": (8, 10, 12), "shrimp": (8, 10, 12)},
    ingredients=a_head("100 g dried pasta (store cupboard), 1/6 onions (veg), 1/4 cloves garlic (veg), 1/2 tbsp "
        "olive oil (store cupboard), 12 g parmesan (dairy), to taste salt"),
    steps=(
        on_ring("simmer the sauce with the {it}", 25, 30, 40, own=True, tool="medium pot",
            attended="8 min at the start, 1 min every 10 min, 1 min at the end", cooks=THE_FOOD,
            look="thick enough to coat", keeps="45 min on the stovetop, 1 ring", uses=("{it}", "onions", "garlic",
            "oil")),
        on_ring("boil the pasta", 18, 21, 26, tool="big pot", after="nothing",
            attended="2 min at the start, 5 min at the end", look="a white dot in the middle, no more", best="3 min",
            keeps="4 min hot", uses=("pasta", "salt"), how="A big pot at a full boil; keep a cup of the water. The "
            "minutes count the water coming to the boil."),
        on_ring("toss the pasta in the sauce", 3, 4, 5, tool="big pot",
            after="simmer the sauce with the {it}, boil the pasta", best="4 min", keeps="8 min hot", uses=(
            "parmesan",)),
    ),
)

BAKED_PASTA = Pattern(
    name="baked pasta", course="main", words=listed("lasagne, lasagna, lasagnas, cannelloni, baked ziti, moussaka, "
        "pastitsio, parmigiana, eggplant parmesan, aubergine parmigiana, baked pasta, enchiladas, casserole bake"),
        food="120 g minced beef (butcher)",
    own={"vegetable": (30, 35, 40), "spinach": (12, 15, 18), "aubergine": (35, 40, 45), "eggplant": (35, 40, 45),
        "cheese": (10, 12, 15), "mushroom": (20, 25, 30)},
    ingredients=a_head("60 g lasagne sheets (store cupboard), 100 g tinned tomatoes (store cupboard), 1/4 onions "
        "(veg), 90 ml whole milk (dairy), 9 g butter (dairy), 9 g plain flour (baking), 20 g parmesan (dairy), to "
        "taste salt"),
    steps=(
        on_ring("simmer the {it} with the tomatoes", 55, 65, 80, own=True, tool="big pot",
            attended="12 min at the start, 1 min every 15 min, 2 min at the end", cooks=THE_FOOD,
            look="thick, no water at the edge", keeps="30 min hot", uses=("{it}", "tomatoes", "onions")),
        on_ring("cook the white sauce", 12, 14, 17, after="nothing", tool="medium pot", keeps="30 min hot",
            look="coats a spoon, no taste of flour", uses=("milk", "butter", "flour")),
        by_hand("layer the sheets, filling and sauce", 9, 12, 16,
            after="simmer the {it} with the tomatoes, cook the white sauce", keeps="20 min in the room", uses=("sheets",
            "parmesan", "salt")),
        in_oven(180, "bake the layers", 45, 50, 60, shelf=8, cooks="casserole",
            look="brown, bubbling in the middle as well", best="25 min", keeps="40 min hot",
            how="Let it stand ten minutes, or it runs when cut."),
    ),
)

MAC_CHEESE = Pattern(
    name="macaroni cheese", course="main", words=listed("mac and cheese, mac & cheese, macaroni cheese, macaroni "
        "and cheese, pasta bake, pasta al forno, tuna casserole, tuna noodle casserole"),
    ingredients=a_head("80 g dried pasta (store cupboard), 120 ml whole milk (dairy), 10 g butter (dairy), 10 g "
        "plain flour (baking), 40 g cheese, grated (dairy), to taste nutmeg (store cupboard), to taste salt"),
    steps=(
        on_ring("boil the pasta", 18, 20, 24, tool="big pot", attended="2 min at the start, 4 min at the end",
            keeps="30 min in the room", look="a white dot in the middle, no more", uses=("pasta", "salt")),
        on_ring("cook the white sauce and melt the cheese in it", 14, 17, 21, after="nothing", tool="medium pot",
            keeps="30 min hot", look="coats a spoon", uses=("milk", "butter", "flour", "cheese", "nutmeg")),
        by_hand("turn the pasta in the sauce", 5, 6, 8,
            after="boil the pasta, cook the white sauce and melt the cheese in it", keeps="20 min in the room"),
        in_oven(200, "bake the pasta", 22, 25, 30, shelf=8, until="74 C", look="brown, bubbling at the rim",
            best="15 min", keeps="30 min hot"),
    ),
)

PIZZA = Pattern(
    name="pizza", course="main", words=listed("pizza, pizzas, pissaladière, pissaladiere, calzone, flammkuchen, "
        "tarte flambée, pizzette"), food="60 g mozzarella (dairy)",
    ingredients=a_head("110 g strong white flour (baking), 1 g dried yeast (baking), 60 g tinned tomatoes (store "
        "cupboard), 1/2 tbsp olive oil (store cupboard), to taste salt"),
    steps=(
        by_hand("mix and knead the dough", 14, 18, 24, keeps="10 min in the room", tool="mixer", uses=("flour",
            "yeast", "oil", "salt")),
        left("let the dough rise", 90, 105, 150, keeps="1 day in the fridge", look="twice its size"),
        by_hand("stretch the pizzas and top them with the {it}", 14, 18, 25, keeps="15 min in the room", uses=("{it}",
            "tomatoes")),
        in_oven(240, "bake the pizzas", 11, 13, 16, grows=True, shelf=6, tool="baking sheet",
            attended="2 min at the start, 1 min every 5 min, 2 min at the end", cooks=THE_FOOD,
            look="rim brown, bottom stiff", best="5 min", keeps="10 min hot"),
    ),
)

TACOS = Pattern(
    name="filled at the table", course="main", words=listed("tacos, taco, burritos, wraps, raclette, fondue, "
        "fajita, lettuce cups, summer rolls, gyros"), food="130 g minced beef (butcher)",
    ingredients=a_head("3 tortillas (bakery), 40 g tomatoes (veg), 1/4 onions (veg), 20 g lettuce (veg), 20 g "
        "cheese, grated (dairy), 1/3 tbsp sunflower oil (store cupboard)"),
    steps=(
        by_hand("chop the fillings into bowls", 14, 18, 24, keeps="4 h in the fridge", uses=("tomatoes", "lettuce",
            "cheese")),
        on_ring("cook the {it} through", 14, 17, 21, after="nothing", tool="frying pan", cooks=THE_FOOD,
            look="brown, no water in the pan", best="15 min", keeps="40 min hot", uses=("{it}", "onions", "oil")),
        on_ring("warm the tortillas", 6, 8, 11, grows=True,
            after="chop the fillings into bowls, cook the {it} through", tool="frying pan", best="10 min",
            keeps="20 min hot", uses=("tortillas",)),
    ),
)

FAMILY = (OLIVES, SET_OUT, ROASTED_NUTS, DIP, TOASTS, CHEESE_BISCUITS, BAKED_CHEESE, HOT_SOUP, COLD_SOUP, BROTH,
    SOUFFLE, OMELETTE, EGGS, POACHED_EGGS, PASTA, BAKED_PASTA, MAC_CHEESE, PIZZA, TACOS)
