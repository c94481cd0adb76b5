"""What pushing a course would cost, in lines. Pure."""

from board import words
from board.run.forecast import Forecast
from board.view.board import Viewer


def push_lines(viewer: Viewer, before: Forecast, after: Forecast) -> list[str]:
    """Each course still to go out, before → after; then what would stand, and for how long."""
    lines = []
    for old, new in zip(before.courses, after.courses, strict=True):
        if new.is_ahead:
            clock = viewer.clock
            lines.append(
                words.push_effect(
                    new.name, clock(old.served, after.now), clock(new.served, after.now), new.late_minutes
                )
            )
    stands = []
    for each in after.keeping:
        if each.taken_up > each.until:
            slot = viewer.slots[each.slot]
            stood = round((each.taken_up - each.since).total_seconds() / 60)
            limit = round((each.until - each.since).total_seconds() / 60)
            stands.append(words.push_keeps(slot.name, stood, limit))
    return [*lines, *(stands or [words.PUSH_COSTS_NOTHING])]
