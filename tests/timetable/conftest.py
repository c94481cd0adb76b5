"""The plan with a slow drying and its run sheet, solved once for all tests of the validator."""

from collections.abc import Callable

import pytest

from board.plan.load import PlanFile
from board.timetable.run_sheet import RunSheet
from board.timetable.validate import validate
from tests.timetable.slow_drying import APPLES
from tests.timetable.tampering import Tampered, sheet_of


@pytest.fixture(scope="session")
def apples(plan_from: Callable[[str], PlanFile]) -> PlanFile:
    return plan_from(APPLES)


@pytest.fixture(scope="session")
def sheet(apples: PlanFile) -> RunSheet:
    return sheet_of(apples)


@pytest.fixture(scope="session")
def found_in(apples: PlanFile) -> Tampered:
    return lambda sheet: validate(apples, sheet)
