"""What went by unheard, was read too low or was left out, each with what in the plan would help."""

import msgspec

from board.evening.wishes import LeaveOut, TakeReading
from board.review.next_time import next_time
from board.sheet.run_sheet import Attended, RunSheet
from tests.conftest import Host, at
from tests.evening.kitchens import play

TO_THE_END = (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("17:50", "stew"), ("18:10", "stew"))


def told(host: Host) -> list[tuple[str, str, int]]:
    return [(each.slot.id, each.change, each.minutes) for each in next_time(host.evening.state)]


def test_an_evening_answered_in_time_changes_nothing(host: Host) -> None:
    play(host, *TO_THE_END, ("18:30", "stew"), ("18:30", "arrive"), ("18:35", "sauce"), ("18:45", "sauce"))

    assert told(host) == []


def test_a_bell_nobody_heard_asks_for_a_louder_call(host: Host) -> None:
    """The host's hands are free from 18:11 on; the stew's end is called at 18:30 and answered at 18:42."""
    play(host, *TO_THE_END)
    host.at("18:30")
    play(host, ("18:42", "stew"))

    assert told(host) == [("stew", "louder", 12)]


def test_a_bell_that_found_the_hands_at_other_work_asks_for_another_hand_or_for_room(little: RunSheet) -> None:
    """The sauce is on hand from 18:28 to 18:44; the stew's call at 18:30 waits 12 minutes of it."""
    for hands, change, who in ((("host",), "apart", ""), (("host", "Ada"), "hand", "Ada")):
        early = msgspec.structs.replace(
            little,
            hands=hands,
            slots=tuple(
                msgspec.structs.replace(
                    slot, start=at("18:28"), end=at("18:44"),
                    attended=(Attended(at("18:28"), at("18:44"), "host", "all"),),
                )
                if slot.id == "sauce"
                else msgspec.structs.replace(slot, attended=slot.attended[:2]) if slot.id == "stew" else slot
                for slot in little.slots
            ),
        )  # fmt: skip
        host = Host(early, at("16:58"))
        play(host, *TO_THE_END, ("18:28", "sauce"))
        host.at("18:30")
        play(host, ("18:42", "stew"), ("18:44", "sauce"))
        (found,) = next_time(host.evening.state)

        assert (found.slot.id, found.change, found.who) == ("stew", change, who)
        assert [other.id for other in found.beside] == ["sauce"]


def test_work_in_hand_needs_no_bell_at_its_end(host: Host) -> None:
    play(host, ("17:00", "chop"))
    host.at("17:20")
    play(host, ("17:40", "chop"))

    assert told(host) == []


def test_read_too_low_takes_so_much_longer(host: Host) -> None:
    play(host, *TO_THE_END)
    host.at("18:30")
    host.wish(TakeReading("stew", 66.0, "end"))
    host.at("18:39")
    host.wish(TakeReading("stew", 75.0, "end"))

    assert told(host) == [("stew", "longer", 9)]


def test_what_was_left_out_is_told_with_what_stood_beside_it(host: Host) -> None:
    play(host, *TO_THE_END, ("18:30", "stew"))
    host.at("18:35")
    host.wish(LeaveOut("sauce"))
    (found,) = next_time(host.evening.state)

    assert (found.slot.id, found.change, found.at) == ("sauce", "less", at("18:35"))
