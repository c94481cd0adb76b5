"""The cook's book."""

from board.base.words.lessons import evenings

BOOK_STEP, BOOK_LANE, BOOK_TAKES = "step", "lane", "takes"
BOOK_EVENINGS, BOOK_RANGE = "evenings", "four of five"
BOOK_KIND, BOOK_OVEN, BOOK_WAY = "kind of work", "oven", "how"
BOOK_EMPTY = "Nothing in it yet: `platecall lessons PLAN LOG --into-book` adds what an evening showed."
BOOK_BROKEN = "the cook's book cannot be read; it is left as it is"
BOOK_NEEDS_PLAN = "lessons needs a plan, or --book to show the cook's book"
BOOK_ALONE = "--book shows the cook's book alone; leave out the plan and the options that write"
BOOK_OR_PLAN = "--take and --from-book write into the plan, --into-book into the cook's book; ask for one at a time"
NOTHING_FROM_BOOK = "Nothing in the plan says `as in the book`."
BOOK_USE = (
    "Write `takes: as in the book` at a step of a plan, or `heats: as in the book` at an oven; then "
    "`platecall lessons PLAN --from-book` writes the figures there."
)


def book_title(count: int) -> str:
    return f"The cook's book: {evenings(count)}"


def book_way(way: str, start: float, end: float) -> str:
    return f"{way}, {start:g} to {end:g} °C"


def book_lies_at(path: str) -> str:
    return f"it lies at {path}"


def book_added(fresh: int, known: int, rehearsals: int) -> str:
    said = f"{evenings(fresh)} added to the cook's book"
    if known:
        said += f"; {evenings(known)} told nothing that was not in it"
    if rehearsals:
        said += f"; {rehearsals} rehearsal{'s' if rehearsals != 1 else ''} left out"
    return said


def book_in_use(path: str) -> str:
    return f"{path} is being written by another command; try again"


def book_not_written(path: str, why: str) -> str:
    return f"{path} could not be written ({why}); the cook's book is as it was"
