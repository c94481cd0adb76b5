"""Evenings as lessons see them, made by hand."""

from collections.abc import Mapping, Sequence

from board.review.kinds import Key
from board.review.observe import Observed, OvenTurn, PastEvening
from board.sheet.run_sheet import Lasts

SIMMER = Key("soup", "simmer the soup", "stovetop")
LASTS = Lasts(20, 30, 45)


def evening(
    number: int, steps: Mapping[Key, float], turns: Sequence[OvenTurn] = (), planned: Lasts = LASTS
) -> PastEvening:
    """The n-th evening, on which steps took so many minutes."""
    seen = tuple(Observed(key, key.words, minutes, planned) for key, minutes in steps.items())
    return PastEvening(f"{number:08x}", "Supper", f"2026-11-{number % 28 + 1:02d}", False, seen, tuple(turns))
