"""Who is served which dish: everyone, except for dishes limited by `only for`, `not for` or `instead of`. Pure."""

from board.plan.model.courses import Course, Dish
from board.plan.model.model import Plan
from board.plan.phrases.phrase import meant_by, near
from board.plan.places import Loc
from board.plan.resolve.fault import Fault, name_key


def served(plan: Plan, course: Course) -> list[tuple[int, ...]]:
    """For each dish of the course, in order: indices of the guest lines it is served to."""
    return [tuple(g for g in range(len(plan.guests)) if _eats(plan, course, dish, g)) for dish in course.dishes]


def names_served(plan: Plan, course: Course, dish: int) -> tuple[str, ...]:
    """Who is to be served the dish of that number, without the host; groups by how many they are."""
    guests = [plan.guests[g] for g in served(plan, course)[dish]]
    names = [guest.name for guest in guests if guest.count == 1 and name_key(guest.name) != "host"]
    others = sum(guest.count for guest in guests if guest.count > 1)
    names += [f"{others} others" if names else f"{others} guests"] if others else []
    return tuple(names)


def count_of(plan: Plan, guests: tuple[int, ...] | set[int]) -> int:
    """How many people are on these guest lines."""
    return sum(plan.guests[g].count for g in guests)


def _eats(plan: Plan, course: Course, dish: Dish, guest: int) -> bool:
    name = name_key(plan.guests[guest].name)
    if dish.only_for is not None and name not in map(name_key, dish.only_for):
        return False
    if dish.not_for is not None and name in map(name_key, dish.not_for):
        return False
    return not any(
        other.instead_of is not None
        and name_key(other.instead_of) == name_key(dish.dish)
        and name in map(name_key, other.only_for or [])
        for other in course.dishes
        if other is not dish
    )


def misnamed(plan: Plan) -> list[Fault]:
    """Faults for names in `only for`, `not for` and `instead of` that the plan does not have."""
    problems = []
    for c, course in enumerate(plan.courses):
        for d, dish in enumerate(course.dishes):
            loc: Loc = ("courses", c, "dishes", d)
            for key, names in (("only for", dish.only_for), ("not for", dish.not_for)):
                problems += [
                    problem
                    for n, name in enumerate(names or [])
                    if (problem := _no_guest(plan, name, (*loc, key, n))) is not None
                ]
            if dish.instead_of is not None:
                problems += _instead(course, dish, dish.instead_of, (*loc, "instead of"))
    return problems


def _no_guest(plan: Plan, name: str, loc: Loc) -> Fault | None:
    found = [guest for guest in plan.guests if name_key(guest.name) == name_key(name)]
    if len(found) == 1:
        return None
    if found:
        mend = "Give each line of guests a name of its own."
        return Fault("plan 9", f"{name!r} is the name of {len(found)} lines of guests", mend, loc)
    known = [guest.name for guest in plan.guests]
    message = f"no guest is called {name!r}.{near(name, known)}"
    mend = "Write a guest's name as it stands under guests, without what follows it."
    return Fault("plan 8", message, mend, loc, (name, meant_by(name, known)))


def _instead(course: Course, dish: Dish, words: str, loc: Loc) -> list[Fault]:
    others = [other for other in course.dishes if other is not dish]
    found = [other for other in others if name_key(other.dish) == name_key(words)]
    if dish.only_for is None:
        mend = "Add `only for` with the names of those who are served it."
        return [Fault("plan 6", "a dish that stands instead of another needs `only for`, which is missing", mend, loc)]
    if name_key(words) == name_key(dish.dish):
        return [Fault("plan 10", f"{dish.dish!r} stands instead of itself", "Name the dish it replaces.", loc)]
    if not found:
        known = [other.dish for other in others]
        message = f"no other dish of {course.course} is called {words!r}.{near(words, known)}"
        mend = "Name a dish of the same course, in its own words."
        return [Fault("plan 8", message, mend, loc, (words, meant_by(words, known)))]
    if len(found) > 1:
        message = f"{words!r} is the name of {len(found)} dishes of {course.course}"
        return [Fault("plan 9", message, "Give each dish a name of its own.", loc)]
    if found[0].instead_of is not None:
        message = f"{found[0].dish!r} stands instead of another dish itself"
        return [Fault("plan 10", message, "Name the dish that everybody else is served.", loc)]
    return []
