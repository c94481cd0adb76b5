"""`from shelf: onion tartlets`: where a course waits for a dish of one's own. Pure.

It is written into the plan by a command of its own; until then the plan cannot be read whole.
"""

import copy
from collections.abc import Iterable
from typing import Any

from board.plan.places import Loc

KEY = "from shelf"
_LONGEST = 300


def asked_of_shelf(raw: Any) -> list[tuple[Loc, str]]:
    """Path and name of every dish that is to come from the shelf."""
    courses = raw.get("courses") if isinstance(raw, dict) else None
    found: list[tuple[Loc, str]] = []
    for c, course in enumerate(courses if isinstance(courses, list) else ()):
        dishes = course.get("dishes") if isinstance(course, dict) else None
        for d, dish in enumerate(dishes if isinstance(dishes, list) else ()):
            name = dish.get(KEY) if isinstance(dish, dict) else None
            if isinstance(name, str) and name.strip() and "steps" not in dish:
                found.append((("courses", c, "dishes", d), name))
    return found


def standing_in(raw: dict[str, Any], asked: Iterable[tuple[Loc, str]]) -> dict[str, Any]:
    """The plan's data with a bare dish at each of these paths, so that the rest can be read."""
    made = copy.deepcopy(raw)
    for (_, c, _, d), name in asked:
        dish = made["courses"][c]["dishes"][d]
        del dish[KEY]
        dish |= {"dish": f"? {name}"[:_LONGEST], "steps": [{"step": "-", "takes": "1 min"}]}
    return made
