"""Opening an evening: its log, its plan, and what must be mended first."""

from collections.abc import Sequence
from datetime import datetime


def set_aside(name: str) -> str:
    return f"The file as it was lies beside it as {name}."


def evening_elsewhere(path: str, why: str, place: str) -> str:
    return f"{path}: the run log could not be written to its end ({why})\n    The whole evening lies in {place}"


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


def stops_rehearsed(stops: Sequence[str]) -> str:
    return f"To be mended before anybody eats: {'; '.join(stops)}"
