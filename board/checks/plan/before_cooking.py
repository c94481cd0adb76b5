"""Faults before the heat: frozen into the oven, thawed or marinated in the room, stuffed ahead, washed, dough raw.

From the plan alone, by its words and places.
"""

from collections.abc import Iterator

from board.checks.plan.figures import Figures
from board.checks.raw_food import (
    MEATS,
    DishWork,
    RawLine,
    days_before,
    dishes,
    heats,
    kept_minutes,
    tools_text,
)
from board.facts import deeds, faults
from board.facts.eaten_raw import SAID_FROZEN, SAID_THAWED
from board.facts.phrases import folded, holds, stems
from board.facts.standing import IN_THE_ROOM, lies_cold
from board.plan.load import PlanFile
from board.plan.phrases.durations import short
from board.plan.places import Loc
from board.plan.resolve.assume import Task
from board.plan.resolve.food_safety import OUT_OF_CONTROL
from board.plan.snag import About, Snag, Weight

THAWED_IN_FRIDGE_MINUTES = 12 * 60  # in the fridge so long before the heat, it was put there to thaw; our reading
OUT_MINUTES = 120  # raw food out of the fridge: USDA FSIS, danger zone


def frozen_meat_has_time(file: PlanFile) -> list[Snag]:
    """food 18: frozen poultry, or a frozen joint for the oven, is cooked and nothing thaws it. Source:
    `faults.FROM_FROZEN`, `faults.SLOW_FROM_FROZEN`."""
    say = Figures(file)
    found = []
    for work in dishes(file):
        for line in work.raw:
            if not _is_frozen(work, line) or _thaws(file, work, line):
                continue
            for task in work.tasks:
                if not work.heats(task, line) or not work.is_raw_at(task, line):
                    continue
                slow = deeds.slow_cooks(f"{task.node.name} {tools_text(task)}")
                if not slow and (deeds.from_frozen(task.node.name) or not _needs_thawing(line, task)):
                    continue
                found.append(_frozen(file, say, task, line, slow=slow))
                break
    return found


def _frozen(file: PlanFile, say: Figures, task: Task, line: RawLine, *, slow: bool) -> Snag:
    food = line.line.food
    thaw = f"Add a step before it, `thaws: {'5 lb' if say.fahrenheit else '2 kg'} in the fridge`"
    place, about = file.places.of((*task.node.loc, "step")), About((task.node.id,), foods=(food,))
    if slow:
        message = f"{task.node.name} begins with {food}, and a slow cooker warms what is frozen too slowly"
        return Snag(
            "food 18", Weight.STOP, message, f"{thaw}.", place, safety=True, source=faults.SLOW_FROM_FROZEN, about=about
        )
    weight = Weight.ASK if task.care.core is None else Weight.MIND
    message = f"{task.node.name} begins with {food}, and nothing thaws it"
    mend = f"{thaw}, or say `from frozen` in its words, with one and a half times as long and `until:` by the probe."
    return Snag("food 18", weight, message, mend, place, safety=True, source=faults.FROM_FROZEN, about=about)


def _is_frozen(work: DishWork, line: RawLine) -> bool:
    words = line.line.food.casefold()
    if SAID_THAWED.search(words) or line.raw not in MEATS:
        return False
    return SAID_FROZEN.search(words) is not None


def _needs_thawing(line: RawLine, task: Task) -> bool:
    """Poultry always; of meat, what goes into the oven whole."""
    in_oven = any(way.where.place == "oven" for way in task.ways)
    return line.raw == "poultry" or (line.raw == "whole cut" and in_oven)


def _thaws(file: PlanFile, work: DishWork, line: RawLine) -> bool:
    """Whether a step thaws it, or it lies in the fridge for long before the heat; or a job of the plan says so."""
    for task in work.tasks:
        if task.work is not None and (task.work.thaws is not None or deeds.thaws_by_word(task.node.name)):
            return True
        long = max(way.takes.likely for way in task.ways) >= THAWED_IN_FRIDGE_MINUTES
        if any(way.where.place == "fridge" for way in task.ways) and long and work.is_raw_at(task, line):
            return True
    food = stems(line.line.food.partition(",")[0])
    jobs = [task for task in file.filled.tasks.values() if task.node.kind == "job" and task.work is not None]
    return any(
        (task.work is not None and task.work.thaws is not None) or deeds.thaws_by_word(task.node.name)
        for task in jobs
        if any(word in food for word in stems(task.node.name)) or "meat" in stems(task.node.name)
    )


def nothing_thaws_in_the_room(file: PlanFile) -> list[Snag]:
    """food 28: raw meat, poultry or fish thaws on the worktop, by the words of a step; asked where nothing says where.
    Source: `faults.THAWED_OUT`."""
    found = []
    for work in dishes(file):
        for task in work.tasks:
            name = task.node.name
            if task.work is None or task.work.thaws is not None or not deeds.thaws_by_word(name):
                continue
            if deeds.thaws_well(f"{name} {tools_text(task)}") or not _meat_at(work, task):
                continue
            minutes = _minutes_out(task)
            if minutes > faults.MARINADE_MINUTES:
                message = f"{name} leaves it out for {short(minutes)}: its outside is warm while its middle is frozen"
                if not _says_where(task):
                    message = f"{name}: where does it lie for {short(minutes)}? Not on the worktop"
                mend = "Thaw it in the fridge: `thaws: 2 kg in the fridge`, and its time is reckoned from the weight."
                weight = Weight.STOP if minutes > OUT_MINUTES else Weight.MIND
                weight = weight if _says_where(task) else Weight.ASK
                place, about = file.places.of((*task.node.loc, "step")), About((task.node.id,))
                found.append(
                    Snag("food 28", weight, message, mend, place, safety=True, source=faults.THAWED_OUT, about=about)
                )
    return found


def nothing_marinates_in_the_room(file: PlanFile) -> list[Snag]:
    """food 24: raw meat, poultry or fish lies in its marinade out of the fridge for over 30 min. Where nothing says
    where it lies, in a marinade, in salt or overnight, it is taken to lie in the fridge, and asked. Source:
    `faults.MARINATED_OUT`."""
    found = []
    for work in dishes(file):
        for task in work.tasks:
            name, said = task.node.name, _says_where(task)
            unsaid = 0 if said else max(way.takes.likely for way in task.ways)
            if not (deeds.marinates(name) or lies_cold(name, unsaid)) or not _meat_at(work, task):
                continue
            if deeds.thaws_well(name):  # `marinate it in the fridge`
                continue
            minutes = max(unsaid, _minutes_out(task))
            if minutes > faults.MARINADE_MINUTES:
                message = (
                    f"{name}: raw for {short(minutes)} out of the fridge, of the {short(OUT_MINUTES)} that "
                    "all its time out may add up to"
                )
                mend = "Let it lie in the fridge: `where: fridge`, with hands at the start."
                weight = Weight.STOP if minutes > OUT_MINUTES else Weight.MIND
                if not said:
                    weight = Weight.ASK
                    message = (
                        f"{name}: where does it lie for {short(minutes)}? Out of the fridge, raw food has "
                        f"{short(OUT_MINUTES)} in all"
                    )
                    mend = "Write `where: fridge`, with hands at the start."
                place, about = file.places.of((*task.node.loc, "step")), About((task.node.id,))
                found.append(
                    Snag("food 24", weight, message, mend, place, safety=True, source=faults.MARINATED_OUT, about=about)
                )
    return found


def _meat_at(work: DishWork, task: Task) -> bool:
    """Whether a step is about meat, poultry or fish that is still raw."""
    meats = [line for line in work.raw if line.raw in (*MEATS, "fish")]
    return bool(meats) and work.is_about(task, *meats) and work.is_raw_at(task, *meats) and not heats(task)


def _says_where(task: Task) -> bool:
    """Whether its keys or its words say that it lies out, and not only that nothing was said."""
    said = task.work is not None and (task.work.says_where or kept_minutes(task, "room") > 0)
    return said or IN_THE_ROOM.search(folded(task.node.name)) is not None


def _minutes_out(task: Task) -> int:
    """How long a step leaves its food in the room: its own time there, and how long the plan says it keeps there."""
    out = max((way.takes.likely for way in task.ways if way.where.place in OUT_OF_CONTROL), default=0)
    return out + kept_minutes(task, "room")


def no_bird_is_stuffed_ahead(file: PlanFile) -> list[Snag]:
    """food 21: a bird is stuffed, and then kept before it is cooked. Meat, and a bird with no more than herbs, lemon or
    onion in it: mind. Source: `faults.STUFFED_AHEAD`."""
    found = []
    for work in dishes(file):
        meats = [line for line in work.raw if line.raw in ("poultry", "whole cut")]
        for task in work.tasks:
            name = task.node.name
            if not meats or not deeds.stuffs(name) or not work.names(task, *meats) or not work.is_raw_at(task, *meats):
                continue
            later = [each for each in work.following(task) if heats(each)]
            if not later or not is_held_before(work, task, later):
                continue
            bird = any(line.raw == "poultry" for line in meats)
            only_herbs = deeds.names_aromatics(name) and not deeds.names_filling(name)
            if only_herbs:
                continue
            message = f"{name} is done ahead: in a cold bird the filling stays warm, and later gets hot last"
            if not bird:
                message = f"{name} is done ahead: the filling gets hot last"
            mend = "Keep the filling by itself in the fridge, and fill it just before the oven, or bake it in a dish."
            weight = Weight.STOP if bird else Weight.MIND
            place, about = file.places.of((*task.node.loc, "step")), About((task.node.id,))
            found.append(
                Snag("food 21", weight, message, mend, place, safety=True, source=faults.STUFFED_AHEAD, about=about)
            )
    return found


HELD_MINUTES = 60  # between two steps, by the plan's own words, this is held over and not gone on with; ours


def is_held_before(work: DishWork, task: Task, later: list[Task]) -> bool:
    """Whether the plan's own words keep what a step made before the first of these later steps: cold, for long, on
    another day, or with a step in the fridge or a cooling between."""
    if kept_minutes(task, "fridge", "freezer", "room") > HELD_MINUTES:
        return True
    first = later[0]
    between = [each for each in work.following(task) if first.node.id in work.after[each.node.id]]
    if any(_holds_over(each) for each in between):
        return True
    days = days_before(task)
    return days is not None and days > (days_before(first) or 0)


def _holds_over(task: Task) -> bool:
    cold = any(way.where.place in ("fridge", "freezer") and way.takes.likely > HELD_MINUTES // 2 for way in task.ways)
    cooled = task.work is not None and task.work.cools is not None
    return cold or cooled or kept_minutes(task, "fridge", "freezer", "room") > HELD_MINUTES


def raw_poultry_is_not_washed(file: PlanFile) -> list[Snag]:
    """food 30: raw poultry is washed or rinsed; the splashes carry what is on it. Source: `faults.WASHED_POULTRY`."""
    found = []
    for work in dishes(file):
        birds = [line for line in work.raw if line.raw == "poultry"]
        for task in work.tasks:
            name = task.node.name
            if not birds or not deeds.washes_food(name) or not work.names(task, *birds):
                continue
            if work.is_raw_at(task, *birds) and not deeds.washes_up(name):
                message = f"{name}: what is on a raw bird splashes onto sink, hands and salad"
                place = file.places.of((*task.node.loc, "step"))
                mend = "Leave it out: pat the bird dry with paper. Wash your hands, not the bird."
                found.append(
                    Snag("food 30", Weight.MIND, message, mend, place, safety=True, source=faults.WASHED_POULTRY)
                )
    return found


def raw_marinade_is_boiled(file: PlanFile) -> list[Snag]:
    """food 31: a marinade that held raw meat goes onto cooked food unboiled. Source: `faults.MARINADE_AGAIN`."""
    found = []
    for work in dishes(file):
        meats = [line for line in work.raw if line.raw in (*MEATS, "fish")]
        if not meats or not any(deeds.marinates(task.node.name) for task in work.tasks):
            continue
        for task in work.tasks:
            name = task.node.name
            if not deeds.spoons_marinade(name) or deeds.keeps_marinade_apart(name.casefold()) or heats(task):
                continue
            boiled = any(heats(each) and holds(stems(each.node.name), stems("marinade")) for each in work.before(task))
            if not work.is_raw_at(task, *meats) and not boiled:
                message = f"{name}: the marinade has held raw {meats[0].line.food}"
                mend = "Keep some of it apart from the start, or boil it first."
                place, about = file.places.of((*task.node.loc, "step")), About((task.node.id,))
                source = faults.MARINADE_AGAIN
                found.append(
                    Snag("food 31", Weight.STOP, message, mend, place, safety=True, source=source, about=about)
                )
    return found


_WHEAT_FLOUR = ("plain flour", "self raising flour", "strong flour", "bread flour", "wholemeal flour", "white flour")


def flour_is_baked(file: PlanFile) -> list[Snag]:
    """food 29: a dish with wheat flour in it that no step heats, and whose words speak of a dough or batter. Source:
    `faults.RAW_FLOUR`."""
    found = []
    for work in dishes(file):
        floury = list(_floury(work))
        words = " ".join((work.dish.dish, *(task.node.name for task in work.tasks))).casefold()
        every = [*work.tasks, *(each for task in work.tasks for each in work.following(task))]
        if not floury or any(heats(task) for task in every) or not deeds.speaks_of_dough(words):
            continue
        message = f"{work.dish.dish} has flour in it, and nothing bakes it"
        mend = "Write the step that bakes it, or use oats, ground nuts or a heat-treated flour in place of it."
        place = file.places.of(floury[0])
        found.append(Snag("food 29", Weight.MIND, message, mend, place, safety=True, source=faults.RAW_FLOUR))
    return found


def _floury(work: DishWork) -> Iterator[Loc]:
    for loc, line in work.foods:
        words = stems(line.food)
        plain = words == stems("flour") or any(holds(words, stems(name)) for name in _WHEAT_FLOUR)
        if plain and not holds(words, stems("heat treated")) and "toasted" not in words:
            yield loc
