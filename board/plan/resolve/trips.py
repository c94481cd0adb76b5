"""Shopping trips as jobs at fixed times; whoever goes is not at home. Pure."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime
from typing import Any
from zoneinfo import ZoneInfo

from board.plan.model.model import Plan
from board.plan.model.work import Job
from board.plan.phrases.durations import Attention, Spread
from board.plan.phrases.stations import Station
from board.plan.phrases.when import Day, Moment, Span, parse_day, stretch
from board.plan.places import Loc


@dataclass(frozen=True, slots=True)
class Trip:
    """One trip. `word`: its day as written in the plan; `start`, `end`: UTC."""

    name: str
    word: str
    day: date
    start: datetime
    end: datetime
    loc: Loc


def shopper(plan: Plan) -> str:
    """Who goes shopping: the host, or the first pair of hands."""
    return "host" if "host" in plan.hands else next(iter(plan.hands))


def trips(plan: Plan) -> list[Trip]:
    """All trips, by time."""
    return sorted((trip for trip, _ in _trips(plan)), key=lambda trip: (trip.start, trip.end))


def trip_jobs(plan: Plan) -> list[tuple[Loc, Job]]:
    """Each trip as a job, with its path in the file."""
    return [(trip.loc, _job(plan, trip)) for trip, _ in _trips(plan)]


def _trips(plan: Plan) -> Iterator[tuple[Trip, Span]]:
    zone = ZoneInfo(plan.zone)
    for word, spans in plan.shopping.items():
        day = Day.model_validate(parse_day(word)).on(plan.date)
        for number, span in enumerate(spans):
            start, end = stretch(day, span, zone)
            yield Trip(_name(word, number + 1), word, day, start, end, ("shopping", word)), span


def _name(day: str, number: int) -> str:
    return f"go shopping ({day})" if number == 1 else f"go shopping ({day}, {number})"


def _job(plan: Plan, trip: Trip) -> Job:
    zone = ZoneInfo(plan.zone)
    minutes = round((trip.end - trip.start).total_seconds() / 60)

    def moment(at: datetime) -> Moment:
        local = at.astimezone(zone)
        return Moment(day=Day(date=local.date()), clock=local.strftime("%H:%M"))

    pinned: dict[str, Any] = {
        "job": trip.name,
        "where": Station(place="worktop"),
        "takes": Spread(low=minutes, likely=minutes, high=minutes),
        "attended": Attention(whole=True),
        "after": [],
        "not before": moment(trip.start),
        "not after": moment(trip.end),
        "who": [shopper(plan)],
    }
    return Job.model_construct(**pinned)
