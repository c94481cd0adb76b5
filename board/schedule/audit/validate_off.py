"""Ovens and rings are told to be switched off: not while they are used, and after the last use of all. Pure."""

from collections.abc import Iterator
from datetime import datetime

from board.plan.model.model import Plan
from board.sheet.run_sheet import RunSheet, Slot
from board.sheet.told import DialTurn


def switched_off(plan: Plan, sheet: RunSheet) -> Iterator[str]:
    """One sentence for each oven, or the rings, told wrongly or not at all."""
    for what in (*plan.kitchen.ovens, "rings"):
        used = [span for slot in sheet.slots if not slot.of_a_dial for span in _spans(slot, what, off=False)]
        rests = [span for slot in sheet.slots for span in _spans(slot, what, off=True)]
        offs = [slot for slot in sheet.slots if slot.kind == "off" and _of(slot) == what]
        for slot in offs:
            if any(start < slot.start < end for start, end in used):
                yield f"the {what} is told to be switched off while it is in use"
        last = max((end for _, end in used), default=None)
        known = [*(slot.start for slot in offs), *(start for start, _ in rests)]
        if last is not None and not any(moment >= last for moment in known):
            yield f"nobody is told to switch the {what} off after its last use"


def _of(slot: Slot) -> str | None:
    return slot.named.oven if isinstance(slot.named, DialTurn) else None


def _spans(slot: Slot, what: str, *, off: bool) -> Iterator[tuple[datetime, datetime]]:
    for use in slot.uses:
        if use.what == what and use.off == off and use.start < use.end:
            yield use.start, use.end
