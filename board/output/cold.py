"""How full the fridge and the freezer get: in lines for the sheet, and as data. Pure."""

from collections.abc import Iterator
from datetime import datetime
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.base.plain import one_line
from board.output import words
from board.output.schemas.sheet import ColdForm
from board.sheet.cold import cold_days, uncounted
from board.sheet.run_sheet import RunSheet


def cold_lines(sheet: RunSheet, *, hours: bool = False) -> Iterator[str]:
    """A line a place and day, with `hours` another that has them; what is not counted, and what was assumed."""
    for day in cold_days(sheet):
        mark = f"{shared.SIGN['past']} " if day.over else ""
        yield mark + words.cold_fullest(day.place, shared.day_and_clock(day.at), day.litres, day.room, day.over)
        if hours:
            by_hour = [(shared.clock(at), litres) for at, litres in day.hours]
            yield words.cold_hours(day.place, shared.full_day(day.at), by_hour)
    left: dict[str, list[str]] = {}
    for what, place in uncounted(sheet):
        left.setdefault(place, []).append(one_line(what))
    yield from (words.cold_uncounted(place, what) for place, what in left.items())
    if any(each.bought and each.litres for each in sheet.cold):
        yield words.COLD_ASSUMED


def cold_form(sheet: RunSheet) -> ColdForm:
    """For other programs: litres; times in the plan's zone, ISO 8601."""
    zone, slots = ZoneInfo(sheet.zone), sheet.by_id()

    def iso(at: datetime) -> str:
        return at.astimezone(zone).isoformat()

    return {
        "days": [
            {
                "place": day.place,
                "fullest": iso(day.at),
                "litres": day.litres,
                "room": day.room,
                "hours": [{"from": iso(at), "litres": litres} for at, litres in day.hours],
            }
            for day in cold_days(sheet)
        ],
        "things": [
            {
                "place": each.place,
                "what": slots[each.what].name if each.what in slots else each.what,
                "litres": each.litres,
                "start": iso(each.start),
                "end": iso(each.end),
            }
            for each in sheet.cold
        ],
    }
