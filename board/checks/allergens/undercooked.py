"""What is raw, barely cooked or risky until it is cooked, in a dish of somebody who is more easily harmed. Planning
help only: a thermometer in the thickest part decides."""

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from enum import IntEnum

from board.checks.allergens.dietary_needs import Need
from board.checks.allergens.ingredient_facts import Stuff
from board.checks.allergens.verdict import Reason, Verdict
from board.checks.allergens.words_of_a_dish import Said
from board.checks.raw_food import DishWork, RawLine, Took, heats
from board.facts.allergens import Allergen
from board.facts.diets import COOKED_CELSIUS
from board.facts.eaten_raw import is_baked_through
from board.facts.food import said_cooked
from board.facts.held import names_of
from board.facts.made_here import AT_HOME, is_made_here
from board.facts.mentions import said_free
from board.facts.origins import Origin
from board.facts.phrases import folded, holds, stems
from board.facts.rule_set import RuleSet
from board.facts.susceptible import (
    BAKED_CELSIUS,
    BAKED_MINUTES,
    BARELY_COOKED,
    BOUGHT_COOKED,
    CHOKES,
    CHOKING,
    COOKS_DOUGH,
    HARD_BOILED,
    LISTERIA,
    MADE_OF_RAW_EGG,
    MADE_SMALL,
    MOIST,
    MOIST_MINUTES,
    NOT_RAW,
    OF_CUSTARD_AT_HOME,
    OF_RAW_EGG_AT_HOME,
    RISKS,
    SAID_COOKED,
    STAYS_RAW,
    STEAMING,
    WHOLE_NUTS,
    Risk,
)
from board.plan.model.courses import Dish
from board.plan.model.work import Step
from board.plan.phrases.food_safety import rule_class
from board.plan.resolve.going_in import all_lines

_CALLED = {"eggs": "egg", "fish": "fish", "poultry": "poultry"}


class Done(IntEnum):
    """How far a plan cooks something; the largest is the best."""

    RAW = 0
    UNDER = 1
    PERHAPS = 2
    THROUGH = 3


@dataclass(frozen=True, slots=True)
class Cooked:
    """`why`: by what words or figure, where that says more."""

    done: Done
    why: str = ""


def undercooked(work: DishWork, stuff: list[Stuff], need: Need, rules: RuleSet) -> Iterator[Reason]:
    """Every reason against a dish for one more easily harmed: raw classes of food first, then what carries Listeria."""
    for each in stuff:
        each = replace(each, written=_written(work.dish, each))
        yield from _raw(work, each, need, rules)
        yield from _risky(work, each, need)
        if need.diet is not None and need.diet.chokes:
            yield from _can_choke(each, need)


def _written(dish: Dish, stuff: Stuff) -> str:
    """The food with the words in its brackets, whatever they are: `eggs (pasteurised)`."""
    section = next((line.section for loc, line in all_lines(dish) if stuff.loc[-len(loc) :] == loc), None)
    return f"{stuff.food} ({section})" if section else stuff.food


def _raw_class(stuff: Stuff) -> str | None:
    """Also of a food that is only named, where its own words say that it stays raw: `steak tartare`."""
    if _is_pasteurised(stuff) or _said((stuff.written,), SAID_COOKED):
        return None
    if stuff.raw_class is not None:
        return stuff.raw_class
    return next(
        (
            part.raw_class
            for part in stuff.parts
            if part.raw_class and _said((stuff.written,), STAYS_RAW[part.raw_class]) and not said_cooked(stuff.food)
        ),
        None,
    )


def _raw(work: DishWork, stuff: Stuff, need: Need, rules: RuleSet) -> Iterator[Reason]:
    food_class = _raw_class(stuff)
    if food_class is None or food_class not in COOKED_CELSIUS:
        yield from _raw_egg_at_home(work, stuff, need, rules)
        return
    what = _CALLED.get(food_class, "meat")
    cooked = _cooked(work, stuff, food_class, rules)
    mend = f"Take pasteurised {stuff.food}, or cook" if what == "egg" else "Cook"
    if cooked.done is Done.RAW and any(part.name in BOUGHT_COOKED for part in stuff.parts) and not cooked.why:
        ask = f"Write `cooked {stuff.food}` where it is."
        yield Reason(
            Verdict.ASK, need, stuff.food, "is it bought cooked? no step heats it", need.source, stuff.loc, ask
        )
    elif cooked.done in (Done.RAW, Done.UNDER):
        why = f"raw {what}: {cooked.why or 'no step heats it'}" if cooked.done is Done.RAW else f"{what}: {cooked.why}"
        yield Reason(Verdict.NOT_SAFE, need, stuff.food, why, need.source, stuff.loc, f"{mend} it through.")
    elif cooked.done is Done.PERHAPS:
        why = f"is the {what} cooked through? {cooked.why or 'no step says a core temperature'}"
        ask = f"Write `{stuff.food}, cooked through`, or a core temperature at its step: `until: 74 C`."
        yield Reason(Verdict.ASK, need, stuff.food, why, need.source, stuff.loc, ask)


def _raw_egg_at_home(work: DishWork, stuff: Stuff, need: Need, rules: RuleSet) -> Iterator[Reason]:
    """Of what is made at home with eggs that nobody lists: raw for certain where it always is, else asked about."""
    may = Origin.RAW_EGG in stuff.may_hold
    always = may or any(part.name in OF_RAW_EGG_AT_HOME for part in stuff.parts)
    custard = any(part.name in OF_CUSTARD_AT_HOME for part in stuff.parts)
    with_egg = Allergen.EGGS in {*stuff.holds, *stuff.may_hold} - said_free(stuff.written)
    if not (always or custard) or not with_egg or _is_pasteurised(stuff):
        return
    mend = f"Buy it, or make it with pasteurised eggs: `pasteurised {stuff.food}`."
    said = bool(_said((stuff.written,), AT_HOME))
    names = {name for part in stuff.parts for whole in names_of(part) for name in (whole, whole[:2], whole[-2:])}
    others = {word for loc, line in work.foods if loc != stuff.loc for word in stems(line.food)}
    if always and said:
        why = "raw egg, where it is made at home"
        yield Reason(Verdict.NOT_SAFE, need, stuff.food, why, need.source, stuff.loc, mend)
    elif (
        not may
        and (said or is_made_here(names, work.dish.dish, _words(work.dish), others))
        and (always or _cooked(work, stuff, "eggs", rules).done < Done.THROUGH)
    ):
        yield Reason(Verdict.ASK, need, stuff.food, _OF_EGG, need.source, stuff.loc, mend)


_OF_EGG = "made at home: is egg in it, raw or barely cooked?"


def made_here_of_egg(work: DishWork, said: Sequence[Said], stuff: Sequence[Stuff], need: Need) -> Iterator[Reason]:
    """What its words make of raw egg beside the dish, where no ingredient is egg or holds any: `make the aioli`."""
    if any(Allergen.EGGS in {*each.holds, *each.cleared} for each in stuff):
        return
    name = work.dish.dish
    for each in said:
        of_egg = Allergen.EGGS in each.holds - said_free(name) and _RAW_EGG.intersection(each.foods)
        if of_egg and is_made_here({stems(each.words)}, name, _words(work.dish)):
            mend = f"Write what goes into the {each.words}, `pasteurised eggs` where they are; or buy it, and list it."
            yield Reason(Verdict.ASK, need, "", f"{each.words}, {_OF_EGG}", need.source, each.loc, mend)


_RAW_EGG = frozenset((*OF_RAW_EGG_AT_HOME, *MADE_OF_RAW_EGG))


def _words(dish: Dish) -> list[str]:
    return [text for step in dish.steps for text in (step.step, step.how) if text]


def _heated(work: DishWork, stuff: Stuff, food_class: str) -> tuple[RawLine, list[tuple[Step, Took]]]:
    """The food as a line of its dish, and every step that heats, with whether the food is in it."""
    line = next(line for loc, line in all_lines(work.dish) if stuff.loc == (*work.loc, *loc))
    raw = RawLine(stuff.loc, line, food_class)
    steps = [task for task in work.all_steps() if heats(task) or task.care.reheats]
    return raw, [(task.work, work.took(task, raw)) for task in steps if isinstance(task.work, Step)]


def _cooked(work: DishWork, stuff: Stuff, food_class: str, rules: RuleSet) -> Cooked:
    """How far the steps of a dish cook one food. Raw words go before heat, unless a step names the food and its figure;
    a figure goes before words. A step counts whose heat reaches this food: `DishWork.took`."""
    raw, heated = _heated(work, stuff, food_class)
    hot = [step for step, took in heated if took >= Took.CARRIED]
    named = [step for step, took in heated if took is Took.NAMED]
    boiled_hard = food_class == "eggs" and any(
        _is_long_enough(step, food_class) and _said((step.step,), HARD_BOILED) for step in named
    )
    sure = boiled_hard or any(_is_enough(step, food_class, rules) for step in named)
    others = [task.node.name for task in work.tasks if not heats(task) and work.names(task, raw)]
    sure = sure and not _said(tuple(others), STAYS_RAW[food_class])
    texts = (work.dish.dish, stuff.written, *_texts(work, raw))
    says = any(_cooks(step, food_class) for step in hot)
    if not sure and (word := _said(texts, STAYS_RAW[food_class])):
        on_heat = any(_said((step.step,), STAYS_RAW[food_class]) for step in hot)
        enough = any(_is_enough(step, food_class, rules) for step in hot)
        return Cooked(Done.PERHAPS if on_heat or says or enough else Done.RAW, f"the plan says {word!r}")
    if not sure and (word := _said(texts, BARELY_COOKED[food_class])):
        enough = any(_is_enough(step, food_class, rules) for step in hot)
        return Cooked(Done.PERHAPS if says or enough else Done.UNDER, f"the plan says {word!r}")
    if sure or any(
        _is_enough(step, food_class, rules)
        or (
            step.until is None
            and (_cooks(step, food_class) or _is_long_enough(step, food_class) or _is_baked(work, step, food_class))
        )
        for step in hot
    ):
        return Cooked(Done.THROUGH)  # how hot `cooks: eggs` gets is checked by the food-safety rules
    coats = food_class == "eggs" and any(other.raw != food_class for other in work.raw)  # the figure is the fish's
    low = [step.until.celsius for step in (named if coats else hot) if step.until is not None]
    if low:
        return Cooked(Done.UNDER, f"cooked to {max(low):g} °C only")
    if hot or any(took for _, took in heated):
        return Cooked(Done.PERHAPS)
    return Cooked(Done.PERHAPS if heated and not _is_cold_at_last(work, raw) else Done.RAW)


def _texts(work: DishWork, line: RawLine) -> Iterator[str]:
    """What the steps say in which this food may be: those that name another food are not about it."""
    for task in work.tasks:
        step = task.work
        if isinstance(step, Step) and work.took(task, line):
            yield from (step.step, step.look_for or "", step.how or "")


def _is_cold_at_last(work: DishWork, line: RawLine) -> bool:
    """Whether a step names this food, and nothing that follows heats: no words leave room for its being cooked."""
    about = [task for task in work.tasks if work.took(task, line) is Took.NAMED]
    return any(not any(heats(each) for each in work.following(task)) for task in about)


def _is_enough(step: Step, food_class: str, rules: RuleSet) -> bool:
    core = step.until
    if core is None:
        return False
    if core.celsius >= COOKED_CELSIUS[food_class]:
        return True
    roast = step.cooks == "roast"
    return rules.cook_for(food_class) is not None and rules.cooked_enough(
        food_class, core.celsius, core.minutes, 60.0, roast=roast
    )


def _cooks(step: Step, food_class: str) -> bool:
    return step.cooks is not None and (food_class in step.cooks or rule_class(step.cooks) == food_class)


def _is_long_enough(step: Step, food_class: str) -> bool:
    """So long simmered, or for eggs baked, that a cook does not ask."""
    ways = [way for way in (step, *step.or_) if way.where is not None and way.where.on_heat]
    if not ways:
        return False
    minutes = min((way.takes or step.takes).low if (way.takes or step.takes) else 0 for way in ways)  # type: ignore[union-attr]
    if minutes >= MOIST_MINUTES[food_class] and _said((step.step,), MOIST):
        return True
    return food_class == "eggs" and minutes >= BAKED_MINUTES and all(
        way.where is not None and way.where.heat is not None and way.where.heat.low >= BAKED_CELSIUS - 20
        and way.where.heat.want >= BAKED_CELSIUS for way in ways
    )  # fmt: skip


def _is_baked(work: DishWork, step: Step, food_class: str) -> bool:
    """Whether egg in it is baked through, as in a biscuit or a meringue, or fried in a batter of flour."""
    ways = [way for way in (step, *step.or_) if way.where is not None and way.where.on_heat]
    if food_class != "eggs" or not ways:
        return False
    with_flour = any("flour" in stems(line.food) for _, line in work.foods)
    for way in ways:
        heat = way.where.heat if way.where is not None else None
        takes = way.takes or step.takes
        if (heat is None and not with_flour) or not is_baked_through(
            work.dish.dish, step.step, heat.low if heat is not None else None, takes.low if takes else 0
        ):
            return False
    return True


def _risky(work: DishWork, stuff: Stuff, need: Need) -> Iterator[Reason]:
    """What carries Listeria and the like until it is steaming hot."""
    found = [risk for risk in RISKS if risk.trait in {*stuff.holds, *stuff.may_hold, *stuff.only_named}]
    sure = [risk for risk in found if risk.sure and risk.trait in stuff.holds]
    if not found and _is_unpasteurised(stuff):
        why = "unpasteurised"
        yield Reason(Verdict.ASK, need, stuff.food, why, LISTERIA, stuff.loc, "Take a pasteurised one, or cook it.")
        return
    if not found or _is_said_through(stuff):
        return
    risk = (sure or found)[0]
    done = _steaming(work, stuff, risk)
    safe_pasteurised = risk.trait in (Origin.RAW_MILK, Origin.RAW_EGG, Origin.RAW_FISH)
    if done is Done.THROUGH or (safe_pasteurised and _is_pasteurised(stuff)):
        return
    if risk.trait is Origin.SPROUTS:
        told = (
            "raw sprouts: no step heats them" if done is Done.RAW else "nobody says that the sprouts are cooked through"
        )
    else:
        told = f"{'holds' if risk.trait in stuff.holds else 'may hold'} {risk.trait.value}"
    certain = risk in sure and done is Done.RAW and not _is_pasteurised(stuff)
    mend = f"Leave it out, or cook it until it steams and write `{stuff.food}, cooked through`."
    if risk not in sure and risk.trait in (Origin.RAW_EGG, Origin.RAW_FISH):
        mend = f"Bought pasteurised, or made raw at home? Write `pasteurised {stuff.food}` if it is, or leave it out."
    if risk.trait is Origin.SPROUTS and done is not Done.RAW:
        mend = f"Write `{stuff.food}, cooked through` where they are."
    yield Reason(Verdict.NOT_SAFE if certain else Verdict.ASK, need, stuff.food, told, risk.source, stuff.loc, mend)


def _steaming(work: DishWork, stuff: Stuff, risk: Risk) -> Done:
    _, heated = _heated(work, stuff, "")
    hot = [step for step, took in heated if took >= Took.CARRIED]
    if any(step.until is not None and step.until.celsius >= STEAMING for step in hot):
        return Done.THROUGH
    if risk.trait is Origin.RAW_DOUGH and any(_cooks_dough(step) for step in hot):
        return Done.THROUGH
    minor = risk.trait in (Origin.CURED_MEAT, Origin.COLD_CUTS, Origin.SMOKED_FISH)
    if minor and any(_is_long_enough(step, "eggs") for step in hot):
        return Done.THROUGH
    return Done.PERHAPS if any(took for _, took in heated) else Done.RAW


def _cooks_dough(step: Step) -> bool:
    ways = [way.where for way in (step, *step.or_) if way.where is not None]
    in_oven = bool(ways) and all(where.place == "oven" and not where.off for where in ways)
    return in_oven or bool(_said((step.step,), COOKS_DOUGH))


def _is_pasteurised(stuff: Stuff) -> bool:
    return bool(re.search(r"(?<!un)(?<!not )\bpasteuri[sz]ed\b", folded(stuff.written)))


def _is_unpasteurised(stuff: Stuff) -> bool:
    return bool(re.search(r"\b(?:un|not |non[- ]?)pasteuri[sz]ed\b", folded(stuff.written)))


def _is_said_through(stuff: Stuff) -> bool:
    said = ("cooked through", "baked through", "well done", "steaming hot")
    if Origin.SPROUTS in stuff.holds:
        return said_cooked(stuff.food)
    return any(holds(stems(stuff.written), stems(words)) for words in said)


def _can_choke(stuff: Stuff, need: Need) -> Iterator[Reason]:
    words = stems(stuff.written)
    if any(word in words for word in _SMALL):
        return
    whole = any(word in words for word in _NUTS) or any(part.name in CHOKES for part in stuff.parts)
    if whole:
        mend = f"Leave it out, or make it small and say so: `ground`, `chopped fine`, `quartered {stuff.food}`."
        yield Reason(Verdict.ASK, need, stuff.food, "whole, it can choke a small child", CHOKING, stuff.loc, mend)


_SMALL = frozenset(stems(MADE_SMALL))
_NUTS = frozenset(stems(WHOLE_NUTS))


_PATTERNS: Mapping[str, re.Pattern[str]] = {
    said: re.compile(rf"\b(?:{said})(?!\w)")
    for said in (*STAYS_RAW.values(), *BARELY_COOKED.values(), MOIST, HARD_BOILED, SAID_COOKED, AT_HOME, COOKS_DOUGH)
}
_EXCEPTIONS = re.compile(rf"\b(?:{NOT_RAW})\b")


def _said(texts: tuple[str, ...], pattern: str) -> str:
    """The first words of a pattern in some texts; empty if none."""
    for text in texts:
        if match := _PATTERNS[pattern].search(_EXCEPTIONS.sub(" ", folded(text))):
            return match[0]
    return ""
