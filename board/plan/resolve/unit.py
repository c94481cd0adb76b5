"""Which unit a plan's temperatures are written in, so that the board shows that one first."""

import re
from collections.abc import Iterable

_DEGREES = re.compile(r"\d\s*°?\s*([CF])\b", re.IGNORECASE)


def writes_fahrenheit(lines: Iterable[str]) -> bool:
    """Whether more of a plan's figures stand in °F than in °C; comments do not count."""
    found = [unit.upper() for line in lines for unit in _DEGREES.findall(line.partition("#")[0])]
    return found.count("F") > found.count("C")
