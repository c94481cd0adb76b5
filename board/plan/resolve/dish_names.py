"""Dish names must be distinct enough that every step can be named. Pure."""

from board.plan.model.model import Plan
from board.plan.places import Loc
from board.plan.resolve.fault import Fault
from board.plan.resolve.known_again import name_key

OWN_NAME = "Give each its own name."


def dish_names(plan: Plan) -> list[Fault]:
    """plan 9 at the second of two dishes with one name: in one course always, in two courses if they share a step's
    words (`boil in Potatoes` could mean either). Ignores case, spaces, and replacements for unreadable names."""
    problems = []
    seen: dict[str, list[tuple[int, set[str]]]] = {}
    for c, course in enumerate(plan.courses):
        for d, dish in enumerate(course.dishes):
            steps = {name_key(step.step) for step in dish.steps}
            before = seen.setdefault(name_key(dish.dish), [])
            loc: Loc = ("courses", c, "dishes", d, "dish")
            if dish.dish.startswith("? "):
                continue
            if any(other == c for other, _ in before):
                problems.append(Fault("plan 9", f"two dishes of one name in a course: {dish.dish!r}", OWN_NAME, loc))
            elif any(shared & steps for _, shared in before):
                message = f"two dishes of one name, {dish.dish!r}, have a step of the same words"
                problems.append(Fault("plan 9", message, "Give each dish, or each step, its own name.", loc))
            before.append((c, steps))
    return problems
