"""How much of the evening the host is away from the guests, and how busy it gets, read off a run sheet. Pure."""

from collections.abc import Callable, Collection, Iterable
from datetime import datetime, timedelta

from board.sheet.run_sheet import Attended, RunSheet, Slot

FRONT_OF_HOUSE = "front-of-house"
MINUTE, HALF_HOUR = timedelta(minutes=1), timedelta(minutes=30)


def host_of(sheet: RunSheet) -> str:
    """Whose company the guests came for: the hand called host, else the first."""
    return "host" if "host" in sheet.hands or not sheet.hands else sheet.hands[0]


def is_away(lane: str, *, with_guests: bool) -> bool:
    """Whether hands on work there are hands away from the guests."""
    return lane != FRONT_OF_HOUSE and not with_guests


def last_clear(sheet: RunSheet, left_out: Collection[str] = ()) -> str | None:
    """The slot whose start ends the dinner: clearing the last course that is not left out."""
    return next((course.clear for course in reversed(sheet.courses) if course.clear not in left_out), None)


def away(
    sheet: RunSheet,
    begins: Callable[[Slot], datetime],
    work: Iterable[tuple[Slot, Iterable[Attended]]],
    left_out: Collection[str] = (),
) -> int:
    """The host's minutes in the kitchen between the guests' coming and the end of the last course.

    `begins`: when a slot begins, as planned, as it looks or as it was; `work`: when hands are on what, told likewise.
    """
    host, slots, clear = host_of(sheet), sheet.by_id(), last_clear(sheet, left_out)
    if clear is None:
        return 0
    came = next((begins(slot) for slot in sheet.slots if slot.kind == "arrive"), sheet.arrive)
    over = begins(slots[clear])
    spans = sorted(
        (max(part.start, came), min(part.end, over))
        for slot, parts in work
        if is_away(slot.lane, with_guests=slot.with_guests)
        for part in parts
        if part.who == host
    )
    total, until = timedelta(), came
    for begin, end in spans:  # a minute with hands on two things is one minute
        total += max(timedelta(), end - max(begin, until))
        until = max(until, end)
    return round(total / MINUTE)


def away_minutes(sheet: RunSheet) -> int:
    """The same, as planned."""
    return away(sheet, lambda slot: slot.start, ((slot, slot.attended) for slot in sheet.slots))


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
    return round((end - start) / MINUTE)
