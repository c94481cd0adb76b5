"""Opening an evening: its log, its plan, and what must be mended first."""

from collections.abc import Sequence
from datetime import datetime

from board.base import words as shared


def set_aside(name: str) -> str:
    return f"The file as it was lies beside it as {name}."


def evening_elsewhere(path: str, why: str, place: str) -> str:
    return f"{path}: the run log could not be written to its end ({why})\n    The whole evening lies in {place}"


def copy_not_whole(folder: str, why: str) -> str:
    return f"{folder}: the second copy of the run log is not whole: {why}"


def evening_lost(path: str, why: str, answers: int) -> str:
    return f"{path}: the run log could not be written to its end ({why}); its last {answers} answers are not in it"


NO_LOG = "no run log: leaving the board forgets the evening"
NO_LOG_LEFT = "No run log was kept, as asked."


def day_of_month(at: datetime) -> str:
    """`Sat 5 Dec`."""
    return f"{at:%a} {at.day} {at:%b}"


def opened_early(day: str, first: str, what: str, plan: str) -> str:
    return f"The evening is {day}. First call {first}: {what}. To shop: platecall provisions {plan}"


def go_on_from_log(plan: str, log: str) -> str:
    return (
        f"    To go on with an evening that has begun, whatever became of its plan: platecall live {plan} --log {log}"
    )


WATCH_FAILED = "looking on fell again and again; the evening and its run log are not touched by it"

UNDERSTOOD = "understood"
STOPS_HEAD = "This must be mended before anybody eats:"
STOPS_ASK = (
    "The board does not mend it, and no timetable makes it safe. Your local code, the label and licensed practice go\n"
    f"first. To begin all the same, type {UNDERSTOOD} (anything else leaves): "
)
STOPS_NOT_ACCEPTED = "The board was not opened. `platecall check PLAN` says what must be mended."

LAST_IN_LOG = "the run log's last line is from"
PLAN_SAVED = "the plan was saved on"
EVENING_ENDS = "this evening was to end on"
YES = ("y", "yes")
CLOCK_ASK = "Is the clock right? y opens the board (anything else leaves): "
CLOCK_NOT_RIGHT = "The board was not opened. Set the machine's clock and open it again."


def clock_far_off(now: datetime, what: str, moment: datetime) -> str:
    """`what`: one of the three above."""
    return f"This machine's clock says {_day_with_year(now)}; {what} {_day_with_year(moment)}."


def long_past(date: str, now: datetime) -> str:
    return (
        f"the event of {date} is over by this machine's clock, which says {_day_with_year(now)}; rehearse it, or give\n"
        "    the plan another date"
    )


def _day_with_year(at: datetime) -> str:
    """`Sat 5 Dec 2026 18:30`."""
    return f"{day_of_month(at)} {at.year} {shared.clock(at)}"


def stops_rehearsed(stops: Sequence[str]) -> str:
    return f"To be mended before anybody eats: {'; '.join(stops)}"
