"""Ways out of a clash, and their prices."""

from collections.abc import Sequence

from board.base.dial import in_both_scales
from board.base.words.times import degrees, dial

SECOND_OVEN, A_HELPER = "second oven", "helper"
ON_A_RING, IN_A_BOX = "on a ring, at the lowest flame or on a heat spreader", "in an insulated box, warmed first"


def way_share(name: str, celsius: int) -> str:
    return f"let what comes of '{name}' stand at {dial(celsius)} too, if the recipe bears it"


def way_bend(name: str, written: int, celsius: int, other: str, longer: int, *, in_fahrenheit: bool) -> str:
    """`'roast the lamb': written 170 °C, set to 160 °C to share the oven with Gratin, 3 min longer or a little
    more`: see `facts.oven_bends.minutes_at`."""
    was, now = (in_both_scales(each, in_fahrenheit=in_fahrenheit)[in_fahrenheit] for each in (written, celsius))
    minutes = f", {abs(longer)} min {'longer' if longer > 0 else 'shorter'} or a little more" if longer else ""
    return f"'{name}': written {was}, set to {now} to share the oven with {other}{minutes}"


def way_keep(name: str, where: str, hot_celsius: int) -> str:
    hot = degrees(hot_celsius)
    return f"keep what comes of '{name}' {where}; it must stay at {hot} or above"


def way_cold(name: str) -> str:
    return f"keep what comes of '{name}' in the fridge"


def way_another_day(name: str) -> str:
    return f"let '{name}' be done whenever it suits, as long as it keeps"


WAY_OVEN = "borrow a second oven"


def way_rings(number: int) -> str:
    return "borrow a plug-in ring" if number == 1 else f"borrow {number} plug-in rings"


def way_room(where: str, litres: int) -> str:
    return f"find {litres} litres more {where} room: a neighbour's, a cool box with ice"


def way_tool(name: str) -> str:
    return f"borrow one more {name}"


def way_who(who: str, name: str, instead_of: list[str]) -> str:
    return f"{who} does '{name}' instead of {' or '.join(instead_of)}"


def way_away(who: str, what: str, minutes: int, times: str) -> str:
    return f"{who}'s '{what}' {abs(minutes)} min {'earlier' if minutes < 0 else 'later'}, {times}, if it can move"


def way_sooner(who: str, days_before: int, start: str, minutes: int) -> str:
    return f"{who} begins {minutes} min earlier {day(days_before)}, at {start}"


def way_longer(who: str, days_before: int, end: str, minutes: int) -> str:
    return f"{who} works {minutes} min longer {day(days_before)}, until {end}"


def way_evening(who: str, days_before: int, times: str) -> str:
    which = "the evening before" if days_before == 1 else f"an evening {days_before} days before"
    return f"{who} works {which} too, {times}"


def together(changes: Sequence[str]) -> str:
    return "; and ".join(changes)


def way_timed(what: str, when: str) -> str:
    return f"{what} (then {when})"


def way_beside(name: str, other: str, celsius: int, core: int) -> str:
    return f"heat '{name}' through beside '{other}' at {dial(celsius)}, covered, until it is {dial(core)} in the middle"


def day_key(days_before: int) -> str:
    """A day as a plan writes it."""
    return "on the day" if days_before <= 0 else "day before" if days_before == 1 else f"{days_before} days before"


def day(days_before: int) -> str:
    """A day in a sentence."""
    return "the day before" if days_before == 1 else day_key(days_before)


def way_helper(minutes: int, start: str, end: str, key: str) -> str:
    return f"a helper for {minutes} min of work, from {start} to {end} {key}"


def way_serve_later(course: str, minutes: int, at: str) -> str:
    return f"serve {course} {minutes} min later, at {at}"


def way_serve_sooner(course: str, minutes: int, at: str) -> str:
    return f"serve {course} {minutes} min earlier, at {at}"


def way_buy(dish: str) -> str:
    return f"buy '{dish}' ready; its label says how it keeps and whether it must be heated"


def way_drop(dish: str) -> str:
    return f"leave out '{dish}'"


def course_moved(course: str, before: str, now: str) -> str:
    return f"{course} {before} → {now}"


def away(minutes: int, *, at_most: bool = False) -> str:
    up_to = "up to " if at_most else ""
    more = "more" if minutes > 0 else "less"
    return f"{up_to}{abs(minutes)} min {more} in the kitchen while guests are there"


def sooner_up(course: str, minutes: int) -> str:
    return f"you get up {minutes} min into {course}" if minutes else f"you do not sit down to {course}"


def after_wanted(course: str, minutes: int) -> str:
    return f"{course} {minutes} min later than you wanted"


def stale(minutes: int) -> str:
    return f"hot food stands {minutes} min longer past its best"


def done_ahead(on: str, names: list[str]) -> str:
    more = f" and {len(names) - 3} more" if len(names) > 3 else ""
    return f"done {on} already: {', '.join(names[:3])}{more}"


def costs(pieces: list[str]) -> str:
    return f"costs: {'; '.join(pieces)}"


def remains(count: int, first: str) -> str:
    if not count:
        return "then nothing is given up"
    more = f" and {count - 1} more" if count > 1 else ""
    return f"still given up: {first}{more}"
