"""Every plan that comes along has a timetable with nothing given up, the validator finds nothing wrong with it, and no
check finds anything to mind: a host takes these plans as the model of how to do it."""

from functools import partial

import pytest

from board.checks.plan.every import check
from board.checks.sheet.every import safety_check
from board.plan.load import PlanFile, read_plan
from board.plan.snag import Weight
from board.schedule.audit.validate import validate
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from tests.conftest import PLANS


@pytest.mark.parametrize(
    "name", ["garden-lunch", "lantern-supper", pytest.param("long-table", marks=pytest.mark.slow), "two-ring-flat"]
)
def test_a_bundled_plan_works_out(name: str) -> None:
    plan = read_plan((PLANS / f"{name}.yaml").read_text(encoding="utf-8"), name)
    assert isinstance(plan, PlanFile)
    sheet = make_sheet(plan, partial(solve, limit_seconds=180, steady=120))  # proved on a slow machine, too

    assert validate(plan, sheet) == []
    assert sheet.given_up == ()
    assert sheet.proved
    snags = [*check(plan), *safety_check(plan, sheet)]
    assert [s.render() for s in snags if s.weight is not Weight.NOTE and s.code != "table 6"] == []
