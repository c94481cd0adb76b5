"""The day to buy each item: as early as it keeps, before it is needed, when its shop is open. Pure."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Literal
from zoneinfo import ZoneInfo

from board.facts.raw_keeps import RawKeep, raw_keep
from board.plan.model.model import Plan
from board.plan.resolve.bought import hours_of_shop, is_open
from board.plan.resolve.hours import day_of
from board.plan.resolve.trips import Trip, trips
from board.shopping.items import Item

NOON = 12  # o'clock; what is needed earlier is bought the day before; common practice, no source
ON_THE_EVE = ("flower", "cut flower", "bouquet")  # stand overnight in water; common practice, no source
LOOK_BACK_DAYS = 7  # days to search back for an open shop; ours

Doubt = Literal["no trip before", "keeps too short", "shop shut"]


@dataclass(frozen=True, slots=True)
class Bought:
    """An item and its day. `trip` None: a proposed day. `day` None: no trip suits. `doubt`: what is wrong, if
    anything."""

    item: Item
    keep: RawKeep
    day: date | None
    trip: Trip | None = None
    doubt: Doubt | None = None


def buying_days(plan: Plan, items: Sequence[Item]) -> tuple[Bought, ...]:
    """Each item's day, in order: one of the plan's trips; without trips, as few days as possible."""
    if plan.shopping:
        return tuple(_on_a_trip(plan, item, trips(plan)) for item in items)
    return _on_few_days(plan, items)


def _on_a_trip(plan: Plan, item: Item, all_trips: Sequence[Trip]) -> Bought:
    """The first trip after which it keeps until last begun, and the last for raw meat and fish and for leaves; else the
    last trip before it is first needed."""
    keep = raw_keep(item.food, item.section)
    first, last = _first(item), _local(plan, max(need.first for need in item.needs)).date()
    early = [trip for trip in all_trips if trip.end <= first]
    fit = [trip for trip in early if is_open(plan, item.section, trip)]
    if not fit:
        return Bought(item, keep, None, None, "shop shut" if early else "no trip before")
    for trip in reversed(fit) if keep.late else fit:
        if (last - trip.day).days <= keep.days:
            return Bought(item, keep, trip.day, trip)
    return Bought(item, keep, fit[-1].day, fit[-1], "keeps too short")


def _on_few_days(plan: Plan, items: Sequence[Item]) -> tuple[Bought, ...]:
    """Each item has an interval of days. Always taking the earliest deadline gives the fewest days."""
    keeps = [raw_keep(item.food, item.section) for item in items]
    windows = [_window(plan, item, keep) for item, keep in zip(items, keeps, strict=True)]
    found: dict[int, Bought] = {}
    for n in sorted(range(len(items)), key=lambda n: windows[n][1]):
        if n in found:
            continue
        day = windows[n][1]
        for other, item in enumerate(items):
            fits = windows[other][0] <= day <= windows[other][1]
            if other == n or (other not in found and fits and _open_on(plan, item.section, day)):
                found[other] = Bought(item, keeps[other], day, None, windows[other][2])
    return tuple(found[n] for n in range(len(items)))


def _window(plan: Plan, item: Item, keep: RawKeep) -> tuple[date, date, Doubt | None]:
    """The first and last possible day; the shop is open on the last."""
    first = _local(plan, _first(item))
    begun_last = _local(plan, max(need.first for need in item.needs)).date()
    on_the_day = first.hour >= NOON and item.key not in ON_THE_EVE
    latest = first.date() if on_the_day else first.date() - timedelta(days=1)
    for back in range(LOOK_BACK_DAYS):
        day = latest - timedelta(days=back)
        if _open_on(plan, item.section, day):
            earliest = begun_last - timedelta(days=keep.days)
            return min(earliest, day), day, None if earliest <= day else "keeps too short"
    return latest, latest, "shop shut"


def _first(item: Item) -> datetime:
    return min(need.first for need in item.needs)


def _local(plan: Plan, at: datetime) -> datetime:
    return at.astimezone(ZoneInfo(plan.zone))


def _open_on(plan: Plan, section: str, day: date) -> bool:
    hours = hours_of_shop(plan, section)
    return hours is None or any(day_of(plan, word) == day and spans for word, spans in hours.items())
