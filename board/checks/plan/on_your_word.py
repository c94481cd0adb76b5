"""What the host's own words settle, and what would be found without them: a label read, a dish that does not spoil.

The program takes such a word as given. It may be wrong all the same: a label misread, a cheese that is not pasteurised.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from board.checks.allergens.dietary_needs import Need
from board.checks.allergens.guests_eat import Matrix
from board.checks.allergens.ingredient_facts import Stuff, host_foods, stuff_of
from board.checks.allergens.verdict import Verdict, judged
from board.facts.held import Facts, Stems
from board.facts.phrases import stems
from board.plan.load import PlanFile
from board.plan.model.courses import Dish
from board.plan.phrases.quantities import Ingredient
from board.plan.places import Loc
from board.plan.resolve.at_table import by_itself
from board.plan.resolve.going_in import foods_of
from board.plan.snag import Place


@dataclass(frozen=True, slots=True)
class OnYourWord:
    """One such word, what it settles (empty if the word says so itself), and what it is about. Unsafe for a terminal as
    they are."""

    word: str
    settles: str
    about: str
    place: Place


def on_your_word(file: PlanFile, eaten: Matrix) -> tuple[OnYourWord, ...]:
    """In the order of the plan; a word that settles nothing is not among them. Pure."""
    return tuple(dict.fromkeys([*_dishes(file, eaten), *_jobs(file)]))


def _dishes(file: PlanFile, eaten: Matrix) -> Iterator[OnYourWord]:
    rows = {row.loc: number for number, row in enumerate(eaten.dishes)}
    own = host_foods(file.plan)
    for c, course in enumerate(file.plan.courses):
        for d, dish in enumerate(course.dishes):
            loc: Loc = ("courses", c, "dishes", d)
            if (row := rows.get(loc)) is None:
                yield OnYourWord("ingredients: nothing", "nobody eats of it", dish.dish, file.places.of(loc))
            else:
                served = [g for g in range(len(eaten.guests)) if eaten.answers[g, row].served]
                for at, line in foods_of(dish):
                    yield from _line(file, eaten, served, line, (*loc, *at), own)
                yield from _not_served(file, eaten, dish, row, loc)
            yield from _keeps(file, dish, loc)
            for n, step in enumerate(dish.steps):
                yield from _washed(file, step.step, step.washes, (*loc, "steps", n))


def _line(
    file: PlanFile, eaten: Matrix, served: list[int], line: Ingredient, loc: Loc, own: dict[Stems, Facts]
) -> Iterator[OnYourWord]:
    """Its label, and the plan's own list of foods: whom each makes it safe for."""
    said = stuff_of(line, loc, own)
    if line.free_from:
        bare = line.model_copy(update={"free_from": ()})
        if guests := _worse_for(eaten, served, stuff_of(bare, loc, own), said):
            word = f"free from {', '.join(line.free_from)}"
            yield OnYourWord(word, f"safe for {guests}", line.food, file.places.of(loc))
    for name in file.plan.foods:
        others = {words: facts for words, facts in own.items() if words != stems(name)}
        if guests := _worse_for(eaten, served, stuff_of(line, loc, others), said):
            held = ", ".join(file.plan.foods[name]) or "nothing"
            place = file.places.of(("foods", name))
            yield OnYourWord(f"foods: {name}: {held}", f"not asked about for {guests}", line.food, place)


def _worse_for(eaten: Matrix, served: list[int], without: Stuff, said: Stuff) -> str:
    """The guests, as a list, for whom it would be worse without the word; empty if there are none."""
    if without == said:
        return ""
    needs = {g: [need for need in eaten.needs[g] if need.known] for g in served}
    worse = [g for g in served if any(_verdict(without, need) > _verdict(said, need) for need in needs[g])]
    return ", ".join(dict.fromkeys(eaten.guests[g].name for g in worse))


def _verdict(stuff: Stuff, need: Need) -> Verdict:
    return max((reason.verdict for reason in judged(stuff, need)), default=Verdict.SAFE)


def _not_served(file: PlanFile, eaten: Matrix, dish: Dish, row: int, loc: Loc) -> Iterator[OnYourWord]:
    """`not for`, `only for`, `instead of`: who is kept from a dish that is not safe for them."""
    for g, guest in enumerate(eaten.guests):
        answer = eaten.answers[g, row]
        if answer.served or answer.verdict is not Verdict.NOT_SAFE:
            continue
        bad = next(reason for reason in answer.reasons if reason.verdict is Verdict.NOT_SAFE)
        about = f"{dish.dish} ({bad.ingredient or bad.need.words})"
        yield OnYourWord(f"not served to {guest.name}", "", about, file.places.of(loc))


def _keeps(file: PlanFile, dish: Dish, loc: Loc) -> Iterator[OnYourWord]:
    """`perishable: no`, of a dish or a step that spoils by what it is made of."""
    no_clock = "no clock for how long it stands out, or keeps"
    if dish.perishable is False and by_itself(file.filled, loc).does:
        yield OnYourWord("perishable: no", no_clock, dish.dish, file.places.of((*loc, "perishable")))
    by_step = {task.node.loc: task for task in file.filled.tasks.values()}
    for n, step in enumerate(dish.steps):
        at: Loc = (*loc, "steps", n)
        if step.perishable is False and by_step[at].care.by.does:
            yield OnYourWord("perishable: no", no_clock, step.step, file.places.of((*at, "perishable")))


def _jobs(file: PlanFile) -> Iterator[OnYourWord]:
    for n, job in enumerate(file.plan.jobs):
        for course in job.puts_away:
            about = f"{course} ({job.job})"
            yield OnYourWord("puts away", "leftovers are cold in time", about, file.places.of(("jobs", n)))
        yield from _washed(file, job.job, job.washes, ("jobs", n))


def _washed(file: PlanFile, work: str, tools: Iterable[str], loc: Loc) -> Iterator[OnYourWord]:
    for tool in tools:
        yield OnYourWord("washes", "clean for the next dish", f"{tool} ({work})", file.places.of(loc))
