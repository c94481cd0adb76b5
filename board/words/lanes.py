"""Lanes, states, and how the evening stands."""

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
STATE_SIGN = {"to-come": " ", "called": "▶", "under-way": "━", "keeping": "▒", "finished": "■", "left-out": "×"}
IN_HAND, TIGHT, BEHIND = "in hand", "tight", "behind"
FINISHED_SIGN = "✓"
STANDING_SIGN = {IN_HAND: "◆", TIGHT: "▲", BEHIND: "■"}
