"""Two menus beside each other."""

BESIDE_MENU = "menu"
BESIDE_AHEAD = "work on days before"
BESIDE_ON_THE_DAY = "work on the day"
BESIDE_WITH_GUESTS = "you with the guests"
BESIDE_BUSIEST = "busiest half hour"
BESIDE_CLASHES = "clashes"
BESIDE_STOPS = "stops"
BESIDE_COST = "cost"
BESIDE_ROWS = (BESIDE_MENU, BESIDE_AHEAD, BESIDE_ON_THE_DAY, BESIDE_WITH_GUESTS, BESIDE_BUSIEST, BESIDE_CLASHES,
               BESIDE_STOPS, BESIDE_COST)  # fmt: skip
BESIDE_FOOT = "Nothing was written. A plan's figures are as good as what it says: a dish without steps is a guess."


def beside_dishes(dishes: int, courses: int) -> str:
    return f"{dishes} dish{'es' if dishes != 1 else ''} in {courses} course{'s' if courses != 1 else ''}"


def beside_of(part: str, whole: str) -> str:
    return f"{part} of {whole}"


def beside_busiest(minutes: int, course: str) -> str:
    return f"{minutes} min of work before {course}"


def beside_cost(sums: str, unpriced: int) -> str:
    return f"{sums}, and {unpriced} without a price" if unpriced else sums
