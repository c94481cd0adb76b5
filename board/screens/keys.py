"""One table: key → what it does. Its words are in `words/`."""

from textual.binding import Binding, BindingType

BINDINGS: list[BindingType] = [
    Binding("space,enter", "answer", show=False),
    Binding("l", "later", show=False),
    Binding("d", "done_already", show=False),
    Binding("x", "leave_out", show=False),
    Binding("u", "take_back", show=False),
    Binding("up", "choose(-1)", show=False),
    Binding("down", "choose(1)", show=False),
    Binding("w", "slip", show=False),
    Binding("p", "push", show=False),
    Binding("a", "mark('arrive')", show=False),
    Binding("s", "mark('seat')", show=False),
    Binding("c", "mark('clear')", show=False),
    Binding("f", "put_away", show=False),
    Binding("n", "note", show=False),
    Binding("r", "take_offer", show=False),
    Binding("t", "reading", show=False),
    Binding("o", "look", show=False),
    Binding("y", "tell_behind", show=False),
    Binding("m", "phones", show=False),
    Binding("v", "theme", show=False),
    Binding("b", "bell", show=False),
    Binding("question_mark,f1", "help", show=False),
    Binding("q,ctrl+q", "leave", show=False, priority=False),
    Binding("z", "zoom", show=False),
    Binding("h", "hold", show=False),
    Binding("full_stop", "speed(2.0)", show=False),
    Binding("comma", "speed(0.5)", show=False),
    Binding("j", "jump", show=False),
]

# Keys that only the help lists when the bar lacks room, the first of them first.
LEFT_TO_HELP = ("y", "f", "z", "v", "b", "s", "n", "o")

# The action behind each word of the key bar, so that it can be clicked.
ACTIONS = {
    "space": "answer",
    "l": "later",
    "d": "done_already",
    "x": "leave_out",
    "u": "take_back",
    "↑↓": "choose(1)",
    "w": "slip",
    "p": "push",
    "a": "mark('arrive')",
    "s": "mark('seat')",
    "c": "mark('clear')",
    "f": "put_away",
    "n": "note",
    "r": "take_offer",
    "t": "reading",
    "o": "look",
    "y": "tell_behind",
    "m": "phones",
    "v": "theme",
    "b": "bell",
    "z": "zoom",
    "?": "help",
    "q": "leave",
    "h": "hold",
    ",.": "speed(2.0)",
    "j": "jump",
}
