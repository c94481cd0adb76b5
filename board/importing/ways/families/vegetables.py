"""Vegetables, potatoes, grains and pulses. All figures: common practice, no source."""

# fmt: off
from board.importing.ways.pattern import (
    SIMMERS,
    THE_FOOD,
    Pattern,
    a_head,
    by_hand,
    in_oven,
    left,
    listed,
    on_ring,
)

PLANTS = frozenset({"other"})

TRAY = Pattern(
    name="roast vegetables", course="side", done=listed("roast, roasted, roasting, baked, charred"), words=listed(
        "tray of vegetables, traybake, tray bake, roast roots, ratatouille"), alone=listed("parsnip, beetroot, "
        "beet, butternut squash, squash, pumpkin, cauliflower, sweet potato"),
    of=PLANTS, food="180 g mixed roots (veg)",
    own={"tomato": (25, 30, 40), "cherry tomato": (15, 18, 22), "pepper": (30, 35, 40), "asparagus": (12, 15, 18),
        "mushroom": (20, 25, 30), "cauliflower": (28, 32, 38), "broccoli": (15, 18, 22), "beetroot": (50, 60, 75),
        "beet": (50, 60, 75), "onion": (40, 45, 55), "garlic": (40, 45, 55), "aubergine": (35, 40, 45), "eggplant": (35,
        40, 45), "courgette": (20, 25, 30), "zucchini": (20, 25, 30), "brussels sprout": (22, 25, 30), "apple": (30, 35,
        45), "peach": (20, 25, 30), "plum": (20, 25, 30), "fig": (12, 15, 18)},
    ingredients=a_head("1/2 tbsp olive oil (store cupboard), 1/8 bunches thyme (veg), to taste salt"),
    steps=(
        by_hand("trim and cut the {it}", 14, 18, 24, keeps="1 day in the fridge", perishable=False, uses=("{it}",)),
        by_hand("oil and season the {it}", 4, 5, 7, keeps="2 h in the room", tool="roasting tin", perishable=False,
            uses=("oil", "thyme", "salt"), how="One layer with gaps; crowded, they steam."),
        in_oven(200, "roast the {it}", 38, 45, 55, own=True, shelf=6, tool="roasting tin",
            look="dark at the edges, soft to a knife", best="12 min", keeps="30 min hot"),
    ),
)

ROAST_POTATOES = Pattern(
    name="roast potatoes", course="side", words=listed("roast potatoes, roasted potatoes, roasties, potato wedges, "
        "wedges, hasselback potatoes, oven chips, jacket potatoes, baked potatoes, rosemary potatoes, duck fat "
        "potatoes, new potatoes roasted, crispy potatoes"), food="230 g floury potatoes (veg)",
    ingredients=a_head("3/4 tbsp sunflower oil (store cupboard), to taste salt"),
    steps=(
        by_hand("peel and cut the {it}", 14, 18, 24, keeps="12 h in the fridge", perishable=False, uses=("{it}",),
            how="Under water, so that they stay white."),
        on_ring("parboil the {it}", 14, 16, 20, tool="big pot", attended="3 min at the start, 3 min at the end",
            keeps="1 h in the room", look="the outside gives, the middle does not", uses=("salt",), how="From the "
            "boil 8 minutes; drain, let them steam dry, and shake them rough."),
        in_oven(200, "roast the {it}", 50, 60, 70, shelf=8, tool="roasting tin",
            attended="4 min at the start, 2 min every 20 min, 2 min at the end",
            look="deep gold, they rattle in the tin", best="12 min", keeps="25 min hot", uses=("oil",), how="Into "
            "fat that is hot already. Hot fat spits: put them in with a spoon, and turn them twice."),
    ),
)

GRATIN = Pattern(
    name="gratin", course="side", words=listed("gratin, dauphinoise, scalloped potatoes, au gratin, potato bake, "
        "janssons, cauliflower cheese, cauli cheese, broccoli cheese, macaroni cheese bake"),
        food="220 g potatoes (veg)",
    own={"cauliflower": (28, 32, 38), "leek": (28, 32, 38), "fennel": (40, 45, 50), "courgette": (30, 35, 40),
        "zucchini": (30, 35, 40), "chicory": (30, 35, 40)},
    ingredients=a_head("60 ml double cream (dairy), 50 ml whole milk (dairy), 20 g cheese, grated (dairy), 1/4 "
        "cloves garlic (veg), 5 g butter (dairy), to taste salt, to taste nutmeg (store cupboard)"),
    steps=(
        by_hand("peel and slice the {it}", 16, 20, 26, keeps="20 min in the room", perishable=False, uses=("{it}",)),
        by_hand("layer the {it} with the cream", 10, 12, 16, keeps="12 h in the fridge", uses=("cream", "milk",
            "garlic", "butter", "salt", "nutmeg"), how="Rub the dish with garlic and butter; the cream comes up to "
            "the last layer."),
        in_oven(170, "bake the gratin", 60, 70, 80, own=True, shelf=8,
            look="a knife goes through with no push, gold on top", best="20 min", keeps="40 min hot", uses=("cheese",),
            how="The cheese goes on for the last 25 minutes. Let it settle ten minutes before it is cut."),
    ),
)

STOCK_GRATIN = Pattern(
    name="baked in stock", course="side", words=listed("boulangère, boulangere, boulangère potatoes, baker's "
        "potatoes"), food="220 g potatoes (veg)",
    ingredients=a_head("1/4 onions (veg), 90 ml vegetable stock (store cupboard), 6 g butter (dairy), 1/10 bunches "
        "thyme (veg), to taste salt, to taste black pepper (store cupboard)"),
    steps=(
        by_hand("peel and slice the {it} and onions", 16, 20, 26, keeps="20 min in the room", perishable=False,
            uses=("{it}", "onions")),
        by_hand("layer the {it} with the onions and stock", 8, 10, 14, keeps="2 h in the room", perishable=False,
            uses=("stock", "butter", "thyme", "salt", "pepper"), how="The stock comes up to the last layer; butter "
            "on top."),
        in_oven(180, "bake the {it}", 60, 70, 85, shelf=8, look="a knife goes through with no push, brown on top",
            best="20 min", keeps="40 min hot"),
    ),
)

BOILED = Pattern(
    name="boiled vegetables", course="side", done=listed("boiled, steamed, blanched, buttered, minted"), words=listed(
        "steamed greens, vegetable medley"),
    alone=listed("green bean, runner bean, french bean, haricot vert, broccoli, tenderstem, broccolini, pea, "
        "mangetout, sugar snap, asparagus, cauliflower, carrot, sweetcorn, corn on the cob, brussels sprout, spring "
        "greens, kale, cabbage, broad bean, chard, bean, vegetables, greens, sprout, artichoke"), of=PLANTS,
        food="120 g green beans (veg)",
    own={"carrot": (12, 14, 18), "artichoke": (35, 40, 50), "beetroot": (40, 45, 55), "corn": (10, 12, 14), "pea": (6,
        7, 9), "spinach": (5, 6, 7), "egg": (8, 10, 12), "asparagus": (8, 10, 12)},
    ingredients=a_head("5 g butter (dairy), to taste salt"),
    steps=(
        by_hand("trim the {it}", 8, 10, 14, keeps="1 day in the fridge", perishable=False),
        on_ring("boil the {it}", 12, 14, 17, own=True, tool="big pot", attended="2 min at the start, 3 min at the end",
            look="tender with a bite, still bright", best="8 min", keeps="15 min hot", uses=("{it}", "butter", "salt"),
            how="Much water, salted, at a full boil before they go in, no lid; drain, then the butter. The minutes "
            "count the water coming to the boil."),
    ),
)

BOILED_POTATOES = Pattern(
    name="boiled potatoes", course="side", words=listed("boiled potatoes, new potatoes, jersey royals, steamed "
        "potatoes, parsley potatoes, buttered potatoes, salt potatoes, baby potatoes, tatties, spuds"), alone=listed(
        "potato, potatoes"), food="220 g new potatoes (veg)",
    ingredients=a_head("6 g butter (dairy), 1/8 bunches parsley (veg), to taste salt"),
    steps=(
        by_hand("scrub the {it}", 8, 10, 14, keeps="12 h in the fridge", perishable=False),
        on_ring("boil the {it}", 28, 32, 38, tool="big pot", attended="2 min at the start, 3 min at the end",
            look="a knife slides out again", best="12 min", keeps="25 min hot", uses=("{it}", "butter", "parsley",
            "salt"), how="From cold salted water; the minutes count the water coming to the boil."),
    ),
)

MASHED = Pattern(
    name="mashed", course="side", done=listed("mashed, puréed, pureed, creamed, whipped, crushed"), words=listed(
        "mash, mashed potatoes, mashed potato, purée, puree, champ, colcannon, aligot, neeps"), of=PLANTS,
    food="230 g floury potatoes (veg)",
    own={"carrot": (24, 28, 32), "pea": (10, 12, 14), "celeriac": (26, 30, 35), "swede": (30, 35, 40),
        "cauliflower": (18,
        20, 24), "spinach": (8, 10, 12)},
    ingredients=a_head("20 g butter (dairy), 30 ml whole milk (dairy), to taste salt"),
    steps=(
        by_hand("peel and cut the {it}", 12, 16, 22, keeps="12 h in the fridge", perishable=False, uses=("{it}",)),
        on_ring("boil the {it}", 28, 32, 38, own=True, tool="big pot", attended="2 min at the start, 3 min at the end",
            look="falls apart under a spoon", keeps="15 min hot", uses=("salt",)),
        by_hand("mash the {it} with the butter and hot milk", 6, 8, 11, best="15 min", keeps="1 h hot", uses=("butter",
            "milk"), how="Let it steam dry first; butter before milk. Kept in a bowl over hot water, a lid on."),
    ),
)

SAUTEED = Pattern(
    name="sautéed vegetables", course="side", done=listed("sautéed, sauteed, fried, pan-fried, pan fried, wilted, "
        "seared, caramelised, caramelized"), words=listed("caramelised onions"), alone=listed("spinach, "
        "mushroom, pak choi, bok choy, courgette, zucchini, leek, pepper, peppers"), of=PLANTS,
        food="140 g mushrooms (veg)",
    own={"spinach": (5, 6, 8), "pak choi": (6, 8, 9), "onion": (35, 40, 50), "potato": (18, 22, 26), "carrot": (16, 18,
        22), "leek": (12, 14, 18)},
    ingredients=a_head("1/4 tbsp olive oil (store cupboard), 6 g butter (dairy), 1/4 cloves garlic (veg), to taste "
        "salt"),
    steps=(
        by_hand("clean and slice the {it}", 10, 12, 16, keeps="12 h in the fridge", perishable=False),
        on_ring("fry the {it}", 9, 11, 14, own=True, grows=True, tool="frying pan", rings=2,
            look="glossy, no water left in the pan", best="10 min", keeps="20 min hot", uses=("{it}", "oil", "butter",
            "garlic", "salt")),
    ),
)

GLAZED = Pattern(
    name="glazed vegetables", course="side", done=listed("glazed, candied"), words=listed("vichy carrots"), of=PLANTS,
        food="140 g carrots (veg)",
    own={"onion": (30, 35, 42), "shallot": (30, 35, 42), "turnip": (22, 25, 30), "beetroot": (45, 50, 60), "chestnut":
        (18, 20, 25)},
    ingredients=a_head("8 g butter (dairy), 3 g sugar (baking), to taste salt"),
    steps=(
        by_hand("peel and cut the {it}", 10, 12, 16, keeps="1 day in the fridge", perishable=False, uses=("{it}",)),
        on_ring("glaze the {it}", 20, 24, 30, own=True, tool="frying pan", rings=2,
            attended="3 min at the start, 1 min every 10 min, 4 min at the end", look="soft to a knife, and they shine",
            best="40 min", keeps="40 min on the stovetop, 1 ring", uses=("butter", "sugar", "{beside}", "salt"),
            how="One layer, water to half their height, a lid until they are soft; then without, and shaken, until "
            "there is only a syrup."),
    ),
)

BRAISED_VEG = Pattern(
    name="braised vegetables", course="side", done=listed("braised, stewed, slow cooked, slow-cooked, confit"),
        words=listed("petits pois à la française, caponata, sauerkraut, choucroute"), alone=listed(
        "red cabbage, fennel, chicory, endive, lettuce hearts"), of=PLANTS, food="170 g red cabbage (veg)",
    own={"red cabbage": (75, 90, 110), "fennel": (40, 45, 55), "leek": (30, 35, 40), "chicory": (35, 40, 45),
        "endive": (35,
        40, 45), "celery": (40, 45, 55), "lentil": (30, 35, 40), "lettuce": (15, 18, 22)},
    ingredients=a_head("1/6 onions (veg), 8 g butter (dairy), 50 ml vegetable stock (store cupboard), 1/6 tbsp "
        "cider vinegar (store cupboard), to taste salt"),
    steps=(
        by_hand("trim and slice the {it}", 10, 13, 18, keeps="1 day in the fridge", perishable=False, uses=("{it}",)),
        on_ring("braise the {it}", 50, 60, 75, own=True, tool="big pot",
            attended="6 min at the start, 1 min every 20 min, 2 min at the end", look="soft, the juice nearly gone",
            best="30 min", keeps="1 h on the stovetop, 1 ring", uses=("onions", "butter", "stock", "vinegar", "salt")),
    ),
)

GRILLED_VEG = Pattern(
    name="grilled vegetables", course="side", done=listed("grilled, broiled, barbecued, bbq, chargrilled, "
        "char-grilled, griddled, blistered"), words=listed("grilled vegetables, grilled halloumi"), of=PLANTS,
        food="160 g courgettes (veg)",
    own={"asparagus": (8, 10, 12), "pepper": (16, 20, 24), "halloumi": (5, 6, 8), "corn": (12, 14, 16),
        "aubergine": (14,
        16, 20), "eggplant": (14, 16, 20)},
    ingredients=a_head("1/2 tbsp olive oil (store cupboard), 1/8 lemons (veg), 1/4 cloves garlic (veg), to taste salt"),
    steps=(
        by_hand("slice and oil the {it}", 10, 12, 16, keeps="4 h in the room", perishable=False, uses=("{it}", "oil",
            "salt")),
        on_ring("grill the {it} on a ridged pan", 12, 15, 20, own=True, grows=True, rings=2, tool="griddle",
            look="striped dark, soft to a fork", best="30 min", keeps="1 h in the room", uses=("garlic", "lemons"),
            how="In several goes; garlic and lemon over them while they are hot."),
    ),
)

STUFFED_VEG = Pattern(
    name="stuffed vegetables", course="main", done=listed("stuffed, filled"), words=listed(
        "stuffed peppers, dolma, dolmades, stuffed cabbage, cabbage rolls"), of=PLANTS, food="180 g peppers (veg)",
    ingredients=a_head("40 g rice (store cupboard), 1/4 onions (veg), 1/2 tbsp olive oil (store cupboard), 60 g "
        "tinned tomatoes (store cupboard), 1/8 bunches parsley (veg), to taste salt"),
    steps=(
        on_ring("cook the rice for the filling", 20, 22, 26, tool="medium pot",
            attended="6 min at the start, 2 min at the end", keeps="30 min hot", uses=("rice", "onions", "oil",
            "salt")),
        by_hand("fill the {it}", 9, 11, 15, keeps="10 min in the room", uses=("{it}", "tomatoes", "parsley")),
        in_oven(180, "bake the {it}", 40, 45, 55, shelf=8, look="soft to a knife, tops brown", best="20 min",
            keeps="40 min hot"),
    ),
)

DEEP_FRIED = Pattern(
    name="fried", course="nibbles", done=listed("deep-fried, deep fried, crispy, battered, breaded, crumbed, fried, "
        "tempura"), words=listed("croquettes, arancini, bhajis, onion rings, tempura, "
        "fried chicken, fritto misto, samosas, spring rolls, falafel, beignets, goujons, hush puppies, karaage, "
        "fish and chips, whitebait, calamari"), food="120 g vegetables (veg)",
    own={"chicken": (14, 17, 20), "fish": (6, 7, 9), "potato": (14, 17, 20), "chips": (14, 17, 20), "fries": (12, 14,
        17)},
    ingredients=a_head("60 ml sunflower oil (store cupboard), 25 g plain flour (baking), 1/4 lemons (veg), to taste "
        "salt"),
    steps=(
        by_hand("cut and coat the {it}", 16, 20, 28, keeps="2 h in the fridge", uses=("{it}", "flour", "salt"),
            perishable=None),
        on_ring("fry the {it} in deep oil", 10, 13, 17, own=True, grows=True, tool="big pot", cooks=THE_FOOD,
            look="gold and crisp, the middle done", best="6 min", keeps="15 min hot", uses=("oil", "lemons"), how=
            "Oil at 175 °C and the pot a third full at most, in small goes, never left alone. If it burns: lid on, "
            "heat off, no water."),
    ),
)

FRITTERS = Pattern(
    name="pan-fried cakes", course="starter", words=listed("rösti, rosti, latkes, potato cakes, potato pancakes, "
        "hash browns, fritters, pakoras, vegetable cakes, bubble and squeak, okonomiyaki, corn cakes"),
        food="150 g potatoes (veg)",
    ingredients=a_head("15 g plain flour (baking), 1/4 eggs (dairy), 1/6 onions (veg), 3/4 tbsp sunflower oil "
        "(store cupboard), to taste salt"),
    steps=(
        by_hand("grate and mix the {it} with the eggs", 14, 18, 24, keeps="1 h in the fridge", uses=("{it}",
            "flour", "eggs", "onions", "salt")),
        on_ring("fry the fritters", 14, 18, 24, grows=True, rings=2, tool="frying pan", cooks="eggs",
            look="gold and crisp on both sides, hot in the middle", best="15 min", keeps="45 min hot", uses=("oil",),
            how="In one layer, not touching. They wait on a rack in a low oven, never under a lid."),
    ),
)

RICE = Pattern(
    name="rice", course="side", words=listed("rice, pilaf, pilau, jollof, basmati, coconut rice, fried rice"),
        of=PLANTS, food="65 g long-grain rice (store cupboard)",
    ingredients=a_head("4 g butter (dairy), to taste salt"),
    steps=(
        on_ring("boil the {it}", 20, 22, 26, tool="big pot", attended="4 min at the start, 3 min at the end",
            look="grains apart, no water left", best="15 min", keeps="40 min hot", uses=("{it}", "butter", "salt"), how=
            "Rinsed; half as much water again as rice, lid on, lowest heat. Five minutes off the heat, then a fork "
            "through it. Kept hot until it is eaten, and what is left is chilled within the hour."),
    ),
)

RISOTTO = Pattern(
    name="risotto", course="main", words=listed("risotto, orzotto, barley risotto"), food="60 g mushrooms (veg)",
    ingredients=a_head("75 g risotto rice (store cupboard), 1/8 onions (veg), 12 g butter (dairy), 15 g parmesan "
        "(dairy), 40 ml white wine (drinks), 250 ml vegetable stock (store cupboard), to taste salt"),
    steps=(
        by_hand("chop the onions and the {it}", 8, 10, 14, keeps="8 h in the fridge", perishable=False),
        on_ring("soften the {it} and onions", 9, 11, 14, tool="big pot", keeps="1 h in the room", uses=("{it}",
            "onions"), cooks=THE_FOOD, perishable=None),
        on_ring("stir the risotto", 22, 25, 30, rings=2, tool="big pot",
            look="loose, it runs when the plate is tilted", best="4 min", keeps="6 min hot", uses=("rice", "wine",
            "stock", "butter", "parmesan", "salt"), how="The stock stays hot beside it and goes in ladle by ladle. "
            "Butter and cheese off the heat."),
    ),
)

PAELLA = Pattern(
    name="rice cooked with everything", course="main", words=listed("paella, jambalaya, arroz con pollo, biriyani, "
        "one-pot rice, plov, kedgeree"), food="120 g chicken thighs (butcher)",
    ingredients=a_head("70 g paella rice (store cupboard), 1/4 onions (veg), 60 g peppers (veg), 1/2 tbsp olive oil "
        "(store cupboard), 220 ml chicken stock (store cupboard), 1 g smoked paprika (store cupboard), to taste salt"),
    steps=(
        by_hand("chop the onions and peppers", 10, 12, 16, keeps="1 day in the fridge", perishable=False),
        on_ring("brown the {it}", 12, 14, 18, rings=2, tool="paella pan", keeps="20 min hot", uses=("{it}", "oil")),
        on_ring("simmer the rice with the {it}", 30, 35, 40, rings=2, tool="paella pan",
            attended="8 min at the start, 2 min every 8 min, 3 min at the end", cooks=THE_FOOD,
            look="the stock is gone, the bottom crackles", best="10 min", keeps="15 min hot", uses=("rice", "onions",
            "peppers", "stock", "paprika", "salt")),
    ),
)

GRAINS = Pattern(
    name="grains", course="side", words=listed("couscous, bulgur, bulgur wheat, quinoa, freekeh, pearl barley, "
        "farro, spelt, buckwheat, grits, polenta, cornmeal mush, millet"), food="60 g couscous (store cupboard)",
    own={"couscous": (10, 10, 12), "bulgur": (15, 18, 20), "quinoa": (20, 22, 25), "pearl barley": (35, 40, 45),
        "farro": (30, 35, 40), "spelt": (30, 35, 40), "freekeh": (25, 30, 35), "polenta": (35, 40, 45), "grits": (25,
        30, 35)},
    ingredients=a_head("5 g butter (dairy), to taste salt"),
    steps=(
        on_ring("simmer the {it}", 18, 20, 25, own=True, tool="medium pot", attended=SIMMERS,
            look="soft with a bite, the water taken up", best="15 min", keeps="40 min hot", uses=("{it}", "butter",
            "salt")),
    ),
)

PULSES = Pattern(
    name="pulses", course="side", words=listed("dal, dhal, daal, baked beans, refried beans, bean stew, lentil "
        "stew, chickpea stew, hoppin john, feijoada, black beans, bean chili, vegetable chili, veggie chili, "
        "lentils, puy lentils"), alone=listed("lentil, chickpea, butter bean, white bean, cannellini bean, split pea"),
        food="65 g lentils (store cupboard)",
    own={"lentil": (30, 35, 40), "red lentil": (22, 25, 30), "split pea": (45, 55, 65)},
    ingredients=a_head("1/4 onions (veg), 1/4 carrots (veg), 1/4 cloves garlic (veg), 1/3 tbsp olive oil (store "
        "cupboard), 150 ml vegetable stock (store cupboard), to taste salt"),
    steps=(
        by_hand("chop the onions and carrots", 7, 9, 12, keeps="1 day in the fridge", perishable=False),
        on_ring("simmer the {it}", 35, 40, 50, own=True, tool="big pot",
            attended="6 min at the start, 1 min every 12 min, 2 min at the end", look="soft, not falling apart",
            best="30 min", keeps="1 h on the stovetop, 1 ring", uses=("{it}", "onions", "carrots", "garlic", "oil",
            "stock", "salt"), how="Tinned ones only need to get hot. Dried beans want a night in water first and, "
            "kidney beans above all, ten minutes at a full boil."),
    ),
)

STIRRED_DUMPLINGS = Pattern(
    name="dumplings", course="side", words=listed("dumplings, gnocchi, spätzle, spaetzle, knödel, matzo balls, "
        "matzah balls, pierogi, gyoza, potstickers, wontons, dim sum, suet dumplings"), food="",
    ingredients=a_head("60 g plain flour (baking), 1/4 eggs (dairy), 40 ml whole milk (dairy), 8 g butter (dairy), "
        "to taste salt"),
    steps=(
        by_hand("mix and shape the dumplings", 22, 28, 36, keeps="4 h in the fridge", uses=("flour", "eggs", "milk",
            "salt")),
        on_ring("simmer the dumplings", 14, 16, 20, grows=True, tool="big pot", cooks="eggs",
            look="they float and are dry in the middle", best="8 min", keeps="20 min hot", uses=("butter",), how=
            "Water at a tremble, in goes so that none lies on another; lift out into melted butter."),
    ),
)

NUT_ROAST = Pattern(
    name="nut roast or loaf", course="main",
    words=listed("nut roast, nut loaf, lentil loaf, vegetable loaf, veggie loaf, chestnut roast, mushroom loaf"),
    of=PLANTS, food="60 g nuts (store cupboard)",
    ingredients=a_head("60 g mushrooms (veg), 1/4 onions (veg), 25 g breadcrumbs (bakery), 1/3 eggs (dairy), 1/8 "
        "bunches parsley (veg), 1/4 tbsp olive oil (store cupboard), to taste salt"),
    steps=(
        on_ring("fry the mushrooms and onions", 12, 15, 19, tool="frying pan", look="no water left in the pan",
            keeps="15 min hot", uses=("mushrooms", "onions", "oil")),
        by_hand("chop the {it} and mix everything with the eggs", 8, 10, 13, keeps="15 min in the room",
            uses=("{it}", "breadcrumbs", "eggs", "parsley"), how="Pressed firmly into a lined tin."),
        in_oven(180, "bake the loaf", 45, 50, 58, shelf=12, cooks="eggs", look="firm, brown at the edges",
            keeps="10 min hot"),
        left("let the loaf settle", 8, 10, 12, best="15 min", keeps="20 min hot"),
        by_hand("slice the loaf", 4, 5, 7, best="8 min", keeps="15 min hot"),
    ),
)

YORKSHIRES = Pattern(
    name="batter puddings", course="side", words=listed("yorkshire pudding, yorkshire puddings, yorkshires, "
        "popovers, popover, toad in the hole, dutch baby"), food="",
    ingredients=a_head("30 g plain flour (baking), 1/3 eggs (dairy), 55 ml whole milk (dairy), 1/3 tbsp sunflower "
        "oil (store cupboard), to taste salt"),
    steps=(
        by_hand("whisk the batter", 6, 8, 10, keeps="1 day in the fridge", uses=("flour", "eggs", "milk", "salt")),
        in_oven(220, "bake the batter puddings in hot fat", 22, 25, 30, shelf=8,
            attended="6 min at the start, 2 min at the end", cooks="eggs", look="risen, brown and stiff", best="6 min",
            keeps="15 min hot", uses=("oil",), how="Fat in the tins first until it smokes a little, then the "
            "batter, quickly; the door stays shut. Hot fat spits: long sleeves."),
    ),
)

LEAVES = Pattern(
    name="leaf salad", course="side", words=listed("green salad, leaf salad, mixed leaves, salad leaves, side "
        "salad, dressed leaves, tossed salad, caesar salad, house salad, watercress salad, rocket salad, arugula "
        "salad, lettuce salad, herb salad"), alone=listed(
        "leaves, lettuce, rocket, arugula, watercress"), food="40 g salad leaves (veg)",
    ingredients=a_head("1/3 tbsp olive oil (store cupboard), 1/8 tbsp red wine vinegar (store cupboard), 1/16 tbsp "
        "mustard (store cupboard), to taste salt"),
    steps=(
        by_hand("wash and dry the {it}", 8, 10, 14, keeps="8 h in the fridge", uses=("{it}",)),
        by_hand("shake the dressing", 3, 4, 6, after="nothing", keeps="3 days in the fridge", perishable=False, uses=(
            "oil", "vinegar", "mustard", "salt")),
        by_hand("dress the {it}", 3, 4, 6, after="wash and dry the {it}, shake the dressing", best="8 min",
            keeps="15 min in the room"),
    ),
)

COMPOSED = Pattern(
    name="salad", course="starter", words=listed("salad, salade, niçoise, waldorf, caprese, panzanella, "
        "fattoush, burrata, buddha bowl, cobb"), food="100 g vegetables (veg)",
    ingredients=a_head("30 g salad leaves (veg), 1/2 tbsp olive oil (store cupboard), 1/6 tbsp red wine vinegar "
        "(store cupboard), 10 g walnuts (store cupboard), to taste salt"),
    steps=(
        by_hand("cut up the {it}", 12, 15, 20, keeps="8 h in the fridge"),
        by_hand("shake the dressing", 3, 4, 6, after="nothing", keeps="3 days in the fridge", perishable=False, uses=(
            "oil", "vinegar", "salt")),
        by_hand("wash and dry the leaves", 6, 8, 11, after="nothing", keeps="8 h in the fridge", uses=("leaves",)),
        by_hand("dress and plate the salad", 10, 12, 16,
            after="cut up the {it}, shake the dressing, wash and dry the leaves", best="15 min",
            keeps="30 min in the room", uses=("{it}", "{beside}", "walnuts")),
    ),
)

BOUND_SALAD = Pattern(
    name="salad made ahead", course="side", words=listed("slaw, coleslaw, potato salad, pasta salad, bean salad, "
        "lentil salad, rice salad, remoulade, celeriac remoulade, russian salad, grain salad, couscous salad, "
        "quinoa salad, egg salad, three bean salad, cucumber salad, tomato salad, beetroot salad, carrot salad, "
        "orzo salad, fruit and nut salad"), food="150 g white cabbage (veg)",
    own={"potato": (25, 28, 34), "lentil": (28, 32, 38), "pasta": (14, 16, 18), "egg": (12, 13, 15), "rice": (18, 20,
        24), "quinoa": (18, 20, 24), "beetroot": (40, 45, 55)},
    ingredients=a_head("1 tbsp mayonnaise, from a jar (store cupboard), 1/6 tbsp cider vinegar (store cupboard), "
        "1/8 bunches parsley (veg), to taste salt"),
    steps=(
        by_hand("cut and dress the {it}", 16, 20, 26, keeps="1 day in the fridge", uses=("{it}", "mayonnaise",
            "vinegar", "salt")),
        by_hand("stir the salad through and put it in bowls", 4, 5, 7, best="30 min", keeps="1 h in the room", uses=(
            "parsley",)),
    ),
)

FAMILY = (BRAISED_VEG, TRAY, ROAST_POTATOES, GRATIN, STOCK_GRATIN, BOILED_POTATOES, MASHED, BOILED, SAUTEED, GLAZED,
    GRILLED_VEG, STUFFED_VEG, NUT_ROAST,
    DEEP_FRIED, FRITTERS, RICE, RISOTTO, PAELLA, GRAINS, PULSES, STIRRED_DUMPLINGS, YORKSHIRES, LEAVES, BOUND_SALAD,
    COMPOSED)
