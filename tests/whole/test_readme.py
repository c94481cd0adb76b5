"""What the README shows is true: its example plan is sound, its commands and keys are the program's. What it leaves to
`platecall help` is tested in `tests/manual`."""

import re
import shlex
from pathlib import Path

import pytest

from board.app import words as app_words
from board.checks.plan.every import check
from board.checks.sheet.every import safety_check
from board.manual import board_keys
from board.plan.load import PlanFile, read_plan
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from tests.whole.conftest import Run

README = (Path(__file__).parents[2] / "README.md").read_text(encoding="utf-8")


def block(kind: str, number: int = 0) -> str:
    return str(re.findall(rf"^```{kind}\n(.*?)^```", README, re.DOTALL | re.MULTILINE)[number])


def test_it_is_short() -> None:
    assert len(README.splitlines()) <= 180


def test_the_example_plan_is_sound_and_clean() -> None:
    plan = read_plan(block("yaml"), "README.md")

    assert isinstance(plan, PlanFile)
    assert len(block("yaml").splitlines()) <= 25
    assert check(plan) + safety_check(plan, make_sheet(plan, solve)) == []


@pytest.mark.slow
def test_its_six_commands_lead_from_a_menu_to_the_evening(
    run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    Path("menu.txt").write_text(block("text"), encoding="utf-8")
    lines = block("sh", 2).splitlines()

    assert len(lines) == 6
    for line in lines:
        code, _, wrong = run(*shlex.split(line)[1:])
        assert code == 0, f"{line}\n{wrong}"
    assert Path("shopping.html").is_file()
    assert Path("wall.html").is_file()


def test_every_key_it_shows_is_one_of_the_board() -> None:
    table = README.partition("| key | does |")[2].partition("\n\n")[0]
    keys = [key for row in table.splitlines() for key in re.findall(r"`([^`]+)`", row.partition(" | ")[0])]

    assert 12 <= len(keys) <= 20
    assert set(keys) <= board_keys.names()


def test_every_command_stands_in_the_readme() -> None:
    for command in app_words.COMMANDS:
        assert re.search(rf"platecall {command}\b", README), command


def test_it_shows_every_picture_there_is_and_no_other() -> None:
    root = Path(__file__).parents[2]
    shown = re.findall(r"!\[[^\]]{40,}\]\(([^)]+)\)", README)

    assert sorted(shown) == sorted(f"screenshots/{file.name}" for file in (root / "screenshots").iterdir())
    assert len(shown) == README.count("![")  # each with words for who cannot see it
    for picture in shown:
        assert (root / picture).read_bytes().startswith(b"\x89PNG\r\n\x1a\n"), picture  # nothing in it to be fetched
        assert 1_000 < (root / picture).stat().st_size < 300_000, picture
