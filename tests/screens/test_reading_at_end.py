"""The board asks for a reading at the end of a step: kept and ended with one key, held, ended without, left open."""

from typing import Any

import msgspec
import pytest

from board.evening.wishes import Done
from board.screens import words
from board.screens.live import LiveScreen
from board.screens.reading import ReadingScreen
from board.sheet.run_sheet import RunSheet
from tests.conftest import at
from tests.evening.test_clocks import TO_THE_FILLING, TO_THE_TABLE, custard_supper
from tests.evening.test_cooling_outlook import cooling_sheet, halving
from tests.screens.conftest import Kitchen

SIZE = (100, 30)


def answer(kitchen: Kitchen, *answers: tuple[str, str]) -> None:
    """Answers calls, each at its clock time, as if by keys."""
    for clock, id_ in answers:
        kitchen.set(clock)
        call = next(c for c in kitchen.host.evening.tick().due if c.slot == id_)
        kitchen.host.wish(Done(*call.key))
    kitchen.app.live.tick()


def stewing(kitchen: Kitchen) -> None:
    """The stew is under way; its end is called at 18:30, and nothing else is, for the guests are here."""
    answer(kitchen, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("17:50", "stew"), ("18:10", "stew"))
    kitchen.set("18:30")
    kitchen.host.wish(Done("arrive", "start"))
    kitchen.app.live.tick()


async def test_space_asks_and_a_reading_that_is_enough_ends_it(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen)
        await pilot.pause()
        assert "space read it" in kitchen.shown()

        await pilot.press("space")
        await pilot.pause()
        assert isinstance(kitchen.app.screen, ReadingScreen)
        assert kitchen.status("stew") == "under-way"
        assert "w ends it unread" in kitchen.shown()
        await pilot.press(*"75", "enter")
        await pilot.pause()

        assert isinstance(kitchen.app.screen, LiveScreen)
        assert kitchen.status("stew") == "finished"
        assert "core 75 °C (167 °F), 74 wanted; done" in kitchen.shown()
        await pilot.press("u")
        assert kitchen.status("stew") == "under-way"
        assert kitchen.host.evening.state.readings == ()


async def test_a_low_one_keeps_it_open_and_space_asks_again(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen)

        await pilot.press("space", *"71", "enter")
        await pilot.pause()
        assert kitchen.status("stew") == "under-way"
        assert "3 °C below the 74 wanted; asked again in 3 min" in kitchen.shown()
        kitchen.set("18:33")
        await pilot.press("space", *"165 F", "enter")
        await pilot.pause()

        assert kitchen.status("stew") == "finished"
        assert [round(r.celsius, 1) for r in kitchen.host.evening.state.readings] == [71.0, 73.9]


async def test_one_key_ends_it_without_a_reading_and_that_is_told(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=(80, 40)) as pilot:
        await pilot.pause()
        stewing(kitchen)

        await pilot.press("space", "w")
        await pilot.pause()
        assert kitchen.status("stew") == "finished"
        assert kitchen.host.evening.state.unread == ("stew",)
        assert "stew: temperature not checked" in kitchen.shown()
        await pilot.press("q", "e")
        await pilot.pause()

        assert "stew: temperature not checked" in kitchen.shown()  # on the closing page


async def test_escape_leaves_everything_as_it_was(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen)
        before = kitchen.host.evening.state

        await pilot.press("space", *"75", "escape")
        await pilot.pause()

        assert isinstance(kitchen.app.screen, LiveScreen)
        assert kitchen.host.evening.state is before


async def test_read_before_the_end_nothing_is_asked(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen)
        await pilot.press("t", *"76", "enter")
        await pilot.pause()
        assert kitchen.status("stew") == "under-way"  # `t` only reads

        await pilot.press("space")
        await pilot.pause()

        assert isinstance(kitchen.app.screen, LiveScreen)
        assert kitchen.status("stew") == "finished"


async def test_done_already_asks_too_for_what_is_under_way(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen)

        await pilot.press("d")
        await pilot.pause()

        assert isinstance(kitchen.app.screen, ReadingScreen)


async def test_w_is_never_typed_and_does_nothing_where_nothing_is_to_be_ended(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen)

        await pilot.press("t", "7", "w", "5")
        await pilot.pause()

        assert isinstance(kitchen.app.screen, ReadingScreen)
        assert kitchen.app.screen.figure.value == "75"
        assert kitchen.host.evening.state.unread == ()


async def test_it_is_held_and_says_so(little: RunSheet) -> None:
    slots = tuple(
        msgspec.structs.replace(s, core_celsius=60.0, hold_minutes=12.0) if s.id == "stew" else s for s in little.slots
    )
    kitchen = Kitchen(msgspec.structs.replace(little, slots=slots), "16:58")
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen)
        await pilot.press("space")
        await pilot.pause()
        assert "core 60 °C (140 °F) wanted, held 12 min" in kitchen.shown()

        await pilot.press(*"60", "enter")
        await pilot.pause()
        assert kitchen.status("stew") == "under-way"
        assert "to be held 12 min, asked again in 12 min" in kitchen.shown()
        kitchen.set("18:42")
        await pilot.press("space")
        await pilot.pause()

        assert isinstance(kitchen.app.screen, LiveScreen)
        assert kitchen.status("stew") == "finished"


# --- clocks ------------------------------------------------------------------------------------------------------
def lines_with(kitchen: Kitchen, text: str) -> list[str]:
    return [line for line in kitchen.shown().splitlines() if text in line]


async def test_a_clock_that_runs_is_listed_and_rings_once_before_its_limit() -> None:
    kitchen = Kitchen(custard_supper(), "16:58")
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        answer(kitchen, *TO_THE_FILLING[:-1])
        kitchen.set("18:28")
        await pilot.pause()
        assert lines_with(kitchen, "◔ custard: out 48 min; eat or chill by 19:40")
        kitchen.set("19:19")
        before = kitchen.chime.rung

        kitchen.set("19:20")
        await pilot.pause()
        assert "custard: out 100 of 120 min; eat it, chill it or keep it hot by 19:40" in kitchen.shown()
        assert kitchen.chime.rung == before + 1
        kitchen.set("19:40")
        await pilot.pause()

        assert lines_with(kitchen, "⊗ custard: out 2 hours. Don't serve or keep it")


async def test_what_is_left_is_to_be_put_away_once_its_course_is_cleared() -> None:
    kitchen = Kitchen(custard_supper(), "16:58")
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        answer(kitchen, *TO_THE_TABLE, ("19:40", "clear"), ("19:45", "clear"))
        await pilot.pause()

        assert "Sweet leftovers: in the fridge, in shallow dishes, by 20:30" in kitchen.shown()
        assert lines_with(kitchen, "◔ Sweet leftovers")


async def test_markup_in_a_dishs_name_stays_text() -> None:
    nasty = "so[/]up [b]x\x1b]0;X\x07\u202e"
    sheet = custard_supper()
    clock = msgspec.structs.replace(sheet.clocks[0], dish=nasty)
    slots = tuple(msgspec.structs.replace(s, dish=nasty) if s.dish else s for s in sheet.slots)
    kitchen = Kitchen(msgspec.structs.replace(sheet, clocks=(clock,), slots=slots), "16:58")
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        answer(kitchen, *TO_THE_FILLING[:-1])
        kitchen.set("19:20")
        await pilot.pause()

        assert lines_with(kitchen, "◔ so[/]up [b]x")
        assert "\x1b" not in kitchen.shown()


# --- what cools --------------------------------------------------------------------------------------------------
@pytest.fixture
def broth() -> Kitchen:
    return Kitchen(cooling_sheet(halving(40)), "16:30")


async def cooling(kitchen: Kitchen, pilot: Any) -> None:
    await pilot.pause()
    answer(kitchen, ("16:30", "cook"), ("17:00", "cook"))
    kitchen.set("17:00")
    await pilot.press("space")
    await pilot.pause()


async def test_as_it_begins_the_board_says_when_to_read_it(broth: Kitchen) -> None:
    async with broth.app.run_test(size=SIZE) as pilot:
        await cooling(broth, pilot)

        assert broth.status("cool 1") == "under-way"
        assert words.read_in("cool 1", 20) in broth.shown()


async def test_its_look_in_asks_for_a_reading_and_says_how_it_will_go_on(broth: Kitchen) -> None:
    """40.5 °C is 36.5 above the fridge's 4; halving in 40 min from 17:30 on, 70 °F (17.11 above) comes 43.7 min later,
    5 °C 207.6 min later. 57 °C was passed 21.5 min before 17:30."""
    async with broth.app.run_test(size=(160, 30)) as pilot:
        await cooling(broth, pilot)
        broth.set("17:30")
        await pilot.press("space")
        await pilot.pause()
        assert isinstance(broth.app.screen, ReadingScreen)
        assert words.READING_COOLS in broth.shown()

        await pilot.press(*"40.5", "enter")
        await pilot.pause()

        assert broth.host.evening.state.steps["cool 1"].looked_in == 1
        assert "an estimate: 21 °C (70 °F) at 18:13, in time; 5 °C (41 °F) at 20:57, in time" in broth.shown()


async def test_nobody_is_held_to_reading_what_cools(broth: Kitchen) -> None:
    async with broth.app.run_test(size=SIZE) as pilot:
        await cooling(broth, pilot)
        broth.set("17:30")
        await pilot.press("space", "w")
        await pilot.pause()
        assert broth.host.evening.state.steps["cool 1"].looked_in == 1
        broth.set("18:00")

        await pilot.press("space", "w")
        await pilot.pause()

        assert broth.status("cool 1") == "finished"
        assert broth.host.evening.state.unread == ()


async def test_it_is_read_with_t_at_any_time(broth: Kitchen) -> None:
    async with broth.app.run_test(size=SIZE) as pilot:
        await cooling(broth, pilot)
        broth.set("17:12")

        await pilot.press("t", *"50", "enter")
        await pilot.pause()

        assert [(r.slot, r.celsius, r.at) for r in broth.host.evening.state.readings] == [("cool 1", 50.0, at("17:12"))]
        assert broth.status("cool 1") == "under-way"
