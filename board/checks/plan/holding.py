"""Whether food is kept hot, cold and thawed as the plan's food-safety rules ask. From the plan alone."""

from collections.abc import Iterator

from board.checks.plan.figures import Figures
from board.checks.plan.how_hot import not_cooked
from board.checks.raw_food import dishes
from board.facts.rule_set import KG_A_POUND
from board.plan.load import PlanFile
from board.plan.phrases.durations import short
from board.plan.places import Loc
from board.plan.resolve.assume import FilledWay, Task
from board.plan.resolve.food_safety import in_hot_tool, tool_is_hot
from board.plan.snag import About, Snag, Weight

DAY_MINUTES = 24 * 60


def _ways(task: Task) -> Iterator[tuple[FilledWay, Loc]]:
    """Each way to do a piece of work, with its path in the plan."""
    for number, way in enumerate(task.ways):
        yield way, task.node.loc if number == 0 else (*task.node.loc, "or", number - 1)


def what_is_kept_hot_is_hot_enough(file: PlanFile) -> list[Snag]:
    """food 6: food that spoils is kept in an oven whose range is, or reaches, below hot holding. Source: the rule set's
    `hot_holding`."""
    say = Figures(file)
    limit = say.rules.hot_holding
    found: list[Snag] = []
    for task in file.filled.tasks.values():
        for way, loc in _ways(task):
            heat = way.keeps.where.heat if way.keeps is not None else None
            if heat is None or not task.care.spoils or limit.at_least(heat.low):
                continue
            what = "is kept at" if not limit.at_least(heat.want) else "may be kept at"
            figure = heat.low if limit.at_least(heat.want) else heat.want
            message = (
                f"{task.node.name} {what} {say.degrees(figure)}; "
                f"{say.asks(f'{say.limit(limit)} or above', say.rules.holding_source)}"
            )
            mend = "Set the oven higher, and let its range begin no lower: `40 min in the oven at 80 C (70 to 95 C)`."
            place, why, about = file.places.of((*loc, "keeps")), task.care.by.beside(""), About((task.node.id,))
            found.append(Snag("food 6", Weight.STOP, message, mend, place, safety=True, source=why, about=about))
    return list(dict.fromkeys(found))


def what_a_tool_cooks_is_hot_enough(file: PlanFile) -> list[Snag]:
    """food 2: a bath whose heat is not said, or a slow cooker set to keep warm, in which food that spoils is cooked.
    Source: USDA FSIS, slow cookers and food safety, from memory; the rule set's `hot_holding`."""
    say, found = Figures(file), list[Snag]()
    limit = say.rules.hot_holding
    # What its middle reaches says both, and is asked there.
    asked = {each.by.node.id for work in dishes(file) for each in not_cooked(say, work) if each.by is not None}
    for task in file.filled.tasks.values():
        for way, _ in _ways(task):
            name, where = task.node.name, way.where
            if not (task.care.spoils and in_hot_tool(where, name)) or task.node.id in asked:
                continue
            if tool_is_hot(task.care, where, name, say.rules) is not None:
                continue
            message = f"{name} does not say how hot it is kept; {say.asks(f'{say.limit(limit)} or above')}"
            figure = f"{limit.fahrenheit:g} F" if say.fahrenheit else f"{limit.celsius:g} C"
            mend = f"Write what its middle reaches: `until: {figure}` or more. A setting to keep warm cooks nothing."
            place, about = file.places.of((*task.node.loc, "step")), About((task.node.id,))
            found.append(Snag("food 2", Weight.ASK, message, mend, place, safety=True, about=about))
    return list(dict.fromkeys(found))


def the_fridge_is_cold_enough(file: PlanFile) -> list[Snag]:
    """food 7: the fridge is warmer than cold holding. Source: the rule set's `cold_holding`."""
    say = Figures(file)
    limit, celsius = say.rules.cold_holding, file.plan.kitchen.fridge_at
    if celsius is None or limit.at_most(celsius):
        return []
    message = (
        f"the fridge is at {say.degrees(celsius)}; {say.asks(f'{say.limit(limit)} or below', say.rules.holding_source)}"
    )
    mend = "Turn it colder, and read it again with a thermometer before anything is kept in it."
    return [Snag("food 7", Weight.STOP, message, mend, file.places.of(("kitchen", "fridge at")), safety=True)]


def what_thaws_has_time_to(file: PlanFile) -> list[Snag]:
    """food 8: thawed for less time than its weight requires (stop); in cold water and not cooked at once (mind); moved
    from freezer to fridge for less than any weight requires (mind). Source: the rule set's `thaw`."""
    say = Figures(file)
    found: list[Snag] = []
    for task in file.filled.tasks.values():
        thaw = task.work.thaws if task.work is not None else None
        if thaw is None:
            found += _thaws_unsaid(file, task, say)
            continue
        in_fridge = thaw.where == "fridge"
        needed = say.rules.thaw_fridge_minutes(thaw.kilos) if in_fridge else say.rules.thaw_water_minutes(thaw.kilos)
        for way, loc in _ways(task):
            if way.takes.low < needed:
                asks = say.asks(f"{short(needed)} in the {thaw.where} for {_weight(thaw.kilos)}", say.rules.thaw.source)
                message = f"{task.node.name} may take only {short(way.takes.low)}; {asks}"
                mend = "Give it that long, or leave out `takes` and it is reckoned from the weight."
                place, about = file.places.of((*loc, "takes")), About((task.node.id,))
                found.append(Snag("food 8", Weight.STOP, message, mend, place, safety=True, about=about))
        if not in_fridge and not _cooked_at_once(file, task):
            message = (
                f"{task.node.name} thaws in cold water, and is not cooked at once; "
                f"{say.asks('it to be cooked at once', say.rules.thaw.source)}"
            )
            mend = "Let a step that cooks it follow `at once`, or thaw it in the fridge."
            place, about = file.places.of((*task.node.loc, "thaws")), About((task.node.id,))
            found.append(Snag("food 8", Weight.MIND, message, mend, place, safety=True, about=about))
    return found


def _weight(kilos: float) -> str:
    return f"{kilos:.3g} kg ({kilos / KG_A_POUND:.3g} lb)"


def _thaws_unsaid(file: PlanFile, task: Task, say: Figures) -> Iterator[Snag]:
    """A step in the fridge between freezer and heat, too short to thaw even the smallest piece. Food eaten cold is left
    out: it may be meant to stay half frozen."""
    tasks, links = file.filled.tasks, file.filled.taken_up
    makers = [tasks[link.first] for link in links if link.second == task.node.id]
    takers = [tasks[link.second] for link in links if link.first == task.node.id]
    frozen = any(maker.care.spoils and _keeps_frozen(maker) for maker in makers)
    heated = any(way.where.on_heat for taker in takers for way in taker.ways)
    least = say.rules.thaw_fridge_minutes(0.001)
    if not (frozen and heated and task.care.spoils):
        return
    for way, loc in _ways(task):
        if way.where.place == "fridge" and way.takes.low < least:
            asks = say.asks(f"{short(least)} in the fridge and more", say.rules.thaw.source)
            message = f"{task.node.name} has {short(way.takes.low)} to thaw in the fridge; {asks}"
            about = About((task.node.id,))
            mend = "Write how much thaws, `thaws: 2.2 kg in the fridge`, and leave out `takes`."
            yield Snag("food 8", Weight.MIND, message, mend, file.places.of((*loc, "takes")), safety=True, about=about)


def _keeps_frozen(task: Task) -> bool:
    return any(way.keeps is not None and way.keeps.where.place == "freezer" for way in task.ways)


def _cooked_at_once(file: PlanFile, task: Task) -> bool:
    """Whether every successor cooks it on a ring or in the oven as soon as it is thawed."""
    follow = [link for link in file.filled.taken_up if link.first == task.node.id]
    stands_for = max(way.keeps.minutes if way.keeps else 0 for way in task.ways)
    return bool(follow) and all(
        (link.most == 0 or stands_for == 0) and _cooks(file.filled.tasks[link.second]) for link in follow
    )


def _cooks(task: Task) -> bool:
    said = task.care.cooks is not None or task.care.fresh
    return said and all(way.where.on_heat for way in task.ways)


def what_keeps_cold_keeps_so_long(file: PlanFile) -> list[Snag]:
    """food 12: the plan's own `keeps: 9 days in the fridge` is longer than the rules give that food. Source: the
    rule set's `fridge_lives`, and its days for what is ready to eat."""
    say = Figures(file)
    found = []
    for task in file.filled.tasks.values():
        life = task.care.life
        for way, loc in _ways(task):
            if way.keeps is None or way.keeps.where.place != "fridge" or not task.care.spoils:
                continue
            most, head = most_days(say, life), f"{life}: " if life else ""
            if most is not None and way.keeps.minutes > most[0] * DAY_MINUTES:
                message = (
                    f"{task.node.name} is said to keep {short(way.keeps.minutes)} in the fridge; "
                    f"{say.rules.title} give {head}{most[0]:g} days at most [{most[1]}]"
                )
                mend = "Make it later, eat it sooner, or freeze it."
                place, why, about = file.places.of((*loc, "keeps")), task.care.by.beside(""), About((task.node.id,))
                found.append(Snag("food 12", Weight.MIND, message, mend, place, safety=True, source=why, about=about))
    return list(dict.fromkeys(found))


def most_days(say: Figures, life: str | None) -> tuple[float, str] | None:
    """The most days a food may stay in the fridge, with the source; None if the set gives none for it."""
    chart = say.rules.fridge_lives.get(life) if life is not None else None
    if chart is not None:
        return chart.upper_days, chart.source
    if say.rules.ready_to_eat_days is not None:
        return say.rules.ready_to_eat_days, say.rules.ready_to_eat_source
    return None
