"""What a recomputed timetable moves. Pure."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import timedelta
from zoneinfo import ZoneInfo

from board.learning.changes import About
from board.review.kinds import Key, key_of_slot
from board.sheet.run_sheet import RunSheet, Slot

# What is worth showing: ours.
LEAST_MINUTES = 5
MOST_TOLD = 8


@dataclass(frozen=True, slots=True)
class Move:
    """Work that is `minutes` later (below 0: sooner) than before."""

    name: str
    minutes: int


def moves(before: RunSheet, after: RunSheet) -> tuple[Move, ...]:
    """The largest moves first. Days before the event are left out: every small edit shifts them, and nobody waits."""
    zone = ZoneInfo(before.zone)
    day = [slot for slot in before.slots if slot.start.astimezone(zone).date().isoformat() == before.date]
    return tuple(_moved(day, after)[:MOST_TOLD])


def moved_most(before: RunSheet, after: RunSheet, about: About) -> Move | None:
    """The largest move of the step a lesson is about, or of all that goes into its oven; None if nothing moves."""
    own = [slot for slot in before.slots if _is_about(slot, about)]
    return next(iter(_moved(own, after, least=1)), None)


def _is_about(slot: Slot, about: About) -> bool:
    if isinstance(about, Key):
        return key_of_slot(slot) == about
    return any(use.what == about[0] and use.celsius is not None for use in slot.uses)


def _moved(slots: Iterable[Slot], after: RunSheet, least: int = LEAST_MINUTES) -> list[Move]:
    then, found = after.by_id(), []
    for slot in slots:
        other = then.get(slot.id)
        if other is None or slot.of_a_dial:
            continue
        minutes = round((other.start - slot.start) / timedelta(minutes=1))
        if abs(minutes) >= least:
            found.append(Move(slot.name, minutes))
    return sorted(found, key=lambda move: -abs(move.minutes))
