"""How many examples a property is tried with: a third of them in the everyday run, all of them where PLATECALL_THOROUGH
is set, as `.ci/run` does."""

import os

THOROUGH = bool(os.environ.get("PLATECALL_THOROUGH"))


def times(most: int) -> int:
    """So many, or a third."""
    return most if THOROUGH else -(-most // 3)
