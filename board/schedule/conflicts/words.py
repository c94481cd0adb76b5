"""Ways out of a clash, and their prices."""

from board.base.words.times import degrees, dial

SECOND_OVEN, A_HELPER = "second oven", "helper"
ON_A_RING, IN_A_BOX = "on a ring, at the lowest flame or on a heat spreader", "in an insulated box, warmed first"


def way_share(name: str, celsius: int, *, kept: bool) -> str:
    what = f"what comes of '{name}'" if kept else f"'{name}'"
    return f"let {what} stand at {dial(celsius)} too, if the recipe bears it"


def way_keep(name: str, where: str, hot_celsius: int) -> str:
    hot = degrees(hot_celsius)
    return f"keep what comes of '{name}' {where}; it must stay at {hot} or above"


def way_another_day(name: str) -> str:
    return f"let '{name}' be done whenever it suits, as long as it keeps"


WAY_OVEN = "borrow a second oven"


def way_rings(number: int) -> str:
    return "borrow a plug-in ring" if number == 1 else f"borrow {number} plug-in rings"


def way_room(where: str, litres: int) -> str:
    return f"find {litres} litres more {where} room: a neighbour's, a cool box with ice"


def way_tool(name: str) -> str:
    return f"borrow one more {name}"


def way_earlier(who: str, day: str, start: str, minutes: int) -> str:
    return f"{who} begins {minutes} min earlier {day}, at {start}"


def day_of_plan(days_before: int) -> str:
    return "on the day" if days_before <= 0 else "day before" if days_before == 1 else f"{days_before} days before"


def way_helper(minutes: int, start: str, end: str, day: str) -> str:
    return f"a helper for {minutes} min of work, from {start} to {end} {day}"


def way_push(course: str, minutes: int, at: str) -> str:
    return f"serve {course} {minutes} min later, at {at}"


def way_buy(dish: str) -> str:
    return f"buy '{dish}' ready; its label says how it keeps and whether it must be heated"


def way_drop(dish: str) -> str:
    return f"leave out '{dish}'"


def price_moved(course: str, now: str, before: str) -> str:
    return f"{course} goes out at {now} instead of {before}"


def price_away(minutes: int) -> str:
    return f"{abs(minutes)} min {'more' if minutes > 0 else 'less'} in the kitchen while guests are there"


def price_remains(count: int, first: str) -> str:
    if not count:
        return "then nothing is given up"
    more = f" and {count - 1} more" if count > 1 else ""
    return f"still given up: {first}{more}"
