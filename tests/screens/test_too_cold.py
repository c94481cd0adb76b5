"""A bad reading of food kept hot stays in the call's place, by Pilot: until it is hot again or left out."""

import pytest

from board.base import words as shared
from board.evening.events import DishDropped
from board.evening.wishes import TakeReading
from board.screens.live import LiveScreen
from board.screens.reading import ReadingScreen
from board.sheet.run_sheet import RunSheet
from tests.evening.kitchens import with_dishes
from tests.screens.conftest import Kitchen

SIZE = (120, 36)
WANTED = "to 74 °C (165 °F) all through"


@pytest.fixture
def supper(little: RunSheet) -> Kitchen:
    return Kitchen(with_dishes(little), "16:58")


def stewed(kitchen: Kitchen) -> None:
    """The stew is done at 18:30, at 80 °C, and kept hot."""
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew")):
        kitchen.set(clock)
        kitchen.host.answer(id_)
    kitchen.set("18:30")
    kitchen.host.wish(TakeReading("stew", 80.0, "end"))
    kitchen.set("18:33")
    kitchen.app.live.tick()


async def test_it_stands_there_until_a_reading_is_hot_enough(supper: Kitchen) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewed(supper)
        await pilot.press("t")
        await pilot.pause()
        assert "stew: core 60 °C (140 °F) wanted" in supper.shown()
        await pilot.press("5", "0", "enter")
        await pilot.pause()
        assert WANTED in supper.shown()

        for clock in ("18:34", "18:49"):  # long after a line said in passing would be gone
            supper.set(clock)
            supper.app.live.tick()
            await pilot.pause()
            assert supper.app.live.board is not None
            due = [call.headline for call in supper.app.live.board.due]
            assert due[:2] == ["Heat again: Pot", "Guests are due"]
            assert WANTED in supper.shown()

        supper.app.live.choose(("stew", "reheat", 0))
        await pilot.press("space")
        await pilot.pause()
        assert isinstance(supper.app.screen, ReadingScreen)
        assert "stew: core 74 °C (165 °F) wanted" in supper.shown()
        await pilot.press("7", "0", "enter")
        await pilot.pause()
        assert WANTED in supper.shown()
        supper.app.live.choose(("stew", "reheat", 0))
        await pilot.press("space", "7", "5", "enter")
        await pilot.pause()

        assert isinstance(supper.app.screen, LiveScreen)
        assert WANTED not in supper.shown()
        await pilot.press("u")
        await pilot.pause()
        assert WANTED in supper.shown()


async def test_x_leaves_the_dish_out_and_u_brings_both_back(supper: Kitchen) -> None:
    async with supper.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewed(supper)
        supper.host.wish(TakeReading("stew", 50.0))
        supper.app.live.tick()
        supper.app.live.choose(("stew", "reheat", 0))
        await pilot.press("x")
        await pilot.pause()

        assert isinstance(supper.host.evening.state.history[-1], DishDropped)
        assert shared.left_out("Pot") in supper.shown()
        assert WANTED not in supper.shown()
        await pilot.press("u")
        await pilot.pause()
        assert WANTED in supper.shown()
