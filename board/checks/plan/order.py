"""Steps of a dish that cannot be done in the order in which they are written. From the words alone; pure.

A step without `after:` follows the line above it, so a line in the wrong place moves work to where it makes no sense.
Told only where both steps are of one thing, nothing else in the dish does either of the two, and no key says that the
order is meant.
"""

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass

from board.facts import deeds
from board.facts.deeds import Deed
from board.facts.food import raw_class
from board.facts.phrases import folded, listed_words, stems
from board.facts.workings import DRY_FORM
from board.plan.load import PlanFile
from board.plan.model.courses import Dish
from board.plan.resolve.assume import Task
from board.plan.snag import Snag, Weight


@dataclass(frozen=True, slots=True)
class _Step:
    """`heads`: the last words of what it is about; `words`: all of these words."""

    task: Task
    name: str
    heads: frozenset[str]
    words: frozenset[str]

    def is_about_what(self, other: "_Step") -> bool:
        return bool(self.heads & other.words or other.heads & self.words)


@dataclass(frozen=True, slots=True)
class _Rule:
    """`first` has to come before `then`. `of`: what both are about, where not everything. `unless`: a deed before or
    between the two that makes the order right. `any_dough`: the thing is called otherwise before it is baked."""

    first: Deed
    then: Deed
    of: Callable[[str], bool] = lambda _: True
    unless: Deed = lambda _: False
    any_dough: bool = False


_PULSES = re.compile(r"\b(?:beans?|chickpeas?|peas|lentils?|pulses|split peas)\b")
_POTTED = re.compile(r"\b(?:tins?|tinned|cans?|canned|jars?|jarred|in (?:brine|water|oil|vinegar)|pickled|salted)\b")


def _is_heated(text: str) -> bool:
    return deeds.heats_by_word(text) and not deeds.part_cooks(text) and not deeds.only_colours(text)


_WATER_COOKS = re.compile(r"\b(?:poach|steam|boil|simmer)\b")  # and then lies in a dressing, cooked


def _is_roasted(text: str) -> bool:
    return _is_heated(text) and not _WATER_COOKS.search(text)


_RULES = (
    _Rule(deeds.boils, deeds.drains, unless=deeds.wets),
    _Rule(deeds.boils, deeds.dresses),
    _Rule(deeds.raises_dough, _is_heated, lambda text: DRY_FORM.search(text) is not None, any_dough=True),
    _Rule(deeds.thaws_by_word, _is_heated, unless=deeds.freezes),
    _Rule(deeds.brines, _is_roasted, lambda text: raw_class(text) is not None and "egg" not in stems(text)),
    _Rule(deeds.soaks, _is_heated, lambda text: _PULSES.search(text) is not None),
    _Rule(_is_heated, deeds.carves),
)


def steps_can_be_done_in_their_order(file: PlanFile) -> list[Snag]:
    """plan 20: a step comes before the one that it needs, by the order of the lines: drained or dressed before it is
    boiled, baked before its dough is made or has risen, cooked before it is thawed, marinated or soaked, carved before
    it is roasted. Where a step says what it follows (`after:`), that is taken as meant. Common practice, no source."""
    by_loc = {task.node.loc: task for task in file.filled.tasks.values()}
    found = []
    for c, course in enumerate(file.plan.courses):
        for d, dish in enumerate(course.dishes):
            steps = list(_steps([by_loc["courses", c, "dishes", d, "steps", s] for s in range(len(dish.steps))]))
            for early, late in _swapped(dish, steps):
                message = f"{early.task.node.name!r} is written before {late.task.node.name!r}, and is timed before it"
                mend = "Change the order of the two lines; if it is meant so, say `after:` at the second."
                place = file.places.of((*late.task.node.loc, "step"))
                found.append(Snag("plan 20", Weight.ASK, message, mend, place))
    return found


def _swapped(dish: Dish, steps: list[_Step]) -> Iterator[tuple[_Step, _Step]]:
    """The two steps, each of them told of once; the nearest that comes too early."""
    told = set()
    for n, late in enumerate(steps):
        for m in range(n - 1, -1, -1):
            if not _by_lines_alone(steps[m : n + 1]):
                break
            if any(_is_swapped(rule, dish, steps, m, n) for rule in _RULES):
                if m not in told:
                    yield steps[m], late
                told.add(m)
                break


def _by_lines_alone(chain: list[_Step]) -> bool:
    works = [step.task.work for step in chain]
    return all(work is not None and work.after is None for work in works[1:]) and all(
        work is not None and work.before is None and not work.or_ for work in works[:-1]
    )


def _is_swapped(rule: _Rule, dish: Dish, steps: list[_Step], m: int, n: int) -> bool:
    early, late = steps[m], steps[n]
    if not (rule.then(early.name) and rule.first(late.name)) or rule.then(late.name) or rule.first(early.name):
        return False
    if rule.any_dough:
        named = rule.of(" ".join(early.words)) or rule.of(early.name)
        return named and not any(rule.first(step.name) for step in steps[:m]) and not _heats_any(steps[n + 1 :])
    same = early.is_about_what(late) and rule.of(f"{early.name} {late.name}")
    done = any(rule.first(step.name) and step.is_about_what(late) for step in steps[:m])
    again = any(rule.then(step.name) and (not step.words or step.is_about_what(early)) for step in steps[n + 1 :])
    made_right = any(rule.unless(step.name) and step.is_about_what(late) for step in steps[:n])
    if not same or done or again or made_right:
        return False
    if rule.unless is deeds.wets:
        return not any(
            _POTTED.search(f"{each.unit} {folded(each.food)}") and early.heads & set(stems(each.food))
            for each in dish.ingredients
        )
    return not (rule.unless is deeds.freezes and any(_lies_frozen(step) for step in steps[m:n]))


def _heats_any(steps: list[_Step]) -> bool:
    return any(deeds.says_heat(step.name) or _on_heat(step) for step in steps)


def _on_heat(step: _Step) -> bool:
    return any(way.where.on_heat for way in step.task.ways)


def _lies_frozen(step: _Step) -> bool:
    keeps = step.task.work.keeps if step.task.work is not None else None
    return keeps is not None and keeps.where.place == "freezer"


# --- what a step is about ---

_PARTS = re.compile(r"\s*(?:[,;:()/&]|\b(?:and|then)\b)\s*")
_UP_TO = re.compile(
    r"\b(?:with|in|into|on|onto|over|under|for|until|till|at|to|from|before|after|by|as|overnight|rise|prove|soak|cool|"
    r"rest|hard|again|once|gently|slowly|well|through|out|off|up|down|back|uncovered|covered|ahead|blind)\b"
)
_IT = listed_words("it them this these")
_NOT_THINGS = _IT | listed_words("the a an all both some its their dried fresh hot cold cooked raw of big small")


def _steps(tasks: list[Task]) -> Iterator[_Step]:
    """What each is about; `it`, or nothing named, is what the step before was about."""
    heads: frozenset[str] = frozenset()
    words: frozenset[str] = frozenset()
    for task in tasks:
        things = [thing for part in _PARTS.split(folded(task.node.name)) if (thing := _thing(part))]
        if things:
            heads, words = frozenset(thing[-1] for thing in things), frozenset(w for thing in things for w in thing)
        yield _Step(task, folded(task.node.name), heads, words)


def _thing(part: str) -> tuple[str, ...]:
    """The stems after its verb, up to `with`, `in`, `until` and the like."""
    _, _, after = part.partition(" ")
    return tuple(
        word for word in stems(_UP_TO.split(after, maxsplit=1)[0]) if word not in _NOT_THINGS and word.isalpha()
    )
