"""What to say of a board that is opened days before there is anything to do. Pure."""

from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from board.app import words
from board.base import words as shared
from board.base.plain import one_line
from board.sheet.run_sheet import RunSheet

EARLY = timedelta(hours=24)  # from opening to the first step; ours


def opened_early(sheet: RunSheet, now: datetime, plan: str) -> str:
    """For when the evening is, what comes first and when, and how to see what to buy; empty if that is within a day.
    `plan`: its path, as typed at a prompt."""
    first = min(sheet.slots, key=lambda slot: slot.start)
    if first.start - now < EARLY:
        return ""
    zone = ZoneInfo(sheet.zone)
    begins = first.start.astimezone(zone)
    when = f"{words.day_of_month(begins)} {shared.clock(begins)}"
    return words.opened_early(words.day_of_month(sheet.arrive.astimezone(zone)), when, one_line(first.name, 40), plan)
