"""Dishes of one's own."""

from collections.abc import Sequence

SHELF_DISH, SHELF_COURSE, SHELF_SERVES, SHELF_HANDS = "dish", "course", "serves", "hands"
SHELF_LAST, SHELF_TO = "last served", "to"
SHELF_NOT_YET = "–"
SHELF_EMPTY = "No dish is kept yet: platecall dishes keep PLAN DISH puts one here."


def shelf_minutes(minutes: int) -> str:
    return f"{minutes} min"


def shelf_to(names: Sequence[str]) -> str:
    return ", ".join(names)


def shelf_lies_at(path: str) -> str:
    return f"It lies at {path}"


def shelf_last(day: str, names: Sequence[str]) -> str:
    return f"Last served on {day}{f' to {shelf_to(names)}' if names else ''}"
