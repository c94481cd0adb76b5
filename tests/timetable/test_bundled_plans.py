"""Every plan that comes along has a timetable with nothing given up, and the validator finds nothing wrong with it."""

import pytest

from board.plan.load import PlanFile, read_plan
from board.timetable.cpsat.solve import solve
from board.timetable.validate import validate
from board.timetable.write_up import make_sheet
from tests.conftest import PLANS


@pytest.mark.parametrize("name", ["garden-lunch", "lantern-supper", "long-table", "two-ring-flat"])
def test_a_bundled_plan_works_out(name: str) -> None:
    plan = read_plan((PLANS / f"{name}.yaml").read_text(encoding="utf-8"), name)
    assert isinstance(plan, PlanFile)
    sheet = make_sheet(plan, solve)

    assert validate(plan, sheet) == []
    assert sheet.given_up == ()
    assert sheet.proved
