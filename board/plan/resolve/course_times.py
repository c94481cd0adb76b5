"""Course names and times: names are unique, and times follow the guests' arrival and the written order. Pure."""

from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from board.plan.model.courses import Course
from board.plan.model.model import Plan
from board.plan.phrases.durations import MINUTES_PER_DAY
from board.plan.phrases.phrase import meant_by, near
from board.plan.phrases.when import clock_of, instant, is_small_hours, minute_of
from board.plan.places import Loc
from board.plan.resolve.fault import Fault, slug

EATEN_MINUTES = 25  # a course at the table; common practice, no source


def eaten_minutes(course: Course) -> int:
    """How long a course is likely to be eaten, in minutes; if the plan does not say, a default, or as long as the plan
    has everybody sit."""
    return course.eaten_in.likely if course.eaten_in else max(EATEN_MINUTES, course.sit or 0)


def wanted_moments(plan: Plan) -> list[datetime]:
    """When each course is to go out, in UTC. Of a plan whose courses have no faults."""
    zone = ZoneInfo(plan.zone)
    arrive = instant(plan.date, plan.arrive, zone)
    wanted: dict[str, datetime] = {}
    last = arrive
    for course in plan.courses:
        at, after = course.at.clock, course.at.after
        if at is not None:
            last_day = timedelta(days=1 if instant(plan.date, at, zone) < arrive and is_small_hours(at) else 0)
            moment = instant(plan.date + last_day, at, zone)
        else:
            assert after is not None
            start = wanted[slug(after.course)] if after.course is not None else arrive
            moment = (last if after.course_before else start) + timedelta(minutes=after.minutes)
        wanted[slug(course.course)] = last = moment
    return list(wanted.values())


def course_times(plan: Plan) -> list[Fault]:
    """Faults: duplicate names, unknown references, and courses before the guests arrive or out of order."""
    problems = []
    wanted: dict[str, int | None] = {}
    before: Course | None = None
    for c, course in enumerate(plan.courses):
        at: Loc = ("courses", c, "at")
        after = course.at.after
        if slug(course.course) in wanted:
            message = f"two courses are called {course.course!r}"
            problems.append(Fault("plan 4", message, "Give each its own name.", ("courses", c, "course")))
        if after is not None and after.course_before and before is None:
            mend = "Write a time, or `10 min after guests arrive`."
            problems.append(Fault("plan 8", "the first course has none before it", mend, at))
        if after is not None and after.course is not None and slug(after.course) not in wanted:
            known = [x.course for x in plan.courses[:c]]
            message = f"no course before this one is called {after.course!r}.{near(after.course, known)}"
            meant = (after.course, meant_by(after.course, known))
            problems.append(Fault("plan 8", message, "Name an earlier course.", at, meant))
        minute = _wanted(plan, course, wanted, before)
        problems += _too_early(plan, course, minute, before, wanted, at)
        wanted[slug(course.course)], before = minute, course
    return problems


def _wanted(plan: Plan, course: Course, wanted: dict[str, int | None], before: Course | None) -> int | None:
    """When a course is wanted, in minutes from midnight of the event's day; None if unknown."""
    arrive, after = minute_of(plan.arrive), course.at.after
    if after is None:
        clock = course.at.clock or plan.arrive
        past_midnight = minute_of(clock) < arrive and is_small_hours(clock)
        return minute_of(clock) + (MINUTES_PER_DAY if past_midnight else 0)
    name = before.course if after.course_before and before else after.course
    start = arrive if name is None else wanted.get(slug(name))
    return None if start is None else start + after.minutes


def _too_early(
    plan: Plan, course: Course, minute: int | None, before: Course | None, wanted: dict[str, int | None], at: Loc
) -> list[Fault]:
    if minute is None:
        return []
    if minute < minute_of(plan.arrive):
        message = f"{course.course} is wanted at {clock_of(minute)}, before the guests arrive at {plan.arrive}"
        return [Fault("plan 13", message, "Write a later time, or let the guests arrive earlier.", at)]
    earlier = wanted[slug(before.course)] if before else None
    if before is not None and earlier is not None and minute < earlier:
        message = f"{course.course} is wanted at {clock_of(minute)}, before {before.course} at {clock_of(earlier)}"
        return [Fault("plan 13", message, "Write the courses in the order they are served, or mend a time.", at)]
    return []
