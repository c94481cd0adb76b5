"""Run sheets with one fact changed, and what is then said of them."""

from collections.abc import Callable
from datetime import datetime, timedelta
from typing import Any

from msgspec.structs import replace

from board.plan.load import PlanFile
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet.run_sheet import RunSheet, Slot

Tampered = Callable[[RunSheet], list[str]]


def sheet_of(plan_file: PlanFile) -> RunSheet:
    return make_sheet(plan_file, solve)


def with_slot(sheet: RunSheet, id_: str, **facts: Any) -> RunSheet:
    """The sheet with other facts about one slot."""
    assert id_ in sheet.by_id()
    return replace(sheet, slots=tuple(replace(s, **facts) if s.id == id_ else s for s in sheet.slots))


def moved(sheet: RunSheet, id_: str, to: datetime) -> RunSheet:
    """The sheet with one slot, and all its parts, starting at another time."""
    slot = sheet.by_id()[id_]
    by = to - slot.start
    attended = tuple(replace(part, start=part.start + by, end=part.end + by) for part in slot.attended)
    uses = tuple(replace(use, start=use.start + by, end=use.end + by) for use in slot.uses)
    return with_slot(sheet, id_, start=to, end=slot.end + by, attended=attended, uses=uses)


def minutes(count: int) -> timedelta:
    return timedelta(minutes=count)


def says(found: list[str], *words: str) -> bool:
    """One sentence has all these words."""
    return any(all(word in sentence for word in words) for sentence in found)


def heating_before(sheet: RunSheet, id_: str) -> Slot:
    """The turning of the oven's dial that readies it for a step."""
    return next(slot for slot in sheet.slots if slot.kind == "heat" and id_ in slot.then)


def on(clock: str, day: int = 28) -> datetime:
    return datetime.fromisoformat(f"2026-11-{day}T{clock}:00+00:00")
