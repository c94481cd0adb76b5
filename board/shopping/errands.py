"""The shopping list: what to buy, by day and shop section, and what is in the house. Pure."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from board.plan.load import PlanFile
from board.plan.model.shopping import InTheHouse
from board.plan.resolve.trips import Trip
from board.sheet.left import left_over
from board.sheet.run_sheet import RunSheet
from board.shopping.days import Bought, buying_days
from board.shopping.drinks import Strength, Table, poured_of_the_usual, strengths, table_of
from board.shopping.items import Item, items
from board.shopping.needs import Grown, Need, grown, needs


@dataclass(frozen=True, slots=True)
class Section:
    """One section of the shop; "" for what the plan gives none and nobody knows."""

    name: str
    bought: tuple[Bought, ...]


@dataclass(frozen=True, slots=True)
class Errand:
    """One day's shopping. `trip` None: a proposed day. `day` None: items that no trip of the plan suits."""

    day: date | None
    trip: Trip | None
    sections: tuple[Section, ...]


@dataclass(frozen=True, slots=True)
class Provisions:
    """Everything needed. `costs`: hundredths by currency sign; `unpriced`: items to buy without a price; `drinks`: who
    the drinks are calculated for, None if the plan does not ask. `poured`: the usual ones of which some is poured with
    courses. `left`: what one dish leaves over and another needs, in words; none of it is counted but yolks and whites
    of the same eggs."""

    event: str
    guests: int
    units: str | None
    zone: str
    errands: tuple[Errand, ...]
    in_house: tuple[Item, ...]
    needs: tuple[Need, ...]
    grown: tuple[Grown, ...]
    costs: Mapping[str, int]
    unpriced: int
    drinks: Table | None
    strengths: tuple[Strength, ...]
    poured: tuple[str, ...] = ()
    left: tuple[str, ...] = ()

    @property
    def to_buy(self) -> tuple[Bought, ...]:
        return tuple(b for errand in self.errands for section in errand.sections for b in section.bought)


def provisions(file: PlanFile, sheet: RunSheet, house: Sequence[InTheHouse]) -> Provisions:
    """The list. `house`: what the plan and its pantry files say is there."""
    plan = file.plan
    needed = needs(file, sheet)
    all_items = items(plan, needed, house)
    bought = buying_days(plan, [item for item in all_items if item.is_short])
    costs: dict[str, int] = {}
    for each in bought:
        if each.item.cost is not None:
            costs[each.item.sign] = costs.get(each.item.sign, 0) + each.item.cost
    return Provisions(
        event=plan.event,
        guests=plan.guest_count,
        units=plan.units,
        zone=plan.zone,
        errands=_errands(bought),
        in_house=tuple(item for item in all_items if not item.is_short),
        needs=needed,
        grown=grown(file),
        costs=costs,
        unpriced=sum(1 for each in bought if each.item.cost is None),
        drinks=table_of(file) if plan.drinks else None,
        strengths=strengths(file),
        poured=tuple(poured_of_the_usual(file)),
        left=tuple(left_over(sheet, each) for each in sheet.left if each.needed_by),
    )


def _errands(bought: Sequence[Bought]) -> tuple[Errand, ...]:
    """By day and trip, items without a day last; sections in plan order."""
    order = list(dict.fromkeys(each.item.section for each in bought))
    order.sort(key=lambda name: not name)  # no section: last
    groups: dict[tuple[date | None, Trip | None], list[Bought]] = {}
    for each in bought:
        groups.setdefault((each.day, each.trip), []).append(each)
    made = [
        Errand(day, trip, tuple(
            Section(name, found) for name in order if (found := tuple(b for b in group if b.item.section == name))
        ))
        for (day, trip), group in groups.items()
    ]  # fmt: skip
    return tuple(sorted(made, key=_when))


def _when(errand: Errand) -> tuple[date, str]:
    return errand.day or date.max, errand.trip.start.isoformat() if errand.trip else ""
