"""The one rule of the evening by itself: when a thing starts, and what hands are at. Minutes of the day."""

from datetime import datetime, timedelta
from typing import Any

import pytest

from board.evening.busy import FLOATS
from board.evening.rule import Going, Rule
from board.sheet.run_sheet import Attended, Dependency, Slot
from board.sheet.slack import READY
from tests.conftest import UTC_DAY, at, slot


def minute(moment: datetime) -> float:
    return (moment - UTC_DAY) / timedelta(minutes=1)


def rule_of(*slots: Slot) -> Rule[float]:
    return Rule(slots, minute, 1.0, FLOATS)


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

    assert rule.play(going(rule, dough=dough_from)).start[BRUSH] == brushed_at


@pytest.mark.parametrize(("dough_from", "brushed_at"), [(22, 32), (23, 20)])
def test_only_the_hands_from_its_start_on_must_be_free_again(dough_from: float, brushed_at: float) -> None:
    """Of the brushing's ten minutes it needs hands for the first three, and for the last one."""
    rule = one_after_the_other(
        Attended(at("0:20"), at("0:23"), "host", "start"), Attended(at("0:29"), at("0:30"), "host", "end")
    )

    assert rule.play(going(rule, dough=dough_from)).start[BRUSH] == brushed_at


@pytest.mark.parametrize(("dough_from", "brushed_at"), [(34, 44), (35, 20)])
def test_work_that_takes_longer_needs_its_hands_for_longer(dough_from: float, brushed_at: float) -> None:
    rule = one_after_the_other()
    longer = Going({**rule.planned, DOUGH: dough_from}, {**rule.length, BRUSH: 15.0})

    assert rule.play(longer).start[BRUSH] == brushed_at


@pytest.mark.parametrize(
    ("gone", "brushed_at"),
    [
        ({"begun": {DOUGH: (15.0, 0.0)}}, 25),  # at it till 25
        ({"begun": {DOUGH: (15.0, 40.0)}}, 40),  # and it is not over yet at 40
        ({"known": {DOUGH: (15.0, 22.0)}}, 20),  # over: what has been holds nothing up
        ({"left_out": {DOUGH}}, 20),
    ],
)
def test_hands_are_waited_for_while_they_are_at_what_has_begun(gone: dict[str, Any], brushed_at: float) -> None:
    rule = one_after_the_other()

    assert rule.play(Going(rule.planned, rule.length, **gone)).start[BRUSH] == brushed_at


def test_what_is_under_way_takes_longer_by_the_looks_in_the_midst_of_it() -> None:
    """Kneading 0:10-0:30 all the time; the pot on since 0:00 is looked at 0:15-0:17 and taken off 0:27-0:30."""
    looks = (Attended(at("0:15"), at("0:17"), "host", "look-in"), Attended(at("0:27"), at("0:30"), "host", "end"))
    rule = rule_of(slot("pot", "0:00", "0:30", attended=looks), slot("knead", "0:10", "0:30"))
    begun = Going(rule.planned, rule.length, begun={"pot": (0.0, 20.0), "knead": (10.0, 20.0)})

    played = rule.play(begun)

    assert played.end == {"pot": 30, "knead": 30 + 2 + 3}


def test_two_ends_at_once_come_one_after_the_other() -> None:
    def tray(id_: str) -> Slot:
        return slot(id_, "0:00", "0:30", attended=(Attended(at("0:26"), at("0:30"), "host", "end"),))

    rule = rule_of(tray("upper"), tray("lower"))

    assert rule.play(going(rule)).end == {"upper": 30, "lower": 34}


def test_a_helpers_hands_are_not_the_hosts() -> None:
    helper = (Attended(at("0:20"), at("0:30"), "Nora", "all"),)
    rule = one_after_the_other(*helper)

    assert rule.play(going(rule, dough=15)).start[BRUSH] == 20


def test_between_kitchen_and_table_hands_walk_also_out_of_turn() -> None:
    """A minute there and one back. Poured first, for the dough is late: 0:21-0:26, and back by 0:27."""
    pour = slot("pour", "0:21", "0:26", lane="front-of-house", waits=(Dependency(DOUGH, "end", 1, "hands"),))
    rule = rule_of(slot(DOUGH, "0:10", "0:20"), pour)

    assert rule.play(going(rule, dough=27.0)).start["pour"] == 21
    assert rule.play(going(rule, dough=26.5)).start["pour"] == 26.5 + 10 + 1


WAITS = {
    "the end": (Dependency("first", "end", 0, "order"), 20),
    "some minutes after the end": (Dependency("first", "end", 7, "order"), 27),
    "the start": (Dependency("first", "start", 0, "order"), 10),
    "some minutes after the start": (Dependency("first", "start", 3, "order"), 13),
    "what is only wished": (Dependency("first", "end", 0, READY), 5),
}


@pytest.mark.parametrize(("wait", "starts"), WAITS.values(), ids=WAITS)
def test_a_thing_starts_when_its_wait_is_over(wait: Dependency, starts: float) -> None:
    rule = rule_of(slot("first", "0:10", "0:20", attended=()), slot("second", "0:05", "0:09", waits=(wait,)))

    times = rule.play(going(rule))

    assert (times.start["second"], times.end["second"]) == (starts, starts + 4)


@pytest.mark.parametrize(("anchor", "starts"), [("end", 32.0), ("start", 17.0)])
def test_how_long_guests_sit_stands_in_place_of_the_planned_wait_on_an_end(anchor: str, starts: float) -> None:
    wait = Dependency("first", anchor, 7, "order")  # type: ignore[arg-type]
    rule = rule_of(slot("first", "0:10", "0:20", attended=()), slot("second", "0:05", "0:09", waits=(wait,)))
    sits = Going(rule.planned, rule.length, sits={("second", "first"): 12.0})

    assert rule.play(sits).start["second"] == starts


def test_what_is_left_out_hands_on_what_it_follows_and_no_wait_for_hands() -> None:
    waits = (Dependency("first", "end", 0, "order"), Dependency("busy", "end", 0, "hands"))
    rule = rule_of(
        slot("first", "0:10", "0:20"), slot("busy", "0:10", "0:50"), slot("gone", "1:00", "1:10", waits=waits)
    )

    times = rule.play(Going(rule.planned, rule.length, left_out={"gone"}))

    assert (times.start["gone"], times.end["gone"]) == (20, 20)


def test_work_may_go_out_of_turn_but_not_before_what_it_follows() -> None:
    """By its hands alone it could begin at 0:05; it follows the first by two minutes."""
    waits = (Dependency("first", "end", 2, "order"), Dependency("first", "end", 9, "hands"))
    rule = rule_of(slot("first", "0:10", "0:20"), slot("second", "0:05", "0:09", waits=waits))

    assert rule.play(going(rule)).start["second"] == 22
