"""Food whose heating was left out: said at every later call of its dish, and afterwards.

165 °F (74 °C) for food heated again: FoodSafety.gov, safe minimum internal temperatures; from memory here, the rule
sets name their sources.
"""

import msgspec
import pytest

from board.evening.unheated import unheated
from board.evening.wishes import Done, DropDish, LeaveOut, Settle, TakeBack, TakeReading
from board.review.next_time import next_time
from board.sheet.run_sheet import RunSheet
from board.view.board import Viewer
from tests.conftest import Host, at
from tests.evening.kitchens import with_dishes


def supper(little: RunSheet, **stew: object) -> Host:
    """The stew is on since 17:30."""
    sheet = with_dishes(little)
    slots = tuple(msgspec.structs.replace(each, **stew) if each.id == "stew" else each for each in sheet.slots)
    host = Host(msgspec.structs.replace(sheet, slots=slots), at("16:58"))
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew")):
        host.at(clock)
        host.answer(id_)
    return host


def told(host: Host, clock: str, slot: str) -> str:
    view = Viewer(host.evening.sheet).view(host.at(clock))
    return next(call.caution for call in (*view.due, *view.coming) if call.key[:2] == (slot, "start"))


def test_what_was_read_too_cold_and_left_out_is_said_at_the_plating(little: RunSheet) -> None:
    host = supper(little)
    host.at("18:30")
    host.wish(TakeReading("stew", 62.0))
    assert "not heated through" not in told(host, "18:30", "serve")
    host.wish(LeaveOut("stew"))

    said = told(host, "18:40", "serve")

    assert "not heated through" in said
    assert "62" in said
    assert "74" in said
    host.wish(TakeBack())
    assert "not heated through" not in told(host, "18:41", "serve")


@pytest.mark.parametrize(
    ("stew", "is_said"),
    [
        ({"core_celsius": None, "cooks": None, "fresh": True}, True),  # no probe is asked for, but it heats through
        ({"core_celsius": None, "cooks": "poultry"}, True),
        ({"core_celsius": None, "cooks": None, "fresh": False}, False),  # a cold step makes nothing safe
        ({"core_celsius": 5.0, "cooks": None, "fresh": False, "lane": "fridge"}, False),  # chilled, not heated
        ({"question": "does Ana come?"}, False),  # a question answered with no
    ],
)
def test_it_goes_by_whether_the_step_heats(little: RunSheet, stew: dict[str, object], is_said: bool) -> None:
    host = supper(little, **stew)
    host.at("18:00")
    host.wish(LeaveOut("stew"))

    assert ("not heated through" in told(host, "18:01", "serve")) == is_said


def test_heated_by_a_later_step_it_is_no_longer_said(little: RunSheet) -> None:
    """The stew goes into the sauce, which is boiled."""
    slots = tuple(
        msgspec.structs.replace(each, then=("sauce",) if each.id == "stew" else each.then, fresh=each.id == "sauce")
        for each in little.slots
    )
    host = Host(msgspec.structs.replace(little, slots=slots), at("16:58"))
    host.at("18:20")
    host.wish(LeaveOut("chop"))
    host.wish(LeaveOut("stew"))
    assert [each.slot.id for each in unheated(host.evening.state, "serve")] == ["stew"]

    host.wish(Done("sauce", "start"))
    host.at("18:40")
    host.wish(Done("sauce", "end"))

    assert host.evening.state.steps["sauce"].status == "finished"
    assert unheated(host.evening.state, "serve") == ()


def test_of_a_dish_that_is_given_up_nothing_is_said(little: RunSheet) -> None:
    host = supper(little)
    host.at("18:00")
    host.wish(DropDish("Pot", "Stew"))
    assert host.evening.state.steps["stew"].status == "left-out"

    assert unheated(host.evening.state, "serve") == ()
    assert not any(each.change == "unheated" for each in next_time(host.evening.state))


def test_afterwards_it_stands_with_what_would_help_and_not_with_the_rings(little: RunSheet) -> None:
    host = supper(little)
    host.at("18:30")
    host.wish(TakeReading("stew", 62.0))
    host.wish(LeaveOut("stew"))
    host.wish(Settle("arrive"))

    found = [each for each in next_time(host.evening.state) if each.slot.id == "stew"]

    assert [each.change for each in found] == ["unheated"]
