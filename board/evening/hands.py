"""When somebody's hands are on a slot that starts and ends at these moments. Pure."""

from collections.abc import Iterator
from datetime import datetime

from board.sheet.run_sheet import Attended, Slot


def parts(slot: Slot, start: datetime, end: datetime) -> Iterator[Attended]:
    """Its attended stretches: one at the end moves with the end, all others with the start, none beyond the end."""
    for part in slot.attended:
        length = part.end - part.start
        if part.kind == "all":
            begin, over = start, end
        elif part.kind == "end":
            begin, over = max(start, end - length), end
        else:
            begin = min(end, start + (part.start - slot.start))
            over = min(end, begin + length)
        yield Attended(begin, over, part.who, part.kind)
