"""Whether food is cooked through, rested and reheated as the plan's food-safety rules ask. From the plan alone.

A thermometer in the thickest part decides; what is checked here is only what the plan says it will do.
"""

import math
from collections.abc import Iterator

from board.checks.plan.figures import Figures
from board.checks.plan.precedence import Between
from board.checks.raw_food import DishWork, RawLine, Took, dishes, heats
from board.facts.eaten_raw import UNDERDONE
from board.facts.limits import Cook
from board.facts.phrases import folded, stems
from board.facts.rule_set import RuleSet
from board.facts.rule_sets import rule_set
from board.facts.workings import BOILS
from board.plan.load import PlanFile
from board.plan.phrases.durations import short
from board.plan.phrases.food_safety import ROAST, Core, rule_class
from board.plan.places import Loc
from board.plan.resolve.assume import Task
from board.plan.resolve.links import serve_id
from board.plan.snag import About, Place, Snag, Weight


def what_is_cooked_gets_hot_enough(file: PlanFile) -> list[Snag]:
    """food 1: `until` is below what the class of food requires, or not held there. Source: the rule set's `cook`,
    `roasts`.

    A roast may follow the table of roasts, if the rules have one. Where no step says what it `cooks`, the class is the
    food's; of a whole cut, fish or eggs, which some eat so on purpose, it is then asked.
    """
    say = Figures(file)
    found = []
    for task, cooks, core in (*_cooked(file), *_too_cool(file)):
        cook = say.rules.cook_for(rule_class(cooks))
        place, about = _place(file, task, "until", "cooks"), About((task.node.id,))
        if cook is None:
            message = f"{task.node.name}: {say.rules.title} have no figure for {cooks}"
            mend = "Go by your local code and the label, and write what the middle must reach: `until: 74 C`."
            found.append(Snag("food 1", Weight.ASK, message, mend, place, safety=True, about=about))
        elif not enough(say.rules, cooks, core, math.inf):
            message = f"{task.node.name}: {_reaches(say, core)}; {say.asks(_wanted(say, cook, cooks, core))}"
            mend = f"Write `until: {mended(say, cook)}`, and cook it to that by the probe."
            roasts = cooks == ROAST and say.rules.roast_hold_seconds(core.celsius) is not None
            source = f"{cook.source}; {say.rules.roasts_source}" if roasts else cook.source
            asked = task.care.cooks is None and cooks not in _NEVER_UNDERDONE
            weight = Weight.ASK if asked else Weight.STOP
            found.append(Snag("food 1", weight, message, mend, place, safety=True, source=source, about=about))
    return found


_NEVER_UNDERDONE = ("poultry", "ground meat")  # not on purpose either: FDA Food Code 3-401.11(C), (D); from memory


def _cooked(file: PlanFile) -> Iterator[tuple[Task, str, Core]]:
    """Each step that says which class of food it cooks, with its core temperature."""
    for task in file.filled.tasks.values():
        if task.care.cooks is not None:
            yield task, task.care.cooks, task.care.core or Core(celsius=-100)


def _too_cool(file: PlanFile) -> Iterator[tuple[Task, str, Core]]:
    """Each step whose figure is too low for a raw food of its dish, though it does not say which class it cooks."""
    rules, told = rule_set(file.plan.rules), set[tuple[str, str]]()
    for work in dishes(file):
        for line in work.raw:
            task = is_too_cool(rules, work, line)
            if task is not None and task.care.core is not None and (task.node.id, line.raw) not in told:
                told.add((task.node.id, line.raw))
                yield task, class_of(task, line), task.care.core


def is_too_cool(rules: RuleSet, work: DishWork, line: RawLine) -> Task | None:
    """The step with the highest figure for this food, where it is too low and nothing hotter follows; None if there is
    none, or if it says what it `cooks`, which is checked by itself."""
    if rules.cook_for(line.raw) is None or says_cooked(rules, work, line):
        return None
    on_it = [each for each in work.all_steps() if work.took(each, line) >= Took.CARRIED and heats(each)]
    hottest = max((each for each in on_it if each.care.core), key=_celsius, default=None)
    if hottest is None or hottest.care.cooks is not None:
        return None
    after = (each for each in on_it if each.node.id in work.after[hottest.node.id] and each.care.core is None)
    return None if any(work.cooks(each, line) for each in after) else hottest


def _celsius(task: Task) -> float:
    return task.care.core.celsius if task.care.core is not None else -100.0


def class_of(task: Task, line: RawLine) -> str:
    """The class a step cooks a food as: what it `cooks`, else the food's; of a whole cut that it roasts, a roast's."""
    is_roast = line.raw == "whole cut" and "roast" in stems(task.node.name)
    return task.care.cooks or (ROAST if is_roast else line.raw)


def says_cooked(rules: RuleSet, work: DishWork, line: RawLine) -> bool:
    """Whether a step that took up this food says it cooks its class, or gets as hot as the class requires."""
    for task in work.all_steps():
        core, cooks = task.care.core, task.care.cooks
        if task.care.reheats or work.took(task, line) < Took.CARRIED:
            continue
        if core is not None and rules.cooked_enough(
            line.raw, core.celsius, core.minutes, math.inf, roast=class_of(task, line) == ROAST
        ):
            return True
        if cooks is not None and rule_class(cooks) == line.raw:
            return True
    return False


def says_underdone(work: DishWork, task: Task, line: RawLine) -> bool:
    """Whether a step's own words say that this poultry or ground meat stays red or pink inside."""
    if line.raw not in ("poultry", "ground meat") or work.took(task, line) < Took.CARRIED:
        return False
    written = task.work
    texts = (task.node.name, *((written.look_for, written.how) if written is not None else ()))
    return any(text and UNDERDONE.search(folded(text)) for text in texts)


def enough(rules: RuleSet, cooks: str, core: Core, rest_minutes: float) -> bool:
    return rules.cooked_enough(rule_class(cooks), core.celsius, core.minutes, rest_minutes, roast=cooks == ROAST)


def _reaches(say: Figures, core: Core) -> str:
    return f"its middle reaches {say.degrees(core.celsius)}{_held(core.minutes * 60)}"


def _held(seconds: float) -> str:
    if not seconds:
        return ""
    return f" for {round(seconds)} s" if seconds < 180 else f" for {round(seconds / 60, 1):g} min"


def _wanted(say: Figures, cook: Cook, cooks: str, core: Core) -> str:
    """What would be enough: the class's figure, the equivalent pairs, and the row of the table of roasts."""
    pairs = [f"{say.limit(each.degrees)}{_held(each.hold_seconds)}" for each in (cook, *cook.also)]
    if cooks == ROAST and (seconds := say.rules.roast_hold_seconds(core.celsius)) is not None:
        pairs.append(f"{say.degrees(core.celsius)}{_held(seconds)} for a roast")
    return f"{' or '.join(pairs)} ({cooks})"


def mended(say: Figures, cook: Cook) -> str:
    figure = f"{cook.degrees.fahrenheit:g} F" if say.fahrenheit else f"{cook.degrees.celsius:g} C"
    return figure + (f" for {cook.hold_seconds} s" if cook.hold_seconds else "")


def what_is_cooked_rests(file: PlanFile) -> list[Snag]:
    """food 3: the rest a class of food requires may be cut short before it is eaten; serving counts as rest.

    Source: the rule set's `cook`.
    """
    say = Figures(file)
    between = Between(file, shortest=True)
    found = []
    for task, cooks, core in _cooked(file):
        cook = say.rules.cook_for(rule_class(cooks))
        if cook is None or not enough(say.rules, cooks, core, math.inf) or enough(say.rules, cooks, core, 0):
            continue
        serve = serve_id(task.node.course or "")
        reached = between.longest(task.node.id, serve)
        if reached is None:
            continue
        minutes = reached[0] + between.takes[serve]
        if not enough(say.rules, cooks, core, minutes):
            message = (
                f"{task.node.name} may be eaten {minutes} min after it is done; "
                f"{say.asks(f'{cook.rest_minutes} min of rest at {say.limit(cook.degrees)} ({cooks})')}"
            )
            mend = f"Add a step of {cook.rest_minutes} min for the rest, or cook it hotter."
            place = _place(file, task, "until", "cooks")
            found.append(Snag("food 3", Weight.MIND, message, mend, place, safety=True, source=cook.source))
    return found


def what_is_reheated_gets_hot_enough(file: PlanFile) -> list[Snag]:
    """food 4: a step that reheats stays below the limit (stop), or does not say what it reaches (mind). Source: the
    rule set's `reheat`."""
    say = Figures(file)
    limit = say.rules.reheat
    found = []
    for task in _reheated(file):
        core, asks = task.care.core, say.asks(f"{say.limit(limit.degrees)} in the middle")
        write = (
            f"`until: {limit.degrees.fahrenheit:g} F`" if say.fahrenheit else f"`until: {limit.degrees.celsius:g} C`"
        )
        place, about = _place(file, task, "until", "reheats"), About((task.node.id,))
        source = task.care.by.beside(limit.source)
        if core is None and BOILS.search(folded(task.node.name)) is None:
            message = f"{task.node.name} does not say how hot it gets; {asks}"
            mend = f"Write {write}."
            found.append(Snag("food 4", Weight.ASK, message, mend, place, safety=True, source=source, about=about))
        elif core is not None and not limit.degrees.at_least(core.celsius):
            message = f"{task.node.name}: {_reaches(say, core)}; {asks}"
            mend = f"Write {write}, and reheat it to that."
            found.append(Snag("food 4", Weight.STOP, message, mend, place, safety=True, source=source, about=about))
    return found


def what_is_reheated_gets_hot_soon(file: PlanFile) -> list[Snag]:
    """food 5: reheating may take longer than it is allowed to. Source: the rule set's `reheat`."""
    say = Figures(file)
    limit = say.rules.reheat
    found = []
    for task in _reheated(file):
        for number, way in enumerate(task.ways):
            if way.takes.high > limit.within_minutes:
                loc: Loc = task.node.loc if number == 0 else (*task.node.loc, "or", number - 1)
                message = (
                    f"{task.node.name} may take {short(way.takes.high)}; "
                    f"{say.asks(f'{say.limit(limit.degrees)} within {short(limit.within_minutes)}')}"
                )
                mend = "Reheat it in smaller or shallower pans, on a ring, and keep it hot afterwards."
                place, about = file.places.of((*loc, "takes")), About((task.node.id,))
                found.append(
                    Snag("food 5", Weight.STOP, message, mend, place, safety=True, source=limit.source, about=about)
                )
    return list(dict.fromkeys(found))


def _reheated(file: PlanFile) -> list[Task]:
    return [task for task in file.filled.tasks.values() if task.care.reheats and task.care.spoils]


def _place(file: PlanFile, task: Task, *keys: str) -> Place:
    """The first of these keys that the step has, else the step."""
    written = task.work.model_fields_set if task.work is not None else set()
    key = next((key for key in keys if key in written), None)
    return file.places.of(task.node.loc if key is None else (*task.node.loc, key))
