"""Whether what goes in at the steps of a dish or job is what it has, and no more."""

from collections.abc import Iterator

from board.facts.called import same_food
from board.plan.load import PlanFile
from board.plan.model.courses import Dish
from board.plan.model.work import Job
from board.plan.phrases.phrase import near
from board.plan.places import Loc
from board.plan.resolve.amounts import EACH, Amount, measure_for, standard_of
from board.plan.resolve.going_in import Reckoned, listed, reckoned, unlisted
from board.plan.snag import Snag, Weight


def no_more_goes_in_than_there_is(file: PlanFile) -> list[Snag]:
    """buying 7: more of a food goes into the steps of a dish or job than it has, or a food that it does not list; asked
    where the two are in units that nothing here compares."""
    found = []
    for loc, whole in _wholes(file):
        found += [_unlisted(file, whole, (*loc, *at), line.food) for at, line in unlisted(whole)]
        for each in reckoned(whole, standard_of(file.plan.units)):
            if each.verdict != "fits":
                found.append(_snag(file, whole, loc, each))
    return found


def _wholes(file: PlanFile) -> Iterator[tuple[Loc, Dish | Job]]:
    for c, course in enumerate(file.plan.courses):
        for d, dish in enumerate(course.dishes):
            yield ("courses", c, "dishes", d), dish
    for j, job in enumerate(file.plan.jobs):
        yield ("jobs", j), job


def _unlisted(file: PlanFile, whole: Dish | Job, loc: Loc, food: str) -> Snag:
    foods = [line.food for line in listed(whole)]
    message = f"{_name(whole)} uses {food}, which it does not list.{near(food, foods)}"
    same = "It is bought and weighed for guests all the same."
    mend = f"Add it to its `{_key(whole)}`, or write it as it stands there. {same}"
    return Snag("buying 7", Weight.MIND, message, mend, file.places.of(loc))


def _snag(file: PlanFile, whole: Dish | Job, loc: Loc, each: Reckoned) -> Snag:
    uses, has = (_figures(amounts, each, file.plan.units) for amounts in (each.uses, each.has))
    place, name = file.places.of((*loc, *each.loc)), _name(whole)
    if each.verdict == "over":
        message = f"{name} uses {uses} {each.food}, and has {has}"
        mend = f"Use less, or raise the amount among its `{_key(whole)}`."
        return Snag("buying 7", Weight.MIND, message, mend, place)
    message = f"{name} uses {uses} {each.food}, and has {has}: is that enough? The two are not compared"
    return Snag("buying 7", Weight.ASK, message, "Write both in one unit.", place)


def _figures(amounts: tuple[Amount, ...], each: Reckoned, units: str | None) -> str:
    """In the unit of the plan, if there is but one for this food."""
    unit = next(iter(each.units)) if len(each.units) == 1 else None
    one = None
    if unit is not None:
        one = measure_for(same_food(each.food), {unit}, standard_of(units)).amount(1.0, 1.0, unit)
    return " and ".join(_figure(amount, one, unit or "") for amount in amounts)


def _figure(amount: Amount, one: Amount | None, unit: str) -> str:
    kind, size = ("" if amount.kind == EACH else amount.kind), 1.0
    if one is not None and one.kind == amount.kind and one.low:
        kind, size = unit, one.low
    if amount.low is None or amount.high is None:
        return f"a {kind}" if kind else "some"
    low, high = f"{amount.low / size:.4g}", f"{amount.high / size:.4g}"
    return f"{low if low == high else f'{low} to {high}'} {kind}".strip()


def _name(whole: Dish | Job) -> str:
    return whole.job if isinstance(whole, Job) else whole.dish


def _key(whole: Dish | Job) -> str:
    return "supplies" if isinstance(whole, Job) else "ingredients"
