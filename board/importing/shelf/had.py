"""Guests of a plan who had one of its dishes on an evening before."""

from collections.abc import Iterable
from datetime import date

from board.importing.shelf import words
from board.importing.shelf.kept import Evening
from board.importing.shelf.taking import evening_of
from board.plan.load import PlanFile
from board.plan.resolve.links import name_key
from board.plan.snag import Snag, Weight


def had_before(file: PlanFile, evenings: Iterable[tuple[str, Evening]]) -> list[Snag]:
    """shelf 2: by dish and day, guests who are served a dish that they had before. `evenings`: a kept dish's name, and
    an evening on which it was served."""
    told = list(evenings)
    found = []
    for c, course in enumerate(file.plan.courses):
        for d, dish in enumerate(course.dishes):
            place = ("courses", c, "dishes", d)
            guests = {name_key(name): name for name in evening_of(file, place).to}
            last: dict[str, date] = {}
            for name, evening in told:
                if name_key(name) == name_key(dish.dish) and evening.on < file.plan.date:
                    for who in map(name_key, evening.to):
                        last[who] = max(evening.on, last.get(who, evening.on))
            for on in sorted({last[who] for who in guests if who in last}, reverse=True):
                names = [name for who, name in guests.items() if last.get(who) == on and not name[0].isdecimal()]
                if names:
                    message = words.had(names, dish.dish, on, year=on.year != file.plan.date.year)
                    found.append(Snag("shelf 2", Weight.NOTE, message, "", file.places.of((*place, "dish"))))
    return found
