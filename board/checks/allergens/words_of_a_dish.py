"""A dish's name and its steps against a guest: a food named there that no ingredient accounts for. Pure."""

import re
from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass, replace

from board.checks.allergens.dietary_needs import Need
from board.checks.allergens.ingredient_facts import Stuff
from board.checks.allergens.verdict import Reason, Verdict, listed, sources_of
from board.facts.allergens import Allergen
from board.facts.food import understood
from board.facts.foods.dish_names import is_of_meals, named_dishes
from board.facts.foods.entry import COMMON_PRACTICE
from board.facts.held import Stems
from board.facts.mentions import (
    FLOURED,
    FORMS,
    Mention,
    accounted_for,
    mentioned,
    said_free,
    told_by_a_name,
    with_flour,
)
from board.facts.named import named
from board.facts.origins import Origin, Trait
from board.facts.phrases import NEUTRAL, holds, stems, words_of
from board.facts.susceptible import SUSCEPTIBLE
from board.plan.model.courses import Dish
from board.plan.model.model import Plan
from board.plan.places import Loc


@dataclass(frozen=True, slots=True)
class Said:
    """Words of a dish that no ingredient goes by, where they stand, and what they say: foods, what these hold, what a
    dish of that name often holds; or that they are a name which nobody here understands."""

    words: str
    loc: Loc
    foods: tuple[str, ...]
    holds: frozenset[Trait]
    often: frozenset[Trait] = frozenset()
    understood: bool = True


def said_of(plan: Plan, dish: Dish, loc: Loc, stuff: Sequence[Stuff]) -> tuple[Said, ...]:
    """What its name and its steps name beside its ingredients. A step may speak of another dish by its name, and a
    call (`pork is out`) by a part of it."""
    name = stems(dish.dish)
    others = [stems(each.dish) for course in plan.courses for each in course.dishes if each is not dish]
    foods = tuple(each.words for each in stuff)
    found: dict[tuple[str, ...], Said] = {}
    for each in mentioned(dish.dish):
        if not any(holds(other, each.words) for other in others) and not accounted_for(each, foods):
            found.setdefault(each.words, _by_name(each, dish.dish, (*loc, "dish"), foods))
    for said in _usual(dish, (*loc, "dish"), foods):
        _put_together(found, said, others)
    if foods and not _is_understood(plan, dish, foods):
        found[name] = Said(dish.dish, (*loc, "dish"), (), frozenset(), understood=False)
    for text, place, is_work in _texts(dish, loc):
        meant = [other for other in others if not is_work or holds(stems(text), other)]
        for each in mentioned(text):
            of_another = any(holds(other, each.words) for other in meant)
            is_the_dish = each.words[-1] in FORMS & set(name)
            if not (of_another or is_the_dish or accounted_for(each, foods)):
                found.setdefault(each.words, Said(each.said, place, (each.food.name,), each.food.traits))
    return tuple(found.values())


def _put_together(found: dict[Stems, Said], said: Said, others: Sequence[Stems]) -> None:
    """Adds a dish named to what its name was found to say: the longer name tells, and `chana masala`, which usually
    holds nothing, is more than a masala."""
    key = stems(said.words)
    often = said.often
    for words in [words for words in found if holds(key, words) and words != key]:
        often = often | found[words].often if often else often
        found[words] = replace(found[words], often=frozenset())
        often -= found[words].holds
    around = next((words for words in found if holds(words, key)), key)
    if not any(holds(other, key) for other in others):
        known = found.get(around, said)
        found[around] = replace(known, often=(known.often | often) - known.holds)


def _usual(dish: Dish, loc: Loc, foods: tuple[Stems, ...]) -> Iterator[Said]:
    """The dishes its name names, with what they usually hold."""
    name, words = stems(dish.dish), words_of(dish.dish)
    ends = {each.words[-1] for each in mentioned(dish.dish)}
    for start, end, usual, alone in named_dishes(dish.dish):
        of_a_food = alone and start > 0 and name[start - 1] in ends
        if not of_a_food and not any(food[start - end :] == name[start:end] for food in foods):
            often = usual - said_free(dish.dish)
            yield Said(" ".join(words[start:end]), loc, (), frozenset(), often)


def _is_understood(plan: Plan, dish: Dish, foods: tuple[Stems, ...]) -> bool:
    """Whether its name, before what goes with it, tells anything: by the tables, by its ingredients, or by the host."""
    head = _BESIDE.split(dish.dish, maxsplit=1)[0]
    own = {word for food in foods for word in food} - NEUTRAL
    return (
        is_of_meals(head)
        or any(named_dishes(dish.dish))
        or bool(own.intersection(stems(head)) or understood(head).known)
        or any(holds(stems(dish.dish), stems(food)) for food in plan.foods)
    )


def _by_name(mention: Mention, name: str, loc: Loc, foods: tuple[tuple[str, ...], ...]) -> Said:
    """What the dish's name says of it: before `with`, the dish; after it, what is beside; a form by itself after `and`
    (`ice cream and shortbread`, not `beetroot and walnut terrine`) is beside, too."""
    head, *_ = _BESIDE.split(name, maxsplit=1)
    alone = any(stems(piece) == mention.words for piece in re.split(r"\band\b|&|\+", head)[1:])
    told, often = told_by_a_name(mention, is_the_dish=not alone and holds(stems(head), mention.words))
    never = said_free(name)
    if mention.words[-1] in FORMS | FLOURED and with_flour(foods):
        never |= _OF_FLOUR
    held = frozenset[Trait]().union(*(food.traits for food in told)) - never
    kept = tuple(food.name for food in told if not food.traits or food.traits - never)
    return Said(mention.said, loc, kept, held, often - held - never)


_BESIDE = re.compile(r"\b(?:with|on|in|over|under)\b|[,;:/(]", re.IGNORECASE)
_OF_FLOUR: frozenset[Trait] = frozenset({Allergen.WHEAT, Allergen.RYE, Allergen.BARLEY, Origin.GLUTEN})


def _texts(dish: Dish, loc: Loc) -> Iterator[tuple[str, Loc, bool]]:
    """Its steps' words with their places; and whether they say what is done, not what to look out for."""
    for n, step in enumerate(dish.steps):
        for done in filter(None, (step.step, step.how)):
            yield done, (*loc, "steps", n), True
        for text in filter(None, (step.look_for, step.call, step.call_at_end)):
            yield text, (*loc, "steps", n), False


def beside_its_ingredients(said: Sequence[Said], stuff: Sequence[Stuff], need: Need) -> Iterator[Reason]:
    """Something to ask for what is named and holds, or often holds, what a guest must not have, where no ingredient
    holds it or is free from what its like holds. That one `may contain` it tells nothing of what is named."""
    told = frozenset[Trait]().union(*({*each.holds, *each.only_named, *_replaced(each)} for each in stuff))
    open_ = told.union(*({*each.may_hold, *each.cleared} for each in stuff))
    asked = need.diet is None or need.words not in (*SUSCEPTIBLE, "child")
    for each in said:
        if not each.understood:
            if asked and need.safety:
                why = "nobody here knows what that is, or what usually goes in"
                mend = f"Where all that goes in is written, write `{each.words}: nothing` under `foods:`."
                yield Reason(Verdict.ASK, need, "", why, "nothing is known of it", each.loc, mend)
            continue
        bad = each.holds & need.never - told
        by_name = need.food is not None and need.food.name in each.foods
        often = each.often & need.never - open_ if asked and not need.never & told else frozenset()
        if bad or by_name or often:
            if bad:
                what = f"holds {_briefly(bad, need)}"
            else:
                what = f"is {_bare(need)}" if by_name else f"often holds {_briefly(often, need)}"
            why = f"its name or its steps name {each.words}, which {what}, and no ingredient does"
            source = sources_of(need, sorted(bad or often, key=str)) if bad or often else need.source
            mend = f"Write {each.words} among its ingredients, with what its label says; or take the word out."
            if not bad and not by_name:
                source = f"{COMMON_PRACTICE}; {source}"
                mend = "Where what goes in holds none, write an ingredient with `free from` and what its label says."
            yield Reason(Verdict.ASK, need, "", why, source, each.loc, mend)


def _replaced(stuff: Stuff) -> frozenset[Trait]:
    """What the likes of an ingredient hold and it, by its own words or its label, does not: gluten-free shortbread."""
    never = said_free(stuff.written) | stuff.cleared
    if not never:
        return frozenset()
    usual = frozenset[Trait]().union(*(each.food.traits for each in mentioned(stuff.food)))
    return usual & never - set(stuff.holds)


def _bare(need: Need) -> str:
    return need.words.removeprefix("no ")


def _briefly(traits: Collection[Trait], need: Need) -> str:
    """The traits, or the guest's own word where they are many."""
    group = named(_bare(need))
    return _bare(need) if group is not None and len(traits) > _MANY else listed(traits)


_MANY = 3
