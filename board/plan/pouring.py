"""What is poured with a course as work of the run sheet: into the fridge in time, and opened in time."""

import math

from board.kitchen.drinks import BOTTLE_MILLILITRES, FRIDGE_LITRES_A_BOTTLE
from board.plan.drinking import Pairing
from board.plan.durations import Attention, Spread
from board.plan.model import Course, Job, Plan
from board.plan.places import Loc
from board.plan.stations import Keep, Station

PUT_AWAY_MINUTES = 3  # to put bottles into the fridge; common practice, no source
BOTTLES_A_MINUTE = 2  # opened; common practice, no source
STANDS_OPEN_MINUTES = 30  # no longer than this beyond what is asked for; common practice, no source
STAYS_COLD_MINUTES = 24 * 60


def pouring_jobs(plan: Plan) -> list[tuple[Loc, Job]]:
    """Chilling and opening, each with the place in the file of what asks for it."""
    found: list[tuple[Loc, Job]] = []
    for c, course in enumerate(plan.courses):
        for d, pairing in enumerate(course.drink):
            loc: Loc = ("courses", c, "drink", d)
            found += [(loc, job) for job in _jobs(course, pairing)]
    return found


def chilling_name(course: Course, pairing: Pairing) -> str:
    return f"chill the {pairing.drink} for {course.course}"


def opening_name(course: Course, pairing: Pairing) -> str:
    return f"open the {pairing.drink} for {course.course}"


def fridge_litres(pairing: Pairing) -> float:
    """The room its bottles take."""
    return round(pairing.bottles * FRIDGE_LITRES_A_BOTTLE * pairing.bottle_millilitres / BOTTLE_MILLILITRES, 1)


def _jobs(course: Course, pairing: Pairing) -> list[Job]:
    jobs = []
    serve = {"step": f"serve {course.course}"}
    if pairing.chilled is not None:
        fridge = Station(place="fridge", litres=fridge_litres(pairing))
        chill = {
            "job": chilling_name(course, pairing),
            "on": fridge,
            "takes": _exactly(pairing.chilled),
            "attended": Attention(start=min(PUT_AWAY_MINUTES, pairing.chilled)),
            "keeps": Keep(minutes=STAYS_COLD_MINUTES, where=fridge),
            "before": [] if pairing.opened is not None else [serve],
            "after": [],
            "call": f"{pairing.drink} into the fridge ({_bottles(pairing)})",
        }
        jobs.append(Job.model_validate(chill))
    if pairing.opened is not None:
        opening = {
            "job": opening_name(course, pairing),
            "on": Station(place="front-of-house"),
            "takes": _exactly(math.ceil(pairing.bottles / BOTTLES_A_MINUTE)),
            "attended": Attention(whole=True),
            "after": [{"step": chilling_name(course, pairing)}] if pairing.chilled is not None else [],
            "before": [{**serve, "at least": pairing.opened, "at most": pairing.opened + STANDS_OPEN_MINUTES}],
            "call": f"Open the {pairing.drink} ({_bottles(pairing)})",
        }
        jobs.append(Job.model_validate(opening))
    return jobs


def _bottles(pairing: Pairing) -> str:
    return f"{pairing.bottles} bottle{'s' if pairing.bottles != 1 else ''}"


def _exactly(minutes: int) -> Spread:
    return Spread(low=minutes, likely=minutes, high=minutes)
