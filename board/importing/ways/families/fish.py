"""Fish and shellfish. All figures: common practice, no source."""

# fmt: off
from board.importing.ways.pattern import (
    ENDS,
    THE_FOOD,
    Pattern,
    a_head,
    by_hand,
    chilled,
    in_oven,
    listed,
    on_ring,
)

FISH = frozenset({"fish"})
LOOK = "opaque to the middle, flakes under a fork"

SEARED_FISH = Pattern(
    name="seared fish", course="main", done=listed("seared, pan-fried, pan fried, fried, sautéed, sauteed, "
        "meunière, meuniere"), words=listed("sole meunière, fish cakes, fishcakes"),
    alone=listed("salmon, sea bass, sea bream, cod, trout, scallop, tuna, mackerel, haddock, halibut, turbot, hake, "
        "monkfish, skate, plaice, sole, john dory, prawn, shrimp, squid"), of=FISH,
        food="160 g fish fillets (fishmonger)",
    own={"scallop": (4, 5, 6), "prawn": (4, 5, 6), "shrimp": (4, 5, 6), "squid": (3, 4, 5), "tuna": (4, 5, 7),
        "monkfish": (10, 12, 14)},
    ingredients=a_head("1/4 tbsp sunflower oil (store cupboard), 8 g butter (dairy), 1/4 lemons (veg), to taste salt"),
    steps=(
        by_hand("dry and salt the {it}", 5, 7, 9, keeps="8 h in the fridge", uses=("{it}", "salt")),
        on_ring("sear the {it}", 7, 9, 11, own=True, grows=True, rings=2, tool="frying pan", cooks=THE_FOOD, look=LOOK,
            best="6 min", keeps="8 min hot", uses=("oil", "butter", "lemons"), how="Skin down and pressed flat for "
            "most of the time, turned at the last. Hot fat: keep a lid beside it."),
    ),
)

BAKED_FISH = Pattern(
    name="baked fish", course="main", done=listed("baked, roast, roasted, oven-baked"), words=listed(
        "en papillote, fish in salt, baked fish, whole fish"), of=FISH, food="180 g fish fillets (fishmonger)",
    own={"salmon": (16, 18, 22), "side of salmon": (22, 26, 32), "whole": (28, 32, 40), "sea bass": (16, 20, 25),
        "sea bream": (20, 24, 28), "turbot": (25, 30, 38), "prawn": (8, 10, 12), "shrimp": (8, 10, 12)},
    ingredients=a_head("1/4 tbsp olive oil (store cupboard), 1/6 lemons (veg), 1/8 bunches dill (veg), to taste salt"),
    steps=(
        by_hand("season the {it} on a tray", 6, 8, 11, keeps="6 h in the fridge", uses=("{it}", "oil", "lemons",
            "dill", "salt")),
        in_oven(180, "bake the {it}", 14, 17, 21, own=True, shelf=8, tool="baking sheet", attended=ENDS, cooks=THE_FOOD,
            look=LOOK, best="8 min", keeps="10 min hot"),
    ),
)

FISH_IN_PASTRY = Pattern(
    name="fish in pastry", course="main",
    words=listed("salmon en croûte, fish en croûte, coulibiac, salmon in pastry, salmon wellington, fish wellington"),
    food="160 g salmon (fishmonger)",
    ingredients=a_head("70 g puff pastry (chilled), 25 g spinach (veg), 15 g crème fraîche (dairy), 1/8 eggs, baked "
        "through (dairy), 1/8 bunches dill (veg), to taste salt"),
    steps=(
        by_hand("season the {it} and wrap it in the pastry", 16, 20, 27, keeps="4 h in the fridge",
            uses=("{it}", "pastry", "spinach", "crème fraîche", "eggs", "dill"),
            how="The spinach wilted and squeezed dry, everything cold. Brush with egg, and cut a hole for the steam."),
        in_oven(200, "bake the {it}", 28, 32, 38, shelf=12, tool="baking sheet", cooks=THE_FOOD,
            look="deep gold, the middle by the probe", best="12 min", keeps="15 min hot"),
    ),
)

POACHED_FISH = Pattern(
    name="poached fish", course="main", done=listed("poached, steamed, boiled"), of=FISH,
        food="160 g fish fillets (fishmonger)",
    ingredients=a_head("1/8 onions (veg), 1/8 lemons (veg), 1/4 bay leaves (store cupboard), 1/8 bunches dill "
        "(veg), to taste salt"),
    steps=(
        on_ring("simmer the onions and herbs in water", 18, 20, 25, tool="big pot", attended="3 min at the start",
            keeps="2 h in the room", uses=("onions", "lemons", "bay", "dill", "salt")),
        on_ring("poach the {it}", 9, 11, 14, tool="big pot", attended="3 min at the start, 4 min at the end",
            cooks=THE_FOOD, look=LOOK, best="8 min", keeps="10 min hot", uses=("{it}",), how="The water steams and "
            "does not bubble; lift the fish out with a slice."),
    ),
)

GRILLED_FISH = Pattern(
    name="grilled fish", course="main", done=listed(
        "grilled, broiled, barbecued, bbq, chargrilled, griddled, blackened"), of=FISH,
        food="170 g fish fillets (fishmonger)",
    ingredients=a_head("1/4 tbsp olive oil (store cupboard), 1/4 lemons (veg), to taste salt"),
    steps=(
        by_hand("oil and salt the {it}", 5, 7, 9, keeps="6 h in the fridge", uses=("{it}", "oil", "salt")),
        in_oven(230, "grill the {it}", 8, 10, 12, grows=True, shelf=10, moist=True, tool="baking sheet",
            attended="all", cooks=THE_FOOD, look=LOOK,
            best="6 min", keeps="8 min hot", uses=("lemons",)),
    ),
)

CURED_FISH = Pattern(
    name="cured fish", course="starter", done=listed("cured"), words=listed("gravlax, gravadlax, gravad lax"), of=FISH,
        food="90 g salmon, frozen before (fishmonger)",
    ingredients=a_head("8 g salt, 8 g sugar (baking), 1/8 bunches dill (veg), 1/6 lemons (veg), 15 g crème fraîche "
        "(dairy), 1/8 tbsp mustard (store cupboard)"),
    steps=(
        by_hand("rub the {it} with the cure", 5, 6, 8, keeps="15 min in the room", uses=("{it}", "salt", "sugar",
            "dill"), how="Bones out. Ask at the shop whether it was frozen against parasites: at home it wants a "
            "week at −20 °C first."),
        chilled("cure the {it}", 1440, 1800, 2160, keeps="2 days in the fridge", look="firm to the finger all along",
            how="Wrapped tight with a weight on it, and turned twice."),
        by_hand("slice the {it} thin", 10, 12, 16, best="30 min", keeps="2 h in the fridge"),
        by_hand("mix the mustard sauce and plate", 8, 10, 14, best="20 min", keeps="30 min in the room", uses=(
            "crème fraîche", "mustard", "lemons")),
    ),
)

RAW_PLATE = Pattern(
    name="raw plate", course="starter", done=listed("raw, marinated"), words=listed(
        "carpaccio, tartare, ceviche, sashimi, crudo, poke, tataki"), of=frozenset({"fish", "whole cut", "other"}),
        food="80 g raw vegetables (veg)",
    ingredients=a_head("1/2 tbsp olive oil (store cupboard), 1/4 lemons (veg), 1/2 tbsp capers (store cupboard), 10 "
        "g rocket (veg), to taste salt"),
    steps=(
        chilled("firm up the {it}", 30, 40, 60, keeps="4 h in the fridge",
            how="As cold as the fridge goes: it cuts thinner."),
        by_hand("slice the {it} thin and raw", 12, 15, 20, keeps="2 h in the fridge", uses=("{it}",), how="A very "
            "sharp knife and a clean board, kept for this alone. Straight back into the cold."),
        by_hand("dress and plate the slices", 8, 10, 14, best="10 min", keeps="15 min in the room", uses=("oil",
            "lemons", "capers", "rocket", "salt")),
    ),
)

SMOKED_FISH = Pattern(
    name="smoked fish, set out", course="starter", done=listed("smoked"), words=listed("smoked salmon, smoked "
        "trout, smoked mackerel, smoked eel, blinis, blini"), of=FISH | {"other"},
        food="70 g smoked salmon (fishmonger)",
    ingredients=a_head("1/6 lemons (veg), 20 g crème fraîche (dairy), 1/8 bunches dill (veg), 40 g rye bread (bakery)"),
    steps=(
        by_hand("stir the cream with lemon and dill", 5, 6, 8, keeps="1 day in the fridge", uses=("crème fraîche",
            "lemons", "dill")),
        by_hand("lay out the {it} with the cream and bread", 8, 10, 14, best="20 min", keeps="30 min in the room",
            uses=("{it}", "bread")),
    ),
)

STEAMED_SHELLS = Pattern(
    name="steamed shellfish", course="starter", done=listed("steamed, boiled"), words=listed("boiled lobster, "
        "boiled crab, steamed mussels, steamed clams, boiled langoustines, moules, moules marinière, moules "
        "mariniere, shellfish boil"), alone=listed("mussel, clam, cockle, lobster, crab, langoustine, crayfish"),
        of=FISH, food="400 g mussels (fishmonger)",
    own={"lobster": (12, 14, 16), "crab": (15, 18, 20)},
    ingredients=a_head("1/4 onions (veg), 1/2 cloves garlic (veg), 40 ml white wine (drinks), 8 g butter (dairy), "
        "1/8 bunches parsley (veg)"),
    steps=(
        by_hand("scrub and sort the {it}", 14, 18, 24, keeps="2 h in the fridge", uses=("{it}",),
            how="Throw away what is broken, and what stays open when tapped."),
        on_ring("steam the {it}", 6, 8, 10, own=True, tool="big pot", rings=2, cooks=THE_FOOD,
            look="shells open, the flesh opaque", best="6 min", keeps="8 min hot", uses=("onions", "garlic", "wine",
            "butter", "parsley"), how="Soften the onions, pour in the wine, lid on and shake. What stays shut is "
            "thrown away."),
    ),
)

OYSTERS = Pattern(
    name="shellfish on ice", course="starter", words=listed("oysters, oyster, seafood platter, plateau de fruits de "
        "mer, prawn cocktail, shrimp cocktail"), food="3 oysters (fishmonger)",
    ingredients=a_head("1/4 lemons (veg), 300 g ice (drinks), 1/4 shallots (veg), 1/2 tbsp red wine vinegar (store "
        "cupboard)"),
    steps=(
        by_hand("chop the shallots into the vinegar", 5, 6, 8, keeps="1 day in the fridge", uses=("shallots",
            "vinegar")),
        by_hand("open and lay the {it} on ice", 15, 20, 28, best="10 min", keeps="20 min in the room", uses=("{it}",
            "lemons", "ice"), how="A folded cloth around the hand that holds, the knife at the hinge and away from "
            "you. Throw away any that gapes or smells."),
    ),
)

FAMILY = (SEARED_FISH, BAKED_FISH, FISH_IN_PASTRY, POACHED_FISH, GRILLED_FISH, STEAMED_SHELLS, CURED_FISH, SMOKED_FISH,
    RAW_PLATE,
    OYSTERS)
