"""What must hold for every order of answers: replay, undo, causes before effects, finished times that stay."""

from datetime import timedelta
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from board.base.clock import StoppedClock
from board.evening.events import ANSWERS, ClockWarned, Event, KeepingWarned, NoteWritten, ReadingTaken
from board.evening.fold import fold_all
from board.evening.forecast import Forecaster
from board.evening.state import begin
from board.evening.wishes import Done, EndUnread, Later, LeaveOut, Push, Settle, TakeBack, TakeReading, Wish, WriteNote
from board.session.session import Evening, unlogged_evening
from board.sheet.run_sheet import RunSheet
from tests.examples import times

MOVES = st.lists(
    st.tuples(
        st.integers(0, 40 * 60),  # seconds that pass
        st.sampled_from(
            ["done", "done", "done", "later", "out", "push", "back", "note", "settle", "early", "read", "unread"]
        ),
        st.integers(0, 50),
    ),
    max_size=60,
)


def play(sheet: RunSheet, moves: list[tuple[int, str, int]]) -> tuple[Evening, StoppedClock]:
    clock = StoppedClock(sheet.slots[0].start - timedelta(minutes=1))
    evening = unlogged_evening(sheet, clock)
    for seconds, kind, number in moves:
        clock.set(clock.now() + timedelta(seconds=seconds))
        present = evening.tick()
        calls = present.coming if kind == "early" else present.due
        call = calls[number % len(calls)] if calls else None
        wishes: dict[str, Wish | None] = {
            "done": Done(*call.key) if call else None,
            "early": Done(*call.key) if call else None,
            "later": Later(*call.key) if call else None,
            "out": LeaveOut(call.slot) if call else None,
            "settle": Settle(call.slot) if call else None,
            "push": Push(sheet.courses[number % len(sheet.courses)].name, number),
            "back": TakeBack(),
            "note": WriteNote(f"note {number}"),
            "read": TakeReading(
                sheet.slots[number % len(sheet.slots)].id, 50.0 + number, "end" if number % 2 else None
            ),
            "unread": EndUnread(call.slot) if call else None,
        }
        wish = wishes[kind]
        if wish is not None:
            evening.wish(wish)
    return evening, clock


def kept(evening: Evening) -> list[Event]:
    return list(evening.state.history)


@settings(max_examples=times(60), deadline=None)
@given(moves=MOVES)
def test_state_is_the_replay_of_its_log(lantern_sheet: RunSheet, moves: Any) -> None:
    evening, _ = play(lantern_sheet, moves)

    events = list(evening.keeper.events)  # type: ignore[attr-defined]
    cut = len(events) // 2
    opened = kept(evening)[0]

    whole = fold_all(begin(lantern_sheet), [opened, *events])
    halves = fold_all(fold_all(begin(lantern_sheet), [opened, *events[:cut]]), events[cut:])
    assert whole == halves == evening.state


@settings(max_examples=times(30), deadline=None)
@given(moves=MOVES)
def test_folding_leaves_the_state_it_began_with_as_it_was(lantern_sheet: RunSheet, moves: Any) -> None:
    evening, _ = play(lantern_sheet, moves)
    events = list(evening.keeper.events)  # type: ignore[attr-defined]
    states = [fold_all(begin(lantern_sheet), kept(evening)[:1])]
    for event in events:
        states.append(fold_all(states[-1], [event]))

    for count, state in enumerate(states):
        assert state == fold_all(states[0], events[:count])


@settings(max_examples=times(60), deadline=None)
@given(moves=MOVES)
def test_taking_everything_back_leaves_nothing_answered(lantern_sheet: RunSheet, moves: Any) -> None:
    evening, _ = play(lantern_sheet, moves)

    while evening.wish(TakeBack()) is None:
        pass

    assert not [e for e in kept(evening) if isinstance(e, ANSWERS) and not getattr(e, "by_itself", False)]
    assert evening.state.pushed == {}
    assert evening.state.notes == ()
    assert evening.state.readings == ()
    assert evening.state.unread == ()


@settings(max_examples=times(40), deadline=None)
@given(moves=MOVES)
def test_notes_readings_and_warnings_touch_nothing_else(lantern_sheet: RunSheet, moves: Any) -> None:
    """The state is the same without them, but for what they themselves say and the count of events."""
    evening, _ = play(lantern_sheet, moves)
    told = [e for e in evening.told if not isinstance(e, NoteWritten | ReadingTaken | KeepingWarned | ClockWarned)]

    without = fold_all(begin(lantern_sheet), told)

    assert without.steps == evening.state.steps
    assert without.raised == evening.state.raised
    assert without.pushed == evening.state.pushed
    assert without.closed == evening.state.closed


@settings(max_examples=times(60), deadline=None)
@given(moves=MOVES)
def test_a_forecast_never_puts_a_thing_before_now_or_before_its_cause(lantern_sheet: RunSheet, moves: Any) -> None:
    evening, clock = play(lantern_sheet, moves)
    now = clock.now()
    forecast = Forecaster(lantern_sheet).forecast(evening.state, now)

    for slot in lantern_sheet.slots:
        ahead, step = forecast.slots[slot.id], evening.state.steps[slot.id]
        assert ahead.end >= ahead.start
        if step.status != "to-come":
            continue
        assert ahead.start >= now
        for wait in slot.waits:
            if wait.reason in ("ready", "hands"):  # hands may do first what they can do first
                continue
            other = forecast.slots[wait.after]
            anchor = other.end if wait.anchor == "end" else other.start
            assert ahead.start >= anchor + timedelta(minutes=wait.minutes)


@settings(max_examples=times(40), deadline=None)
@given(moves=MOVES, more=MOVES)
def test_finished_times_never_move(lantern_sheet: RunSheet, moves: Any, more: Any) -> None:
    evening, _ = play(lantern_sheet, moves)
    before = {id_: s.finished for id_, s in evening.state.steps.items() if s.finished}
    later = [(seconds, kind, n) for seconds, kind, n in more if kind != "back"]
    # The same moves and then others: what was finished stays as it was.
    again, _ = play(lantern_sheet, [*moves, *later])

    for id_, finished in before.items():
        assert again.state.steps[id_].finished == finished


@settings(max_examples=times(40), deadline=None)
@given(moves=MOVES)
def test_moving_things_along_never_makes_a_course_later(lantern_sheet: RunSheet, moves: Any) -> None:
    """The second pass of the forecast against its first alone."""
    evening, clock = play(lantern_sheet, moves)
    forecaster = Forecaster(lantern_sheet)
    now = clock.now().timestamp()
    wished = dict(forecaster.planned)
    for course, minutes in evening.state.pushed.items():
        wished[forecaster.serve_of[course]] += minutes * 60
    start = forecaster.rule.play(forecaster._going(evening.state, now, wished)).start

    forecast = forecaster.forecast(evening.state, clock.now())

    for course in lantern_sheet.courses:
        assert forecast.slots[course.serve].start.timestamp() <= start[course.serve] + 0.001


@settings(max_examples=times(30), deadline=None)
@given(moves=MOVES)
def test_no_call_is_raised_twice_without_an_answer_between(lantern_sheet: RunSheet, moves: Any) -> None:
    evening, clock = play(lantern_sheet, moves)
    evening.tick()

    first = len(evening.keeper.events)  # type: ignore[attr-defined]
    evening.tick()
    clock.set(clock.now())

    assert len(evening.keeper.events) == first  # type: ignore[attr-defined]
