"""A board opened in the middle of its evening, by Pilot: what it asks, and what each key does."""

import pytest
from textual.pilot import Pilot

from board.base.words import SIGN
from board.evening.events import CallRaised, StepsSaid
from board.screens.behind import BehindScreen
from board.screens.live import LiveScreen
from board.sheet.run_sheet import RunSheet
from tests.screens.conftest import Kitchen

SIZES = [(80, 24), (120, 36), (60, 16)]


@pytest.fixture
def late(little: RunSheet) -> Kitchen:
    return Kitchen(little, "18:40")


async def press(pilot: Pilot[None], *keys: str) -> None:
    for key in keys:
        await pilot.press(key)
        await pilot.pause()


@pytest.mark.parametrize("size", SIZES)
async def test_it_asks_before_anything_is_called(late: Kitchen, size: tuple[int, int]) -> None:
    async with late.app.run_test(size=size) as pilot:
        await pilot.pause()
        await pilot.pause()
        assert "3 steps should be done by now" in late.shown()
        assert f"{SIGN['finished']} Sat 17:00–17:20" in late.shown()
        assert not any(isinstance(event, CallRaised) for event in late.host.evening.told)
        assert late.chime.rung == 0

        await press(pilot, "enter")
        assert isinstance(late.app.screen, LiveScreen)
        assert [late.status(id_) for id_ in ("chop", "stew", "arrive", "sauce")] == [
            "finished", "finished", "finished", "to-come",
        ]  # fmt: skip
        assert any(isinstance(event, CallRaised) and event.slot == "sauce" for event in late.host.evening.told)

        await press(pilot, "u")
        assert late.status("chop") == "to-come"


async def test_unticked_is_called_as_ever(late: Kitchen) -> None:
    async with late.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        await press(pilot, "down", "space")
        assert "2 steps should be done by now; 1 not ticked" in late.shown()
        await press(pilot, "enter")
        assert (late.status("chop"), late.status("stew")) == ("finished", "to-come")
        assert "stew" in late.shown().lower()


async def test_another_time_is_typed(late: Kitchen) -> None:
    async with late.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        await press(pilot, "t", *"1710-17", "colon", *"25", "enter")
        assert "17:10–17:25" in late.shown()
        await press(pilot, "enter")
        said = next(event for event in late.host.evening.told if isinstance(event, StepsSaid))
        assert f"{said.steps[0].started:%H:%M}" == "17:10"


async def test_nonsense_is_told_and_changes_nothing(late: Kitchen) -> None:
    async with late.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        await press(pilot, "t", *"soon", "enter")
        assert "as 17:20" in late.shown()
        assert "17:00–17:20" in late.shown()


@pytest.mark.parametrize("key", ["n", "escape"])
async def test_none_of_it_says_nothing(late: Kitchen, key: str) -> None:
    async with late.app.run_test(size=(80, 24)) as pilot:
        await press(pilot, key)
        assert isinstance(late.app.screen, LiveScreen)
        assert not any(isinstance(event, StepsSaid) for event in late.host.evening.told)
        assert any(isinstance(event, CallRaised) for event in late.host.evening.told)


async def test_an_evening_that_goes_well_asks_nothing(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        assert isinstance(kitchen.app.screen, LiveScreen)
        await press(pilot, "y")
        assert isinstance(kitchen.app.screen, LiveScreen)
        assert "nothing should be done by now" in kitchen.shown()


async def test_after_a_long_absence_the_key_asks_again(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        kitchen.set("17:00")
        await press(pilot, "space")
        kitchen.set("18:50")
        await press(pilot, "y")
        assert isinstance(kitchen.app.screen, BehindScreen)
        assert "4 steps should be done by now" in kitchen.shown()
        await press(pilot, "enter")
        assert kitchen.status("sauce") == "finished"
