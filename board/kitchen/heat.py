"""How long an oven takes from one setting to another. °C and minutes.

Heating is taken as linear in time, cooling as Newton's law T = Ta + (T0 − Ta)·e^(−kt) with the door shut.
The default figures are common practice, no source: about 15 min from cold to 175 °C (350 °F), and 25 min to fall
from 200 to 120 °C. A plan's own figures for its oven go before them.
"""

import math
from dataclasses import dataclass

ROOM_CELSIUS = 20.0
HEATS_MINUTES, HEATS_TO = 15, 175.0
COOLS_MINUTES, COOLS_FROM, COOLS_TO = 25, 200.0, 120.0


@dataclass(frozen=True, slots=True)
class OvenRates:
    """Degrees gained a minute while heating, and Newton's constant k a minute while cooling."""

    heating: float
    cooling: float


def heating_rate(minutes: float, start: float, end: float) -> float:
    """Degrees a minute. Raises ValueError when it would not rise."""
    if minutes <= 0 or end <= start:
        raise ValueError("heating must rise over a time above zero")
    return (end - start) / minutes


def cooling_constant(minutes: float, start: float, end: float, room: float = ROOM_CELSIUS) -> float:
    """k a minute from one pair of readings. Raises ValueError when it would not fall towards the room's warmth."""
    if minutes <= 0 or not room < end < start:
        raise ValueError(f"cooling must fall, and stay above the room's {room:g} C")
    return math.log((start - room) / (end - room)) / minutes


def default_rates() -> OvenRates:
    return OvenRates(
        heating_rate(HEATS_MINUTES, ROOM_CELSIUS, HEATS_TO),
        cooling_constant(COOLS_MINUTES, COOLS_FROM, COOLS_TO),
    )


def minutes_between(rates: OvenRates, start: float, end: float, room: float = ROOM_CELSIUS) -> float:
    """Minutes for the oven to go from one temperature to the other. Infinite below the room's warmth."""
    if end >= start:
        return (end - start) / rates.heating
    if end <= room:
        return math.inf
    return math.log((start - room) / (end - room)) / rates.cooling
