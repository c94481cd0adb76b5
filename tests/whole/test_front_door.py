"""What is told at the front door: words surely meant, a closed pipe, a search cut short, a line wiped away."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from board.base import words as shared
from board.base.exits import ExitCode
from board.checks.sheet.assessed import of_plan, with_sheet
from board.output.check import print_check
from board.plan.load import PlanFile
from board.sheet.run_sheet import RunSheet
from board.sheet.told import StillOpen
from tests.examples import first
from tests.plan.test_bad_plans import SOUND
from tests.whole.conftest import LANTERN, Run


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        (["chek", LANTERN], "Did you mean check?"),
        (["sheet", LANTERN, "--by", "dya"], "Did you mean day?"),
        (["check", LANTERN, "--limt", "3"], "Did you mean --limit?"),
        (["xyzzy"], "There are: new, dish, plan, check"),
    ],
)
def test_a_mistyped_word_is_told_with_the_one_that_was_meant(run: Run, typed: list[str], meant: str) -> None:
    code, _, told = run(*typed)

    assert code == ExitCode.USAGE
    assert meant in told


@pytest.mark.parametrize(
    "typed", first(2, [["check", LANTERN], ["--help"], ["sheet", LANTERN], ["guests", LANTERN], ["schema"]])
)
def test_a_closed_pipe_is_no_failure(home: Path, typed: list[str]) -> None:
    env = {**os.environ, "PYTHONPATH": str(Path(__file__).parents[2])}
    reading, writing = os.pipe()
    os.close(reading)
    with os.fdopen(writing, "wb") as closed:
        done = subprocess.run(
            [sys.executable, "-m", "board", *typed], stdout=closed, stderr=subprocess.PIPE, env=env, check=False
        )

    assert done.returncode == ExitCode.DONE
    assert done.stderr == b""


def test_check_says_when_its_timetable_is_not_proved(
    lantern: PlanFile, lantern_sheet: RunSheet, capsys: pytest.CaptureFixture[str]
) -> None:
    from msgspec.structs import replace

    plan = of_plan(lantern)
    print_check(with_sheet(plan, replace(lantern_sheet, proved=False, still_open=(StillOpen("give", 5),))))
    cut_short = capsys.readouterr().out
    print_check(with_sheet(plan, lantern_sheet))

    assert "Open: 5 minutes of give; all else is proved" in cut_short
    assert "Open:" not in capsys.readouterr().out


@pytest.mark.parametrize("command", ["check", "sheet", "guests", "provisions"])
def test_a_run_log_where_a_plan_is_wanted_is_told_in_one_sentence(run: Run, tmp_path: Path, command: str) -> None:
    log = tmp_path / "evening.jsonl"
    log.write_text('{"event":"EveningOpened","format":1}\n{"event":"StepStarted"}\n')

    code, _, told = run(command, str(log))

    assert code == ExitCode.STOP
    assert told.count("this is a run log, not a plan") == 1
    assert told.count("\n") == 1


@pytest.mark.parametrize("text", ["", "# nothing\n", "a few words\n", "- 1\n- 2\n", "\x00"])
def test_what_is_no_plan_is_told_how_to_begin_one(run: Run, tmp_path: Path, text: str) -> None:
    plan = tmp_path / "plan.yaml"
    plan.write_text(text)
    code, _, told = run("check", str(plan))

    assert code == ExitCode.STOP
    assert "platecall new" in told or "U+0000" in told


def test_where_not_all_could_be_looked_at_the_list_says_so_at_its_end(run: Run, tmp_path: Path) -> None:
    plan = tmp_path / "plan.yaml"
    plan.write_text(SOUND.replace("takes: 10 min", "taks: 10 min"))
    _, _, told = run("check", str(plan))
    plan.write_text(SOUND.replace("where: stovetop, 1 ring, big pot", "where: stovetop, 9 rings, big pot"))
    _, out, _ = run("check", str(plan))
    plan.write_text(SOUND)
    _, sound, _ = run("check", str(plan))

    assert told.rstrip().endswith(shared.MORE_MAY_SHOW)
    assert shared.MORE_MAY_SHOW in out
    assert shared.MORE_MAY_SHOW not in sound


@pytest.mark.parametrize("words", [["logs"], ["schema"], ["check", LANTERN], ["new", "--help"]], ids=" ".join)
def test_a_closed_stdout_is_no_fault(home: Path, words: list[str]) -> None:
    done = subprocess.run(
        ["sh", "-c", 'exec "$@" >&-', "sh", sys.executable, "-m", "board", *words],
        stderr=subprocess.PIPE, text=True, check=False, timeout=120,
    )  # fmt: skip

    assert "Traceback" not in done.stderr
    assert done.returncode in (0, 2)
