"""When each pair of hands is away: the plan's words → intervals in UTC. Pure.

What is tied to something that happens goes by the plan's own times. What has only a length is put into the hours of the
meal it is called by, and told.
"""

from dataclasses import dataclass
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from board.facts.meals import meal_hours
from board.facts.phrases import words_of
from board.plan.model.model import Plan
from board.plan.phrases.away import Away, Happening
from board.plan.phrases.durations import short
from board.plan.phrases.phrase import near
from board.plan.phrases.when import Day, clock_of, instant, stretch
from board.plan.places import Loc
from board.plan.resolve.course_times import eaten_minutes, wanted_moments
from board.plan.resolve.fault import Fault, name_key
from board.plan.resolve.hours import Interval, day_of, hours_of, less
from board.plan.resolve.nodes import ARRIVE
from board.plan.resolve.trips import shopper, trips

STEP = 15  # minutes between the starts that are tried for a meal
SETTLED_BEFORE = 30  # minutes before the guests come, a meal that day is over


@dataclass(frozen=True, slots=True)
class Absence:
    """One time away. `tied`: it goes by when the guests come. `chosen`: the program took the time."""

    what: str
    start: datetime
    end: datetime
    tied: bool = False
    chosen: bool = False


def absences(plan: Plan, name: str) -> list[Absence]:
    """Of one person, in the order of the plan. Raises nothing for a plan without faults."""
    given = plan.hands[name].away
    found = {what: each for what, away in given.items() if (each := _told(plan, what, away)) is not None}
    for what, away in given.items():
        if what not in found:
            found[what] = _at_a_meal(plan, name, what, away, [(each.start, each.end) for each in found.values()])
    return [found[what] for what in given]


def free_of(plan: Plan, name: str, *, tied: bool = True) -> list[Interval]:
    """One person's hours minus their absences, in order; touching intervals are joined. Without `tied`, those that go
    by the guests' coming are not taken off."""
    gone = [(each.start, each.end) for each in absences(plan, name) if tied or not each.tied]
    return less(hours_of(plan, name), gone)


def away_faults(plan: Plan) -> list[Fault]:
    """Times away that go by nothing in the plan, or of which nobody knows the day."""
    found = []
    for name, hand in plan.hands.items():
        for what, away in hand.away.items():
            loc: Loc = ("hands", name, "away", what)
            happens = away.from_ or away.before
            if happens is not None and name_key(happens.event) not in _happenings(plan):
                found.append(_unknown(plan, happens, loc))
            elif happens is None and away.start is None and _day(plan, name, what, away) is None:
                message = f"{what!r} is {short(away.length or 0)} long, and {name} has hours on several days or none"
                day = next(iter(hand.hours), "fri")
                mend = (
                    f"Write the day, `{what}: {day}, {short(away.length or 0)}`, or the times, `{day} 18:30 - 19:00`."
                )
                found.append(Fault("plan 6", message, mend, loc))
    return found


def _unknown(plan: Plan, happens: Happening, loc: Loc) -> Fault:
    course = plan.courses[-1].course
    known = [ARRIVE, *(f"{each.course} {done}" for each in plan.courses for done in ("served", "cleared"))]
    message = f"nothing that happens is called {happens.event!r}.{near(happens.event, known)}"
    return Fault("plan 8", message, f"Write `{ARRIVE}`, `{course} served` or `{course} cleared`.", loc)


def _told(plan: Plan, what: str, away: Away) -> Absence | None:
    """Where the plan says from when to when; None: only for how long."""
    happens = away.from_ or away.before
    if happens is not None:
        at = _at(plan, happens)
        length = timedelta(minutes=away.length or 0)
        tied = name_key(happens.event) in _ARRIVAL
        return Absence(what, at, at + length, tied) if away.from_ else Absence(what, at - length, at, tied)
    if away.start is None:
        return None
    start, end = stretch((away.day or Day(days_before=0)).on(plan.date), away, ZoneInfo(plan.zone))
    return Absence(what, start, end)


_ARRIVAL = frozenset(map(name_key, (ARRIVE, f"the {ARRIVE}", "guests' arrival", "arrival", "arrive")))


def _happenings(plan: Plan) -> frozenset[str]:
    """All that can be named, as `name_key` has it."""
    return _ARRIVAL | {
        name_key(words) for each in plan.courses for words in (*_served(each.course), *_cleared(each.course))
    }


def _served(course: str) -> tuple[str, ...]:
    return (f"{course} served", f"{course} is served", f"serve {course}")


def _cleared(course: str) -> tuple[str, ...]:
    return (f"{course} cleared", f"{course} is cleared", f"clear {course}")


def _at(plan: Plan, happens: Happening) -> datetime:
    """By the plan's own times: a course that goes out late is not waited for."""
    key, later = name_key(happens.event), timedelta(minutes=happens.minutes)
    for course, wanted in zip(plan.courses, wanted_moments(plan), strict=True):
        if key in map(name_key, _served(course.course)):
            return wanted + later
        if key in map(name_key, _cleared(course.course)):
            return wanted + timedelta(minutes=eaten_minutes(course)) + later
    return instant(plan.date, plan.arrive, ZoneInfo(plan.zone)) + later


def _day(plan: Plan, name: str, what: str, away: Away) -> date | None:
    """The day of a meal: the one it is given, or called by, or the only one with hours."""
    if away.day is not None:
        return away.day.on(plan.date)
    words = words_of(what)
    for here in range(len(words)):
        for many in (3, 2, 1):
            try:
                return day_of(plan, " ".join(words[here : here + many]).replace("night before", "day before"))
            except ValueError:
                continue
    days = {day_of(plan, word) for word, spans in plan.hands[name].hours.items() if spans}
    return days.pop() if len(days) == 1 else None


def _at_a_meal(plan: Plan, name: str, what: str, away: Away, gone: list[Interval]) -> Absence:
    """Within the hours of its meal, where that person is at home and nothing else is: half an hour in if it can be,
    then as near to that as can be."""
    zone, length = ZoneInfo(plan.zone), timedelta(minutes=away.length or 0)
    day = _day(plan, name, what, away) or plan.date
    opens, shuts = meal_hours(what)
    begin, last = instant(day, clock_of(opens), zone), instant(day, clock_of(shuts), zone)
    arrive = instant(plan.date, plan.arrive, zone)
    if day == plan.date:
        last = min(last, arrive - timedelta(minutes=SETTLED_BEFORE))
        begin = min(begin, last - length)
    best = max(begin, min(begin + timedelta(minutes=30), last - length))
    steps = max(0, int((last - length - begin) / timedelta(minutes=STEP))) + 1
    starts = sorted({begin + timedelta(minutes=STEP * n) for n in range(steps)} | {best}, key=lambda at: abs(at - best))
    out = [*gone, *((trip.start, trip.end) for trip in trips(plan) if name == shopper(plan))]
    free = less(hours_of(plan, name), out)
    start = next((at for at in starts if any(a <= at and at + length <= b for a, b in free)), best)
    return Absence(what, start, start + length, chosen=True)
