"""The reading that ends a step, the hold after it, ending without one; and taking each of them back."""

import msgspec
import pytest

from board.evening.events import CallPutOff, EveningOpened, ReadingSkipped, ReadingTaken, StepFinished, StepStarted
from board.evening.readings import held_since, wants_reading
from board.evening.wishes import Done, EndUnread, Refusal, Settle, TakeBack, TakeReading
from board.review.measure import measured
from board.sheet.run_sheet import RunSheet
from board.view.board import Viewer
from board.view.look import about, happened
from tests.conftest import Host, at
from tests.evening.kitchens import play

TO_THE_STEW = (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"))


@pytest.fixture
def stewing(host: Host) -> Host:
    """The stew is under way since 17:30, wanted at 74 °C, its end at 18:30."""
    play(host, *TO_THE_STEW)
    return host


@pytest.fixture
def holding(little: RunSheet) -> Host:
    """The same, held 12 min at 60 °C: a roast by the table of FDA Food Code 3-401.11(B) is held 12 min at 140 °F."""
    slots = tuple(
        msgspec.structs.replace(s, core_celsius=60.0, hold_minutes=12.0) if s.id == "stew" else s for s in little.slots
    )
    host = Host(msgspec.structs.replace(little, slots=slots), at("16:58"))
    play(host, *TO_THE_STEW)
    return host


def newest(host: Host, count: int) -> list[type]:
    return [type(event) for event in host.evening.state.history[-count:]]


def ends(host: Host) -> str:
    return f"{host.evening.look().slots['stew'].end:%H:%M}"


def test_a_reading_that_is_enough_ends_the_step_and_u_takes_both_back(stewing: Host) -> None:
    stewing.at("18:30")
    before = stewing.evening.state

    assert stewing.wish(TakeReading("stew", 75.0, "end")) is None
    assert newest(stewing, 2) == [ReadingTaken, StepFinished]
    assert stewing.evening.state.steps["stew"].finished == at("18:30")
    stewing.wish(TakeBack())

    after = stewing.evening.state
    assert (after.steps, after.readings, after.raised) == (before.steps, before.readings, before.raised)


def test_a_reading_that_is_low_leaves_it_open_for_three_minutes(stewing: Host) -> None:
    stewing.at("18:30")

    stewing.wish(TakeReading("stew", 71.0, "end"))

    assert newest(stewing, 2) == [ReadingTaken, CallPutOff]
    assert ends(stewing) == "18:33"
    assert wants_reading(stewing.evening.state, stewing.evening.sheet.by_id()["stew"])


def test_ended_without_a_reading_is_an_event_of_its_own_and_u_takes_both_back(stewing: Host) -> None:
    stewing.at("18:30")
    before = stewing.evening.state

    stewing.wish(EndUnread("stew"))
    assert newest(stewing, 2) == [ReadingSkipped, StepFinished]
    assert stewing.evening.state.unread == ("stew",)
    stewing.wish(TakeBack())

    after = stewing.evening.state
    assert (after.steps, after.unread, after.raised) == (before.steps, (), before.raised)


def test_ended_without_a_reading_is_told_in_look_back_and_in_the_review(stewing: Host) -> None:
    stewing.at("18:30")
    stewing.wish(EndUnread("stew"))
    opened = next(e for e in stewing.evening.told if isinstance(e, EveningOpened))
    viewer = Viewer(stewing.evening.sheet)

    lines = [line.text for line in happened(viewer, stewing.evening.told, at("18:30"))]

    assert "stew: temperature not checked" in lines
    assert about(viewer, stewing.evening.peek(), "stew") == "temperature not checked"
    assert [step.slot.id for step in measured(stewing.evening.state, opened).unread] == ["stew"]


def test_done_already_says_that_nobody_read_and_u_takes_the_whole_key_back(host: Host) -> None:
    host.at("17:00")
    host.wish(Settle("chop"))

    host.wish(Settle("stew"))

    assert newest(host, 3) == [StepStarted, ReadingSkipped, StepFinished]
    host.wish(TakeBack())
    assert host.evening.state.steps["stew"].status == "to-come"
    assert host.evening.state.unread == ()
    assert host.evening.state.steps["chop"].status == "finished"


def test_what_was_read_and_wants_no_more_is_not_told_as_unread(stewing: Host) -> None:
    stewing.at("18:30")
    stewing.wish(TakeReading("stew", 75.0))

    stewing.wish(Settle("stew"))

    assert stewing.evening.state.unread == ()


def test_a_low_reading_is_not_passed_over_by_ending_without_one(stewing: Host) -> None:
    stewing.at("18:30")
    stewing.wish(TakeReading("stew", 71.0))

    assert isinstance(stewing.wish(EndUnread("stew")), Refusal)
    assert stewing.evening.state.steps["stew"].status == "under-way"


def test_the_call_at_the_end_waits_until_it_was_held(holding: Host) -> None:
    """Read at 18:30: 12 minutes are up at 18:42, and the call comes then, with nothing to read any more."""
    holding.at("18:30")

    holding.wish(TakeReading("stew", 60.0, "end"))

    assert newest(holding, 2) == [ReadingTaken, CallPutOff]
    assert ends(holding) == "18:42"
    refusal = holding.at("18:36") and holding.wish(Done("stew", "end"))
    assert isinstance(refusal, Refusal)
    assert "6 min of it are left" in refusal.words
    holding.at("18:42")
    assert not wants_reading(holding.evening.state, holding.evening.sheet.by_id()["stew"])
    holding.answer("stew")
    assert holding.evening.state.steps["stew"].status == "finished"


def test_it_is_held_from_the_first_reading_that_was_enough(holding: Host) -> None:
    """Enough at 18:20 and still at 18:30: held since 18:20, so two minutes are left."""
    holding.at("18:20")
    holding.wish(TakeReading("stew", 60.0))
    assert ends(holding) == "18:32"  # 18:20 and 12
    holding.at("18:30")

    holding.wish(TakeReading("stew", 61.0, "end"))

    assert ends(holding) == "18:32"
    holding.at("18:32")
    holding.answer("stew")
    assert holding.evening.state.steps["stew"].status == "finished"


def test_a_low_reading_in_between_begins_the_hold_anew(holding: Host) -> None:
    for clock, celsius in (("18:20", 60.0), ("18:30", 58.0), ("18:33", 60.5)):
        holding.at(clock)
        holding.wish(TakeReading("stew", celsius, "end"))

    assert held_since(holding.evening.state, holding.evening.sheet.by_id()["stew"]) == at("18:33")
    assert ends(holding) == "18:45"


def test_read_again_after_it_was_held_a_reading_ends_it(holding: Host) -> None:
    holding.at("18:18")
    holding.wish(TakeReading("stew", 60.0))
    holding.at("18:30")

    holding.wish(TakeReading("stew", 60.0, "end"))

    assert holding.evening.state.steps["stew"].status == "finished"


def test_the_call_says_how_long_it_is_held_and_from_when(holding: Host) -> None:
    viewer = Viewer(holding.evening.sheet)
    assert (
        "core 60 °C (140 °F), held 12 min" in viewer.view(holding.at("18:30")).due[1].detail
    )  # after the guests at the door

    holding.wish(TakeReading("stew", 60.0, "end"))

    told = next(c for c in viewer.view(holding.at("18:31")).coming if c.key == ("stew", "end", 0))
    assert "held from 18:30 for 12 min" in told.detail


def test_a_clock_that_is_set_does_not_lose_a_reading(stewing: Host) -> None:
    from board.evening.events import ClockJumped
    from board.evening.fold import fold_all

    stewing.at("18:30")
    stewing.wish(TakeReading("stew", 75.0))
    state = stewing.evening.state

    state = fold_all(state, [ClockJumped(n=state.last_n + 1, at=at("20:30"), seconds=7200.0)])

    assert not wants_reading(state, state.sheet.by_id()["stew"])


def test_answered_by_itself_line_by_line_it_needs_no_reading(stewing: Host) -> None:
    """As in a rehearsal played line by line, where nobody has a probe."""
    stewing.at("18:30")

    stewing.answer("stew")

    assert newest(stewing, 1) == [StepFinished]
    assert stewing.evening.state.unread == ()
