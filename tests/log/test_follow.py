"""Another board's log, read along: growing, rewritten, gone, torn, not there yet; without lock and without a write."""

import shutil
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from board.base.clock import StoppedClock
from board.evening.fold import fold_all
from board.evening.state import begin
from board.evening.wishes import Done, WriteNote
from board.log.follow import Follower
from board.log.opening import LINES
from board.log.write import RunLog
from board.session.session import Evening, open_evening
from board.session.watching import Watched, steps_of
from board.sheet.run_sheet import RunSheet
from tests.conftest import Host, at
from tests.examples import times


class Running:
    """An evening in a log of its own."""

    def __init__(self, path: Path, sheet: RunSheet, *, rehearsal: bool = False) -> None:
        self.path = path
        self.clock = StoppedClock(at("16:58"))
        self.log = RunLog(path)
        self.evening: Evening = open_evening(sheet, self.clock, self.log, rehearsal=rehearsal)


@pytest.fixture
def running(tmp_path: Path, little: RunSheet) -> Running:
    return Running(tmp_path / "evening.jsonl", little)


def follows(follower: Follower, evening: Evening) -> bool:
    assert follower.opened is not None
    return fold_all(begin(evening.sheet), [follower.opened, *follower.events]) == evening.state


def test_what_is_appended_is_read_and_only_that(running: Running) -> None:
    follower = Follower(running.path)
    assert follower.look()
    assert not follower.look()
    running.evening.tick()
    running.evening.wish(Done("chop", "start"))

    assert follower.look()

    assert follower.whole == 1
    assert follows(follower, running.evening)
    assert not follower.look()


def test_a_log_that_is_not_there_yet_is_waited_for(tmp_path: Path, little: RunSheet) -> None:
    follower = Follower(tmp_path / "later" / "evening.jsonl")
    assert not follower.look()
    assert follower.opened is None

    running = Running(tmp_path / "later" / "evening.jsonl", little)

    assert follower.look()
    assert follows(follower, running.evening)


def test_a_line_is_taken_up_when_it_is_whole(running: Running, tmp_path: Path) -> None:
    running.evening.wish(WriteNote("a note"))
    data = running.path.read_bytes()
    copy = tmp_path / "copy.jsonl"
    follower = Follower(copy)
    for cut in range(0, len(data), 97):
        copy.write_bytes(data[:cut])
        follower.look()

        assert follower.said == ""
        assert len(follower.events) == max(0, data[:cut].count(b"\n") - LINES)
    copy.write_bytes(data)
    follower.look()
    assert follows(follower, running.evening)


def test_a_log_gone_and_written_anew_is_followed_all_the_same(running: Running) -> None:
    follower = Follower(running.path)
    follower.look()
    running.path.unlink()

    assert follower.look()
    assert "gone" in follower.said
    assert not follower.look()
    running.evening.wish(WriteNote("after"))

    assert follower.look()
    assert follower.said == ""
    assert follows(follower, running.evening)


def test_another_evening_in_the_same_file_replaces_the_first(running: Running, little: RunSheet) -> None:
    follower = Follower(running.path)
    follower.look()
    watched = Watched(follower, StoppedClock(at("17:00")))
    running.evening.wish(Done("chop", "start"))
    watched.tick()
    running.log.close()
    running.path.unlink()
    again = Running(running.path, little)
    again.evening.wish(WriteNote("another one"))

    present = watched.tick()

    assert present.state.steps["chop"].status == "to-come"
    assert present.state.notes == again.evening.state.notes


def test_damage_ends_what_is_read_and_is_said_with_its_line(running: Running) -> None:
    running.evening.wish(WriteNote("sound"))
    running.evening.wish(WriteNote("hurt"))
    running.evening.wish(WriteNote("after"))
    running.path.write_bytes(running.path.read_bytes().replace(b"hurt", b"hurz"))
    follower = Follower(running.path)

    follower.look()

    assert [e.text for e in follower.events if hasattr(e, "text")] == ["sound"]
    assert "evening.jsonl:5: this line is damaged" in follower.said


def test_nothing_is_locked_and_nothing_written(running: Running) -> None:
    running.log.close()
    before = sorted((p.name, p.read_bytes()) for p in running.path.parent.iterdir())
    follower = Follower(running.path)
    follower.look()
    watched = Watched(follower, StoppedClock(at("17:30")))

    present = watched.tick()

    assert [call.slot for call in present.due] == ["chop"]
    assert watched.wish(Done("chop", "start")) is not None
    assert sorted((p.name, p.read_bytes()) for p in running.path.parent.iterdir()) == before
    RunLog(running.path).close()  # the lock is free


@settings(max_examples=times(30), deadline=None)
@given(cuts=st.lists(st.integers(0, 3000), max_size=8))
def test_however_the_bytes_arrive_the_same_evening_is_seen(
    tmp_path_factory: pytest.TempPathFactory, cuts: list[int]
) -> None:
    path = tmp_path_factory.mktemp("follow") / "evening.jsonl"
    sheet = RunSheet("x", "UTC", "0", "2026-11-28", at("18:30"), (), ())
    running = Running(path, sheet)
    for number in range(12):
        running.evening.wish(WriteNote(f"note {number}"))
    running.log.close()
    data = path.read_bytes()
    path.write_bytes(b"")
    follower = Follower(path)
    for cut in sorted(cuts):
        path.write_bytes(data[:cut])
        follower.look()
    path.write_bytes(data)
    follower.look()

    assert follows(follower, running.evening)


def test_a_rehearsal_is_shown_at_the_time_of_its_newest_event(tmp_path: Path, little: RunSheet) -> None:
    running = Running(tmp_path / "evening.jsonl", little, rehearsal=True)
    running.clock.set(at("17:12"))
    running.evening.wish(WriteNote("now"))
    follower = Follower(running.path)
    follower.look()

    assert Watched(follower, StoppedClock(at("09:00"))).tick().now == at("17:12")


def test_a_call_is_seen_once_as_new_and_courses_stay_for_one_person(running: Running, little: RunSheet) -> None:
    follower = Follower(running.path)
    follower.look()
    clock = StoppedClock(at("16:58"))
    watched = Watched(follower, clock, "HOST")
    assert watched.tick().raised == ()
    clock.set(at("17:01"))

    assert [call.slot for call in watched.tick().raised] == ["chop"]
    assert watched.tick().raised == ()
    assert {slot.id for slot in watched.sheet.slots} == {"chop", "stew", "sauce", "serve", "clear"}  # nobody arrives
    assert watched.tick().forecast.courses == Host(little, at("17:01")).evening.tick().forecast.courses


def test_one_persons_steps_are_those_they_have_hands_on(lantern_sheet: RunSheet) -> None:
    for who in lantern_sheet.hands:
        shown = steps_of(lantern_sheet, who)

        assert shown.courses == lantern_sheet.courses
        assert {s.id for s in shown.slots} == {
            s.id for s in lantern_sheet.slots if who in {part.who for part in s.attended}
        }


def test_a_copied_log_of_a_closed_evening_can_be_looked_at(running: Running, tmp_path: Path) -> None:
    running.log.close()
    shutil.copy(running.path, tmp_path / "copy.jsonl")
    follower = Follower(tmp_path / "copy.jsonl")

    assert follower.look()
