"""What is bought ready: only its serving. Common practice, no source. Found by `as_bought`, not by words."""

# fmt: off
from board.importing.ways.pattern import Pattern, Step, by_hand, in_oven, on_ring

PLATED = Pattern(
    name="bought, to plate", bought=True, course="side", food="100 g bought dish (deli)",
    steps=(by_hand("plate the {it}", 4, 5, 7, best="20 min", keeps="30 min in the room", uses=("{it}",)),),
)

BREAD = Pattern(
    name="bought bread, to warm", bought=True, course="side", food="60 g bread (bakery)",
    steps=(in_oven(180, "warm the {it}", 5, 6, 8, shelf=12, attended="2 min at the start, 1 min at the end",
        look="hot through, the crust crisp", best="10 min", keeps="20 min hot", uses=("{it}",)),),
)

ICE = Pattern(
    name="bought ice, to scoop", bought=True, course="sweet", food="80 g ice cream (freezer)",
    steps=(
        Step(name="soften the {it}", place="fridge", minutes=(10, 12, 15), attended="1 min at the start",
            best="5 min", keeps="8 min in the fridge", uses=("{it}",)),
        by_hand("scoop the {it}", 5, 7, 10, best="4 min", keeps="6 min in the room"),
    ),
)

BOILED = Pattern(
    name="bought, to boil", bought=True, course="side", food="150 g fresh pasta (deli)", ingredients=("to taste salt",),
    steps=(on_ring("boil the {it}", 12, 14, 17, tool="big pot", attended="2 min at the start, 3 min at the end",
        look="done by the packet's minutes", best="5 min", keeps="8 min hot", uses=("{it}", "salt"),
        how="The minutes count the water coming to the boil."),),
)

FAMILY = (PLATED, BREAD, ICE, BOILED)
