"""How fast an oven heats and cools, derived again for `validate`: linear up, Newton's law down. °C and minutes.

Only the default rates, for a plan that gives none, come from `board/facts/heat.py`.
"""

import math
from dataclasses import dataclass

from board.facts.heat import COOLS_FROM, COOLS_MINUTES, COOLS_TO, HEATS_MINUTES, HEATS_TO, ROOM_CELSIUS
from board.plan.model.kitchen import Oven

LONGEST_MINUTES = 24 * 60  # ours
A_TRIFLE = 2e-3  # of a minute; a timetable is reckoned no finer
HALF_A_MINUTE, ONE_DEGREE = 0.5, 1.0  # sheets give whole minutes and whole degrees


@dataclass(frozen=True)
class OvenHeat:
    """Degrees gained a minute, and Newton's constants k a minute: door shut, and ajar (None: not known)."""

    gains: float
    shut: float
    ajar: float | None

    def left(self, celsius: float, minutes: float, *, ajar: bool = False) -> float:
        """The temperature this many minutes after switching off: Ta + (T0 − Ta)·e^(−kt)."""
        k = self.ajar if ajar and self.ajar is not None else self.shut
        return ROOM_CELSIUS + (celsius - ROOM_CELSIUS) * math.exp(-k * minutes)

    def minutes(self, start: float, end: float) -> float:
        """From one temperature to another, the door ajar where that is faster; infinite below the room's warmth."""
        if start <= end:
            return (end - start) / self.gains
        if end <= ROOM_CELSIUS:
            return math.inf
        return math.log((start - ROOM_CELSIUS) / (end - ROOM_CELSIUS)) / max(self.shut, self.ajar or 0.0)

    def is_there_in(self, minutes: float, start: float, end: float) -> bool:
        """Whether that is long enough, give or take what rounding does to a sheet."""
        nearest = min(max(end, start - ONE_DEGREE), start + ONE_DEGREE)
        return self.minutes(nearest, end) <= minutes + HALF_A_MINUTE


def whole_minutes_needed(heat: OvenHeat, start: float, end: float) -> int:
    """Whole minutes from one temperature to another; at most a day, after which it is taken to be there."""
    return math.ceil(min(heat.minutes(start, end), LONGEST_MINUTES) - A_TRIFLE)


def heat_of(oven: Oven) -> OvenHeat:
    """The oven's own figures, or the usual ones."""
    heats, cools, ajar = oven.heats, oven.cools, oven.cools_ajar
    return OvenHeat(
        gains=(heats.end - heats.start) / heats.minutes if heats else (HEATS_TO - ROOM_CELSIUS) / HEATS_MINUTES,
        shut=_k(cools.minutes, cools.start, cools.end) if cools else _k(COOLS_MINUTES, COOLS_FROM, COOLS_TO),
        ajar=_k(ajar.minutes, ajar.start, ajar.end) if ajar else None,
    )


def _k(minutes: float, start: float, end: float) -> float:
    """Newton's law solved for k."""
    return math.log((start - ROOM_CELSIUS) / (end - ROOM_CELSIUS)) / minutes
