"""What is told at the front door: words surely meant, a closed pipe, a search cut short, a line wiped away."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from board import words
from board.exits import ExitCode
from board.paper.check import print_check
from board.plan.load import PlanFile
from board.timetable.run_sheet import RunSheet
from tests.whole.conftest import LANTERN, Run


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        (["chek", LANTERN], "Did you mean check?"),
        (["sheet", LANTERN, "--by", "dya"], "Did you mean day?"),
        (["check", LANTERN, "--limt", "3"], "Did you mean --limit?"),
        (["xyzzy"], "There are: new, dish, check"),
    ],
)
def test_a_mistyped_word_is_told_with_the_one_that_was_meant(run: Run, typed: list[str], meant: str) -> None:
    code, _, told = run(*typed)

    assert code == ExitCode.USAGE
    assert meant in told


@pytest.mark.parametrize("typed", [["check", LANTERN], ["sheet", LANTERN], ["guests", LANTERN], ["schema"], ["--help"]])
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

    print_check(lantern, [], replace(lantern_sheet, proved=False, gap=0.04))
    cut_short = capsys.readouterr().out
    print_check(lantern, [], lantern_sheet)

    assert words.sheet_state(False, 0.04) in cut_short
    assert "the best found" not in capsys.readouterr().out
