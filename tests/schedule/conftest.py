"""The plan with a slow drying and its run sheet, solved once for all tests of the validator."""

from collections.abc import Callable

import pytest

from board.plan.load import PlanFile
from board.schedule.audit.validate import validate
from board.sheet.run_sheet import RunSheet
from tests.schedule.audit.slow_drying import APPLES
from tests.schedule.audit.tampering import Tampered, sheet_of


@pytest.fixture(scope="session")
def apples(plan_from: Callable[[str], PlanFile]) -> PlanFile:
    return plan_from(APPLES)


@pytest.fixture(scope="session")
def sheet(apples: PlanFile) -> RunSheet:
    return sheet_of(apples)


@pytest.fixture(scope="session")
def found_in(apples: PlanFile) -> Tampered:
    return lambda sheet: validate(apples, sheet)
