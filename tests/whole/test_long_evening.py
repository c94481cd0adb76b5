"""Real processes under a pseudo-terminal: killed at random moments, and left to run for hours at high speed."""

from collections.abc import Sequence
from pathlib import Path

import pytest

from board.base.clock import StoppedClock
from board.evening.events import CallRaised, Event
from board.log.read import LogContents, read_log
from board.log.write import RunLog
from board.rehearsal.player import play
from board.session.session import open_evening
from board.sheet.run_sheet import RunSheet
from tests.bench.kill_figures import kill_often
from tests.bench.soak_figures import FLAT_MB, doubled_calls, missed_calls, soak
from tests.conftest import at


@pytest.mark.slow
def test_killed_at_random_moments_no_answer_is_lost_and_the_board_comes_back_to_its_call(tmp_path: Path) -> None:
    figures = kill_often(20, 7, tmp_path)

    assert figures.kills == 20
    assert figures.lost == []
    assert len(figures.resumed) >= 10  # it stood at the right call again each time, or an error was raised


@pytest.mark.slow
def test_two_hours_miss_no_call_double_none_and_need_no_more_memory(tmp_path: Path) -> None:
    found = soak(2.0, tmp_path, "17:30")

    assert found.hours > 1.8
    assert found.raised > 20
    assert found.missed == ()
    assert found.doubled == ()
    assert max(found.memory) - min(found.memory) <= FLAT_MB


def test_the_counting_of_missed_and_doubled_calls_would_see_them(tmp_path: Path, little: RunSheet) -> None:
    """Out of a sound log a step is taken with its calls, and a call is put in twice."""
    clock = StoppedClock(at("16:50"))
    log = RunLog(tmp_path / "evening.jsonl")
    list(play(open_evening(little, clock, log, rehearsal=True), clock))
    log.close()
    sound = read_log(log.path.read_bytes(), "x")
    first = next(event for event in sound.events if isinstance(event, CallRaised))

    def holding(events: Sequence[Event]) -> LogContents:
        return LogContents(sound.opened, tuple(events), b"", 0)

    assert missed_calls(sound) == doubled_calls(sound) == ()
    assert first.slot in missed_calls(holding([e for e in sound.events if getattr(e, "slot", "") != first.slot]))[0]
    assert first.slot in doubled_calls(holding([first, *sound.events]))[0]
