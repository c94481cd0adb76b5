"""Who may eat what: the table of guests and dishes."""

from collections.abc import Iterable, Sequence

from board.base.words.signs import SIGN

GUESTS_CAUTION = (
    "Planning help only: names of foods are matched, labels are not read. Read every label and ask your guest; the "
    "label, local law and licensed practice decide. Keep pans, boards, knives, spoons and frying oil apart."
)
GUESTS_GUEST = "guest"
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


def plate(name: str, needs: Iterable[str], own: Sequence[str], never: Sequence[str], asked: Sequence[str]) -> str:
    """One guest's plate at one course: `Tomas (vegetarian): Lentils, not Beef shin`."""
    told = [", ".join(own)] if own else []
    told += [f"not {', '.join(never)}"] if never else []
    told += [f"ask before serving {', '.join(asked)}"] if asked else []
    return f"{name} ({', '.join(needs)}): {', '.join(told)}"


def plates(lines: list[str]) -> str:
    return "; ".join(lines)
