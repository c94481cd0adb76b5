"""Why something cannot be done."""

SHEET_OUT_OF_DATE = "the evening has moved on since that timetable was worked out; another is on its way"

EMPTY_NOTE = "an empty note is not kept"
NOTHING_TO_TAKE_BACK = "there is no answer to take back"


def already_settled(name: str) -> str:
    return f"{name} is settled already"


def cannot_leave_out(name: str) -> str:
    return f"{name}: that cannot be left out"


def waits_for_first(name: str, other: str) -> str:
    return f"{name} waits for: {other}. Answer that first, or leave it out"


def cannot_push(course: str) -> str:
    return f"{course} has gone out already"


def cannot_push_earlier(course: str) -> str:
    return f"{course} cannot go out before it was wanted"
