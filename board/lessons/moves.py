"""Which work of the day itself a timetable worked out anew puts elsewhere. Pure."""

from dataclasses import dataclass
from datetime import timedelta
from zoneinfo import ZoneInfo

from board.timetable.run_sheet import RunSheet

LEAST_MINUTES = 5
MOST_TOLD = 8


@dataclass(frozen=True, slots=True)
class Move:
    """So many minutes later (below 0: sooner) than before."""

    name: str
    minutes: int


def moves(before: RunSheet, after: RunSheet) -> tuple[Move, ...]:
    """The furthest first. The days before are left out: they shift with every small edit, and nobody waits there."""
    zone, then = ZoneInfo(before.zone), after.by_id()
    found = []
    for slot in before.slots:
        other = then.get(slot.id)
        if other is None or slot.kind == "heat" or slot.start.astimezone(zone).date().isoformat() != before.date:
            continue
        minutes = round((other.start - slot.start) / timedelta(minutes=1))
        if abs(minutes) >= LEAST_MINUTES:
            found.append(Move(slot.name, minutes))
    return tuple(sorted(found, key=lambda move: -abs(move.minutes))[:MOST_TOLD])
