"""Where a timetable leaves no rest, in words: for the sheet and for the check."""

from collections.abc import Iterator
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.output import words
from board.sheet.rests import restless
from board.sheet.run_sheet import RunSheet


def without_rest(sheet: RunSheet) -> Iterator[str]:
    """A line for each time that somebody works for too long without a pause, or has no time to eat."""
    zone = ZoneInfo(sheet.zone)
    for each in restless(sheet):
        start, end = each.start.astimezone(zone), each.end.astimezone(zone)
        who = each.who if len(sheet.hands) > 1 else ""
        if each.minutes:
            yield words.without_pause(f"{start:%A}", each.minutes, shared.clock(start), who)
        else:
            yield words.without_supper(f"{start:%A}", shared.clock(start), shared.clock(end), who)
