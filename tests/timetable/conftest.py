"""The shells' plan and its run sheet, solved once for all tests of the validator."""

from collections.abc import Callable

import pytest

from board.plan.load import PlanFile
from board.timetable.run_sheet import RunSheet
from board.timetable.validate import validate
from tests.timetable.shells import SHELLS
from tests.timetable.tampering import Tampered, sheet_of


@pytest.fixture(scope="session")
def shells(plan_from: Callable[[str], PlanFile]) -> PlanFile:
    return plan_from(SHELLS)


@pytest.fixture(scope="session")
def sheet(shells: PlanFile) -> RunSheet:
    return sheet_of(shells)


@pytest.fixture(scope="session")
def found_in(shells: PlanFile) -> Tampered:
    return lambda sheet: validate(shells, sheet)
