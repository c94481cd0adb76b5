"""Who may eat what, who sits where, one cover, what to get out."""

from collections.abc import Sequence

from board.base.words.signs import SIGN

GUESTS_GUEST = "guest"


def card_plate(guests: Sequence[str], own: Sequence[str], never: Sequence[str]) -> str:
    """`Tomas, Maud: Lentils; without Beef`."""
    told = [*own, *([f"without {', '.join(never)}"] if never else [])]
    return f"{', '.join(guests)}: {'; '.join(told)}"


GUESTS_SAFE, GUESTS_ASK, GUESTS_NOT_SAFE = SIGN["safe"], SIGN["ask"], SIGN["not-safe"]
GUESTS_NOT_SERVED = SIGN["nothing"]
GUESTS_LEGEND = (
    f"{GUESTS_SAFE} nothing found · {GUESTS_ASK} ask, or read the label · {GUESTS_NOT_SAFE} not safe, or not eaten · "
    f"{GUESTS_NOT_SERVED} is not served it"
)
GUESTS_DISHES = "Dishes"
GUESTS_REASONS = "Why"
GUESTS_NO_REASONS = "Nothing was found that a guest must not have or does not eat."
GUESTS_ALL_EAT = "Nobody at this table has anything to avoid."
GUESTS_NO_DISHES = "The plan has no dish that is eaten."
GUESTS_OF_THE_DISH = "the dish"


def guests_title(event: str) -> str:
    return f"{event}: who may eat what"


def guests_folded(count: int) -> str:
    return f"{count} with nothing to avoid"


def guests_needs(name: str, count: int, needs: list[str]) -> str:
    return ", ".join([name if count == 1 else f"{count} {name}", *needs])


def guests_dish(number: int, course: str, dish: str) -> str:
    return f"{number}  {course}: {dish}"


def guests_reason(sign: str, number: int, ingredient: str, why: str, source: str) -> str:
    return f"{sign} {number}  {ingredient}: {why}; {source}"


TABLE_SEATS = "Who sits where"
TABLE_AROUND = "seen from above; the names run clockwise, from the top right"
TABLE_FACING = "seen from above; the first list is on the left, the second on the right"
TABLE_NO_SEATS = "The plan has no `seats`; these guests must not be served:"
TABLE_NO_SEATS_NO_WORDS = "The plan has no `seats`, and no guest says what they must not be served."
TABLE_EMPTY = "(empty)"
TABLE_MUST_NOT = f"{SIGN['mind']} "
TABLE_NOT_SEATED = "With no seat"
TABLE_COVER = "One cover"
TABLE_GET_OUT = "What to get out"
TABLE_STANDING = "No course is eaten at the table."
TABLE_LEFT, TABLE_RIGHT = "left", "right"
TABLE_ASKED, TABLE_THERE, TABLE_MIND = "asked for", "there", "mind"
TABLE_UNTOLD = SIGN["nothing"]
TABLE_NOT_COUNTED = "how many there are is not told"
TABLE_WHOLE_MEAL = "the whole meal"
TABLE_USUAL = "usual"
TABLE_USUALLY = "“usual” is assumed: common practice, no source; `laid with` in the plan says otherwise."
TABLE_BROUGHT = "Brought with its course"
TABLE_ASK = "Read from the plan's own words: ask your guests, and read every label."
TABLE_GROUPS = {"china": "Plates and bowls", "cutlery": "Cutlery", "glasses": "Glasses", "other": "And beside them"}


def cover_of(course: str) -> str:
    return f"{TABLE_COVER}: {course}"


def cover_of_all() -> str:
    return f"{TABLE_COVER}, all courses: what is used first lies outermost"


def one_of(name: str) -> str:
    """A seat for one of several who go by the same name."""
    return f"one of the {name}"


def some_of_them(notes: list[str]) -> str:
    """Where several lines of guests go by one name, which of them sits here is not known."""
    return f"for some of them: {'; '.join(notes)}"


def table_guests(name: str, count: int) -> str:
    return f"{name} ({count})" if count > 1 else name


def borrow_pieces(count: int) -> str:
    return f"borrow {count}"


def wash_pieces(count: int, after: str, before: str) -> str:
    return f"wash {count} after {after}, for {before}"
