"""Looking back: the closing page, and the same on paper."""

from collections.abc import Mapping, Sequence

from board.base.words.evening import kept_where
from board.base.words.signs import SIGN
from board.base.words.times import span


def evenings(count: int) -> str:
    return f"{count} evening{'s' if count != 1 else ''}"


def away_was(planned: Mapping[str, int], actual: Mapping[str, int]) -> str:
    """Minutes of each who sits."""
    were = ", ".join(f"{minutes} of {who}" if len(planned) > 1 else f"{minutes}" for who, minutes in planned.items())
    return f"{away_of_each(actual)} in the kitchen while the guests were there; {were or 0} were planned"


def away_of_each(minutes: Mapping[str, int]) -> str:
    """`31 min`, or `Ada 31 min, Ben 28 min` where several sit."""
    told = [f"{who} {each} min" if len(minutes) > 1 else f"{each} min" for who, each in minutes.items()]
    return ", ".join(told) or "0 min"


CLOSING_COURSES = "Courses"
CLOSING_OUT, CLOSING_AT_TABLE, CLOSING_STEPS = "out", "At the table", "Steps"
DECIDED = "Decided"
LEFT_TO_USE = "Left to use"  # of food one dish leaves over
CLOSING_KEPT, CLOSING_READINGS, CLOSING_PUT_AWAY = "Kept longest", "Readings", "Put away"
CLOSING_PLANNED, CLOSING_ACTUAL = "planned", "actual"
CLOSING_BEGAN, CLOSING_ENDED = "began", "ended"

KEPT_TOO_LONG = (
    "What stood past its limit: with food, when in doubt, throw it out. The label and your local code go first."
)


def closing_title(plan: str, day: str, rehearsal: bool, closed: bool) -> str:
    kind = ", a rehearsal" if rehearsal else ""
    return f"{plan} · {day}{kind}" if closed else f"{plan} · {day}{kind}, so far"


ONLY_SAID = "said, not seen"


def closing_late(minutes: int) -> str:
    return f"{span(minutes)} late" if minutes > 0 else f"{span(-minutes)} early" if minutes < 0 else "on time"


def closing_kept(name: str, stood: int, limit: int, where: str | None) -> str:
    over = f", {span(stood - limit)} past it" if stood > limit else ""
    shown = f"{stood} of {limit} min" if limit < 120 else f"{span(stood)} of {span(limit)}"
    return f"{name}: {shown} ({kept_where(where)}){over}"


def closing_not_told(courses: Sequence[str]) -> str:
    return f"not told: when what was left of {', '.join(courses)} was put away"


def closing_reading(name: str, at: str, reading: str) -> str:
    return f"{name}, {at}: {reading}"


def closing_note(at: str, about: str | None, text: str) -> str:
    return f"{at} ({about}) {text}" if about else f"{at} {text}"


REVIEW_COURSE, REVIEW_WANTED, REVIEW_PLANNED, REVIEW_SERVED = "course", "wanted", "planned", "served"

REVIEW_NONE = SIGN["nothing"]
REVIEW_RAN_OVER = "Ran over"
REVIEW_NOTHING_OVER = "Nothing ran over."
REVIEW_LEFT_OUT = "Left out"
REVIEW_NOT_REACHED = "Not reached"
REVIEW_LEFT_OPEN = "Left open"
REVIEW_NOTES = "Notes"


def review_span(began: str, ended: str) -> str:
    return f"from {began} to {ended}"


def signed(minutes: int) -> str:
    return f"{minutes:+d} min" if minutes else "0 min"


def ran_over(name: str, planned: int, actual: int) -> str:
    return f"{name}: {actual} min instead of {planned}"
