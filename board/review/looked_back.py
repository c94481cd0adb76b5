"""Evenings looked back on, as they are listed and told."""

from dataclasses import dataclass

from board.review.measure import Review
from board.review.trace import Answer, Traced


@dataclass(frozen=True)
class LookedBack:
    """One evening: its review, what made courses late, late answers, minutes away from the guests (planned, actual),
    the share of evenings in which each course was to be expected within 5 min (None: not asked), and what was left of
    a damaged log."""

    date: str
    review: Review
    traced: tuple[Traced, ...]
    answers: tuple[Answer, ...]
    away: tuple[int, int]
    chances: dict[str, float] | None = None
    dropped: str | None = None


@dataclass(frozen=True, slots=True)
class Listed:
    """A log in a list. `late`: of its latest course, None where none was served."""

    path: str
    date: str
    plan: str
    rehearsal: bool
    ended: str
    late: int | None
