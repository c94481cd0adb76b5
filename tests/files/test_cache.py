"""Kept sheets: taken back by the program whose rules made them, whatever its words are."""

import shutil
from pathlib import Path

import pytest

from board.files.cache import SheetCache, fingerprint
from board.sheet.run_sheet import RunSheet

BOARD = Path(__file__).parents[2] / "board"


@pytest.fixture
def board(tmp_path: Path) -> Path:
    """A copy of the program."""
    return Path(shutil.copytree(BOARD, tmp_path / "board", ignore=shutil.ignore_patterns("__pycache__")))


def changed(file: Path) -> None:
    assert file.is_file()
    file.write_text(file.read_text(encoding="utf-8") + "\n# other words\n", encoding="utf-8")


@pytest.mark.parametrize(
    "name", ["base/words/evening.py", "sheet/words.py", "plan/edit/words.py", "sheet/said.py", "view/board.py",
             "output/sheet.py"],
)  # fmt: skip
def test_another_word_is_no_reason_to_work_a_timetable_out_again(board: Path, name: str) -> None:
    before = fingerprint(board)
    changed(board / name)

    assert fingerprint(board) == before


@pytest.mark.parametrize(
    "name", ["schedule/formulate.py", "schedule/solver/aims.py", "facts/rules/home.py", "checks/plan/cooking.py",
             "plan/resolve/assume.py", "sheet/run_sheet.py", "sheet/told.py", "base/plan_digest.py",
             "base/words/times.py"],
)  # fmt: skip
def test_another_rule_is_and_so_are_figures_in_what_checks_say(board: Path, name: str) -> None:
    before = fingerprint(board)
    changed(board / name)

    assert fingerprint(board) != before


def test_a_sheet_is_kept_by_its_plan(little: RunSheet, tmp_path: Path) -> None:
    cache = SheetCache(tmp_path / "sheets")
    cache.put(little)

    assert cache.get(little.digest) == little
    assert cache.get("1" * 64) is None
