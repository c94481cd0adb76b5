"""What begins at another time than on the sheet before, in a line. Pure."""

from collections.abc import Sequence
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.base.plain import one_line
from board.output import words
from board.sheet.run_sheet import RunSheet, Slot

MOST_NAMED = 6


def moved_lines(sheet: RunSheet, moved: Sequence[tuple[Slot, Slot]]) -> list[str]:
    """One line, or none if nothing moved. The day stands where it is another."""
    zone = ZoneInfo(sheet.zone)
    told = []
    for old, new in moved[:MOST_NAMED]:
        was, at = old.start.astimezone(zone), new.start.astimezone(zone)
        before = shared.clock(was) if was.date() == at.date() else shared.day_and_clock(was)
        told.append((one_line(new.name, 40), shared.day_and_clock(at), before))
    return [words.moved_since(told, len(moved) - len(told))] if told else []
