"""How long the table's own work takes one pair of hands: plating and carrying a course, clearing it, bringing those who
eat to the table. Minutes; common practice, no source, and a plan's own figure goes before it. More hands take less: how
many lend theirs, no plan says.
"""

import math
from typing import Literal

At = Literal["seat", "serve", "serve-shared", "clear"]
LEAST_MINUTES = 5  # of each, at a small table
A_GUEST: dict[At, float] = {
    "seat": 0.3,
    "serve": 0.6,  # a plate each, carried two at a time
    "serve-shared": 0.35,  # dishes for all, or what is eaten standing
    "clear": 0.4,
}


def table_minutes(what: At, guests: int) -> int:
    """For so many who eat."""
    return max(LEAST_MINUTES, math.ceil(guests * A_GUEST[what]))
