"""Whether raw food is cooked, and how hot: what the plan leaves open is asked. From the plan alone."""

from collections.abc import Iterator
from dataclasses import dataclass

from board.checks.plan.cooking import is_too_cool, mended, says_cooked, says_underdone
from board.checks.plan.figures import Figures
from board.checks.raw_food import DishWork, RawLine, Took, dishes, heats, kept_minutes, oven_celsius
from board.facts import deeds
from board.facts.eaten_raw import (
    EATEN_ALIVE,
    NO_PARASITES,
    SAID_FROZEN,
    THIN_CURED,
    is_baked_through,
    is_done_by_eye,
    is_raw_dish,
    is_stewed_through,
)
from board.facts.faults import FREEZE_DAYS
from board.facts.limits import Cook
from board.plan.load import PlanFile
from board.plan.resolve.assume import Task
from board.plan.snag import Snag, Weight

AT_RISK = "whoever is pregnant, very young, old or ill"


@dataclass(frozen=True, slots=True)
class NotCooked:
    """A raw food that nothing in the plan says is cooked through. `by`: the step that heats it, without saying how hot;
    None if no step does. `on_purpose`: the dish is one that is eaten raw. `underdone`: by the words of the step."""

    food: RawLine
    by: Task | None
    on_purpose: bool
    underdone: bool = False


def raw_food_is_cooked(file: PlanFile) -> list[Snag]:
    """food 2: raw meat, poultry, fish or egg that a step heats without saying how hot (ask), that no step heats (ask),
    or that is eaten raw on purpose (mind). Source: the rule set's `cook`; which foods are raw is the food table's,
    common practice, no source."""
    say = Figures(file)
    found: dict[tuple[object, ...], Snag] = {}
    for work in dishes(file):
        for each in not_cooked(say, work):
            if may_hold_parasites(work, each):
                continue  # food 23 asks about it
            cook = say.rules.cook_for(each.food.raw)
            assert cook is not None  # `not_cooked` leaves out what the rule set has no figure for
            key = (work.loc, each.food.raw, each.by.node.id if each.by is not None else each.food.line.food)
            found.setdefault(key, _snag(file, say, work, each, cook))
    return list(found.values())


def _snag(file: PlanFile, say: Figures, work: DishWork, each: NotCooked, cook: Cook) -> Snag:
    food, dish = each.food.line.food, work.dish.dish
    source = f"{say.rules.title}: {say.limit(cook.degrees)} ({each.food.raw}); {cook.source}"
    write = f"`until: {mended(say, cook)}`"
    if each.by is not None:
        place = file.places.of((*each.by.node.loc, "step"))
        if each.underdone:
            message = f"{dish}: by the words of {each.by.node.name}, its {food} is not cooked through"
            mend = f"Cook it until nothing in it is pink or red, with {write}, and write so."
            return Snag("food 2", Weight.ASK, message, mend, place, safety=True, source=source)
        if each.by.care.core is not None and work.took(each.by, each.food) < Took.CARRIED:
            message = f"nothing says that {each.by.node.name} has the {food.partition(',')[0]} in it ({dish})"
            mend = "Name it in the step that cooks it, or write it there under `uses`."
            return Snag("food 2", Weight.ASK, message, mend, place, safety=True, source=source)
        message = f"{each.by.node.name} does not say how hot the middle gets ({dish}: {food})"
        mend = f"Write {write} at that step, and cook it to that by the probe."
        if each.food.raw == "fish":
            mend = (
                f"Write {write} there, or the sign it is done by: `look for: opaque, flakes`, `look for: shells open`."
            )
        return Snag("food 2", Weight.ASK, message, mend, place, safety=True, source=source)
    place = file.places.of(each.food.loc)
    if each.on_purpose:
        message = f"{dish} is served with its {food.partition(',')[0]} raw, or nearly so, at your guests' risk"
        mend = f"Ask each of them, and have another dish for {AT_RISK}."
        if each.food.raw == "eggs":
            mend = f"Take pasteurised eggs, and say so: `pasteurised {food}`. Else: {mend[0].lower()}{mend[1:]}"
        return Snag("food 2", Weight.MIND, message, mend, place, safety=True, source=source)
    message = f"{dish} has {food} in it, and no step says it is cooked"
    mend = f"Write the step that cooks it, with {write}; if it is bought cooked, say so: `cooked {food}`."
    return Snag("food 2", Weight.ASK, message, mend, place, safety=True, source=source)


def not_cooked(say: Figures, work: DishWork) -> Iterator[NotCooked]:
    """Each raw food of a dish that nothing says is cooked through; what food 1 has a figure against, it tells."""
    for line in work.raw:
        if say.rules.cook_for(line.raw) is None or is_too_cool(say.rules, work, line) is not None:
            continue
        heating = [task for task in work.all_steps() if work.heats(task, line) and not work.only_browns_ice(task)]
        contrary = next((each for each in heating if says_underdone(work, each, line)), None)
        if contrary is not None:
            yield NotCooked(line, contrary, on_purpose=False, underdone=True)
        if contrary is not None or says_cooked(say.rules, work, line) or _is_plainly_done(work, line):
            continue
        named = [task for task in heating if work.took(task, line) is Took.NAMED]
        cooking = [task for task in named if work.cooks(task, line)] or named
        if cooking:
            yield NotCooked(line, cooking[-1], on_purpose=False)
        elif _is_raw_on_purpose(work, line) or (line.raw == "eggs" and not heating and _is_round_ice(work)):
            yield NotCooked(line, None, on_purpose=True)
        elif heating:
            yield NotCooked(line, heating[-1], on_purpose=False)
        else:
            yield NotCooked(line, None, on_purpose=False)


def _is_plainly_done(work: DishWork, line: RawLine) -> bool:
    """Whether a step cooks it through in a way that nobody probes: biscuits, stew, bacon, what is done by the eye."""
    words = " ".join((work.dish.dish, *(task.node.name for task in work.tasks)))
    for task in work.all_steps():
        minutes, celsius = min(way.takes.low for way in task.ways), oven_celsius(task)
        name = task.node.name
        hard = minutes >= 8 and deeds.hard_boils(name)  # common practice, no source
        took = work.took(task, line)
        if not heats(task) or took < Took.CARRIED:
            continue
        # A step that names the eggs is about no other step's batter or noodles.
        baked = not is_raw_dish(words, "eggs") and is_baked_through(
            name if took is Took.NAMED else words, name, celsius, minutes
        )
        if line.raw == "eggs" and (hard or baked):
            return True
        if is_done_by_eye(line.raw, task.work.look_for or "" if task.work is not None else ""):
            return True
        if THIN_CURED.search(line.line.food.casefold()):
            return True
        stewing = deeds.simmers(name) or (celsius is not None and deeds.slow_and_moist(name))
        if line.raw != "eggs" and stewing and is_stewed_through(line.raw, celsius, minutes):
            return True
    return False


def _is_raw_on_purpose(work: DishWork, line: RawLine) -> bool:
    """By the name of the dish, of a step about it, or of the food."""
    steps = [task.node.name for task in work.tasks if work.is_about(task, line)]
    texts = (work.dish.dish, line.line.food, *steps)
    return (
        any(is_raw_dish(text, line.raw) for text in texts) or EATEN_ALIVE.search(line.line.food.casefold()) is not None
    )


def _is_round_ice(work: DishWork) -> bool:
    """Whether its eggs go round an ice, and a step browns them there."""
    return any(work.only_browns_ice(task) for task in work.tasks)


def may_hold_parasites(work: DishWork, each: NotCooked) -> bool:
    """Whether it is fish to be eaten raw, neither of an excepted kind nor frozen long enough by the plan's words."""
    food = each.food.line.food.casefold()
    if each.food.raw != "fish" or each.by is not None or not each.on_purpose:
        return False
    if NO_PARASITES.search(food) or SAID_FROZEN.search(food):
        return False
    return frozen_minutes(work, each.food) < FREEZE_DAYS * 24 * 60


def frozen_minutes(work: DishWork, line: RawLine) -> int:
    """How long a step of the dish leaves it in the freezer, by the plan's own words; 0 if none does."""
    found = [0]
    for task in work.tasks:
        if work.is_about(task, line):
            found += [way.takes.low for way in task.ways if way.where.place == "freezer"]
            found.append(kept_minutes(task, "freezer"))
    return max(found)
