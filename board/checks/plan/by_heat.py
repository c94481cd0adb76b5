"""Faults of the heat itself: cooked in two goes, too cool an oven for a bird, reheated twice. From the plan alone."""

from board.checks.plan.before_cooking import is_held_before
from board.checks.plan.cooking import enough
from board.checks.plan.figures import Figures
from board.checks.raw_food import MEATS, DishWork, RawLine, dishes, heats, kept_minutes, oven_celsius, tools_text
from board.facts import deeds, faults
from board.plan.load import PlanFile
from board.plan.resolve.assume import Task
from board.plan.snag import About, Snag, Weight


def cooking_is_done_in_one_go(file: PlanFile) -> list[Snag]:
    """food 19: meat, poultry or fish is part-cooked, by its words or its core temperature, kept, and finished later.

    Whole cuts that are only browned: mind. What goes straight on is none. Source: `faults.PART_COOKED`.
    """
    say = Figures(file)
    found = []
    for work in dishes(file):
        meats = [line for line in work.raw if line.raw in (*MEATS, "fish")]
        for task in work.tasks:
            name = task.node.name
            these = [line for line in meats if work.names(task, line)] or meats
            halfway = deeds.part_cooks(name) or _stops_short(say, task, these)
            if not meats or not (halfway or deeds.only_colours(name)) or not work.heats(task, *meats):
                continue
            if not work.is_raw_at(task, *these) or _done(say, task, these):
                continue
            later = [each for each in work.following(task) if heats(each) or each.care.reheats]
            later = [each for each in later if work.is_about(each, *these) or each.care.reheats]
            if not later or not is_held_before(work, task, later):
                continue
            message = f"{name} stops short of cooking it, and it is kept until {later[0].node.name}"
            mend = "Cook it through in one go and cool it quickly, or do both steps one after the other, `at once`."
            only_browned = not halfway and all(line.raw == "whole cut" for line in these)
            weight = Weight.MIND if only_browned else Weight.STOP
            place, about = file.places.of((*task.node.loc, "step")), About((task.node.id,))
            found.append(
                Snag("food 19", weight, message, mend, place, safety=True, source=faults.PART_COOKED, about=about)
            )
    return found


def _stops_short(say: Figures, task: Task, lines: list[RawLine]) -> bool:
    """Whether the step's own core temperature is below what one of them needs."""
    core = task.care.core
    return core is not None and any(not enough(say.rules, line.raw, core, float("inf")) for line in lines)


def _done(say: Figures, task: Task, lines: list[RawLine]) -> bool:
    """Whether the step itself says it cooks it through."""
    core = task.care.core
    return core is not None and all(enough(say.rules, line.raw, core, float("inf")) for line in lines)


def birds_get_a_hot_oven(file: PlanFile) -> list[Snag]:
    """food 20: poultry is roasted in an oven below 163 °C (325 °F). A stop where no core temperature is given; what is
    slow and moist by its words, with one, is none. Source: `faults.LEAST_OVEN_SOURCE`."""
    say = Figures(file)
    found = []
    for work in dishes(file):
        birds = [line for line in work.raw if line.raw == "poultry"]
        for task in work.tasks:
            celsius = oven_celsius(task)
            if not birds or celsius is None or faults.LEAST_OVEN.at_least(celsius):
                continue
            if not work.heats(task, *birds) or not work.is_raw_at(task, *birds) or _was_hot(work, task):
                continue
            weight = _weight_of_cool_oven(work, task, celsius)
            if weight is None:
                continue
            message = f"{task.node.name}: {say.degrees(celsius)} is little heat for poultry, and it warms slowly"
            mend = f"Set the oven to {say.limit(faults.LEAST_OVEN)} or above, and write `until:` for the probe."
            place, about = file.places.of((*task.node.loc, "where")), About((task.node.id,))
            found.append(
                Snag("food 20", weight, message, mend, place, safety=True, source=faults.LEAST_OVEN_SOURCE, about=about)
            )
    return found


def _weight_of_cool_oven(work: DishWork, task: Task, celsius: float) -> Weight | None:
    probed = task.care.core is not None and task.work is not None and task.work.until is not None
    words = f"{work.dish.dish} {task.node.name} {tools_text(task)}"
    if celsius >= faults.DIAL_CELSIUS:
        return None if probed else Weight.MIND
    if deeds.slow_and_moist(words):
        return None if probed else Weight.MIND
    return Weight.MIND if probed else Weight.STOP


def _was_hot(work: DishWork, task: Task) -> bool:
    """Whether it was in a hot enough oven before: begun hot, finished slowly."""
    before = [oven_celsius(each) for each in work.before(task)]
    return any(celsius is not None and faults.LEAST_OVEN.at_least(celsius) for celsius in before)


def nothing_is_reheated_twice(file: PlanFile) -> list[Snag]:
    """food 22: food that was reheated is reheated again. What is kept hot between is heated once. Source:
    `faults.REHEATED_TWICE`."""
    found = []
    for work in dishes(file):
        for task in work.tasks:
            if not (task.care.reheats and task.care.spoils):
                continue
            again = [each for each in work.following(task) if each.care.reheats and each.care.spoils]
            if not again or _stays_hot(file, work, task, again[0]):
                continue
            message = f"{again[0].node.name} reheats what {task.node.name} has reheated before"
            mend = "Reheat only as much as is eaten then, and keep the rest cold; or keep it hot in between."
            place = file.places.of((*again[0].node.loc, "step"))
            found.append(Snag("food 22", Weight.MIND, message, mend, place, safety=True, source=faults.REHEATED_TWICE))
    return list(dict.fromkeys(found))


def _stays_hot(file: PlanFile, work: DishWork, first: Task, again: Task) -> bool:
    """Whether the plan goes straight on, or keeps it hot, between the two."""
    if is_held_before(work, first, [again]):
        return False
    if kept_minutes(first, "hot", "oven", "stovetop"):
        return True
    links = [link for link in file.filled.taken_up if (link.first, link.second) == (first.node.id, again.node.id)]
    return any(link.most is not None and link.most <= 10 for link in links)
