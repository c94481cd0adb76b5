"""What a helper's page shows: their own next three calls, as the board tells them, and whether they may answer."""

import msgspec
import pytest

from board.evening.wishes import Done, HelperDone, Settle
from board.share import words
from board.share.helper import MOST_CALLS, HelperPage, helper_page
from board.sheet.run_sheet import Attended, RunSheet, SoMuch
from board.view import words as view_words
from board.view.onlooker import Onlooker
from tests.conftest import Host, at, slot
from tests.share.conftest import HELPER

MADE_OF = {"chop": ("2 onions", "1 kg beef"), "sauce": ("150 ml cream",)}


def page_at(host: Host, clock: str, who: str = HELPER) -> HelperPage:
    present = host.at(clock)
    return helper_page(Onlooker(host.evening.sheet, who), present, who, 0, MADE_OF)


@pytest.fixture
def host(helped: RunSheet) -> Host:
    return Host(helped, at("16:00"))


def test_their_own_calls_stand_there_with_time_and_amounts(host: Host) -> None:
    first, second = page_at(host, "16:58").calls

    assert (first.slot, first.part, first.at, first.when) == ("chop", "start", "17:00", "in 2 min")
    assert (first.what, first.is_due) == ("Chop", False)
    assert first.amounts == ("2 onions", "1 kg beef")
    assert any("20 min" in told for told in first.told)
    assert (second.slot, second.at, second.amounts) == ("sauce", "18:35", ("150 ml cream",))


def test_the_amounts_of_a_dish_stand_there_once(helped: RunSheet) -> None:
    slots = tuple(msgspec.structs.replace(each, dish="Beef") for each in helped.slots)
    host = Host(msgspec.structs.replace(helped, slots=slots), at("16:58"))
    present = host.at("16:58")

    page = helper_page(Onlooker(host.evening.sheet, HELPER), present, HELPER, 0, {"Beef": ("1 kg beef",)})

    assert [call.amounts for call in page.calls] == [("1 kg beef",), ()]


def test_what_goes_in_at_a_step_and_how_stand_there_in_place_of_all_of_its_dish(helped: RunSheet) -> None:
    goes_in, how = (SoMuch("butter", 187.5, 187.5, "g"), SoMuch("salt", None, None, "to taste")), "Small, all alike."
    slots = tuple(
        msgspec.structs.replace(each, method=how, amounts=goes_in) if each.id == "chop" else each
        for each in helped.slots
    )

    first, _ = page_at(Host(msgspec.structs.replace(helped, slots=slots), at("16:00")), "16:58").calls

    assert first.amounts == ("190 g butter", "salt")
    assert how in first.told


def test_a_call_that_waits_says_how_long_and_takes_an_answer(host: Host) -> None:
    call = page_at(host, "17:00").calls[0]
    waiting = page_at(host, "17:03").calls[0]

    assert (call.is_due, call.when, call.answer) == (True, words.NOW, view_words.DONE_BEGIN)
    assert waiting.when == words.waits("3 min")


def test_what_was_answered_makes_room_for_what_comes(host: Host) -> None:
    page_at(host, "17:00")
    host.wish(HelperDone("chop", "start", 0, HELPER))

    assert [(call.slot, call.part) for call in page_at(host, "17:01").calls] == [("chop", "end"), ("sauce", "start")]
    assert page_at(host, "17:01").calls[0].answer == words.early(view_words.DONE_END)
    assert page_at(host, "17:01").quiet[0] == view_words.hands_on("chop")


def test_calls_of_others_are_not_theirs(host: Host) -> None:
    assert {call.slot for call in page_at(host, "17:00", "host").calls} == {"stew", "arrive", "serve"}


def test_what_cannot_be_answered_has_no_button_and_says_why_once_it_is_due(helped: RunSheet) -> None:
    """The stew's end wants a probe's reading, which the board takes."""
    host = Host(helped, at("17:00"))
    host.at("17:00")
    assert page_at(host, "17:01", "host").calls[0].answer == ""  # the stew waits for the chopping
    assert page_at(host, "17:01", "host").calls[0].why == ""
    host.wish(Settle("chop"))
    host.at("17:30")
    host.wish(Done("stew", "start"))

    ends = next(call for call in page_at(host, "18:31", "host").calls if call.part == "end")

    assert (ends.is_due, ends.answer) == (True, "")
    assert "probe" in ends.why


def test_however_many_calls_of_others_come_first_theirs_are_found(helped: RunSheet) -> None:
    others = tuple(slot(f"polish {n}", "17:30", "17:31", kind="job") for n in range(30))
    sheet = msgspec.structs.replace(helped, slots=(*helped.slots, *others))
    host = Host(sheet, at("17:29"))
    host.wish(Settle("chop"))

    assert [call.slot for call in page_at(host, "17:29").calls] == ["sauce"]


def test_three_are_enough(helped: RunSheet) -> None:
    more = tuple(
        msgspec.structs.replace(each, attended=(Attended(each.start, each.end, HELPER, "all"),))
        for each in (slot(f"fold {n}", "18:00", "18:01", kind="job") for n in range(9))
    )
    host = Host(msgspec.structs.replace(helped, slots=(*helped.slots, *more)), at("16:00"))

    assert len(page_at(host, "16:58").calls) == MOST_CALLS == 3


def test_the_course_and_how_the_evening_stands_are_the_boards_own(host: Host) -> None:
    calm = page_at(host, "16:58")
    late = page_at(host, "18:00")  # an hour after the chopping should have begun

    assert calm.course == "Stew at 19:00, in 2 h 02"
    assert (calm.standing, calm.is_late) == (view_words.STANDS_ON_TIME, False)
    assert (late.standing, late.is_late) == (view_words.STANDS_LATE, True)
    assert "late" in late.course


def test_before_anybody_is_chosen_only_names_are_shown(host: Host) -> None:
    page = helper_page(Onlooker(host.evening.sheet), host.at("17:00"), "", 0, {})

    assert (page.hands, page.calls, page.quiet) == (("host", HELPER), (), ("", ""))


def test_what_a_plan_says_comes_as_one_safe_line(helped: RunSheet) -> None:
    bad = msgspec.structs.replace(helped.slots[0], call="Chop\x1b[2J\n<script>alert(1)</script>")
    host = Host(msgspec.structs.replace(helped, slots=(bad, *helped.slots[1:])), at("16:58"))

    call = page_at(host, "16:58").calls[0]

    assert "\x1b" not in call.what
    assert "\n" not in call.what
    assert "<script>" in call.what  # as it stands: the page puts it in as text
