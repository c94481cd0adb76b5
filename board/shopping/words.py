"""Words of the list of provisions."""

from datetime import date

from board.base.words.house import number

PROVISIONS_NO_TRIP = "No trip serves these"

PROVISIONS_TIMES = (
    "Reduction and cooking times, pots and fridge room are not scaled: look at them yourself for each of these"
)


def provisions_day(day: date) -> str:
    return f"{day.strftime('%A')} {day.day} {day.strftime('%B')}"


def provisions_trip(day: date, start: str, end: str) -> str:
    return f"{provisions_day(day)}, {start}–{end}"


def provisions_heading(day: str, section: str) -> str:
    return f"{day} · {section}"


def exactly(amount: str) -> str:
    return f"exactly {amount}"


def size_taken(unit: str, size: str) -> str:
    return f"a {unit} taken as {size}"


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


EGGS = "eggs"
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


def by_hand(factor: float, kind: str) -> str:
    return f"× {number(factor)} only, as for {kind}: common practice, no source; taste"


FOR_THE_TABLE = "drinks for the table"


def also_called(food: str, others: list[str]) -> str:
    """`aubergines (also "eggplant")`."""
    said = ", ".join(f'"{each}"' for each in others)
    return f"{food} (also {said})" if others else food


def either(foods: list[str]) -> str:
    """`fennel or 3 celery hearts`."""
    return " or ".join(foods)
