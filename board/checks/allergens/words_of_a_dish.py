"""A dish's name and its steps against a guest: a food named there that no ingredient accounts for. Pure."""

from collections.abc import Iterator, Sequence

from board.checks.allergens.dietary_needs import Need
from board.checks.allergens.ingredient_facts import Stuff
from board.checks.allergens.verdict import Reason, Verdict, listed, sources_of
from board.facts.mentions import FORMS, Mention, accounted_for, mentioned
from board.facts.origins import Trait
from board.facts.phrases import holds, stems
from board.plan.model.courses import Dish
from board.plan.model.model import Plan
from board.plan.places import Loc

Said = tuple[Mention, Loc]
_SUBSTITUTED = frozenset(stems("vegan vegetarian veggie mock plant meatless faux imitation dairy-free"))


def said_of(plan: Plan, dish: Dish, loc: Loc, stuff: Sequence[Stuff]) -> tuple[Said, ...]:
    """The foods its name and its steps name beside its ingredients. A step may speak of another dish by its name, and a
    call (`pork is out`) by a part of it."""
    name = stems(dish.dish)
    others = [stems(each.dish) for course in plan.courses for each in course.dishes if each is not dish]
    foods = tuple(each.words for each in stuff)
    found: dict[tuple[str, ...], Said] = {}
    for text, place, is_work in _texts(dish, loc):
        meant = [other for other in others if not is_work or holds(stems(text), other)]
        for each in mentioned(text):
            of_another = any(holds(other, each.words) for other in meant)
            is_the_dish = each.words[-1] in FORMS & set(name)
            if not (of_another or is_the_dish or accounted_for(each, foods)):
                found.setdefault(each.words, (each, place))
    return tuple(found.values())


def _texts(dish: Dish, loc: Loc) -> Iterator[tuple[str, Loc, bool]]:
    """Its name and its steps' words with their places; and whether they say what is done, not what to look out for."""
    if not _SUBSTITUTED & set(stems(dish.dish)):
        yield dish.dish, (*loc, "dish"), True
    for n, step in enumerate(dish.steps):
        for done in filter(None, (step.step, step.how)):
            yield done, (*loc, "steps", n), True
        for text in filter(None, (step.look_for, step.call, step.call_at_end)):
            yield text, (*loc, "steps", n), False


def beside_its_ingredients(said: Sequence[Said], stuff: Sequence[Stuff], need: Need) -> Iterator[Reason]:
    """Something to ask for each food named that holds what a guest must not have, where no ingredient holds it."""
    told = frozenset[Trait]().union(*({*each.holds, *each.may_hold, *each.only_named} for each in stuff))
    for mention, loc in said:
        bad = [trait for trait in mention.food.traits & need.never if trait not in told]
        by_name = need.food is not None and mention.food.name == need.food.name
        if bad or by_name:
            what = f"holds {listed(bad)}" if bad else f"is {need.words.removeprefix('no ')}"
            why = f"its name or its steps name {mention.said}, which {what}, and no ingredient does"
            mend = f"Write {mention.said} among its ingredients, with what its label says; or take the word out."
            yield Reason(Verdict.ASK, need, "", why, sources_of(need, bad) if bad else need.source, loc, mend)
