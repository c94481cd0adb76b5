"""The usual cautions, each at most once: alcohol, flame, charcoal, blades, hot fat, heat left alone, raw egg, raw
sprouts, flowers and leaves near food. Detected by the plan's own words; nothing here is a ruling. Pure.
"""

import re
from collections.abc import Iterator

from board.facts.dangers import ALCOHOL, EVERY, FLOWERS, RAW_EGG, RAW_EGG_DISHES, RAW_SPROUTS, Danger
from board.facts.food import said_cooked
from board.plan.load import PlanFile
from board.plan.model.courses import Dish
from board.plan.resolve.assume import Task
from board.sheet.told import Caution

HEAT = ("oven", "stovetop")
LONG_ALONE_MINUTES = 10  # on heat without hands; common practice, no source


def cautions(file: PlanFile) -> tuple[Caution, ...]:
    """Each danger the plan holds, at most once, with everything it is about in the order of the plan."""
    found: dict[str, list[str]] = {}
    for topic, about in _all(file):
        named = found.setdefault(topic, [])
        if about not in named:
            named.append(about)
    order = [*(danger.topic for danger in EVERY), "heat-alone"]
    return tuple(Caution(topic, tuple(found[topic])) for topic in order if topic in found)


def _all(file: PlanFile) -> Iterator[tuple[str, str]]:
    for course in file.plan.courses:
        for dish in course.dishes:
            yield from _of_dish(dish)
    for task in file.filled.tasks.values():
        if task.work is not None and task.node.loc[0] != "table":  # to wash wine glasses is not to drink
            yield from _of_work(task)


def _of_dish(dish: Dish) -> Iterator[tuple[str, str]]:
    if any(tells(ALCOHOL, line.food) for line in dish.ingredients):
        yield ALCOHOL.topic, dish.dish
    if is_raw_egg(dish):
        yield RAW_EGG.topic, dish.dish
    if not is_heated(dish) and any(
        tells(RAW_SPROUTS, line.food) and not said_cooked(line.food) for line in dish.ingredients
    ):
        yield RAW_SPROUTS.topic, dish.dish


def is_raw_egg(dish: Dish) -> bool:
    """Whether a dish has eggs that no step heats, or that are known to stay raw or nearly so."""
    if not any(tells(RAW_EGG, line.food) for line in dish.ingredients):
        return False
    texts = " ".join((dish.dish, *(step.step for step in dish.steps))).casefold()
    return not is_heated(dish) or any(word in texts for word in RAW_EGG_DISHES)


def is_heated(dish: Dish) -> bool:
    """Whether any step of it is done in the oven or on a ring."""
    return any(way.where is not None and way.where.place in HEAT for step in dish.steps for way in (step, *step.or_))


def _of_work(task: Task) -> Iterator[tuple[str, str]]:
    work, name = task.work, task.node.name
    assert work is not None
    tools = [tool for way in task.ways for tool in way.where.tools]
    texts = [name, work.look_for or "", work.call or "", work.call_at_end or "", *tools]
    for danger in EVERY:
        if danger in (RAW_EGG, RAW_SPROUTS) or (danger is FLOWERS and task.node.kind != "job"):
            continue  # leaves and flowers in a dish are its food
        if any(tells(danger, text) for text in texts):
            yield danger.topic, name
    if any(_is_left_alone(task, number) for number in range(len(task.ways))):
        yield "heat-alone", name


def _is_left_alone(task: Task, number: int) -> bool:
    """On heat for a while with no hands on it."""
    way = task.ways[number]
    hands = way.attended.start + way.attended.end
    return way.where.place in HEAT and not way.attended.whole and way.takes.likely - hands >= LONG_ALONE_MINUTES


def tells(danger: Danger, text: str) -> bool:
    """Whether a text mentions a danger: one of its words starts there, outside its exceptions."""
    folded = " ".join(re.findall(r"[^\W_]+(?:[-'’][^\W_]+)*", text.casefold()))
    if danger is ALCOHOL:
        folded = re.sub(r"\b(?:alcohol-free|non-alcoholic|no-alcohol) \S+", " ", folded)
    for other in sorted(danger.never, key=len, reverse=True):
        folded = re.sub(rf"\b{re.escape(other)}\b", " ", folded)
    return any(re.search(rf"\b{re.escape(word)}", folded) for word in danger.words)
