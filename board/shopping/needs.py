"""What a plan needs, by dish and job: one need for every line the host wrote. Pure."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime

from board.facts.called import same_food
from board.plan.load import PlanFile
from board.plan.phrases.quantities import Ingredient
from board.plan.places import Loc
from board.plan.resolve.bought import pairing_line
from board.plan.resolve.going_in import foods_of
from board.plan.resolve.links import serve_id
from board.plan.resolve.scaling import Scaled, factor_of, outgrows_its_times, scale
from board.sheet.run_sheet import RunSheet
from board.shopping import words
from board.shopping.drinks import drinks_for_all


@dataclass(frozen=True, slots=True)
class Need:
    """One line of a dish or job. `key`: joins it with other lines; `first`: when it is first needed, UTC."""

    key: str
    scaled: Scaled
    for_what: str
    first: datetime

    @property
    def line(self) -> Ingredient:
        return self.scaled.line


@dataclass(frozen=True, slots=True)
class Grown:
    """A dish scaled up or down. `times`: its times and pots need a look."""

    dish: str
    written_for: int
    factor: float
    times: bool


def needs(file: PlanFile, sheet: RunSheet) -> tuple[Need, ...]:
    """Every line, in plan order."""
    return tuple(_needs(file, sheet))


def _needs(file: PlanFile, sheet: RunSheet) -> Iterator[Need]:
    plan = file.plan
    for course in plan.courses:
        for dish in course.dishes:
            factor = factor_of(plan, course, dish)
            first = min(s.start for s in sheet.slots if (s.dish, s.course) == (dish.dish, course.course))
            for _, line in foods_of(dish):
                yield Need(same_food(line.food), scale(line, factor), dish.dish, first)
    slots = sheet.by_id()
    by_loc = {task.node.loc: id_ for id_, task in file.filled.tasks.items() if task.node.kind == "job"}
    for number, job in enumerate(plan.jobs):
        for _, line in foods_of(job):
            yield Need(same_food(line.food), scale(line, 1.0), job.job, slots[by_loc["jobs", number]].start)
    yield from _poured(file, sheet)
    for line in drinks_for_all(file):
        yield Need(same_food(line.food), scale(line, 1.0), words.FOR_THE_TABLE, file.filled.arrive)


def _poured(file: PlanFile, sheet: RunSheet) -> Iterator[Need]:
    """Drinks poured with courses, needed when chilled or opened, otherwise when the course is served."""
    starts = {slot.id: slot.start for slot in sheet.slots}
    by_loc: dict[Loc, datetime] = {}
    for id_, task in file.filled.tasks.items():
        by_loc[task.node.loc] = min(starts[id_], by_loc.get(task.node.loc, starts[id_]))
    for c, course in enumerate(file.plan.courses):
        for d, pairing in enumerate(course.drink):
            first = by_loc.get(("courses", c, "drink", d), starts[serve_id(course.course)])
            line = pairing_line(pairing)
            yield Need(same_food(line.food), scale(line, 1.0), course.course, first)


def grown(file: PlanFile) -> tuple[Grown, ...]:
    """The dishes not made as written."""
    plan = file.plan
    found = []
    for course in plan.courses:
        for dish in course.dishes:
            factor = factor_of(plan, course, dish)
            if factor != 1 and foods_of(dish) and dish.for_ is not None:
                found.append(Grown(dish.dish, dish.for_, factor, outgrows_its_times(factor)))
    return tuple(found)
