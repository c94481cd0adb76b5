"""Why something cannot be done."""

from datetime import datetime
from math import ceil

from board.base.words.times import day_and_clock, degrees, degrees_alone, missing


def too_early_for_guests(arrive: datetime) -> str:
    return f"the guests are expected at {day_and_clock(arrive)}"


SHEET_OUT_OF_DATE = "the evening has moved on since that timetable was worked out; another is on its way"

NOTHING_SAID = "nothing is ticked"
_CANNOT_BE_SO = {
    "settled": "is settled already",
    "future": "has not come yet",
    "backwards": "would be over before it begins",
    "waits": "waits for: {other}. Tick that too",
}


def cannot_be_so(name: str, why: str, other: str) -> str:
    return f"{name} {_CANNOT_BE_SO[why].format(other=other)}"


EMPTY_NOTE = "an empty note is not kept"
NOTHING_TO_TAKE_BACK = "there is no answer to take back"


def already_settled(name: str) -> str:
    return f"{name} is settled already"


NO_SUCH_CALL = "that call is not on the timetable any more"


def not_theirs(name: str, who: str) -> str:
    return f"{name} is not {who}'s to answer"


def answered_already(name: str) -> str:
    return f"{name}: answered already"


def read_at_the_board(name: str) -> str:
    return f"{name}: a probe's reading ends it; take it at the board"


def cannot_leave_out(name: str) -> str:
    return f"{name}: that cannot be left out"


def waits_for_first(name: str, other: str) -> str:
    return f"{name} waits for: {other}. Answer that first, or leave it out"


def cannot_push_earlier(course: str) -> str:
    return f"{course} cannot go out before it was wanted"


def not_begun(name: str) -> str:
    return f"{name} has not begun"


def core_lacks(name: str, wanted: float, read: float, fahrenheit: bool) -> str:
    side = "below" if read < wanted else "above"
    lacking = f"{missing(abs(wanted - read), fahrenheit)} {side} the {degrees_alone(wanted, fahrenheit)} wanted"
    return f"core {degrees(read, fahrenheit)}, {lacking}: t reads again, x leaves it out ({name})"


NOTHING_CHANGES = "nothing would change"
NOTHING_ON_TABLE = "no course is on the table"


def cannot_take_less(name: str) -> str:
    return f"{name} cannot take less than that"


def cannot_drop(dish: str) -> str:
    return f"nothing is left of {dish} to leave out, or its course has gone out"


def not_held(name: str, wanted: float, left: float) -> str:
    return f"{name} is to be held {wanted:g} min, {max(1, ceil(left))} min of it are left: x leaves it out"


def job_puts_away(job: str, course: str) -> str:
    return f"{job} puts away what is left of {course}: answer its call"
