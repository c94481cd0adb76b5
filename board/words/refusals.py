"""Why something cannot be done."""

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


NOTHING_CHANGES = "nothing would change"
NOTHING_ON_TABLE = "no course is on the table"


def cannot_take_less(name: str) -> str:
    return f"{name} cannot take less than that"


def cannot_drop(dish: str) -> str:
    return f"nothing is left of {dish} to leave out, or its course has gone out"
