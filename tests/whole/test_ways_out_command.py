"""`sheet --ways-out` and `--take`, from the words typed to the file on disk."""

from pathlib import Path

import pytest

from board.base.exits import ExitCode
from tests.schedule.conflicts.clash_cases import SQUASH_AND_POT
from tests.whole.conftest import LANTERN, Run


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    path = tmp_path / "supper.yaml"
    path.write_text(SQUASH_AND_POT.lstrip("\n"), encoding="utf-8")
    return path


def test_a_clash_is_named_by_check_and_sheet_and_the_way_to_ways_out(run: Run, plan: Path) -> None:
    _, checked, _ = run("check", str(plan))
    code, out, _ = run("sheet", str(plan))

    assert code == ExitCode.DONE
    for text in (checked, out):
        assert "the oven cannot take" in " ".join(text.split())
        assert "roast the squash" in text
    assert f"platecall sheet {plan} --ways-out 3" in out


def test_the_ways_are_numbered_and_priced_and_the_plan_is_left_alone(run: Run, plan: Path) -> None:
    before = plan.read_bytes()
    code, out, _ = run("sheet", str(plan), "--ways-out", "3")

    assert code == ExitCode.DONE
    offered = out[out.index("Ways out, each worked out again") :].splitlines()
    assert [line.strip()[0] for line in offered if line[:4].strip().isdecimal()] == ["1", "2", "3"]
    assert "then nothing is given up" in out
    assert plan.read_bytes() == before


def test_taking_one_writes_it_and_the_plan_then_holds(run: Run, plan: Path) -> None:
    code, out, _ = run("sheet", str(plan), "--take", "1")
    _, again, _ = run("check", str(plan))

    assert code == ExitCode.DONE
    assert "+ or:" in out
    assert "# the flat's own" in plan.read_text(encoding="utf-8")
    assert "cannot take" not in again
    assert run("sheet", str(plan), "--take", "1")[0] == ExitCode.FAILED  # nothing to take any more


def test_a_number_too_high_changes_nothing(run: Run, plan: Path) -> None:
    before = plan.read_bytes()
    code, _, err = run("sheet", str(plan), "--take", "49")

    assert code == ExitCode.FAILED
    assert "there is no way out number 49" in err
    assert plan.read_bytes() == before


@pytest.mark.parametrize("bad", ["0", "-1", "51", "two", "1.5", ""])
def test_a_bad_number_is_one_message(run: Run, plan: Path, bad: str) -> None:
    code, _, err = run("sheet", str(plan), f"--take={bad}")

    assert code == ExitCode.USAGE
    assert f"{bad!r} is not a number from 1 to 50" in err


def test_a_plan_that_holds_needs_no_way_out(run: Run) -> None:
    code, out, _ = run("sheet", LANTERN, "--ways-out", "2")

    assert code == ExitCode.DONE
    assert "No way out was needed" in out
