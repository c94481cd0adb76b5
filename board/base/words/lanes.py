"""Lanes, states, and how the evening stands."""

from board.base.words.signs import SIGN

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
STATE_SIGN = {"to-come": " ", "called": SIGN["begin"]} | {
    state: SIGN[state] for state in ("under-way", "keeping", "finished", "left-out")
}


def kept_where(where: str | None) -> str:
    """Where a result is kept; None: it should be somewhere, and had no place there."""
    return "no place for it" if where is None else where


STANDS_ON_TIME, STANDS_TIGHT, STANDS_LATE = "On time", "Tight", "Late"
STANDING_SIGN = {STANDS_ON_TIME: SIGN["on-time"], STANDS_TIGHT: SIGN["tight"], STANDS_LATE: SIGN["late"]}
