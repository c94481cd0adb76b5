"""What the board shows: countdowns, calls in words, ribbons of the right width, how the evening stands."""

import re
from datetime import timedelta
from zoneinfo import ZoneInfo

import msgspec
import pytest
from hypothesis import given
from hypothesis import strategies as st
from rich.cells import cell_len

from board.base.clock import StoppedClock
from board.evening.wishes import Done, Push
from board.rehearsal.player import catch_up
from board.session.session import unlogged_evening
from board.sheet.run_sheet import RunSheet, SoMuch, restore, store
from board.sheet.told import Caution
from board.view import words
from board.view.board import BoardView, Viewer
from board.view.costs import costs
from board.view.countdown import countdown, length
from board.view.ribbon import LABEL_WIDTH, ribbons
from board.view.short import short_forms
from tests.conftest import Host, at

LONG = timedelta(minutes=10)


@pytest.mark.parametrize(
    ("seconds", "shown"),
    [(270, "04:30"), (0, "00:00"), (0.2, "00:01"), (59.5, "01:00"), (3599, "59:59"), (3600, "1:00:00"),
     (3600 * 100 - 1, "99:59:59"), (3600 * 186 + 1017, "186:16"),
     (-1, "-00:01"), (-130.5, "-02:11"), (-3700, "-1:01:40")],
)  # fmt: skip
def test_countdowns(seconds: float, shown: str) -> None:
    assert countdown(seconds) == shown


@given(st.integers(0, 5999))
def test_a_countdown_under_an_hour_is_five_wide(seconds: int) -> None:
    assert len(countdown(seconds)) == (5 if seconds < 3600 else 7)


def test_lengths_in_words() -> None:
    assert [length(3600 * hours) for hours in (47, 48, 171)] == ["47 h 00", "2 days 0 h", "7 days 3 h"]
    assert [length(s) for s in (0, 59, 60, 3599, 3600, 5400)] == [
        "under a minute", "under a minute", "1 min", "59 min", "1 h 00", "1 h 30",
    ]  # fmt: skip


def view(host: Host, clock: str) -> BoardView:
    return Viewer(host.evening.sheet).view(host.at(clock))


def test_before_the_first_call_the_host_is_told_how_long_they_are_free(host: Host) -> None:
    shown = view(host, "16:58")

    assert shown.headline == words.free_until("17:00")
    assert "2 min" in shown.detail
    assert "Chop" in shown.detail
    assert shown.standing == words.STANDS_ON_TIME


def test_a_due_call_is_told_in_the_plans_own_words_with_place_and_length(host: Host) -> None:
    host.at("17:00")
    host.answer("chop")
    host.at("17:20")
    host.answer("chop")
    host.at("17:30")

    call = view(host, "17:31").due[0]

    assert call.headline == "Stew on"
    assert call.detail == "stovetop · 1 ring · 1 h 00"
    assert call.countdown == "called 1 min ago"
    assert call.answer == words.DONE_BEGIN


def test_what_was_noted_before_is_told_at_its_call(little: RunSheet) -> None:
    notes = ("low flame", "lid\x1b on")
    slots = [msgspec.structs.replace(s, noted=notes) if s.id == "stew" else s for s in little.slots]
    host = Host(msgspec.structs.replace(little, slots=tuple(slots)), at("16:58"))
    host.at("17:00")
    host.answer("chop")
    host.at("17:20")
    host.answer("chop")

    (begin,) = view(host, "17:30").due
    host.answer("stew")
    end = next(call for call in view(host, "18:30").due if call.key[1] == "end")

    assert begin.look_for == "noted: lid� on · low flame"
    assert end.look_for == f"look for: tender · {begin.look_for}"


def test_the_end_call_says_what_to_look_for_and_the_core_temperature(host: Host) -> None:
    host.at("17:00")
    host.answer("chop")
    host.at("17:20")
    host.answer("chop")
    host.at("17:30")
    host.answer("stew")

    call = next(c for c in view(host, "18:30").due if c.key[1] == "end")

    assert call.look_for == "look for: tender"
    assert "core 74 °C (165 °F)" in call.detail  # 74 °C × 9/5 + 32 = 165.2 °F


def test_while_hands_are_on_something_the_board_says_so(host: Host) -> None:
    host.at("17:00")
    host.answer("chop")

    shown = view(host, "17:05")

    assert shown.headline == "Chop"
    assert "15:00" in shown.detail
    assert shown.busy == ("chop", "end", 0)


def test_how_it_is_done_and_what_goes_in_stand_with_the_call_that_begins_it_and_while_hands_are_on_it(
    little: RunSheet,
) -> None:
    into, how = (SoMuch("carrots", 4 / 3, 4 / 3), SoMuch("oil", 2, 3, "tbsp")), "Thin coins.\x1b[31m"
    slots = tuple(
        msgspec.structs.replace(slot, method=how, amounts=into) if slot.id == "chop" else slot for slot in little.slots
    )
    host = Host(msgspec.structs.replace(little, slots=slots), at("16:58"))

    called = view(host, "17:00").due[0]
    host.wish(Done(*called.key))
    busy = view(host, "17:05")

    assert called.how.startswith("Thin coins.")
    assert "\x1b" not in called.how
    assert called.amounts == "1⅓ carrots, 2–3 tbsp oil"
    assert busy.due == ()
    assert (busy.how, busy.amounts) == (called.how, called.amounts)
    assert [call.how for call in busy.coming if call.key[0] == "chop"] == [""]  # its end needs neither


def test_a_sheet_without_methods_is_stored_as_before(little: RunSheet) -> None:
    """By its bytes plans and the cook's book name an older log."""
    assert not {b"how", b"goes_in", b"units"} & {key.strip(b'"') for key in re.findall(rb'"\w+"', store(little))}
    assert restore(store(little)) == little


def test_standing_goes_from_on_time_over_tight_to_late(host: Host) -> None:
    assert view(host, "17:00").standing == words.STANDS_ON_TIME
    # chop begun at 17:35 makes the course 5 late, within the 10 it may slip: tight; at 17:45, 15 late: late.
    assert view(host, "17:35").standing == words.STANDS_TIGHT
    assert view(host, "17:45").standing == words.STANDS_LATE


def test_once_all_is_served_nothing_is_called_on_time(lantern_sheet: RunSheet) -> None:
    """However late it all was: what is over is nothing to judge by."""
    clock = StoppedClock(min(slot.start for slot in lantern_sheet.slots))
    evening = unlogged_evening(lantern_sheet, clock)
    last = max(course.served for course in lantern_sheet.courses)
    catch_up(evening, clock, last + timedelta(minutes=30))

    shown = Viewer(lantern_sheet).view(evening.peek())

    assert not any(shown.ahead)
    assert (shown.standing, shown.standing_sign) == ("", "")


def test_a_push_by_the_host_is_not_being_late(host: Host) -> None:
    host.at("17:00")
    host.wish(Push("Stew", 30))
    host.wish(Done("chop", "start"))

    shown = view(host, "17:01")

    assert shown.standing == words.STANDS_ON_TIME
    assert shown.course is not None
    assert shown.course.told == "Stew at 19:30 (30 min late), in 2 h 29"


def test_while_guests_sit_the_band_says_until_when_and_how_long_hands_are_free(lantern_sheet: RunSheet) -> None:
    """Against the sheet's own times: the course is served, the clearing is ahead, nothing is due."""
    clock = StoppedClock(min(slot.start for slot in lantern_sheet.slots))
    evening, slots = unlogged_evening(lantern_sheet, clock), lantern_sheet.by_id()
    course = next(c for c in lantern_sheet.courses if not c.standing and slots[c.clear].start - c.served > LONG)
    catch_up(evening, clock, course.served + timedelta(minutes=1))
    viewer = Viewer(lantern_sheet)

    shown = viewer.view(evening.peek())

    assert shown.seated == words.at_table_until(viewer.clock(slots[course.clear].start, clock.now()))
    assert shown.free_minutes is None or shown.free_minutes >= 0
    before = viewer.view(unlogged_evening(lantern_sheet, StoppedClock(course.served - timedelta(days=2))).peek())
    assert before.seated == ""


def test_a_call_carries_the_caution_of_what_can_hurt_at_it(little: RunSheet) -> None:
    """Which steps can hurt is the sheet's; that a blade wants no hurry is common practice, no source."""
    cautions = (Caution("blades", ("chop",)), Caution("alcohol", ("stew",)))
    host = Host(msgspec.structs.replace(little, cautions=cautions), at("16:58"))

    (chop,) = view(host, "17:00").due

    assert chop.caution == words.CALL_CAUTIONS["blades"]
    assert {len(each.split()) for each in words.CALL_CAUTIONS.values()} <= {4, 5}
    assert [call.caution for call in view(host, "17:00").coming if call.key[0] == "stew"] == [""]


@given(st.lists(st.sampled_from(["Fry", "the", "mushrooms", "into", "lentils", "and", "(small", "pan)"]), min_size=1))
def test_short_forms_grow_shorter_and_say_nothing_that_was_not_said(words_: list[str]) -> None:
    text = " ".join(words_)
    forms = list(short_forms(text))

    assert forms[0] == text
    assert [len(form) for form in forms] == sorted((len(form) for form in forms), reverse=True)
    assert all(set(form.split()) <= set(words_) for form in forms)


def test_a_push_tells_each_course_that_moves_and_what_would_stand_too_long(host: Host) -> None:
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("18:30", "stew")):
        host.at(clock)
        host.answer(id_)
    before = host.at("18:32").forecast
    after = host.evening.what_if(Push("Stew", 20))
    assert not hasattr(after, "words")

    lines = costs(Viewer(host.evening.sheet), before, after).lines(9)  # type: ignore[arg-type]

    # The stew was done 18:30; the serving moves from 18:50 to 19:10, so it will have stood 40 of 30 minutes.
    # The sauce keeps 15 and was to stand 5; it is moved by 10 of the 20, to stand the whole 15, which breaks nothing.
    assert lines == (
        "Stew 19:20, 20 min late",
        "! stew kept 40 of 30 min, 10 min too long",
    )


@pytest.mark.parametrize(("width", "height"), [(60, 7), (80, 7), (120, 14), (160, 20)])
@pytest.mark.parametrize("clock", ["16:58", "17:10", "17:31", "18:29", "18:55", "19:40"])
def test_ribbons_keep_their_width_and_put_now_at_a_fixed_column(
    host: Host, width: int, height: int, clock: str
) -> None:
    present = host.at(clock)
    sheet = host.evening.sheet

    rows = ribbons(sheet, present.state, present.forecast, width, height, ZoneInfo("UTC"))

    assert len(rows) <= height
    for row in rows:
        assert sum(cell_len(text) for text, _ in row) == width
    assert f"┃{clock}" in "".join(text for text, _ in rows[0])
    column = "".join(text for text, _ in rows[0]).index("┃")
    assert column == LABEL_WIDTH + int(12 / 102 * (width - LABEL_WIDTH))


def test_what_is_under_way_carries_its_own_countdown(host: Host) -> None:
    host.at("17:00")
    host.answer("chop")
    present = host.at("17:05")

    rows = ribbons(host.evening.sheet, present.state, present.forecast, 120, 14, ZoneInfo("UTC"))

    text = "\n".join("".join(t for t, _ in row) for row in rows)
    assert "15:00 chop" in text


def test_foreign_text_is_shown_harmless_and_aligned(little: RunSheet) -> None:
    nasty = "\x1b[2J[b]soup[/]\u202e\x9b 餃子 🥟 " + "x" * 300
    slots = tuple(
        msgspec.structs.replace(s, named=nasty, call=nasty, look_for=nasty) if s.kind == "step" else s
        for s in little.slots
    )
    host = Host(msgspec.structs.replace(little, slots=slots, plan=nasty), at("17:00"))
    present = host.at("17:05")

    shown = Viewer(host.evening.sheet).view(present)
    rows = ribbons(host.evening.sheet, present.state, present.forecast, 80, 10, ZoneInfo("UTC"))

    text = str(msgspec.json.encode([c.headline + c.detail for c in shown.due]).decode()) + shown.title
    drawn = "".join(t for row in rows for t, _ in row)
    for sign in ("\x1b", "\x9b", "\u202e"):
        assert sign not in text
        assert sign not in drawn
    for row in rows:
        assert sum(cell_len(t) for t, _ in row) == 80


def test_clock_words_name_the_day_when_it_is_another(lantern_sheet: RunSheet) -> None:
    viewer = Viewer(lantern_sheet)
    friday = lantern_sheet.slots[0].start

    assert viewer.clock(friday, friday) == viewer.local(friday).strftime("%H:%M")
    assert viewer.clock(lantern_sheet.arrive, friday) == "Sat 18:30"
    assert viewer.clock(friday + timedelta(minutes=1), friday) == viewer.local(friday + timedelta(minutes=1)).strftime(
        "%H:%M"
    )
