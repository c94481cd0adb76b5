"""How much there is to drink: arithmetic and starting figures. Common practice, no source, except NIAAA's. Pure.

A plan can change them all. None says how much anybody should drink.
"""

import math
from dataclasses import dataclass

from board.facts.units import GRAMS

BOTTLE_MILLILITRES = 750
WINE_GLASSES_A_BOTTLE = 5  # of 150 ml
FLUTES_A_BOTTLE = 6  # 6 to 8; the lower, so that there is enough
BEER_MILLILITRES = 330
GLASS_MILLILITRES = 200  # of a soft drink
COFFEE_CUPS_A_POUND = 50
POUND_GRAMS = GRAMS["lb"]
FRIDGE_LITRES_A_BOTTLE = 1.2
CHILL_MINUTES = 120  # white wine in a fridge

ETHANOL_GRAMS_A_MILLILITRE = 0.789  # at 20 °C; from memory
STANDARD_DRINK_GRAMS = 14  # NIAAA: one US standard drink


@dataclass(frozen=True, slots=True)
class Rate:
    """An amount per guest: once, per course, or per hour with its own first hour."""

    amount: float
    unit: str
    each: str = "once"  # once, course, hour
    first_hour: float | None = None  # with `hour`: the amount in the first hour


def servings(rate: Rate, people: int, hours: float, courses: int) -> float:
    """The total in the rate's unit for so many people, from arrival to the end."""
    if rate.each == "course":
        return rate.amount * people * courses
    if rate.each == "hour":
        first = rate.amount if rate.first_hour is None else rate.first_hour
        return people * (first * min(1.0, hours) + rate.amount * max(0.0, hours - 1))
    return rate.amount * people


def whole_bottles(glasses: float, a_bottle: float) -> int:
    return math.ceil(glasses / a_bottle - 1e-9)


def in_unit_of(drink: str, millilitres: float) -> float:
    """What is poured of one of the usual drinks, in the unit of its usual rate: glasses, bottles, cups or litres."""
    return millilitres / _USUAL_MILLILITRES[drink]


def coffee_grams(cups: float) -> float:
    return cups * POUND_GRAMS / COFFEE_CUPS_A_POUND


def ethanol_grams(millilitres: float, percent: float) -> float:
    """From alcohol by volume: 750 ml at 12 % hold 71.0 g."""
    return millilitres * percent / 100 * ETHANOL_GRAMS_A_MILLILITRE


def standard_drinks(millilitres: float, percent: float) -> float:
    """US standard drinks (NIAAA): 750 ml at 12 % are 5.07."""
    return ethanol_grams(millilitres, percent) / STANDARD_DRINK_GRAMS


_BY_THE_HOUR = Rate(1, "glass", "hour", 2)  # two drinks in the first hour, one an hour after
USUAL: dict[str, Rate] = {
    "wine": _BY_THE_HOUR,
    "sparkling": Rate(1, "glass"),
    "beer": Rate(1, "bottle"),
    "soft drinks": _BY_THE_HOUR,
    "water": Rate(0.5, "l"),
    "ice": Rate(0.6, "kg"),  # 0.5 to 0.7 kg
    "coffee": Rate(1, "cup"),
}
_USUAL_MILLILITRES = {
    "wine": BOTTLE_MILLILITRES / WINE_GLASSES_A_BOTTLE, "sparkling": BOTTLE_MILLILITRES / FLUTES_A_BOTTLE,
    "beer": BEER_MILLILITRES, "soft drinks": GLASS_MILLILITRES, "water": 1000.0,
}  # fmt: skip
# What they are sold as, if different.
SOLD_AS = {"sparkling": "sparkling wine", "water": "table water", "coffee": "ground coffee"}
