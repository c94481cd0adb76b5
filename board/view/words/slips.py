"""What went wrong, what it costs, and how long the host is free."""

from collections.abc import Sequence

from board.base.words.evening import COST_PAST
from board.base.words.times import span

COSTS_NOTHING = "no course moves, nothing goes past its limit"
SLIP_NONE = {
    "not-ready": "Not ready yet (nothing is under way)",
    "guests": "Guests late (they have arrived)",
    "sitting": "Guests linger (nothing is on the table)",
    "dish": "Drop a dish (none is left)",
    "oven": "Oven went cold (none is in use)",
    "length": "Change a step's time (none is left)",
}

NOTHING_YOURS = "No more calls for you"


def yours_free_for(length: str, next_name: str) -> str:
    return f"Your next, in {length}: {next_name}"


def slip_not_ready(name: str, minutes: int) -> str:
    return f"Not ready yet, {span(minutes)} more: {name}"


def slip_guests(minutes: int) -> str:
    return f"Guests late by {span(minutes)}"


def slip_sitting(course: str, minutes: int) -> str:
    return f"Guests linger over {course}, {span(minutes)} more"


def slip_dish(dish: str, course: str | None) -> str:
    return f"Drop {dish} ({course})" if course else f"Drop {dish}"


def slip_oven(oven: str, minutes: int, count: int) -> str:
    things = "what's in it" if count == 1 else f"all {count} in it"
    return f"{oven} went cold: add {span(minutes)} to {things}"


def slip_oven_next(oven: str, minutes: int) -> str:
    return f"{oven} went cold: add {span(minutes)} to what goes in next"


def slip_length(name: str, minutes: int) -> str:
    return f"Change a step's time, {span(abs(minutes))} {'more' if minutes > 0 else 'less'}: {name}"


def slip_one_of(number: int, count: int) -> str:
    return f" ({number} of {count})"


def slip_go_on_without(names: str) -> str:
    return f"goes on without it: {names}"


def slip_on_heat(names: str) -> str:
    return f"on the heat now: {names}. Take it off, turn the heat off"


def cost_course(name: str, at: str, late: int, instead_of: str) -> str:
    """`instead_of`: when it would go out otherwise, where that is later."""
    when = f"{name} {at} instead of {instead_of}" if instead_of else f"{name} {at}"
    return f"{when}, {span(late)} late" if late else f"{when}, on time"


def cost_stands(name: str, stood: int, limit: int) -> str:
    past = f", {span(stood - limit)} too long" if stood > limit else ""
    sign = COST_PAST if past else ""
    stand = f"{stood} of {limit} min" if max(stood, limit) < 60 else f"{span(stood)} of {span(limit)}"
    return f"{sign + ' ' if sign else ''}{name} kept {stand}{past}"


def cost_company(minutes: int) -> str:
    word = "more" if minutes > 0 else "less"
    return f"{span(abs(minutes))} {word} in the kitchen while the guests are there"


def costs_beside(lines: Sequence[str]) -> str:
    return " · ".join(lines)


def costs_more(count: int) -> str:
    return f"+{count} more"


def slipped_step(names: str, minutes: int) -> str:
    return f"{names}: {minutes:+d} min"


def slipped_oven(oven: str, names: str, minutes: int) -> str:
    return f"{oven} went cold, {names}: {minutes:+d} min"


def slipped_guests(minutes: int) -> str:
    return f"guests {minutes} min late"


def slipped_sitting(course: str, minutes: int) -> str:
    return f"guests linger over {course}: {minutes:+d} min"


def slipped_dish(dish: str) -> str:
    return f"{dish} dropped"
