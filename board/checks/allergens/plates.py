"""Whose plate is different: for each course, what a guest with something to avoid is not served, and what instead.

The foreign text in them is not made safe yet. Pure.
"""

from collections.abc import Iterator

from board.checks.allergens.dietary_needs import told_needs
from board.checks.allergens.guests_eat import DishRow, Matrix
from board.checks.allergens.verdict import Verdict
from board.plan.load import PlanFile
from board.sheet.told import Plate


def plates(file: PlanFile, eaten: Matrix) -> dict[str, tuple[Plate, ...]]:
    """Course → one a guest, those whose allergy can be anaphylaxis first; courses that are the same for everybody are
    left out."""
    return {course.course: tuple(_plates(eaten, course.course)) for course in file.plan.courses}


def _plates(eaten: Matrix, course: str) -> Iterator[Plate]:
    rows = [(d, row) for d, row in enumerate(eaten.dishes) if row.course == course]
    only_for_some = {row.dish for d, row in rows if not all(eaten.answers[g, d].served for g in _others(eaten))}
    for g in eaten.most_harmed_first():
        guest = eaten.guests[g]
        if not eaten.needs[g]:
            continue
        own = [row.dish for d, row in rows if eaten.answers[g, d].served and row.dish in only_for_some]
        never = [row.dish for d, row in rows if not eaten.answers[g, d].served and row.dish not in only_for_some]
        asked = [row.dish for d, row in rows if _is_asked(eaten, g, d, row)]
        if own or never or asked:
            yield Plate(guest.name, tuple(told_needs(eaten.needs[g])), tuple(own), tuple(never), tuple(asked))


def _others(eaten: Matrix) -> list[int]:
    """Guests with nothing to avoid; if there are none, everybody."""
    return [g for g in range(len(eaten.guests)) if not eaten.needs[g]] or list(range(len(eaten.guests)))


def _is_asked(eaten: Matrix, guest: int, dish: int, row: DishRow) -> bool:
    """Whether it is served and something that can hurt the guest is still open."""
    answer = eaten.answers[guest, dish]
    return answer.served and any(r.need.safety and r.verdict is not Verdict.SAFE for r in answer.reasons)
