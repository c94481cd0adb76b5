"""What the ways of cooking tell the host, as comments of a plan."""

from collections.abc import Sequence

WAY_UNKNOWN = "nothing is known of how it is made: write its steps"
WAY_FOOD_UNKNOWN = "the name does not say: write what goes in"
WAY_FOOD_FROM_NAME = "from the name"
WAY_FOOD_BESIDE = "from the name: say at which step it goes in"
WAY_BOUGHT_BESIDE = "bought: from the name"
LONGEST_NAME = 80  # of a dish that its step still names
AN_OVEN = "an oven"
A_RING = "a ring"


def way_make(dish: str) -> str:
    return f"make the {dish}" if len(dish) <= LONGEST_NAME else "make it"


def serve_with(step: str, foods: Sequence[str]) -> str:
    longer = f"{step} with {' and '.join(foods)}"
    return longer if len(longer) <= LONGEST_NAME else step


def set_out(foods: Sequence[str]) -> str:
    return f"set out the {' and '.join(foods)}"


def plate_with(it: str, foods: Sequence[str]) -> str:
    return serve_with(f"plate the {it}", foods)


def way_taken_for(way: str) -> str:
    return f"taken for {way}: look at it"


def way_needs(way: str, lacks: str) -> str:
    return f"{way} needs {lacks}, and there is none: write its steps"


def way_instead(way: str, asked: str, lacks: str) -> str:
    return f"{way}: {asked} needs {lacks}, and there is none"


def way_shelves(wanted: int) -> str:
    return f"fills {wanted} shelves: in turns, or in smaller pieces"
