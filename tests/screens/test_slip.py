"""What went wrong, by Pilot: every key and state of the small screen, and what comes of it."""

from typing import Any

import pytest

from board.base import words as shared
from board.evening.events import DishDropped, GuestsDelayed, StepStretched
from board.screens import words
from board.screens.live import LiveScreen
from board.screens.slip import SlipScreen
from board.sheet.run_sheet import RunSheet
from board.view import words as view_words
from tests.conftest import Host, at
from tests.evening.kitchens import ovens, with_dishes
from tests.screens.conftest import Kitchen

SIZE = (120, 36)
WHOLE = (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("18:30", "stew"), ("18:30", "arrive"),
         ("18:35", "sauce"), ("18:45", "sauce"), ("18:50", "serve"), ("19:00", "serve"))  # fmt: skip


@pytest.fixture
def supper(little: RunSheet) -> Kitchen:
    return Kitchen(with_dishes(little), "16:58")


def last(kitchen: Kitchen) -> Any:
    return kitchen.host.evening.state.history[-1]


def play(kitchen: Kitchen, *answers: tuple[str, str]) -> None:
    for clock, id_ in answers:
        kitchen.set(clock)
        kitchen.host.answer(id_)
    kitchen.app.live.tick()


def screen(kitchen: Kitchen) -> SlipScreen:
    assert isinstance(kitchen.app.screen, SlipScreen)
    return kitchen.app.screen


async def test_two_keys_take_the_usual_case_and_its_cost_stood_there_first(supper: Kitchen) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        play(supper, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"))
        supper.set("18:28")
        await pilot.press("w")
        await pilot.pause()
        shown = supper.shown()
        assert "1  Not ready yet, 5 min more: stew" in shown
        assert view_words.COSTS_NOTHING in shown  # 18:35 is still before the serving
        await pilot.press("right", "right", "right", "right")
        await pilot.pause()
        # 25 more: the stew ends 18:55, the serving moves 5.
        assert "Stew 19:05, 5 min late" in supper.shown()
        await pilot.press("escape", "w")
        await pilot.press("1")
        await pilot.pause()

        event = last(supper)
        assert isinstance(event, StepStretched)
        assert (event.slots, event.minutes) == (("stew",), 5)
        assert isinstance(supper.app.screen, LiveScreen)
        assert "Not ready yet, 5 min more: stew · u undoes" in supper.shown()


async def test_looking_takes_nothing_and_escape_leaves_it(supper: Kitchen) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        play(supper, ("17:00", "chop"))
        before = supper.host.evening.state

        await pilot.press("w", "down", "right", "left", "up", "up", "tab", "shift+tab", "m", "4", "escape", "escape")
        await pilot.pause()

        assert supper.host.evening.state is before
        assert isinstance(supper.app.screen, LiveScreen)


async def test_only_what_is_there_is_shown_and_numbers_stay_where_they_are(supper: Kitchen) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.press("w")
        await pilot.pause()

        shown = supper.shown()
        for kind in ("not-ready", "sitting", "oven"):
            assert view_words.SLIP_NONE[kind] not in shown
        assert "› 2  Guests late by 10 min" in shown
        assert "4  Drop Pot (Stew) (1 of 2)" in shown
        assert "6  Change a step's time, 5 min more: chop (1 of 5)" in shown
        before = supper.host.evening.state
        for number, kind in (("1", "not-ready"), ("3", "sitting"), ("5", "oven")):
            await pilot.press(number)
            await pilot.pause()
            assert view_words.SLIP_NONE[kind] in supper.shown()  # asked for, it says why
        await pilot.press("enter", "7", "0")
        assert supper.host.evening.state is before
        assert isinstance(supper.app.screen, SlipScreen)


async def test_what_breaks_nothing_has_no_line_of_its_own(supper: Kitchen) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        play(supper, ("17:00", "chop"))
        await pilot.press("w")
        await pilot.pause()

        lines = [line.strip(" │┃║▌▐") for line in supper.shown().splitlines()]
        at_length = next(n for n, line in enumerate(lines) if "6  Change a step's time" in line)
        assert "kept" not in supper.shown()  # the stew would stand longer, within its limit
        assert not lines[at_length + 1].startswith(view_words.COSTS_NOTHING)


@pytest.mark.parametrize("lines", [("w", "down"), ("w",)])
async def test_late_guests_by_typed_minutes(supper: Kitchen, lines: tuple[str, ...]) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        if len(lines) > 1:
            play(supper, ("17:00", "chop"))
        await pilot.press(*lines, "m", "2", "5")
        await pilot.pause()
        assert "Guests late by 25 min" in supper.shown()
        assert "Stew 19:05, 5 min late" in supper.shown()  # its cost, before it is taken

        await pilot.press("enter")

        event = last(supper)
        assert isinstance(event, GuestsDelayed)
        assert event.minutes == 25


async def test_typed_minutes_can_be_mended_and_left(supper: Kitchen) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        before = supper.host.evening.state
        await pilot.press("w", "m", "0", "1", "9", "9")  # no minutes begin with 0, and 199 is more than three hours
        await pilot.pause()
        assert "Guests late by 19 min" in supper.shown()
        await pilot.press("backspace", "5")
        await pilot.pause()
        assert "Guests late by 15 min" in supper.shown()
        await pilot.press("escape")
        await pilot.pause()
        assert "".join(words.SLIP_HINTS) in supper.shown()
        assert supper.host.evening.state is before
        await pilot.press("2")  # a line's number again

        event = last(supper)
        assert isinstance(event, GuestsDelayed)
        assert event.minutes == 15


async def test_late_guests_by_as_many_minutes_as_were_chosen(supper: Kitchen) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.press("w", "right", "right", "right", "right")
        await pilot.pause()
        assert "Guests late by 30 min" in supper.shown()
        assert "Stew 19:10, 10 min late" in supper.shown()

        await pilot.press("2")

        event = last(supper)
        assert isinstance(event, GuestsDelayed)
        assert (event.minutes, event.course) == (30, None)
        await pilot.press("u")
        await pilot.pause()
        assert shared.taken_back("guests 30 min late") in supper.shown()
        assert not supper.host.evening.state.steps["arrive"].put_off


async def test_the_course_on_the_table_runs_long(supper: Kitchen) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        play(supper, *WHOLE)

        await pilot.press("w", "3")

        event = last(supper)
        assert isinstance(event, GuestsDelayed)
        assert (event.course, event.minutes) == ("Stew", 10)


async def test_a_number_drops_the_dish_that_stands_there_in_one_press(supper: Kitchen) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.press("w", "4")
        event = last(supper)
        assert isinstance(event, DishDropped)
        assert event.dish == "Pot"
        await pilot.press("u", "w", "down", "right")  # there are no minutes: another dish
        await pilot.pause()
        assert "› 4  Drop Sauce (Stew) (2 of 2)" in supper.shown()
        await pilot.press("4")

        event = last(supper)
        assert isinstance(event, DishDropped)
        assert (event.dish, event.slots) == ("Sauce", ("sauce",))


async def test_what_is_on_the_heat_goes_with_its_dish_and_is_named_first(supper: Kitchen) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        play(supper, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"))
        await pilot.press("w", "down", "down")
        await pilot.pause()
        assert "› 4  Drop Pot (Stew)" in supper.shown()
        assert view_words.slip_on_heat("stew") in supper.shown()
        await pilot.press("4")
        await pilot.pause()

        assert supper.status("stew") == "left-out"
        assert isinstance(supper.app.screen, LiveScreen)


async def test_another_step_is_chosen_with_tab_and_made_shorter(supper: Kitchen) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.press("w", "up", "tab", "left", "left", "left", "left", "left")  # 5 4 3 2 1, then below nought
        await pilot.pause()
        assert "Change a step's time, 1 min less: stew (2 of 5)" in supper.shown()
        await pilot.press("left", "left", "left", "left", "space")

        event = last(supper)
        assert isinstance(event, StepStretched)
        assert (event.slots, event.minutes) == (("stew",), -5)


async def test_the_step_the_board_looks_at_is_meant_first(supper: Kitchen) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()

        await pilot.press("down", "down", "w")  # the stew is chosen among what comes
        await pilot.pause()

        assert "6  Change a step's time, 5 min more: stew" in supper.shown()


async def test_its_number_takes_an_oven_also_where_two_are_in_use() -> None:
    host = Host(ovens(), at("16:58"))
    kitchen = Kitchen(host.evening.sheet, "16:58")
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        play(kitchen, ("17:00", "heat-big"))
        await pilot.press("w", "5")
        event = last(kitchen)
        assert isinstance(event, StepStretched)
        assert (event.oven, event.slots) == ("big", ("heat-big",))
        await pilot.press("u")
        play(kitchen, ("17:10", "heat-small"))

        await pilot.press("w")
        await pilot.pause()
        assert "5  Big went cold: add 5 min to what's in it (1 of 2)" in kitchen.shown()
        await pilot.press("up", "up", "tab", "5")

        event = last(kitchen)
        assert isinstance(event, StepStretched)
        assert (event.oven, event.slots) == ("small", ("heat-small",))


async def test_a_key_that_bounces_takes_once(supper: Kitchen) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        play(supper, ("17:00", "chop"))

        await pilot.press("w", "1", "1", "1")
        await pilot.pause()

        assert [type(e) for e in supper.host.evening.state.history].count(StepStretched) == 1


async def test_a_full_disk_is_told_and_takes_nothing(supper: Kitchen, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(events: object) -> None:
        raise OSError(28, "No space left on device")

    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        play(supper, ("17:00", "chop"))
        monkeypatch.setattr(supper.host.evening.keeper, "append", full)
        before = supper.host.evening.state

        await pilot.press("w", "1")
        await pilot.pause()

        assert "No space left on device" in supper.shown()
        assert supper.host.evening.state is before


async def test_a_fault_in_working_it_out_never_ends_the_board(supper: Kitchen, monkeypatch: pytest.MonkeyPatch) -> None:
    def broken() -> None:
        raise ZeroDivisionError("for a test")

    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        look = supper.host.evening.look
        monkeypatch.setattr(supper.host.evening, "look", broken)
        await pilot.press("w", "right", "tab", "4", "1", "m", "enter")
        await pilot.pause()
        assert "for a test" in supper.shown()
        monkeypatch.setattr(supper.host.evening, "look", look)
        await pilot.press("down")
        await pilot.pause()

        assert "Guests late by 10 min" in supper.shown()
        await pilot.press("escape")
        assert isinstance(supper.app.screen, LiveScreen)


@pytest.mark.parametrize("size", [(80, 24), (80, 20), (60, 18), (40, 12), (160, 50)])
async def test_it_can_be_read_and_left_at_every_size(supper: Kitchen, size: tuple[int, int]) -> None:
    async with supper.app.run_test(size=size) as pilot:
        await pilot.pause()
        play(supper, ("17:00", "chop"))
        await pilot.press("w")
        await pilot.pause()

        assert "Not ready yet, 5 min" in supper.shown()
        if size >= (80, 24):
            assert "6  Change a step's time, 5 min more: stew" in supper.shown()
            assert "".join(words.SLIP_HINTS) in supper.shown()
        await pilot.press("escape")
        assert isinstance(supper.app.screen, LiveScreen)


async def test_a_long_name_is_cut_and_stays_on_its_line(little: RunSheet) -> None:
    import msgspec

    slots = tuple(
        msgspec.structs.replace(s, named=f"{s.name} the leeks very thinly on the slant") if s.kind == "step" else s
        for s in little.slots
    )
    kitchen = Kitchen(msgspec.structs.replace(little, slots=slots), "16:58")
    async with kitchen.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        await pilot.press("w")
        await pilot.pause()

        line = next(line for line in kitchen.shown().splitlines() if "Change a step's time" in line)
        assert "chop the leeks" in line
        assert "… (1 of 5)" in line


async def test_ctrl_q_closes_it_and_not_the_board(supper: Kitchen) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()

        await pilot.press("w", "ctrl+q")
        await pilot.pause()

        assert isinstance(supper.app.screen, LiveScreen)


async def test_markup_and_escapes_of_a_plan_never_reach_the_small_screen(little: RunSheet) -> None:
    import msgspec

    nasty = "so[/]up [b]x\x1b]0;X\x07\x1b[2J\u202e"
    slots = tuple(msgspec.structs.replace(s, named=nasty, dish=nasty) if s.kind == "step" else s for s in little.slots)
    courses = tuple(msgspec.structs.replace(c, name=nasty) for c in little.courses)
    kitchen = Kitchen(msgspec.structs.replace(little, slots=slots, courses=courses), "17:00")
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        play(kitchen, ("17:00", "chop"))

        await pilot.press("w")
        await pilot.pause()
        asked = kitchen.shown()
        await pilot.press("4")
        await pilot.pause()

        for shown in (asked, kitchen.shown()):
            assert "\x1b" not in shown
            assert "\u202e" not in shown
        assert "so[/]up [b]x" in asked


async def test_later_pressed_twice_is_ten_minutes(supper: Kitchen) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        supper.set("17:00")

        await pilot.press("l")
        await pilot.pause(0.01)
        await pilot.press("l")
        await pilot.pause()

        assert supper.host.evening.state.steps["chop"].put_off["start"] == at("17:10")
        assert words.put_off("Chop", 10) in supper.shown()


async def test_later_does_nothing_to_what_was_never_called(supper: Kitchen) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()

        await pilot.press("down", "l")
        await pilot.pause()

        assert words.NOT_CALLED_YET in supper.shown()
        assert not supper.host.evening.state.steps["chop"].put_off


async def test_what_stands_there_is_worked_out_anew_as_time_passes(supper: Kitchen) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.press("w")
        await pilot.pause()
        small = screen(supper)
        assert small.lines[0].wish is None
        supper.host.clock.set(at("17:00"))
        supper.host.evening.tick()
        supper.host.answer("chop")

        small.show()

        assert small.lines[0].wish is not None


async def test_opened_again_it_begins_anew_and_costs_nothing_while_it_is_closed(
    supper: Kitchen, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("board.screens.slip.REFRESH_SECONDS", 0.15)
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.press("w", "down", "right", "up", "tab", "escape")
        small = supper.app.live.ahead.slips
        assert small is not None
        looked: list[int] = []
        look = supper.host.evening.look

        def counted() -> object:
            looked.append(1)
            return look()

        monkeypatch.setattr(supper.host.evening, "look", counted)
        await pilot.pause(0.3)
        while_closed = len(looked)
        await pilot.press("w")
        await pilot.pause(0.8)

        assert while_closed == 0
        assert len(looked) > 2  # open, it looks again and again
        assert screen(supper) is small
        assert small.at is None
        assert "2  Guests late by 10 min" in supper.shown()
        assert "6  Change a step's time, 5 min more: chop (1 of 5)" in supper.shown()
