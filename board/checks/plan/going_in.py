"""Whether what goes in at the steps of a dish or job is what it has, and no more."""

from collections.abc import Iterator

from board.plan.load import PlanFile
from board.plan.model.courses import Dish
from board.plan.model.work import Job
from board.plan.phrases.phrase import near
from board.plan.places import Loc
from board.plan.resolve.amounts import Amount, standard_of
from board.plan.resolve.going_in import Reckoned, listed, reckoned, unlisted
from board.plan.snag import Snag, Weight
from board.sheet.shown import amount_words


def no_more_goes_in_than_there_is(file: PlanFile) -> list[Snag]:
    """buying 7: more of a food goes into the steps of a dish or job than it has, or a food that it does not list,
    unless a question decides whether it goes in; asked where the two are in units that nothing here compares."""
    found = []
    for loc, whole in _wholes(file):
        found += [
            _unlisted(file, whole, (*loc, *at), line.food) for at, line in unlisted(whole) if not _is_asked(whole, at)
        ]
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


def _is_asked(whole: Dish | Job, at: Loc) -> bool:
    """Whether it is used on a yes only: bought, and in no list of what is always in it."""
    work = whole if isinstance(whole, Job) else whole.steps[int(at[1])]
    return work.decide is not None


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
    return " and ".join(amount_words(amount, units, each.units) for amount in amounts)


def _name(whole: Dish | Job) -> str:
    return whole.job if isinstance(whole, Job) else whole.dish


def _key(whole: Dish | Job) -> str:
    return "supplies" if isinstance(whole, Job) else "ingredients"
