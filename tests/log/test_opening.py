"""The first line is worth no evening: whichever line of the opening is damaged, the evening goes on."""

import json
from collections.abc import Callable
from pathlib import Path

import pytest

from board.base.clock import StoppedClock
from board.evening.events import BoardReopened, EveningOpened
from board.evening.wishes import Done, WriteNote
from board.log.opening import LINES
from board.log.read import BOM, NoLog, NotBegun, read_log
from board.log.record import to_line
from board.log.write import RunLog
from board.session.session import open_evening
from board.sheet.run_sheet import RunSheet
from tests.conftest import at
from tests.log.test_disk import is_whole, opened


@pytest.fixture
def whole(tmp_path: Path, little: RunSheet) -> bytes:
    path = tmp_path / "whole.jsonl"
    log, evening = opened(path, little)
    evening.wish(Done("chop", "start"))
    evening.wish(WriteNote("more salt"))
    log.close()
    return path.read_bytes()


def with_a_bit_flipped(data: bytes, line: int, part: float) -> bytes:
    """In that line (from 0), so far into it."""
    lines = data.splitlines(keepends=True)
    place = sum(map(len, lines[:line])) + int(part * (len(lines[line]) - 1))
    return data[:place] + bytes([data[place] ^ 4]) + data[place + 1 :]


def test_the_first_line_is_short_and_tells_what_log_it_is(whole: bytes, little: RunSheet) -> None:
    lines = whole.splitlines()
    first = json.loads(lines[0])

    assert len(lines[0]) < 400
    assert (first["plan"], first["date"], first["digest"]) == (little.plan, little.date, little.digest)
    assert lines[1] == lines[2]
    assert len(lines[0]) < len(lines[1])


@pytest.mark.parametrize("part", [0.0, 0.03, 0.5, 0.9, 0.999])
@pytest.mark.parametrize("line", range(LINES))
def test_a_flipped_bit_in_the_opening_loses_nothing(tmp_path: Path, whole: bytes, line: int, part: float) -> None:
    sound = read_log(whole, "x")
    path = tmp_path / "evening.jsonl"
    damaged = with_a_bit_flipped(whole, line, part)
    path.write_bytes(damaged)

    contents = read_log(damaged, "evening.jsonl")
    log = RunLog(path)
    evening = open_evening(sound.opened.sheet, StoppedClock(at("18:00")), log, rehearsal=False)

    assert (contents.opened, contents.events, contents.mark) == (sound.opened, sound.events, sound.mark)
    assert contents.damage is None
    assert contents.dropped is not None
    assert "second copy" in contents.dropped
    assert is_whole(path, evening)
    assert isinstance(evening.told[-1], BoardReopened)
    assert path.read_bytes().startswith(whole)  # mended in its place
    assert log.aside is not None
    assert log.aside.read_bytes() == damaged
    log.close()


@pytest.mark.parametrize("lost", [(0, 1), (0, 2), (1,), (2,)])
def test_one_sound_copy_is_enough(whole: bytes, lost: tuple[int, ...]) -> None:
    sound = read_log(whole, "x")
    lines = whole.splitlines(keepends=True)
    for line in lost:
        lines[line] = b"\x00" * (len(lines[line]) - 1) + b"\n"

    contents = read_log(b"".join(lines), "x")

    assert (contents.opened, contents.events) == (sound.opened, sound.events)


def test_answers_are_read_by_a_kept_sheet_where_the_opening_is_lost(whole: bytes, little: RunSheet) -> None:
    sound = read_log(whole, "x")
    data = with_a_bit_flipped(with_a_bit_flipped(whole, 1, 0.5), 2, 0.4)
    other = RunSheet("another", "UTC", "0", "2026-11-28", sound.opened.at, (), ())

    contents = read_log(data, "x", lambda: [other, little])

    assert (contents.opened, contents.events) == (sound.opened, sound.events)
    assert contents.dropped is not None
    assert "timetable kept of the plan" in contents.dropped
    with pytest.raises(NoLog, match="platecall sheet PLAN"):
        read_log(data, "x", lambda: [other])


def test_a_log_of_format_1_with_a_flipped_bit_is_read_by_a_kept_sheet(whole: bytes, little: RunSheet) -> None:
    sound = read_log(whole, "x")
    old = to_line(EveningOpened(n=1, at=sound.opened.at, format=1, rehearsal=True, sheet=little))
    data = with_a_bit_flipped(old, 0, 0.9) + b"".join(map(to_line, sound.events))

    contents = read_log(data, "x", lambda: [little])

    assert contents.events == sound.events
    assert contents.opened.sheet == little
    assert contents.opened.rehearsal


EDITED: dict[str, Callable[[bytes], bytes]] = {
    "CRLF": lambda data: data.replace(b"\n", b"\r\n"),
    "a byte-order mark": lambda data: BOM + data,
    "no last line end": lambda data: data[:-1],
    "all of them": lambda data: BOM + data[:-1].replace(b"\n", b"\r\n"),
}


@pytest.mark.parametrize("edit", EDITED.values(), ids=list(EDITED))
def test_what_an_editor_leaves_is_read_and_gone_on_with(
    tmp_path: Path, whole: bytes, edit: Callable[[bytes], bytes]
) -> None:
    sound = read_log(whole, "x")
    path = tmp_path / "evening.jsonl"
    path.write_bytes(edit(whole))

    contents = read_log(edit(whole), "x")
    log = RunLog(path)
    evening = open_evening(sound.opened.sheet, StoppedClock(at("18:00")), log, rehearsal=False)

    assert (contents.events, contents.dropped) == (sound.events, None)
    assert is_whole(path, evening)
    assert path.read_bytes().startswith(whole)
    log.close()


def test_every_cut_of_an_opening_is_an_evening_or_none_that_was_begun(
    tmp_path: Path, whole: bytes, little: RunSheet
) -> None:
    head = read_log(whole, "x").head
    path = tmp_path / "evening.jsonl"
    for cut in {*range(0, head, 97), *range(head - 3, head + 1), whole.index(b"\n") + 1}:
        path.write_bytes(whole[:cut])
        try:
            read_log(whole[:cut], "x")
        except NotBegun:
            pass
        except NoLog:
            assert cut < len(b'{"event":"')
        log = RunLog(path)
        evening = open_evening(little, StoppedClock(at("17:00")), log, rehearsal=False)
        assert is_whole(path, evening), cut
        log.close()
