"""What stands out too long: before it is eaten, and before what is left of it is put into the cold. Pure."""

from collections.abc import Iterable, Iterator
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.checks.sheet.clocks import DishClock
from board.checks.sheet.paths import Paths
from board.checks.sheet.put_away import Left, after, job_line, together
from board.checks.sheet.timed import Timed
from board.plan.edit.yaml_text import Layout, flow
from board.plan.phrases.durations import short
from board.plan.resolve.at_table import dish_spoils
from board.plan.resolve.spoils import Spoils
from board.plan.snag import About, Fix, Snag, Weight
from board.sheet import said
from board.sheet.exposure import Exposed
from board.sheet.run_sheet import Slot


def dishes_are_eaten_in_time(timed: Timed) -> list[Snag]:
    """food 10: the clock of a dish passes its limit before it is eaten; asked where nobody knows whether it spoils.
    Source: the rule set's `out_limit`."""
    paths, rules = timed.paths, timed.say.rules
    found = []
    for each in timed.clocks:
        if each.too_long and each.runs_out is not None:
            clock, loc = each.clock, paths.of_dish(each.clock.course, each.clock.dish)
            by = _spoils(timed, each)
            when = shared.day_and_clock(each.runs_out.astimezone(_zone(timed)))
            message = (
                f"{clock.dish}: {short(each.out_minutes)} neither hot nor cold enough until it is eaten; "
                f"{rules.title} give {short(clock.limit_minutes)} [{clock.source}], over at {when}: "
                f"{', '.join(spelled_out(paths, each.stretches))}"
            )
            mend = (
                f"{_longest(paths, each)} Keep it in the fridge or hot enough meanwhile, make it later, or serve it "
                "sooner. What has stood too long is thrown away. What cannot spoil is `perishable: no`."
            )
            if not by.sure:
                mend = f"Does it spoil? Write `perishable: yes` or `no`. {mend}"
            about = About(course=clock.course, dish=clock.dish)
            weight, place = Weight.STOP if by.sure else Weight.ASK, timed.file.places.of((*loc, "dish"))
            found.append(Snag("food 10", weight, message, mend, place, safety=True, source=by.beside(""), about=about))
    return found


def spelled_out(paths: Paths, stretches: Iterable[Exposed]) -> Iterator[str]:
    """`20 min cut it`, `40 min kept after cut it`."""
    for stretch in stretches:
        yield f"{_minutes(stretch)} min {_where(paths, stretch)}"


def _where(paths: Paths, stretch: Exposed) -> str:
    return said.stood(paths.slots[stretch.slot], stretch.what)


def _minutes(stretch: Exposed) -> int:
    return round((stretch.end - stretch.start).total_seconds() / 60)


def _longest(paths: Paths, each: DishClock) -> str:
    stretch = max(each.stretches, key=_minutes)
    return f"The longest is {_minutes(stretch)} min {_where(paths, stretch)}."


def leftovers_are_put_away_in_time(timed: Timed) -> list[Snag]:
    """food 11: a course's leftovers are not in the cold before a dish's clock runs out: one for each course whose job
    comes too late, and one for all courses that one more job can put away. Source: the rule set's `out_limit`."""
    paths = timed.paths
    found, forgotten = [], []
    for course in timed.sheet.courses:
        late = [
            (each.runs_out, each)
            for each in timed.clocks
            if each.clock.course == course.name and each.runs_out is not None and not each.too_long
        ]
        if not late:
            continue
        by, first = min(late, key=lambda pair: pair[0])
        away = paths.slots.get(first.clock.away) if first.clock.away is not None else None
        if away is None:
            forgotten.append(Left(course.name, by, first))
            continue
        if away.end <= by:  # before clearing: the plates stay, the platters are in
            continue
        zone = _zone(timed)
        dishes = ", ".join(each.clock.dish for _, each in late)
        message = (
            f"what is left of {course.name}: put away by {shared.day_and_clock(by.astimezone(zone))}, "
            f"or throw it away; {away.name} is over only at {shared.clock(away.end.astimezone(zone))}; "
            f"{_rule(timed, first)}: {dishes}"
        )
        mend, fix = _sooner(timed, away, Left(course.name, by, first))
        place = timed.file.places.of((*paths.of_course(course.name), "course"))
        source = _why(timed, [each for _, each in late])
        found.append(Snag("food 11", Weight.MIND, message, mend, place, safety=True, source=source, fix=fix))
    return [*found, *_forgotten(timed, forgotten)]


def _sooner(timed: Timed, away: Slot, left: Left) -> tuple[str, Fix | None]:
    """The mend for a job too late for a course: do it sooner or, if it does others too, give this course its own."""
    task = timed.file.filled.tasks.get(away.id)
    if task is not None and task.work is not None and len(task.work.puts_away) > 1:
        line = job_line(timed.sheet, [left])
        return f"Give {left.course} a job of its own, `{line}`, and take it out of `puts away` of {away.name}.", None
    takes = round((away.end - away.start).total_seconds() / 60)
    line = flow(after(timed.sheet, [left], takes), Layout())
    fix = None if task is None else Fix("put", (*task.node.loc, "after"), line)
    return f"Do it sooner: `after: {line}`.", fix


def _forgotten(timed: Timed, forgotten: list[Left]) -> Iterator[Snag]:
    """Courses whose leftovers no job puts away: one snag, with its job, for as many as one job can do."""
    zone, paths = _zone(timed), timed.paths
    for group in together(timed.sheet, forgotten):
        by_when = ", ".join(
            f"{each.course} by {shared.day_and_clock(each.by.astimezone(zone))} ({each.first.clock.dish})"
            for each in group
        )
        message = (
            f"no job puts away what is left of {by_when}; {_rule(timed, group[0].first)}; after that, throw it away"
        )
        job = job_line(timed.sheet, group)
        mend = f"Add a job: `{job}`; shallow, into the fridge."
        place = timed.file.places.of((*paths.of_course(group[0].course), "course"))
        source = _why(timed, [each.first for each in group])
        fix = Fix("add", ("jobs",), job)
        yield Snag("food 11", Weight.MIND, message, mend, place, safety=True, source=source, fix=fix)


def _spoils(timed: Timed, each: DishClock) -> Spoils:
    loc = timed.paths.of_dish(each.clock.course, each.clock.dish)
    return dish_spoils(timed.file.plan, timed.file.filled, loc)


def _why(timed: Timed, dishes: Iterable[DishClock]) -> str:
    """What in them spoils, or is taken to."""
    return "; ".join(dict.fromkeys(filter(None, (_spoils(timed, each).beside("") for each in dishes))))


def dishes_without_ingredients_have_no_clock(timed: Timed) -> list[Snag]:
    """food 16: the plan does not say what a dish is made of, or whether it spoils, so it has no clock."""
    kept = {(clock.course, clock.dish) for clock in timed.sheet.clocks}
    unsaid = {
        ("courses", c, "dishes", d): dish.dish
        for c, course in enumerate(timed.file.plan.courses)
        for d, dish in enumerate(course.dishes)
        if "ingredients" not in dish.model_fields_set
        and dish.perishable is None
        and dish.steps
        and (course.course, dish.dish) not in kept
    }
    if not unsaid:
        return []
    message = f"no ingredients are written of {', '.join(unsaid.values())}, so nobody counts how long that stands out"
    mend = "Write its ingredients; or `perishable: yes` or `no`; or `ingredients: nothing` where nobody eats of it."
    return [
        Snag("food 16", Weight.ASK, message, mend, timed.file.places.of((*next(iter(unsaid)), "dish")), safety=True)
    ]


def _rule(timed: Timed, first: DishClock) -> str:
    return f"{timed.say.rules.title} give {short(first.clock.limit_minutes)} in all [{first.clock.source}]"


def _zone(timed: Timed) -> ZoneInfo:
    return ZoneInfo(timed.sheet.zone)
