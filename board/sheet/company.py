"""How much of the evening those who sit are away from the guests, and how busy it gets, read off a run sheet. Pure."""

from collections.abc import Callable, Collection, Iterable
from datetime import datetime, timedelta

from board.sheet.run_sheet import Attended, RunSheet, Slot

FRONT_OF_HOUSE = "front-of-house"
QUARTER = 15  # minutes
MINUTE, HALF_HOUR = timedelta(minutes=1), timedelta(minutes=30)


def host_of(sheet: RunSheet) -> str:
    """The hand called host; else the first who sits, or the first."""
    return "host" if "host" in sheet.hands or not sheet.hands else [*sitters(sheet), *sheet.hands][0]


def sitters(sheet: RunSheet) -> tuple[str, ...]:
    """Who of the hands eats with the guests."""
    return tuple(who for who in sheet.hands or ("host",) if who not in sheet.hired)


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
) -> dict[str, int]:
    """Minutes in the kitchen between the guests' coming and the end of the last course, of each who sits.

    `begins`: when a slot begins, as planned, as it looks or as it was; `work`: when hands are on what, told likewise.
    """
    slots, clear = sheet.by_id(), last_clear(sheet, left_out)
    spans: dict[str, list[tuple[datetime, datetime]]] = {who: [] for who in sitters(sheet)}
    if clear is None:
        return dict.fromkeys(spans, 0)
    came = next((begins(slot) for slot in sheet.slots if slot.kind == "arrive"), sheet.arrive)
    over = begins(slots[clear])
    for slot, parts in work:
        for part in parts if is_away(slot.lane, with_guests=slot.with_guests) else ():
            if part.who in spans:
                spans[part.who].append((max(part.start, came), min(part.end, over)))
    return {who: _once(sorted(each)) for who, each in spans.items()}


def _once(spans: list[tuple[datetime, datetime]]) -> int:
    """A minute with hands on two things is one minute."""
    total, until = timedelta(), spans[0][0] if spans else None
    for begin, end in spans:
        assert until is not None
        total += max(timedelta(), end - max(begin, until))
        until = max(until, end)
    return round(total / MINUTE)


def as_planned(sheet: RunSheet) -> dict[str, int]:
    """The same, as planned."""
    return away(sheet, lambda slot: slot.start, ((slot, slot.attended) for slot in sheet.slots))


def away_minutes(sheet: RunSheet) -> int:
    """Of all who sit together, as planned."""
    return sum(as_planned(sheet).values())


def weight(minutes: int) -> int:
    """What the minutes of one of several who sit weigh: those of the first quarter of an hour once, of the second
    twice, and so on. So the one who is away most is spared first, and work is shared out even where it then takes a
    little longer; within one quarter it is all the same who goes, which leaves a search little to tell apart. Ours."""
    return max(slope * minutes - off for slope, off in lines(minutes))


def lines(most: int) -> list[tuple[int, int]]:
    """The straight lines it is made of, up to so many minutes: how steep each is, and what is taken off."""
    return [(n, QUARTER * n * (n - 1) // 2) for n in range(1, max(1, -(-most // QUARTER)) + 1)]


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
