"""A plan that could hurt somebody: what `check`, `sheet` and the kept sheet say of it."""

import json
from pathlib import Path

import pytest

from board.app.timetables import sheet_of
from board.base.exits import ExitCode
from board.sheet.told import Stop
from tests.conftest import HEAD
from tests.whole.conftest import Run

PLAN = (
    HEAD
    + """
courses:
  - course: Main
    at: 20:00
    standing: yes
    eaten in: 100 min
    dishes:
      - dish: Braised chicken
        ingredients: [2 kg chicken thighs (butcher)]
        steps:
          - step: braise the thighs
            where: oven at 160 C
            takes: 80 min
            cooks: poultry
            until: 70 C
            keeps: 30 min hot
      - dish: Cream salad
        ingredients: [1 l double cream (dairy)]
        steps:
          - {step: mix it, takes: 20 min, before: 'serve Main, at once'}
"""
)


@pytest.fixture
def plan(tmp_path: Path) -> str:
    path = tmp_path / "supper.yaml"
    path.write_text(PLAN.lstrip(), encoding="utf-8")
    return str(path)


def test_check_makes_the_timetable_all_the_same_and_exits_2(run: Run, plan: str) -> None:
    code, out, _ = run("check", plan)

    assert code == ExitCode.STOP
    assert "food 1: braise the thighs: its middle reaches 70 °C (158 °F)" in out
    # 20 mixed, 5 carried, 100 eaten: 125 of 120
    assert "food 10: Cream salad: 2 h 05" in out
    assert out.index("food 10") < out.index("food 11")
    assert "give something up:\n  Cream salad stands out 2 h 05 until it is eaten, and may for 2 h (food 10)" in out


def test_the_sheet_says_first_what_must_be_mended_and_last_every_clock(run: Run, plan: str) -> None:
    code, out, _ = run("sheet", plan)

    assert code == ExitCode.DONE
    head, _, rest = out.partition("serve Main")
    assert "Must be mended before anybody eats" in head
    assert head.index("food 1") < head.index("proved")
    clocks = rest.partition("Neither hot nor cold enough")[2]
    assert "⊗ Cream salad" in clocks
    assert "125" in clocks
    assert "Braised chicken" in clocks
    assert "Your local code and the label decide" in " ".join(clocks.split())


def test_the_sheet_for_other_programs_has_stops_and_clocks(run: Run, plan: str) -> None:
    _, out, _ = run("sheet", plan, "--json")
    form = json.loads(out)

    assert [line.split(":")[0] for line in form["stops"]] == ["food 1", "food 10"]
    assert form["rules"] == "home rules (USDA FSIS / FoodSafety.gov)"
    chicken, salad = form["clocks"]
    assert set(salad) == {"dish", "course", "minutes_out", "limit_minutes", "runs_out", "source"}
    assert (chicken["dish"], chicken["minutes_out"]) == ("Braised chicken", 105)
    # out from 19:35
    assert (salad["minutes_out"], salad["limit_minutes"], salad["runs_out"]) == (125, 120, "2026-11-28T21:35:00+00:00")


def test_the_kept_sheet_carries_its_stops(run: Run, plan: str) -> None:
    run("sheet", plan)

    assert [isinstance(stop, Stop) and stop.finding for stop in sheet_of(Path(plan)).stops] == ["food 1", "food 10"]
