"""What the steps of a dish do to its raw meat, poultry, fish and eggs, as far as their words and places tell. Pure.

A step is about the raw food if it names it (`roast the thighs`, `bone the bird`), or names none of the dish's other
foods (`roast it`, `cook everything`). Whether its heat reaches one food among others is graded: `DishWork.took`.
Common practice, no source.
"""

import functools
import re
from collections.abc import Iterator
from dataclasses import dataclass
from enum import IntEnum
from graphlib import TopologicalSorter

from board.facts import deeds
from board.facts.eaten_raw import only_browns_ice
from board.facts.food import raw_class
from board.facts.mentions import FORMS
from board.facts.phrases import NEUTRAL, folded, stems
from board.plan.load import PlanFile
from board.plan.model.courses import Dish
from board.plan.phrases.food_safety import rule_class
from board.plan.phrases.quantities import Ingredient
from board.plan.places import Loc
from board.plan.resolve.assume import Task
from board.plan.resolve.going_in import Placed, foods_of, matching
from board.plan.snag import About

MEATS = ("poultry", "ground meat", "whole cut")


class Took(IntEnum):
    """Whether a food is in what a step works on; the largest is the surest.

    NO: the step names another. PERHAPS: its words do not tell. CARRIED: it came there along the steps, or is what
    `it`, the dish's own name or `the stew` means. NAMED: the step's words name it, or its `uses` do.
    """

    NO = 0
    PERHAPS = 1
    CARRIED = 2
    NAMED = 3


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
        words = _nouns(task.node.name)
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

    def took(self, task: Task, line: RawLine) -> Took:
        """Whether this food is in what a step works on. Heat clears a food only where it is CARRIED at least."""
        key = (task.node.id, line.loc, line.raw)
        if key not in self._took:
            told = self._told(task, line)
            self._took[key] = told if told is not None else self._carried(task, line)
        return self._took[key]

    @functools.cached_property
    def _took(self) -> dict[tuple[str, Loc, str], Took]:
        return {}

    @functools.cached_property
    def _said(self) -> dict[tuple[str, Loc, str], bool]:
        return {}

    def all_steps(self) -> list[Task]:
        """The dish's own steps, and those of other dishes that take them up."""
        ids = {task.node.id for task in self.tasks}
        later = [id_ for id_ in self.every if id_ not in ids and any(id_ in self.after[own] for own in ids)]
        return [*self.tasks, *(self.every[id_] for id_ in later)]

    def _told(self, task: Task, line: RawLine) -> Took | None:
        """By the step's own words, its `uses` and its `cooks`; None where they say nothing of this food."""
        work = task.work
        if work is not None and any(matching(each, [line.line]) for each in work.uses):
            return Took.NAMED
        text = _READY.sub(r"\1", folded(task.node.name))
        mine = self._words_for(text, line)
        if not mine:
            cooks = work.cooks if work is not None else None
            rivals = (other for other in self.raw if other.loc != line.loc and other.raw == line.raw)
            if cooks is None or rule_class(cooks) != line.raw or any(self._words_for(text, each) for each in rivals):
                return None
            return Took.CARRIED
        head = _ASIDE.split(text, maxsplit=1)[0]
        if not mine & set(stems(head)) and self._object(head) - _PRONOUNS:
            return Took.PERHAPS  # `toast the bread for the beef`
        for other in self.foods:
            theirs = set(_nouns(text)) & _keys(other[1].food)
            if other[0] != line.loc and theirs > mine:
                return None  # `simmer the chicken stock`, where there are thighs
            if other[0] != line.loc and theirs == mine and self._has_a_name_of_its_own(line, mine):
                return Took.PERHAPS  # `braise the beef`, where there are a shin and a fillet that others name
        return Took.NAMED

    def _has_a_name_of_its_own(self, line: RawLine, shared: set[str]) -> bool:
        texts = (_READY.sub(r"\1", folded(task.node.name)) for task in self.tasks)
        return any(set(_nouns(text)) & _keys(line.line.food) - shared for text in texts)

    def _words_for(self, text: str, line: RawLine) -> set[str]:
        """The words of a text that mean this food: its own, or those of its class that no other food goes by."""
        words, keys = set(_nouns(text)), _keys(line.line.food)
        others = {key for loc, other in self.foods if loc != line.loc for key in _keys(other.food)}
        generic = _OF_CLASS.get(line.raw, frozenset()) - (_BEASTS - keys) - others
        return words & keys or words & generic

    def _carried(self, task: Task, line: RawLine) -> Took:
        """Of a step that does not name it: `simmer 2 h`, `roast it`, `bake the pie`, `boil the potatoes`."""
        text = _ADDS_FIRST.sub("", _READY.sub(r"\1", folded(task.node.name)))
        head = _BESIDE.split(text, maxsplit=1)[0]
        mixed = self._mixtures(_ASIDE.split(text, maxsplit=1)[0], line)
        named = self._object(head)
        if mixed:
            own = self._own_words() if mixed & self._own_words() else frozenset()
            liquid = mixed <= _LIQUIDS and not own
            other = bool(self._others(head, line) - mixed - own)
            return self._came(task, line, sure=not liquid and not other)
        if others := self._others(head, line):
            return Took.CARRIED if self._went_with(others, task, line) else Took.NO
        if named - _PRONOUNS - self._own_words() and not _ADDS.search(text):
            return Took.PERHAPS  # of something that nobody knows: `deep-fry the chips`
        return self._meant(task, line)

    def _went_with(self, others: set[str], task: Task, line: RawLine) -> bool:
        """Whether every earlier step that takes it up puts it together with those: egg and pastry, where the pastry is
        baked."""
        told = [each for each in self.tasks if each.node.id != task.node.id and self._is_told(each, line)]
        return bool(told) and all(
            _ADDS.search(folded(each.node.name))
            and others <= self._taken_by(each)
            and task.node.id in self.after[each.node.id]
            for each in told
        )

    @staticmethod
    def _taken_by(task: Task) -> set[str]:
        used = task.work.uses if task.work is not None else []
        return {*stems(task.node.name), *(key for each in used for key in _keys(each.food))}

    def _came(self, task: Task, line: RawLine, *, sure: bool) -> Took:
        """Whether it went into a mixture, or what `it` means, by the steps. `sure`: the words leave no other way."""
        earlier = [each for each in self.before(task) if self._is_told(each, line)]
        if earlier:
            joined = any(heats(each) or _ADDS.search(folded(each.node.name)) for each in earlier)
            return Took.CARRIED if sure or joined else Took.PERHAPS
        others = [each for each in self.tasks if each.node.id != task.node.id and self._is_told(each, line)]
        if not others:
            return Took.CARRIED if sure or len(self.foods) == 1 else Took.PERHAPS
        once_done = all(_ONCE_COOKED.search(folded(each.node.name)) for each in others)
        return Took.CARRIED if sure and (once_done or self._is_made_for(task, line)) else Took.PERHAPS

    def _meant(self, task: Task, line: RawLine) -> Took:
        """Of a step that says `it`, or nothing: what the step before it was about."""
        for each in reversed(self.before(task)):
            if self._is_told(each, line):
                return Took.CARRIED
            head = _BESIDE.split(folded(each.node.name), maxsplit=1)[0]
            if self._others(head, line) - _SEASONING:
                return self._came(task, line, sure=self._is_made_for(task, line))
        return self._came(task, line, sure=True)

    def _is_told(self, task: Task, line: RawLine) -> bool:
        key = (task.node.id, line.loc, line.raw)
        if key not in self._said:
            self._said[key] = self._told(task, line) is not None
        return self._said[key]

    def _is_made_for(self, task: Task, line: RawLine) -> bool:
        """Whether the dish goes by this food and what the step does: `roast it`, of the beef in `Roast beef`."""
        own = set(stems(self._head)) & set(stems(task.node.name))
        return bool(self._words_for(self._head, line)) and bool(own)

    @functools.cached_property
    def _head(self) -> str:
        return _WITH.split(folded(self.dish.dish), maxsplit=1)[0]

    def _own_words(self) -> frozenset[str]:
        return frozenset(stems(self._head))

    def _mixtures(self, text: str, line: RawLine) -> set[str]:
        """Words of a text for what is made of several foods. Pasta and the like only where the dish makes it."""
        keys = {key for _, line in self.foods for key in _keys(line.food)}
        made = (len(self.foods) == 1 and line.raw == "eggs") or bool(keys & {"flour", "semolina"})
        bought = keys - self._own_words() if len(self.foods) > 1 else frozenset()
        named = self._object(text)
        said = set(stems(text)) - _ALSO_VERBS | named
        return (named & self._own_words() - keys - _PLAIN_FOODS) | said & (_MIXTURES | FORMS) - (
            frozenset() if made else _OF_FLOUR
        ) - bought

    def _object(self, head: str) -> set[str]:
        """What a step says it works on: the words after `the` and the like, but for what is said of any food."""
        found = _OBJECT.search(head)
        return set(stems(found[1])) - _SAID_OF_ANY if found else set()

    def _others(self, head: str, line: RawLine) -> set[str]:
        """The words of a step that name another food: of the dish, or a plain one."""
        others = {key for loc, other in self.foods if loc != line.loc for key in _keys(other.food)}
        plain = _PLAIN_FOODS - _OF_CLASS.get(line.raw, frozenset())
        return set(_nouns(head)) & ((others | plain) - _keys(line.line.food))

    def is_raw_at(self, task: Task, *lines: RawLine) -> bool:
        """Whether none of the steps before it cooks these foods; part-cooking does not."""
        return not any(self.cooks(each, *lines) for each in self.before(task))

    def heats(self, task: Task, *lines: RawLine) -> bool:
        """Whether a step heats these raw foods."""
        return heats(task) and any(self.took(task, line) for line in lines or self.raw)

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
_DOES = re.compile(
    r"(^\W*|[,;:]\s*|\b(?:and|then|to|or|slow|pot|spit)[\s-]+)(?:roast\b|(?:chop|mince|fillet|joint|bone|skewer|shell|toast|"
    r"pepper|cream|butter|crumb|steak)\b(?=\s+(?:the|a|an|all|each|both|every|your|it|them)\b))"
)
# Of a step: what it does to a food that is named later, it does for that food, not to it.
_ASIDE = re.compile(r"\b(?:for|on|onto|under|over|until|till|to|beside|alongside|before|while|when)\b")
_WITH = re.compile(r"\b(?:with|and|on|in|over|beside|alongside)\b|[,&+]")
_OBJECT = re.compile(
    r"(?:\b(?:the|a|an|some|all|both|our|your|its|their|these|those|this|that|each|every|remaining)|\b\d+)\s+(.+)"
)
_PRONOUNS = frozenset(stems("it them everything all both lot everybody"))
# `add the onions and simmer`: what is simmered is what they are added to.
_ADDS_FIRST = re.compile(
    r"^(?:add|stir in|pour (?:in|over|on)|tip in|put in|return|cover with|top with|season|moisten|deglaze)\b.*?"
    r"(?:,|\band\b|\bthen\b)\s*(?=(?:then )?(?:\w+ly )?(?:simmer|braise|stew|cook|roast|bake|boil|poach|casserole))"
)
_ADDS = re.compile(
    r"\b(?:add|stir|fold|mix|whisk|beat|blend|combine|pour|tip|put|return|fill|layer|line|toss|knead|bind|brush|coat|"
    r"bread|dip|soak|roll|wrap|stuff|assemble|make|into)\b"
)
# Said of food that has been cooked.
_ONCE_COOKED = re.compile(
    r"\b(?:rest|carve|pull|baste|turn|serve|plate|dish up|unmould|cool|chill|drain|keep|strip|glaze|flip|check|probe|"
    r"reheat|let)\b"
)
# Made of, or with, a food of that name, and not that food.
_READY = re.compile(
    r"\b(?:chicken|beef|veal|lamb|pork|duck|goose|turkey|fish|egg|salmon|prawn|meat|shellfish|bacon|ham)\s+"
    r"(stock|broth|bouillon|sauce|gravy|fat|dripping|noodles?|jus|glaze|consomme|fumet)\b"
)
_LIQUIDS = frozenset(stems("soup broth stock sauce gravy dressing syrup dip bisque consomme jus liquor"))
# What was put together before, whatever it is made of.
_MIXTURES = _LIQUIDS | frozenset(
    stems(
        "mixture mix batter filling parcel package tray skewer kebab batch ball stew casserole curry ragu ragout "
        "bolognese chilli chili tagine goulash hotpot pot tin pan dish stack loaf terrine meatloaf wellington "
        "schnitzel goujon nugget kofta patty fry crust pasty pithivier clafoutis strata frittata tortilla moussaka "
        "paella biryani pilaf cassoulet fricassee blanquette daube bourguignon pudding custard tempura "
        "profiterole choux"
    )
)
# What is done as often as it is made: `bake the potatoes`, `the bake`.
_ALSO_VERBS = frozenset(
    stems("bake fry stew toast roll pot dip curry casserole grill cake cream stack ball sauce dress")
)
_OF_FLOUR = frozenset(stems("pasta noodle bread bun roll toast rice tagliatelle cracker flatbread focaccia base"))
_SEASONING = frozenset(
    stems(
        "butter oil salt pepper herb thyme rosemary sage parsley garlic lemon spice sugar mustard honey onion marinade "
        "dressing bay wine fat dripping flour water stock"
    )
)
_SAID_OF_ANY = (
    frozenset(
        stems(
            "the a an of and or it side hour minute min h time day night while heat lid last first rest other next "
            "second middle outside inside top bottom both low high oven hob grill pan tray tin pot hot rare pink "
            "brown way again on up down out off piece slice portion half whole"
        )
    )
    | (NEUTRAL - _CUTS)
) - {"steak"}
# Foods so plain that a step which names one is about it, though the dish does not list it.
_PLAIN_FOODS = frozenset(
    stems(
        "butter onion garlic potato rice pasta bread milk cream sugar vegetable salad leek carrot bean lentil mushroom "
        "spinach cabbage pepper tomato lemon nut almond hazelnut pastry dressing vinaigrette crouton crumb cucumber "
        "apple pear orange cheese herb parsley lettuce chip frites crouton toast corn wedge noodle polenta pea chestnut"
    )
)


@functools.cache
def _keys(food: str) -> frozenset[str]:
    """The stems by which a step may name a food."""
    head = food.partition(",")[0].partition("(")[0]
    return frozenset(w for w in stems(head) if w not in _SMALL and (w not in NEUTRAL or w in _CUTS)) - {"raw"}


def _nouns(text: str) -> tuple[str, ...]:
    """The stems of a step's words without what it does that is also a cut or a dish: `roast the potatoes`."""
    return stems(_DOES.sub(r"\1 ", text.casefold()))


def _names_raw(words: tuple[str, ...], line: RawLine) -> bool:
    keys = _keys(line.line.food)
    generic = _OF_CLASS.get(line.raw, frozenset())
    generic -= _BEASTS - keys  # `chicken` names no duck
    return any(word in keys or word in generic for word in words)
