"""Run logs as a list; evenings reviewed."""

from collections.abc import Sequence

from board.base.words.looking_back import CLOSING_ACTUAL, CLOSING_PLANNED, ONLY_SAID
from board.base.words.signs import SIGN

SHEET_NOTED = "Noted on evenings before"

LOG_DATE, LOG_PLAN = "date", "plan"
EVENING, REHEARSED = "evening", "rehearsal"

NO_LOGS = "No run logs yet."
NOBODY_ATE = "No log tells who ate what: those of rehearsals, and of before they named the guests, do not."


def eaten_on(day: str, plan: str, dishes: Sequence[str]) -> str:
    return f"{day} {plan}: {', '.join(dishes)}"


def noted_at_clearing(course: str, note: str) -> str:
    return f"noted when {course} was cleared: {note}"


ON_TIME = "on time"
NOT_SERVED = SIGN["nothing"]

REVIEW_CAUSES = "What made it late"
REVIEW_LATE_ANSWERS = "Answered late"
REVIEW_NIGHT = "What the rehearsed night cost"
REVIEW_ODDS = "The odds beforehand, and what came"
WHY = {
    "began late": "began {} min late",
    "took longer": "took {} min longer",
    "answered late": "was answered {} min late",
    "guests": "waited {} min for the guests",
}
TAKEN = "the timetable that was taken had it {} min late"


def log_late(minutes: int | None, *, said: bool) -> str:
    if minutes is None and said:
        return ONLY_SAID
    return NOT_SERVED if minutes is None else f"{minutes} min late" if minutes > 0 else ON_TIME


def traced(course: str, late: int, links: list[str]) -> str:
    because = " → ".join(links) if links else NO_LINKS
    return f"{course}, {late} min late: {because}"


def guests_came(minutes: int) -> str:
    return f"the guests came {minutes} min late"


def traced_link(name: str, why: str, minutes: int) -> str:
    if why == "taken":
        return TAKEN.format(minutes)
    return f"{name} {WHY[why].format(minutes)}"


def late_answer(name: str, part: str, minutes: int) -> str:
    return f"{name} ({part}): {minutes} min"


def odds_came(course: str, chance: str, *, on_time: bool) -> str:
    return f"{course}: {chance} within 5 min; it {'was' if on_time else 'was not'}"


TO_LEARN, YOUR_NOTES, THE_GUESTS = "For the plan", "Your notes", "guests"
NO_LINKS = "nothing on the way to it ran over: it was pushed or planned so"
SHORT_WHY = {"began late": "begun +{}", "took longer": "+{}", "answered late": "answered +{}", "guests": "+{}"}


def short_link(name: str, why: str, minutes: int) -> str:
    """`roast the roots +9`: minutes it added."""
    if why == "taken":
        return f"timetable taken +{minutes}"
    if why == "guests" and name != THE_GUESTS:
        return f"{name}, {THE_GUESTS} +{minutes}"
    return f"{name} {SHORT_WHY[why].format(minutes)}"


def chain(first: str, links: list[str], *, gone: bool) -> str:
    """A course's causes in one line; `gone`: some are left out."""
    return " → ".join([*([first] if first else []), *links]) + (" …" if gone else "")


def as_course(course: str) -> str:
    return f"as {course}"


def to_learn(name: str, before: str, after: str, *, once: bool) -> str:
    return f"{name}: {after} (now {before}{', seen once' if once else ''})"


def more_notes(count: int) -> str:
    return f"and {count} more"


def review_all(log: str) -> str:
    return f"Every step and time: platecall review {log} --all"


REVIEW_NEXT_TIME = "Next time"
CALL_KEYS = {"start": "call", "end": "call at end"}
NEXT_TIME = {
    "hand": "{at} {name} waited {minutes} min, hands were at {beside}: give it to {who} (who)",
    "apart": "{at} {name} waited {minutes} min, hands were at {beside}: put the two further apart (not before)",
    "louder": "{at} {name}, {minutes} min unheard: louder ({call}) or another hand",
    "longer": "{at} {name}: not hot enough, {minutes} min more: takes that much longer",
    "probe": "{at} {name}: temperature not checked: have the call ask for it ({call})",
    "less": "{at} {name} was left out: less {where} then{besides}",
    "unheated": "{at} {name} was left out: without it drop the dish; or give it longer (takes)",
}


def at_once(where: str) -> str:
    return f"on {where}" if where else "for the same hands"


def besides(names: list[str]) -> str:
    return f" (beside it: {', '.join(names)})" if names else ""


EVENINGS_TITLE = "Evenings"
EVENINGS_AWAY, EVENINGS_LATE_ANSWERS = "away, planned", "late answers"


def away_of(actual: int, planned: int) -> str:
    return f"{actual}, {planned} min"


def closing_bars(name: str, planned: str, actual: str) -> str:
    """What a row's bar and its marks show, for who hears the page."""
    return f"{name}: {CLOSING_PLANNED} {planned}; {CLOSING_ACTUAL} {actual}"
