"""The one rule of the evening by itself: when a thing starts, and when a wait for hands is void. Minutes of the day."""

from datetime import datetime, timedelta

import pytest

from board.evening.rule import NEVER, Going, Rule
from board.sheet.run_sheet import Attended, Dependency, Slot
from board.sheet.slack import READY
from tests.conftest import UTC_DAY, at, slot


def minute(moment: datetime) -> float:
    return (moment - UTC_DAY) / timedelta(minutes=1)


def rule_of(*slots: Slot) -> Rule[float]:
    return Rule(slots, minute, 1.0, max, lambda holds: NEVER if holds else None)


def going(rule: Rule[float], **earliest: float) -> Going[float]:
    return Going({**rule.planned, **earliest}, rule.length)


DOUGH, BRUSH = "dough", "brush"


def one_after_the_other(*attended: Attended) -> Rule[float]:
    """Dough 00:10-00:20, then with the same hands the brushing 00:20-00:30."""
    parts = {"attended": attended} if attended else {}
    return rule_of(
        slot(DOUGH, "0:10", "0:20"), slot(BRUSH, "0:20", "0:30", waits=(Dependency(DOUGH, "end", 0, "hands"),), **parts)
    )


@pytest.mark.parametrize(("dough_from", "brushed_at"), [(29, 39), (30, 20), (31, 20)])
def test_hands_that_come_too_late_do_other_work_first_if_it_is_done_just_in_time(
    dough_from: float, brushed_at: float
) -> None:
    rule = one_after_the_other()

    played = rule.play(going(rule, dough=dough_from))

    assert played.times.start[BRUSH] == brushed_at
    assert (BRUSH, DOUGH) in played.void or brushed_at > 20


@pytest.mark.parametrize(("dough_from", "brushed_at"), [(22, 32), (23, 20)])
def test_only_the_hands_from_its_start_on_must_be_free_again(dough_from: float, brushed_at: float) -> None:
    """Of the brushing's ten minutes it needs hands for the first three, and for the last one."""
    rule = one_after_the_other(
        Attended(at("0:20"), at("0:23"), "host", "start"), Attended(at("0:29"), at("0:30"), "host", "end")
    )

    assert rule.play(going(rule, dough=dough_from)).times.start[BRUSH] == brushed_at


@pytest.mark.parametrize(("dough_from", "brushed_at"), [(34, 44), (35, 20)])
def test_work_that_takes_longer_needs_its_hands_for_longer(dough_from: float, brushed_at: float) -> None:
    rule = one_after_the_other()
    longer = Going({**rule.planned, DOUGH: dough_from}, {**rule.length, BRUSH: 15.0})

    assert rule.play(longer).times.start[BRUSH] == brushed_at


@pytest.mark.parametrize(("dough_from", "held_up"), [(10, False), (11, True)])
def test_nobody_is_held_up_while_hands_come_when_planned(dough_from: float, held_up: bool) -> None:
    rule = one_after_the_other()

    played = rule.play(going(rule, dough=dough_from))

    assert (played.alone is not None) == held_up
    assert played.void == {}


@pytest.mark.parametrize("gone", [{"known": {DOUGH: (40.0, 50.0)}}, {"left_out": {DOUGH}}])
def test_hands_are_waited_for_no_other_way_once_what_they_do_has_begun_or_is_left_out(gone: dict[str, object]) -> None:
    rule = one_after_the_other()
    started = Going({**rule.planned, DOUGH: 40.0}, rule.length, **gone)  # type: ignore[arg-type]

    assert rule.play(started).void == {}


WAITS = {
    "the end": (Dependency("first", "end", 0, "order"), 20),
    "some minutes after the end": (Dependency("first", "end", 7, "order"), 27),
    "the start": (Dependency("first", "start", 0, "order"), 10),
    "some minutes after the start": (Dependency("first", "start", 3, "order"), 13),
    "what is only wished": (Dependency("first", "end", 0, READY), 5),
}


@pytest.mark.parametrize(("wait", "starts"), WAITS.values(), ids=WAITS)
def test_a_thing_starts_when_its_wait_is_over(wait: Dependency, starts: float) -> None:
    rule = rule_of(slot("first", "0:10", "0:20"), slot("second", "0:05", "0:09", waits=(wait,)))

    times = rule.forward(going(rule), {})

    assert (times.start["second"], times.end["second"]) == (starts, starts + 4)


@pytest.mark.parametrize(("anchor", "starts"), [("end", 32.0), ("start", 17.0)])
def test_how_long_guests_sit_stands_in_place_of_the_planned_wait_on_an_end(anchor: str, starts: float) -> None:
    wait = Dependency("first", anchor, 7, "order")  # type: ignore[arg-type]
    rule = rule_of(slot("first", "0:10", "0:20"), slot("second", "0:05", "0:09", waits=(wait,)))
    sits = Going(rule.planned, rule.length, sits={("second", "first"): 12.0})

    assert rule.forward(sits, {}).start["second"] == starts


def test_what_is_left_out_hands_on_what_it_follows_and_no_wait_for_hands() -> None:
    waits = (Dependency("first", "end", 0, "order"), Dependency("busy", "end", 0, "hands"))
    rule = rule_of(
        slot("first", "0:10", "0:20"), slot("busy", "0:10", "0:50"), slot("gone", "1:00", "1:10", waits=waits)
    )

    times = rule.forward(Going(rule.planned, rule.length, left_out={"gone"}), {})

    assert (times.start["gone"], times.end["gone"]) == (20, 20)


def test_only_a_wait_for_hands_is_ever_void() -> None:
    """Told that all between the two is void, the one that it follows holds."""
    waits = (Dependency("first", "end", 2, "order"), Dependency("first", "end", 9, "hands"))
    rule = rule_of(slot("first", "0:10", "0:20"), slot("second", "0:05", "0:09", waits=waits))

    assert rule.forward(going(rule), {("second", "first"): NEVER}).start["second"] == 22
