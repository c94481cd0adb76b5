"""The board: calls, lanes, courses, offers, and when watching a run."""

from board.base.words.evening import kept_where
from board.base.words.signs import SIGN
from board.base.words.times import span


def call_turned(turn: str, started: str) -> str:
    return f"{turn}: {started}"


def call_start(name: str) -> str:
    return name[:1].upper() + name[1:]


def call_end(name: str) -> str:
    return f"Done? {name}"


def call_in_hand(name: str) -> str:
    return f"Still at it? {name}"


def ends_and_begins(ended: str) -> str:
    return f"begun, and {ended} done"


def ends_then_begins(begun: str) -> str:
    return f"done, and {begun} begun"


def holds_up(course: str) -> str:
    return f"holds up {course}"


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


def clock_jumped(seconds: int, *, slept: bool) -> str:
    size = span(abs(seconds) // 60) if abs(seconds) >= 60 else f"{abs(seconds)} s"
    if slept:
        return f"This machine slept for {size}; what came due meanwhile is called now"
    way = "ahead" if seconds > 0 else "back"
    return f"The clock was set {way} by {size}; what is under way goes on by the time that passed"


PLAN_UNUSABLE = "As it is now it gives no timetable; platecall check says why."
PLAN_SAME_TIMES = "Its steps and times are the same."

MORE = "…"


def plan_added(name: str, at: str) -> str:
    return f"+ {name}, {at}"


def plan_gone(name: str) -> str:
    return f"− {name}"


def plan_moved(name: str, before: str, after: str) -> str:
    return f"~ {name}: {before} → {after}"


def plan_and_more(count: int) -> str:
    return f"{MORE} and {count} more"


ANSWER_WORDS = {
    "CoursePushed": "the push",
    "NoteWritten": "the note",
    "SheetTaken": "the new timetable",
    "StepsSaid": "what you told",
}

STILL = "still"

STATE_SIGN = {"to-come": " ", "called": SIGN["begin"]} | {
    state: SIGN[state] for state in ("under-way", "keeping", "finished", "left-out")
}

STANDS_ON_TIME, STANDS_TIGHT, STANDS_LATE = "On time", "Tight", "Late"
STANDING_SIGN = {STANDS_ON_TIME: SIGN["on-time"], STANDS_TIGHT: SIGN["tight"], STANDS_LATE: SIGN["late"]}

DONE_BEGIN, DONE_LOOK, DONE_END = "begun", "looked in", "done"
YES, NO = "yes", "no"  # to a step that asks
NOTHING_MORE = "All done"
NOTHING_MORE_DETAIL = "Nothing is left to call. q ends the evening."

OPENING = "the keys work in a moment"


def free_until(clock_words: str) -> str:
    return f"Free until {clock_words}"


def free_for(length: str, next_name: str) -> str:
    return f"Next, in {length}: {next_name}"


def hands_on(name: str) -> str:
    return name[:1].upper() + name[1:]


def hands_on_left(left: str, who: str) -> str:
    return f"{who}: hands on, {left} left" if who else f"hands on, {left} left"


def in_oven(oven: str) -> str:
    return f" ({oven})"


def next_course(name: str, at: str, left: str, late_minutes: int) -> str:
    """`Soup at 18:45, in 27 min`; `left` empty: its time has come. `at` may name a day."""
    told = f"{name} {at}" if " " in at else f"{name} at {at}"
    late = f" ({span(late_minutes)} late)" if late_minutes else ""
    return f"{told}{late}, in {left}" if left else f"{told}{late}, now"


def at_table_until(clock_words: str) -> str:
    return f"at the table until {clock_words}"


def course_out(name: str, at: str) -> str:
    return f"{name} {SIGN['served']} {at}"


def course_ahead(name: str, at: str, late_minutes: int) -> str:
    return f"{name} {at} (+{late_minutes})" if late_minutes else f"{name} {at}"


def course_dropped(name: str) -> str:
    return f"{name} left out"


def waited(seconds: float) -> str:
    minutes = int(seconds // 60)
    return f"called {span(minutes)} ago" if minutes >= 1 else "called just now"


DONE_ALREADY = "done already"


def stands_until(name: str, limit: str, where: str | None) -> str:
    return f"{name}: good until {limit} ({kept_where(where)})"


PAST_BEST = "past its best: taste it, use it or leave it"
PAST_SAFE = "past its limit: when in doubt, throw it out"


def past_keeping(name: str, over: str, where: str | None, *, safety: bool) -> str:
    told = PAST_SAFE if safety else PAST_BEST
    return f"{name}: {over} {told} ({kept_where(where)})"


def spoken_warning(name: str, minutes_left: float) -> str:
    minutes = round(minutes_left)
    return f"{name}: good for {minutes} more minute{'s' if minutes != 1 else ''}."


# A better timetable for what is left.
OFFER_GAINS = {
    "lost": "dishes out too long: {} fewer",
    "kept": "food stands {} min less past its limit",
    "up": "{} min more quiet at the table",
    "away": "{} min more with your guests",
}


def offer_course(name: str, then: str, looks: str) -> str:
    return f"{name} {then} instead of {looks}"


def offer_later(courses: str) -> str:
    return f"later: {courses}"


def offer_line(brings: str) -> str:
    return f"r: {brings}"
