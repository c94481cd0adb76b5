"""An oven's figure as the plan has it: a setting written alone is the setting used, and no bake has two."""

import pytest

from board.plan.load import PlanFile
from board.schedule.audit.validate import validate
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet.run_sheet import RunSheet
from tests.conftest import HEAD, read


def two_bakes(pie: str, gratin: str) -> tuple[PlanFile, RunSheet]:
    """Both wanted at 20:00, in one oven with two shelves."""
    plan = read(
        HEAD
        + f"""\
kitchen: {{ovens: {{oven: {{shelves: 2}}}}}}
courses:
  - course: Main
    at: 20:00
    dishes:
      - dish: Pie
        steps: [{{step: bake the pie, where: oven at {pie}, takes: 40 min, keeps: 30 min}}]
      - dish: Gratin
        steps: [{{step: bake the gratin, where: oven at {gratin}, takes: 30 min, keeps: 30 min}}]
"""
    )
    assert isinstance(plan, PlanFile)
    return plan, make_sheet(plan, solve)


def settings_of(sheet: RunSheet, name: str) -> list[int]:
    slot = next(slot for slot in sheet.slots if slot.name == name)
    return [use.celsius for use in slot.uses if use.celsius is not None]


@pytest.mark.parametrize(("pie", "gratin"), [("170 C", "160 C"), ("170 C", "165 C (155 to 169 C)")])
def test_a_setting_written_alone_is_not_bent_to_share_an_oven(pie: str, gratin: str) -> None:
    plan, sheet = two_bakes(pie, gratin)

    assert settings_of(sheet, "bake the pie") == [170]
    assert settings_of(sheet, "bake the gratin") == [int(gratin[:3])]
    assert validate(plan, sheet) == []


def test_a_range_that_is_written_counts() -> None:
    plan, sheet = two_bakes("170 C", "160 C (150 to 170 C)")

    assert settings_of(sheet, "bake the pie") == settings_of(sheet, "bake the gratin") == [170]
    assert validate(plan, sheet) == []


def test_a_figure_in_fahrenheit_is_the_figure_used() -> None:
    """375 °F is 190.6 °C (NIST SP 811, B.8), and 350 °F 176.7 °C."""
    plan, sheet = two_bakes("375 F", "350 F")

    assert (settings_of(sheet, "bake the pie"), settings_of(sheet, "bake the gratin")) == ([191], [177])
    assert validate(plan, sheet) == []
