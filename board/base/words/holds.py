"""What the board says about trouble with disk, clock, log or plan, and when watching a run."""

from board.base.words.times import span

# --- the disk --------------------------------------------------------------------------------------------------


def not_on_disk(answers: int, why: str) -> str:
    count = "1 answer" if answers == 1 else f"{answers} answers"
    return f"NOT ON DISK YET: {count} ({why}). Go on; it is tried again"


def log_taken(path: str) -> str:
    return f"another board has {path} open now"


def set_aside(name: str) -> str:
    return f"The file as it was lies beside it as {name}."


def evening_elsewhere(path: str, why: str, place: str) -> str:
    return f"{path}: the run log could not be written to its end ({why})\n    The whole evening lies in {place}"


def evening_lost(path: str, why: str, answers: int) -> str:
    return f"{path}: the run log could not be written to its end ({why}); its last {answers} answers are not in it"


NO_LOG = "no run log: leaving the board forgets the evening"
NO_LOG_LEFT = "No run log was kept, as asked."

# --- a log that is not whole -----------------------------------------------------------------------------------


def tail_dropped(name: str, line: int, why: str) -> str:
    return f"{name}:{line}: the last line was dropped: {why}"


def rest_left(name: str, line: int, why: str, last: int) -> str:
    lines = f"line {line} was" if line == last else f"lines {line} to {last} were"
    return f"{name}:{line}: this line is damaged: {why}; {lines} left, what stands before it was read"


def rest_newer(name: str, line: int, last: int) -> str:
    lines = f"line {line} was" if line == last else f"lines {line} to {last} were"
    return f"{name}:{line}: this line was written by a newer version; {lines} left, what stands before it was read"


def newer_read(name: str, theirs: int, ours: int) -> str:
    return (
        f"{name}:1: this run log is of format {theirs}, newer than this program's {ours}; what it knows of it was read"
    )


def first_line_unknown(name: str, why: str) -> str:
    return f"{name}:1: this line was not written by this version, nor can it read it: {why}"


def newer_not_touched(why: str) -> str:
    return f"{why}\n    This version does not write into it: go on with the newer one, or name another with --log"


# --- the clock -------------------------------------------------------------------------------------------------


def clock_jumped(seconds: int, *, slept: bool) -> str:
    size = span(abs(seconds) // 60) if abs(seconds) >= 60 else f"{abs(seconds)} s"
    if slept:
        return f"This machine slept for {size}; what came due meanwhile is called now"
    way = "ahead" if seconds > 0 else "back"
    return f"The clock was set {way} by {size}; what is under way goes on by the time that passed"


# --- the plan --------------------------------------------------------------------------------------------------

PLAN_EDITED = "The plan was edited since this evening began"
PLAN_UNUSABLE = "As it is now it gives no timetable; platecall check says why."
PLAN_SAME_TIMES = "Its steps and times are the same."
PLAN_GO_ON = "enter  go on with the timetable this evening began with"
MORE = "…"


def go_on_from_log(plan: str, log: str) -> str:
    return (
        f"    To go on with an evening that has begun, whatever became of its plan: platecall live {plan} --log {log}"
    )


def plan_added(name: str, at: str) -> str:
    return f"+ {name}, {at}"


def plan_gone(name: str) -> str:
    return f"− {name}"


def plan_moved(name: str, before: str, after: str) -> str:
    return f"~ {name}: {before} → {after}"


def plan_and_more(count: int) -> str:
    return f"{MORE} and {count} more"


# --- looking on ------------------------------------------------------------------------------------------------

LOOKING_ON = "looking on"
NEWEST_EVENT = "rehearsal, at its newest event"
EVENING_CLOSED = "the evening is over"
LOG_GONE = "The run log is gone; this is what it said last. It is looked for again"
WATCH_FAILED = "looking on ended by a fault; the evening and its run log are not touched by it"
NOT_CALLED = "not called yet"


def looking_for(who: str) -> str:
    return f"{who}'s steps"


def no_evening_yet(path: str) -> str:
    return f"There is no evening in {path} yet. It shows here as soon as there is; q leaves."


def nobody_called(name: str, hands: list[str]) -> str:
    known = ", ".join(hands) if hands else "nobody"
    return f"nobody is called {name!r} in this evening; hands are: {known}"


KEYS_WATCH = (
    ("↑↓", "look", "look at another call, or at something still to come"),
    ("z", "zoom", "show 45, 90 or 180 minutes ahead"),
    ("b", "bell", "bell on or off"),
    ("?", "help", "this page"),
    ("q", "leave", "leave; the evening goes on without you"),
)
