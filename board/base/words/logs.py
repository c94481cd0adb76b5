"""Run logs as a list, for other programs and readers; several evenings reviewed."""

from board.base.words.signs import SIGN

LOG_DATE, LOG_PLAN = "date", "plan"
EVENING, REHEARSED = "evening", "rehearsal"
LOG_CLOSED, LOG_OPEN, LOG_DAMAGED, LOG_NEWER = "closed", "left open", "damaged", "newer version"
NO_LOGS = "No run logs yet."
GUEST_STAND_IN = "guest"
ON_TIME = "on time"
NOT_SERVED = SIGN["nothing"]
ANONYMISE_NEEDS_OUT = "say where the copy goes: -o FILE"
ANONYMISE_NEEDS_NAMES = "say whose names are to go: --names Ines,Tomas, or --plan PLAN for the plan's guests"
REVIEW_CAUSES = "What made it late"
REVIEW_LATE_ANSWERS = "Answered late"
REVIEW_ODDS = "The odds beforehand, and what came"
WHY = {
    "began late": "began {} min late",
    "took longer": "took {} min longer",
    "answered late": "was answered {} min late",
    "guests": "waited {} min for the guests",
}


def log_late(minutes: int | None) -> str:
    return NOT_SERVED if minutes is None else f"{minutes} min late" if minutes > 0 else ON_TIME


def anonymised(path: str, names: int) -> str:
    many = f"{names} name{'s' if names != 1 else ''}"
    return f"Written to {path}: {many} replaced. Read it over before you hand it on: a nickname is not known here."


def traced(course: str, late: int, links: list[str]) -> str:
    because = " → ".join(links) if links else "nothing on the way to it ran over: it was pushed or planned so"
    return f"{course}, {late} min late: {because}"


def guests_came(minutes: int) -> str:
    return f"the guests came {minutes} min late"


def traced_link(name: str, why: str, minutes: int) -> str:
    return f"{name} {WHY[why].format(minutes)}"


def late_answer(name: str, part: str, minutes: int) -> str:
    return f"{name} ({part}): {minutes} min"


def away_was(planned: int, actual: int) -> str:
    return f"{actual} min in the kitchen while the guests were there; {planned} were planned"


def odds_came(course: str, chance: str, *, on_time: bool) -> str:
    return f"{course}: {chance} within 5 min; it {'was' if on_time else 'was not'}"


EVENINGS_TITLE = "Evenings"
EVENINGS_AWAY, EVENINGS_LATE_ANSWERS = "away, planned", "late answers"


def away_of(actual: int, planned: int) -> str:
    return f"{actual}, {planned} min"
