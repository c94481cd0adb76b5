"""Kept sheets: taken back by the program whose rules made them, whatever its words are."""

import shutil
from datetime import timedelta
from pathlib import Path

import pytest
from msgspec.structs import replace

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


def later(sheet: RunSheet, id_: str) -> RunSheet:
    by = timedelta(minutes=5)
    slots = (replace(s, start=s.start + by, end=s.end + by) if s.id == id_ else s for s in sheet.slots)
    return replace(sheet, slots=tuple(slots), digest="1" * 64)


def test_the_sheet_before_is_found_by_the_plans_path(little: RunSheet, tmp_path: Path) -> None:
    cache, plan = SheetCache(tmp_path / "sheets"), tmp_path / "supper.yaml"
    moved = later(little, "chop")

    assert cache.before(plan, little, "sheet") is None
    assert cache.before(plan, moved, "sheet") == little
    assert cache.before(plan, moved, "sheet") is None
    assert cache.before(plan, moved, "check") == little
    assert cache.before(tmp_path / "other.yaml", moved, "sheet") is None


@pytest.mark.parametrize("content", [b"", b"{", b"\xff\xfe", b'{"now": 3}'])
def test_a_broken_file_of_the_sheet_before_is_none_and_written_anew(
    little: RunSheet, tmp_path: Path, content: bytes
) -> None:
    cache, plan = SheetCache(tmp_path / "sheets"), tmp_path / "supper.yaml"
    cache.before(plan, little, "sheet")
    (file,) = (tmp_path / "sheets" / "last").iterdir()
    file.write_bytes(content)

    assert cache.before(plan, little, "sheet") is None
    assert cache.before(plan, later(little, "chop"), "sheet") == little


def test_where_nothing_can_be_written_nothing_was_before(little: RunSheet, tmp_path: Path) -> None:
    (tmp_path / "sheets").write_text("no folder")
    cache = SheetCache(tmp_path / "sheets")

    assert cache.before(tmp_path / "supper.yaml", little, "sheet") is None
    assert cache.before(tmp_path / "supper.yaml", later(little, "chop"), "sheet") is None


def test_the_sheets_before_are_kept_apart_from_the_sheets(little: RunSheet, tmp_path: Path) -> None:
    cache = SheetCache(tmp_path / "sheets")
    for number in range(60):
        cache.before(tmp_path / f"{number}.yaml", little, "sheet")
    cache.put(little)

    assert len(list((tmp_path / "sheets" / "last").iterdir())) == 50
    assert cache.get(little.digest) == little
