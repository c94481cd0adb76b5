"""A log whose disk fills, whose folder goes, whose file is cut: the evening goes on, and in the end all of it is there.

The full disk is the kernel's own: a limit on the size of files (POSIX setrlimit, RLIMIT_FSIZE) makes write(2) short at
the limit and then fail with EFBIG, as ENOSPC does on a full disk.
"""

import os
import resource
import shutil
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from board.base.clock import StoppedClock
from board.evening.events import EveningOpened
from board.evening.fold import fold_all
from board.evening.state import begin
from board.evening.wishes import Done, WriteNote
from board.log.disk import LineFile
from board.log.read import NoLog, read_log
from board.log.record import to_line
from board.log.write import LogInUse, RunLog
from board.session.session import Evening, open_evening
from board.sheet.run_sheet import RunSheet
from tests.conftest import at
from tests.examples import times


@contextmanager
def files_no_larger_than(size: int) -> Iterator[None]:
    before = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (size, before[1]))
    try:
        yield
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, before)


def opened(path: Path, sheet: RunSheet) -> tuple[RunLog, Evening]:
    log = RunLog(path)
    return log, open_evening(sheet, StoppedClock(at("17:00")), log, rehearsal=False)


def is_whole(path: Path, evening: Evening) -> bool:
    """The file holds exactly what the evening knows: each line once, in order, to its end."""
    contents = read_log(path.read_bytes(), path.name)
    replayed = fold_all(begin(evening.sheet), [contents.opened, *contents.events])
    return contents.dropped is None and replayed == evening.state


@settings(max_examples=times(150), deadline=None)
@given(
    lines=st.lists(st.binary(min_size=0, max_size=30).map(lambda b: b.replace(b"\n", b"") + b"\n"), max_size=12),
    limits=st.lists(st.integers(0, 200), max_size=12),
)
def test_whatever_room_there_is_the_file_is_whole_lines_from_the_first_on(
    tmp_path_factory: pytest.TempPathFactory, lines: list[bytes], limits: list[int]
) -> None:
    path = tmp_path_factory.mktemp("disk") / "lines"
    file = LineFile(path)
    file.lock()
    for number, line in enumerate(lines):
        file.lines.append(line)
        limit = limits[number] if number < len(limits) else 10_000
        with files_no_larger_than(limit), suppress(OSError):
            file.sync()
        there = path.read_bytes() if path.exists() else b""
        assert there == b"".join(file.lines[: file.kept])

    file.sync()

    assert path.read_bytes() == b"".join(lines)
    file.close()


def test_on_a_full_disk_the_evening_goes_on_and_is_kept_when_there_is_room(tmp_path: Path, little: RunSheet) -> None:
    path = tmp_path / "evening.jsonl"
    log, evening = opened(path, little)
    evening.tick()
    with files_no_larger_than(path.stat().st_size + 40):  # room for part of a line
        assert evening.wish(Done("chop", "start")) is None
        evening.wish(WriteNote("the knife is blunt"))
        missing = evening.tick().unkept

        assert evening.state.steps["chop"].status == "under-way"
        assert missing is not None
        assert (missing.answers, missing.events) == (2, 2)
        assert missing.why == os.strerror(27)
        assert read_log(path.read_bytes(), "x").dropped is None  # no half line stays

    assert evening.tick().unkept is None
    assert is_whole(path, evening)
    log.close()


def test_a_disk_that_fails_to_sync_is_written_again(
    tmp_path: Path, little: RunSheet, monkeypatch: pytest.MonkeyPatch
) -> None:
    """After a failed fsync(2) Linux may drop what was not written, and report success the next time; so the bytes are
    written anew. Source: the fsync(2) manual page, and Rebello and others, USENIX ATC 2020."""
    path = tmp_path / "evening.jsonl"
    log, evening = opened(path, little)
    written: list[bytes] = []
    write = os.write

    def failing(handle: int) -> None:
        raise OSError(5, "Input/output error")

    def seen(handle: int, data: bytes) -> int:
        written.append(bytes(data))
        return write(handle, data)

    with monkeypatch.context() as broken:
        broken.setattr(os, "fsync", failing)
        evening.wish(WriteNote("first"))
        assert log.unkept is not None
    monkeypatch.setattr(os, "write", seen)
    evening.tick()

    assert b"first" in b"".join(written)
    assert is_whole(path, evening)
    log.close()


@pytest.mark.parametrize("lost", ["file", "folder", "cut", "emptied"])
def test_a_file_that_vanished_or_was_cut_is_written_anew_from_the_first_line(
    tmp_path: Path, little: RunSheet, lost: str
) -> None:
    path = tmp_path / "logs" / "evening.jsonl"
    log, evening = opened(path, little)
    evening.wish(Done("chop", "start"))
    match lost:
        case "file":
            path.unlink()
        case "folder":
            shutil.rmtree(path.parent)
        case "cut":
            os.truncate(path, path.stat().st_size - 7)
        case "emptied":
            os.truncate(path, 0)

    assert evening.tick().unkept is None

    assert is_whole(path, evening)
    with pytest.raises(LogInUse):  # and the lock is held anew
        RunLog(path)
    evening.wish(WriteNote("after"))
    assert is_whole(path, evening)
    log.close()


def test_while_a_file_stands_where_the_folder_was_the_evening_waits_in_memory(tmp_path: Path, little: RunSheet) -> None:
    path = tmp_path / "logs" / "evening.jsonl"
    log, evening = opened(path, little)
    shutil.rmtree(path.parent)
    path.parent.write_text("in the way")

    evening.wish(Done("chop", "start"))
    assert log.unkept is not None
    assert log.unkept.answers == 1
    path.parent.unlink()
    evening.tick()

    assert is_whole(path, evening)
    log.close()


def test_a_strange_file_in_the_logs_place_is_set_aside_not_lost(tmp_path: Path, little: RunSheet) -> None:
    path = tmp_path / "evening.jsonl"
    log, evening = opened(path, little)
    path.unlink()
    path.write_text("somebody's notes")

    evening.wish(Done("chop", "start"))

    assert is_whole(path, evening)
    assert (tmp_path / "evening.damaged.jsonl").read_text() == "somebody's notes"
    log.close()


def test_a_copy_put_in_the_logs_place_is_gone_on_with(tmp_path: Path, little: RunSheet) -> None:
    """As a program that keeps folders in step does: the same bytes in a new file."""
    path = tmp_path / "evening.jsonl"
    log, evening = opened(path, little)
    copy = tmp_path / "copy"
    shutil.copy(path, copy)
    copy.replace(path)

    evening.wish(Done("chop", "start"))

    assert is_whole(path, evening)
    assert not (tmp_path / "evening.damaged.jsonl").exists()
    log.close()


def test_at_the_end_what_has_no_room_is_carried_to_another_folder(
    tmp_path: Path, little: RunSheet, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("HOME", str(tmp_path / "home"))
    (tmp_path / "home").mkdir()
    path = tmp_path / "logs" / "evening.jsonl"
    log, evening = opened(path, little)
    shutil.rmtree(path.parent)
    path.parent.write_text("in the way")
    evening.wish(Done("chop", "start"))

    place = log.rescue()

    assert place == tmp_path / "home" / "evening.jsonl"
    assert is_whole(place, evening)
    log.close()


def test_an_evening_whose_log_can_only_be_read_goes_on_in_memory(
    tmp_path: Path, little: RunSheet, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The board died, and meanwhile the disk went read-only: nothing of the evening may be lost for that."""
    path = tmp_path / "evening.jsonl"
    log, evening = opened(path, little)
    evening.wish(Done("chop", "start"))
    log.close()
    really = os.open

    def read_only(name: str, flags: int, *more: int, **also: int) -> int:
        if flags & (os.O_WRONLY | os.O_RDWR):
            raise OSError(30, "Read-only file system")
        return really(name, flags, *more, **also)

    with monkeypatch.context() as broken:
        broken.setattr(os, "open", read_only)
        log, again = opened(path, little)
        again.wish(WriteNote("still here"))

        assert again.state.steps["chop"].status == "under-way"
        assert log.unkept is not None
        assert log.unkept.answers == 1
    again.tick()

    assert is_whole(path, again)
    log.close()


def test_a_new_evening_is_not_begun_where_it_cannot_be_kept(tmp_path: Path, little: RunSheet) -> None:
    (tmp_path / "logs").write_text("in the way")

    with pytest.raises(OSError, match=r"."):
        RunLog(tmp_path / "logs" / "evening.jsonl")


def test_of_a_damaged_log_a_copy_is_set_aside_and_the_sound_part_is_gone_on_with(
    tmp_path: Path, little: RunSheet
) -> None:
    path = tmp_path / "evening.jsonl"
    log, evening = opened(path, little)
    evening.tick()
    sound = path.read_bytes()
    evening.wish(Done("chop", "start"))
    evening.wish(WriteNote("lost with the line before it"))
    log.close()
    damaged = sound + path.read_bytes()[len(sound) :].replace(b"StepStarted", b"StepStartet")
    path.write_bytes(damaged)

    for number, name in enumerate(("evening.damaged.jsonl", "evening.damaged-2.jsonl")):
        log, again = opened(path, little)
        log.close()

        assert log.contents is not None
        assert log.contents.dropped is not None
        assert ":5: this line is damaged" in log.contents.dropped
        assert log.aside == tmp_path / name
        assert log.aside.read_bytes() == damaged
        assert again.state.steps["chop"].status == "to-come"
        assert is_whole(path, again)
        if number == 0:
            path.write_bytes(damaged)


def test_a_newer_versions_log_is_read_but_never_written(tmp_path: Path, little: RunSheet) -> None:
    path = tmp_path / "evening.jsonl"
    data = to_line(EveningOpened(n=1, at=at("17:00"), rehearsal=False, sheet=little, format=99))
    path.write_bytes(data)

    with pytest.raises(NoLog, match=r"evening\.jsonl:1: .*newer"):
        RunLog(path)

    assert path.read_bytes() == data
    assert read_log(data, "x").opened.sheet == little


def test_a_file_that_is_no_log_is_left_as_it_is_though_it_is_one_line(tmp_path: Path) -> None:
    path = tmp_path / "shopping.txt"
    path.write_text("two lemons")

    with pytest.raises(NoLog, match="not a run log"):
        RunLog(path)

    assert path.read_text() == "two lemons"


@settings(max_examples=times(60), deadline=None)
@given(
    moves=st.lists(
        st.sampled_from(["answer", "note", "full", "room", "unlink", "cut", "folder", "tick", "reopen"]), max_size=30
    ),
    room=st.integers(0, 400),
)
def test_whatever_befalls_the_disk_in_whatever_order_nothing_answered_is_lost(
    tmp_path_factory: pytest.TempPathFactory, moves: list[str], room: int
) -> None:
    sheet = RunSheet("x", "UTC", "0", "2026-11-28", at("18:30"), (), ())
    path = tmp_path_factory.mktemp("all") / "logs" / "evening.jsonl"
    before = resource.getrlimit(resource.RLIMIT_FSIZE)
    log, evening = opened(path, sheet)
    noted: list[str] = []
    try:
        for number, move in enumerate(moves):
            match move:
                case "answer" | "note":
                    noted.append(f"note {number}")
                    assert evening.wish(WriteNote(noted[-1])) is None
                case "full":
                    there = path.stat().st_size if path.exists() else 0
                    resource.setrlimit(resource.RLIMIT_FSIZE, (there + room, before[1]))
                case "room":
                    resource.setrlimit(resource.RLIMIT_FSIZE, before)
                case "unlink":
                    path.unlink(missing_ok=True)
                case "cut" if path.exists():
                    os.truncate(path, path.stat().st_size * 2 // 3)
                case "folder":
                    shutil.rmtree(path.parent, ignore_errors=True)
                case "tick":
                    evening.tick()
                case "reopen" if evening.tick().unkept is None:  # what is in memory only is lost with its board
                    log.close()
                    log, evening = opened(path, sheet)
            assert [note.text for note in evening.state.notes] == noted
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, before)
    assert evening.tick().unkept is None
    assert is_whole(path, evening)
    log.close()
