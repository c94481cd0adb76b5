"""A held key is one act: the first counts, every repeat begins the wait anew, and one `u` takes it back."""

import asyncio

import pytest
from textual.widgets import Input

from board.evening.events import CallPutOff, NoteWritten, TakenBack
from board.screens import held
from board.screens.held import Held
from board.sheet.run_sheet import RunSheet
from tests.screens.conftest import Kitchen


@pytest.fixture(autouse=True)
def _keys_may_be_held(monkeypatch: pytest.MonkeyPatch, _keys_never_bounce: None) -> None:
    monkeypatch.setattr(held, "HELD_SECONDS", 0.7)


RATES = [(0.25, 0.02), (0.5, 0.033), (0.66, 0.04), (0.5, 0.5)]  # seconds until the first repeat, then between two


@pytest.mark.parametrize(("first", "then"), RATES)
def test_of_a_held_key_only_the_first_counts(first: float, then: float) -> None:
    keys = Held()
    moments = [0.0, *(first + number * then for number in range(100))]

    acts = [moment for moment in moments if not keys.repeats("space", moment, in_text=False)]

    assert acts == [0.0]
    assert keys.repeats("space", moments[-1] + 0.69, in_text=False)
    assert not keys.repeats("space", moments[-1] + 0.69 + 0.71, in_text=False)


def test_another_key_counts_at_once_and_moving_may_be_held() -> None:
    keys = Held()

    assert not keys.repeats("space", 0.0, in_text=False)
    assert not keys.repeats("l", 0.05, in_text=False)
    assert not any(keys.repeats("down", 0.1 + number / 30, in_text=False) for number in range(30))


def test_in_a_line_of_text_a_letter_may_repeat_but_not_the_one_that_opened_it() -> None:
    keys = Held()

    assert not keys.repeats("n", 0.0, in_text=False)
    assert all(keys.repeats("n", 0.5 + number / 30, in_text=True) for number in range(30))
    assert not keys.repeats("e", 2.0, in_text=True)
    assert not keys.repeats("e", 2.1, in_text=True)


@pytest.fixture
def _slow_machine(monkeypatch: pytest.MonkeyPatch) -> None:
    """What a press takes here, which may be long on a busy machine, is no time that a key was up."""
    monkeypatch.setattr(held, "HELD_SECONDS", 60.0)


@pytest.mark.usefixtures("_slow_machine")
async def test_a_held_space_answers_one_call_and_one_u_takes_it_back(little: RunSheet) -> None:
    kitchen = Kitchen(little, "16:58")
    async with kitchen.app.run_test(size=(100, 30)) as pilot:
        await pilot.pause()
        kitchen.set("18:40")  # several calls wait

        for _ in range(12):
            await pilot.press("space")
            await asyncio.sleep(0.03)
        answered = [event for event in kitchen.host.evening.told if event.n > 1]
        one = len([each for each in answered if type(each).__name__ in ("StepStarted", "StepFinished", "LookedIn")])
        for _ in range(12):
            await pilot.press("u")
        back = [event for event in kitchen.host.evening.told if isinstance(event, TakenBack)]

        assert one in (1, 2)  # an end and the start after it may be one act
        assert len(back) == 1


@pytest.mark.usefixtures("_slow_machine")
async def test_a_held_l_puts_off_once_and_a_held_n_opens_an_empty_note(little: RunSheet) -> None:
    kitchen = Kitchen(little, "16:58")
    async with kitchen.app.run_test(size=(100, 30)) as pilot:
        await pilot.pause()
        kitchen.set("17:02")
        for _ in range(12):
            await pilot.press("l")
        for _ in range(12):
            await pilot.press("n")

        assert kitchen.app.screen.query_one(Input).value == ""
        assert len([event for event in kitchen.host.evening.told if isinstance(event, CallPutOff)]) == 1
        await pilot.press(*"all", "enter")
        await pilot.pause()
        assert isinstance(kitchen.host.evening.told[-1], NoteWritten)
