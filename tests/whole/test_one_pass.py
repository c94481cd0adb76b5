"""What is worked out of a plan is worked out once for a command, and handed on."""

from pathlib import Path

import pytest

from board.checks.allergens.guest_snags import guests_can_eat_what_they_are_served
from board.checks.allergens.guests_eat import matrix
from board.checks.plan import every
from board.checks.plan.cautions import cautions
from board.checks.sheet import every as with_sheet
from board.checks.sheet.clocks import dish_clocks
from board.schedule.formulate import problem_of
from tests.whole.conftest import Run
from tests.whole.counted import counted

PLAN = """\
event: Soup for two
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: ["Ada, no milk", Ben]
hands:
  host:
    hours:
      on the day: 16:00 - 22:00
kitchen:
  tools: {big pot: 1}
courses:
  - course: Soup
    at: 19:30
    dishes:
      - dish: Leek soup
        ingredients: [2 leeks, 1 litre stock]
        steps:
          - {step: cook the soup, where: 'stovetop, big pot', takes: 40 min, keeps: 30 min hot,
             or: [{takes: 1 h}]}
"""
CHECKS = [*every.CHECKS, guests_can_eat_what_they_are_served, *with_sheet.CHECKS]
BEHIND = [every.check, with_sheet.safety_check, matrix, cautions]  # the matrix and what is said of the plan


@pytest.fixture
def plan(tmp_path: Path) -> str:
    path = tmp_path / "soup.yaml"
    path.write_text(PLAN)
    return str(path)


@pytest.mark.parametrize("command", ["check", "sheet", "provisions"])
def test_a_plan_is_gone_over_once(run: Run, plan: str, command: str) -> None:
    with counted([*CHECKS, *BEHIND, problem_of]) as calls:
        code, _, _ = run(command, plan)

    assert code == 0
    assert set(calls.values()) == {1}, calls


def test_with_its_timetable_kept_no_problem_is_posed(run: Run, plan: str) -> None:
    run("sheet", plan)

    with counted([*CHECKS, *BEHIND, problem_of]) as calls:
        run("check", plan)

    assert calls.pop("problem_of") == 0
    assert set(calls.values()) == {1}, calls


def test_a_plan_that_is_stopped_is_gone_over_once(run: Run, plan: str) -> None:
    Path(plan).write_text(PLAN.replace("stovetop, big pot", "stovetop, 9 rings, big pot"))
    alone = [*every.CHECKS, every.check, matrix]

    for command in ("check", "sheet"):
        with counted([*alone, with_sheet.safety_check, problem_of]) as calls:
            code, _, _ = run(command, plan)

        assert code == 2
        assert (calls.pop("safety_check"), calls.pop("problem_of")) == (0, 0)
        assert set(calls.values()) == {1}, calls


def test_the_checks_of_a_sheet_share_its_clocks(run: Run, plan: str) -> None:
    with counted([dish_clocks]) as calls:
        run("check", plan)

    assert calls["dish_clocks"] == 1


def test_ways_out_pose_one_problem_for_the_plan_and_one_for_each_change_tried_or_written(run: Run, plan: str) -> None:
    from board.plan.edit.edits import apply_all, try_all

    Path(plan).write_text(PLAN.replace("on the day: 16:00 - 22:00", "on the day: 19:10 - 22:00"))

    with counted([problem_of, every.check, apply_all, try_all]) as calls:
        code, shown, _ = run("sheet", plan, "--ways-out", "1")

    assert code == 0
    assert calls["apply_all"] > 0, shown
    assert calls["apply_all"] <= calls["try_all"]  # only what helps is written
    assert calls["problem_of"] <= 1 + calls["try_all"] + calls["apply_all"]
    assert calls["check"] <= 1 + calls["try_all"] + calls["apply_all"]
