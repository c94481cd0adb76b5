"""Who was served what: by hand, on the little supper, whose sheet names its guests."""

import msgspec
import pytest

from board.evening.wishes import DropDish, WriteNote
from board.review.eaten import Eaten, by_guest, eaten
from board.sheet.run_sheet import Eaters, RunSheet
from tests.conftest import Host, at

COOKED = (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("17:50", "stew"), ("18:10", "stew"),
          ("18:30", "stew"), ("18:30", "arrive"), ("18:35", "sauce"), ("18:45", "sauce"))  # fmt: skip
SERVED = (("18:50", "serve"), ("19:00", "serve"))


@pytest.fixture
def with_guests(little: RunSheet) -> RunSheet:
    """Ada and Rory have the stew, and Rory alone the sauce."""
    of = {"chop": "Stew", "stew": "Stew", "sauce": "Sauce"}
    slots = tuple(msgspec.structs.replace(s, dish=of[s.id]) if s.id in of else s for s in little.slots)
    eaters = (Eaters("Stew", "Stew", ("Ada", "Rory")), Eaters("Stew", "Sauce", ("Rory",)))
    return msgspec.structs.replace(little, slots=slots, served_to=eaters)


def cook(host: Host, *answers: tuple[str, str]) -> Host:
    for clock, id_ in answers:
        host.at(clock)
        host.answer(id_)
    return host


def test_each_guest_has_what_went_out_and_what_was_noted_at_its_clearing(with_guests: RunSheet) -> None:
    host = cook(Host(with_guests, at("16:58")), *COOKED, *SERVED)
    host.wish(WriteNote("half of it left", "clear"))
    host.wish(WriteNote("too thick", "sauce"))

    stew = Eaten("2026-11-28", "Little supper", "Stew", "Stew", ("Ada", "Rory"), ("half of it left",))
    sauce = Eaten("2026-11-28", "Little supper", "Stew", "Sauce", ("Rory",), ("half of it left",))
    assert by_guest([host.evening.state]) == {"Ada": [stew], "Rory": [stew, sauce]}


def test_what_was_dropped_or_did_not_go_out_was_not_eaten(with_guests: RunSheet) -> None:
    host = Host(with_guests, at("16:58"))
    cook(host, *COOKED[:7])
    assert list(eaten(host.evening.state)) == []

    host.wish(DropDish("Sauce", "Stew"))
    cook(host, *SERVED)
    assert [each.dish for each in eaten(host.evening.state)] == ["Stew"]


def test_evenings_stand_in_their_order_and_a_name_is_one_guest_however_it_is_written(with_guests: RunSheet) -> None:
    here = cook(Host(with_guests, at("16:58")), *COOKED, *SERVED).evening.state
    before = msgspec.structs.replace(with_guests, date="2026-10-10", served_to=(Eaters("Stew", "Stew", ("ADA",)),))
    there = cook(Host(before, at("16:58")), *COOKED, *SERVED).evening.state

    found = by_guest([here, there])
    assert [each.date for each in found["ADA"]] == ["2026-10-10", "2026-11-28"]
    assert set(found) == {"ADA", "Rory"}


def test_a_log_of_before_the_guests_were_named_tells_nothing(little: RunSheet) -> None:
    assert by_guest([cook(Host(little, at("16:58")), *COOKED, *SERVED).evening.state]) == {}
