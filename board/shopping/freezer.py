"""What is bought frozen, and ice: in the freezer from the shopping until it is needed. Pure."""

import re
from collections.abc import Iterator
from datetime import datetime, time
from zoneinfo import ZoneInfo

import msgspec

from board.facts.called import same_food
from board.plan.load import PlanFile
from board.plan.resolve.amounts import GRAMS
from board.sheet.run_sheet import InCold, RunSheet
from board.shopping.days import NOON, Bought
from board.shopping.errands import provisions

LITRES_A_KILO = 2.0  # ice in cubes and frozen food, their packs included: common practice, no source
_FROZEN = re.compile(r"\bfrozen\b|\bice ?creams?\b|\bsorbets?\b|^(crushed |party )?ice( cubes?)?$")


def with_bought_frozen(file: PlanFile, sheet: RunSheet) -> RunSheet:
    """The sheet with that beside what the timetable keeps cold. Raises nothing; it may be there already."""
    others = tuple(each for each in sheet.cold if not each.bought)
    return msgspec.structs.replace(sheet, cold_stays=(*others, *_bought(file, sheet)))


def _bought(file: PlanFile, sheet: RunSheet) -> Iterator[InCold]:
    zone = ZoneInfo(file.plan.zone)
    house = [each for each in file.plan.pantry if each.file is None]
    for each in provisions(file, sheet, house).to_buy:
        begin = _home(each, zone)
        over = max(need.first for need in each.item.needs)
        if begin is not None and begin < over and _FROZEN.search(same_food(each.item.food)):
            yield InCold("freezer", each.item.food, begin, over, _litres(each), bought=True)


def _home(each: Bought, zone: ZoneInfo) -> datetime | None:
    """When it comes home: after its trip; on a day without one, at noon."""
    if each.trip is not None:
        return each.trip.end
    return datetime.combine(each.day, time(NOON), zone) if each.day is not None else None


def _litres(each: Bought) -> float | None:
    """None if not all of it is bought by weight."""
    grams = [part.bought for part in each.item.parts if part.need.kind == GRAMS]
    if len(grams) < len(each.item.parts) or None in grams:
        return None
    return round(sum(amount or 0.0 for amount in grams) / 1000 * LITRES_A_KILO, 1)
