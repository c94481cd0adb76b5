"""The list of provisions, printed and ticked."""

from datetime import date

from board.base.words.signs import SIGN

PROVISIONS_NO_TRIP = "No trip serves these"
PROVISIONS_IN_HOUSE = "In the house, or from the tap: nothing to buy"
PROVISIONS_NO_SECTION = "anywhere"
PROVISIONS_GROWN = "Dishes not made as written"
PROVISIONS_TIMES = (
    "Reduction and cooking times, pots and fridge room are not scaled: look at them yourself for each of these"
)
PROVISIONS_NOTHING = "Nothing to buy: no dish lists ingredients, or all of it is in the house."
PROVISIONS_CAUTION = (
    "Days are chosen by how long foods usually keep raw, and are no promise: the label, your eyes and nose, and your "
    "local food-safety code decide. Allergies: read the label of what you really buy."
)
PROVISIONS_NO_TRIPS = (
    "The plan has no shopping trip, so the days are proposals. Give it some: `shopping: {fri: 16:00 - 17:30}`."
)


def provisions_title(event: str, guests: int) -> str:
    return f"{event}: provisions for {guests}"


def provisions_day(day: date) -> str:
    return f"{day.strftime('%A')} {day.day} {day.strftime('%B')}"


def provisions_trip(day: date, start: str, end: str) -> str:
    return f"{provisions_day(day)}, {start}–{end}"


def provisions_heading(day: str, section: str) -> str:
    return f"{day} · {section}"


def exactly(amount: str) -> str:
    return f"exactly {amount}"


def packs_of(count: int, size: str) -> str:
    return f"{count} pack{'s' if count != 1 else ''} of {size}"


def pack_left_over(amount: str) -> str:
    return f"{amount} left over"


def needed(amount: str) -> str:
    return f"{amount} needed"


def in_the_house(amount: str) -> str:
    return f"{amount} in the house"


def unlike_in_the_house(amount: str) -> str:
    return f"{amount} in the house, which cannot be set against it"


SIDE_BY_SIDE = "how much that is together cannot be told"


def pieces(count: str) -> str:
    return f"{count} piece{'s' if count != '1' else ''}"


ENOUGH_IN_THE_HOUSE = "in the house"
FROM_TAP = "from the tap"


def keeps_too_short(days: int, trip: bool) -> str:
    usual = f"keeps about {days} day{'s' if days != 1 else ''} raw"
    return f"{usual}: {'add a later trip, or freeze it' if trip else 'buy it in two goes, or freeze it'}"


NO_TRIP_BEFORE = "wanted before any trip ends"
SHOP_SHUT = "its shop is shut on every trip before it is wanted"


def whole_for(whole: str, exact: str) -> str:
    return f"{whole} (for {exact})"


def dish_grown(dish: str, written: int, made: str, factor: str) -> str:
    return f"{dish}: written for {written}, made for {made} (× {factor})"


def number(value: float) -> str:
    """Up to four digits, no zeros after the point."""
    return f"{value:.4g}"


def by_hand(factor: float, kind: str) -> str:
    return f"× {number(factor)} only, as for {kind}: common practice, no source; taste"


def money(hundredths: int, sign: str) -> str:
    return f"{sign}{hundredths // 100}.{hundredths % 100:02d}"


def total_cost(total: str, a_guest: str, unpriced: int) -> str:
    left = f"; {unpriced} without a price, not counted" if unpriced else ""
    return f"Together {total}, {a_guest} a guest{left}"


KEYS_TICK = (
    ("↑ ↓", "choose"),
    ("pgup pgdn", "page"),
    ("space", "tick"),
    ("n", "next not ticked"),
    ("q", "leave"),
)
TICKED, NOT_TICKED = SIGN["finished"], SIGN["box"]


def tick_keys() -> str:
    return "   ".join(f"{key} {what}" for key, what in KEYS_TICK)


def ticked_of(done: int, all_: int) -> str:
    return f"{done} of {all_}"


def was(amount: str) -> str:
    return f"ticked as {amount}"


def ticks_broken(name: str) -> str:
    return f"Ticks are not kept: {name} cannot be read, and is left as it is"


def ticks_not_kept(name: str, why: str) -> str:
    return f"Ticks are not kept ({why}): {name}"


NO_TERMINAL_TICK = "ticking needs a terminal to draw on; leave out --tick to print the list"
TICKS_FAILED = "the list ended by a fault; the ticks made before it are kept"
TICKS_HEAD = "What was ticked on the list of provisions, each with its amount. Written by the program."
PANTRY_IN_PANTRY = "a pantry file cannot name another one"
NOT_A_PANTRY = "this is not a list of what is in the house"
PANTRY_MEND = "Write one food a line, for example `- 2 kg flour` or `- salt`."

FOR_THE_TABLE = "drinks for the table"
DRINKS_TITLE = "Drinks"
DRINKS_CAUTION = (
    "Reckoned from common practice, to be changed in the plan; it says nothing of what anybody should drink. Who "
    "drives, is pregnant, takes medicine or is under age: none. Have water and something without alcohol for all; "
    "your law and your guests decide."
)


def drinks_table(drinkers: int, others: int, hours: float) -> str:
    return f"For {drinkers} who may be offered alcohol and {others} who are not, over {number(round(hours, 1))} hours"


def strength(drink: str, bottles: int, percent: float, drinks: float) -> str:
    held = f"{_bottles(bottles)} at {number(percent)} %"
    return f"{drink}: {held} hold about {drinks:.1f} US standard drinks of 14 g alcohol each (NIAAA)"


def _bottles(count: int) -> str:
    return f"{count} bottle{'s' if count != 1 else ''}"


def either(foods: list[str]) -> str:
    """`fennel or 3 celery hearts`."""
    return " or ".join(foods)
