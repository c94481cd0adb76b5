"""A second copy of the log, in another folder: whole whenever that folder can be written, and waited for by nobody."""

import errno
import os
import tempfile
import threading
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from board.app.sessions import play_plainly
from board.base.clock import StoppedClock
from board.base.exits import ExitCode
from board.cli import main
from board.evening.wishes import WriteNote
from board.log import second_copy, words
from board.log.write import RunLog
from board.session.session import Evening, open_evening
from board.sheet.run_sheet import RunSheet
from tests.conftest import at
from tests.log.test_disk import is_whole


@pytest.fixture(autouse=True)
def looks_often(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(second_copy, "LOOK_SECONDS", 0.01)
    monkeypatch.setattr(second_copy, "SLOW_SECONDS", 0.05)


@pytest.fixture
def stick(tmp_path: Path) -> Path:
    folder = tmp_path / "stick"
    folder.mkdir()
    return folder


def opened(path: Path, sheet: RunSheet, stick: Path | None) -> tuple[RunLog, Evening]:
    log = RunLog(path, also=stick)
    return log, open_evening(sheet, StoppedClock(at("17:00")), log, rehearsal=False)


def until(there: Callable[[], object]) -> None:
    end = time.monotonic() + 10
    while not there():
        assert time.monotonic() < end, "it never came"
        time.sleep(0.002)


def same(one: Path, other: Path) -> bool:
    return one.exists() and other.exists() and one.read_bytes() == other.read_bytes()


def test_each_answer_is_in_both_at_once(tmp_path: Path, little: RunSheet, stick: Path) -> None:
    path = tmp_path / "evening.jsonl"
    log, evening = opened(path, little, stick)

    for number in range(3):
        evening.wish(WriteNote(f"note {number}"))
        until(lambda: same(path, stick / path.name))
    log.close()

    assert log.copy_trouble == ""
    assert is_whole(stick / path.name, evening)
    assert (stick / path.name).stat().st_mode & 0o777 == 0o600
    assert os.listdir(stick) == [path.name]  # no lock is left


def test_taken_out_and_put_in_again_it_is_caught_up_whole(tmp_path: Path, little: RunSheet, stick: Path) -> None:
    path, out = tmp_path / "evening.jsonl", tmp_path / "in a pocket"
    log, evening = opened(path, little, stick)
    until(lambda: same(path, stick / path.name))

    stick.rename(out)
    until(lambda: evening.tick().copy_trouble)  # told without any answer
    assert evening.tick().copy_trouble == words.COPY_FOLDER_GONE
    evening.wish(WriteNote("meanwhile"))
    assert is_whole(path, evening)
    assert not stick.exists()  # nothing is written beside

    out.rename(stick)
    until(lambda: same(path, stick / path.name))
    until(lambda: not evening.tick().copy_trouble)
    log.close()
    assert os.listdir(stick) == [path.name]


def test_a_stick_that_is_out_leaves_a_place_that_is_not_written_to(tmp_path: Path, little: RunSheet) -> None:
    """What a stick leaves is an empty folder on the machine's own disk."""
    own, place = tmp_path / "own", tmp_path / "stick"
    own.mkdir()
    with tempfile.TemporaryDirectory(dir="/dev/shm" if os.path.isdir("/dev/shm") else None) as other:
        if os.stat(other).st_dev == os.stat(own).st_dev:
            pytest.skip("this machine has one disk only")
        place.symlink_to(other)
        log, evening = opened(tmp_path / "evening.jsonl", little, place)
        until(lambda: (place / "evening.jsonl").exists())

        place.unlink()
        place.symlink_to(own)
        until(lambda: evening.tick().copy_trouble)

        assert evening.tick().copy_trouble == words.COPY_FOLDER_GONE
        assert os.listdir(own) == []
        log.close()
        assert log.copy_trouble


class Stick:
    """What the system does with the copy's own file."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch, path: Path) -> None:
        self.path, self.full, self.hangs = path, False, threading.Event()
        self.hangs.set()
        write, fsync = os.write, os.fsync

        def written(handle: int, data: bytes) -> int:
            if self.full and self._is_mine(handle):
                raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))
            return write(handle, data)

        def synced(handle: int) -> None:
            if self._is_mine(handle):
                self.hangs.wait(10)
            fsync(handle)

        monkeypatch.setattr(os, "write", written)
        monkeypatch.setattr(os, "fsync", synced)

    def _is_mine(self, handle: int) -> bool:
        return self.path.exists() and os.path.samestat(os.fstat(handle), self.path.stat())


@pytest.fixture
def system(tmp_path: Path, stick: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Stick]:
    system = Stick(monkeypatch, stick / "evening.jsonl")
    yield system
    system.hangs.set()


def test_a_full_one_is_told_and_caught_up_once_there_is_room(
    tmp_path: Path, little: RunSheet, stick: Path, system: Stick
) -> None:
    path = tmp_path / "evening.jsonl"
    log, evening = opened(path, little, stick)
    until(lambda: same(path, system.path))

    system.full = True
    evening.wish(WriteNote("one"))
    evening.wish(WriteNote("two"))
    until(lambda: evening.tick().copy_trouble)

    assert evening.tick().copy_trouble == os.strerror(errno.ENOSPC)
    assert evening.tick().unkept is None
    assert is_whole(path, evening)
    system.full = False
    until(lambda: same(path, system.path))
    log.close()


def test_one_that_does_not_answer_holds_nothing_up(
    tmp_path: Path, little: RunSheet, stick: Path, system: Stick, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(second_copy, "LAST_SECONDS", 0.05)
    path = tmp_path / "evening.jsonl"
    log, evening = opened(path, little, stick)
    until(lambda: same(path, system.path))

    system.hangs.clear()
    for number in range(5):
        evening.wish(WriteNote(f"note {number}"))
    assert is_whole(path, evening)  # while the first of them hangs
    until(lambda: evening.tick().copy_trouble == words.COPY_SLOW)
    log.close()
    assert log.copy_trouble == words.COPY_SLOW

    system.hangs.set()
    until(lambda: same(path, system.path))


HALF = b"half a line"


@pytest.mark.parametrize("tail", [b"", HALF, b"\0" * 300])
def test_an_evening_gone_on_with_goes_on_with_its_copy(
    tmp_path: Path, little: RunSheet, stick: Path, tail: bytes
) -> None:
    """Whatever is torn at its end; some file systems leave zeros there."""
    path = tmp_path / "evening.jsonl"
    opened(path, little, stick)[0].close()
    copied = (stick / path.name).read_bytes()
    log, evening = opened(path, little, None)
    evening.wish(WriteNote("not copied"))
    log.close()
    half = path.read_bytes()[len(copied) :][:15] if tail == HALF else tail
    (stick / path.name).write_bytes(copied + half)

    log, _ = opened(path, little, stick)
    log.close()

    assert log.copy_trouble == ""
    assert same(path, stick / path.name)
    assert os.listdir(stick) == [path.name]


def test_another_log_of_that_name_is_left_as_it_is(tmp_path: Path, little: RunSheet, stick: Path) -> None:
    path, there = tmp_path / "evening.jsonl", stick / "evening.jsonl"
    there.write_bytes(b"another evening\n")
    log, _ = opened(path, little, stick)
    log.close()

    assert there.read_bytes() == b"another evening\n"
    assert same(path, stick / "evening-2.jsonl")


@pytest.mark.parametrize("bad", ["own", "file", "none"])
def test_a_folder_that_cannot_be_is_told_and_the_evening_opens(tmp_path: Path, little: RunSheet, bad: str) -> None:
    path = tmp_path / "evening.jsonl"
    (tmp_path / "file").write_text("x", encoding="utf-8")
    folder = {"own": tmp_path, "file": tmp_path / "file", "none": tmp_path / "none"}[bad]
    log, evening = opened(path, little, folder)

    until(lambda: evening.tick().copy_trouble)

    assert is_whole(path, evening)
    log.close()
    assert sorted(os.listdir(tmp_path)) == ["evening.jsonl", "file"]


def test_a_rehearsal_in_lines_is_copied_and_what_the_copy_lacks_is_told_at_its_end(
    tmp_path: Path, little: RunSheet, stick: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "log.jsonl"
    assert list(play_plainly(little, path, at("16:58"), also=stick))
    assert same(path, stick / "log.jsonl")
    assert capsys.readouterr().err == ""

    assert list(play_plainly(little, tmp_path / "next.jsonl", at("16:58"), also=tmp_path / "none"))
    assert "second copy of the run log is not whole: the folder is not there" in capsys.readouterr().err


def test_without_a_log_there_is_nothing_to_copy(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as ended:
        main(["rehearse", "supper.yaml", "--no-log", "--also", "stick"])
    assert ended.value.code == ExitCode.USAGE
    assert "--no-log and --also do not go together" in capsys.readouterr().err
