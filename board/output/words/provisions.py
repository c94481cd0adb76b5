"""The list of provisions, printed."""

from board.base.words.house import number

PROVISIONS_IN_HOUSE = "In the house, or from the tap: nothing to buy"

PROVISIONS_GROWN = "Dishes not made as written"

PROVISIONS_NO_TRIPS = (
    "The plan has no shopping trip, so the days are proposals. Give it some: `shopping: {fri: 16:00 - 17:30}`."
)


def total_cost(total: str, a_guest: str, unpriced: int) -> str:
    left = f"; {unpriced} without a price, not counted" if unpriced else ""
    return f"Together {total}, {a_guest} a guest{left}"


DRINKS_TITLE = "Drinks"
DRINKS_CAUTION = (
    "Reckoned from common practice, to be changed in the plan; it says nothing of what anybody should drink. Who "
    "drives, is pregnant, takes medicine or is under age: none. Have water and something without alcohol for all; "
    "your law and your guests decide."
)


def drinks_table(drinkers: int, others: int, hours: float) -> str:
    return f"For {drinkers} who may be offered alcohol and {others} who are not, over {number(round(hours, 1))} hours"


def poured(drinks: tuple[str, ...]) -> str:
    return f"Of the usual, less what is poured with courses: {', '.join(drinks)}"


def strength(drink: str, bottles: int, percent: float, drinks: float) -> str:
    held = f"{_bottles(bottles)} at {number(percent)} %"
    return f"{drink}: {held} hold about {drinks:.1f} US standard drinks of 14 g alcohol each (NIAAA)"


def _bottles(count: int) -> str:
    return f"{count} bottle{'s' if count != 1 else ''}"
