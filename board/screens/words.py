"""What the screens ask and answer: keys, panels, trouble."""

from collections.abc import Sequence

from board.base.words.evening import ARRIVED_ALREADY, core
from board.base.words.signs import SIGN, sign_row
from board.plan.snag import Fix

# --- disk, log, plan, looking on ---------------------------------------------------------------------------------


def not_on_disk(answers: int, why: str) -> str:
    count = "1 answer" if answers == 1 else f"{answers} answers"
    return f"NOT ON DISK YET: {count} ({why}). Go on; it tries again"


def second_copy(why: str) -> str:
    """Of its trouble, or that it is over."""
    return f"Second copy: {why}. It is caught up as soon as it can be" if why else COPY_WHOLE


COPY_WHOLE = "Second copy: whole again"
NO_SECOND_COPY = "copy behind"

PLAN_EDITED = "The plan was edited since this evening began"

PLAN_GO_ON = "enter  go on with the timetable this evening began with"

NEWEST_EVENT = "rehearsal, at its newest event"
EVENING_CLOSED = "the evening is over"

NOT_CALLED = "not called yet"


def looking_for(who: str) -> str:
    return f"{who}'s steps"


def no_evening_yet(path: str) -> str:
    return f"There is no evening in {path} yet. It shows here as soon as there is; q leaves."


KEYS_WATCH = (
    ("↑↓", "look", "look at another call, or at something still to come"),
    ("z", "zoom", "show 45, 90 or 180 minutes ahead"),
    ("b", "bell", "bell on or off"),
    ("?", "help", "this page"),
    ("q", "leave", "leave; the evening goes on without you"),
)

# --- keys and answers --------------------------------------------------------------------------------------------

# (key, words in the bar, words in help)
HELP_KEY = "?"
KEYS_EVENING = (
    ("space", "answer", "answer the call: begun, looked in, read, done"),
    ("l", "later", "ask again in 5 minutes; pressed again, in 5 more"),
    ("d", "done", "done already: the step was begun and is over"),
    ("x", "out", "leave this step out"),
    ("u", "back", "take the last answer back, as often as you like"),
    ("↑↓", "choose", "choose another call; esc, or a while, goes back to now"),
    ("w", "wrong", "what went wrong: 1 to 6, each with its cost first"),
    ("p", "push", "send a course out later, and see what that costs first"),
    ("a", "arrived", "the guests are here"),
    ("s", "seated", "the guests are at the table"),
    ("c", "cleared", "the course is cleared"),
    ("f", "put away", "what is left of a course is put away, in the fridge"),
    ("y", "tell", "tell in one go what was done meanwhile"),
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
KEYS_SHARED = (("m", "phones", "call a helper's phone; the page's address and its code"),)
HELP_TITLE = "Keys"
HELP_SIGNS = (
    (sign_row("begin", "look-in", "end"), "a call to begin, to look in, to end; !! waits, !!! long"),
    (sign_row("on-time", "tight", "late"), "on time, tight, late"),
    (
        sign_row("under-way", "keeping", "finished", "served", "left-out"),
        "under way; it stands; finished; served; left out",
    ),
    (sign_row("clock", "past"), "its clock runs; past its limit: don't serve or keep"),
    (sign_row("stop", "mind"), "must be mended before anybody eats; mind"),
    (sign_row("hands", "now"), "hands on it; now"),
)
CLOSE_HINT = "↑ ↓ scroll · esc closes"
BELL_ON, BELL_OFF = "bell on", "bell off"
VOICE_ON, VOICE_OFF = "voice on", "silent"
NOT_CALLED_YET = "it is not called yet; it asks at its time"

NO_CALL = "nothing to answer; ↓ picks a later step"
NOT_YET_DUE = "not called yet: space begins it early"
NOTHING_TO_CLEAR = "no course waits to be cleared"
NOTHING_TO_SEAT = "the guests are at the table already"

NOTHING_TO_PUSH = "every course is out"
NOTHING_TO_JUMP = "there is no further call"
A_CALL_WAITS = "a call waits: answer it first, or l asks again later"
ONLY_REHEARSAL = "that key works in a rehearsal only"
NOTE_TITLE = "A note"
NOTE_HINTS = ("enter keeps it", "esc leaves it")


def note_about(name: str | None) -> str:
    return f"about: {name}" if name else "about the evening"


NOTE_KEPT = "note kept"
PUSH_TITLE = "Push a course"
PUSH_HINTS = ("↑ before", "↓ next course", "← fewer", "→ more minutes, or type", "enter pushes", "esc leaves it")


def push_line(course: str, minutes: int) -> str:
    return f"{course} by {minutes} min"


PHONES_TITLE = "The page for phones"
PHONES_HINTS = ("↑ before", "↓ next helper", "enter calls them", "esc goes back")
PHONES_CAUTION = "Plain http: for your home network only. Whoever has this address sees it all, and can answer."
NOT_SHARED = "there is no page for phones: begin with --share to have one"
LOOKS, IS_RUNG = "looks on", "called, no answer yet"
BOARD_LEFT = "the board is being left"
PART_DONE = {"start": "begun", "look-in": "looked in", "end": "done"}


def rung(who: str, *, looks: bool) -> str:
    return f"{who} is called" if looks else f"{who} is called; no phone shows their page right now"


def comes(who: str) -> str:
    return f"{who} comes"


def answered_by(who: str, done: str, name: str) -> str:
    return f"{who}: {done}: {name}"


LEAVE_TITLE = "Leave the board?"
LEAVE_LINES = (
    "l   leave; the same command comes back to this very point",
    "e   the evening is over: close the run log",
    "esc stay",
)


def board_fault(why: str) -> str:
    return f"Something went wrong in the board ({why}); the run log is whole."


def opened_in_place(why: str) -> str:
    return f"Opened again after a fault ({why}). Nothing is lost."


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


def also_waiting(count: int) -> str:
    return f"   +{count} more" if count else ""


def put_off(name: str, minutes: int) -> str:
    return f"again in {minutes} min: {name}"


def done_already(name: str) -> str:
    return f"done already: {name}"


# --- the live board ----------------------------------------------------------------------------------------------

HELD = "clock held"

COURSE_GAP = "  ·  "


def course_strip(courses: list[str]) -> str:
    return COURSE_GAP.join(courses)


HINT_GAP = "  ·  "
BUSY_KEYS = (("space", "done"), ("x", "leave out"))


def speed(times: float) -> str:
    return f"×{times:g}"


def answer_keys(word: str, already: str = "", refuse: str = "") -> tuple[tuple[str, str], ...]:
    """The keys of a call, and what each does. `refuse`: the other answer, where it asks."""
    if refuse:
        return (("space", word), ("x", refuse), ("l", "later"))
    return (("space", word), *((("d", already),) if already else ()), ("l", "later"), ("x", "leave out"))


PROGRAM = "platecall"


def notified(headline: str) -> str:
    return f"Now: {headline}"


def title_of_call(headline: str, waits: str, others: int) -> str:
    """For the terminal's title: the call, how long it has waited, and how many others are due."""
    waiting = f" · {waits}" if waits else ""
    return f"{headline}{waiting} · +{others}" if others else f"{headline}{waiting}"


def title_of_quiet(headline: str, course: str) -> str:
    return f"{headline} · {course}" if course else headline


def spoken_call(headline: str, waited_minutes: float) -> str:
    minutes = int(waited_minutes)
    return f"{headline}. Called {minutes} minute{'s' if minutes != 1 else ''} ago." if minutes >= 1 else f"{headline}."


def voice_not_run(command: str, why: str) -> str:
    return f"{command} cannot speak ({why}); the calls go on without it"


def voice_failed(command: str, code: int) -> str:
    return f"{command} did not speak (it ended with {code}); the calls go on without it"


def voice_too_long(command: str, seconds: int) -> str:
    return f"{command} spoke longer than {seconds} s and was ended"


def theme_now(name: str) -> str:
    return f"theme: {name}"


def theme_not_kept(name: str, why: str) -> str:
    return f"theme: {name}; it cannot be remembered ({why})"


NO_OFFER = "No better timetable for what is left is known"
OFFER_SOUGHT = "Still looking for a better timetable"
NOTHING_FOUND_YET = "No timetable found in the time there is; the board tries again by itself"

# --- looking back, and readings ----------------------------------------------------------------------------------

# (key, words in the bar, words in help)
KEYS_LOOK = (
    ("↑↓", "choose", "choose a line; pgup, pgdn, home and end go further"),
    ("tab", "steps", "what happened, or every step with its planned and actual times"),
    ("f", "yours", "all that happened, or only what you did"),
    ("n", "note", "write a note about the chosen step"),
    ("t", "probe", "take down what a probe shows in the chosen step"),
    ("e", "closing page", "how the evening went so far, on one page"),
    ("esc", "board", "back to the board"),
)
LOOK_TITLE = {"all": "What happened", "yours": "What you did", "steps": "Every step"}
LOOK_NOTHING = "nothing yet"


LOOK_HEADS = ("now", "planned", "actual")


def look_title(kind: str, count: int) -> str:
    return f"{LOOK_TITLE[kind]} · {count}"


def look_quiet(clock: str, standing: str) -> str:
    return f"{clock}  {standing}  ·  nothing is called"


def look_due(clock: str, call: str, waited: str, others: int) -> str:
    more = f"  +{others}" if others else ""
    return f"{clock}  {call} · {waited}{more}  ·  esc, then space"


READING_TITLE = "What the probe shows"
READING_HINTS = ("enter keeps it", "↑ the step before", "↓ the next", "esc leaves it")
READING_CAUTION = (
    "In the thickest part, off the bone. A thermometer decides, not the clock; your local code and the label go first."
)
NO_STEP_CHOSEN = "choose a line about a step first"
NOTHING_TO_READ = "no step with a core temperature is under way or keeping"
READING_TROUBLE = {
    "nonsense": "that is no temperature; write for example 74, 73,5 C or 165 F",
    "which-unit": "is that °F or °C? write F or C behind it",
    "no-probe": "no probe in a kitchen shows that; check the figure and its unit",
}


def reading_for(name: str, wanted: float, fahrenheit: bool) -> str:
    return f"{SIGN['chosen']} {name}: {core(wanted, fahrenheit)} wanted"


def reading_unit(fahrenheit: bool) -> str:
    return f"no unit means °{'F' if fahrenheit else 'C'}"


def and_more(count: int) -> str:
    return f"  +{count} more"


CLOSING_KEYS = "↑ ↓ scroll · esc or q closes this page"

# --- what lies behind --------------------------------------------------------------------------------------------

BEHIND_ASKS = "Is it so? What you say is marked in the log as said, not seen."
BEHIND_KEYS = "enter it is so   space tick   t another time   ↑ ↓ choose   n none of it"


def left_cold(told: str) -> str:
    return f"{told}: not heated through, so don't serve it cold; u takes it back, w drops the dish"


NOTHING_BEHIND = "nothing should be done by now that you did not tell"
NOTHING_BUT_CALLS = "nothing but what is called now: space answers it, d if it was done already"
TIMES_TITLE = "When was it?"
TIMES_HINTS = ("17:20, or 17:20-17:55; enter keeps it", "esc leaves it")
BAD_TIMES = "a time that is past, as 17:20 or 17:20-17:55"


def behind_title(over: int, going: int, not_so: int) -> str:
    """`27 steps should be done by now, 2 under way; 3 not ticked`."""
    steps = f"{over} step{'' if over == 1 else 's'} should be done by now"
    return steps + (f", {going} under way" if going else "") + (f"; {not_so} not ticked" if not_so else "")


def behind_offer(count: int) -> str:
    return f"{count} steps should have begun by now: y tells them in one go"


def behind_told(count: int) -> str:
    return f"{count} steps told · u undoes"


def unticked_too(count: int) -> str:
    return f"with {count} that come after it" if count else ""


def ticked_too(count: int) -> str:
    return f"with {count} that must come first" if count else ""


# --- ticking the list --------------------------------------------------------------------------------------------

KEYS_TICK = (
    ("↑ ↓", "choose"),
    ("pgup pgdn", "page"),
    ("space", "tick"),
    ("n", "next not ticked"),
    ("q", "leave"),
)
TICKED, NOT_TICKED = SIGN["finished"], SIGN["box"]


def tick_keys() -> str:
    return "   ".join(f"{key} {what}" for key, what in KEYS_TICK)


def ticked_of(done: int, all_: int) -> str:
    return f"{done} of {all_}"


# --- settling guesses --------------------------------------------------------------------------------------------

KEYS_SETTLE = (
    ("enter", "take it"),
    ("0-9 e", "change"),
    ("space", "rest of dish"),
    ("↓", "skip"),
    ("u", "back"),
    ("q", "stop"),
)
KEYS_SETTLE_TYPING = (("enter", "take it"), ("backspace", "erase"), ("esc", "leave it as it was"))
SETTLE_ALL_DONE = "All of them are settled. enter writes them; u takes the last back."
SETTLE_LEFT = "You are through. enter writes what is settled; the rest stays a guess. u goes back."
SETTLE_NO_LINE = "(no such line in the plan)"
SETTLE_DECIDES_NOTHING = "No course and no limit hangs on it, as the timetable stands."


def settle_keys(width: int, *, typing: bool) -> str:
    return table_keys(KEYS_SETTLE_TYPING if typing else KEYS_SETTLE, width)


def settled_of(done: int, all_: int) -> str:
    return f"{done} of {all_} settled"


def settle_read_as(typed: str, read_as: str) -> str:
    return f"  = {read_as}" if read_as and read_as != typed else ""


# --- food safety -------------------------------------------------------------------------------------------------

READING_HINTS_AT_END = ("enter keeps it and ends it", "w ends it unread", "esc leaves it open")
READING_HINTS_AT_LOOK = ("enter keeps it", "w goes on unread", "esc leaves it open")

READING_COOLS = "how warm is its middle?"


def reading_of_cooling(name: str) -> str:
    return f"{SIGN['chosen']} {name}: {READING_COOLS}"


def read_in(name: str, minutes: int) -> str:
    return f"{name}: read it in {minutes} min (t)"


# --- what went wrong ---------------------------------------------------------------------------------------------

SLIP_TITLE = "What went wrong?"
# Each piece can be pressed by a mouse.
SLIP_HINTS = ("1-6 take it", " · ←", " →", " or m minutes", " · tab which", " · ↑", " ↓ line", " · esc leaves")
SLIP_TYPING_HINTS = ("type the minutes", " · enter takes it", " · esc stops")


def slip_taken(what: str) -> str:
    return f"{what} · u undoes"


# --- the planning table -----------------------------------------------------------------------------------------
KEYS_TABLE = (
    ("↑↓", "look at another line; in the days, at what is done before, after"),
    ("←→", "fold and unfold; in the days, try it sooner, later: enter takes it"),
    ("enter", "edit the line"),
    ("+", "add a course (at courses), a dish (at a course), a step, a job, a line"),
    ("del", "take it out, with all that stands under it"),
    ("[ ]", "move it up, down"),
    ("u a", "take the last change back, as often as you like; have it again"),
    (", .", "the day before, the day after"),
    ("pgdn", "further down, pgup further up; in the days, where not all is seen"),
    ("z", "the hours around it, the whole day"),
    ("1-9", "mend what stands below, or go to its line"),
    ("f", "all findings, the chosen one whole"),
    ("w", "ways out of what cannot be had"),
    ("tab", "the next pane"),
    ("esc", "leave what is typed, tried or shown; back to the plan"),
    ("v", "the next theme"),
    ("s p g", "leave for the sheet, for a page that prints, for who eats what"),
    ("b r l", "leave for the provisions, for a rehearsal, for the live board"),
    ("q", "leave; every change is in the plan already"),
)
TABLE_GOES_ON = ("s", "p", "g", "b", "r", "l")
TABLE_WIDE_KEYS = 112  # columns for the longer bar
KEYS_TABLE_BAR = (("enter", "edit"), ("+", "add"), ("del", "out"), ("u", "back"), ("tab", "pane"), ("?", "keys"),
                  ("q", "leave"))  # fmt: skip
KEYS_TABLE_WIDE = (("↑↓", "look"), ("←→", "fold"), ("enter", "edit"), ("+", "add"), ("del", "out"), ("[ ]", "move"),
                   ("u", "back"), ("tab", "pane"), ("f", "findings"), ("?", "keys"), ("q", "leave"))  # fmt: skip
KEY_TABLE_AGAIN = ("a", "again")
KEYS_TABLE_HELP = (("↑↓", "more keys"), ("?", "back"), ("q", "leave"))
KEYS_TABLE_DAYS = (("↑↓", "look"), ("←→", "sooner, later"), (", .", "day"), ("enter", "its line"), ("tab", "pane"),
                   ("?", "keys"), ("q", "leave"))  # fmt: skip
KEYS_TABLE_FOUND = (("↑↓", "look"), ("enter", "to its line"), ("1-9", "mend"), ("f", "back"), ("?", "keys"),
                    ("q", "leave"))  # fmt: skip
KEYS_TABLE_TYPING = (("enter", "take"), ("→", "complete"), ("ctrl+u", "empty"), ("esc", "leave it"))
KEYS_TABLE_TRYING = (("enter", "take it"), ("←→", "sooner, later"), ("esc", "leave it"))
KEYS_TABLE_WAYS = (("1-9", "take it"), ("esc", "leave it"))
KEYS_TABLE_BOTH = (("1", "take what stands here"), ("2", "take what the file has"))
TABLE_PANES = {"plan": "The plan", "days": "The days", "found": "What matters most"}
TABLE_KEYS = "All keys"
TABLE_ADDS = {
    "course": "a course, `Cheese: Hard cheeses with oatcakes`",
    "dish": "a dish: words of a menu, one of your shelf, or a recipe's file",
    "step": "a step",
    "job": "a job",
    "entry": "an entry",
    "line": "a line, `word: value`",
    "plan": "a first course, `Main: Roast chicken, potatoes`; the plan that it begins marks what is assumed",
    "raw": "a line below this one, as it is to stand in the file",
}
TABLE_NOTHING_BACK = "nothing to take back"
TABLE_NOTHING_AGAIN = "nothing was taken back since the last change"
TABLE_TAKEN_BACK = "taken back; a has it again"
TABLE_CHANGED_IN_PLAN = "lines are changed in the plan: esc goes there"
TABLE_NO_LINE_OF_ITS_OWN = "it is about no line of its own"
TABLE_NOTHING_GUESSED = "nothing is guessed here"
TABLE_BEGUN = "begun; the day, the hour, the zone and the guests are assumed: say them first"
TABLE_WHOLE = "f shows it whole"
TABLE_SEVERAL_LINES = "this stands over several lines; change it in an editor, it is taken up here"
TABLE_FINE = "nothing found"
TABLE_MORE_TO_COME = "what the timetable has to say comes once it is proved"
TABLE_TRYING = "working out what that does"
TABLE_WAYS_SOUGHT = "looking for ways out; half a minute at most"
TABLE_WAY_KEY = "w looks for ways out"
TABLE_NO_WAYS = "no way out was found"
TABLE_NOTHING_LOST = "nothing is given up, so nothing needs a way out"
TABLE_NO_TIME = "choose a step of the timetable first, once it is worked out"
TABLE_NO_DAYS = "the timetable is being worked out"
TABLE_NONE_FOUND = "no timetable was found in time"
TABLE_STOPPED = "no timetable: first mend what stops it"
TABLE_LOOKS_ON = "LOOKING ON"
TABLE_LOOKING_ON = f"{TABLE_LOOKS_ON}: this plan is open at another table"
TABLE_UNWRITTEN = "NOT ON DISK"


def table_keys(keys: Sequence[tuple[str, str]], width: int) -> str:
    """So many of them as there is room for: those at the end, by which all others are found, and the first."""
    told = [f"{key} {what}" for key, what in keys]
    while len("   ".join(told)) > width and len(told) > 2:
        del told[-3 if len(told) > 3 else 0]
    return "   ".join(told)


def table_tried(minutes: int) -> str:
    return f"{abs(minutes)} min {'later' if minutes > 0 else 'sooner'}: "


def table_mend(key: str, fix: Fix) -> str:
    """What a figure key, told with the blank behind it, does about a finding."""
    match fix.how:
        case "add":
            return f"{key}adds {fix.new}"
        case "put":
            return f"{key}writes {fix.loc[-1]}: {fix.new}"
        case "settle":
            return f"{key}takes it as it stands"
        case "begin":
            return f"{key}begins {fix.new}" if fix.new else f"{key}begins the {fix.loc[-1]}"
        case "ask":
            return f"{key}goes through them here"
    return f"{key}writes {fix.new}"


def table_done(what: str) -> str:
    return f"done: {what}; u takes it back"


def table_sheet(*, proved: bool, stale: bool, working: bool) -> str:
    """How the timetable stands."""
    if stale:
        return (
            "of the plan before your last change; working it out" if working else "of the plan before your last change"
        )
    return "proved" if proved else "not proved yet; still searching" if working else "not proved"


def table_adds(what: str) -> str:
    return f"add {TABLE_ADDS[what]}:"


def table_more(before: int, behind: int, *, in_turn: bool) -> str:
    """`in_turn`: they are gone through."""
    if not in_turn:
        return f"and {behind} more: f"
    return " · ".join(f"{count} more: {key}" for count, key in ((before, "↑"), (behind, "↓")) if count)


def table_further(lines: int, *, there: bool) -> str:
    """`there`: the keys go to what has more lines."""
    return f"{lines} more lines: {'pgdn' if there else 'tab'}"


def table_unwritten(why: str) -> str:
    return f"{TABLE_UNWRITTEN}: {why}. What you change is kept here, and written as soon as it can be"


def table_outside(lines: int) -> str:
    return f"an editor changed the file, {lines} {'line' if lines == 1 else 'lines'}; taken up, u takes it back"


TABLE_FOUND_BEFORE = "this is of the plan before the last change, which is being looked over"
TABLE_AGAIN_OUTSIDE = "made again, with what an editor had saved into the file"
TABLE_BACK_OUTSIDE = "taken back, with what an editor had saved into the file; a has it again"


def table_both(number: int, more: int) -> str:
    """`more`: places to choose at after this one."""
    after = f" ({more} more)" if more else ""
    return f"Changed here and in the file, line {number}{after}:"


TABLE_HERE, TABLE_THERE, TABLE_NO_LINE = "  1 here: ", "  2 file: ", "(no line)"


def table_settled(count: int) -> str:
    return "1 guess settled; u takes it back" if count == 1 else f"{count} guesses settled; u takes them back"


def table_out(what: str) -> str:
    return f"out: {what}; u brings it back"
