"""Temperatures as a probe shows them: read as typed, turned from °F to °C, and which way they are to go. Pure."""

import re
from typing import Literal

from board.kitchen.heat import ROOM_CELSIUS

# A probe's scale in a kitchen, °C, from deep frozen to boiling sugar; common practice, no source.
PROBE_COLDEST, PROBE_HOTTEST = -60.0, 300.0
WATER_BOILS = 100.0  # °C at sea level; what holds water gets no hotter

Trouble = Literal["nonsense", "which-unit", "no-probe"]

_READING = re.compile(r"([+-]?[0-9]{1,4}(?:[.,][0-9]{1,3})?)\s*(?:°|º|deg(?:rees)?)?\s*([CF])?", re.IGNORECASE)


def to_celsius(degrees: float, unit: str) -> float:
    """°F → °C exactly by definition (NIST SP 811, B.8); °C is returned as it is. Not rounded."""
    return (degrees - 32) * 5 / 9 if unit.upper() == "F" else degrees


def read_degrees(text: str, *, fahrenheit: bool, wanted: float) -> float | Trouble:
    """A reading as typed (`74`, `74 C`, `165.2f`, `73,9 °C`) in °C; a bare figure is in the plan's unit.

    A bare figure above boiling, where less is wanted, is asked about: it is most likely °F said to a plan in °C.
    """
    match = _READING.fullmatch(text.strip().replace("\N{MINUS SIGN}", "-"))
    if match is None:
        return "nonsense"
    degrees = float(match[1].replace(",", "."))
    celsius = to_celsius(degrees, match[2] or ("F" if fahrenheit else "C"))
    if match[2] is None and not fahrenheit and celsius > WATER_BOILS >= wanted:
        return "which-unit"
    return celsius if PROBE_COLDEST <= celsius <= PROBE_HOTTEST else "no-probe"


def is_cooling(lane: str, wanted: float) -> bool:
    """Whether a step is to bring its core down: in the fridge, or in a room no colder than what is wanted."""
    return lane == "fridge" or (lane in ("worktop", "front-of-house") and wanted <= ROOM_CELSIUS)
