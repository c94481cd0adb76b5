"""After sleep, a clock set by hand or a clock-change night: the right calls, none twice, none lost, nothing undone."""

from datetime import UTC, datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from board.base.clock import Jump, StoppedClock
from board.evening.events import CallRaised, ClockJumped, EveningOpened
from board.evening.fold import fold_all
from board.evening.state import begin
from board.evening.wishes import Done, Later, TakeBack
from board.log.write import Memory
from board.session.session import Evening, unlogged_evening
from board.sheet.run_sheet import RunSheet
from board.view.present import Present
from tests.conftest import Host, at
from tests.examples import times


class Jumping(StoppedClock):
    """A clock that tests set, and say of how."""

    told: Jump | None = None

    def jumped(self) -> Jump | None:
        told, self.told = self.told, None
        return told

    def passes(self, seconds: float) -> None:
        self.set(self.now() + timedelta(seconds=seconds))

    def jumps(self, seconds: float, *, slept: bool = False) -> None:
        self.passes(seconds)
        self.told = Jump(seconds, slept)


class JumpyHost(Host):
    def __init__(self, sheet: RunSheet, start: datetime) -> None:
        self.clock: Jumping = Jumping(start)
        self.evening = unlogged_evening(sheet, self.clock, rehearsal=False)


@pytest.fixture
def jumpy(little: RunSheet) -> JumpyHost:
    return JumpyHost(little, at("16:58"))


def due(present: Present) -> list[tuple[str, str]]:
    return [(call.slot, call.part) for call in present.due]


def jumps_of(evening: Evening) -> list[ClockJumped]:
    return [e for e in evening.state.history if isinstance(e, ClockJumped)]


def test_after_sleep_what_came_due_is_called_at_once_and_the_jump_is_kept(jumpy: JumpyHost) -> None:
    jumpy.at("17:00")
    jumpy.answer("chop")
    jumpy.clock.jumps(1800, slept=True)

    present = jumpy.evening.tick()

    assert due(present) == [("chop", "end")]
    assert present.state.steps["chop"].started == at("17:00")
    (jump,) = jumps_of(jumpy.evening)
    assert (jump.seconds, jump.slept, jump.at) == (1800, True, at("17:30"))


@pytest.mark.parametrize("seconds", [3600, -3600, 30, -30])
def test_a_step_under_way_ends_after_the_time_it_takes_whatever_the_clock_is_set_to(
    jumpy: JumpyHost, seconds: int
) -> None:
    jumpy.at("17:00")
    jumpy.answer("chop")
    jumpy.clock.passes(600)
    jumpy.evening.tick()
    jumpy.clock.jumps(seconds)

    present = jumpy.evening.tick()
    assert ("chop", "end") not in due(present)
    assert present.state.steps["chop"].status == "under-way"
    jumpy.clock.passes(599)
    assert ("chop", "end") not in due(jumpy.evening.tick())
    jumpy.clock.passes(1)

    assert ("chop", "end") in due(jumpy.evening.tick())


def test_a_clock_set_back_undoes_nothing_and_asks_nothing_twice(jumpy: JumpyHost) -> None:
    jumpy.at("17:00")
    jumpy.answer("chop")
    jumpy.at("17:20")
    jumpy.answer("chop")
    jumpy.at("17:30")
    jumpy.answer("stew")
    jumpy.at("17:50")  # the look-in is called
    before = jumpy.evening.state
    jumpy.clock.jumps(-3600)

    present = jumpy.evening.tick()

    assert due(present) == [("stew", "look-in")]
    assert present.raised == ()
    assert {i: s.status for i, s in present.state.steps.items()} == {i: s.status for i, s in before.steps.items()}
    finished = present.state.steps["chop"].finished
    assert finished is not None
    assert present.now - finished == timedelta(minutes=30)  # as long ago as it was


def test_a_call_that_is_too_early_by_the_new_clock_comes_again_at_its_time_and_is_heard(jumpy: JumpyHost) -> None:
    jumpy.at("17:00")
    jumpy.clock.jumps(-600)

    assert due(jumpy.evening.tick()) == []
    present = jumpy.at("17:00")

    assert due(present) == [("chop", "start")]
    assert [call.slot for call in present.raised] == ["chop"]
    raised = [e for e in jumpy.evening.state.history if isinstance(e, CallRaised)]
    assert len(raised) == 1


def test_a_clock_a_little_behind_what_happened_waits_for_it(jumpy: JumpyHost) -> None:
    jumpy.at("17:00")
    jumpy.answer("chop")
    jumpy.clock.passes(-15)

    present = jumpy.evening.tick()

    assert present.now == at("17:00")
    assert jumps_of(jumpy.evening) == []


def test_an_answer_given_before_the_jump_is_noticed_is_told_by_the_new_clock(jumpy: JumpyHost) -> None:
    jumpy.at("17:00")
    jumpy.clock.jumps(3600)

    jumpy.evening.wish(Done("chop", "start"))

    assert jumpy.evening.state.steps["chop"].started == at("18:00")


def test_a_board_opened_again_with_the_clock_far_behind_goes_on_from_what_happened_last(little: RunSheet) -> None:
    opened = EveningOpened(n=1, at=at("16:58"), rehearsal=False, sheet=little)
    raised = CallRaised(n=2, at=at("17:30"), slot="chop", part="start")
    clock = Jumping(at("16:59"))
    evening = Evening(little, clock, Memory(), [opened, raised])

    present = evening.tick()

    assert present.now == at("16:59")
    (jump,) = jumps_of(evening)
    assert jump.seconds == -31 * 60
    assert len(jumps_of(evening)) == 1


def test_taking_back_leaves_jumps_as_they_were(jumpy: JumpyHost) -> None:
    jumpy.at("17:00")
    jumpy.answer("chop")
    jumpy.clock.jumps(-600)
    jumpy.evening.tick()
    jumpy.clock.passes(60)
    jumpy.evening.wish(Later("chop", "end"))

    jumpy.evening.wish(TakeBack())

    assert jumpy.evening.state.steps["chop"].started == at("16:50")
    assert len(jumps_of(jumpy.evening)) == 1


@settings(max_examples=times(80), deadline=None)
@given(
    moves=st.lists(
        st.tuples(
            st.integers(0, 40 * 60),
            st.sampled_from(["done", "done", "later", "ahead", "back", "sleep", "none"]),
            st.integers(21, 7200),
        ),
        max_size=40,
    )
)
def test_whatever_the_clock_does_nothing_is_asked_twice_and_every_step_lasts_as_long_as_it_took(
    lantern_sheet: RunSheet, moves: Any
) -> None:
    """Beside the clock that jumps runs one that does not; how long each step took by it is what the state must say."""
    clock = Jumping(lantern_sheet.slots[0].start - timedelta(minutes=1))
    evening = unlogged_evening(lantern_sheet, clock, rehearsal=False)
    truly = 0.0  # seconds that really passed
    began: dict[str, float] = {}
    for seconds, kind, size in moves:
        clock.passes(seconds)
        truly += seconds
        if kind in ("ahead", "back", "sleep"):
            clock.jumps(-size if kind == "back" else size, slept=kind == "sleep")
            truly += size if kind == "sleep" else 0
        present = evening.tick()
        calls = [call for call in present.due]
        if calls and kind in ("done", "later"):
            call = calls[size % len(calls)]
            evening.wish(Done(*call.key) if kind == "done" else Later(*call.key))
        for id_, step in evening.state.steps.items():
            if step.started is not None and step.status == "under-way":
                began.setdefault(id_, truly)
                shown = (evening.now() - step.started).total_seconds()
                assert abs(shown - (truly - began[id_])) < 0.01, id_
    open_calls = set()
    for event in evening.keeper.events:  # type: ignore[attr-defined]
        if isinstance(event, CallRaised):
            key = (event.slot, event.part, event.number)
            assert key not in open_calls
            open_calls.add(key)
        elif hasattr(event, "slot"):
            open_calls = {key for key in open_calls if key[0] != event.slot}
    first = evening.state.history[0]
    assert fold_all(begin(lantern_sheet), [first, *evening.keeper.events]) == evening.state  # type: ignore[attr-defined]


def test_on_a_night_the_clocks_change_calls_come_after_the_minutes_that_pass(little: RunSheet) -> None:
    """Europe/Dublin goes from 01:59:59 back to 01:00:00 on 25 October 2026 (tzdata)."""
    by = datetime(2026, 10, 25, 0, 30, tzinfo=UTC) - at("17:00")

    def moved(value: Any) -> Any:
        return value + by

    slots = tuple(
        msgspec.structs.replace(
            s,
            start=moved(s.start),
            end=moved(s.end),
            attended=tuple(msgspec.structs.replace(a, start=moved(a.start), end=moved(a.end)) for a in s.attended),
        )
        for s in little.slots
    )
    sheet = msgspec.structs.replace(little, zone="Europe/Dublin", slots=slots)
    host = JumpyHost(sheet, at("16:58") + by)
    host.clock.set(at("17:00") + by)
    host.evening.tick()
    host.answer("chop")
    host.clock.set(at("17:20") + by)
    host.answer("chop")
    host.clock.set(at("17:30") + by)  # 02:00 by the summer clock, and 01:00 by the wall
    assert host.clock.now().astimezone(ZoneInfo("Europe/Dublin")).strftime("%H:%M") == "01:00"

    assert due(host.evening.tick()) == [("stew", "start")]
    assert jumps_of(host.evening) == []
