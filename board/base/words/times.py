"""Times, days, lengths of time, and temperatures."""

import math
from datetime import date, datetime

from board.base.dial import in_both_scales


def clock(at: datetime) -> str:
    """`18:45`; on the night the clocks go back, `02:48 first` and an hour after it `02:48 again`."""
    return f"{bare_clock(at)}{_which(at)}"


def bare_clock(at: datetime) -> str:
    """`18:45` on any night: for a plan, which means the first of two, and for a scale, where its place tells which."""
    return at.strftime("%H:%M")


def day_and_clock(at: datetime) -> str:
    return f"{at.strftime('%a %H:%M')}{_which(at)}"


def _which(at: datetime) -> str:
    comes_twice = at.replace(fold=0).utcoffset() != at.replace(fold=1).utcoffset()
    return "" if not comes_twice else " again" if at.fold else " first"


def span(minutes: int) -> str:
    """`25 min`, `1 h 30`."""
    hours, rest = divmod(minutes, 60)
    return f"{hours} h {rest:02d}" if hours else f"{rest} min"


_MINUTES_A_DAY = 24 * 60


def short(minutes: int) -> str:
    """`25 min`, `1 h 30`, `2 days`; the way the program writes a length of time."""
    if minutes >= _MINUTES_A_DAY and minutes % _MINUTES_A_DAY == 0:
        days = minutes // _MINUTES_A_DAY
        return "1 day" if days == 1 else f"{days} days"
    hours, rest = divmod(minutes, 60)
    if hours == 0:
        return f"{rest} min"
    return f"{hours} h {rest:02d}" if rest else f"{hours} h"


def short_day(at: datetime) -> str:
    return f"{at.strftime('%a')} {at.day} {at.strftime('%b')}"


def full_day(at: date) -> str:
    return f"{at.strftime('%A')} {at.day} {at.strftime('%B')}"


def to_fahrenheit(celsius: float) -> float:
    """°C → °F exactly by definition (NIST SP 811, B.8). Not rounded."""
    return celsius * 9 / 5 + 32


def dial(celsius: int, fahrenheit: bool = False, as_written: bool = True) -> str:
    """`165 °C (325 °F)`: an oven's setting, °F first or not, `as_written` where those are the degrees it was written
    in. What it was written in stands as it was, the other as the nearest mark of a dial."""
    in_c, in_f = in_both_scales(celsius, in_fahrenheit=fahrenheit == as_written)
    return f"{in_f} ({in_c})" if fahrenheit else f"{in_c} ({in_f})"


def degrees(celsius: float, fahrenheit: bool = False) -> str:
    """`74 °C (165.2 °F)`, the plan's unit first, to a tenth."""
    in_c, in_f = f"{round(celsius, 1):g} °C", f"{round(to_fahrenheit(celsius), 1):g} °F"
    return f"{in_f} ({in_c})" if fahrenheit else f"{in_c} ({in_f})"


def degrees_alone(celsius: float, fahrenheit: bool = False) -> str:
    """`74`, in the plan's unit, to a tenth."""
    return f"{round(to_fahrenheit(celsius) if fahrenheit else celsius, 1):g}"


def missing(celsius: float, fahrenheit: bool = False) -> str:
    """`3 °C`: how far apart two temperatures are, to a tenth and never less than one."""
    apart = celsius * 9 / 5 if fahrenheit else celsius
    return f"{max(1, math.ceil(round(apart * 10, 3))) / 10:g} °{'F' if fahrenheit else 'C'}"


def from_to(start: str, end: str) -> str:
    return f"{start}–{end}"
