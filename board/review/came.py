"""When the guests came, and when each course would have gone out had the kitchen held nothing up. Pure.

That the cook's work ran over is learned as lengths. What is left is people's: guests who came late or sat long, a
course that the host put off, and a timetable that had it late from the start.
"""

from collections.abc import Iterator
from datetime import date, datetime
from zoneinfo import ZoneInfo

from board.base.late import minutes_late
from board.evening.events import CoursePushed
from board.evening.state import State, first_sheet
from board.review.trace import Link, traced

GUESTS = ""  # the name of their coming, beside courses
MINUTES_PER_DAY = 24 * 60


def came(state: State) -> Iterator[tuple[str, int]]:
    """The guests and each course that went out, with the minute of the clock from midnight before the event. What was
    only said to have happened is left out."""
    sheet = first_sheet(state.history, state.sheet)
    zone, day = ZoneInfo(sheet.zone), date.fromisoformat(sheet.date)

    arrival = next((slot for slot in state.sheet.slots if slot.kind == "arrive"), None)
    if arrival is not None and (here := state.steps[arrival.id].finished) and not state.steps[arrival.id].said:
        yield GUESTS, minute_from(day, sheet.arrive, zone) + minutes_late(here, sheet.arrive)
    by_people = {each.course: sum(map(_of_people, each.links)) for each in traced(state)}
    for course in sheet.courses:
        step = state.steps.get(course.serve)
        if step is None or step.said or step.finished is None:
            continue
        not_the_kitchen = by_people.get(course.name, 0) + _put_off(state, course.name)
        not_the_kitchen += minutes_late(course.served, course.wanted)
        late = min(minutes_late(step.finished, course.wanted), not_the_kitchen)
        yield course.name, minute_from(day, course.wanted, zone) + late


def minute_from(day: date, moment: datetime, zone: ZoneInfo) -> int:
    """Minutes by the clock from midnight before that day."""
    local = moment.astimezone(zone)
    return (local.date() - day).days * MINUTES_PER_DAY + local.hour * 60 + local.minute


def _of_people(link: Link) -> int:
    """The minutes of a delay that are the guests'; a clearing that waits, waits for them."""
    waits_for_them = link.why == "guests" or (link.slot.kind == "clear" and link.why == "answered late")
    return link.minutes if waits_for_them else 0


def _put_off(state: State, course: str) -> int:
    return sum(each.minutes for each in state.history if isinstance(each, CoursePushed) and each.course == course)
