"""The records a set of food-safety rules is written in, each with its unit and its source. Pure.

Degrees are compared as they were read, before anything is rounded.
"""

from typing import NamedTuple

import msgspec

from board.facts.degrees import to_celsius

EXACT = 1e-9  # °C, minutes, days, pounds: room for binary fractions and for nothing else


class Degrees(msgspec.Struct, frozen=True):
    """One limit as a code writes it, in both units. It is met when either figure, as written, is met."""

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
        """Whether a temperature stays within this limit."""
        return celsius <= max(self.figures) + EXACT


class Cook(msgspec.Struct, frozen=True):
    """What every part of a food must reach, held that long there, and rested that long afterwards.

    `also`: other temperatures and times that do as well; one of them is enough.
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
    """A row of a table of roasts: held so long at that temperature or above."""

    degrees: Degrees
    seconds: int


class Reheat(msgspec.Struct, frozen=True):
    """Through the danger zone up to `degrees` within so many minutes."""

    degrees: Degrees
    within_minutes: int
    source: str


class OutRule(msgspec.Struct, frozen=True):
    """Minutes food may stand between cold and hot holding in all, fewer when the air is above `hot_air`."""

    minutes: int
    hot_air: Degrees
    hot_air_minutes: int
    source: str


class TimeAlone(msgspec.Struct, frozen=True):
    """Time in place of temperature: `minutes`, or `cool_minutes` where the food never passes `never_above`."""

    minutes: int
    cool_minutes: int
    never_above: Degrees
    source: str


class OutLimit(NamedTuple):
    minutes: int
    source: str


class CoolingStage(msgspec.Struct, frozen=True):
    """From `start` down to `end` within so many minutes from the beginning of all cooling, not of the stage."""

    start: Degrees
    end: Degrees
    within_minutes: int
    source: str


class FridgeLife(msgspec.Struct, frozen=True):
    """Days in the fridge: past the lower figure the food is looked at, past the upper it goes."""

    lower_days: float
    upper_days: float
    source: str


class Thaw(msgspec.Struct, frozen=True):
    """A day in the fridge for every `fridge_pounds` begun; in cold water so many minutes for every pound begun."""

    fridge_pounds: float
    water_minutes_a_pound: int
    change_water_minutes: int
    source: str
