"""The live board."""

from datetime import datetime

from board.base.words.lanes import kept_where
from board.base.words.signs import SIGN
from board.base.words.times import day_and_clock, dial, span, to_fahrenheit

DONE_BEGIN, DONE_LOOK, DONE_END = "begun", "looked in", "done"
NOTHING_MORE = "All done"
NOTHING_MORE_DETAIL = "Nothing is left to call. q ends the evening."
ALL_SERVED = "all courses are out"
OPENING = "the keys work in a moment"
REHEARSAL = "rehearsal"
HELD = "clock held"
LOOK_FOR = "look for"
PART_SIGN = {"start": SIGN["begin"], "look-in": SIGN["look-in"], "end": SIGN["end"]}


def too_early_for_guests(arrive: datetime) -> str:
    return f"the guests are looked for at {day_and_clock(arrive)}, so they are not here yet"


def free_until(clock_words: str) -> str:
    return f"Free till {clock_words}"


def free_for(length: str, next_name: str) -> str:
    return f"No hands needed for {length}. Then: {next_name}"


def hands_on(name: str) -> str:
    return name[:1].upper() + name[1:]


def hands_on_left(left: str, who: str) -> str:
    return f"{who}: hands on, {left} left" if who else f"hands on, {left} left"


def in_oven(oven: str) -> str:
    return f" ({oven})"


def course_in(name: str) -> str:
    return f"{name} in"


def goes_out_at(wanted: str, served: str, late_minutes: int) -> str:
    if late_minutes:
        return f"{wanted} → {served}, {span(late_minutes)} late"
    return served if served == wanted else f"{wanted} → {served}"


COURSE_GAP = "  ·  "


def course_strip(courses: list[str]) -> str:
    return COURSE_GAP.join(courses)


def course_out(name: str, at: str) -> str:
    return f"{name} {SIGN['served']} {at}"


def course_ahead(name: str, at: str, late_minutes: int) -> str:
    return f"{name} {at} (+{late_minutes})" if late_minutes else f"{name} {at}"


def course_dropped(name: str) -> str:
    return f"{name} left out"


def uses(what: str, amount: float) -> str:
    if what == "rings":
        return "1 ring" if amount == 1 else f"{amount:g} rings"
    if what in ("fridge", "freezer"):
        room = "1 litre" if amount == 1 else f"{amount:g} litres"
        return room if what == "fridge" else f"{room} of the freezer"
    return what if amount == 1 else f"{amount:g} × {what}"


def setting(oven: str, celsius: int, fahrenheit: bool = False) -> str:
    return f"{oven} at {dial(celsius, fahrenheit)}"


def use(what: str, amount: float, celsius: int | None, *, off: bool, fahrenheit: bool = False) -> str:
    if off:
        return f"{what} off"
    return setting(what, celsius, fahrenheit) if celsius is not None else uses(what, amount)


def core(celsius: float, fahrenheit: bool = False) -> str:
    in_c, in_f = f"{round(celsius, 1):g} °C", f"{to_fahrenheit(celsius):.0f} °F"
    return f"core {in_f} ({in_c})" if fahrenheit else f"core {in_c} ({in_f})"


def look_for(words: str) -> str:
    return f"{LOOK_FOR}: {words}"


SHEET_NOTED = "Noted on evenings before"


def noted(note: str) -> str:
    """What was noted on an evening before."""
    return f"noted: {note}"


def waited(seconds: float) -> str:
    minutes = int(seconds // 60)
    return f"called {span(minutes)} ago" if minutes >= 1 else "called just now"


# How hard a call asks, by the strokes of its bell.
INSISTENCE_SIGN = {1: "", 2: f"{2 * SIGN['mind']} ", 3: f"{3 * SIGN['mind']} "}
DONE_ALREADY = "done already"


def stands_until(name: str, left: str, limit: str, where: str | None) -> str:
    return f"{name}: keeps {left} more, till {limit} ({kept_where(where)})"


def past_keeping(name: str, over: str, where: str | None) -> str:
    return f"{name}: {over} past what it keeps ({kept_where(where)})"


BUSY_HINT = "space done  ·  x leave out"


def speed(times: float) -> str:
    return f"×{times:g}"


def answer_hint(word: str, already: str = "") -> str:
    more = f"  ·  d {already}" if already else ""
    return f"space {word}{more}  ·  l later  ·  x leave out"


def spoken_call(headline: str, waited_minutes: float) -> str:
    minutes = int(waited_minutes)
    return f"{headline}. Called {minutes} minute{'s' if minutes != 1 else ''} ago." if minutes >= 1 else f"{headline}."


def spoken_warning(name: str, minutes_left: float) -> str:
    minutes = round(minutes_left)
    return f"{name} keeps {minutes} more minute{'s' if minutes != 1 else ''}."


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


def pushed(course: str, minutes: int) -> str:
    return f"{course} pushed {minutes} min"


# A better timetable for what is left.
OFFER_GAINS = {"kept": "food stands {} min less past its limit", "away": "{} min more with your guests"}
NO_OFFER = "No better timetable for what is left is known"
OFFER_TAKEN = "The rest goes by the new timetable; u takes that back"


def offer_course(name: str, then: str, looks: str) -> str:
    return f"{name} {then}, not {looks}"


def offer_line(gains: list[str]) -> str:
    return f"Better from here: {', '.join(gains)} · r takes it"
