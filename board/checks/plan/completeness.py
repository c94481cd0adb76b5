"""What is missing, or does not add up."""

from board.checks.plan.capacity import stations
from board.plan.load import PlanFile
from board.plan.resolve.served import count_of, served
from board.plan.snag import Snag, Weight


def dishes_feed_the_guests(file: PlanFile) -> list[Snag]:
    """guests 10: a course whose dishes are written for fewer than will eat; or a dish that some are not served, for
    fewer than are."""
    found = []
    mend = "Raise `for` and the amounts, or add a dish."
    for c, course in enumerate(file.plan.courses):
        eaters = served(file.plan, course)
        for_all: list[int] = []  # sizes of dishes that are for everybody
        for d, (dish, guests) in enumerate(zip(course.dishes, eaters, strict=True)):
            count = count_of(file.plan, guests)
            if len(guests) == len(file.plan.guests):
                for_all += [] if dish.for_ is None else [dish.for_]
            elif dish.for_ is not None and dish.for_ < count:
                message = f"{dish.dish} is written for {dish.for_}, and {count} are served it"
                place = file.places.of(("courses", c, "dishes", d, "for"))
                found.append(Snag("guests 10", Weight.MIND, message, mend, place))
        others = {g for guests in eaters if len(guests) < len(file.plan.guests) for g in guests}
        left = file.plan.guest_count - count_of(file.plan, others)
        if for_all and max(for_all) < file.plan.guest_count and sum(for_all) < left:
            message = f"the dishes of {course.course} are written for {sum(for_all)}, and {left} will eat"
            found.append(Snag("guests 10", Weight.MIND, message, mend, file.places.of(("courses", c))))
    return found


def everybody_is_served_something(file: PlanFile) -> list[Snag]:
    """guests 11: a guest who is served nothing in a course."""
    found = []
    for c, course in enumerate(file.plan.courses):
        eaters = {g for guests in served(file.plan, course) for g in guests}
        for g, guest in enumerate(file.plan.guests):
            if g not in eaters:
                message = f"{guest.name} is served nothing in {course.course}"
                mend = f"Add a dish `only for: {guest.name}`."
                found.append(Snag("guests 11", Weight.MIND, message, mend, file.places.of(("courses", c))))
    return found


def fridge_room_is_given(file: PlanFile) -> list[Snag]:
    """kitchen 8: room is asked of a fridge or freezer whose size the plan does not say, so it is not counted."""
    kitchen = file.plan.kitchen
    found = {}
    for task in file.filled.tasks.values():
        for station, loc in stations(task):
            size = {"fridge": kitchen.fridge, "freezer": kitchen.freezer}.get(station.place, 1.0)
            if station.litres is not None and size is None and station.place not in found:
                message = f"room in the {station.place} is asked for, but its size is not given, so it is not counted"
                mend = f"Add `{station.place}: 45 litres` (or what it holds) under kitchen."
                found[station.place] = Snag("kitchen 8", Weight.NOTE, message, mend, file.places.of(loc))
    return list(found.values())


def names_are_not_the_programs_own(file: PlanFile) -> list[Snag]:
    """plan 16: a step or job called like something the program adds itself; the two are easily taken for one
    another."""
    own = {task.node.name.casefold() for task in file.filled.tasks.values() if task.work is None}
    found = []
    for task in file.filled.tasks.values():
        if task.work is not None and task.node.name.casefold() in own:
            message = f"{task.node.name!r} is also what the program calls a piece of work of its own"
            place = file.places.of(task.node.loc)
            found.append(Snag("plan 16", Weight.MIND, message, "Give the step or job other words.", place))
    return found
