"""Newton's law of cooling, and how long an oven takes between settings. Pure. °C and minutes.

Heating is taken as linear in time, cooling as Newton's law T = Ta + (T0 − Ta)·e^(−kt), with the door shut or ajar. The
default figures are common practice, no source: about 15 min from cold to 175 °C (350 °F), and 25 min to fall from 200
to 120 °C. A plan's own oven figures override them.
"""

import math
from dataclasses import dataclass

ROOM_CELSIUS = 20.0
HEATS_MINUTES, HEATS_TO = 15, 175.0
COOLS_MINUTES, COOLS_FROM, COOLS_TO = 25, 200.0, 120.0


@dataclass(frozen=True, slots=True)
class OvenRates:
    """°C gained per minute while heating, and Newton's constant k per minute while cooling.

    `ajar`: k with the door ajar; None if unknown, and then nothing is planned with the door ajar.
    """

    heating: float
    cooling: float
    ajar: float | None = None


def heating_rate(minutes: float, start: float, end: float) -> float:
    """°C per minute. Raises ValueError if it would not rise."""
    if minutes <= 0 or end <= start:
        raise ValueError("heating must rise over a time above zero")
    return (end - start) / minutes


def cooling_constant(minutes: float, start: float, end: float, room: float = ROOM_CELSIUS) -> float:
    """k per minute from one pair of readings. Raises ValueError if it does not fall, or not above room temperature."""
    if minutes <= 0 or not room < end < start:
        raise ValueError(f"cooling must fall, and stay above the room's {room:g} C")
    return math.log((start - room) / (end - room)) / minutes


def minutes_to_fall(constant: float, start: float, end: float, room: float = ROOM_CELSIUS) -> float:
    """Minutes from `start` down to `end` by Newton's law; 0 if already there, infinite if the room is no colder."""
    if end >= start:
        return 0.0
    return math.log((start - room) / (end - room)) / constant if end > room else math.inf


def fallen_to(constant: float, start: float, minutes: float, room: float = ROOM_CELSIUS) -> float:
    """°C after this many minutes from `start`, by Newton's law."""
    return room + (start - room) * math.exp(-constant * minutes)


def default_rates() -> OvenRates:
    return OvenRates(
        heating_rate(HEATS_MINUTES, ROOM_CELSIUS, HEATS_TO),
        cooling_constant(COOLS_MINUTES, COOLS_FROM, COOLS_TO),
    )


def minutes_between(rates: OvenRates, start: float, end: float, room: float = ROOM_CELSIUS) -> float:
    """Minutes for the oven to go from one temperature to the other, with the door ajar if allowed.

    Infinite below room temperature.
    """
    if end >= start:
        return (end - start) / rates.heating
    return minutes_to_fall(max(rates.cooling, rates.ajar or 0.0), start, end, room)


def celsius_after(
    rates: OvenRates, start: float, minutes: float, *, ajar: bool = False, room: float = ROOM_CELSIUS
) -> float:
    """Oven temperature this many minutes after switching off, °C."""
    constant = rates.ajar if ajar and rates.ajar is not None else rates.cooling
    return fallen_to(constant, start, minutes, room)


def minutes_to_reheat(rates: OvenRates, left_at: float, gap: float, end: float) -> int:
    """Whole minutes before the end of a gap at which to switch an oven, left at `left_at` °C, back on so that it is at
    `end` in time. Counts the heat still left. More than `gap` if the gap is too short. An oven hotter than wanted just
    cools on."""
    minutes = 0
    while minutes <= gap and minutes_between(rates, celsius_after(rates, left_at, gap - minutes), end) > minutes + 1e-6:
        minutes += 1
    return minutes
