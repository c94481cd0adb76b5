"""How late a thing was, in whole minutes: one rule for board, closing page, review and lessons. Pure."""

from datetime import datetime, timedelta

MINUTE = timedelta(minutes=1)


def minutes_late(at: datetime, wanted: datetime) -> int:
    """Whole minutes from one moment to the other, as two clocks without seconds differ where `wanted` is a full minute;
    below 0 if it was early."""
    return (at - wanted) // MINUTE
