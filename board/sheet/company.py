"""How much of the evening the host is away from the guests, and how busy it gets, read off a run sheet. Pure."""

from datetime import datetime, timedelta

from board.sheet.run_sheet import Attended, RunSheet, Slot

HALF_HOUR = timedelta(minutes=30)


def host_of(sheet: RunSheet) -> str:
    """Whose company the guests came for: the hand called host, else the first."""
    return "host" if "host" in sheet.hands or not sheet.hands else sheet.hands[0]


def takes_away(slot: Slot) -> bool:
    """Whether hands on it are hands away from the guests."""
    return slot.kind != "heat" and slot.lane != "front-of-house" and not slot.with_guests


def dinner_over(sheet: RunSheet) -> datetime:
    """When the last course has been eaten."""
    return sheet.by_id()[sheet.courses[-1].clear].start


def away_minutes(sheet: RunSheet) -> int:
    """The host's minutes in the kitchen between the guests' coming and the end of the last course."""
    host, over = host_of(sheet), dinner_over(sheet)
    away = [
        part
        for slot in sheet.slots
        if takes_away(slot)
        for part in _hosts(slot, host)
        if part.end > sheet.arrive and part.start < over
    ]
    return sum(_minutes(part.start, part.end) for part in away)


def busiest(sheet: RunSheet) -> tuple[str, int]:
    """The course before whose plating the host's half hour is busiest, and how many minutes of it are work."""
    host, slots = host_of(sheet), sheet.by_id()
    found = ("", -1)
    for course in sheet.courses:
        plated = slots[course.serve].start
        minutes = sum(
            _minutes(max(part.start, plated - HALF_HOUR), min(part.end, plated))
            for slot in sheet.slots
            if slot.id != course.serve
            for part in _hosts(slot, host)
            if part.end > plated - HALF_HOUR and part.start < plated
        )
        if minutes > found[1]:
            found = (course.name, minutes)
    return found


def _hosts(slot: Slot, host: str) -> list[Attended]:
    return [part for part in slot.attended if part.who == host]


def _minutes(start: datetime, end: datetime) -> int:
    return round((end - start) / timedelta(minutes=1))
