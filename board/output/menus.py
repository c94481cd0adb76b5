"""Two plans beside each other, in one table: how much is ahead, minutes with guests, clashes, cost."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from rich.console import Console

from board.base import words as shared
from board.checks.sheet.assessed import Assessed
from board.output import words
from board.output.tables import cell, table
from board.plan.load import PlanFile
from board.plan.snag import Weight
from board.sheet.blocks import day_of
from board.sheet.company import as_planned, busiest, host_of, last_clear
from board.sheet.run_sheet import RunSheet
from board.shopping.errands import Provisions


@dataclass(frozen=True)
class Seen:
    """What is compared of one plan. `rows`: what is told by its title."""

    name: str
    rows: dict[str, str]


def seen_without(name: str, file: PlanFile, stops: int) -> Seen:
    """Of a plan that something stops: no timetable is worked out."""
    return Seen(name, {**_of_menu(file), words.BESIDE_STOPS: str(stops)})


def seen_with(name: str, plan: Assessed, bought: Provisions) -> Seen:
    """Of a plan with its timetable."""
    sheet = plan.the_sheet
    evening, away = _evening(sheet), as_planned(sheet).get(host_of(sheet), 0)
    course, busy = busiest(sheet)
    return Seen(
        name,
        {
            **_of_menu(plan.file),
            words.BESIDE_AHEAD: shared.short(ahead_minutes(sheet)),
            words.BESIDE_ON_THE_DAY: shared.short(_work(sheet) - ahead_minutes(sheet)),
            words.BESIDE_WITH_GUESTS: words.beside_of(shared.short(evening - away), shared.short(evening)),
            words.BESIDE_BUSIEST: words.beside_busiest(busy, course),
            words.BESIDE_CLASHES: str(len(sheet.given_up)),
            words.BESIDE_STOPS: str(sum(snag.weight is Weight.STOP for snag in plan.snags)),
            words.BESIDE_COST: _cost(bought),
        },
    )


def _of_menu(file: PlanFile) -> dict[str, str]:
    courses = file.plan.courses
    return {words.BESIDE_MENU: words.beside_dishes(sum(len(each.dishes) for each in courses), len(courses))}


def ahead_minutes(sheet: RunSheet) -> int:
    """Minutes of everybody's work on the days before the event."""
    return _work(sheet, before=date.fromisoformat(sheet.date))


def _work(sheet: RunSheet, before: date | None = None) -> int:
    return sum(
        round((part.end - part.start).total_seconds() / 60)
        for slot in sheet.slots
        for part in slot.attended
        if before is None or day_of(sheet, part.start) < before
    )


def _evening(sheet: RunSheet) -> int:
    """Minutes from the guests' coming to the clearing of the last course."""
    clear = last_clear(sheet)
    if clear is None:
        return 0
    came = next((slot.start for slot in sheet.slots if slot.kind == "arrive"), sheet.arrive)
    return round((sheet.by_id()[clear].start - came).total_seconds() / 60)


def _cost(bought: Provisions) -> str:
    """In each currency; empty where no price is known."""
    sums = " + ".join(shared.money(total, sign) for sign, total in bought.costs.items())
    return words.beside_cost(sums, bought.unpriced) if sums else ""


def print_beside(seen: Sequence[Seen], out: Console) -> None:
    """One column each; a row that nobody has something for is left out."""
    rows = table(("", "left"), *((each.name, "left") for each in seen))
    for title in words.BESIDE_ROWS:
        if any(each.rows.get(title) for each in seen):
            rows.add_row(cell(title), *(cell(each.rows.get(title) or shared.SIGN["nothing"]) for each in seen))
    out.print(rows)
    out.print(cell(words.BESIDE_FOOT, "dim"))
