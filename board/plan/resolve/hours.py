"""When each pair of hands works: the plan's words → intervals in UTC."""

from datetime import date, datetime
from itertools import pairwise
from zoneinfo import ZoneInfo

from board.plan.model.model import Plan
from board.plan.phrases.when import Day, parse_day, stretch
from board.plan.resolve.trips import shopper, trips

Interval = tuple[datetime, datetime]


def day_of(plan: Plan, word: str) -> date:
    """The date that a key of `hours` means."""
    return Day.model_validate(parse_day(word)).on(plan.date)


def hours_of(plan: Plan, name: str) -> list[Interval]:
    """All working intervals of one person, in order, shopping trips included; they may touch or overlap."""
    zone = ZoneInfo(plan.zone)
    given = [
        stretch(day_of(plan, word), span, zone)
        for word, stretches in plan.hands[name].hours.items()
        for span in stretches
    ]
    return sorted([*given, *_trips_of(plan, name)])


def home_of(plan: Plan, name: str) -> list[Interval]:
    """One person's hours minus shopping trips, in order: when they are at home."""
    return less(hours_of(plan, name), _trips_of(plan, name))


def _trips_of(plan: Plan, name: str) -> list[Interval]:
    return [(trip.start, trip.end) for trip in trips(plan)] if name == shopper(plan) else []


def less(hours: list[Interval], gone: list[Interval]) -> list[Interval]:
    """What is left of intervals without others, in order; those that touch are joined."""
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
    """Whether one interval contains this whole piece. No interval ends inside the piece."""
    return any(a <= start and end <= b for a, b in stretches)
