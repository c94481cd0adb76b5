"""`sheet --ways-out` and `--take`, from the words typed to the file on disk."""

import time
from pathlib import Path

import pytest

from board.app.resolve_conflicts import find_ways
from board.app.timetables import with_all
from board.base.exits import ExitCode
from board.checks.sheet.assessed import of_plan
from board.files.plans import plan_in
from tests.schedule.conflicts.clash_cases import SQUASH_AND_POT
from tests.schedule.conflicts.ways_cases import AFTER_THE_SOUP, IN_PART, TWO_TROUBLES
from tests.whole.conftest import LANTERN, Run


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    path = tmp_path / "supper.yaml"
    path.write_text(SQUASH_AND_POT.lstrip("\n"), encoding="utf-8")
    return path


def test_a_clash_is_named_by_check_and_sheet_and_the_way_to_ways_out(run: Run, plan: Path) -> None:
    _, checked, _ = run("check", str(plan))
    code, out, err = run("sheet", str(plan))

    assert code == ExitCode.DONE
    for text in (checked, out):
        assert "the oven cannot take" in " ".join(text.split())
        assert "roast the squash" in text
    assert f"platecall sheet {plan} --ways-out 3" in err


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


@pytest.mark.slow
def test_each_number_is_the_same_way_out_whenever_it_is_asked_for(run: Run, tmp_path: Path) -> None:
    path = tmp_path / "soup.yaml"
    offered: list[str] = []
    for asked in ("1", "3"):
        path.write_text(AFTER_THE_SOUP.lstrip("\n"), encoding="utf-8")
        _, out, _ = run("sheet", str(path), "--ways-out", asked)
        offered = [line.strip() for line in out.splitlines() if line.startswith(("  1 ", "  2 ", "  3 "))]
        assert len(offered) == int(asked)
    for number, line in enumerate(offered, start=1):
        path.write_text(AFTER_THE_SOUP.lstrip("\n"), encoding="utf-8")
        _, out, _ = run("sheet", str(path), "--take", str(number))
        assert line.removeprefix(f"{number} ") in out


def test_what_it_brings_and_costs_stands_below_each(run: Run, tmp_path: Path) -> None:
    path = tmp_path / "soup.yaml"
    path.write_text(AFTER_THE_SOUP.lstrip("\n"), encoding="utf-8")
    _, out, _ = run("sheet", str(path), "--ways-out", "2")

    lines = [line.strip() for line in out[out.index("Ways out") :].splitlines()]
    assert lines[:6] == [
        "Ways out, each worked out again, the cheapest first",
        "1 host does 'whisk the sauce' instead of Nora",
        "Main 19:54 → 19:45; then nothing is given up",
        "2 serve Soup 10 min earlier, at 18:50",
        "Main 19:54 → 19:45; 5 min less in the kitchen while guests are there; then nothing is given up",
        "costs: Soup 19:00 → 18:50",
    ]


def test_no_way_out_makes_food_unsafe_that_was_safe(tmp_path: Path) -> None:
    """Dumplings folded sooner would lie out over the two hours of the home rules (USDA FSIS, danger zone)."""
    path = tmp_path / "dumplings.yaml"
    path.write_text(TWO_TROUBLES.lstrip("\n"), encoding="utf-8")
    mending = find_ways(path, 5)

    assert mending.ways
    assert mending.sheet.stops == ()
    for way in mending.ways:
        assert with_all(of_plan(plan_in(way.text, path)), way.sheet).the_sheet.stops == (), way.what


@pytest.mark.slow
def test_where_nothing_mends_it_all_that_is_said(run: Run, tmp_path: Path) -> None:
    path = tmp_path / "taster.yaml"
    path.write_text(IN_PART.lstrip("\n"), encoding="utf-8")
    _, out, _ = run("sheet", str(path), "--ways-out", "2")

    told = " ".join(out.split())
    assert "No one change mends all of it; these help, each worked out again, what helps most first" in told
    assert "still given up: " in told


@pytest.mark.slow
def test_all_of_it_keeps_to_the_limit_and_says_what_was_not_looked_into(run: Run, tmp_path: Path) -> None:
    """The bundled supper without its day: the search alone could take a minute, and hundreds of changes might help."""
    path = tmp_path / "late.yaml"
    text = Path(LANTERN).read_text(encoding="utf-8")
    path.write_text(
        text.replace("on the day: 9:30 - 13:00, 14:00 - 23:45", "on the day: 17:15 - 23:45"), encoding="utf-8"
    )
    began = time.perf_counter()
    code, out, _ = run("sheet", str(path), "--ways-out", "3", "--limit", "6")
    took = time.perf_counter() - began

    assert code == ExitCode.DONE
    assert "Given up" in out
    assert "not all was looked into in the time there was; --limit SECONDS sets it" in " ".join(out.split())
    assert took < 6 + 5  # one test of the solver that was under way may end after it, and the sheet is printed


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
