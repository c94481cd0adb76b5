"""How fast an oven heats and cools in this kitchen, from the turns of its dial. Pure; minutes, °C.

Each turn is converted to the plan's own figure by the timetable's laws: heating by degrees a minute, cooling by
Newton's law. So all turns tell of one figure, which is learned like any length.
"""

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

from board.facts.heat import COOLS_FROM, COOLS_MINUTES, COOLS_TO, HEATS_MINUTES, HEATS_TO, ROOM_CELSIUS
from board.learning.figures import Belief, believing
from board.learning.learn import PRIOR_SPREAD, Estimate, estimate, weight
from board.plan.phrases.stations import OvenWay
from board.plan.resolve.known_again import name_key
from board.review.observe import OvenTurn, PastEvening

Way = OvenWay
OVEN_SIGMA = 0.15  # how far one turn lies from the oven's own rate; common practice, no source


@dataclass(frozen=True, slots=True)
class Rate:
    """Minutes from one temperature to another, °C."""

    minutes: float
    start: float
    end: float


DEFAULTS: dict[Way, Rate] = {
    "heats": Rate(HEATS_MINUTES, ROOM_CELSIUS, HEATS_TO),
    "cools": Rate(COOLS_MINUTES, COOLS_FROM, COOLS_TO),
}


def learn_ovens(
    rates: Mapping[tuple[str, Way], Rate],
    evenings: Iterable[PastEvening],
    known: Mapping[tuple[str, Way], frozenset[str]] | None = None,
) -> dict[tuple[str, Way], Estimate]:
    """Minutes between a rate's own temperatures, for each oven and way seen; capitals and spaces in an oven's name do
    not count. `known`: as in `learn`."""
    by_name = {(name_key(oven), way): (oven, way) for oven, way in rates}
    minutes: dict[tuple[str, Way], list[float]] = {}
    weighs: dict[tuple[str, Way], int] = {}
    seen: dict[tuple[str, Way], set[str]] = {}
    for evening in evenings:
        for turn in evening.turns:
            key = by_name.get((name_key(turn.oven), way_of(turn.before, turn.after, ajar=turn.ajar)))
            if key is None or turn.aside is not None:
                continue
            told = turn.minutes * share_of_turn(rates[key], turn)
            if told <= 0:
                continue
            if evening.mark in (known or {}).get(key, ()):
                weighs[key] = weighs.get(key, 0) + 1
                continue
            minutes.setdefault(key, []).append(told)
            seen.setdefault(key, set()).add(evening.mark)
    found: dict[tuple[str, Way], Estimate] = {}
    for key, each in minutes.items():
        learned = estimate(oven_prior(rates[key], weighs.get(key, 0)), each)
        found[key] = replace(learned, evenings=len(seen[key]))
    return found


def way_of(before: float, after: float, *, ajar: bool) -> Way:
    """Which of an oven's figures a turn between two settings is about."""
    if after >= before:
        return "heats"
    return "cools ajar" if ajar else "cools"


def oven_prior(rate: Rate, known: int) -> Belief:
    alpha = PRIOR_SPREAD + known / 2
    return believing(math.log(rate.minutes), weight(OVEN_SIGMA) + known, alpha, OVEN_SIGMA)


def share_of_turn(rate: Rate, turn: OvenTurn) -> float:
    """How many times as long as this turn the rate's own change takes; 0 where the law does not apply."""
    if turn.after > turn.before:
        return (rate.end - rate.start) / (turn.after - turn.before)
    if not ROOM_CELSIUS < turn.after < turn.before:
        return 0.0
    return _fall(rate.start, rate.end) / _fall(turn.before, turn.after)


def _fall(start: float, end: float) -> float:
    return math.log((start - ROOM_CELSIUS) / (end - ROOM_CELSIUS))
