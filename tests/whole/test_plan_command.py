"""`plan` from the command line: without a terminal; and what could not be written is nowhere lost."""

import signal
from pathlib import Path

import pytest

from tests.whole.conftest import Run
from tests.whole.test_terminal import Terminal
from tests.whole.test_terminal import env as env


def test_without_a_terminal_it_says_what_prints_the_same(run: Run, tmp_path: Path) -> None:
    plan = tmp_path / "supper.yaml"
    plan.write_text("event: Supper\n", encoding="utf-8")

    for typed in (("plan", str(plan)), (str(plan),)):
        code, _, told = run(*typed)
        assert code == 1
        assert "platecall check" in told
    assert plan.read_text(encoding="utf-8") == "event: Supper\n"


def test_without_a_terminal_nothing_is_begun_and_what_is_no_plan_is_named(run: Run, tmp_path: Path) -> None:
    gone, folder, empty = tmp_path / "super.yaml", tmp_path / "plans.yaml", tmp_path / "empty.yaml"
    folder.mkdir()
    empty.write_text("\n", encoding="utf-8")

    for path, told in ((gone, "there is no such file"), (folder, "this is a folder"), (empty, "the file is empty")):
        code, _, said = run("plan", str(path))
        assert code != 0
        assert told in said
        assert (code, said) == run("check", str(path))[::2]
    assert sorted(each.name for each in tmp_path.iterdir() if each.suffix == ".yaml") == ["empty.yaml", "plans.yaml"]


SHORT = """event: Supper
date: 2027-05-08
zone: UTC
arrive: "18:30"
guests: [4 guests]
"""


@pytest.mark.parametrize("how", ["left by its key", "asked to end"])
def test_what_could_not_be_written_is_put_aside_and_told(how: str, env: dict[str, str], tmp_path: Path) -> None:
    plan = tmp_path / "supper.yaml"
    plan.write_text(SHORT, encoding="utf-8")
    plan.chmod(0o444)
    table = Terminal(["plan", str(plan)], (120, 36), env)
    table.wait_for("u back")

    for key in ("\r", "\x15", *"Tea", "\r"):
        table.press(key)
    table.wait_for("NOT ON DISK")
    if how == "left by its key":
        table.process.send("q")
    else:
        table.process.kill(signal.SIGTERM)

    told = table.wait_for("the plan with them")
    [aside] = tmp_path.glob("supper.yaml.unsaved-*")
    assert aside.read_text(encoding="utf-8") == SHORT.replace("Supper", "Tea")
    assert plan.read_text(encoding="utf-8") == SHORT
    assert "the last changes are not in it" in told
    table.process.wait()
    assert table.process.exitstatus == (1 if how == "left by its key" else 128 + signal.SIGTERM)


def test_an_empty_file_takes_a_new_plan_and_one_with_a_word_in_it_does_not(run: Run, tmp_path: Path) -> None:
    empty, said, menu = tmp_path / "empty.yaml", tmp_path / "said.yaml", tmp_path / "menu.txt"
    empty.write_text("\n", encoding="utf-8")
    said.write_text("# mine\n", encoding="utf-8")
    menu.write_text("Main: Roast chicken\n", encoding="utf-8")

    codes = [run("new", str(path), "--menu", str(menu), "--zone", "Europe/Dublin")[0] for path in (empty, said)]

    assert codes == [0, 1]
    assert "- dish: Roast chicken" in empty.read_text(encoding="utf-8")
    assert said.read_text(encoding="utf-8") == "# mine\n"


def test_in_an_empty_file_the_table_begins_with_a_menu(env: dict[str, str], tmp_path: Path) -> None:
    plan = tmp_path / "empty.yaml"
    plan.write_text("", encoding="utf-8")

    table = Terminal(["plan", str(plan)], (80, 24), env)

    table.wait_for("Type the menu")
    table.process.kill(signal.SIGTERM)
