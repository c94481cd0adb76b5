"""Lists of provisions out of a test's own plan. A made-up sheet gives every piece of work the time it is told."""

from collections.abc import Callable, Mapping
from datetime import UTC, datetime, timedelta

import pytest

from board.plan.load import PlanFile
from board.sheet.run_sheet import RunSheet, Slot
from board.shopping.errands import Provisions, provisions

SATURDAY = datetime(2026, 11, 28, tzinfo=UTC)  # the day of the tests' plans, whose zone is UTC in winter


def at_times(file: PlanFile, starts: Mapping[str, datetime], usual: datetime) -> RunSheet:
    """A sheet that is nothing but times: of the work named, and `usual` for the rest. Minutes are made up."""
    slots = []
    for id_, task in file.filled.tasks.items():
        start = starts.get(task.node.name, usual)
        kind = task.node.kind
        slots.append(Slot(id_, task.node.name, kind, "worktop", start, start + timedelta(minutes=5),
                          dish=task.node.dish, course=task.node.course))  # fmt: skip
    return RunSheet(plan=file.plan.event, zone=file.plan.zone, digest=file.digest, date=file.plan.date.isoformat(),
                    arrive=file.filled.arrive, courses=(), slots=tuple(slots))  # fmt: skip


Listed = Callable[..., Provisions]


@pytest.fixture
def listed(plan_from: Callable[[str], PlanFile]) -> Listed:
    """The list of a plan; `starts`: when work named so begins, in UTC; all else at three on the day."""

    def make(text: str, starts: Mapping[str, datetime] | None = None) -> Provisions:
        file = plan_from(text)
        sheet = at_times(file, starts or {}, SATURDAY + timedelta(hours=15))
        return provisions(file, sheet, [each for each in file.plan.pantry if each.file is None])

    return make
