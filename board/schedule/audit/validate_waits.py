"""Whether the waits a run sheet states are true, and each slack exact by those waits.

Part of `validate`; derived from the run sheet alone. Moments are aware datetimes in UTC, slack is whole minutes.
"""

from collections.abc import Iterator
from datetime import datetime
from zoneinfo import ZoneInfo

from board.base.words import day_and_clock
from board.schedule.audit.validate_ways import after_minutes
from board.sheet.run_sheet import Dependency, RunSheet, Slot

NO_LIMIT_MINUTES = 10_000  # a slot without slack can slip this far and no course is late


def waits_and_give(sheet: RunSheet, zone: ZoneInfo) -> Iterator[str]:
    """A sentence for each wrong wait or slack; slack is worked out from the waits."""
    false_waits = list(_waits_are_true(sheet, zone))
    yield from false_waits or _give_is_exact(sheet)


def _waits_are_true(sheet: RunSheet, zone: ZoneInfo) -> Iterator[str]:
    slots = sheet.by_id()
    seen: set[str] = set()
    for slot in sheet.slots:
        for wait in slot.waits:
            other = slots.get(wait.after)
            if other is None:
                yield f"{slot.name} waits for {wait.after}, which is not in the run sheet"
            elif wait.reason == "ready":
                continue
            elif other.id not in seen:
                yield f"{slot.name} waits for {other.name}, which stands after it in the run sheet"
            elif (until := _until(wait, other, other.start)) > slot.start:
                at, over = day_and_clock(slot.start.astimezone(zone)), day_and_clock(until.astimezone(zone))
                yield f"{slot.name} starts at {at}, though it waits for {other.name} until {over}"
        seen.add(slot.id)


def _until(wait: Dependency, other: Slot, other_start: datetime) -> datetime:
    """When a wait is over, if its predecessor starts then."""
    anchor = other_start if wait.anchor == "start" else other_start + (other.end - other.start)
    return after_minutes(anchor, wait.minutes)


def _give_is_exact(sheet: RunSheet) -> Iterator[str]:
    for slot in sheet.slots:
        give = slot.give_minutes
        if give is None:
            if not _can_slip(sheet, slot, NO_LIMIT_MINUTES):
                yield f"{slot.name} is told to have no limit, but a course or the arrival hangs on it"
        elif not _can_slip(sheet, slot, give):
            yield f"{slot.name} cannot slip {give} min: a course or the arrival hangs on it"
        elif _can_slip(sheet, slot, give + 1):
            yield f"{slot.name} can slip more than {give} min"


def _can_slip(sheet: RunSheet, slipped: Slot, minutes: int) -> bool:
    """Whether nothing the guests see moves when one slot slips and the others move only as far as they must."""
    slots = sheet.by_id()
    starts = _pushed(sheet, slipped, minutes)
    for slot in sheet.slots:
        if slot.kind in ("serve", "arrive") and starts[slot.id] != slot.start:
            return False
        for wait in slot.waits:
            # What was not ready as planned stays so; it counts only if it is the one that slips.
            other = slots[wait.after]
            counts = other is slipped or _until(wait, other, other.start) <= slot.start
            if wait.reason == "ready" and counts and _until(wait, other, starts[wait.after]) > slot.start:
                return False
    return True


def _pushed(sheet: RunSheet, slipped: Slot, minutes: int) -> dict[str, datetime]:
    """Each slot's start if one slips that far; only the slipped one may start earlier than planned."""
    slots = sheet.by_id()
    starts: dict[str, datetime] = {}
    for slot in sheet.slots:
        if slot is slipped:
            starts[slot.id] = after_minutes(slot.start, minutes)
            continue
        waits = [wait for wait in slot.waits if wait.reason != "ready"]
        starts[slot.id] = max([slot.start, *(_until(w, slots[w.after], starts[w.after]) for w in waits)])
    return starts
