"""The evening under way: lanes and states, calls and answers, readings, what is given up."""

from collections.abc import Sequence

from board.base.words.signs import SIGN
from board.base.words.times import dial, to_fahrenheit

ARRIVED_ALREADY = "the guests have arrived already"


def taken_back(what: str) -> str:
    return f"undone: {what}"


def decided(question: str, answer: str) -> str:
    """`Thin it? yes`"""
    return f"{question} {answer}"


def left_out(name: str) -> str:
    return f"left out: {name}"


LANES = {
    "oven": "Oven",
    "stovetop": "Stovetop",
    "fridge": "Fridge",
    "front-of-house": "Front of house",
    "worktop": "Worktop",
}

STATES = {
    "to-come": "to come",
    "called": "called",
    "under-way": "under way",
    "finished": "finished",
    "keeping": "keeping",
    "left-out": "left out",
}


def kept_where(where: str | None) -> str:
    """Where a result is kept; None: it should be somewhere, and had no place there."""
    return "no place for it" if where is None else where


ALL_SERVED = "all courses are out"

REHEARSAL = "rehearsal"

LOOK_FOR = "look for"
PART_SIGN = {"start": SIGN["begin"], "look-in": SIGN["look-in"], "end": SIGN["end"], "reheat": SIGN["stop"]}


def uses(what: str, amount: float) -> str:
    if what == "rings":
        return "1 ring" if amount == 1 else f"{amount:g} rings"
    if what in ("fridge", "freezer"):
        room = "1 litre" if amount == 1 else f"{amount:g} litres"
        return room if what == "fridge" else f"{room} of the freezer"
    return what if amount == 1 else f"{amount:g} × {what}"


def setting(oven: str, celsius: int, fahrenheit: bool = False, as_written: bool = True) -> str:
    return f"{oven} at {dial(celsius, fahrenheit, as_written)}"


def use(
    what: str, amount: float, celsius: int | None, *, off: bool, fahrenheit: bool = False, as_written: bool = True
) -> str:
    if off:
        return f"{what} off"
    return setting(what, celsius, fahrenheit, as_written) if celsius is not None else uses(what, amount)


def core(celsius: float, fahrenheit: bool = False) -> str:
    in_c, in_f = f"{round(celsius, 1):g} °C", f"{to_fahrenheit(celsius):.0f} °F"
    return f"core {in_f} ({in_c})" if fahrenheit else f"core {in_c} ({in_f})"


def look_for(words: str) -> str:
    return f"{LOOK_FOR}: {words}"


def noted(note: str) -> str:
    """What was noted on an evening before."""
    return f"noted: {note}"


# How hard a call asks, by the strokes of its bell.
INSISTENCE_SIGN = {1: "", 2: f"{2 * SIGN['mind']} ", 3: f"{3 * SIGN['mind']} "}


def pushed(course: str, minutes: int) -> str:
    return f"{course} pushed {minutes} min"


OFFER_TAKEN = "New timetable in use · u undoes"


def cannot_push(course: str) -> str:
    return f"{course} has gone out already"


def no_core(name: str) -> str:
    return f"{name}: the plan gives no core temperature for it"


TOLD_UNREAD = "temperature not checked"


def told_unread(name: str) -> str:
    return f"{name}: {TOLD_UNREAD}"


def held_for(text: str, minutes: float) -> str:
    return f"{text}, held {minutes:g} min"


NOTHING_TO_PUT_AWAY = "nothing to put away yet"


def said_together(told: Sequence[str]) -> str:
    return " · ".join(told)


STOPS_ACCEPTED = "In spite of"


def stop_line(stop: str) -> str:
    return f"{SIGN['stop']} {stop}"


COST_PAST = SIGN["mind"]  # before what stands past its limit
