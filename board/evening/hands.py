"""When a slot needs hands, for a given start and end. Pure."""

from collections.abc import Iterator
from datetime import datetime

from board.sheet.run_sheet import Attended, Slot


def parts(slot: Slot, start: datetime, end: datetime) -> Iterator[Attended]:
    """A slot's attended intervals. One at the end moves with the end, others with the start; none passes the end."""
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
