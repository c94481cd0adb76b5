"""Every word the program shows, in one place. A glossary in the README says where each comes from."""

from datetime import datetime

# --- lanes, states, how the evening stands -------------------------------------------------------------------
LANES = {
    "oven": "Oven",
    "stovetop": "Stovetop",
    "fridge": "Fridge",
    "front-of-house": "Front of house",
    "worktop": "Worktop",
}
LANES_SHORT = {
    "oven": "Oven",
    "stovetop": "Stove",
    "fridge": "Fridge",
    "front-of-house": "F.o.h.",
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
IN_HAND, TIGHT, BEHIND = "in hand", "tight", "behind"
STANDING_SIGN = {IN_HAND: "◆", TIGHT: "▲", BEHIND: "■"}


# --- the timetable -------------------------------------------------------------------------------------------
def heat_oven(oven: str, celsius: int, came_from: int | None) -> str:
    verb = "heat" if came_from is None or celsius >= came_from else "let"
    tail = f"to {celsius} °C" if verb == "heat" else f"cool to {celsius} °C"
    return f"{verb} the {oven} {tail}"


def call_heat(oven: str, celsius: int, fahrenheit: int) -> str:
    return f"{oven} to {celsius} °C ({fahrenheit} °F)"


CALL_HEATED = "oven is at its heat"
CALL_COOLED = "oven has come down"


def late(course: str, minutes: int) -> str:
    return f"{course} goes out {minutes} min late"


def over_hours(name: str, when: str) -> str:
    return f"{name} ({when}) lies outside the hours given"


def past_limit(name: str, stands: str, limit: str, where: str) -> str:
    return f"{name} stands {stands}, and keeps {limit} ({where})"


def waits_past(second: str, first: str, waits: str, most: str) -> str:
    return f"{second} begins {waits} after {first}, at most {most} was wanted"


def not_ready_for(first: str, second: str) -> str:
    return f"{first} is not done when {second}"


NO_HOURS_LEFT = "no hours of a free pair of hands are left for it"
NOBODY_HOME = "something hot would run with nobody at home"
HOURS_BEGIN = "the hours given begin only then"


def waits_for(name: str, until: str, reason: str) -> str:
    because = {"order": "it comes first", "hands": "the hands are busy", "oven": "the oven"}.get(reason, reason)
    return f"waits for {name} until {until} ({because})"


def taken_up(name: str, at: str) -> str:
    return f"it is taken up by {name} at {at}"


# --- calls ---------------------------------------------------------------------------------------------------
def call_start(name: str) -> str:
    return name[:1].upper() + name[1:]


def call_end(name: str) -> str:
    return f"Done? {name}"


def call_look_in(name: str) -> str:
    return f"Look in: {name}"


CALL_ARRIVE = "Guests are due"
CALL_SEAT = "Guests to the table"


def call_serve(course: str) -> str:
    return f"Plate {course}"


def call_served(course: str) -> str:
    return f"{course} on the table?"


def call_clear(course: str) -> str:
    return f"Clear {course}"


# --- times ---------------------------------------------------------------------------------------------------
def clock(at: datetime) -> str:
    return at.strftime("%H:%M")


def day_and_clock(at: datetime) -> str:
    return at.strftime("%a %H:%M")


def full_day(at: datetime) -> str:
    return f"{at.strftime('%A')} {at.day} {at.strftime('%B')}"
