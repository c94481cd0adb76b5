"""`platecall provisions` from its words to its exit code."""

import json
import re
from pathlib import Path

import pytest

from board.base.exits import ExitCode
from board.files.pantry import read_ticks
from tests.conftest import HEAD
from tests.whole.conftest import LANTERN, Run
from tests.whole.test_terminal import Terminal, env

__all__ = ["env"]  # a fixture

PLAN = (
    HEAD.lstrip()
    + """\
shopping: {fri: '16:00 - 17:30', sat: '9:00 - 9:45'}
pantry: larder.yaml
packs: {butter: 250 g}
prices: {butter: 2.40 a pack, leeks: 3 a kg}
courses:
  - course: Broth
    at: 19:15
    drink: dry cider, 6 bottles, chilled 2 h, 5 %
    dishes:
      - dish: Leek *broth*
        for: 4
        ingredients: [1 kg leeks (veg), 200 g butter (dairy), 5 g salt, 2 "odd\x1b[2J" things]
        steps: [{step: simmer, where: stovetop, takes: 30 min}]
""".replace('2 "odd\x1b[2J" things', '"2 odd \\e[2J things"')
)


@pytest.fixture
def plan(tmp_path: Path) -> str:
    (tmp_path / "larder.yaml").write_text("- salt\n- 50 g butter\n")
    path = tmp_path / "supper.yaml"
    path.write_text(PLAN)
    return str(path)


def test_the_list_is_printed_by_day_and_section(run: Run, plan: str) -> None:
    """Leeks 2 kg at 3 a kg: 6.00; butter 400 g less 50 g is two packs: 4.80. Of eight guests each 1.35."""
    code, out, _ = run("provisions", plan)

    assert code == ExitCode.DONE
    assert "Friday 27 November, 16:00–17:30" in out
    assert re.search(r"□ +2 kg +leeks · Leek \*broth\* +6\.00", out)
    assert re.search(r"□ +2 packs of 250 g +butter \(400 g needed; 50 g in the house; 150 g left over\)", out)
    assert "Together 10.80, 1.35 a guest; 2 without a price, not counted" in out
    assert "5 % hold about 12.7 US standard drinks" in out  # 6 × 750 × 0.05 × 0.789 / 14 = 12.68
    assert "read the label" in out
    assert "\x1b" not in out


def test_json_says_the_same_in_figures(run: Run, plan: str) -> None:
    code, out, _ = run("provisions", plan, "--json")

    assert code == ExitCode.DONE
    found = json.loads(out)
    items = {i["food"]: i for e in found["errands"] for s in e["sections"] for i in s["items"]}
    assert items["leeks"]["parts"][0]["buy"] == 2000
    assert items["butter"]["parts"][0] == {
        "kind": "g", "need": [400, 400], "in_house": [50, 50], "short": 350, "buy": 500, "packs": 2, "left_over": 150,
        "cost": 480,
    }  # fmt: skip
    assert [i["food"] for i in found["in_house"]] == ["salt"]
    assert found["costs"] == [{"sign": None, "hundredths": 1080}]


def test_markdown_has_boxes_and_no_markup_from_the_plan(run: Run, plan: str) -> None:
    code, out, _ = run("provisions", plan, "--markdown")

    assert code == ExitCode.DONE
    assert "## Friday 27 November, 16:00–17:30" in out
    assert "- [ ] **2 kg** leeks · Leek \\*broth\\* · 6.00" in out
    assert "\x1b" not in out


def test_the_bundled_plan_has_a_list(run: Run) -> None:
    """Onions of the tartlets, the broth, the beef and the lentils: 5 + 1 + 3 + 1."""
    code, out, _ = run("provisions", LANTERN)

    assert code == ExitCode.DONE
    assert re.search(r"□ +10 +onions", out)


def test_a_missing_pantry_file_and_a_bad_one_are_told(run: Run, plan: str) -> None:
    larder = Path(plan).with_name("larder.yaml")
    larder.write_text("- 2 kg\n")
    code, _, err = run("provisions", plan)
    assert (code, "larder.yaml:1:3: plan 7" in err) == (2, True)

    larder.unlink()
    code, _, err = run("provisions", plan)
    assert (code, "there is no such file" in err) == (1, True)


def test_ticking_needs_a_terminal_and_only_one_form_at_once(run: Run, plan: str) -> None:
    code, _, err = run("provisions", plan, "--tick")
    assert code == 1
    assert "needs a terminal" in err
    assert run("provisions", plan, "--json", "--markdown")[0] == ExitCode.USAGE


@pytest.mark.slow
def test_ticks_outlive_a_kill_and_a_broken_file_ends_nothing(plan: str, env: dict[str, str]) -> None:
    ticks = Path(plan).with_name("supper.ticks.yaml")
    first = Terminal(["provisions", plan, "--tick"], (80, 24), env)
    first.wait_for("0 of 4")
    first.press(" ")
    first.wait_for("1 of 4")
    first.kill()
    assert read_ticks(ticks) == {"leek": "2 kg"}

    again = Terminal(["provisions", plan, "--tick"], (80, 24), env)
    again.wait_for("1 of 4")
    again.press("q")
    again.process.wait()
    assert again.process.exitstatus == ExitCode.DONE

    ticks.write_text("[")
    broken = Terminal(["provisions", plan, "--tick"], (80, 24), env)
    broken.wait_for("Ticks are not kept: supper.ticks.yaml cannot be read")
    broken.press(" ")
    broken.press("q")
    broken.process.wait()
    assert broken.process.exitstatus == ExitCode.DONE
    assert ticks.read_text() == "["
