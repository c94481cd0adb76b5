"""Probe temperatures: parsed as typed, converted from °F to °C, and whether they should rise or fall. Pure."""

import re
from typing import Literal

from board.facts.heat import ROOM_CELSIUS

# Range of a kitchen probe, °C, from deep frozen to boiling sugar; common practice, no source.
PROBE_COLDEST, PROBE_HOTTEST = -60.0, 300.0
HOT, FAR_ABOVE = 50.0, 15.0  # °C: wanted hot; a core is seldom this far above its target; common practice, no source
WATER_BOILS = 100.0  # °C at sea level; food that holds water gets no hotter

Trouble = Literal["nonsense", "which-unit", "no-probe"]

_READING = re.compile(r"([+-]?[0-9]{1,4}(?:[.,][0-9]{1,3})?)\s*(?:°|º|deg(?:rees)?)?\s*([CF])?", re.IGNORECASE)


def to_celsius(degrees: float, unit: str) -> float:
    """°F → °C, exact by definition (NIST SP 811, B.8); °C is returned unchanged. Not rounded."""
    return (degrees - 32) * 5 / 9 if unit.upper() == "F" else degrees


def read_degrees(text: str, *, fahrenheit: bool, wanted: float) -> float | Trouble:
    """A reading as typed (`74`, `74 C`, `165.2f`, `73,9 °C`) in °C, or what is wrong; a bare figure is in the plan's
    unit.

    A bare figure most likely in the other unit is queried: in a °C plan, far above a hot target or above boiling; in a
    °F plan, frozen for a cold target. Misread, either would pass unsafe food as done. So is one in a °F plan that says
    done in °C, and that the food is lukewarm in °F: misread, it would keep what is done on the heat.
    """
    match = _READING.fullmatch(text.strip().replace("\N{MINUS SIGN}", "-"))
    if match is None:
        return "nonsense"
    degrees = float(match[1].replace(",", "."))
    celsius = to_celsius(degrees, match[2] or ("F" if fahrenheit else "C"))
    if match[2] is None and _is_of_the_other_unit(degrees, celsius, fahrenheit, wanted):
        return "which-unit"
    return celsius if PROBE_COLDEST <= celsius <= PROBE_HOTTEST else "no-probe"


def _is_of_the_other_unit(typed: float, celsius: float, fahrenheit: bool, wanted: float) -> bool:
    if fahrenheit:
        done = WATER_BOILS >= wanted >= HOT and wanted <= typed <= wanted + FAR_ABOVE
        return done or celsius < 0 <= wanted <= ROOM_CELSIUS
    return celsius > WATER_BOILS >= wanted or (celsius > wanted + FAR_ABOVE and WATER_BOILS >= wanted >= HOT)


def is_cooling(lane: str, wanted: float) -> bool:
    """Whether a step should bring its core down: in the fridge, or in a room at least as warm as the target."""
    return lane == "fridge" or (lane in ("worktop", "front-of-house") and wanted <= ROOM_CELSIUS)
