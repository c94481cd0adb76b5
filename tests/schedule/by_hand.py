"""Kitchens and timetables written by hand, in minutes from an origin: what is read off one needs no solver."""

from collections.abc import Sequence
from typing import Any

from board.facts.heat import OvenRates, cooling_constant
from board.schedule.problem import Hand, Job, Order, OvenFacts, OvenUse, Part, Problem, Resource, Way
from board.schedule.solution import Solution
from tests.conftest import UTC_DAY

RATES = OvenRates(10.0, cooling_constant(25, 200, 120))  # 10 °C a minute, and from 200 to 120 °C in 25 minutes
ALWAYS = ((0, 1000),)


def job(id_: str, minutes: int, parts: Sequence[Part] | None = None, **way: Any) -> Job:
    """Somebody works on it all the time unless told otherwise."""
    whole = (Part(0, minutes, "all"),) if minutes else ()
    return Job(
        id_, (Way(0, way.pop("lane", "worktop"), minutes, whole if parts is None else tuple(parts), **way),), (0,)
    )


def follows(first: int, second: int, least: int = 0, *, firm: bool = True) -> Order:
    return Order(first, second, least, None, firm)


def kitchen(*jobs: Job, **more: Any) -> Problem:
    """One pair of hands, one oven of two shelves, three rings."""
    usual: dict[str, Any] = {
        "orders": (),
        "resources": (Resource("rings", 3),),
        "ovens": (OvenFacts("oven", 2, RATES),),
        "hands": (Hand("host", ALWAYS, ALWAYS),),
        "servings": (),
    }
    return Problem(UTC_DAY, 1000, jobs, **{**usual, **more})


def solved(*starts: int, who: Sequence[int | None] | None = None, kept: Sequence[bool] | None = None) -> Solution:
    """Hands on nothing, and everything kept where it should be, unless told otherwise."""
    hands, all_kept = who or tuple(None for _ in starts), tuple(True for _ in starts)
    crews = tuple(() if hand is None else (hand,) for hand in hands)
    return Solution(starts, tuple(0 for _ in starts), crews, tuple(kept or all_kept), (), 0.0)


def baked(want: int, *, shelves: int = 1, within: int = 10, off: bool = False) -> OvenUse:
    """At so many °C, give or take."""
    return OvenUse(0, shelves, want - within, want, want + within, off)
