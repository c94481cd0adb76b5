"""What is printed: sheets, checks, reviews."""

from board.base.words.signs import SIGN

SHEET_FROM, SHEET_TO, SHEET_WHAT, SHEET_WHERE, SHEET_WHO, SHEET_GIVE = "from", "to", "what", "where", "who", "give"
SHEET_NO_GIVE = SIGN["nothing"]


def give(minutes: int) -> str:
    return f"{minutes} min" if minutes < 100 else f"{minutes // 60} h"


SHEET_NOBODY = "nobody needed"
SHEET_GIVEN_UP = "Given up"


SHEET_STOPS = "Must be mended before anybody eats"
SHEET_CLOCKS = "Neither hot nor cold enough, until it is eaten"
CLOCK_DISH, CLOCK_COURSE, CLOCK_OUT, CLOCK_LIMIT, CLOCK_RUNS_OUT = "dish", "course", "min out", "limit", "put away by"
CLOCK_IN_TIME = "put away in time"


def clocks_by(rules: str) -> str:
    return f"By the {rules}; what passes its limit is thrown away. Your local code and the label decide."


def min_late(minutes: int) -> str:
    return f"  ({minutes} min late)"


def away_from_guests(minutes: int) -> str:
    return f"{minutes} min in the kitchen while your guests are at the table or about"


def busiest_before(course: str, minutes: int) -> str:
    return f"busiest half hour: before {course}, {minutes} of 30 min at work"


def sheet_state(proved: bool, gap: float) -> str:
    if proved:
        return "proved: no timetable does better on what counts"
    return f"the best found; what counts might still be bettered by up to {gap:.0%}"


REVIEW_COURSE, REVIEW_WANTED, REVIEW_PLANNED, REVIEW_SERVED = "course", "wanted", "planned", "served"
REVIEW_LATE, REVIEW_PUSHED, REVIEW_STEP, REVIEW_BEGUN = "late", "pushed", "step", "begun"
REVIEW_MINUTES, REVIEW_TOOK, REVIEW_ANSWERED, REVIEW_LATER = "min", "took", "answered", "later"
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


LEAF_WALL = "For the wall: everybody's work"
LEAF_NOTES = "Mind"


def leaf_of(name: str) -> str:
    return f"For {name}"


def hands_at(clocks: list[str]) -> str:
    return f"hands at {', '.join(clocks)}"


def no_such_person(name: str, known: tuple[str, ...]) -> str:
    return (
        f"nobody called {name!r} works in this plan; there are: {', '.join(known)}, and the leaves wall and everybody"
    )


def page_written(path: str) -> str:
    return f"written to {path}; print it from a browser"


def not_overwritten(path: str) -> str:
    return f"{path}: there is such a file, and it is no page made here; nothing was written. Give another name."


def sheet_plates(course: str) -> str:
    return f"Whose plate is different: {course}"
