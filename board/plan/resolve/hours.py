"""When each pair of hands has hours: the plan's words → stretches in UTC."""

from datetime import date, datetime
from itertools import pairwise
from zoneinfo import ZoneInfo

from board.plan.model.model import Plan
from board.plan.phrases.when import Day, parse_day, stretch
from board.plan.resolve.trips import shopper, trips

Interval = tuple[datetime, datetime]


def day_of(plan: Plan, word: str) -> date:
    """The date a key of `hours` means."""
    return Day.model_validate(parse_day(word)).on(plan.date)


def hours_of(plan: Plan, name: str) -> list[Interval]:
    """All stretches of one pair of hands, in order; they may touch or overlap. A trip to the shops is one of them."""
    zone = ZoneInfo(plan.zone)
    given = [
        stretch(day_of(plan, word), span, zone)
        for word, stretches in plan.hands[name].hours.items()
        for span in stretches
    ]
    return sorted([*given, *_trips_of(plan, name)])


def home_of(plan: Plan, name: str) -> list[Interval]:
    """One person's hours less the trips to the shops, in order: when they are in the house."""
    return _less(hours_of(plan, name), _trips_of(plan, name))


def _trips_of(plan: Plan, name: str) -> list[Interval]:
    return [(trip.start, trip.end) for trip in trips(plan)] if name == shopper(plan) else []


def free_of(plan: Plan, name: str) -> list[Interval]:
    """One person's hours less what they are away for, in order, each stretch as long as it goes."""
    zone = ZoneInfo(plan.zone)
    gone = [stretch(span.day.on(plan.date), span, zone) for span in plan.hands[name].away.values()]
    return _less(hours_of(plan, name), gone)


def _less(hours: list[Interval], gone: list[Interval]) -> list[Interval]:
    edges = sorted({moment for each in (*hours, *gone) for moment in each})
    found: list[Interval] = []
    for start, end in pairwise(edges):
        if not _within(hours, start, end) or _within(gone, start, end):
            continue
        if found and found[-1][1] == start:
            found[-1] = (found[-1][0], end)
        else:
            found.append((start, end))
    return found


def _within(stretches: list[Interval], start: datetime, end: datetime) -> bool:
    """Whether any of them holds all of a piece that none of their ends cuts."""
    return any(a <= start and end <= b for a, b in stretches)
