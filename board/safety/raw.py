"""How long raw food stands out before it is cooked through: its own clock, until the cooking begins. Pure."""

from collections.abc import Iterator

from board.checks.figures import Figures
from board.plan.durations import short
from board.plan.load import PlanFile
from board.plan.snag import Snag, Weight
from board.plan.spoils import dish_at, raw_class
from board.safety.exposure import Stretch, before_cooking
from board.safety.out import spelled_out
from board.safety.paths import Paths
from board.timetable.run_sheet import RunSheet, Slot


def raw_food_is_cooked_in_time(file: PlanFile, sheet: RunSheet) -> list[Snag]:
    """F15: raw meat, poultry, fish or egg stands out longer than its limit before it is cooked. Of each dish the worst.

    Which of the parts of a dish is the raw one no plan says, so the one that stood longest counts: mind. Source: the
    rule set's `out_limit`.
    """
    say, paths = Figures(file), Paths(file, sheet)
    indoors = file.plan.air.indoors if file.plan.air is not None else None
    limit = say.rules.out_limit(indoors)
    worst: dict[tuple[str, str], tuple[int, Snag]] = {}
    for cooking, stretches in before_cooking(sheet):
        minutes = _minutes(stretches)
        raw = next(_raw_lines(paths, cooking, stretches), None)
        key = (cooking.course or "", cooking.dish or "")
        if raw is None or minutes <= max(limit.minutes, worst.get(key, (0,))[0]):
            continue
        message = (
            f"{cooking.dish}: {raw} may stand out raw for {short(minutes)} before {cooking.name}; {say.rules.title} "
            f"give {short(limit.minutes)} [{limit.source}]: {', '.join(spelled_out(paths, stretches))}"
        )
        mend = (
            "Keep it in the fridge until it is cooked: a step `on: fridge`, or `keeps: 1 day in the fridge`. What "
            "has stood too long is thrown away; cooking does not mend it. A step with nothing raw in it is "
            "`perishable: no`."
        )
        place = file.places.of((*paths.task(paths.slots[stretches[0].slot]).node.loc, "step"))
        worst[key] = (minutes, Snag("F15", Weight.MIND, message, mend, place, safety=True))
    return [snag for _, snag in worst.values()]


def _minutes(stretches: tuple[Stretch, ...]) -> int:
    return round(sum((each.end - each.start).total_seconds() for each in stretches) / 60)


def _raw_lines(paths: Paths, cooking: Slot, stretches: tuple[Stretch, ...]) -> Iterator[str]:
    """What is raw in the dishes that it went through, as their ingredients have it; else the class that is cooked."""
    nodes = [paths.task(paths.slots[id_]).node for id_ in dict.fromkeys([cooking.id, *(s.slot for s in stretches)])]
    for node in nodes:
        dish = dish_at(paths.file.plan, node.loc)
        yield from (line.food for line in (dish.ingredients if dish is not None else ()) if raw_class(line.food))
    if cooking.cooks is not None:
        yield cooking.cooks
