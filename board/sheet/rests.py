"""Where a timetable leaves a body no rest before the guests come, read off a run sheet. Pure.

A stretch of work ends with a pause of a quarter of an hour. A look at what cooks breaks no pause, and a trip to the
shops is none of the kitchen's work.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from board.facts.rests import LONGEST_STRETCH, PAUSE, SUPPER, SUPPER_BETWEEN
from board.plan.phrases.when import instant
from board.sheet.run_sheet import RunSheet


@dataclass(frozen=True, slots=True)
class Restless:
    """Somebody's work without a pause, for too long; or, without minutes, no time to eat from when until when."""

    who: str
    start: datetime
    end: datetime
    minutes: int = 0


def restless(sheet: RunSheet) -> list[Restless]:
    """All there is, in order of time."""
    found = [each for who in sheet.hands for each in (*_unbroken(sheet, who), *_no_supper(sheet, who))]
    return sorted(found, key=lambda each: (each.start, each.who))


def _work(sheet: RunSheet, who: str) -> list[tuple[datetime, datetime]]:
    came = next((slot.start for slot in sheet.slots if slot.kind == "arrive"), sheet.arrive)
    return sorted(
        (part.start, min(part.end, came))
        for slot in sheet.slots
        for part in slot.attended
        if part.who == who
        and part.kind != "look-in"
        and not slot.name.startswith("go shopping (")
        and part.start < came
    )


def _unbroken(sheet: RunSheet, who: str) -> Iterator[Restless]:
    stretch: tuple[datetime, datetime] | None = None
    for start, end in [*_work(sheet, who), (datetime.max.replace(tzinfo=sheet.arrive.tzinfo), sheet.arrive)]:
        if stretch is not None and start - stretch[1] < timedelta(minutes=PAUSE):
            stretch = (stretch[0], max(end, stretch[1]))
            continue
        if stretch is not None and stretch[1] - stretch[0] > timedelta(minutes=LONGEST_STRETCH):
            yield Restless(who, *stretch, round((stretch[1] - stretch[0]) / timedelta(minutes=1)))
        stretch = (start, end)


def _no_supper(sheet: RunSheet, who: str) -> Iterator[Restless]:
    zone, work = ZoneInfo(sheet.zone), _work(sheet, who)
    for day in sorted({start.astimezone(zone).date() for start, _ in work}):
        first, last = (instant(day, clock, zone) for clock in SUPPER_BETWEEN)
        if day >= date.fromisoformat(sheet.date):
            continue
        free = first
        for start, end in [*work, (last, last)]:
            if end <= first or start > last:
                continue
            if start - free >= timedelta(minutes=SUPPER):
                break
            free = max(free, end)
        else:
            yield Restless(who, first, last)
