"""How many examples a property is tried with: a third of them in the everyday run, all of them where PLATECALL_THOROUGH
is set, as `.ci/run` does."""

import os
from typing import Any

import pytest

THOROUGH = bool(os.environ.get("PLATECALL_THOROUGH"))


def times(most: int) -> int:
    """So many, or a third."""
    return most if THOROUGH else -(-most // 3)


def the_largest_slow(plan: str) -> Any:
    """A plan's name as a parameter; the long table's, which takes as long as all others, among the slow ones."""
    return pytest.param(plan, marks=pytest.mark.slow) if plan.startswith("long-table") else plan
