"""Times, days, and lengths of time."""

from datetime import datetime


def clock(at: datetime) -> str:
    return at.strftime("%H:%M")


def day_and_clock(at: datetime) -> str:
    return at.strftime("%a %H:%M")


def span(minutes: int) -> str:
    """`25 min`, `1 h 30`."""
    hours, rest = divmod(minutes, 60)
    return f"{hours} h {rest:02d}" if hours else f"{rest} min"


def short_day(at: datetime) -> str:
    return f"{at.strftime('%a')} {at.day} {at.strftime('%b')}"


def full_day(at: datetime) -> str:
    return f"{at.strftime('%A')} {at.day} {at.strftime('%B')}"
