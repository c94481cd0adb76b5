"""What must be bought before work begins: each piece of work and the first trip that can bring what it takes up. Pure.

A dish's food is wanted by its first steps, a job's supplies by the job, a bottle by what chills or opens it, else by
the serving. A plan that lists no trips asks for nothing, nor does one whose pantry is a file: what is in it is not
known here.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from zoneinfo import ZoneInfo

from board.facts.called import same_food
from board.facts.sections import as_called, section_of
from board.plan.model.drinking import Pairing
from board.plan.model.model import Plan
from board.plan.model.shopping import InTheHouse, OpenHours
from board.plan.phrases.quantities import Ingredient
from board.plan.phrases.when import stretch
from board.plan.places import Loc
from board.plan.resolve.amounts import measure_for, standard_of
from board.plan.resolve.going_in import FROM_THE_TAP, foods_of
from board.plan.resolve.hours import day_of
from board.plan.resolve.links import Link, Node, serve_id
from board.plan.resolve.scaling import factor_of, scale
from board.plan.resolve.trips import Trip, trips

DRINKS = "drinks"  # the section of what is poured
A_TRIFLE = 1e-9  # amounts are reckoned as floats


@dataclass(frozen=True, slots=True)
class Waiting:
    """Work that waits for a trip, by the ids of both, and the food it waits for. `trip` None: no trip can bring it."""

    work: str
    trip: str | None
    food: str


def waiting_for_trips(plan: Plan, nodes: Mapping[str, Node], links: Iterable[Link]) -> list[Waiting]:
    """One for each piece of work and trip: the first on which the food's shop is open."""
    if not plan.shopping or any(each.file is not None for each in plan.pantry):
        return []
    every, written = trips(plan), written_sections(plan)
    ids = {node.name: id_ for id_, node in nodes.items() if node.loc[0] == "shopping"}
    found: dict[tuple[str, str | None], Waiting] = {}
    for loc, line in _to_buy(plan):
        where = [shop_section(each, written) for each in _either(line)]
        trip = next((trip for trip in every if any(is_open(plan, each, trip) for each in where)), None)
        id_ = ids[trip.name] if trip is not None else None
        for work in _first_work(nodes, links, loc):
            found.setdefault((work, id_), Waiting(work, id_, line.food))
    return list(found.values())


def _first_work(nodes: Mapping[str, Node], links: Iterable[Link], loc: Loc) -> list[str]:
    """Ids of what begins the work at a place of the plan: what follows nothing else there; else the serving."""
    here = [id_ for id_, node in nodes.items() if node.loc[: len(loc)] == loc]
    following = {link.second for link in links if link.first in here}
    return [id_ for id_ in here if id_ not in following] or [serve_id(_course(nodes, loc))]


def _course(nodes: Mapping[str, Node], loc: Loc) -> str:
    """The name of the course that a place of the plan lies in."""
    return next(node.course or "" for node in nodes.values() if node.kind == "serve" and node.loc == loc[:2])


def _to_buy(plan: Plan) -> Iterator[tuple[Loc, Ingredient]]:
    """Each line that what is in the house, taken in the order of the plan, does not cover; with where it is written."""
    house = _House(plan)
    for loc, line, factor in _lines(plan):
        if not any(house.takes(each, factor) for each in _either(line)):
            yield loc, line


def _lines(plan: Plan) -> Iterator[tuple[Loc, Ingredient, float]]:
    """Every line: of dishes, with the factor they grow by, of jobs, and of what is poured."""
    for c, course in enumerate(plan.courses):
        for d, dish in enumerate(course.dishes):
            factor = factor_of(plan, course, dish)
            for _, line in foods_of(dish):
                yield ("courses", c, "dishes", d, "steps"), line, factor
        for d, pairing in enumerate(course.drink):
            yield ("courses", c, "drink", d), pairing_line(pairing), 1.0
    for j, job in enumerate(plan.jobs):
        for _, line in foods_of(job):
            yield ("jobs", j), line, 1.0


def pairing_line(pairing: Pairing) -> Ingredient:
    """A course's drink as something to buy."""
    bottles = float(pairing.bottles)
    return Ingredient(food=pairing.drink, low=bottles, high=bottles, unit="bottle", section=DRINKS)


def written_sections(plan: Plan) -> tuple[str, ...]:
    """The sections of the shop that a plan names, in order."""
    dishes = [dish for course in plan.courses for dish in course.dishes]
    lines = [
        *(line for dish in dishes for line in dish.ingredients),
        *(line for job in plan.jobs for line in job.supplies),
    ]
    return tuple(dict.fromkeys([*(line.section.strip() for line in lines if line.section), *plan.shops]))


def shop_section(line: Ingredient, written: Sequence[str]) -> str:
    """Where a line is bought: as it says, else where its food is known to stand, in the plan's own words for that;
    empty if neither."""
    return line.section.strip() if line.section else as_called(section_of(line.food, line.unit), written)


def _either(line: Ingredient) -> Sequence[Ingredient]:
    return line.choices or (line,)


class _House:
    """What is in the house, less what was taken."""

    def __init__(self, plan: Plan) -> None:
        self.standard = standard_of(plan.units)
        self.there: dict[str, list[InTheHouse]] = {}
        self.taken: dict[str, list[tuple[float, str]]] = {}
        for each in plan.pantry:
            self.there.setdefault(same_food(each.food), []).append(each)

    def takes(self, line: Ingredient, factor: float) -> bool:
        """Whether it is there; it is then taken."""
        key, (_, wanted) = same_food(line.food), scale(line, factor).to_have
        there, taken = self.there.get(key, []), self.taken.setdefault(key, [])
        if key in FROM_THE_TAP or any(each.low is None for each in there) or (there and wanted is None):
            return True
        if wanted is None or not there:
            return False
        measure = measure_for(line.food, {line.measure, *(each.measure for each in there)}, self.standard)
        want = measure.amount(wanted, wanted, line.measure)
        house = [measure.amount(each.low, each.high, each.measure) for each in there]
        gone = [measure.amount(much, much, unit) for much, unit in taken]
        left = sum(each.low or 0.0 for each in house if each.kind == want.kind)
        left -= sum(each.low or 0.0 for each in gone if each.kind == want.kind)
        if (want.high or 0.0) > left * (1 + A_TRIFLE):
            return False
        taken.append((wanted, line.measure))
        return True


def is_open(plan: Plan, section: str, trip: Trip) -> bool:
    """Whether a section's shop is open during a trip, or its hours are not known."""
    hours = hours_of_shop(plan, section)
    if hours is None:
        return True
    zone = ZoneInfo(plan.zone)
    spans = [stretch(day_of(plan, word), span, zone) for word, found in hours.items() for span in found]
    return any(opens < trip.end and trip.start < shuts for opens, shuts in spans)


def hours_of_shop(plan: Plan, section: str) -> OpenHours | None:
    """Opening hours of a section's shop; None if the plan does not say."""
    named = {same_food(name): hours for name, hours in plan.shops.items()}
    return named.get(same_food(section)) if section else None
