"""The usual cautions, each at most once: alcohol, flame, charcoal, blades, hot fat, heat left alone, raw egg, raw
sprouts, flowers and leaves near food. Detected by the plan's own words; nothing here is a ruling. Pure.
"""

import functools
import re
from collections.abc import Iterator

from board.checks.raw_food import dishes, is_ready, touched
from board.facts import deeds
from board.facts.dangers import ALCOHOL, EVERY, FLAME, FLOWERS, RAW_EGG, RAW_EGG_DISHES, RAW_SPROUTS, Danger
from board.facts.eaten_raw import only_browns_ice
from board.facts.food import facts, said_cooked
from board.facts.job_words import mentions_job
from board.facts.origins import Origin
from board.plan.load import PlanFile
from board.plan.model.courses import Dish
from board.plan.model.drinking import HowMuch
from board.plan.model.work import Step
from board.plan.resolve.assume import Task
from board.plan.resolve.going_in import foods_of
from board.sheet.told import Caution

POURED = ("wine", "sparkling", "beer")  # of `drinks:`
OPEN_FLAMES = ("light the candles", "light the fire")  # usual jobs, however they are put
LONG_ALONE_MINUTES = 10  # on heat without hands; common practice, no source


def cautions(file: PlanFile) -> tuple[Caution, ...]:
    """Each danger the plan holds, at most once, with everything it is about in the order of the plan."""
    found: dict[str, list[str]] = {}
    for topic, about in _all(file):
        named = found.setdefault(topic, [])
        if about not in named:
            named.append(about)
    poured = found.get(ALCOHOL.topic, [])
    for drink in set(POURED) & set(poured):
        if any(drink in other for other in poured if other != drink):  # `open the red wine` has told of it
            poured.remove(drink)
    order = [*(danger.topic for danger in EVERY), "raw-food", "heat-alone"]
    return tuple(Caution(topic, tuple(found[topic])) for topic in order if topic in found)


def _all(file: PlanFile) -> Iterator[tuple[str, str]]:
    for course in file.plan.courses:
        for dish in course.dishes:
            yield from _of_dish(dish)
        for pairing in course.drink:
            if has_alcohol(pairing.drink, pairing.percent):
                yield ALCOHOL.topic, pairing.drink
    for task in file.filled.tasks.values():
        own = task.node.loc[2:3] == ("drink",)  # told of by its drink
        washing = task.node.loc[0] in ("table", "kitchen")  # to wash wine glasses is not to drink
        if task.work is not None and not washing and not own:
            yield from _of_work(task)
    drinks = file.plan.drinks
    for name in POURED if drinks is not None else ():
        how_much: HowMuch | None = getattr(drinks, name)
        if how_much is not None and how_much.some:
            yield ALCOHOL.topic, name
    yield from _of_boards(file)


def has_alcohol(drink: str, percent: float | None = None) -> bool:
    """By its strength; else by its name, in the words of the table of foods or of the dangers."""
    if percent is not None:
        return percent > 0
    known = facts(drink)
    return tells(ALCOHOL, drink) or (known is not None and Origin.ALCOHOL in known.origins)


def _of_boards(file: PlanFile) -> Iterator[tuple[str, str]]:
    """Each step that cuts raw food, where another cuts what is eaten as it is, and one of the two names no tool, or one
    that the kitchen has several of. What has names of its own is weighed with the timetable (food 17)."""
    works = list(dishes(file))
    ready = [task for work in works for task in work.tasks if deeds.cuts(task.node.name) and is_ready(work, task)]
    for work in works:
        for task in work.tasks:
            cuts_raw = deeds.cuts(task.node.name) and touched(work, task) is not None
            if cuts_raw and any(not (_single_tools(file, task) and _single_tools(file, each)) for each in ready):
                yield "raw-food", task.node.name


def _single_tools(file: PlanFile, task: Task) -> bool:
    tools = {tool for way in task.ways for tool in way.where.tools}
    return any(file.plan.kitchen.tools.get(tool) == 1 for tool in tools)


def _of_dish(dish: Dish) -> Iterator[tuple[str, str]]:
    if any(tells(ALCOHOL, line.food) for _, line in foods_of(dish)):
        yield ALCOHOL.topic, dish.dish
    if is_raw_egg(dish):
        yield RAW_EGG.topic, dish.dish
    if not is_heated(dish) and any(
        tells(RAW_SPROUTS, line.food) and not said_cooked(line.food) for _, line in foods_of(dish)
    ):
        yield RAW_SPROUTS.topic, dish.dish


def is_raw_egg(dish: Dish) -> bool:
    """Whether a dish has eggs that no step heats, or that are known to stay raw or nearly so."""
    if not any(tells(RAW_EGG, line.food) and "pasteuri" not in line.food.casefold() for _, line in foods_of(dish)):
        return False
    texts = " ".join((dish.dish, *(step.step for step in dish.steps))).casefold()
    foods = [line.food for _, line in foods_of(dish)]
    cooks = [step for step in dish.steps if step.on_heat and not _browns_ice(dish, foods, step)]
    return not cooks or any(word in texts for word in RAW_EGG_DISHES)


def _browns_ice(dish: Dish, foods: list[str], step: Step) -> bool:
    return step.takes is not None and only_browns_ice(dish.dish, foods, step.step, step.takes.low)


def is_heated(dish: Dish) -> bool:
    """Whether any step of it is done in the oven or on a ring."""
    return any(step.on_heat for step in dish.steps)


def _of_work(task: Task) -> Iterator[tuple[str, str]]:
    work, name = task.work, task.node.name
    assert work is not None
    tools = [tool for way in task.ways for tool in way.where.tools]
    texts = [name, work.look_for or "", work.how or "", work.call or "", work.call_at_end or "", *tools]
    for danger in EVERY:
        if danger in (RAW_EGG, RAW_SPROUTS) or (danger is FLOWERS and task.node.kind != "job"):
            continue  # leaves and flowers in a dish are its food
        lit = danger is FLAME and task.node.kind == "job" and mentions_job(name, OPEN_FLAMES)
        if lit or any(tells(danger, text) for text in texts):
            yield danger.topic, name
    if any(_is_left_alone(task, number) for number in range(len(task.ways))):
        yield "heat-alone", name


def _is_left_alone(task: Task, number: int) -> bool:
    """On heat for a while with no hands on it."""
    way = task.ways[number]
    hands = way.attended.start + way.attended.end
    return way.where.on_heat and not way.attended.whole and way.takes.likely - hands >= LONG_ALONE_MINUTES


def tells(danger: Danger, text: str) -> bool:
    """Whether a text mentions a danger: one of its words starts there, outside its exceptions."""
    folded = " ".join(re.findall(r"[^\W_]+(?:[-'’][^\W_]+)*", text.casefold()))
    if danger is ALCOHOL:
        folded = re.sub(r"\b(?:alcohol-free|non-alcoholic|no-alcohol) \S+", " ", folded)
    never, words = _patterns(danger)
    for other in never:
        folded = other.sub(" ", folded)
    return words.search(folded) is not None


@functools.cache
def _patterns(danger: Danger) -> tuple[tuple[re.Pattern[str], ...], re.Pattern[str]]:
    """Its exceptions, the longest first, and its words."""
    never = (re.compile(rf"\b{re.escape(other)}\b") for other in sorted(danger.never, key=len, reverse=True))
    return tuple(never), re.compile(rf"\b(?:{'|'.join(map(re.escape, danger.words))})")
