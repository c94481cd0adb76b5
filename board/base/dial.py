"""An oven's setting, in the scale it was written in and at the mark a dial in the other scale has for it.

Marks are common practice, no source; °F is by definition (NIST SP 811, B.8). Core temperatures and limits are no
settings: they stay exact. Pure.
"""

MARK_CELSIUS, MARK_FAHRENHEIT = 10, 25  # steps between dial marks
LOW_CELSIUS = 115.0  # °C; below, for drying, setting and keeping warm, each degree counts


def dial_celsius(celsius: float) -> int:
    """The nearest dial mark in °C; in a low oven the nearest degree: 375 °F → 190 °C, 190 °F → 88 °C."""
    mark = MARK_CELSIUS if celsius >= LOW_CELSIUS else 1
    return int(celsius / mark + 0.5) * mark


def dial_fahrenheit(celsius: float) -> int:
    """The nearest dial mark in °F; in a low oven the nearest 5 °F."""
    fahrenheit = celsius * 9 / 5 + 32
    mark = MARK_FAHRENHEIT if celsius >= LOW_CELSIUS else 5
    return int(fahrenheit / mark + 0.5) * mark


def in_both_scales(celsius: int, *, in_fahrenheit: bool) -> tuple[str, str]:
    """`165 °C` and `325 °F`, as it was written in the one, at a mark in the other."""
    in_c = dial_celsius(celsius) if in_fahrenheit else celsius
    in_f = _on_dial(celsius) if in_fahrenheit else dial_fahrenheit(celsius)
    return f"{in_c} °C", f"{in_f} °F"


def _on_dial(celsius: int) -> int:
    """°F of a setting written in °F: in steps of 5 wherever that is the same whole °C; else the nearest."""
    exact = celsius * 9 / 5 + 32
    written = round(exact / 5) * 5
    return written if round((written - 32) * 5 / 9) == celsius else round(exact)
