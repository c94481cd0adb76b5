"""What a sound line may say and no evening can: moments, figures and steps out of all bounds. Pure.

A checksum tells that a line is as it was written, not that what was written makes sense.
"""

from collections.abc import Sequence
from datetime import UTC, datetime
from math import isfinite

import msgspec

from board.evening.events import ClockJumped, Event, SheetTaken
from board.sheet.run_sheet import RunSheet

# A clock without a battery begins at the first; the bounds are ours.
EARLIEST, LATEST = datetime(1970, 1, 1, tzinfo=UTC), datetime(2200, 1, 1, tzinfo=UTC)
MOST = 10_000_000  # of any figure: minutes of nineteen years
LONGEST = 100_000  # letters of a text


def is_odd(value: object) -> bool:
    """Whether anything in it is out of bounds."""
    match value:
        case None | bool() | msgspec.UnsetType():
            return False
        case str():
            return len(value) > LONGEST
        case int() | float():
            return not (isfinite(value) and abs(value) <= MOST)
        case datetime():
            return not EARLIEST <= value <= LATEST
        case msgspec.Struct():
            return any(is_odd(getattr(value, field)) for field in value.__struct_fields__)
        case dict():
            return any(is_odd(each) for pair in value.items() for each in pair)
        case tuple() | list():
            return any(map(is_odd, value))
    return False


def first_odd(events: Sequence[Event], sheet: RunSheet) -> int | None:
    """Where the first event is that says what cannot be, or is about a step that no sheet so far has."""
    known = {slot.id for slot in sheet.slots}
    for at, event in enumerate(events):
        if isinstance(event, SheetTaken):
            known |= {slot.id for slot in event.sheet.slots}
        if (known and not _slots_of(event) <= known) or is_odd(_bounded_alike(event)):
            return at
    return None


def _bounded_alike(event: Event) -> Event:
    """A clock may have been set by as much as lies between the bounds of a moment."""
    if isinstance(event, ClockJumped) and abs(event.seconds) <= (LATEST - EARLIEST).total_seconds():
        return msgspec.structs.replace(event, seconds=0.0)
    return event


def _slots_of(event: Event) -> set[str]:
    found = {*getattr(event, "slots", ()), *(step.slot for step in getattr(event, "steps", ()))}
    slot = getattr(event, "slot", None)
    return found if slot is None else found | {slot}
