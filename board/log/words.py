"""Trouble with a run log and its disk."""


# --- the disk --------------------------------------------------------------------------------------------------


def log_taken(path: str) -> str:
    return f"another board has {path} open now"


def foreign_lines(path: str) -> str:
    return f"something else writes into {path}"


COPY_FOLDER_GONE = "the folder is not there"
COPY_OWN_FOLDER = "that is the run log's own folder"
COPY_SLOW = "it takes its time"


# --- a log that is not whole -----------------------------------------------------------------------------------


def tail_dropped(name: str, line: int, why: str) -> str:
    return f"{name}:{line}: the last line was dropped: {why}"


def rest_left(name: str, line: int, why: str, last: int) -> str:
    lines = f"line {line} was" if line == last else f"lines {line} to {last} were"
    return f"{name}:{line}: this line is damaged: {why}; {lines} left, what stands before it was read"


def rest_newer(name: str, line: int, last: int) -> str:
    lines = f"line {line} was" if line == last else f"lines {line} to {last} were"
    return f"{name}:{line}: this line was written by a newer version; {lines} left, what stands before it was read"


def opening_mended(name: str) -> str:
    return f"{name}: its first lines are damaged; the evening was read from their second copy"


def opening_from_elsewhere(name: str) -> str:
    return f"{name}: its first lines are lost; its answers were read by the timetable kept of the plan"


def odd_opening(name: str) -> str:
    return f"{name}:1: its timetable says what no evening can: a time or a figure out of all bounds"


def odd_event(name: str, line: int) -> str:
    return (
        f"{name}:{line}: this line says what cannot be: a time, a figure or a step that is none of this evening's; "
        "it and what follows were left"
    )


def opening_lost(name: str) -> str:
    return (
        f"{name}:1: the lines that hold the timetable are damaged, and none that is kept is this evening's. "
        "Work it out again from the plan as it was that evening, with platecall sheet PLAN, and try once more"
    )


def newer_read(name: str, theirs: int, ours: int) -> str:
    return (
        f"{name}:1: this run log is of format {theirs}, newer than this program's {ours}; what it knows of it was read"
    )


def first_line_unknown(name: str, why: str) -> str:
    return f"{name}:1: this line was not written by this version, nor can it read it: {why}"


def newer_not_touched(why: str) -> str:
    return f"{why}\n    This version does not write into it: go on with the newer one, or name another with --log"


# --- looking on ------------------------------------------------------------------------------------------------

LOG_GONE = "The run log is gone; this is what it said last. It is looked for again"
