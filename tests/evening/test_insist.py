"""How hard a call asks: tables made by hand from the rule (0, 1, 3, 6, 10 minutes, every 5 then; twice as fast where
it burns). How often is ours; no source is known."""

from datetime import timedelta

import pytest

from board.evening.insist import insistence, rings_by, to_ring
from board.evening.wishes import Done, Later, LeaveOut, Settle
from tests.conftest import Host, at


@pytest.mark.parametrize(
    ("minutes", "rings"),
    [(0, 1), (0.99, 1), (1, 2), (2.99, 2), (3, 3), (5.9, 3), (6, 4), (9.9, 4), (10, 5), (14.9, 5), (15, 6), (19.9, 6),
     (20, 7), (60, 15)],
)  # fmt: skip
def test_how_often_it_has_rung_by_then(minutes: float, rings: int) -> None:
    assert rings_by(minutes, burns=False) == rings
    assert rings_by(minutes / 2, burns=True) == rings


def ringing(host: Host, minutes: list[float], start: str = "17:00") -> list[float]:
    """The minutes, of those looked at, at which something rings."""
    found, heard = [], {}
    for minute in minutes:
        host.clock.set(at(start) + timedelta(minutes=minute))
        present = host.evening.tick()
        calls, heard = to_ring(present.due, present.now, heard)
        if calls:
            found.append(minute)
    return found


def test_a_call_to_begin_rings_at_its_minutes(host: Host) -> None:
    every_half_minute = [n / 2 for n in range(0, 44)]

    assert ringing(host, every_half_minute) == [0, 1, 3, 6, 10, 15, 20]


def test_the_end_on_the_stove_rings_twice_as_fast(host: Host) -> None:
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("18:30", "arrive")):
        host.at(clock)
        host.answer(id_)
    present = host.at("18:30")
    assert [call.burns for call in present.due if call.slot == "stew"] == [True]
    host.evening.wish(LeaveOut("sauce"))

    quarters = [n / 4 for n in range(0, 32)]

    assert ringing(host, quarters, "18:30") == [0, 0.5, 1.5, 3, 5, 7.5]
    assert insistence(next(c for c in host.at("18:31").due if c.slot == "stew"), at("18:31")) == 2
    assert insistence(next(c for c in host.at("18:33").due if c.slot == "stew"), at("18:33")) == 3


def test_put_off_and_called_again_it_begins_anew(host: Host) -> None:
    ringing(host, [0, 6])
    assert insistence(host.evening.tick().due[0], at("17:06")) == 3
    host.wish(Later("chop", "start", 0, 5))

    present = host.at("17:11")

    assert insistence(present.due[0], present.now) == 1


def test_of_rings_that_were_missed_only_the_last_is_made_up_for(host: Host) -> None:
    assert ringing(host, [0, 18, 18.5, 19, 20]) == [0, 18, 20]


def test_a_call_that_waited_as_long_as_its_step_takes_is_overtaken_and_settled_with_one_wish(host: Host) -> None:
    host.at("17:00")
    assert [call.overtaken for call in host.at("17:19").due] == [False]
    assert [call.overtaken for call in host.at("17:20").due] == [True]

    host.wish(Settle("chop"))

    assert host.evening.state.steps["chop"].status == "finished"


def test_an_end_that_is_due_stands_for_the_look_ins_it_overtook(host: Host) -> None:
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew")):
        host.at(clock)
        host.answer(id_)
    assert [c.part for c in host.at("17:50").due if c.slot == "stew"] == ["look-in"]

    present = host.at("18:30")

    assert [c.part for c in present.due if c.slot == "stew"] == ["end"]
    host.wish(Done("stew", "end"))
    assert [c for c in host.evening.tick().due if c.slot == "stew"] == []
