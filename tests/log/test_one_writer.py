"""One writer by the file, whatever names lead to it; and one that finds somebody else's bytes at its end stops."""

import os
from collections.abc import Callable
from pathlib import Path

import pytest

from board.evening.wishes import WriteNote
from board.log.read import read_log
from board.log.write import LogInUse, RunLog
from board.sheet.run_sheet import RunSheet
from tests.log.test_disk import is_whole, opened


@pytest.mark.parametrize("second_name", [os.symlink, os.link])
def test_a_second_name_of_a_log_opens_no_second_board(
    tmp_path: Path, little: RunSheet, second_name: Callable[[Path, Path], None]
) -> None:
    path, other = tmp_path / "evening.jsonl", tmp_path / "elsewhere" / "supper.jsonl"
    other.parent.mkdir()
    log, evening = opened(path, little)
    second_name(path, other)

    with pytest.raises(LogInUse):
        RunLog(other)

    evening.wish(WriteNote("kept"))
    assert is_whole(path, evening)
    log.close()
    RunLog(other).close()  # once the first is closed
    RunLog(path).close()


@pytest.mark.parametrize("second_name", [os.symlink, os.link])
def test_the_first_board_is_refused_while_the_second_name_is_open(
    tmp_path: Path, little: RunSheet, second_name: Callable[[Path, Path], None]
) -> None:
    path, other = tmp_path / "evening.jsonl", tmp_path / "supper.jsonl"
    opened(path, little)[0].close()
    second_name(path, other)
    log = RunLog(other)

    with pytest.raises(LogInUse):
        RunLog(path)
    log.close()


def test_a_name_that_leads_nowhere_yet_is_followed(tmp_path: Path, little: RunSheet) -> None:
    target, name = tmp_path / "stick" / "evening.jsonl", tmp_path / "evening.jsonl"
    target.parent.mkdir()
    name.symlink_to(target)

    log, evening = opened(name, little)

    assert is_whole(target, evening)
    assert name.is_symlink()
    log.close()


def test_a_writer_that_finds_foreign_bytes_at_its_end_stops_and_says_so(tmp_path: Path, little: RunSheet) -> None:
    path = tmp_path / "evening.jsonl"
    log, evening = opened(path, little)
    evening.wish(WriteNote("mine"))
    with path.open("ab") as other:
        other.write(b'{"event":"somebody else\'s"}\n')
    before = path.read_bytes()

    evening.wish(WriteNote("after"))

    assert path.read_bytes() == before  # neither written over nor cut
    assert log.unkept is not None
    assert log.unkept.answers == 1
    assert "something else writes" in log.unkept.why
    place = log.rescue()
    assert place is not None
    assert is_whole(place, evening)
    place.unlink()
    log.close()


def test_a_writer_whose_last_line_was_changed_stops(tmp_path: Path, little: RunSheet) -> None:
    path = tmp_path / "evening.jsonl"
    log, evening = opened(path, little)
    evening.wish(WriteNote("mine"))
    data = path.read_bytes()
    with path.open("r+b") as other:
        other.seek(len(data) - 30)
        other.write(b"x" * 29 + b"\n")

    present = evening.tick()

    assert present.unkept is not None
    assert "something else writes" in present.unkept.why
    log.close()


def test_a_closed_log_leaves_no_lock(tmp_path: Path, little: RunSheet) -> None:
    log, _ = opened(tmp_path / "evening.jsonl", little)
    log.close()

    assert [each.name for each in tmp_path.iterdir()] == ["evening.jsonl"]
    assert read_log((tmp_path / "evening.jsonl").read_bytes(), "evening.jsonl").dropped is None
