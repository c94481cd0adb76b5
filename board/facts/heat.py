"""Newton's law of cooling, and how long an oven takes from one setting to another. °C and minutes.

An oven's heating is taken as linear in time, cooling as Newton's law T = Ta + (T0 − Ta)·e^(−kt), with the door shut
or ajar.
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
    """Degrees gained a minute while heating, and Newton's constant k a minute while cooling.

    `ajar`: k with the door ajar; None where it is not known, and nothing is then planned with the door ajar.
    """

    heating: float
    cooling: float
    ajar: float | None = None


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


def minutes_to_fall(constant: float, start: float, end: float, room: float = ROOM_CELSIUS) -> float:
    """Minutes from `start` down to `end` by Newton's law; 0 when it is there, infinite when the room is no colder."""
    if end >= start:
        return 0.0
    return math.log((start - room) / (end - room)) / constant if end > room else math.inf


def fallen_to(constant: float, start: float, minutes: float, room: float = ROOM_CELSIUS) -> float:
    """°C left of `start` after so many minutes by Newton's law."""
    return room + (start - room) * math.exp(-constant * minutes)


def default_rates() -> OvenRates:
    return OvenRates(
        heating_rate(HEATS_MINUTES, ROOM_CELSIUS, HEATS_TO),
        cooling_constant(COOLS_MINUTES, COOLS_FROM, COOLS_TO),
    )


def minutes_between(rates: OvenRates, start: float, end: float, room: float = ROOM_CELSIUS) -> float:
    """Minutes for the oven to go from one temperature to the other, the door ajar where it may be.

    Infinite below the room's warmth.
    """
    if end >= start:
        return (end - start) / rates.heating
    return minutes_to_fall(max(rates.cooling, rates.ajar or 0.0), start, end, room)


def celsius_after(
    rates: OvenRates, start: float, minutes: float, *, ajar: bool = False, room: float = ROOM_CELSIUS
) -> float:
    """What is left of the heat so many minutes after the oven was switched off, °C."""
    constant = rates.ajar if ajar and rates.ajar is not None else rates.cooling
    return fallen_to(constant, start, minutes, room)


def minutes_to_reheat(rates: OvenRates, left_at: float, gap: float, end: float) -> int:
    """Whole minutes before the end of a gap at which an oven switched off at `left_at` °C is switched on again,
    to stand at `end` by then. It has cooled until then, and what heat is left is counted. More than `gap` where
    the gap is too short. A hotter oven than wanted cools on by itself.
    """
    minutes = 0
    while minutes <= gap and minutes_between(rates, celsius_after(rates, left_at, gap - minutes), end) > minutes + 1e-6:
        minutes += 1
    return minutes
