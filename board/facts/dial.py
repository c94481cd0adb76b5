"""A temperature as set on an oven's dial. Common practice, no source, except the definition of °F. Pure."""

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
