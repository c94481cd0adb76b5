"""What the ways of cooking tell the host, as comments of a plan."""

WAY_UNKNOWN = "nothing is known of how it is made: write its steps"
WAY_FOOD_UNKNOWN = "the name does not say: write what goes in"
WAY_FOOD_BESIDE = "from the name: say at which step it goes in"
AN_OVEN = "an oven"
A_RING = "a ring"


def way_make(dish: str) -> str:
    return f"make the {dish}"


def way_needs(way: str, lacks: str) -> str:
    return f"{way} needs {lacks}, and there is none: write its steps"


def way_instead(way: str, asked: str, lacks: str) -> str:
    return f"{way}: {asked} needs {lacks}, and there is none"


def way_shelves(wanted: int) -> str:
    return f"fills {wanted} shelves: in turns, or in smaller pieces"
