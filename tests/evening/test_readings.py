"""Readings of the core: what they keep open, what they let by, what is undone; and the warning of what stands."""

from dataclasses import replace
from datetime import timedelta

import msgspec
import pytest

from board.evening.events import CallPutOff, KeepingWarned, ReadingTaken, StepStarted, TakenBack
from board.evening.forecast import Standing
from board.evening.raise_due import warn_keeping
from board.evening.readings import can_be_read, last_reading, wants_reading
from board.evening.wishes import Done, LeaveOut, Refusal, TakeBack, TakeReading
from board.facts.degrees import to_celsius
from board.log.record import from_line, to_line
from board.sheet.run_sheet import Keeping, RunSheet
from tests.conftest import Host, at


@pytest.fixture
def stewing(host: Host) -> Host:
    """The stew is under way since 17:30, wanted at 74 °C, its end at 18:30."""
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew")):
        host.at(clock)
        host.answer(id_)
    return host


def ends_due(host: Host) -> list[str]:
    return [call.slot for call in host.evening.tick().due if call.part == "end"]


def test_a_reading_below_keeps_the_step_open_for_three_minutes(stewing: Host) -> None:
    stewing.at("18:30")
    assert ends_due(stewing) == ["stew"]

    assert stewing.wish(TakeReading("stew", 71.0)) is None

    assert ends_due(stewing) == []
    assert stewing.evening.tick().forecast.slots["stew"].end == at("18:33")
    assert [call.slot for call in stewing.at("18:33").due if call.part == "end"] == ["stew"]


def test_a_step_whose_core_lacks_something_is_not_done_and_the_board_says_by_how_much(stewing: Host) -> None:
    stewing.at("18:30")
    stewing.wish(TakeReading("stew", 71.0))

    refusal = stewing.wish(Done("stew", "end"))

    assert isinstance(refusal, Refusal)
    assert "core 71 °C (159.8 °F), 3 °C below" in refusal.words
    assert stewing.evening.state.steps["stew"].status == "under-way"
    assert stewing.wish(LeaveOut("stew")) is None  # the host decides, not the board


def test_at_or_above_it_is_kept_and_the_step_is_answered_as_usual(stewing: Host) -> None:
    stewing.at("18:30")
    stewing.wish(TakeReading("stew", 71.0))
    stewing.at("18:32")

    stewing.wish(TakeReading("stew", 74.0))

    assert [r.celsius for r in stewing.evening.state.readings] == [71.0, 74.0]
    assert stewing.wish(Done("stew", "end")) is None
    assert stewing.evening.state.steps["stew"].status == "finished"


def test_165_fahrenheit_is_enough_where_74_celsius_is_wanted(stewing: Host) -> None:
    """165 °F/74 °C: FDA Food Code 3-401.11(A). By the definition of °F it is 73.9 °C."""
    stewing.at("18:30")

    stewing.wish(TakeReading("stew", to_celsius(165, "F")))

    assert stewing.wish(Done("stew", "end")) is None


def test_an_early_reading_below_puts_no_call_off(stewing: Host) -> None:
    stewing.at("17:50")

    stewing.wish(TakeReading("stew", 40.0))

    assert isinstance(stewing.evening.state.history[-1], ReadingTaken)
    assert stewing.evening.tick().forecast.slots["stew"].end == at("18:30")


def test_a_reading_never_brings_a_call_forward_that_was_put_off_for_longer(stewing: Host) -> None:
    stewing.at("18:30")
    stewing.evening._keep(
        [CallPutOff(n=stewing.evening.state.last_n + 1, at=at("18:30"), slot="stew", part="end", minutes=9)]
    )

    stewing.wish(TakeReading("stew", 71.0))

    assert stewing.evening.tick().forecast.slots["stew"].end == at("18:39")


def test_taking_a_reading_back_undoes_it_and_what_it_put_off(stewing: Host) -> None:
    stewing.at("18:30")
    before = stewing.evening.state
    stewing.wish(TakeReading("stew", 71.0))

    assert stewing.wish(TakeBack()) is None

    after = stewing.evening.state
    assert (after.steps, after.readings, after.raised) == (before.steps, before.readings, before.raised)
    assert ends_due(stewing) == ["stew"]
    assert stewing.wish(Done("stew", "end")) is None


def test_what_cannot_be_read_is_told(stewing: Host) -> None:
    for slot in ("serve", "chop"):
        assert isinstance(stewing.wish(TakeReading(slot, 74.0)), Refusal)  # the plan gives no core temperature
    stewing.wish(LeaveOut("stew"))
    assert isinstance(stewing.wish(TakeReading("stew", 74.0)), Refusal)
    assert stewing.evening.state.readings == ()


def test_nothing_is_read_before_it_is_begun(host: Host) -> None:
    refusal = host.wish(TakeReading("stew", 20.0))

    assert isinstance(refusal, Refusal)
    assert "has not begun" in refusal.words


def test_what_stands_can_be_read_and_stays_finished(stewing: Host) -> None:
    stewing.at("18:30")
    stewing.answer("stew")
    present = stewing.at("18:40")
    assert can_be_read(present.state, present.forecast) == ["stew"]

    assert stewing.wish(TakeReading("stew", 58.0)) is None

    assert stewing.evening.state.steps["stew"].status == "finished"
    assert last_reading(stewing.evening.state, "stew") is not None


def test_a_reading_of_a_go_that_was_taken_back_says_nothing_about_the_next(stewing: Host) -> None:
    stewing.at("18:30")
    stewing.wish(TakeReading("stew", 71.0))
    begun = next(e for e in stewing.evening.state.history if isinstance(e, StepStarted) and e.slot == "stew")
    n = stewing.evening.state.last_n
    stewing.evening._keep(
        [TakenBack(n=n + 1, at=at("18:31"), targets=(begun.n,)), StepStarted(n=n + 2, at=at("18:31"), slot="stew")]
    )

    assert last_reading(stewing.evening.state, "stew") is None


def test_in_the_fridge_too_warm_is_what_is_lacking(little: RunSheet) -> None:
    """41 °F/5 °C: FDA Food Code 3-501.16. A step with a probe asks at its end, though nobody was planned for it."""
    chilled = msgspec.structs.replace(little.slots[0], lane="fridge", core_celsius=5.0, attended=())
    host = Host(msgspec.structs.replace(little, slots=(chilled, *little.slots[1:])), at("16:58"))
    host.at("17:00")
    host.answer("chop")
    assert [c.part for c in host.at("17:20").due if c.slot == "chop"] == ["end"]

    host.wish(TakeReading("chop", 9.0))

    refusal = host.wish(Done("chop", "end"))
    assert isinstance(refusal, Refusal)
    assert "4 °C above" in refusal.words
    host.wish(TakeReading("chop", 4.5))
    assert host.wish(Done("chop", "end")) is None


@pytest.mark.parametrize("event", [
    ReadingTaken(n=3, at=at("18:30"), slot="stew", celsius=to_celsius(165, "F")),
    KeepingWarned(n=4, at=at("18:50"), slot="stew"),
])  # fmt: skip
def test_a_line_of_the_log_comes_back_as_it_was(event: ReadingTaken | KeepingWarned) -> None:
    assert from_line(to_line(event)) == event


def warnings(host: Host) -> list[str]:
    return [e.slot for e in host.evening.told if isinstance(e, KeepingWarned)]


def test_what_stands_is_warned_of_once_ten_minutes_before_its_limit_if_nothing_takes_it_up(stewing: Host) -> None:
    stewing.at("18:30")
    stewing.answer("stew")  # keeps 30 min, till 19:00

    assert stewing.at("18:50").warned == ()  # as planned: it should be taken up now
    assert [each.slot for each in stewing.at("18:51").warned] == ["stew"]
    assert stewing.at("18:52").warned == ()
    assert warnings(stewing) == ["stew"]


def test_what_keeps_only_a_little_while_is_not_warned_of_in_its_first_half(little: RunSheet) -> None:
    """Eight minutes till 18:38; the serving, planned at 18:32, does not come."""
    anew = {"stew": {"keeping": Keeping(8, "hot")}, "serve": {"start": at("18:32")}}
    slots = tuple(msgspec.structs.replace(s, **anew.get(s.id, {})) for s in little.slots)
    host = Host(msgspec.structs.replace(little, slots=slots), at("16:58"))
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("18:30", "stew")):
        host.at(clock)
        host.answer(id_)

    assert host.at("18:33").warned == ()
    assert [each.until - at("18:30") for each in host.at("18:34").warned] == [timedelta(minutes=8)]


def test_what_is_to_be_eaten_at_once_is_warned_of_at_once_and_only_once(stewing: Host) -> None:
    """Of several at one moment each warning has a number of its own."""
    present = stewing.at("18:30")
    waiting = tuple(Standing(id_, at("18:30"), at("18:30"), at("19:00"), "room") for id_ in ("stew", "sauce"))
    forecast = replace(present.forecast, now=at("18:30"), keeping=waiting)
    state = present.state

    found = warn_keeping(state, forecast)
    warned = replace(state, warned={"stew": at("18:30"), "sauce": at("18:30")})

    assert [event.n for event in found] == [state.last_n + 1, state.last_n + 2]
    assert warn_keeping(warned, replace(forecast, now=at("18:31"))) == []


def test_what_is_done_again_after_taking_back_is_warned_of_again(stewing: Host) -> None:
    stewing.at("18:30")
    stewing.answer("stew")
    stewing.at("18:52")
    stewing.wish(TakeBack())
    stewing.at("18:53")
    stewing.answer("stew")

    assert stewing.at("19:13").warned == ()
    assert [each.slot for each in stewing.at("19:14").warned] == ["stew"]
    assert warnings(stewing) == ["stew", "stew"]


def test_what_was_taken_up_is_not_warned_of(stewing: Host) -> None:
    for clock, id_ in (
        ("18:30", "arrive"),
        ("18:30", "stew"),
        ("18:35", "sauce"),
        ("18:45", "sauce"),
        ("18:48", "serve"),
    ):
        stewing.at(clock)
        if id_ == "serve":
            stewing.wish(Done("serve", "start"))
        else:
            stewing.answer(id_)

    assert stewing.at("18:52").warned == ()


def test_only_what_is_under_way_and_has_a_core_temperature_wants_a_reading(host: Host) -> None:
    host.at("17:00")
    host.answer("chop")
    slots = host.evening.state.sheet.by_id()

    assert [id_ for id_, slot in slots.items() if wants_reading(host.evening.state, slot)] == []
    host.at("17:20")
    host.answer("chop")
    host.at("17:30")
    host.answer("stew")
    assert [id_ for id_, slot in slots.items() if wants_reading(host.evening.state, slot)] == ["stew"]
    for core, wanted in ((73.8, ["stew"]), (74.0, [])):  # 165 °F, 73.9 °C, is as good
        host.wish(TakeReading("stew", core))
        assert [id_ for id_, slot in slots.items() if wants_reading(host.evening.state, slot)] == wanted
    host.at("18:30")
    host.answer("stew")
    assert [id_ for id_, slot in slots.items() if wants_reading(host.evening.state, slot)] == []
