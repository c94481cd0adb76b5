"""Every sign the program shows. Each has one meaning, the same on the board, on paper and in a page.

A sign is one cell wide and known by its shape; colour only repeats what it says. None is a button of a player or
recorder. A family shares a shape: calls are corners and a diamond, work is a box that fills, a food's clock is a ring,
and what really happened is a double stroke. `platecall help signs` shows it.
"""

SIGN_TABLE = {
    "begin": ("◤", "a call to begin"),
    "look-in": ("◇", "a call to look in"),
    "end": ("◢", "a call to end"),
    "box": ("□", "to be ticked once it is done"),
    "under-way": ("◧", "under way"),
    "finished": ("▣", "finished, or ticked"),
    "keeping": ("▒", "keeping: it stands, and is good"),
    "left-out": ("╱", "left out"),
    "served": ("▽", "served"),
    "on-time": ("═", "on time"),
    "tight": ("≈", "tight"),
    "late": ("»", "late"),
    "clock": ("◔", "out of the cold, its clock running"),
    "past": ("⊗", "past its limit"),
    "stop": ("▲", "stop: must be mended"),
    "mind": ("!", "mind"),
    "note": ("◦", "note"),
    "chosen": ("›", "what is chosen"),
    "now": ("┃", "now"),
    "edge": ("▏", "where a stretch of work begins"),
    "hands": ("━", "hands on it"),
    "free": ("▰", "a minute until hands are needed"),
    "planned": ("▬", "planned"),
    "began": ("╟", "really began"),
    "ended": ("╢", "really ended"),
    "at-once": ("╫", "began and ended, too close to draw apart"),
    "goes-on": ("⇢", "goes on beyond the edge"),
    "again": ("↻", "asks again later"),
    "moved": ("⇒", "moved: a push, a new timetable"),
    "wrong": ("↯", "something went wrong"),
    "undone": ("↶", "undone"),
    "noted": ("¶", "noted by you"),
    "reading": ("╽", "a reading"),
    "board": ("⌂", "the board: opened, ended, its clock"),
    "safe": ("✓", "nothing found against it"),
    "ask": ("?", "ask, or read the label"),
    "not-safe": ("✗", "not safe, or not eaten"),
    "nothing": ("–", "nothing here"),
}
SIGN = {name: sign for name, (sign, _) in SIGN_TABLE.items()}

# What large letters are drawn with: which strokes run on to the right, and which below. They are letters, not signs.
LETTERS_RIGHT, LETTERS_DOWN = "━┏┗┣┳┻╋╺", "┃┏┓┣┫┳╋╻"


def sign_row(*names: str) -> str:
    """Some signs beside one another."""
    return " ".join(SIGN[name] for name in names)
