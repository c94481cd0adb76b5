"""Seconds → countdowns of a steady width, so that a tick does not move the text beside them."""

import math


def countdown(seconds: float) -> str:
    """`04:30`, `1:04:30`; from a hundred hours on without seconds, `186:16`; when past, `-02:10`. Rounded up, so that
    00:00 is the very moment."""
    whole = math.ceil(seconds) if seconds > 0 else -math.ceil(-seconds)
    sign, whole = ("-", -whole) if whole < 0 else ("", whole)
    hours, rest = divmod(whole, 3600)
    minutes, left = divmod(rest, 60)
    if hours >= 100:
        return f"{sign}{hours}:{minutes:02d}"  # days ahead, seconds say nothing and do not fit
    return f"{sign}{hours}:{minutes:02d}:{left:02d}" if hours else f"{sign}{minutes:02d}:{left:02d}"


def length(seconds: float) -> str:
    """A length in words: `12 min`, `1 h 05`, `7 days 3 h`, `under a minute`. Rounded down."""
    minutes = int(seconds // 60)
    if minutes < 1:
        return "under a minute"
    hours, rest = divmod(minutes, 60)
    if hours >= 48:
        return f"{hours // 24} days {hours % 24} h"
    return f"{hours} h {rest:02d}" if hours else f"{rest} min"
