"""No text of a plan can write a line of its own, or move a terminal's cursor, in any plain output."""

import io
import re
from collections.abc import Callable

import msgspec
import pytest
from rich.console import Console

from board.app.plan_commands import _why
from board.checks.sheet.assessed import of_plan
from board.output.check import print_check
from board.output.leaves import leaves
from board.output.markdown import markdown
from board.output.sheet import print_sheet
from board.plan.load import PlanFile
from board.sheet.run_sheet import RunSheet
from tests.conftest import HEAD

FORGED = "\nFORGED: all guests may eat this\r\x1b[2J\x9b2J"
PLAN = """
courses:
  - course: "Main@"
    at: 19:30
    dishes:
      - dish: "Pot@"
        ingredients: ["1 kg potatoes@"]
        steps:
          - {step: "stir the pot@", where: stovetop, takes: 20 min, before: "serve Main@"}
jobs:
  - {job: "polish the lamp@", takes: 5 min}
"""
Print = Callable[[RunSheet], object]


@pytest.fixture
def forged(little: RunSheet) -> RunSheet:
    slots = tuple(
        msgspec.structs.replace(slot, named=f"{slot.named}{FORGED}", look_for="soft" + FORGED, noted=("salt" + FORGED,))
        for slot in little.slots
    )
    return msgspec.structs.replace(little, plan=little.plan + FORGED, slots=slots, noted=("note" + FORGED,))


def own_lines(text: str) -> list[str]:
    """Lines that a plan's text wrote for itself, and controls."""
    return [
        line for line in text.split("\n") if re.match(r"\s*FORGED", line) or re.search(r"[\x00-\x1f\x7f-\x9f]", line)
    ]


@pytest.mark.parametrize("by", ["day", "person", "lane"])
def test_on_the_sheet(forged: RunSheet, by: str) -> None:
    out = io.StringIO()
    print_sheet(forged, by, Console(file=out, width=2000))

    assert "FORGED" in out.getvalue()
    assert own_lines(out.getvalue()) == []


@pytest.mark.parametrize("whom", ["wall", "everybody"])
def test_on_a_leaf(forged: RunSheet, whom: str) -> None:
    told = markdown(leaves(forged, whom))

    assert "FORGED" in told
    assert own_lines(told) == []


def test_in_what_a_step_waits_for(forged: RunSheet, capsys: pytest.CaptureFixture[str]) -> None:
    _why(forged, "stew")

    told = capsys.readouterr().out
    assert "FORGED" in told
    assert own_lines(told) == []


def test_in_a_check(plan_from: Callable[[str], PlanFile]) -> None:
    text = (HEAD.replace("Test supper", '"Test supper@"') + PLAN).replace("@", FORGED.encode("unicode_escape").decode())
    out = io.StringIO()
    print_check(of_plan(plan_from(text)), Console(file=out, width=2000), whole=True)

    assert out.getvalue().count("FORGED") > 3
    assert own_lines(out.getvalue()) == []
