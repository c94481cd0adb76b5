"""What the steps of a dish do to its raw meat, poultry, fish and eggs, as far as their words and places tell. Pure.

A step is about the raw food if it names it (`roast the thighs`, `bone the bird`), or names none of the dish's other
foods (`roast it`, `cook everything`). Common practice, no source.
"""

import functools
import re
from collections.abc import Iterator
from dataclasses import dataclass
from graphlib import TopologicalSorter

from board.facts import deeds
from board.facts.eaten_raw import only_browns_ice
from board.facts.food import raw_class
from board.facts.phrases import NEUTRAL, stems
from board.plan.load import PlanFile
from board.plan.model.courses import Dish
from board.plan.phrases.quantities import Ingredient
from board.plan.places import Loc
from board.plan.resolve.assume import Task
from board.plan.resolve.going_in import Placed, foods_of
from board.plan.snag import About

MEATS = ("poultry", "ground meat", "whole cut")


@dataclass(frozen=True, slots=True)
class RawLine:
    """One raw food of a dish: where its line stands, its class for cooking."""

    loc: Loc
    line: Ingredient
    raw: str


@dataclass(frozen=True)
class DishWork:
    """A dish with its steps in the order of work. `after`: for each step, those that follow it, near or far, in this
    dish or another that takes it up."""

    loc: Loc
    course: str
    dish: Dish
    tasks: tuple[Task, ...]
    after: dict[str, frozenset[str]]
    every: dict[str, Task]

    def about(self, *foods: str) -> About:
        """What a finding about these foods of it is about."""
        return About(course=self.course, dish=self.dish.dish, foods=foods)

    @functools.cached_property
    def raw(self) -> tuple[RawLine, ...]:
        found = ((loc, line, raw_class_of(line.food)) for loc, line in self.foods)
        return tuple(RawLine(loc, line, raw) for loc, line, raw in found if raw is not None)

    @functools.cached_property
    def foods(self) -> tuple[Placed, ...]:
        """All that is in it, each with where it stands in the plan."""
        return tuple(((*self.loc, *loc), line) for loc, line in foods_of(self.dish))

    def following(self, task: Task) -> list[Task]:
        """The steps that take it up, near or far, in the order of the plan."""
        return [each for id_, each in self.every.items() if id_ in self.after[task.node.id]]

    def before(self, task: Task) -> list[Task]:
        """The dish's own steps before it."""
        return [each for each in self.tasks if task.node.id in self.after[each.node.id]]

    def only_browns_ice(self, task: Task) -> bool:
        """Whether a step browns this dish round an ice that stays frozen."""
        minutes = min(way.takes.low for way in task.ways)
        return only_browns_ice(self.dish.dish, (line.food for _, line in self.foods), task.node.name, minutes)

    def names(self, task: Task, *lines: RawLine) -> bool:
        """Whether a step names one of these raw foods; all of the dish's, if none is given."""
        words = stems(task.node.name)
        return any(_names_raw(words, line) for line in lines or self.raw)

    def is_about(self, task: Task, *lines: RawLine) -> bool:
        """Whether a step names one of these raw foods, or no other food of the dish."""
        return self.names(task, *lines) or not self._names_other(task, *lines)

    def _names_other(self, task: Task, *lines: RawLine) -> bool:
        """Whether what it does, it does to another food: `fry in butter` fries no butter."""
        words = stems(_BESIDE.split(task.node.name.casefold(), maxsplit=1)[0])
        mine = {line.loc for line in lines or self.raw}
        others = [line.food for loc, line in self.foods if loc not in mine]
        raw = {key for line in lines or self.raw for key in _keys(line.line.food)}
        keys = {key for other in others for key in _keys(other)} | _PLAIN_FOODS
        return any(word in keys - raw for word in words)

    def is_raw_at(self, task: Task, *lines: RawLine) -> bool:
        """Whether none of the steps before it cooks these foods; part-cooking does not."""
        return not any(self.cooks(each, *lines) for each in self.before(task))

    def heats(self, task: Task, *lines: RawLine) -> bool:
        """Whether a step heats these raw foods."""
        return heats(task) and self.is_about(task, *lines)

    def cooks(self, task: Task, *lines: RawLine) -> bool:
        """Whether a step may cook them through: it heats them, and neither says that it stops short nor only browns."""
        name = task.node.name
        return self.heats(task, *lines) and not deeds.part_cooks(name) and not deeds.only_colours(name)


def dishes(file: PlanFile) -> Iterator[DishWork]:
    """Every dish with its work, in the order of the plan."""
    tasks = {id_: task for id_, task in file.filled.tasks.items() if task.node.kind == "step"}
    after = _after(file, tasks)
    for c, course in enumerate(file.plan.courses):
        for d, dish in enumerate(course.dishes):
            loc: Loc = ("courses", c, "dishes", d)
            own = [task for task in tasks.values() if task.node.loc[:4] == loc]
            own.sort(key=lambda task: sum(task.node.id in after[other.node.id] for other in own))
            yield DishWork(loc, course.course, dish, tuple(own), after, tasks)


def _after(file: PlanFile, tasks: dict[str, Task]) -> dict[str, frozenset[str]]:
    straight: dict[str, set[str]] = {id_: set() for id_ in tasks}
    for link in file.filled.taken_up:
        if link.first in tasks and link.second in tasks:
            straight[link.first].add(link.second)
    found: dict[str, frozenset[str]] = {}
    for id_ in TopologicalSorter(straight).static_order():  # what follows comes before what it follows
        found[id_] = frozenset(straight[id_]).union(*(found[each] for each in straight[id_]))
    return found


def heats(task: Task) -> bool:
    """Whether a step cooks, by its place, its tools or its words; to keep warm or to reheat is not to cook."""
    work, name = task.work, task.node.name
    if work is None or task.care.reheats or deeds.only_keeps_warm(name):
        return False
    if work.cooks is not None:
        return True
    lit = [way.where for way in task.ways if not way.where.off]
    if any(where.place in ("fridge", "freezer") for where in lit):
        return False
    hot = any(where.on_heat for where in lit) or deeds.names_hot_tool(tools_text(task))
    return hot or deeds.says_heat(name)


def touched(work: DishWork, task: Task) -> RawLine | None:
    """The raw food that a step handles before it is cooked; None if it handles none. Eggs only where it names them."""
    if heats(task) or task.care.reheats:
        return None
    for line in work.raw:
        generic = line.raw != "eggs" and (deeds.cuts(task.node.name) or deeds.handles(task.node.name))
        if work.names(task, line) or (generic and work.is_about(task, line)):
            return line if work.is_raw_at(task, line) else None
    return None


def is_ready(work: DishWork, task: Task) -> bool:
    """Whether a step handles food that nothing heats any more."""
    hot = any(heats(each) or each.care.reheats for each in (task, *work.following(task)))
    return bool(work.foods) and not hot and touched(work, task) is None


def tools_text(task: Task) -> str:
    return " ".join(tool for way in task.ways for tool in way.where.tools)


def oven_celsius(task: Task) -> float | None:
    """The oven's setting of its coolest way; None if it is in no oven, or at no setting."""
    return min((way.where.heat.want for way in task.ways if way.where.place == "oven" and way.where.heat), default=None)


def kept_minutes(task: Task, *places: str) -> int:
    """How long the plan itself says its result keeps in one of these places; 0 where it says nothing."""
    work = task.work
    if work is None:
        return 0
    keeps = [way.keeps for way in (work, *work.or_) if way.keeps is not None]
    return max((keep.minutes for keep in keeps if keep.where.place in places), default=0)


def days_before(task: Task) -> int | None:
    """How many days before the event the plan puts it; None where it does not say."""
    return task.work.day.days_before if task.work is not None and task.work.day is not None else None


# Words of a food's name that say it was cooked before.
_OUT_OF_A_TIN = re.compile(r"\bin (?:\w+ )?(?:oil|brine|spring water|tomato sauce)\b")
_COOKED_BEFORE = frozenset(
    stems(
        "leftover rotisserie confit precooked cooked poached tinned canned jarred boiled steamed baked grilled smoked "
        "roasted pasteurised pasteurized"
    )
)


@functools.lru_cache(maxsize=4096)
def raw_class_of(food: str) -> str | None:
    """The cooking class of a raw food, also where some of its words are unknown; None if it is none."""
    found = raw_class(food)
    cooked = _OUT_OF_A_TIN.search(food.casefold()) or (found != "eggs" and _COOKED_BEFORE & set(stems(food)))
    return None if cooked else found


_CUTS = frozenset(
    stems(
        "fillet loin shoulder leg breast thigh wing drumstick belly rump neck shin shank cheek rib rack rasher chop "
        "cutlet steak joint escalope medallion saddle haunch crown carcass bone"
    )
)
_SMALL = frozenset(
    stems("the a an of and or with in on for to into from by per at no not without some any all it them")
)
_OF_CLASS = {
    "poultry": frozenset(stems("bird poultry meat joint chicken turkey duck goose hen wing thigh leg breast")),
    "whole cut": frozenset(stems("meat joint roast steak chop rib skewer kebab")),
    "ground meat": frozenset(stems("meat mince burger patty meatball ball kofta loaf ragu sausage filling")),
    "fish": frozenset(stems("fish fillet seafood shellfish side prawn")),
    "eggs": frozenset(stems("egg yolk white omelette")),
}
_BEASTS = frozenset(stems("chicken turkey duck goose beef pork lamb veal venison fish salmon cod egg"))
_BESIDE = re.compile(r"\b(?:in|with|on|onto|for|under|over|until|to|into|from|beside|alongside)\b")
# Foods so plain that a step which names one is about it, though the dish does not list it.
_PLAIN_FOODS = frozenset(
    stems(
        "butter onion garlic potato rice pasta bread milk cream sugar vegetable salad leek carrot bean lentil mushroom "
        "spinach cabbage pepper tomato lemon nut almond hazelnut pastry dressing vinaigrette crouton crumb cucumber "
        "apple pear orange cheese herb parsley lettuce"
    )
)


@functools.cache
def _keys(food: str) -> frozenset[str]:
    """The stems by which a step may name a food."""
    head = food.partition(",")[0].partition("(")[0]
    return frozenset(w for w in stems(head) if w not in _SMALL and (w not in NEUTRAL or w in _CUTS)) - {"raw"}


def _names_raw(words: tuple[str, ...], line: RawLine) -> bool:
    keys = _keys(line.line.food)
    generic = _OF_CLASS.get(line.raw, frozenset())
    generic -= _BEASTS - keys  # `chicken` names no duck
    return any(word in keys or word in generic for word in words)
