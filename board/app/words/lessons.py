"""What evenings teach, and how a plan takes it up; run logs."""

from board.base.words.looking_back import evenings

BOOK_NEEDS_PLAN = "lessons needs a plan, or --book to show the cook's book"
BOOK_ALONE = "--book shows the cook's book alone; leave out the plan and the options that write"
BOOK_OR_PLAN = "--take and --from-book write into the plan, --into-book into the cook's book; ask for one at a time"
NOTHING_FROM_BOOK = "Nothing in the plan says `as in the book`."


def book_added(fresh: int, known: int, rehearsals: int) -> str:
    said = f"{evenings(fresh)} added to the cook's book"
    if known:
        said += f"; {evenings(known)} told nothing that was not in it"
    if rehearsals:
        said += f"; {rehearsals} rehearsal{'s' if rehearsals != 1 else ''} left out"
    return said


TAKING_STOPS = "With these figures this must be mended before anybody eats, and need not now:"
TAKE_ALL_THE_SAME = "Take them all the same? y takes them, enter leaves the plan as it is: "
NOTHING_TAKEN = "Nothing taken; the plan is as it was."


def trying_alone(number: int, count: int, name: str) -> str:
    return f"lesson {number} of {count}, {name}"


def bad_lessons(text: str) -> str:
    return f"{text!r} is neither all nor numbers such as 1,3 or 2-5"


def no_such_lesson(number: int, count: int) -> str:
    if not count:
        return "there is nothing to take; the plan is as it was"
    return f"there is no lesson number {number}, only 1 to {count}; the plan is as it was"


def lessons_stop(snags: str) -> str:
    return f"with these lessons the plan could not be used; it is as it was\n{snags}"


def backup_lies_at(path: str) -> str:
    return f"As it was before: {path}"


def backup_not_written(path: str, why: str) -> str:
    return f"no copy could be laid beside {path} ({why}); nothing was written"


def log_skipped(why: str) -> str:
    return f"left out: {why}"


LOG_CLOSED, LOG_OPEN, LOG_DAMAGED, LOG_NEWER = "closed", "left open", "damaged", "newer version"

GUEST_STAND_IN = "guest"

ANONYMISE_NEEDS_OUT = "say where the copy goes: -o FILE"
ANONYMISE_NEEDS_NAMES = "say whose names are to go: --names Ines,Tomas, or --plan PLAN for the plan's guests"


def anonymised(path: str, names: int) -> str:
    many = f"{names} name{'s' if names != 1 else ''}"
    return f"Written to {path}: {many} replaced. Read it over before you hand it on: a nickname is not known here."
