"""An oven's figure as the plan has it: a setting written alone is the setting used, and no bake has two."""

import random
from itertools import combinations

import pytest

from board.evening.calls import Call
from board.plan.load import PlanFile
from board.schedule.audit.validate import validate
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet.run_sheet import RunSheet
from board.sheet.told import DialTurn
from board.view.board import headline
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


def baking(seed: int) -> PlanFile:
    """Three to five bakes with ranges that meet in pairs, some kept warm there, in one oven."""
    chance = random.Random(seed)
    dishes = []
    for n in range(chance.choice([3, 4, 5])):
        want = chance.choice([160, 170, 180, 190, 200, 210])
        below, above = chance.choice([(0, 0), (10, 10), (5, 20), (20, 5)])
        heat = f"{want} C ({want - below} to {want + above} C)" if below else f"{want} C"
        keeps = chance.choice(["2 h", "30 min", "40 min in the oven at 90 C (80 to 170 C)"])
        dishes.append(
            f"{{dish: D{n}, steps: [{{step: bake {n}x, where: oven at {heat}, "
            f"takes: {chance.choice([20, 35, 60])} min, keeps: {keeps}}}]}}"
        )
    courses = [f"  - {{course: C, at: '20:00', dishes: [{', '.join(dishes)}]}}"]
    shelves = chance.choice([2, 3])
    plan = read("\n".join([HEAD + f"kitchen: {{ovens: {{oven: {{shelves: {shelves}}}}}}}", "courses:", *courses, ""]))
    assert isinstance(plan, PlanFile)
    return plan


@pytest.mark.parametrize("seed", [*range(12), *(pytest.param(seed, marks=pytest.mark.slow) for seed in range(12, 60))])
def test_no_bake_changes_its_setting_midway(seed: int) -> None:
    plan = baking(seed)
    sheet = make_sheet(plan, lambda problem: solve(problem, limit_seconds=5))
    bakes = [(slot, use) for slot in sheet.slots if slot.kind == "step" for use in slot.uses if use.celsius is not None]
    turns = [(slot.start, slot.end) for slot in sheet.slots if slot.kind == "heat"]

    assert len(bakes) == len({slot.id for slot, _ in bakes})
    assert not [slot.name for slot, _ in bakes for start, end in turns if start < slot.end and slot.start < end]
    for (_, one), (_, other) in combinations(bakes, 2):
        assert one.celsius == other.celsius or one.end <= other.start or other.end <= one.start
    assert validate(plan, sheet) == []


def test_a_turn_of_no_minutes_is_told_by_the_step_that_enters() -> None:
    plan = read(
        HEAD
        + """\
courses:
  - course: Main
    at: 20:00
    dishes:
      - dish: Loaf
        steps:
          - {step: bake it hot, where: oven at 230 C, takes: 15 min, keeps: 0 min}
          - {step: bake it on, where: oven at 180 C, takes: 25 min, after: "bake it hot, at once"}
"""
    )
    assert isinstance(plan, PlanFile)
    sheet = make_sheet(plan, solve)
    on = next(slot for slot in sheet.slots if slot.name == "bake it on")

    assert [(slot.named, slot.start < slot.end) for slot in sheet.slots if slot.kind == "heat"] == [
        (DialTurn("oven", 230), True)
    ]
    assert on.turn == DialTurn("oven", 180, before=230)
    assert headline(on, Call(on.id, "start", 0, on.start)) == "Oven down to 180 °C (350 °F): Bake it on"
    assert validate(plan, sheet) == []
