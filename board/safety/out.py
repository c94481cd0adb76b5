"""What stands out too long: before it is eaten, and before what is left of it is put into the cold. Pure."""

from collections.abc import Iterator
from zoneinfo import ZoneInfo

from board import words
from board.checks.figures import Figures
from board.plan.durations import short
from board.plan.load import PlanFile
from board.plan.snag import Snag, Weight
from board.safety.clocks import DishClock, dish_clocks
from board.safety.exposure import Stretch
from board.safety.paths import Paths
from board.timetable.run_sheet import RunSheet


def dishes_are_eaten_in_time(file: PlanFile, sheet: RunSheet) -> list[Snag]:
    """F10: the clock of a dish passes its limit before it is eaten. Source: the rule set's `out_limit`."""
    say, paths = Figures(file), Paths(file, sheet)
    found = []
    for each in dish_clocks(sheet):
        if each.too_long and each.runs_out is not None:
            clock = each.clock
            when = words.day_and_clock(each.runs_out.astimezone(_zone(sheet)))
            message = (
                f"{clock.dish}: {short(each.out_minutes)} neither hot nor cold enough until it is eaten; "
                f"{say.rules.title} give {short(clock.limit_minutes)} [{clock.source}], over at {when}: "
                f"{', '.join(_spelled_out(paths, each))}"
            )
            mend = (
                f"{_longest(paths, each)} Keep it in the fridge or hot enough meanwhile, make it later, or serve it "
                "sooner. What has stood too long is thrown away. What cannot spoil is `perishable: no`."
            )
            place = file.places.of((*paths.of_dish(clock.course, clock.dish), "dish"))
            found.append(Snag("F10", Weight.STOP, message, mend, place, safety=True))
    return found


def _spelled_out(paths: Paths, each: DishClock) -> Iterator[str]:
    for stretch in each.stretches:
        yield f"{_minutes(stretch)} min {_where(paths, stretch)}"


def _where(paths: Paths, stretch: Stretch) -> str:
    slot = paths.slots[stretch.slot]
    if slot.kind == "serve":
        return "at the table" if stretch.what == "table" else "plated and carried"
    return f"kept after {slot.name}" if stretch.what == "kept" else slot.name


def _minutes(stretch: Stretch) -> int:
    return round((stretch.end - stretch.start).total_seconds() / 60)


def _longest(paths: Paths, each: DishClock) -> str:
    stretch = max(each.stretches, key=_minutes)
    return f"The longest is {_minutes(stretch)} min {_where(paths, stretch)}."


def leftovers_are_put_away_in_time(file: PlanFile, sheet: RunSheet) -> list[Snag]:
    """F11: what is left of a course is not put into the cold before the clock of a dish runs out, or nothing puts it
    there; one snag a course. Source: the rule set's `out_limit`."""
    say, paths = Figures(file), Paths(file, sheet)
    found = []
    for course in sheet.courses:
        late = [
            (each.runs_out, each)
            for each in dish_clocks(sheet)
            if each.clock.course == course.name and each.runs_out is not None and not each.too_long
        ]
        if not late:
            continue
        by, first = min(late, key=lambda pair: pair[0])
        zone = _zone(sheet)
        away = paths.slots.get(first.clock.away) if first.clock.away is not None else None
        if away is None:
            what = "no job puts it away"
            mend = (
                f"Add a job: `{{job: put away what is left, after: clear {course.name}, takes: 10 min, "
                f"puts away: {course.name}}}`; shallow, into the fridge."
            )
        else:
            what = f"{away.name} is over only at {words.clock(away.end.astimezone(zone))}"
            mend = f"Do it sooner: `after: 'clear {course.name}, at most 20 min'`."
        dishes = ", ".join(each.clock.dish for _, each in late)
        message = (
            f"what is left of {course.name}: put away by {words.day_and_clock(by.astimezone(zone))}, or throw it away; "
            f"{what}; {say.rules.title} give {short(first.clock.limit_minutes)} in all [{first.clock.source}]: {dishes}"
        )
        place = file.places.of((*paths.of_course(course.name), "course"))
        found.append(Snag("F11", Weight.MIND, message, mend, place, safety=True))
    return found


def _zone(sheet: RunSheet) -> ZoneInfo:
    return ZoneInfo(sheet.zone)
