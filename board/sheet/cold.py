"""How full the fridge and the freezer are, by day and hour. Pure."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from board.sheet.run_sheet import InCold, RunSheet

HOUR = timedelta(hours=1)


@dataclass(frozen=True, slots=True)
class ColdDay:
    """A place on one day, in the plan's zone. `at`: from when it is fullest, with so many `litres`, out of `room`
    (None: the plan does not say). `hours`: the most in it in each hour in which that changes."""

    place: str
    at: datetime
    litres: float
    room: float | None
    hours: tuple[tuple[datetime, float], ...]

    @property
    def over(self) -> float:
        """Litres too many."""
        return 0.0 if self.room is None else max(0.0, round(self.litres - self.room, 1))


def cold_days(sheet: RunSheet) -> list[ColdDay]:
    """In order of time, the fridge first; days on which nothing counted is in are left out."""
    zone = ZoneInfo(sheet.zone)
    found: list[ColdDay] = []
    for place in ("fridge", "freezer"):
        counted = [each for each in sheet.cold if each.place == place and each.litres]
        found += _days(place, counted, sheet.cold_room.get(place), zone)
    return sorted(found, key=lambda day: day.at.date())


def uncounted(sheet: RunSheet) -> tuple[tuple[str, str], ...]:
    """What lies there without a figure: (what, place), each once."""
    slots = sheet.by_id()
    return tuple(
        dict.fromkeys(
            (slots[each.what].name if each.what in slots else each.what, each.place)
            for each in sheet.cold
            if each.litres is None
        )
    )


def _days(place: str, counted: list[InCold], room: float | None, zone: ZoneInfo) -> Iterator[ColdDay]:
    by_day: dict[date, list[tuple[datetime, float]]] = {}
    for hour in _hours(counted, zone):
        by_day.setdefault(hour.astimezone(zone).date(), []).append((hour.astimezone(zone), _most(counted, hour)[1]))
    for hours in by_day.values():
        hour, litres = max(hours, key=lambda each: each[1])
        if litres:
            at = _most(counted, hour)[0].astimezone(zone)
            changes = tuple(each for n, each in enumerate(hours) if not n or each[1] != hours[n - 1][1])
            yield ColdDay(place, at, litres, room, changes)


def _hours(counted: list[InCold], zone: ZoneInfo) -> Iterator[datetime]:
    """Whole hours of the plan's zone, in UTC."""
    if counted:
        first = min(each.start for each in counted)
        hour = first - timedelta(minutes=first.astimezone(zone).minute)
        while hour < max(each.end for each in counted) + HOUR:
            yield hour
            hour += HOUR


def _most(counted: list[InCold], hour: datetime) -> tuple[datetime, float]:
    """When in an hour there is most, and how many litres."""
    moments = [hour, *(each.start for each in counted if hour < each.start < hour + HOUR)]
    within = [(at, round(sum(e.litres or 0 for e in counted if e.start <= at < e.end), 1)) for at in sorted(moments)]
    return max(within, key=lambda each: each[1])
