"""Whether a dish spoils as it comes to the table, or into another dish, and why. Pure."""

from board.plan.model.model import Plan
from board.plan.places import Loc
from board.plan.resolve.assume import Filled, Task
from board.plan.resolve.spoils import BY_WORD, KEEPS, Spoils, dish_at


def dish_spoils(plan: Plan, filled: Filled, loc: Loc) -> Spoils:
    """By the host's word of the dish or of a step; otherwise by what its last steps have made of it."""
    dish = dish_at(plan, loc)
    if dish is None or dish.perishable is False:
        return KEEPS
    by = by_itself(filled, loc)
    said = dish.perishable or any(step.perishable for step in dish.steps)
    if said:
        return by if by.does else BY_WORD
    return by if any(task.care.spoils for task in _last(filled, loc)) else KEEPS


def by_itself(filled: Filled, loc: Loc) -> Spoils:
    """The same without the host's word; what is known goes before what is only taken so."""
    found = [task.care.by for task in _last(filled, loc) if task.care.by.does]
    return max(found, key=lambda by: by.sure, default=KEEPS)


def _last(filled: Filled, loc: Loc) -> list[Task]:
    """Its steps that none of its own follows, or that are served."""
    own = {id_: task for id_, task in filled.tasks.items() if task.node.kind == "step" and task.node.loc[:4] == loc}
    inner = {link.first for link in filled.taken_up if link.first in own and link.second in own}
    served = {link.first for link in filled.links if filled.tasks[link.second].node.kind == "serve"}
    return [task for id_, task in own.items() if id_ not in inner or id_ in served]
