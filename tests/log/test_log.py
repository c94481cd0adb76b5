"""The run log: what is written is read back, whatever of it is cut off; damage is told with its line."""

import os
import re
import zlib
from datetime import datetime
from pathlib import Path

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from board.base.clock import StoppedClock
from board.evening.events import (
    CallPutOff,
    CallRaised,
    ClockWarned,
    CoursePushed,
    DishDropped,
    EveningOpened,
    Event,
    GuestsDelayed,
    LookedIn,
    NoteWritten,
    ReadingSkipped,
    StepFinished,
    StepLeftOut,
    StepStarted,
    StepStretched,
    StopsAccepted,
    TakenBack,
)
from board.evening.wishes import Done, TakeBack, WriteNote
from board.log.read import NoLog, read_log
from board.log.record import from_line, to_line
from board.log.write import LogInUse, RunLog
from board.session.session import open_evening
from board.sheet.run_sheet import RunSheet, restore, store
from tests.conftest import at
from tests.examples import times

MOMENT = datetime.fromisoformat("2026-11-28T18:42:07.123456+00:00")


def written(sheet: RunSheet) -> list[Event]:
    return [
        EveningOpened(n=1, at=MOMENT, rehearsal=True, sheet=sheet),
        CallRaised(n=2, at=MOMENT, slot="chop", part="start"),
        StepStarted(n=3, at=MOMENT, slot="chop"),
        StepFinished(n=4, at=MOMENT, slot="chop"),
        LookedIn(n=5, at=MOMENT, slot="stew", number=1),
        CallPutOff(n=6, at=MOMENT, slot="stew", part="end", minutes=5),
        NoteWritten(n=7, at=MOMENT, text='Größe "½" \x1b[2J [b]\n\u202e', slot=None),
        CoursePushed(n=8, at=MOMENT, course="Stew", minutes=10),
        StepLeftOut(n=9, at=MOMENT, slot="sauce"),
        TakenBack(n=10, at=MOMENT, targets=(9,)),
        StepStretched(n=11, at=MOMENT, slots=("stew", "sauce"), minutes=-5, oven="old oven"),
        GuestsDelayed(n=12, at=MOMENT, slots=("arrive",), minutes=10),
        DishDropped(n=13, at=MOMENT, dish="Stew", course=None, slots=("sauce",)),
        ReadingSkipped(n=14, at=MOMENT, slot="stew"),
        ClockWarned(n=15, at=MOMENT, dish=None, course="Stew", what="put-away"),
        StopsAccepted(n=16, at=MOMENT, stops=("food 6: kept at 50 °C",)),
        ClockWarned(n=17, at=MOMENT, dish="Stew", course="Stew", what="over", cooking="stew"),
    ]


def test_a_warning_of_a_clock_from_before_raw_food_had_one_is_of_what_is_eaten() -> None:
    body = b'{"event":"ClockWarned","n":2,"at":"2026-11-28T18:42:07Z","dish":"Stew","course":"Main","what":"over"'
    event = from_line(body + b',"crc":"%08x"}\n' % zlib.crc32(body + b"}"))

    assert isinstance(event, ClockWarned)
    assert event.cooking is None


def test_a_sheet_from_before_slots_named_their_way_in_the_plan_is_read_as_ever(little: RunSheet) -> None:
    with_ways = msgspec.structs.replace(
        little, slots=tuple(msgspec.structs.replace(s, plan_way=0) for s in little.slots)
    )

    assert store(with_ways).replace(b',"plan_way":0', b"") == store(little)
    assert restore(store(little)) == little
    assert b"plan_way" not in store(little)


def test_every_kind_of_event_comes_back_as_it_was(little: RunSheet) -> None:
    for event in written(little):
        line = to_line(event)

        assert from_line(line) == event
        assert line.count(b"\n") == 1
        assert b"\x1b" not in line


def test_a_log_read_in_one_go_is_the_same_as_line_by_line(little: RunSheet) -> None:
    """A line too many at the end, torn, sends it the slow way."""
    data = b"".join(to_line(event) for event in written(little))
    at_once, slowly = read_log(data, "log"), read_log(data + b"{", "log")

    assert [at_once.opened, *at_once.events] == written(little)
    assert (at_once.opened, at_once.events) == (slowly.opened, slowly.events)
    assert (at_once.sound_bytes, at_once.dropped) == (slowly.sound_bytes, None) == (len(data), None)
    assert slowly.damage == "torn"


def test_two_events_in_one_line_are_no_sound_line_whatever_its_checksum(little: RunSheet) -> None:
    """Joined with others they would read as two of a list."""
    first, second, third, *_ = written(little)
    two = to_line(second)[:-19] + b"}," + to_line(third)[:-19] + b"}"
    line = two[:-1] + b',"crc":"%08x"}\n' % zlib.crc32(two)
    contents = read_log(to_line(first) + line, "log")

    assert contents.events == ()
    assert contents.damage is not None


@settings(max_examples=times(200), deadline=None)
@given(data=st.data())
def test_every_cut_of_a_log_reads_as_a_beginning_of_it(data: st.DataObject) -> None:
    sheet = RunSheet("x", "UTC", "0", "2026-11-28", MOMENT, (), ())
    events = written(sheet)
    lines = [to_line(event) for event in events]
    whole = b"".join(lines)
    cut = data.draw(st.integers(len(lines[0]), len(whole)))

    contents = read_log(whole[:cut], "evening.jsonl")

    assert [contents.opened, *contents.events] == events[: 1 + len(contents.events)]
    assert contents.sound_bytes <= cut + 1  # a line that lacks nothing but its end is sound
    assert (contents.dropped is None) == (contents.sound_bytes >= cut)


def test_a_flipped_bit_in_the_middle_ends_what_is_read_and_is_told_with_its_line(little: RunSheet) -> None:
    events = written(little)
    lines = [to_line(event) for event in events]
    lines[3] = lines[3].replace(b"chop", b"chip")

    contents = read_log(b"".join(lines), "evening.jsonl")

    assert [contents.opened, *contents.events] == events[:3]
    assert contents.damage == "damaged"
    assert contents.dropped is not None
    assert re.match(r"evening\.jsonl:4: .*checksum.*lines 4 to \d+ were left", contents.dropped)


def test_a_lost_line_is_noticed(little: RunSheet) -> None:
    lines = [to_line(event) for event in written(little)]
    del lines[4]

    contents = read_log(b"".join(lines), "evening.jsonl")

    assert len(contents.events) == 3
    assert contents.dropped is not None
    assert re.match(r".*:5: .*event 6 where 5 belongs", contents.dropped)


def test_what_a_newer_version_wrote_is_no_damage(little: RunSheet) -> None:
    """A line whole by its checksum that this program cannot read."""
    body = b'{"event":"TableTurned","n":11,"at":"2026-11-28T18:42:07Z"}'
    line = body[:-1] + b',"crc":"%08x"}\n' % zlib.crc32(body)

    contents = read_log(b"".join([*map(to_line, written(little)), line]), "evening.jsonl")

    assert len(contents.events) == len(written(little)) - 1
    assert contents.damage == "newer"


@pytest.mark.parametrize("data", [b"", b"hello\n", b"{}\n", b"\x00\xff" * 40, b'{"event":"StepStarted","n":1}\n'])
def test_what_is_no_log_is_refused(data: bytes) -> None:
    with pytest.raises(NoLog):
        read_log(data, "x")


def test_a_log_of_a_newer_format_is_read_and_said_to_be_one(little: RunSheet) -> None:
    newer = to_line(EveningOpened(n=1, at=MOMENT, rehearsal=False, sheet=little, format=99))

    contents = read_log(newer, "x")

    assert contents.damage == "newer"
    assert (
        contents.dropped
        == "x:1: this run log is of format 99, newer than this program's 2; what it knows of it was read"
    )


def test_an_evening_is_gone_on_with_where_it_stopped(tmp_path: Path, little: RunSheet) -> None:
    path = tmp_path / "evening.jsonl"
    clock = StoppedClock(at("17:00"))
    log = RunLog(path)
    evening = open_evening(little, clock, log, rehearsal=False)
    evening.tick()
    evening.wish(Done("chop", "start"))
    evening.wish(WriteNote("began late"))
    before = evening.state
    log.close()

    again = RunLog(path)
    resumed = open_evening(little, clock, again, rehearsal=False)

    assert resumed.state.steps == before.steps
    assert resumed.state.notes == before.notes
    assert resumed.wish(TakeBack()) is None
    again.close()


def test_a_torn_tail_is_cut_off_and_written_over(tmp_path: Path, little: RunSheet) -> None:
    path = tmp_path / "evening.jsonl"
    clock = StoppedClock(at("17:00"))
    log = RunLog(path)
    open_evening(little, clock, log, rehearsal=False).tick()
    log.close()
    sound = path.read_bytes()
    path.write_bytes(sound + b'{"event":"StepSta')

    again = RunLog(path)
    assert again.contents is not None
    assert again.contents.dropped is not None
    open_evening(little, clock, again, rehearsal=False)
    again.close()

    assert path.read_bytes().startswith(sound)
    assert read_log(path.read_bytes(), "x").dropped is None


def test_a_second_board_is_refused(tmp_path: Path, little: RunSheet) -> None:
    path = tmp_path / "evening.jsonl"
    log = RunLog(path)
    open_evening(little, StoppedClock(at("17:00")), log, rehearsal=False)

    with pytest.raises(LogInUse):
        RunLog(path)
    log.close()
    RunLog(path).close()


def test_an_answer_is_on_the_disk_before_it_counts(
    tmp_path: Path, little: RunSheet, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "evening.jsonl"
    log = RunLog(path)
    evening = open_evening(little, StoppedClock(at("17:00")), log, rehearsal=False)
    evening.tick()
    order: list[str] = []
    sync = os.fsync

    def seen(handle: int) -> None:
        order.append(f"synced {evening.state.steps['chop'].status}")
        sync(handle)

    monkeypatch.setattr(os, "fsync", seen)
    evening.wish(Done("chop", "start"))

    assert order == ["synced to-come"]
    assert evening.state.steps["chop"].status == "under-way"
    assert b'"StepStarted"' in path.read_bytes()
    log.close()
