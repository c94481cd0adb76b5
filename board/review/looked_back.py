"""Evenings looked back on, as they are listed and reported."""

from dataclasses import dataclass

from board.review.measure import Review
from board.review.next_time import NextTime
from board.review.trace import Answer, Traced


@dataclass(frozen=True)
class LookedBack:
    """One evening: review, causes of late courses, late answers, minutes away from the guests of each who sits
    (planned, actual). `chances`: for each course, the expected share of evenings within 5 min, None if not asked for;
    `dropped`: what was left out of a damaged log; `account`: of a rehearsal's mishaps, in
    lines; `next_time`: what in the plan would have helped."""

    date: str
    review: Review
    traced: tuple[Traced, ...]
    answers: tuple[Answer, ...]
    away: tuple[dict[str, int], dict[str, int]]
    chances: dict[str, float] | None = None
    dropped: str | None = None
    account: tuple[str, ...] = ()
    next_time: tuple[NextTime, ...] = ()


@dataclass(frozen=True, slots=True)
class Listed:
    """A log in a list. `late`: minutes of its latest course; None if none was served, or that was only `said`."""

    path: str
    date: str
    plan: str
    rehearsal: bool
    ended: str
    late: int | None
    said: bool = False
