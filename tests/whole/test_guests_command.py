"""`platecall guests`, and what `check` does with a dish that could hurt a guest."""

import json
from pathlib import Path

import pytest

from board.base.exits import ExitCode
from tests.whole.conftest import LANTERN, Run

SMALL = """\
event: Small supper
date: 2026-12-05
zone: Europe/Dublin
arrive: 18:30
guests: ['Ines, no tree nuts', host]
hands: {host: {hours: {on the day: '10:00 - 23:30'}}}
courses:
  - course: Sweet
    at: 19:30
    dishes:
      - dish: Nut cake
        ingredients: [200 g ground hazelnuts (baking)]
        steps: [{step: bake the cake, takes: 30 min}]
"""


@pytest.fixture
def small(tmp_path: Path) -> str:
    path = tmp_path / "small.yaml"
    path.write_text(SMALL, encoding="utf-8")
    return str(path)


def test_guests_prints_every_guest_against_every_dish(run: Run) -> None:
    code, out, err = run("guests", LANTERN)

    assert (code, err) == (ExitCode.DONE, "")
    assert "Tomas, vegetarian        ✓  ✓  ✓  –  ✓  ✓  ✓  ✓  ✓" in out
    assert "5  Main: Lentils" in out.replace("5 Main", "5  Main")


def test_guests_for_other_programs_and_for_paper(run: Run, small: str) -> None:
    code, out, _ = run("guests", small, "--json")
    assert code == ExitCode.DONE
    assert [answer["verdict"] for answer in json.loads(out)["answers"]] == ["not safe", "nothing found"]

    code, out, _ = run("guests", small, "--markdown")
    assert code == ExitCode.DONE
    assert "| Ines, no tree nuts | ✗ |" in out


def test_an_allergy_met_exits_2_and_the_timetable_is_made_all_the_same(run: Run, small: str) -> None:
    code, out, _ = run("check", small)

    assert code == ExitCode.STOP
    assert "STOP: could hurt somebody who eats it" in out
    assert "small.yaml:12:23: guests 1: Nut cake is not safe for Ines (no tree nuts)" in out
    assert "Every course is on time; but it is not fit to serve" in out

    code, out, _ = run("sheet", small)
    assert code == ExitCode.DONE
    assert "bake the cake" in out


def test_guests_of_a_plan_that_cannot_be_read(run: Run, small: str) -> None:
    Path(small).write_text(SMALL.replace("takes: 30 min", "takes: soon"), encoding="utf-8")

    code, out, err = run("guests", small)

    assert (code, out) == (ExitCode.STOP, "")
    assert "small.yaml:13:46: plan 7" in err
