"""What to say while no call is due: what somebody is working on, or how long they are free. Pure."""

from collections.abc import Iterator
from datetime import datetime

from board.evening.hands import parts
from board.sheet.run_sheet import RunSheet, Slot
from board.view.present import Present


def hands_on(sheet: RunSheet, at: Present, who: str) -> tuple[Slot, datetime] | None:
    """What that person is working on, and until when; of several, the one that ends first. None if they are free: steps
    that run by themselves or belong to others do not count."""
    found = [(until, n, slot) for n, (slot, until) in enumerate(_busy_with(sheet, at, who))]
    return (min(found)[2], min(found)[0]) if found else None


def _busy_with(sheet: RunSheet, at: Present, who: str) -> Iterator[tuple[Slot, datetime]]:
    for slot in sheet.slots:
        if at.state.steps[slot.id].status != "under-way":
            continue
        ahead = at.forecast.slots[slot.id]
        for part in parts(slot, ahead.start, ahead.end):
            if part.who != who:
                continue
            # Work attended from start to end lasts until it is answered, however long that takes.
            if part.kind == "all" or (part.kind == "start" and at.now < part.end):
                yield slot, part.end
