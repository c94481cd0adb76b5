"""Whether a plan's days and hours fit together."""

from collections.abc import Iterator
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from board.base.words import bare_clock, clock
from board.plan.load import PlanFile
from board.plan.phrases.when import instant, is_odd
from board.plan.places import Loc
from board.plan.resolve.hours import Interval, day_of, hours_of
from board.plan.snag import Snag, Weight


def _working_days(file: PlanFile) -> set[date]:
    plan = file.plan
    return {day_of(plan, word) for hand in plan.hands.values() for word, spans in hand.hours.items() if spans}


def days_have_hours(file: PlanFile) -> list[Snag]:
    """time 1: a step is given to a day on which nobody has hours. time 2: nobody has hours on the day itself."""
    days = _working_days(file)
    found = []
    for task in file.filled.tasks.values():
        if task.work is not None and task.work.day is not None:
            day = task.work.day.on(file.plan.date)
            if day not in days:
                message = f"{task.node.name} is given to {day.isoformat()}, and nobody has hours on that day"
                place = file.places.of((*task.node.loc, "day"))
                found.append(
                    Snag("time 1", Weight.MIND, message, "Add hours for that day, or change the step's.", place)
                )
    if file.plan.date not in days:
        message = "nobody has hours on the day of the event"
        place = file.places.of(("hands",), key=True)
        found.append(Snag("time 2", Weight.STOP, message, "Add `on the day:` under a pair of hands.", place))
    return found


def somebody_is_there_when_guests_arrive(file: PlanFile) -> list[Snag]:
    """time 4: the guests come while nobody has hours, though somebody has on that day."""
    plan = file.plan
    if plan.date not in _working_days(file) or _covered(
        [span for name in plan.hands for span in hours_of(plan, name)], file.filled.arrive
    ):
        return []
    message = f"the guests arrive at {plan.arrive} on {plan.date.isoformat()}, when nobody has hours"
    mend = "Check the date and the hours; half past midnight belongs to the day that begins then."
    return [Snag("time 4", Weight.MIND, message, mend, file.places.of(("arrive",)))]


def somebody_is_there_to_serve(file: PlanFile) -> list[Snag]:
    """time 11: somebody has hours when the guests arrive, but nobody when a course is wanted; only the first such
    course."""
    plan = file.plan
    spans = [span for name in plan.hands for span in hours_of(plan, name)]
    if not _covered(spans, file.filled.arrive):
        return []  # time 4 says so
    for c, course in enumerate(file.filled.courses):
        if not _covered(spans, course.wanted):
            at = clock(course.wanted.astimezone(ZoneInfo(plan.zone)))
            message = f"{course.name} is wanted at {at}, when nobody has hours"
            place = file.places.of(("courses", c, "at"))
            return [
                Snag("time 11", Weight.MIND, message, "Give somebody hours until the last course is cleared.", place)
            ]
    return []


def _covered(spans: list[Interval], moment: datetime) -> bool:
    return any(start <= moment <= end for start, end in spans)


def clock_times_are_plain(file: PlanFile) -> list[Snag]:
    """time 3: a time that the clocks skip, or pass twice, on the night they change; with the one that is taken."""
    zone = ZoneInfo(file.plan.zone)
    found = []
    for loc, day, written in _written_times(file):
        odd = is_odd(day, written, zone)
        if odd == "skipped":
            taken = bare_clock(instant(day, written, zone).astimezone(zone))
            message = f"{written} does not exist on {day.isoformat()}, as the clocks go forward; {taken} is taken"
        elif odd:
            message = f"{written} comes twice on {day.isoformat()}, as the clocks go back; the first {written} is taken"
        if odd:
            mend = "Choose a time before or after the change."
            found.append(Snag("time 3", Weight.MIND, message, mend, file.places.of(loc)))
    return found


def _written_times(file: PlanFile) -> Iterator[tuple[Loc, date, str]]:
    """Every clock time of a plan with the day it falls on: a course or an end in the small hours is on the next."""
    plan = file.plan
    zone = ZoneInfo(plan.zone)
    yield ("arrive",), plan.date, plan.arrive
    for c, (course, filled) in enumerate(zip(plan.courses, file.filled.courses, strict=True)):
        if course.at.clock:
            yield ("courses", c, "at"), filled.wanted.astimezone(zone).date(), course.at.clock
    for name, hand in plan.hands.items():
        for word, spans in hand.hours.items():
            day = day_of(plan, word)
            for span in spans:
                last = day if span.end > span.start else day + timedelta(days=1)
                yield from ((("hands", name, "hours", word), *each) for each in ((day, span.start), (last, span.end)))
    for task in file.filled.tasks.values():
        work = task.work
        for key, moment in (("not before", work.not_before), ("not after", work.not_after)) if work is not None else ():
            if moment is not None:
                yield (*task.node.loc, key), moment.day.on(plan.date), moment.clock
