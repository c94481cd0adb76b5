"""The temperature unit a plan is written in; the board shows it first."""

import re
from collections.abc import Iterable

_DEGREES = re.compile(r"\d\s*°?\s*([CF])\b", re.IGNORECASE)


def writes_fahrenheit(lines: Iterable[str]) -> bool:
    """Whether the plan has more figures in °F than in °C; comments do not count."""
    found = [unit.upper() for line in lines for unit in _DEGREES.findall(line.partition("#")[0])]
    return found.count("F") > found.count("C")
