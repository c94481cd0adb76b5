"""Odd values under good checksums: they are bounded on reading, what stands before them is read, and nothing loops."""

import zlib
from datetime import UTC, datetime

import msgspec
import pytest

from board.evening.events import ClockJumped, EveningOpened, NoteWritten, StepStarted
from board.log.read import NoLog, read_log
from board.log.record import opening_lines, to_line
from board.sheet.run_sheet import RunSheet
from tests.conftest import at


def sealed(form: dict[str, object]) -> bytes:
    body = msgspec.json.encode(form)
    return body[:-1] + b',"crc":"%08x"}\n' % zlib.crc32(body)


ODD: list[dict[str, object]] = [
    {"event": "StepStarted", "at": "9999-12-31T23:59:59Z", "slot": "chop"},
    {"event": "StepStarted", "at": "0001-01-01T00:00:00Z", "slot": "chop"},
    {"event": "StepStarted", "at": "2026-11-28T17:30:00Z", "slot": "no such step"},
    {"event": "LookedIn", "at": "2026-11-28T17:30:00Z", "slot": "chop", "number": 10**15},
    {"event": "ClockJumped", "at": "2026-11-28T17:30:00Z", "seconds": 1e308},
    {"event": "NoteWritten", "at": "2026-11-28T17:30:00Z", "text": "x" * 200_000},
    {"event": "TakenBack", "at": "2026-11-28T17:30:00Z", "targets": [2**60]},
    {"event": "StepStretched", "at": "2026-11-28T17:30:00Z", "slots": ["nobody's"], "minutes": 5},
]


@pytest.mark.parametrize("form", ODD, ids=[str(each)[:60] for each in ODD])
def test_what_cannot_be_is_left_with_what_follows(little: RunSheet, form: dict[str, object]) -> None:
    opened = EveningOpened(n=1, at=at("17:00"), rehearsal=False, sheet=little)
    before = StepStarted(n=2, at=at("17:01"), slot="chop")
    after = NoteWritten(n=4, at=at("17:40"), text="after")
    data = opening_lines(opened) + to_line(before) + sealed({**form, "n": 3}) + to_line(after)

    contents = read_log(data, "x")

    assert contents.events == (before,)
    assert contents.damage == "damaged"
    assert contents.dropped is not None
    assert contents.dropped.startswith("x:5: ")


def test_a_clock_that_began_in_1970_and_was_set_is_nothing_odd(little: RunSheet) -> None:
    opened = EveningOpened(n=1, at=datetime(1970, 1, 1, tzinfo=UTC), rehearsal=False, sheet=little)
    jumped = ClockJumped(n=2, at=at("17:00"), seconds=1_795_885_200.0)

    assert read_log(opening_lines(opened) + to_line(jumped), "x").events == (jumped,)


def test_a_sheet_of_what_cannot_be_is_no_evening(little: RunSheet) -> None:
    first, *others = little.slots
    sheet = msgspec.structs.replace(
        little, slots=(msgspec.structs.replace(first, end=datetime(9999, 1, 1, tzinfo=UTC)), *others)
    )
    opened = EveningOpened(n=1, at=at("17:00"), rehearsal=False, sheet=sheet)

    for data in (opening_lines(opened), to_line(opened)):
        with pytest.raises(NoLog):
            read_log(data, "x")
