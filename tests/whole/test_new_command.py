"""`platecall new`: by options, by questions in a real terminal, and never over a file that is there."""

import os
import sys
import time
from pathlib import Path

import pexpect
import pytest

from board.app import new_plan
from board.base.exits import ExitCode
from board.plan.load import PlanFile, read_plan
from tests.whole.conftest import Run


def plan_in(path: Path) -> PlanFile:
    found = read_plan(path.read_text(encoding="utf-8"), path.name)
    assert isinstance(found, PlanFile)
    return found


def test_by_options_alone_and_the_check_accepts_it(run: Run, tmp_path: Path) -> None:
    path = tmp_path / "feast.yaml"
    words = ("--event", 'Ada\'s "feast": #1', "--date", "2026-12-05", "--arrive", "7 pm", "--guests", "8",
             "--ovens", "2", "--rings", "3", "--courses", "4", "--zone", "Europe/Berlin")  # fmt: skip

    code, out, err = run("new", str(path), *words)

    assert (code, err) == (ExitCode.DONE, "")
    assert f"platecall check {path}" in out
    plan = plan_in(path).plan
    assert (plan.event, plan.date.isoformat(), plan.arrive, plan.zone) == (
        'Ada\'s "feast": #1', "2026-12-05", "19:00", "Europe/Berlin"
    )  # fmt: skip
    assert (plan.guest_count, len(plan.kitchen.ovens), plan.kitchen.rings, len(plan.courses)) == (9, 2, 3, 4)
    code, out, _ = run("check", str(path))
    assert code == ExitCode.DONE
    assert "every course on time" in out
    assert "STOP" not in out


@pytest.mark.parametrize("menu", [(), ("--menu",)])
@pytest.mark.parametrize(("machine", "given", "assumed"), [
    ("Etc/UTC", (), True), ("Europe/Riga", (), False), ("Etc/UTC", ("--zone", "Europe/Riga"), False),
])  # fmt: skip
def test_a_zone_of_no_place_is_told_as_assumed(
    run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, machine: str, given: tuple[str, ...], assumed: bool,
    menu: tuple[str, ...],
) -> None:  # fmt: skip
    monkeypatch.setattr(new_plan, "machine_zone", lambda: machine)
    path, listed = tmp_path / "feast.yaml", tmp_path / "menu.txt"
    listed.write_text("Main: Roast chicken\n", encoding="utf-8")

    code, out, _ = run("new", str(path), *given, *(menu and (*menu, str(listed))))

    assert code == ExitCode.DONE
    assert (f"the time zone {machine}" in out) == assumed
    text = path.read_text(encoding="utf-8")
    assert (f"zone: {machine}  # assumed\n" in text) == assumed
    assert "arrive: 18:30  # assumed\n" in text
    assert "the hour of arrival 18:30" in out


def test_a_file_that_is_there_is_left_and_told_before_anything_is_asked(run: Run, tmp_path: Path) -> None:
    path, link = tmp_path / "mine.yaml", tmp_path / "link.yaml"
    path.write_text("event: Mine\n")
    link.symlink_to("nowhere.yaml")

    for each in (path, link):
        code, out, err = run("new", str(each))

        assert (code, out) == (ExitCode.FAILED, "")
        assert "there already" in err
    assert path.read_text() == "event: Mine\n"
    assert not (tmp_path / "nowhere.yaml").exists()


def test_without_a_name_it_takes_the_events_or_the_next_free_one(
    run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)

    for _ in range(3):
        assert run("new", "--event", "../Späte Jause!")[0] == ExitCode.DONE

    names = sorted(path.name for path in tmp_path.glob("*.yaml"))
    assert names == ["späte-jause-2.yaml", "späte-jause-3.yaml", "späte-jause.yaml"]


@pytest.mark.parametrize("words", [["--guests", "many"], ["--date", "5/12"], ["--zone", "Mars"], ["--colour", "red"]])
def test_options_not_understood_exit_64_and_write_nothing(run: Run, tmp_path: Path, words: list[str]) -> None:
    code, out, err = run("new", str(tmp_path / "x.yaml"), *words)

    assert (code, out) == (ExitCode.USAGE, "")
    assert words[0] in err
    assert not (tmp_path / "x.yaml").exists()


def test_a_folder_that_is_not_there_is_told(run: Run, tmp_path: Path) -> None:
    code, _, err = run("new", str(tmp_path / "none" / "x.yaml"))

    assert code == ExitCode.FAILED
    assert "could not be written" in err


@pytest.fixture
def ask(tmp_path: Path) -> pexpect.spawn:
    env = {**os.environ, "PYTHONPATH": str(Path(__file__).parents[2]), "HOME": str(tmp_path), "LANG": "C.UTF-8",
           "TZ": "Europe/Vienna"}  # fmt: skip
    words = ["-m", "board", "new", "supper.yaml", "--rings", "2"]
    return pexpect.spawn(sys.executable, words, cwd=str(tmp_path), env=env, encoding="utf-8", timeout=30)


def test_the_questions_in_a_terminal(ask: pexpect.spawn, tmp_path: Path) -> None:
    ask.expect_exact("Type the menu")
    ask.sendline("")
    ask.expect_exact("What is the evening called? [Supper] ")
    ask.sendline("Erntefest: für alle")
    ask.expect_exact("On which day? [")
    ask.sendline("31 Nov")
    ask.expect_exact("'31 Nov' is not a day of the calendar")
    ask.expect_exact("On which day? [")
    ask.sendline("sat")
    ask.expect_exact("When do the guests arrive? [18:30] ")
    ask.sendline("6")
    ask.expect_exact("is not a time of day")
    ask.sendline("6 pm")
    ask.expect_exact("without yourself? [6] ")
    ask.sendline("")
    ask.expect_exact("How many ovens? [1] ")
    ask.sendline("0")
    ask.expect_exact("How many courses? [3] ")
    ask.sendline("two")
    ask.expect_exact("'two' is not a number from 1 to 7")
    ask.sendline("2")
    ask.expect_exact("Written: supper.yaml")
    ask.expect(pexpect.EOF)
    ask.close()

    assert ask.exitstatus == 0
    plan = plan_in(tmp_path / "supper.yaml").plan
    assert (plan.event, plan.arrive, plan.zone) == ("Erntefest: für alle", "18:00", "Europe/Vienna")
    assert plan.date.strftime("%a") == "Sat"
    assert (plan.guest_count, plan.kitchen.ovens, plan.kitchen.rings, len(plan.courses)) == (7, {}, 2, 2)


@pytest.mark.parametrize(("key", "code"), [("\x04", 1), ("\x03", 130)], ids=["ctrl-d", "ctrl-c"])
def test_leaving_the_questions_writes_nothing(ask: pexpect.spawn, tmp_path: Path, key: str, code: int) -> None:
    ask.expect_exact("  1 ")
    ask.sendline("")
    ask.expect_exact("[Supper] ")
    time.sleep(0.5)  # between its prompt and its waiting for a key, readline hears no ctrl-c: nobody is that quick
    ask.send(key)
    ask.expect(pexpect.EOF)
    ask.close()

    assert ask.exitstatus == code
    assert "Traceback" not in (ask.before or "")
    assert not (tmp_path / "supper.yaml").exists()
