"""What no fridge makes harmless: parasites in raw fish, beans never boiled, garlic in oil, poisonous and wild foods.

From the plan alone, by its words and places.
"""

from collections.abc import Iterator

from board.checks.plan.figures import Figures
from board.checks.plan.how_hot import frozen_minutes, may_hold_parasites, not_cooked
from board.checks.plan.raw_food import DishWork, RawLine, dishes, heats, kept_minutes, oven_celsius, tools_text
from board.facts import deeds, faults
from board.facts.poisons import (
    ACID,
    BEANS_COOKED,
    BEANS_DRIED,
    COVERED_BY_OIL,
    IN_OIL,
    KIDNEY_BEANS,
    MOST_OF_IT,
    OIL,
    POISONS,
    Poison,
)
from board.plan.load import PlanFile
from board.plan.phrases.durations import short
from board.plan.phrases.quantities import Ingredient
from board.plan.resolve.assume import Task
from board.plan.resolve.food_safety import OUT_OF_CONTROL
from board.plan.snag import About, Place, Snag, Weight

SIMMERED_MINUTES = 30  # on a ring so long, it most likely boils at some time; mind all the same; ours
DAY_MINUTES = 24 * 60


def raw_fish_was_frozen(file: PlanFile) -> list[Snag]:
    """food 23: fish is eaten raw, cured or barely cooked, and nothing says it was frozen against parasites. Tuna,
    molluscs, roe and farmed fish are excepted. Source: `faults.PARASITES`."""
    say = Figures(file)
    found = []
    for work in dishes(file):
        for each in not_cooked(say, work):
            food = each.food.line.food
            if not may_hold_parasites(work, each):
                continue
            frozen = frozen_minutes(work, each.food)
            cold = f"{faults.FREEZE_DAYS} days at {say.limit(faults.FREEZE_AT)} or below"
            place, about = file.places.of(each.food.loc), work.about(food)
            if frozen:
                message = f"{work.dish.dish}: {food} is frozen for {short(frozen)} only; parasites die in {cold}"
                mend = f"Freeze it for {cold}, or cook it."
                found.append(
                    Snag(
                        "food 23", Weight.STOP, message, mend, place, safety=True, source=faults.PARASITES, about=about
                    )
                )
                continue
            message = (
                f"{work.dish.dish}: {food}, raw or cured, may hold live parasites; nothing says it was frozen first"
            )
            mend = f"Ask for fish that was frozen ({cold}) or is farmed on pellets, and write `frozen` or `farmed`."
            found.append(
                Snag("food 23", Weight.ASK, message, mend, place, safety=True, source=faults.PARASITES, about=about)
            )
    return found


def beans_are_boiled(file: PlanFile) -> list[Snag]:
    """food 25: dried kidney beans and their like are never boiled for 10 min. Source: `faults.BEANS`."""
    found = []
    for work in dishes(file):
        for loc, line in work.foods:
            dried = _are_dried(work, line)
            if dried is False or _boiled(work):
                continue
            place, about = file.places.of(loc), work.about(line.food)
            boil = f"boil them hard for {faults.BOIL_MINUTES} min and more in fresh water before anything else"
            cooked = [task for task in work.tasks if heats(task)]
            if dried is None:
                message = (
                    f"{work.dish.dish}: are {line.food} dried? Dried ones are poisonous until they have been boiled"
                )
                mend = f"Write `tinned {line.food}`, or a step on a ring: {boil}."
                weight = Weight.ASK
            else:
                message = (
                    f"{work.dish.dish}: {line.food} are poisonous until they have been boiled, and no step says so"
                )
                mend = f"Add a step on a ring: {boil}; an oven or a slow cooker may stay too cool."
                simmered = any(
                    way.where.place == "stovetop" and way.takes.low >= SIMMERED_MINUTES
                    for task in cooked
                    for way in task.ways
                )
                weight = Weight.MIND if simmered or not MOST_OF_IT.search(line.food.casefold()) else Weight.STOP
            found.append(Snag("food 25", weight, message, mend, place, safety=True, source=faults.BEANS, about=about))
    return found


def _are_dried(work: DishWork, line: Ingredient) -> bool | None:
    """None where neither the line nor the steps tell."""
    words = line.food.casefold()
    if not KIDNEY_BEANS.search(words) or line.unit in ("tin", "jar") or BEANS_COOKED.search(words):
        return False
    soaked = any("soak" in task.node.name.casefold() for task in work.tasks)
    if BEANS_DRIED.search(words) or soaked:
        return True
    return None if MOST_OF_IT.search(words) else False


def _boiled(work: DishWork) -> bool:
    """Whether a step boils for so long on a ring, or cooks under pressure."""
    for task in work.tasks:
        words = f"{task.node.name} {tools_text(task)}"
        if deeds.pressure_cooks(words):
            return True
        in_oven = oven_celsius(task) is not None or any(way.where.place == "oven" for way in task.ways)
        lasts = min(way.takes.low for way in task.ways) >= faults.BOIL_MINUTES
        if deeds.boils(task.node.name) and lasts and not in_oven and not deeds.slow_cooks(words):
            return True
    return False


def oil_stays_cold(file: PlanFile) -> list[Snag]:
    """food 27: garlic, herbs or vegetables under oil stay in the room for over 2 h, or in the fridge for over 4 days.
    Source: `faults.GARLIC_IN_OIL`."""
    found = []
    for task, words in _oils(file):
        room = kept_minutes(task, "room")
        if not any(way.where.on_heat for way in task.ways):
            room += max((way.takes.likely for way in task.ways if way.where.place in OUT_OF_CONTROL), default=0)
        fridge = kept_minutes(task, "fridge")
        place = file.places.of((*task.node.loc, "step" if task.node.kind == "step" else "job"))
        about = About((task.node.id,))
        if room > faults.OIL_ROOM_MINUTES:
            sour = ACID.search(words) is not None
            message = f"{task.node.name} leaves it under oil in the room for {short(room)}, where botulism grows unseen"
            mend = f"Into the fridge at once, 4 days at most: `keeps: {faults.OIL_DAYS} days in the fridge`."
            weight = Weight.MIND if sour else Weight.STOP
            source = faults.GARLIC_IN_OIL
            found.append(
                Snag("food 27", weight, message, mend, place, safety=True, source=source, severe=not sour, about=about)
            )
        elif fridge > faults.OIL_DAYS * DAY_MINUTES:
            message = (
                f"{task.node.name} is said to keep {short(fridge)} under oil; botulism grows in the cold too, slowly"
            )
            mend = f"Make it later, or freeze it: {faults.OIL_DAYS} days in the fridge at most."
            source = faults.GARLIC_IN_OIL
            found.append(Snag("food 27", Weight.MIND, message, mend, place, safety=True, source=source, about=about))
    return found


def _oils(file: PlanFile) -> Iterator[tuple[Task, str]]:
    """Each step or job that leaves garlic and the like in oil, with all the words about it."""
    for work in dishes(file):
        foods = " ".join(line.food for _, line in work.foods).casefold()
        for task in work.tasks:
            words = f"{work.dish.dish} {task.node.name}".casefold()
            if not deeds.infuses(task.node.name) or not (OIL.search(words) or OIL.search(foods)):
                continue
            if work.raw:
                continue  # meat or fish in oil is a marinade, or cooked
            covered = COVERED_BY_OIL.search(words) and deeds.lies_under_oil(task.node.name)
            if covered or IN_OIL.search(words) or ("garlic" in foods and OIL.search(words)):
                yield task, f"{words} {foods}"
    for task in file.filled.tasks.values():
        words = task.node.name.casefold()
        if task.node.kind == "job" and deeds.infuses(words) and OIL.search(words) and IN_OIL.search(words):
            yield task, words


def nothing_is_poisonous(file: PlanFile) -> list[Snag]:
    """food 26: foods that poison by themselves, and wild ones that only an expert can tell. Sources: in
    `poisons.POISONS`."""
    found = []
    for work in dishes(file):
        hot = [task for task in work.tasks if heats(task)]
        for loc, line in work.foods:
            words = f"{line.food} {line.section or ''}".casefold()
            for poison in POISONS:
                heated = any(work.is_about(task, RawLine(loc, line, "")) for task in hot)
                if poison.words.search(words) and not (poison.cooked_is_fine and heated):
                    place = file.places.of(loc)
                    about = work.about(line.food)
                    perhaps = poison.cooked_is_fine and bool(hot)  # another food of the dish is
                    found.append(_poison(f"{work.dish.dish}: {line.food}", poison, place, about, asks=perhaps))
        for task in work.tasks:
            for poison in POISONS:
                if poison.words.search(task.node.name.casefold()) and not poison.cooked_is_fine:
                    place, about = file.places.of((*task.node.loc, "step")), About((task.node.id,))
                    found.append(_poison(task.node.name, poison, place, about))
    return found


def _poison(what: str, poison: Poison, place: Place, about: About, *, asks: bool = False) -> Snag:
    weight = Weight.ASK if asks or poison.asks else Weight.STOP
    return Snag(
        "food 26", weight, f"{what}: {poison.why}", poison.mend, place, safety=True, source=poison.source,
        severe=poison.severe, about=about,
    )  # fmt: skip
