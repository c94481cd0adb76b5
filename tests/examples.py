"""How much is tried: of a property's examples an eighth, all where PLATECALL_THOROUGH is set; the same ones each time,
new ones where PLATECALL_NEW_EXAMPLES is set. Of the brute-force oracle's slow plans every third, all where
PLATECALL_EVERY_SEED is set."""

import os
from collections.abc import Iterable, Sequence
from typing import Any

import pytest

THOROUGH = bool(os.environ.get("PLATECALL_THOROUGH"))
NEW_EXAMPLES = bool(os.environ.get("PLATECALL_NEW_EXAMPLES"))


def times(most: int) -> int:
    """So many, or an eighth."""
    return most if THOROUGH else -(-most // 8)


def some(seeds: Sequence[int]) -> Sequence[int]:
    """Every third of many seeds; all of them where PLATECALL_EVERY_SEED is set."""
    return seeds if os.environ.get("PLATECALL_EVERY_SEED") else seeds[::3]


def first(kept: int, values: Iterable[Any]) -> list[Any]:
    """Values to parametrize with: the first so many every day, the rest among the slow tests."""
    return [
        value if n < kept else pytest.param(*(value if isinstance(value, tuple) else (value,)), marks=pytest.mark.slow)
        for n, value in enumerate(values)
    ]


def the_largest_slow(plan: str) -> Any:
    """A plan's name as a parameter; the long table's, which takes as long as all others, among the slow ones."""
    return pytest.param(plan, marks=pytest.mark.slow) if plan.startswith("long-table") else plan
