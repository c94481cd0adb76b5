"""A set of food-safety rules as data, and its verdicts. Pure. °C, minutes, days, kg.

The limits are those published for the place a set is named for. Local codes, the label and licensed practice override
them.
"""

import math
from collections.abc import Iterable, Mapping
from typing import Literal, NamedTuple

import msgspec

from board.facts.limits import (
    EXACT,
    Cook,
    CoolingStage,
    Degrees,
    FridgeLife,
    OutLimit,
    OutRule,
    Reheat,
    RoastHold,
    Thaw,
    TimeAlone,
)
from board.facts.units import GRAMS

KG_A_POUND = GRAMS["lb"] / 1000
DAY_MINUTES = 24 * 60

FOOD_CLASSES: tuple[str, ...] = (
    "poultry",
    "ground meat",
    "whole cut",
    "injected meat",
    "fish",
    "eggs",
    "held eggs",
    "stuffed",
    "leftovers",
    "casserole",
)
READY_TO_EAT: tuple[str, ...] = (
    "soup or stew",
    "cooked meat or poultry",
    "dressed salad",
    "hard-cooked eggs",
    "custard",
    "other cooked food",
)
LIFE_CLASSES: tuple[str, ...] = (
    *READY_TO_EAT,
    "raw whole cut",
    "raw poultry",
    "raw ground meat",
    "raw fish",
    "raw egg whites or yolks",
)

Verdict = Literal["fine", "mind", "stop"]


class RuleSet(msgspec.Struct, frozen=True):
    """All limits of one set. A food class without a figure is reported, never taken for safe."""

    name: str
    title: str
    cook: Mapping[str, Cook]
    roasts: tuple[RoastHold, ...]
    roasts_source: str
    roast_holding: Degrees | None  # hot holding of a whole roast cooked by that table; None: as all else
    roast_holding_source: str
    danger_low: Degrees
    danger_high: Degrees
    danger_source: str
    hot_holding: Degrees
    cold_holding: Degrees
    holding_source: str
    reheat: Reheat
    out: OutRule
    time_alone: TimeAlone | None
    cooling: tuple[CoolingStage, ...]
    from_room_minutes: int  # down to the last stage's end, for food made from ingredients at room temperature
    from_room_source: str
    fridge_lives: Mapping[str, FridgeLife]
    ready_to_eat_days: int | None  # day 1 is the day of preparation
    ready_to_eat_source: str
    thaw: Thaw

    def cook_for(self, food_class: str) -> Cook | None:
        """What a food class is cooked to; None if this set has no figure."""
        return self.cook.get(food_class)

    def cooked_enough(
        self,
        food_class: str,
        celsius: float,
        hold_minutes: float,
        rest_minutes: float = 0.0,
        *,
        roast: bool = False,
    ) -> bool:
        """Whether food at `celsius` in every part, held and rested this long, is cooked for its class.

        `roast`: a whole cut roasted whole may meet the roast table instead. Raises KeyError for a class that `cook_for`
        has no figure for.
        """
        if self.cook[food_class].done(celsius, hold_minutes, rest_minutes):
            return True
        seconds = self.roast_hold_seconds(celsius) if roast and food_class == "whole cut" else None
        return seconds is not None and hold_minutes + EXACT >= seconds / 60

    def roast_hold_seconds(self, celsius: float) -> int | None:
        """Seconds to hold a roast at this temperature, by the hottest row it reaches; None below all rows."""
        return min((row.seconds for row in self.roasts if row.degrees.at_least(celsius)), default=None)

    def out_limit(
        self, air_celsius: float | None, *, by_time_alone: bool = False, warmest_celsius: float | None = None
    ) -> OutLimit:
        """Minutes food may be out of hot and cold holding; unknown air counts as a usual room.

        `by_time_alone`: under a written procedure of time in place of temperature, if the set has one;
        `warmest_celsius` is then the warmest the food gets; unknown counts as warm.
        """
        alone = self.time_alone
        if by_time_alone and alone is not None:
            cool = warmest_celsius is not None and alone.never_above.at_most(warmest_celsius)
            return OutLimit(alone.cool_minutes if cool else alone.minutes, alone.source)
        hot = air_celsius is not None and not self.out.hot_air.at_most(air_celsius)
        return OutLimit(self.out.hot_air_minutes if hot else self.out.minutes, self.out.source)

    def cooled_in_time(self, minutes_to_first: float, minutes_to_last: float) -> bool:
        """Whether both stages were met; both count from the start of cooling, so 60 and 354 is in time."""
        taken = (minutes_to_first, minutes_to_last)
        return all(minutes <= stage.within_minutes + EXACT for minutes, stage in zip(taken, self.cooling, strict=True))

    def fridge_verdict(self, life_class: str, days_elapsed: float, calendar_day: int) -> Verdict:
        """The verdict after this many unfrozen days in the fridge; `calendar_day` is 1 on the day it was made.

        If the set counts calendar days, ready-to-eat food is judged by them alone. Raises KeyError for a class without
        a figure.
        """
        if self.ready_to_eat_days is not None and life_class in READY_TO_EAT:
            return "stop" if calendar_day > self.ready_to_eat_days else "fine"
        life = self.fridge_lives[life_class]
        if days_elapsed <= life.lower_days + EXACT:
            return "fine"
        return "mind" if days_elapsed <= life.upper_days + EXACT else "stop"

    def thaw_fridge_minutes(self, kg: float) -> int:
        """Minutes to thaw a piece in the fridge."""
        return _begun(kg / KG_A_POUND / self.thaw.fridge_pounds) * DAY_MINUTES

    def thaw_water_minutes(self, kg: float) -> int:
        """Minutes in cold water, changed every `thaw.change_water_minutes`; then it is cooked at once."""
        return _begun(kg / KG_A_POUND) * self.thaw.water_minutes_a_pound

    def every_limit(self) -> tuple[Degrees, ...]:
        """Every pair of figures that this set writes as one limit."""
        cooks = [each for cook in self.cook.values() for each in (cook, *cook.also)]
        return (
            *(cook.degrees for cook in cooks),
            *(row.degrees for row in self.roasts),
            *(self.danger_low, self.danger_high, self.hot_holding, self.cold_holding),
            *(self.reheat.degrees, self.out.hot_air),
            *((self.time_alone.never_above,) if self.time_alone else ()),
            *(degrees for stage in self.cooling for degrees in (stage.start, stage.end)),
        )


class Interval(NamedTuple):
    """A run of days that food was kept, in the freezer or out of it."""

    days: float
    frozen: bool = False


def fridge_days(stretches: Iterable[tuple[float, bool]]) -> float:
    """Days that count: freezing stops the clock but does not reset it. FDA Food Code 3-501.17."""
    return sum(days for days, frozen in stretches if not frozen)


def _begun(share: float) -> int:
    """Rounded up, ignoring float error."""
    return math.ceil(share - EXACT)
