"""What a thing costs, in lines: by hand, from the little supper and the sheets of tests/run/kitchens.py."""

import dataclasses
from datetime import timedelta

import msgspec
import pytest

from board.evening.company import away_by_forecast
from board.evening.forecast import Forecast
from board.evening.slips import targets
from board.evening.wishes import DelayGuests, Done, DropDish, Lengthen, Push, Refusal, Wish
from board.sheet.company import away_minutes
from board.sheet.run_sheet import Attended, Dependency, RunSheet
from board.view import words
from board.view.board import Viewer
from board.view.costs import COMPANY, COURSE, PAST, Costs, costs
from board.view.slips import SlipLines
from tests.conftest import Host, at, slot
from tests.evening.kitchens import ovens, play, with_dishes


def told(host: Host, wish: Wish, room: int = 9) -> tuple[str, ...]:
    before, after = host.evening.tick().forecast, host.evening.what_if(wish)
    assert not isinstance(after, Refusal)
    return costs(Viewer(host.evening.sheet), before, after).lines(room)


@pytest.mark.parametrize(
    ("wish", "lines"),
    [
        # Stew to 18:45: it stands 5 instead of 20, nothing else moves.
        (Lengthen(("stew",), 15), (words.COSTS_NOTHING,)),
        # Stew to 18:55: out at 19:05; the sauce stands 10 instead of 5 of the 15 it keeps, which breaks nothing.
        (Lengthen(("stew",), 25), ("Stew 19:05, 5 min late",)),
        # Stew ends 18:20 and stands 30 of 30; a minute more is past it.
        (Lengthen(("stew",), -10), (words.COSTS_NOTHING,)),
        (Lengthen(("stew",), -11), ("! stew kept 31 of 30 min, 1 min too long",)),
        # The sauce is made 18:35 to 18:45, half of it before they come at 18:40.
        (DelayGuests(10), ("5 min less in the kitchen while the guests are there",)),
        # Out 5 later. The stew, best within 20, is moved with it; the sauce stands 10 of 15.
        (Push("Stew", 5), ("Stew 19:05, 5 min late",)),
        # Out 10 later. The sauce may stand its whole 15; made from 18:35 on, before the guests come at 19:00, it is
        # done at 18:47, for two minutes of that the hands are on the stew's end at 18:40.
        (
            DelayGuests(30),
            (
                "Stew 19:10, 10 min late",
                "10 min less in the kitchen while the guests are there",
            ),
        ),
    ],
)
def test_only_what_moves_or_breaks_is_told(host: Host, wish: Wish, lines: tuple[str, ...]) -> None:
    host.at("16:58")

    assert told(host, wish) == lines


def test_a_course_that_comes_sooner_is_told_with_when_it_would_have_been_out(host: Host) -> None:
    """The stew, 25 min longer, goes out at 19:05; 25 min less again, at 19:00."""
    host.at("16:58")
    host.wish(Lengthen(("stew",), 25))

    assert told(host, Lengthen(("stew",), -25)) == ("Stew 19:00 instead of 19:05, on time",)


def test_a_course_whose_clock_stays_the_same_is_not_told(host: Host) -> None:
    """From 19:00:45 to 19:00:05 nobody sees a difference; from 19:01:05 everybody does."""
    host.at("16:58")
    before = host.evening.tick().forecast

    def out(seconds: int) -> Forecast:
        (course,) = before.courses
        served = at("19:00") + timedelta(seconds=seconds)
        return dataclasses.replace(before, courses=(dataclasses.replace(course, served=served),))

    viewer = Viewer(host.evening.sheet)
    assert costs(viewer, out(45), out(5)).lines(9) == (words.COSTS_NOTHING,)
    assert costs(viewer, out(65), out(5)).lines(9) == ("Stew 19:00 instead of 19:01, on time",)


def test_what_goes_past_its_limit_is_warned_of(host: Host) -> None:
    play(host, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("18:30", "stew"))
    host.at("18:30")

    # Guests at 19:05 instead of 18:30: out at 19:15, the stew stands from 18:30 to 19:05, 35 of 30.
    assert told(host, DelayGuests(35))[:2] == (
        "Stew 19:15, 15 min late",
        "! stew kept 35 of 30 min, 5 min too long",
    )


def test_the_hosts_company_is_told_from_five_minutes_on(host: Host) -> None:
    """The sauce (10 min of hands) is made 18:35 to 18:45, after the guests have come at 18:30."""
    host.at("16:58")

    assert "5 min more in the kitchen while the guests are there" in told(host, Lengthen(("sauce",), 5))
    assert not any("kitchen" in line for line in told(host, Lengthen(("sauce",), 4)))
    assert (
        sum(away_by_forecast(host.evening.sheet, host.evening.look()).values())
        == away_minutes(host.evening.sheet)
        == 10
    )
    host.wish(DelayGuests(10))  # who come at 18:40 and find it half done
    assert sum(away_by_forecast(host.evening.sheet, host.evening.look()).values()) == 5


def test_company_as_forecast_is_the_sheets_own_while_nothing_has_slipped(lantern_sheet: RunSheet) -> None:
    host = Host(lantern_sheet, lantern_sheet.slots[0].start)

    assert sum(away_by_forecast(lantern_sheet, host.evening.look()).values()) == away_minutes(lantern_sheet)


def test_a_dropped_course_is_said_to_be_left_out(little: RunSheet) -> None:
    host = Host(with_dishes(little), at("16:58"))
    host.at("16:58")
    host.wish(DropDish("Pot", "Stew"))

    assert told(host, DropDish("Sauce", "Stew")) == (
        words.course_dropped("Stew"),
        "10 min less in the kitchen while the guests are there",
    )


RANKED = Costs(
    ((COURSE, "Main 20:00"), (COMPANY, "lamb, 8 min"), (COURSE, "Sweet 21:00"), (PAST, "! lamb"), (COMPANY, "9"))
)


@pytest.mark.parametrize(
    ("room", "lines"),
    [
        (5, ("Main 20:00", "lamb, 8 min", "Sweet 21:00", "! lamb", "9")),
        (4, ("Main 20:00", "Sweet 21:00", "! lamb", "+2 more")),
        (2, ("! lamb", "+4 more")),
        (1, ("! lamb", "+4 more")),  # what goes past its limit is never left out for want of room
    ],
)
def test_with_little_room_what_matters_most_stays_and_the_rest_is_counted(room: int, lines: tuple[str, ...]) -> None:
    assert RANKED.lines(room) == lines


@pytest.mark.parametrize(
    ("width", "line"),
    [
        (60, "Main 20:00 · lamb, 8 min · Sweet 21:00 · ! lamb · 9"),
        (43, "Main 20:00 · Sweet 21:00 · ! lamb · +2 more"),
        (42, "Main 20:00 · ! lamb · +3 more"),
        (16, "! lamb · +4 more"),
        (6, "! lam…"),
    ],
)
def test_side_by_side_as_many_as_fit(width: int, line: str) -> None:
    assert RANKED.strip(width) == line


def test_a_step_that_waits_for_a_dropped_dish_is_named(little: RunSheet) -> None:
    dip = slot("dip", "18:45", "18:50", dish="Dip", course="Stew", waits=(Dependency("sauce", "end", 0, "order"),),
               then=("serve",))  # fmt: skip
    sheet = with_dishes(little)
    sheet = msgspec.structs.replace(sheet, slots=(*sheet.slots[:4], dip, *sheet.slots[4:]))
    host = Host(sheet, at("16:58"))
    present = host.at("16:58")
    found = targets(present.state, present.forecast, "dish", "sauce")
    make = SlipLines(Viewer(sheet), present.state, present.forecast, host.evening.what_if)

    line = make.line("dish", found, 0, 0)

    assert line.headline == "Drop Sauce (Stew)"
    assert words.slip_go_on_without("dip") in line.lines(9)


def test_an_oven_says_how_much_is_in_it() -> None:
    host = Host(ovens(), at("16:58"))
    play(host, ("17:00", "heat-big"), ("17:15", "heat-big"))
    viewer = Viewer(host.evening.sheet)

    def headline() -> str:
        present = host.evening.tick()
        make = SlipLines(viewer, present.state, present.forecast, host.evening.what_if)
        return make.line("oven", targets(present.state, present.forecast, "oven"), 0, 5).headline

    assert headline() == "Big went cold: add 5 min to what goes in next"
    play(host, ("17:15", "pie"))
    assert headline() == "Big went cold: add 5 min to what's in it"
    play(host, ("17:15", "rolls"))
    assert headline() == "Big went cold: add 5 min to all 2 in it"


def test_a_stretched_step_is_called_with_its_new_length(host: Host) -> None:
    host.at("16:58")
    host.wish(Lengthen(("chop",), 7))
    host.at("17:00")

    assert "27 min" in Viewer(host.evening.sheet).view(host.evening.tick()).due[0].detail


# --- how long the host is free -------------------------------------------------------------------------------


def helped() -> RunSheet:
    """Nora peels 17:00-17:40; the host whisks 17:10-17:15, then a pot stands 17:15-18:00 with 3 min of the host's
    hands at its start and 2 of Nora's at its end; a bake 17:20-18:10 is looked in on at 17:50 by the host."""
    pot = (Attended(at("17:15"), at("17:18"), "host", "start"), Attended(at("17:58"), at("18:00"), "Nora", "end"))
    bake = (Attended(at("17:50"), at("17:51"), "host", "look-in"),)
    slots = (
        slot("peel", "17:00", "17:40", attended=(Attended(at("17:00"), at("17:40"), "Nora", "all"),)),
        slot("whisk", "17:10", "17:15"),
        slot("pot", "17:15", "18:00", lane="stovetop", attended=pot),
        slot("bake", "17:20", "18:10", lane="oven", attended=bake),
    )
    return RunSheet("Two", "UTC", "0", "2026-11-28", at("18:30"), (), slots, hands=("host", "Nora"))


def free(host: Host, clock: str) -> tuple[str, str, object]:
    present = host.at(clock)
    shown = Viewer(host.evening.sheet).view(present)
    return shown.headline, shown.detail, shown.busy


def test_a_helper_at_work_leaves_the_host_free_till_the_hosts_own_next_call() -> None:
    host = Host(helped(), at("16:59"))
    play(host, ("17:00", "peel"))

    headline, detail, busy = free(host, "17:02")

    assert headline == words.free_until("17:10")  # not 17:40, when Nora is done
    assert detail == words.yours_free_for("8 min", "Whisk")
    assert busy is None  # space must not end what Nora is at


def test_the_hosts_own_hands_come_first_and_a_short_start_counts_while_it_lasts() -> None:
    host = Host(helped(), at("16:59"))
    play(host, ("17:00", "peel"), ("17:10", "whisk"))
    assert free(host, "17:12")[0] == "Whisk"
    assert free(host, "17:12")[2] == ("whisk", "end", 0)
    play(host, ("17:15", "whisk"), ("17:15", "pot"))

    assert free(host, "17:16")[0] == "Pot"
    assert free(host, "17:16")[2] is None  # the pot is not done when the hands are
    assert free(host, "17:18")[0] == words.free_until("17:20")


def test_what_runs_by_itself_and_what_a_helper_ends_do_not_keep_the_host() -> None:
    host = Host(helped(), at("16:59"))
    play(host, ("17:00", "peel"), ("17:10", "whisk"), ("17:15", "whisk"), ("17:15", "pot"), ("17:20", "bake"))

    assert free(host, "17:25")[0] == words.free_until("17:50")  # the bake's look-in, not Nora's 17:40
    play(host, ("17:40", "peel"), ("17:50", "bake"))
    assert free(host, "17:52")[0] == words.free_until("18:10")  # the end of the pot at 18:00 is Nora's


def test_when_only_helpers_are_called_any_more_the_host_is_told() -> None:
    host = Host(helped(), at("16:59"))
    play(host, ("17:00", "peel"), ("17:10", "whisk"), ("17:15", "whisk"), ("17:15", "pot"), ("17:20", "bake"),
         ("17:40", "peel"), ("17:50", "bake"))  # fmt: skip
    host.at("17:55")
    host.wish(Lengthen(("pot",), 30))
    play(host, ("18:10", "bake"))

    assert free(host, "18:15")[0] == words.NOTHING_YOURS


def test_of_two_things_the_hosts_hands_are_on_the_one_that_ends_first_is_named() -> None:
    slots = (slot("knead", "17:00", "17:30"), slot("stir", "17:05", "17:20"))
    host = Host(RunSheet("Two", "UTC", "0", "2026-11-28", at("18:30"), (), slots, hands=("host",)), at("16:59"))
    play(host, ("17:00", "knead"))
    host.at("17:05")
    host.wish(Done("stir", "start", 0))

    assert free(host, "17:10")[0] == "Stir"
