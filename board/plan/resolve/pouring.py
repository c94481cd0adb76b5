"""Work for the drinks poured with a course: chill them in time, open them in time. Pure."""

import math
from typing import Any

from board.facts.drinks import BOTTLE_MILLILITRES, FRIDGE_LITRES_A_BOTTLE
from board.plan.model.courses import Course
from board.plan.model.drinking import Pairing
from board.plan.model.model import Plan
from board.plan.model.work import Job, Ref
from board.plan.phrases.durations import Attention, Spread
from board.plan.phrases.stations import Keep, Station
from board.plan.phrases.when import Day
from board.plan.places import Loc

PUT_AWAY_MINUTES = 3  # to put bottles into the fridge; common practice, no source
BOTTLES_A_MINUTE = 2  # opened; common practice, no source
STANDS_OPEN_MINUTES = 30  # longest beyond what is asked for; common practice, no source
STAYS_COLD_MINUTES = 24 * 60  # in the fridge until opened; ours
ON_THE_DAY_MINUTES = 8 * 60  # anything chilled no longer than this goes into the fridge on the day; ours


def pouring_jobs(plan: Plan) -> list[tuple[Loc, Job]]:
    """Chilling and opening jobs, each with the path of the drink in the file."""
    found: list[tuple[Loc, Job]] = []
    for c, course in enumerate(plan.courses):
        for d, pairing in enumerate(course.drink):
            loc: Loc = ("courses", c, "drink", d)
            found += [(loc, job) for job in _jobs(course, pairing)]
    return found


def fridge_litres(pairing: Pairing) -> float:
    """Litres its bottles take in the fridge."""
    return round(pairing.bottles * FRIDGE_LITRES_A_BOTTLE * pairing.bottle_millilitres / BOTTLE_MILLILITRES, 1)


def _jobs(course: Course, pairing: Pairing) -> list[Job]:
    """In words as a plan has them: another step may name them. Built as they are, for a name made of two long ones may
    be longer than a host's may be."""
    jobs = []
    bottles = f"{pairing.bottles} bottle{'s' if pairing.bottles != 1 else ''}"
    serve, chill = f"serve {course.course}", f"chill the {pairing.drink} for {course.course}"
    if pairing.chilled is not None:
        fridge = Station(place="fridge", litres=fridge_litres(pairing))
        chilling: dict[str, Any] = {
            "job": chill,
            "where": fridge,
            "takes": _exactly(pairing.chilled),
            "attended": Attention(start=min(PUT_AWAY_MINUTES, pairing.chilled)),
            "keeps": Keep(minutes=STAYS_COLD_MINUTES, where=fridge),
            "before": [] if pairing.opened is not None else [Ref.model_construct(step=serve)],
            "after": [],
            "day": Day(days_before=0) if pairing.chilled <= ON_THE_DAY_MINUTES else None,
            "call": f"Into the fridge: {pairing.drink}, {bottles}",
        }
        jobs.append(Job.model_construct(**chilling))
    if pairing.opened is not None:
        wait: dict[str, Any] = {"at least": pairing.opened, "at most": pairing.opened + STANDS_OPEN_MINUTES}
        opening: dict[str, Any] = {
            "job": f"open the {pairing.drink} for {course.course}",
            "where": Station(place="front-of-house"),
            "takes": _exactly(math.ceil(pairing.bottles / BOTTLES_A_MINUTE)),
            "attended": Attention(whole=True),
            "after": [Ref.model_construct(step=chill)] if pairing.chilled is not None else [],
            "before": [Ref.model_construct(step=serve, **wait)],
            "call": f"Open the {pairing.drink}, {bottles}",
        }
        jobs.append(Job.model_construct(**opening))
    return jobs


def _exactly(minutes: int) -> Spread:
    return Spread(low=minutes, likely=minutes, high=minutes)
