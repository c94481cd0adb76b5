"""`platecall settle`: guesses listed without a terminal, gone through at one, and written back."""

import os
from pathlib import Path

import pytest

from board.app.settle import write
from board.base.errors import Trouble
from board.checks.plan.guesses import guesses
from board.files.plans import plan_in
from tests.whole.conftest import Run
from tests.whole.test_terminal import Terminal

PLAN = """\
event: Soup for two
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [Ada, Ben]
hands:
  host:
    hours:
      on the day: 16:00 - 22:00
courses:
  - course: Soup
    at: 19:30
    dishes:
      - dish: Leek soup   # as at home
        ingredients: [2 leeks, 1 litre stock]
        steps:
          - step: cut the leeks
            takes: 10 min
            guessed: [takes]
          - step: cook the soup   # the big pot
            where: stovetop, 1 ring
            takes: 40 min
            keeps: 30 min hot
            guessed: [where, takes]
"""
WRITTEN = PLAN.replace("            guessed: [takes]\n", "").replace("            guessed: [where, takes]\n", "")


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    path = tmp_path / "soup.yaml"
    path.write_text(PLAN)
    return path


def test_without_a_terminal_the_guesses_are_listed_and_nothing_changes(run: Run, plan: Path) -> None:
    code, out, _ = run("settle", str(plan))

    assert code == 0
    assert "3 guesses are not confirmed" in out
    assert "Leek soup: cook the soup: takes: 40 min" in out
    assert plan.read_text() == PLAN
    assert list(plan.parent.glob("*.bak-*")) == []


def test_check_names_the_command_in_one_line_and_the_sheet_tells_its_guesses(run: Run, plan: Path) -> None:
    _, out, _ = run("check", str(plan))
    _, sheet, _ = run("sheet", str(plan))

    assert "3 guesses are not confirmed: Leek soup 3" in out
    assert out.count("is a guess, and") <= 1
    assert out.count("`platecall settle PLAN`") == 1
    assert "where, takes guessed" in sheet


def test_a_plan_without_guesses_says_so(run: Run, plan: Path) -> None:
    plan.write_text(WRITTEN)

    code, out, _ = run("settle", str(plan))

    assert code == 0
    assert "nothing in it is called a guess" in out


def settled(plan: Path, answers: dict[int, str | None]) -> tuple[Path, int]:
    file = plan_in(PLAN, plan)
    return write(plan, PLAN, file, guesses(file), answers)


def test_answers_go_into_a_plan_that_was_changed_meanwhile(plan: Path) -> None:
    numbers = {(each.step, each.key): n for n, each in enumerate(guesses(plan_in(PLAN, plan)))}
    other = PLAN.replace("Soup for two", "Soup at last").replace("takes: 10 min", "takes: 12 min")
    plan.write_text(other)

    answers = {numbers["cook the soup", "takes"]: "35 min", numbers["cut the leeks", "takes"]: None}
    copy, lost = settled(plan, answers)

    assert lost == 1  # of the leeks another time stands there now, which nobody has seen
    written = plan.read_text()
    assert "event: Soup at last" in written
    assert "takes: 35 min" in written
    assert "guessed: [where]" in written
    assert "takes: 12 min\n            guessed: [takes]" in written
    assert copy.read_text() == other


def test_answers_that_cannot_be_written_are_put_aside(plan: Path) -> None:
    plan.write_text("event: [broken\n")

    with pytest.raises(Trouble, match="with your answers"):
        settled(plan, dict.fromkeys(range(3)))

    [aside] = plan.parent.glob("soup.yaml.unsaved-*")
    assert aside.read_text() == WRITTEN
    assert plan.read_text() == "event: [broken\n"


@pytest.mark.skipif(os.name != "posix", reason="pexpect wants a pseudo-terminal")
@pytest.mark.slow
def test_at_a_terminal_what_is_said_is_written_with_a_copy_beside(home: Path, plan: Path) -> None:
    env = {**os.environ, "PYTHONPATH": str(Path(__file__).parents[2]), "TERM": "xterm-256color"}
    terminal = Terminal(["settle", str(plan)], (80, 24), env)
    terminal.wait_for("0 of 3 settled")
    terminal.press("2 h")
    terminal.press("\r")
    terminal.wait_for("'2 h' is neither a lane")  # it asks about the ring first
    terminal.press("\x1b")
    terminal.wait_for("enter take it   0-9")
    terminal.press("\r")
    terminal.press("2 h")
    terminal.press("\r")
    terminal.wait_for("2 of 3 settled")
    terminal.press(" ")
    terminal.press("\r")
    terminal.wait_for("3 settled.")

    changed = plan.read_text()
    assert "guessed" not in changed
    assert "takes: 2 h" in changed
    assert "# as at home" in changed
    assert "# the big pot" in changed
    (copy,) = plan.parent.glob("soup.yaml.bak-*")
    assert copy.read_text() == PLAN


@pytest.mark.skipif(os.name != "posix", reason="pexpect wants a pseudo-terminal")
def test_stopping_at_once_writes_nothing(home: Path, plan: Path) -> None:
    env = {**os.environ, "PYTHONPATH": str(Path(__file__).parents[2]), "TERM": "xterm-256color"}
    terminal = Terminal(["settle", str(plan)], (80, 24), env)
    terminal.wait_for("0 of 3 settled")
    terminal.press("q")
    terminal.wait_for("nothing was settled")

    assert plan.read_text() == PLAN
    assert list(plan.parent.glob("*.bak-*")) == []
