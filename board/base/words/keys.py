"""Keys, and what they do."""

from board.base.words.signs import sign_row

# (key, words in the bar, words in help)
HELP_KEY = "?"
KEYS_EVENING = (
    ("space", "answer", "answer the call: begun, looked in, read, done"),
    ("l", "later", "ask again in 5 minutes; pressed again, in 5 more"),
    ("d", "done", "done already: the step was begun and is over"),
    ("x", "out", "leave this step out"),
    ("u", "back", "take the last answer back, as often as you like"),
    ("↑↓", "choose", "choose another call, or something still to come"),
    ("w", "wrong", "what went wrong: 1 to 6, each with its cost first"),
    ("p", "push", "send a course out later, and see what that costs first"),
    ("a", "arrived", "the guests are here"),
    ("s", "seated", "the guests are at the table"),
    ("c", "cleared", "the course is cleared"),
    ("f", "put away", "what is left of a course is put away, in the fridge"),
    ("n", "note", "write a note into the run log"),
    ("r", "better", "go on by the better timetable that is offered"),
    ("t", "probe", "take down what a probe shows in a step or what cools"),
    ("o", "look back", "what happened, every step, and the closing page"),
    ("z", "zoom", "show 45, 90 or 180 minutes ahead"),
    ("v", "theme", "the next theme: dark, light, contrast, plain"),
    ("b", "bell", "bell on or off; the voice with it"),
    (HELP_KEY, "help", "all keys"),
    ("q", "leave", "leave the board; the run log keeps everything"),
)
KEYS_REHEARSAL = (
    ("h", "hold", "hold the rehearsal's clock, or let it go on"),
    (",.", "speed", "slower, faster"),
    ("j", "jump", "jump to the next call"),
)
HELP_TITLE = "Keys"
HELP_SIGNS = (
    (sign_row("begin", "look-in", "end"), "a call to begin, to look in, to end; !! waits, !!! long"),
    (sign_row("on-time", "tight", "late"), "on time, tight, late"),
    (sign_row("under-way", "keeping", "finished"), "under way; it stands, and is good; finished"),
    (sign_row("served", "left-out"), "served; left out"),
    (sign_row("clock", "past"), "its clock runs; past its limit: do not serve or keep"),
    (sign_row("stop", "mind"), "must be mended before anybody eats; mind"),
    (sign_row("hands", "by-itself", "now"), "hands on it; by itself; now"),
)
CLOSE_HINT = "↑ ↓ scroll · esc closes"
BELL_ON, BELL_OFF = "bell on", "bell off"
VOICE_ON, VOICE_OFF = "voice on", "silent"
NOT_CALLED_YET = "it is not called yet; it asks at its time"
ANSWER_WORDS = {"CoursePushed": "the push", "NoteWritten": "the note", "SheetTaken": "the new timetable"}
NO_CALL = "nothing is called; choose something with ↓ first"
NOT_YET_DUE = "not called yet: space begins it early"
NOTHING_TO_CLEAR = "no course waits to be cleared"
NOTHING_TO_SEAT = "the guests are at the table already"
ARRIVED_ALREADY = "the guests have arrived already"
NOTHING_TO_PUSH = "every course is out"
NOTHING_TO_JUMP = "there is no further call"
ONLY_REHEARSAL = "that key works in a rehearsal only"
NOTE_TITLE = "A note"
NOTE_HINTS = ("enter keeps it", "esc leaves it")


def note_about(name: str | None) -> str:
    return f"about: {name}" if name else "about the evening"


NOTE_KEPT = "note kept"
PUSH_TITLE = "Push a course"
PUSH_HINTS = ("↑ before", "↓ next course", "← fewer", "→ more minutes", "enter pushes", "esc leaves it")


def push_line(course: str, minutes: int) -> str:
    return f"{course} by {minutes} min"


LEAVE_TITLE = "Leave the board?"
LEAVE_LINES = (
    "l   leave; the same command comes back to this very point",
    "e   the evening is over: close the run log",
    "esc stay",
)


def board_fault(why: str) -> str:
    return f"Something went wrong in the board ({why}); the run log is whole."


MARKED = {
    "arrive": "the guests are here",
    "seat": "the guests are at the table",
    "clear": "cleared",
}
NOTHING_TO_MARK = {
    "arrive": ARRIVED_ALREADY,
    "seat": NOTHING_TO_SEAT,
    "clear": NOTHING_TO_CLEAR,
}


def also_waiting(calls: list[str]) -> str:
    return f"   +{len(calls)}: " + "  ".join(calls)


def taken_back(what: str) -> str:
    return f"taken back: {what}"


def put_off(name: str, minutes: int) -> str:
    return f"again in {minutes} min: {name}"


def done_already(name: str) -> str:
    return f"done already: {name}"


def left_out(name: str) -> str:
    return f"left out: {name}"
