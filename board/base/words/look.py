"""Looking back during the evening, probe readings, and the closing page."""

from collections.abc import Sequence

from board.base.words.lanes import kept_where
from board.base.words.live import core
from board.base.words.signs import SIGN
from board.base.words.times import degrees, degrees_alone, missing, span

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
LOOK_SIGNS = {
    "later": SIGN["again"],
    "slip": SIGN["wrong"],
    "out": SIGN["left-out"],
    "push": SIGN["moved"],
    "note": SIGN["noted"],
    "reading": SIGN["reading"],
    "warned": SIGN["mind"],
    "stops": SIGN["stop"],
    "past": SIGN["past"],
    "put-away": SIGN["finished"],
    "back": SIGN["undone"],
    "board": SIGN["board"],
}


def look_title(kind: str, count: int) -> str:
    return f"{LOOK_TITLE[kind]} · {count}"


def look_quiet(clock: str, standing: str) -> str:
    return f"{clock}  {standing}  ·  nothing is called"


def look_due(clock: str, call: str, waited: str, others: int) -> str:
    more = f"  +{others}" if others else ""
    return f"{clock}  {call} · {waited}{more}  ·  esc, then space"


def told_called(headline: str) -> str:
    return f"called: {headline}"


def told_begun(name: str) -> str:
    return f"begun: {name}"


def told_looked_in(name: str) -> str:
    return f"looked in: {name}"


def told_done(name: str, by_itself: bool) -> str:
    return f"ended by itself: {name}" if by_itself else f"done: {name}"


def told_later(name: str, minutes: int) -> str:
    return f"later: {name}, again in {minutes} min"


def told_note(text: str, about: str | None) -> str:
    return f"note on {about}: {text}" if about else f"note: {text}"


def told_warned(name: str) -> str:
    return f"soon keeps no longer: {name}"


def told_undone(text: str) -> str:
    return f"{text} (taken back)"


TOLD_OPENED, TOLD_REOPENED, TOLD_CLOSED = "the board was opened", "the board came back", "the evening was ended"
TOLD_NOTHING = "an answer"


def about_step(pieces: list[str]) -> str:
    return " · ".join(pieces)


def note_line(clock: str, text: str) -> str:
    return f"{clock} “{text}”"


# --- readings ----------------------------------------------------------------------------------------------------
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
    return f"a bare figure is °{'F' if fahrenheit else 'C'}"


def reading(celsius: float, wanted: float, lacks: float, fahrenheit: bool) -> str:
    """`core 71 °C (159.8 °F), 3 °C below the 74 wanted`."""
    core = f"core {degrees(celsius, fahrenheit)}"
    if not lacks:
        return f"{core}, {degrees_alone(wanted, fahrenheit)} wanted"
    side = "below" if celsius < wanted else "above"
    return f"{core}, {missing(lacks, fahrenheit)} {side} the {degrees_alone(wanted, fahrenheit)} wanted"


def reading_at(celsius: float, clock: str, wanted: float, fahrenheit: bool) -> str:
    """`core 71 °C (159.8 °F) at 18:42, 74 wanted`, for a call's detail."""
    return f"core {degrees(celsius, fahrenheit)} at {clock}, {degrees_alone(wanted, fahrenheit)} wanted"


def reading_again(text: str, minutes: int) -> str:
    return f"{text}; asked again in {minutes} min"


def reading_cold(celsius: float, limit: float, fahrenheit: bool) -> str:
    return f"core {degrees(celsius, fahrenheit)}; hot food is kept at {degrees(limit, fahrenheit)} or above"


# --- what stands -------------------------------------------------------------------------------------------------
def soon_over(name: str, left: str, limit: str, where: str | None) -> str:
    return f"{name} keeps {left} more, till {limit} ({kept_where(where)})"


def and_more(count: int) -> str:
    return f"  +{count} more"


# --- the closing page --------------------------------------------------------------------------------------------
CLOSING_KEYS = "↑ ↓ scroll · esc or q closes this page"
CLOSING_COURSES = "Courses"
CLOSING_OUT, CLOSING_AT_TABLE, CLOSING_STEPS = "out", "At the table", "Steps"
CLOSING_KEPT, CLOSING_READINGS, CLOSING_PUT_AWAY = "Kept longest", "Readings", "Put away"
CLOSING_PLANNED, CLOSING_ACTUAL = "planned", "actual"
CLOSING_BEGAN, CLOSING_ENDED = "began", "ended"
CLOSING_LEGEND = " · ".join(
    [*(f"{SIGN[mark]} {mark}" for mark in (CLOSING_PLANNED, CLOSING_BEGAN, CLOSING_ENDED)), "then how much later"]
)
KEPT_TOO_LONG = (
    "What stood past its limit: with food, when in doubt, throw it out. The label and your local code go first."
)


def closing_title(plan: str, day: str, rehearsal: bool, closed: bool) -> str:
    kind = ", a rehearsal" if rehearsal else ""
    return f"{plan} · {day}{kind}" if closed else f"{plan} · {day}{kind}, so far"


def closing_late(minutes: int) -> str:
    return f"{span(minutes)} late" if minutes > 0 else f"{span(-minutes)} early" if minutes < 0 else "on time"


def closing_pushed(minutes: int) -> str:
    return f"pushed {span(minutes)}"


def closing_kept(name: str, stood: int, limit: int, where: str | None) -> str:
    over = f", {span(stood - limit)} past it" if stood > limit else ""
    shown = f"{stood} of {limit} min" if limit < 120 else f"{span(stood)} of {span(limit)}"
    return f"{name}: {shown} ({kept_where(where)}){over}"


def closing_put_away(course: str, at: str, dish: str, stood: int, limit: int) -> str:
    """`Main, 22:10: custard had been out 85 of 120 min`."""
    over = f", {span(stood - limit)} past it" if stood > limit else ""
    return f"{course}, {at}: {dish} had been out {stood} of {limit} min{over}"


def closing_not_told(courses: Sequence[str]) -> str:
    return f"not told: when what was left of {', '.join(courses)} was put away"


def closing_reading(name: str, at: str, reading: str) -> str:
    return f"{name}, {at}: {reading}"


def closing_note(at: str, about: str | None, text: str) -> str:
    return f"{at} ({about}) {text}" if about else f"{at} {text}"


def closing_day(day: str) -> str:
    return f"{CLOSING_STEPS}, {day}"


def closing_bars(name: str, planned: str, actual: str) -> str:
    """What a row's bar and its marks show, for who hears the page."""
    return f"{name}: {CLOSING_PLANNED} {planned}; {CLOSING_ACTUAL} {actual}"
