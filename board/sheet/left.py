"""What steps leave over, in words: how much, from what, until when it is used, and which dish needs it. Pure."""

from datetime import datetime
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.base.plain import one_line
from board.sheet import words
from board.sheet.run_sheet import LeftOver, NeededBy, RunSheet, SoMuch
from board.sheet.shown import at_hand


def left_over(sheet: RunSheet, left: LeftOver, at: datetime | None = None) -> str:
    """`6 egg yolks, left from Meringues on Fri 27 Nov, in the fridge until Sun 29 Nov: Lemon parfait needs 5 egg
    yolks`. `at`: when it was left; else as planned. One safe line."""
    slot, zone = sheet.by_id()[left.slot], ZoneInfo(sheet.zone)
    since = at or slot.end
    days = (shared.short_day(day.astimezone(zone)) for day in (since, left.use_by(since)))
    told = words.left_from(much(sheet, left.what), slot.dish or slot.name, *days)
    return one_line(words.with_needs(told, [_needs(sheet, left, each, since) for each in left.needed_by]))


def keeps(sheet: RunSheet, left: LeftOver) -> str:
    """`keep 6 egg yolks: 2 days in the fridge`: said where they are left."""
    return one_line(words.keep_left(much(sheet, left.what), left.days))


def much(sheet: RunSheet, what: SoMuch) -> str:
    """`6 egg yolks`. Not yet safe to show."""
    return at_hand(what.low, what.high, what.measure, what.food, sheet.units)


def _needs(sheet: RunSheet, left: LeftOver, need: NeededBy, since: datetime) -> str:
    wanted = much(sheet, need.much)
    if need.in_time:
        return words.needs_left(need.dish, wanted)
    when = shared.short_day(need.start.astimezone(ZoneInfo(sheet.zone)))
    return words.needs_left_else(need.dish, wanted, when, too_late=need.start > since)
