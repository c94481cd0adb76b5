"""What to say while no call is due: what the host is working on, or how long the host is free. Pure."""

from collections.abc import Iterator
from datetime import datetime

from board.evening.calls import Call
from board.evening.hands import parts
from board.sheet.company import host_of
from board.sheet.run_sheet import RunSheet, Slot
from board.view.present import Present


def hands_on(sheet: RunSheet, at: Present) -> tuple[Slot, datetime] | None:
    """What the host is working on, and until when; of several, the one that ends first. None if the host is free: steps
    that run by themselves or belong to others do not count."""
    found = [(until, n, slot) for n, (slot, until) in enumerate(_busy_with(sheet, at))]
    return (min(found)[2], min(found)[0]) if found else None


def _busy_with(sheet: RunSheet, at: Present) -> Iterator[tuple[Slot, datetime]]:
    host = host_of(sheet)
    for slot in sheet.slots:
        if at.state.steps[slot.id].status != "under-way":
            continue
        ahead = at.forecast.slots[slot.id]
        for part in parts(slot, ahead.start, ahead.end):
            if part.who != host:
                continue
            # Work attended from start to end lasts until it is answered, however long that takes.
            if part.kind == "all" or (part.kind == "start" and at.now < part.end):
                yield slot, part.end


def host_call(sheet: RunSheet, call: Call, slot: Slot) -> bool:
    """Whether a call is for the host. It is not if only other people work on that part of the slot."""
    kinds = {"start": ("all", "start"), "look-in": ("look-in",), "end": ("all", "end")}[call.part]
    whose = {part.who for part in slot.attended if part.kind in kinds} or {part.who for part in slot.attended}
    return not whose or host_of(sheet) in whose
