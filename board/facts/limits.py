"""The records that food-safety rule sets consist of, each with unit and source. Pure.

Temperatures are compared as read, before any rounding.
"""

from typing import NamedTuple

import msgspec

from board.facts.degrees import to_celsius

EXACT = 1e-9  # °C, minutes, days, pounds: tolerance for binary fractions only


class Degrees(msgspec.Struct, frozen=True):
    """One limit as a code writes it, in both units. Meeting either figure as written is enough."""

    fahrenheit: float
    celsius: float

    @property
    def figures(self) -> tuple[float, float]:
        """Both figures in °C, neither rounded."""
        return self.celsius, to_celsius(self.fahrenheit, "F")

    def at_least(self, celsius: float) -> bool:
        """Whether a temperature reaches this limit."""
        return celsius >= min(self.figures) - EXACT

    def at_most(self, celsius: float) -> bool:
        """Whether a temperature is within this limit."""
        return celsius <= max(self.figures) + EXACT


class Cook(msgspec.Struct, frozen=True):
    """The temperature every part of a food must reach, how long to hold it, and how long to rest afterwards.

    `also`: alternatives; one is enough.
    """

    degrees: Degrees
    hold_seconds: int
    rest_minutes: int
    source: str
    also: tuple["Cook", ...] = ()

    def done(self, celsius: float, hold_minutes: float, rest_minutes: float) -> bool:
        enough = (
            self.degrees.at_least(celsius)
            and hold_minutes + EXACT >= self.hold_seconds / 60
            and rest_minutes + EXACT >= self.rest_minutes
        )
        return enough or any(other.done(celsius, hold_minutes, rest_minutes) for other in self.also)


class RoastHold(msgspec.Struct, frozen=True):
    """A row of a roast table: held this long at this temperature or above."""

    degrees: Degrees
    seconds: int


class Reheat(msgspec.Struct, frozen=True):
    """Through the danger zone up to `degrees` within this many minutes."""

    degrees: Degrees
    within_minutes: int
    source: str


class OutRule(msgspec.Struct, frozen=True):
    """Total minutes food may be between cold and hot holding; fewer if the air is above `hot_air`."""

    minutes: int
    hot_air: Degrees
    hot_air_minutes: int
    source: str


class TimeAlone(msgspec.Struct, frozen=True):
    """Time in place of temperature: `minutes`, or `cool_minutes` if the food never exceeds `never_above`."""

    minutes: int
    cool_minutes: int
    never_above: Degrees
    source: str


class OutLimit(NamedTuple):
    minutes: int
    source: str


class CoolingStage(msgspec.Struct, frozen=True):
    """From `start` down to `end`; the minutes count from the beginning of all cooling, not of this stage."""

    start: Degrees
    end: Degrees
    within_minutes: int
    source: str


class FridgeLife(msgspec.Struct, frozen=True):
    """Days in the fridge: past the lower figure, inspect the food; past the upper, discard it."""

    lower_days: float
    upper_days: float
    source: str


class Thaw(msgspec.Struct, frozen=True):
    """In the fridge, a day per `fridge_pounds` or part of it; in cold water, minutes per pound or part of it."""

    fridge_pounds: float
    water_minutes_a_pound: int
    change_water_minutes: int
    source: str
