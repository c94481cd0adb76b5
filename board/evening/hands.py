"""When a slot needs hands: for a given start and end, and whatever they will be. Pure."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime

from board.evening.events import Part
from board.sheet.company import FRONT_OF_HOUSE, host_of
from board.sheet.run_sheet import Attended, RunSheet, Slot

_CALLED_FOR: dict[Part, tuple[str, ...]] = {
    "start": ("all", "start"),
    "look-in": ("look-in",),
    "end": ("all", "end"),
    "reheat": ("all", "end"),
}


def called(sheet: RunSheet, slot: Slot, part: Part) -> frozenset[str]:
    """Whom a call is for: those with hands on that part of the slot; if nobody has, on any of it; if nobody, the
    host."""
    whose = {each.who for each in slot.attended if each.kind in _CALLED_FOR[part]}
    return frozenset(whose or {each.who for each in slot.attended} or {host_of(sheet)})


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


@dataclass(frozen=True, slots=True)
class Wanted:
    """Whose hands a slot wants, all of those at its first part at the same time, and how: for so long from its start on
    (`whole`: until it ends), for looks so long after its start (offset, length), and for so long before its end.
    `front`: at the table."""

    who: tuple[str, ...]
    front: bool
    whole: bool
    first: float
    looks: tuple[tuple[float, float], ...]
    last: float

    @property
    def works(self) -> bool:
        """Hands are on it as it starts."""
        return self.whole or self.first > 0


def wanted(slot: Slot, minute: float) -> Wanted | None:
    """In a unit of which `minute` make a minute; None if it wants nobody."""
    if not slot.attended:
        return None

    def lengths(kind: str) -> Iterator[tuple[float, float]]:
        for part in slot.parts:
            if part.kind == kind:
                offset, length = part.start - slot.start, part.end - part.start
                yield offset.total_seconds() / 60 * minute, length.total_seconds() / 60 * minute

    return Wanted(
        who=tuple(dict.fromkeys(part.who for part in slot.attended if part.start == slot.attended[0].start)),
        front=slot.lane == FRONT_OF_HOUSE,
        whole=slot.whole,
        first=sum(length for _, length in lengths("start")),
        looks=tuple(lengths("look-in")),
        last=sum(length for _, length in lengths("end")),
    )
