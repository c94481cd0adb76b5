"""How long raw food stands out before it is cooked through: its own clock, until the cooking begins. Pure."""

from board.checks.sheet.out import spelled_out
from board.checks.sheet.timed import Timed
from board.plan.phrases.durations import short
from board.plan.snag import Snag, Weight
from board.sheet.exposure import planned_before_cooking


def raw_food_is_cooked_in_time(timed: Timed) -> list[Snag]:
    """food 15: raw meat, poultry, fish or egg stands out longer than its limit before it is cooked; only the worst of
    each dish.

    No plan says which part of a dish is the raw one, so the one that stood longest counts: mind. Source: the rule set's
    `out_limit`.
    """
    limit = timed.sheet.raw_limit
    if limit is None:
        return []
    say, paths = timed.say, timed.paths
    worst: dict[tuple[str, str], tuple[int, Snag]] = {}
    for raw in planned_before_cooking(timed.sheet):
        cooking, minutes = raw.cooking, round(raw.minutes())
        key = (cooking.course or "", cooking.dish or "")
        if minutes <= max(limit.minutes, worst.get(key, (0,))[0]):
            continue
        message = (
            f"{cooking.dish}: {raw.food} may stand out raw for {short(minutes)} before {cooking.name}; "
            f"{say.rules.title} give {short(limit.minutes)} [{limit.source}]: "
            f"{', '.join(spelled_out(paths, raw.stretches))}"
        )
        mend = (
            "Keep it in the fridge until it is cooked: a step `where: fridge`, or `keeps: 1 day in the fridge`. What "
            "has stood too long is thrown away; cooking does not mend it. A step with nothing raw in it is "
            "`perishable: no`."
        )
        place = timed.file.places.of((*paths.task(paths.slots[raw.stretches[0].slot]).node.loc, "step"))
        worst[key] = (minutes, Snag("food 15", Weight.MIND, message, mend, place, safety=True))
    return [snag for _, snag in worst.values()]
