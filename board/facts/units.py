"""Kitchen measures in grams and millilitres. The two standards for cups and spoons are never mixed. Pure.

Weights: 1 lb = 453.59237 g exactly (NIST Handbook 44, appendix C). Volumes: either the exact US customary measures (1
US gallon = 231 in³, 1 in = 2.54 cm; the same appendix) or the rounded kitchen table (NIST Metric Kitchen). A pint or
quart is that of the US in US measures, and the imperial one elsewhere: an eighth and a quarter of a gallon of 4.54609 l
(UK Units of Measurement Regulations 1995, from memory).
"""

from collections.abc import Mapping
from dataclasses import dataclass

GRAMS: Mapping[str, float] = {"g": 1.0, "kg": 1000.0, "oz": 28.349523125, "lb": 453.59237}
METRIC_MILLILITRES: Mapping[str, float] = {"ml": 1.0, "cl": 10.0, "dl": 100.0, "l": 1000.0}
# The same in both standards: 1 cup = 8 fl oz = 16 tbsp = 48 tsp.
CUPS: Mapping[str, float] = {"cup": 1.0, "fl oz": 1 / 8, "tbsp": 1 / 16, "tsp": 1 / 48}
PINTS: Mapping[str, float] = {"pint": 1.0, "quart": 2.0}
OF_MANY_SIZES = ("cup", "fl oz", *PINTS)  # one size here, another there
_PINT_IN_CUPS, _IMPERIAL_PINT = 2, 4546.09 / 8


@dataclass(frozen=True, slots=True)
class Standard:
    """What a cup holds, and with it every spoon."""

    name: str
    source: str
    cup_millilitres: float


EXACT = Standard("US customary measures, exact", "NIST Handbook 44, appendix C", 231 * 2.54**3 / 16)
ROUNDED = Standard("rounded kitchen measures: a cup of 240 ml, a spoon of 15 or 5 ml", "NIST Metric Kitchen", 240.0)


@dataclass(frozen=True, slots=True)
class Volume:
    """Millilitres by one standard; adding across standards raises ValueError."""

    millilitres: float
    standard: Standard

    def __add__(self, other: "Volume") -> "Volume":
        if other.standard != self.standard:
            raise ValueError(f"{self.standard.name} and {other.standard.name} are not added up")
        return Volume(self.millilitres + other.millilitres, self.standard)


def grams(amount: float, unit: str) -> float | None:
    """Grams; None if it is no unit of weight."""
    return amount * GRAMS[unit] if unit in GRAMS else None


def volume(amount: float, unit: str, standard: Standard) -> Volume | None:
    """None if it is no unit of volume. Metric units are the same in every standard."""
    if unit in METRIC_MILLILITRES:
        return Volume(amount * METRIC_MILLILITRES[unit], standard)
    if unit in CUPS:
        return Volume(amount * CUPS[unit] * standard.cup_millilitres, standard)
    if unit in PINTS:
        pint = _PINT_IN_CUPS * standard.cup_millilitres if standard is EXACT else _IMPERIAL_PINT
        return Volume(amount * PINTS[unit] * pint, standard)
    return None


def cups(amount: float, unit: str, standard: Standard) -> float | None:
    """Cups as in weight tables; for metric amounts and imperial pints, the exact cup."""
    if unit in CUPS:
        return amount * CUPS[unit]
    held = volume(amount, unit, standard)
    return held.millilitres / EXACT.cup_millilitres if held is not None else None
