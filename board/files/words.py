"""Why a file cannot be read or written."""

BOOK_BROKEN = "the cook's book cannot be read; it is left as it is"


def book_in_use(path: str) -> str:
    return f"{path} is being written by another command; try again"


def book_not_written(path: str, why: str) -> str:
    return f"{path} could not be written ({why}); the cook's book is as it was"


def shelf_in_use(path: str) -> str:
    return f"{path} is being written by another command; try again"


def shelf_unread(path: str, why: str) -> str:
    return f"{path}: the dishes cannot be read ({why})"


def cannot_write(path: str, why: str) -> str:
    return f"{path}: could not be written ({why}); nothing was changed"


WRITE_PROTECTED = "it is write-protected"


def snag_count(count: int) -> str:
    return f"{count} thing{'s' if count != 1 else ''} to mend."


def log_for_plan(name: str) -> str:
    return (
        f"{name}: this is a run log, not a plan; the plan comes first (`platecall check PLAN`, `platecall lessons PLAN "
        "LOG…`), and a log by itself goes to `platecall review LOG`"
    )


STDIN = "standard input"


def no_such_file(path: str) -> str:
    return f"{path}: there is no such file"


def is_folder(path: str) -> str:
    return f"{path}: this is a folder, not a file"


def not_utf8(path: str, line: int) -> str:
    return f"{path}:{line}:1: plan 1: the file is not UTF-8 text here\n    Save it as UTF-8."


def too_large(path: str) -> str:
    return f"{path}: this file is too large to be a plan or a run log"


def plan_moved_on(path: str) -> str:
    return f"{path} was changed since it was read; nothing was written. Open it again, then make the change"


def plan_protected(path: str) -> str:
    return f"{path} is write-protected; nothing was written"


def plan_not_written(path: str, why: str) -> str:
    return f"{path} could not be written: {why}. The file is as it was"


TICKS_HEAD = "What was ticked on the list of provisions, each with its amount. Written by the program."
PANTRY_IN_PANTRY = "a pantry file cannot name another one"
NOT_A_PANTRY = "this is not a list of what is in the house"
PANTRY_MEND = "Write one food a line, for example `- 2 kg flour` or `- salt`."
