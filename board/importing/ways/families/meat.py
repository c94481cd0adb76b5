"""Meat and poultry. All figures: common practice, no source."""

# fmt: off
from board.importing.ways.pattern import (
    SIMMERS,
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

MEAT = frozenset({"poultry", "whole cut"})
REST = "Where it is warm, loosely covered if it waits; the middle goes on getting hotter, and the juice stays in."

BRAISED = Pattern(
    name="braised", course="main", done=listed("braised, braise, slow cooked, slow-cooked, confit"),
    words=listed("osso buco, coq au vin, daube, carbonnade, pulled pork"),
    alone=listed("duck leg, beef shin, lamb shank, beef cheek, pork cheek, short rib, oxtail, brisket, shin of "
        "beef, lamb shoulder"),
    of=MEAT | {"ground meat"}, food="240 g stewing meat (butcher)",
    own={"duck leg": (105, 120, 150), "chicken": (45, 55, 70), "chicken thigh": (45, 50, 60), "chicken leg": (45, 55,
        70), "rabbit": (65, 75, 95), "pheasant": (60, 75, 90), "guinea fowl": (55, 65, 80),
         "lamb shank": (130, 150, 180), "lamb shoulder": (180, 210, 240), "beef shin": (165, 180, 210),
             "beef cheek": (180,
             200, 240),
         "pork cheek": (110, 130, 150), "short rib": (165, 180, 210), "oxtail": (180, 210, 240), "brisket": (180, 210,
             240),
         "pork belly": (120, 150, 180), "pork shoulder": (150, 180, 210), "venison": (120, 150, 180), "veal": (100, 120,
             140)},
    ingredients=a_head("1/4 onions (veg), 1/3 carrots (veg), 1/4 tbsp olive oil (store cupboard), 1/6 tbsp tomato "
        "paste (store cupboard), 120 ml chicken stock (store cupboard), 1/8 bunches thyme (veg), to taste salt, to "
        "taste black pepper (store cupboard), 250 g ice (drinks)"),
    steps=(
        by_hand("cut the carrots and onions", 8, 10, 14, keeps="1 day in the fridge", perishable=False),
        on_ring("brown the {it}", 15, 20, 28, grows=True, rings=2, tool="frying pan", keeps="30 min in the room",
            look="dark on all sides, no grey", uses=("{it}", "oil", "salt", "pepper"),
                how="Dry it well and salt it. Brown it in two or three goes with space between the pieces, and put "
                    "each go aside."),
        on_ring("soften the carrots and onions and add the stock", 10, 12, 16, keeps="20 min hot", uses=("carrots",
            "onions", "tomato", "stock", "thyme"),
                how="Soften the onions and carrots in the fat that is left. Stir in the paste, pour in the stock "
                    "and scrape up what sticks."),
        in_oven(165, "braise the {it}", 120, 150, 180, own=True, moist=True, tool="casserole", shelf=12,
            attended="3 min at the start, 2 min every 45 min, 3 min at the end", cooks=THE_FOOD,
            look="a fork goes in and turns", keeps="30 min hot",
                how="The liquid comes halfway up, the lid stays on, and it only trembles."),
        cooled("braise"),
        by_hand("lift the fat off the braise", 4, 5, 7, keeps="1 h in the fridge"),
        reheated("braise", 25, 30, 40, keeps="1 h on the stovetop, 1 ring", tool="casserole",
            look="hot to the middle, the sauce coats a spoon"),
    ),
)

POT_ROAST = Pattern(
    name="pot-roasted", course="main", done=listed("pot roasted, pot-roasted"), words=listed("pot roast"), of=MEAT,
        food="250 g roast meat (butcher)",
    own={"chicken": (75, 85, 100), "guinea fowl": (65, 75, 90), "pheasant": (60, 70, 85), "beef": (165, 190, 220),
        "brisket": (180, 210, 240), "pork": (120, 140, 170), "lamb": (110, 130, 160), "veal": (100, 120, 140)},
    ingredients=a_head("1/4 onions (veg), 1/2 carrots (veg), 1/4 sticks celery (veg), 1/4 tbsp olive oil (store "
        "cupboard), 80 ml chicken stock (store cupboard), 1/8 bunches thyme (veg), to taste salt"),
    steps=(
        by_hand("cut the carrots and celery", 8, 10, 14, keeps="1 day in the fridge", perishable=False),
        on_ring("brown the {it} all round", 15, 18, 25, tool="casserole", keeps="30 min in the room",
            look="brown on every side", uses=("{it}", "oil", "salt")),
        in_oven(165, "pot-roast the {it}", 120, 150, 180, own=True, moist=True, tool="casserole", shelf=10,
            attended="4 min at the start, 2 min every 40 min, 3 min at the end", cooks=THE_FOOD,
            look="a skewer goes in with no push", keeps="40 min hot",
                uses=("carrots", "celery", "onions", "stock", "thyme"),
                    how="Set it on the vegetables with a little stock, lid on. Turn it once."),
        by_hand("carve the {it}", 6, 8, 12, best="10 min", keeps="20 min hot", how="Rest it first while the juice "
            "is boiled down and skimmed; then carve across the grain."),
    ),
)

ROAST_JOINT = Pattern(
    name="roast joint", course="main", done=listed("roast, roasted, roasting"), words=listed("sunday roast, roast "
        "dinner, pork roast, beef roast, prime rib, roast joint"),
    alone=listed("rack of lamb, leg of lamb, rib of beef, beef wellington, pork loin, pork belly, beef fillet, "
        "sirloin of beef"), of=frozenset({"whole cut"}), food="250 g roast meat (butcher)",
    own={"rack of lamb": (22, 26, 32), "leg of lamb": (75, 90, 110), "lamb": (75, 90, 110), "lamb shoulder": (180, 210,
        240), "beef": (75, 90, 115), "beef fillet": (28, 35, 45), "rib of beef": (90, 110, 135), "pork": (90, 105, 125),
        "pork loin": (75, 90, 105), "pork belly": (120, 140, 165), "pork shoulder": (180, 210, 240), "venison": (40, 50,
        65), "veal": (75, 90, 105), "gammon": (80, 95, 110)},
    ingredients=a_head("1/4 onions (veg), 1/4 tbsp olive oil (store cupboard), 1/8 bunches thyme (veg), to taste "
        "salt, to taste black pepper (store cupboard)"),
    steps=(
        by_hand("season the {it}", 5, 6, 8, keeps="1 day in the fridge", uses=("{it}", "oil", "salt", "pepper"), how=
            "Salt it well the day before if there is time; it goes back into the fridge uncovered."),
        in_oven(180, "roast the {it}", 75, 90, 115, own=True, shelf=16, tool="roasting tin",
            attended="3 min at the start, 2 min every 30 min, 3 min at the end", cooks=THE_FOOD,
            look="the probe in the thickest part says so", keeps="10 min hot", uses=("onions", "thyme"),
                how="Set it on the onions. The hours are for a joint of about 2 kg; for more eaters take "
                    "two. A probe in the thickest part decides, not the clock."),
        left("rest the {it}", 15, 20, 25, best="20 min", keeps="30 min hot", how=REST),
        by_hand("carve the {it}", 6, 8, 12, best="8 min", keeps="15 min hot",
            how="Across the grain, onto a warm dish; pour its juice over."),
    ),
)

SLOW_ROAST = Pattern(
    name="slow roast", course="main", done=listed("slow roast, slow roasted, slow-roast, slow-roasted, slow roasting"),
    of=MEAT, food="280 g roast meat (butcher)",
    own={"lamb": (210, 240, 300), "lamb shoulder": (210, 240, 300), "leg of lamb": (210, 240, 300),
        "lamb shank": (150, 180, 210), "pork": (240, 270, 330), "pork shoulder": (270, 300, 360),
        "pork belly": (150, 180, 210), "beef": (240, 270, 330), "brisket": (270, 300, 360), "duck": (150, 165, 195),
        "duck leg": (120, 135, 150), "goose": (210, 240, 270), "chicken": (120, 135, 150)},
    ingredients=a_head("1/3 onions (veg), 1/4 tbsp olive oil (store cupboard), 1/8 bunches thyme (veg), 40 ml chicken "
        "stock (store cupboard), to taste salt, to taste black pepper (store cupboard)"),
    steps=(
        by_hand("season the {it}", 5, 6, 8, keeps="1 day in the fridge", uses=("{it}", "oil", "salt", "pepper"), how=
            "Salt it well the day before if there is time; it goes back into the fridge uncovered."),
        in_oven(150, "roast the {it} slowly", 210, 240, 300, own=True, moist=True, shelf=14, tool="roasting tin",
            attended="3 min at the start, 2 min every 60 min, 3 min at the end", cooks=THE_FOOD,
            look="a spoon pulls it off the bone", keeps="40 min hot", uses=("onions", "thyme", "stock"),
                how="On the onions with the stock, under foil; off with the foil for the last half hour. The hours are "
                    "for a joint of about 2 kg; for more eaters take two."),
        left("rest the {it}", 15, 20, 30, best="40 min", keeps="1 h hot", how=REST),
        by_hand("pull or carve the {it}", 6, 8, 12, best="10 min", keeps="20 min hot",
            how="Onto a warm dish; the fat off its juice, and the juice over it."),
    ),
)

ROAST_BIRD = Pattern(
    name="roast bird", course="main", done=listed("roast, roasted, roasting"),
    words=listed("roast chicken, roast turkey, roast duck, roast goose, roast guinea fowl"),
    alone=listed("chicken, turkey, goose, guinea fowl, poussin, partridge, pheasant, quail, turkey crown, cornish "
        "hen"), of=frozenset({"poultry"}), food="350 g poultry (butcher)",
    own={"chicken": (70, 80, 95), "turkey": (150, 180, 210), "turkey crown": (90, 105, 130), "turkey breast": (75, 90,
        110), "goose": (150, 170, 200), "duck": (90, 105, 125), "guinea fowl": (55, 65, 75), "pheasant": (40, 48, 60),
        "partridge": (25, 30, 40),
         "quail": (18, 22, 28), "poussin": (40, 45, 55), "pigeon": (18, 22, 28), "chicken breast": (22, 26, 32),
             "chicken thigh": (35, 40, 48), "chicken leg": (40, 45, 55), "chicken wing": (35, 40, 50),
             "chicken drumstick": (35, 40, 48), "duck breast": (16, 20, 25), "duck leg": (75, 90, 105)},
    ingredients=a_head("8 g butter (dairy), 1/4 onions (veg), 1/8 bunches thyme (veg), to taste salt, to taste "
        "black pepper (store cupboard)"),
    steps=(
        by_hand("season the {it}", 6, 8, 12, keeps="1 day in the fridge", uses=("{it}", "butter", "salt", "pepper"),
            how="Pat it dry, do not wash it. Butter under the skin, salt inside and out."),
        in_oven(190, "roast the {it}", 70, 80, 95, own=True, shelf=8, tool="roasting tin",
            attended="3 min at the start, 2 min every 25 min, 3 min at the end", cooks=THE_FOOD,
            look="juice from the thigh runs clear, the leg moves freely", keeps="10 min hot", uses=("onions", "thyme"),
                how="Breast up on the onions, basted when you look in. A probe where the thigh meets the body "
                    "decides."),
        left("rest the {it}", 12, 15, 20, best="20 min", keeps="25 min hot", how=REST),
        by_hand("carve the {it}", 8, 10, 14, best="8 min", keeps="15 min hot",
            how="Legs off first, then the breast in slices, onto a warm dish."),
    ),
)

SEARED_MEAT = Pattern(
    name="seared meat", course="main", done=listed("seared, pan-fried, pan fried, fried, sautéed, sauteed"),
        words=listed("steak frites, steak and chips, escalopes, schnitzel, minute steak"),
    alone=listed("steak, sirloin steak, rib eye, fillet steak, lamb chop, pork chop, veal chop, lamb cutlet, duck "
        "breast, chicken breast, calf liver, pork fillet, pork tenderloin, venison loin, lamb neck fillet"), of=MEAT,
        food="180 g steak (butcher)",
    own={"duck breast": (14, 16, 20), "chicken breast": (14, 17, 21), "pork chop": (10, 12, 15), "lamb chop": (7, 9,
        11), "veal chop": (10, 12, 14), "pork fillet": (14, 17, 20), "pork tenderloin": (14, 17, 20),
            "chicken thigh": (18,
        22, 26)},
    ingredients=a_head("1/4 tbsp sunflower oil (store cupboard), 8 g butter (dairy), 1/8 bunches thyme (veg), to "
        "taste salt, to taste black pepper (store cupboard)"),
    steps=(
        by_hand("trim and salt the {it}", 4, 6, 8, keeps="1 day in the fridge", uses=("{it}", "salt")),
        left("take the {it} out of the cold", 25, 30, 40, keeps="20 min in the room"),
        on_ring("sear the {it}", 8, 10, 13, own=True, grows=True, rings=2, tool="frying pan", cooks=THE_FOOD,
            look="a dark crust, the middle by the probe", best="10 min", keeps="10 min hot", uses=("oil", "butter",
            "thyme", "pepper"),
                how="A heavy pan, very hot, and space between the pieces. Turn once it lets go; butter and thyme "
                    "for the last minute. Hot fat: keep a lid beside it."),
        left("rest the {it}", 4, 5, 7, best="5 min", keeps="10 min hot", how=REST),
    ),
)

GRILLED_MEAT = Pattern(
    name="grilled meat", course="main", done=listed("grilled, broiled, barbecued, barbequed, bbq, chargrilled, "
        "char-grilled, griddled, tandoori, flame-grilled"), words=listed("kebabs, kebab, skewers, satay, souvlaki, "
        "mixed grill, barbecue, shashlik, yakitori"),
    of=MEAT | {"ground meat"}, food="180 g meat (butcher)",
    own={"chicken thigh": (16, 20, 24), "chicken breast": (14, 17, 20), "chicken": (16, 20, 25), "steak": (8, 10, 12),
        "lamb chop": (8, 10, 12), "pork chop": (11, 13, 16), "sausage": (15, 18, 22)},
    ingredients=a_head("1/4 tbsp olive oil (store cupboard), 1/8 lemons (veg), 1/4 cloves garlic (veg), 1/8 bunches "
        "thyme (veg), to taste salt"),
    steps=(
        by_hand("cut and season the {it}", 10, 12, 16, keeps="10 min in the room", uses=("{it}", "oil", "garlic",
            "thyme", "salt")),
        chilled("marinate the {it}", 120, 120, 240, keeps="12 h in the fridge",
            how="Covered, in the fridge. What is left of the marinade is thrown away."),
        in_oven(230, "grill the {it}", 12, 15, 20, own=True, grows=True, shelf=12, moist=True, tool="baking sheet",
            attended="all", cooks=THE_FOOD,
            look="dark at the edges, the middle by the probe", best="10 min", keeps="15 min hot", uses=("lemons",),
                how="Under the grill of the oven, or on a ridged pan, turned once or twice; lemon over it at the end."),
    ),
)

STEW = Pattern(
    name="stew", course="main", words=listed("stew, casserole, goulash, tagine, hotpot, hot pot, ragout, ragoût, "
        "cassoulet, bourguignon, stroganoff, chili, chilli con carne, chili con carne, blanquette, fricassee, "
        "navarin, cacciatore, gumbo, pot-au-feu"),
    done=listed("stewed"), of=MEAT | {"ground meat"}, food="220 g stewing meat (butcher)",
    own={"mushroom": (30, 35, 45), "vegetable": (35, 40, 50), "bean": (35, 40, 50), "lentil": (30, 35, 40),
        "chicken": (45, 50, 60), "chicken thigh": (45, 50, 60), "lamb": (90, 105, 125), "beef": (120, 140, 170),
        "pork": (80, 95, 115), "veal": (80, 95, 110), "venison": (110, 130, 160), "beef mince": (50, 60, 75),
        "minced beef": (50, 60, 75), "ground beef": (50, 60, 75), "rabbit": (65, 75, 90)},
    ingredients=a_head("1/3 onions (veg), 1/3 carrots (veg), 1/4 tbsp olive oil (store cupboard), 1/6 tbsp tomato "
        "paste (store cupboard), 150 ml chicken stock (store cupboard), 1/4 bay leaves (store cupboard), to taste "
        "salt, to taste black pepper (store cupboard), 250 g ice (drinks)"),
    steps=(
        by_hand("chop the carrots and onions", 8, 10, 14, keeps="1 day in the fridge", perishable=False),
        on_ring("brown the {it}", 12, 16, 24, grows=True, rings=2, tool="frying pan", keeps="30 min in the room",
            look="brown, no juice in the pan", uses=("{it}", "oil", "salt"),
            how="In several goes, with space between the pieces."),
        on_ring("simmer the {it} in the stock", 105, 120, 150, own=True, tool="big pot",
            attended="10 min at the start, 2 min every 20 min, 2 min at the end", cooks=THE_FOOD,
            look="a spoon parts a piece", keeps="30 min hot", uses=("onions", "carrots", "tomato", "stock", "bay",
            "pepper"),
                how="Soften the onions and carrots first, then all of it with the stock. It trembles; it does not "
                    "boil."),
        cooled("stew"),
        reheated("stew", 20, 25, 35, keeps="1 h on the stovetop, 1 ring", tool="big pot"),
    ),
)

CURRY = Pattern(
    name="curry", course="main", words=listed("curry, korma, masala, vindaloo, rogan josh, jalfrezi, rendang, "
        "biryani, madras, bhuna, thai curry, green curry, red curry"),
    done=listed("curried"), food="160 g vegetables (veg)",
    own={"chicken": (35, 40, 50), "chicken thigh": (35, 40, 50), "lamb": (90, 105, 125), "beef": (120, 140, 165),
        "pork": (80, 95, 115), "mutton": (120, 140, 165), "prawn": (8, 10, 12), "shrimp": (8, 10, 12), "fish": (10, 12,
        15), "cod": (10, 12, 15), "salmon": (10, 12, 15), "chickpea": (25, 30, 35), "lentil": (30, 35, 40),
            "potato": (25,
        30, 35)},
    ingredients=a_head("1/3 onions (veg), 1 cloves garlic (veg), 8 g ginger (veg), 3 g curry powder (store "
        "cupboard), 1/2 tbsp sunflower oil (store cupboard), 60 g tinned tomatoes (store cupboard), 60 ml coconut "
        "milk (store cupboard), to taste salt"),
    steps=(
        by_hand("chop the onions and ginger", 8, 10, 14, keeps="1 day in the fridge", perishable=False),
        by_hand("cut up the {it}", 8, 10, 15, keeps="12 h in the fridge"),
        on_ring("fry the onions and spices", 14, 16, 20, tool="big pot", keeps="1 h in the room",
            look="onions gold, spices smell toasted", uses=("onions", "garlic", "ginger", "curry powder", "oil")),
        on_ring("simmer the {it} in the curry sauce", 25, 30, 40, own=True, tool="big pot", attended=SIMMERS,
            cooks=THE_FOOD, look="tender, oil at the edge of the sauce", best="30 min",
            keeps="1 h on the stovetop, 1 ring", uses=("{it}", "tomatoes", "coconut milk", "salt")),
    ),
)

MEATBALLS = Pattern(
    name="meatballs", minced=True, course="main", words=listed("meatballs, koftas, kofta, burgers, burger, "
        "hamburgers, patties, rissoles, frikadeller, köttbullar, meat balls"), of=frozenset({"ground meat",
        "whole cut", "poultry"}), food="150 g minced beef (butcher)",
    ingredients=a_head("1/4 onions (veg), 12 g breadcrumbs (bakery), 1/5 eggs (dairy), 1/8 bunches parsley (veg), "
        "1/4 tbsp sunflower oil (store cupboard), to taste salt, to taste black pepper (store cupboard)"),
    steps=(
        by_hand("mix and shape the meatballs", 20, 25, 32, keeps="1 day in the fridge", uses=("{it}", "onions",
            "breadcrumbs", "eggs", "parsley", "salt", "pepper"), how="Mix lightly, all of one size, hands wet. Wash "
            "hands, board and bowl after the raw meat."),
        on_ring("fry the meatballs", 12, 15, 20, grows=True, rings=2, tool="frying pan", cooks="ground meat",
            look="brown all round, the middle by the probe", best="15 min", keeps="30 min hot", uses=("oil",), how=
            "In several goes, turned until brown all round. Hot fat: keep a lid beside it."),
    ),
)

MEAT_LOAF = Pattern(
    name="meat loaf", minced=True, course="main", words=listed("meatloaf, meat loaf"), of=frozenset({"ground meat",
        "whole cut", "poultry"}), food="150 g minced beef (butcher)",
    ingredients=a_head("1/4 onions (veg), 15 g breadcrumbs (bakery), 1/4 eggs (dairy), 1/8 bunches parsley (veg), "
        "to taste salt, to taste black pepper (store cupboard)"),
    steps=(
        by_hand("mix and shape the meat loaf", 14, 18, 24, keeps="1 day in the fridge", uses=("{it}", "onions",
            "breadcrumbs", "eggs", "parsley", "salt", "pepper")),
        in_oven(180, "bake the meat loaf", 50, 60, 70, shelf=12, tool="roasting tin", cooks="ground meat",
            look="juice runs clear, the middle by the probe", keeps="10 min hot"),
        left("rest the meat loaf", 8, 10, 15, best="15 min", keeps="20 min hot"),
        by_hand("slice the meat loaf", 4, 5, 7, best="8 min", keeps="15 min hot"),
    ),
)

SAUSAGES = Pattern(
    name="sausages in the oven", bought=True, course="main", words=listed(
        "sausages, sausage, bangers, snags, bratwurst, chipolatas, bangers and mash"),
        food="150 g pork sausages (butcher)",
    ingredients=a_head("1/4 tbsp sunflower oil (store cupboard)"),
    steps=(
        in_oven(190, "roast the {it}", 25, 30, 35, shelf=12, tool="roasting tin",
            attended="3 min at the start, 1 min every 12 min, 2 min at the end", cooks=THE_FOOD,
            look="brown all round, the middle by the probe", best="15 min", keeps="30 min hot", uses=("{it}", "oil"),
            how="Not pricked; turned twice."),
    ),
)

MEAT_PIE = Pattern(
    name="pie", course="main", words=listed("pie, pot pie, pasty, pasties"), of=MEAT | {"ground meat", "other"},
        food="150 g vegetables (veg)",
    own={"chicken": (45, 50, 60), "beef": (110, 130, 160), "lamb": (90, 105, 125), "pork": (70, 80, 100),
        "venison": (110,
        130, 160), "mushroom": (18, 20, 25), "vegetable": (25, 30, 35)},
    ingredients=a_head("60 g plain flour (baking), 30 g butter (dairy), 1/6 eggs, baked through (dairy), 1/3 onions "
        "(veg), 1/3 carrots (veg), 70 ml vegetable stock (store cupboard), 1/8 bunches thyme (veg), to taste "
            "salt, 250 g ice (drinks)"),
    steps=(
        by_hand("rub the pastry together", 12, 15, 20, keeps="20 min in the room", uses=("flour", "butter", "salt")),
        chilled("rest the pastry cold", 45, 60, 75, keeps="2 days in the fridge"),
        on_ring("simmer the {it} for the filling", 45, 60, 80, own=True, after="nothing", tool="big pot",
            attended="15 min at the start, 2 min every 20 min, 2 min at the end", cooks=THE_FOOD,
            look="tender, and thick enough to stand on a plate", keeps="20 min hot", uses=("{it}", "{beside}",
            "onions", "carrots", "stock", "thyme")),
        cooled("filling", 4),
        by_hand("line and fill the pie", 11, 13, 17, after="rest the pastry cold, cool the filling in ice water",
            keeps="12 h in the fridge", uses=("eggs",), how="The filling has to be cold. Seal the lid, cut a hole "
            "for the steam, brush with egg."),
        in_oven(190, "bake the pie", 45, 50, 60, shelf=8, reheats=True, until="74 C",
            look="deep gold, filling bubbles in the hole", best="30 min", keeps="45 min hot"),
    ),
)

IN_PASTRY = Pattern(
    name="in pastry", course="main", words=listed("wellington, pithivier, en croûte, in puff pastry, "
        "wrapped in pastry"), food="180 g vegetables (veg)",
    own={"salmon": (28, 32, 38), "mushroom": (28, 32, 38)},
    ingredients=a_head("70 g puff pastry (chilled), 60 g mushrooms (veg), 8 g butter (dairy), 1/8 eggs, baked "
        "through (dairy), to taste salt, to taste black pepper (store cupboard)"),
    steps=(
        on_ring("fry the mushrooms dry", 14, 17, 22, tool="frying pan", keeps="90 min in the room",
            look="no water left in the pan", uses=("mushrooms", "butter", "salt")),
        on_ring("brown the {it}", 8, 10, 13, tool="frying pan", grows=True, keeps="10 min in the room",
            uses=("{it}", "pepper"), how="On every side and no more."),
        chilled("chill the {it}", 30, 40, 50, keeps="4 h in the fridge", cools="4 cm deep, metal",
            how="Cold before it is wrapped, or the pastry melts."),
        by_hand("wrap the {it} in the pastry", 14, 18, 24, keeps="4 h in the fridge", uses=("pastry", "eggs")),
        in_oven(200, "bake the {it}", 32, 38, 46, own=True, shelf=12, tool="baking sheet", cooks=THE_FOOD,
            look="deep gold, the middle by the probe", keeps="10 min hot"),
        left("rest the {it}", 8, 10, 14, best="12 min", keeps="15 min hot", how=REST),
        by_hand("slice the {it}", 5, 6, 9, best="6 min", keeps="10 min hot"),
    ),
)

MASH_TOPPED = Pattern(
    name="pie topped with mash", course="main", words=listed("shepherd's pie, shepherds pie, cottage pie, fish pie"),
        food="150 g minced lamb (butcher)",
    own={"lamb": (45, 50, 60), "minced lamb": (45, 50, 60), "beef": (45, 50, 60), "fish": (8, 10, 12)},
    ingredients=a_head("220 g floury potatoes (veg), 15 g butter (dairy), 25 ml whole milk (dairy), 1/3 onions "
        "(veg), 1/3 carrots (veg), 70 ml vegetable stock (store cupboard), to taste salt"),
    steps=(
        by_hand("peel the potatoes", 12, 15, 20, keeps="12 h in the fridge", perishable=False),
        on_ring("boil and mash the potatoes", 28, 32, 38, tool="big pot",
            attended="3 min at the start, 8 min at the end", keeps="1 h hot", look="smooth, no lumps", uses=(
            "potatoes", "butter", "milk", "salt")),
        on_ring("simmer the {it} in the stock", 40, 50, 60, own=True, after="nothing", tool="medium pot",
            attended="12 min at the start, 1 min every 12 min, 2 min at the end", cooks=THE_FOOD,
            look="thick enough to carry the mash", keeps="45 min hot", uses=("{it}", "onions", "carrots", "stock")),
        by_hand("spread the mash over the filling", 6, 8, 12,
            after="boil and mash the potatoes, simmer the {it} in the stock", keeps="20 min hot"),
        in_oven(200, "bake the pie", 25, 30, 35, shelf=8, cooks="casserole",
            look="brown on the ridges, bubbling at the rim", best="15 min", keeps="30 min hot"),
    ),
)

TERRINE = Pattern(
    name="terrine", course="starter", words=listed("terrine, pâté, pate, pâté en croûte, rillettes, country pâté, "
        "liver pâté, parfait of liver, chicken liver parfait"), of=MEAT | {"ground meat"},
        food="80 g chicken livers (butcher)",
    ingredients=a_head("40 g minced pork (butcher), 1/8 onions (veg), 1/8 eggs (dairy), 1/8 bunches thyme (veg), "
        "1/16 cloves garlic (veg), to taste salt, to taste black pepper (store cupboard), 200 g ice (drinks)"),
    steps=(
        by_hand("chop and mix the {it} for the terrine", 18, 22, 28, keeps="1 day in the fridge", uses=("{it}", "pork",
            "onions", "eggs", "thyme", "garlic", "salt", "pepper")),
        in_oven(165, "bake the terrine in a water bath", 75, 90, 105, shelf=12,
            attended="6 min at the start, 2 min every 45 min, 3 min at the end", cooks="poultry",
            look="the middle by the probe, the juice clear", keeps="15 min in the room"),
        cooled("terrine", 5, "3 days"),
        by_hand("slice the terrine", 6, 8, 11, keeps="1 h in the fridge", best="30 min"),
    ),
)

BOILED_MEAT = Pattern(
    name="boiled meat", course="main", done=listed("boiled, poached"), words=listed(
        "boiled beef, poached chicken, bollito, tafelspitz, corned beef"), of=MEAT, food="230 g meat (butcher)",
    own={"chicken": (55, 65, 80), "chicken breast": (18, 22, 27), "beef": (150, 180, 210), "ham": (100, 120, 150),
        "gammon": (100, 120, 150), "tongue": (150, 180, 210), "lamb": (90, 110, 130)},
    ingredients=a_head("1/4 onions (veg), 1/3 carrots (veg), 1/4 sticks celery (veg), 1/4 bay leaves (store "
        "cupboard), to taste salt"),
    steps=(
        on_ring("simmer the {it}", 90, 110, 140, own=True, tool="big pot",
            attended="8 min at the start, 1 min every 30 min, 2 min at the end", cooks=THE_FOOD,
            look="a skewer slides out by itself", keeps="45 min on the stovetop, 1 ring", uses=("{it}", "onions",
            "carrots", "celery", "bay", "salt"), how="From cold water, skimmed well; after that it only trembles."),
        by_hand("carve the {it}", 6, 8, 12, best="10 min", keeps="15 min hot"),
    ),
)

HAM = Pattern(
    name="ham, boiled and glazed", course="main", words=listed("boiled ham, baked ham, glazed ham, roast ham, "
        "christmas ham, boiled gammon, glazed gammon, baked gammon, roast gammon, ham joint, gammon joint, easter "
        "ham"), alone=listed("gammon"), food="220 g gammon (butcher)",
    ingredients=a_head("10 g brown sugar (baking), 1/6 tbsp mustard (store cupboard), 1/4 onions (veg), 1/4 bay "
        "leaves (store cupboard)"),
    steps=(
        on_ring("simmer the {it}", 90, 110, 130, tool="big pot",
            attended="8 min at the start, 1 min every 30 min, 3 min at the end", look="a skewer goes in with no push",
            keeps="40 min hot", uses=("{it}", "onions", "bay")),
        by_hand("take off the skin and brush the {it} with mustard and sugar", 8, 10, 13, keeps="15 min hot", uses=(
            "sugar", "mustard")),
        in_oven(190, "roast the {it}", 25, 30, 38, shelf=16, tool="roasting tin", cooks=THE_FOOD,
            look="brown and sticky; the probe says it is done", keeps="10 min hot"),
        left("rest the {it}", 12, 15, 20, best="20 min", keeps="20 min hot", how=REST),
        by_hand("carve the {it}", 6, 8, 12, best="10 min", keeps="15 min hot"),
    ),
)

STUFFED = Pattern(
    name="stuffed meat", course="main", done=listed("stuffed, filled"), words=listed(
        "ballotine, saltimbocca, cordon bleu, beef olives, rouladen"), of=MEAT, food="200 g meat (butcher)",
    ingredients=a_head("15 g breadcrumbs (bakery), 1/6 onions (veg), 1/8 bunches parsley (veg), 10 g butter "
        "(dairy), to taste salt, to taste black pepper (store cupboard)"),
    steps=(
        by_hand("mix the filling", 10, 12, 16, keeps="1 day in the fridge", uses=("breadcrumbs", "onions", "parsley",
            "butter")),
        by_hand("stuff the {it}", 12, 15, 20, keeps="15 min in the room", uses=("{it}", "salt", "pepper"),
            how="Only just before it goes into the oven."),
        in_oven(180, "roast the {it}", 70, 85, 105, shelf=10, tool="roasting tin",
            attended="3 min at the start, 2 min every 25 min, 3 min at the end", cooks="stuffed",
            look="the probe in the middle of the filling says so", keeps="10 min hot"),
        left("rest the {it}", 10, 12, 15, best="15 min", keeps="20 min hot", how=REST),
        by_hand("slice the {it}", 5, 7, 10, best="8 min", keeps="15 min hot"),
    ),
)

STIR_FRIED = Pattern(
    name="stir-fried", course="main", done=listed("stir-fried, stir fried"), words=listed(
        "stir fry, stir-fry, chow mein, pad thai, fajitas"), food="150 g vegetables (veg)",
    ingredients=a_head("100 g peppers (veg), 1 spring onions (veg), 8 g ginger (veg), 1 cloves garlic (veg), 1/2 "
        "tbsp sunflower oil (store cupboard), 1/2 tbsp soy sauce (store cupboard)"),
    steps=(
        by_hand("slice the peppers and ginger", 12, 15, 20, keeps="8 h in the fridge", perishable=False),
        by_hand("slice the {it} thin", 8, 10, 14, keeps="8 h in the fridge"),
        on_ring("stir-fry the {it}", 8, 10, 13, grows=True, rings=2, tool="wok", cooks=THE_FOOD,
            look="glossy, still firm to the bite", best="8 min", keeps="10 min hot", uses=("{it}", "peppers",
            "spring onions", "ginger", "garlic", "oil", "soy sauce"), how="Very hot and in small goes; what takes "
            "longest goes in first. Hot fat: keep a lid beside it."),
    ),
)

FAMILY = (BRAISED, POT_ROAST, SLOW_ROAST, ROAST_BIRD, ROAST_JOINT, SEARED_MEAT, GRILLED_MEAT, STEW, CURRY, MEATBALLS,
    MEAT_LOAF,
    SAUSAGES, MEAT_PIE, IN_PASTRY, MASH_TOPPED, BOILED_MEAT, HAM, STUFFED, STIR_FRIED, TERRINE)
