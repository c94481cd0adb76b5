"""What was done while nobody told the board: asked for in one go, kept as said, not seen.

Times by hand, from the little supper of conftest.
"""

from datetime import timedelta
from zoneinfo import ZoneInfo

import msgspec
import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.evening.behind import at_other_times, needed, untold
from board.evening.events import EveningOpened, Said, StepsSaid
from board.evening.fold import fold_all
from board.evening.state import begin
from board.evening.wishes import Done, LeaveOut, Refusal, Say, Settle, TakeBack
from board.log.read import read_log
from board.log.record import to_line
from board.review.observe import observe
from board.sheet.run_sheet import Lasts, RunSheet
from tests.conftest import Host, at

CHOP = Said("chop", at("17:00"), at("17:20"))
STEW = Said("stew", at("17:30"), at("18:30"))
ARRIVED = Said("arrive", at("18:30"), at("18:30"))


def opened(little: RunSheet, when: str) -> Host:
    return Host(little, at(when))


def timed(sheet: RunSheet) -> RunSheet:
    """The same, with how long each step may last: only such steps teach anything."""
    slots = tuple(msgspec.structs.replace(slot, lasts=Lasts(10, 20, 90)) for slot in sheet.slots)
    return msgspec.structs.replace(sheet, slots=slots)


def test_opened_before_its_first_call_nothing_lies_behind(little: RunSheet) -> None:
    assert opened(little, "16:58").evening.behind() == ()
    assert opened(little, "17:05").evening.behind() == ()  # that is called, and is hardly late


def test_opened_in_the_middle_what_should_be_done_is_asked_and_what_runs_by_itself_is_under_way(
    little: RunSheet,
) -> None:
    assert opened(little, "17:45").evening.behind() == (CHOP, Said("stew", at("17:30")))
    assert opened(little, "18:31").evening.behind() == (CHOP, STEW, ARRIVED)


def test_work_that_hands_would_be_on_now_is_called_and_not_asked_about(little: RunSheet) -> None:
    assert opened(little, "18:40").evening.behind() == (CHOP, STEW, ARRIVED)  # the sauce, 18:35-18:45


def test_said_so_the_evening_stands_as_planned_and_its_clocks_run_from_when_it_was(little: RunSheet) -> None:
    host = opened(little, "18:40")
    unsaid = host.evening.look().courses[0]
    assert unsaid.late_minutes > 60  # chop and stew are still to come, as far as anybody told

    assert host.wish(Say(host.evening.behind())) is None
    forecast = host.evening.look()
    assert forecast.courses[0].late_minutes == 0  # the sauce, 18:40-18:50, still makes the serving
    stood = next(each for each in forecast.keeping if each.slot == "stew")
    assert (stood.since, stood.until) == (at("18:30"), at("19:00"))


def test_one_undo_takes_it_all_back(little: RunSheet) -> None:
    host = opened(little, "18:40")
    before = host.evening.state.steps
    host.wish(Say((CHOP, STEW, ARRIVED)))
    assert host.evening.state.steps != before

    host.wish(TakeBack())
    assert host.evening.state.steps == before


def test_a_core_that_nobody_read_stays_unread(little: RunSheet) -> None:
    host = opened(little, "18:40")
    host.wish(Say((CHOP, STEW)))
    assert host.evening.state.unread == ("stew",)


def test_what_was_seen_stays_and_only_what_followed_is_asked(little: RunSheet) -> None:
    host = opened(little, "17:00")
    host.answer("chop")
    host.at("17:22")
    host.answer("chop")
    assert host.evening.behind() == ()

    host.clock.set(at("18:45"))  # long away
    assert host.evening.behind() == (STEW, ARRIVED, Said("sauce", at("18:35"), at("18:45")))


def test_what_ran_on_is_asked_about_from_when_it_really_began(little: RunSheet) -> None:
    host = opened(little, "17:00")
    host.answer("chop")
    host.at("17:25")
    host.answer("chop")
    host.at("17:40")
    host.answer("stew")  # ten minutes late
    host.clock.set(at("19:00"))
    assert host.evening.behind()[:2] == (Said("stew", at("17:40"), at("18:40")), ARRIVED)


def test_left_out_is_not_asked_about(little: RunSheet) -> None:
    host = opened(little, "16:58")
    host.wish(LeaveOut("chop"))
    host.clock.set(at("17:45"))
    assert "chop" not in {said.slot for said in host.evening.behind()}


@pytest.mark.parametrize(
    ("steps", "why"),
    [
        ((STEW,), "waits for: chop"),
        ((CHOP, Said("stew", at("17:30"), at("18:50"))), "not come"),
        ((CHOP, Said("sauce", at("18:45"))), "not come"),
        ((Said("chop", at("17:20"), at("17:00")),), "before it begins"),
        ((Said("nothing", at("17:20")),), "settled"),
        ((), "nothing"),
    ],
)
def test_what_cannot_be_so_is_refused(little: RunSheet, steps: tuple[Said, ...], why: str) -> None:
    host = opened(little, "18:40")
    refused = host.wish(Say(steps))
    assert isinstance(refused, Refusal)
    assert why in refused.words
    assert not any(isinstance(event, StepsSaid) for event in host.evening.told)


def test_settled_already_is_refused(little: RunSheet) -> None:
    host = opened(little, "17:21")
    host.wish(Settle("chop"))
    assert isinstance(host.wish(Say((CHOP,))), Refusal)


def test_unticked_takes_along_what_follows_and_ticked_what_it_needs(little: RunSheet) -> None:
    host = opened(little, "18:40")
    steps, state = host.evening.behind(), host.evening.state
    assert untold(state, steps, "chop") == {"chop", "stew"}
    assert untold(state, steps, "stew") == {"stew"}
    assert needed(state, steps, "stew") == {"chop", "stew"}
    assert needed(state, steps, "arrive") == {"arrive"}


@pytest.mark.parametrize(
    ("typed", "begun", "over"),
    [
        ("17:10", "17:10", "17:30"),
        ("1710", "17:10", "17:30"),
        ("17.10-17:25", "17:10", "17:25"),
        ("17:10 to 17:25", "17:10", "17:25"),
        ("18:35", "18:35", "18:40"),  # as long as before, and never after now
    ],
)
def test_another_time_is_read_as_typed(typed: str, begun: str, over: str) -> None:
    assert at_other_times(CHOP, typed, at("18:40"), ZoneInfo("UTC")) == Said("chop", at(begun), at(over))


def test_a_clock_time_after_midnight_is_of_the_next_day() -> None:
    late = Said("chill", at("23:50"), at("23:59"))
    now = at("23:59") + timedelta(minutes=30)
    changed = at_other_times(late, "0:10-0:20", now, ZoneInfo("UTC"))
    assert changed is not None
    assert changed.started - at("23:50") == timedelta(minutes=20)


@given(st.text(max_size=12))
def test_whatever_is_typed_gives_a_past_time_or_none(typed: str) -> None:
    changed = at_other_times(CHOP, typed, at("18:40"), ZoneInfo("Europe/Vienna"))
    assert changed is None or changed.started <= (changed.finished or changed.started) <= at("18:40")


def test_a_clock_that_is_no_clock_is_none() -> None:
    for typed in ("", "25:00", "17:61", "later", "17:20-", "18:50", "17:30-17:10"):
        changed = at_other_times(CHOP, typed, at("18:40"), ZoneInfo("UTC"))
        assert changed is None or changed.started < at("17:00"), typed  # 18:50: yesterday's


def test_it_is_in_the_log_as_one_line_and_reads_back_the_same(little: RunSheet) -> None:
    host = opened(little, "18:40")
    host.wish(Say((CHOP, STEW)))
    lines = b"".join(to_line(event) for event in host.evening.told)
    assert read_log(lines, "x").events[-1] == host.evening.told[-1]
    again = fold_all(begin(little), host.evening.told)
    assert again.steps == host.evening.state.steps


def test_lessons_learn_nothing_from_what_was_only_said(little: RunSheet) -> None:
    """Twin evenings: told in one go, and answered step by step at the same moments."""
    little = timed(little)
    told = opened(little, "18:52")
    told.wish(Say((CHOP, STEW, ARRIVED, Said("sauce", at("18:35"), at("18:45")))))
    seen = opened(little, "16:58")
    for when, slot in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew")):
        seen.at(when)
        seen.answer(slot)
    seen.at("18:30")
    seen.wish(Settle("stew"))
    opening = next(event for event in seen.evening.told if isinstance(event, EveningOpened))

    def learnt(host: Host) -> list[str]:
        return [each.name for each in observe(opening, host.evening.told[1:]).steps]

    assert learnt(seen) == ["chop", "stew"]
    assert learnt(told) == []


def test_what_is_said_to_have_begun_and_seen_to_end_says_nothing_of_its_length(little: RunSheet) -> None:
    host = opened(timed(little), "17:41")
    host.wish(Say(host.evening.behind()))
    host.at("18:30")
    host.wish(Done("stew", "end"))
    assert host.evening.state.steps["stew"].status == "finished"
    opening = msgspec.structs.replace(
        next(event for event in host.evening.told if isinstance(event, EveningOpened)), n=1
    )
    assert observe(opening, host.evening.told[1:]).steps == ()
