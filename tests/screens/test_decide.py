"""A step with a question: a call with two answers, either taken back; looked back on, and counted in lessons."""

import msgspec
import pytest

from board.evening.events import EveningOpened, StepLeftOut, StepStarted
from board.review.measure import measured
from board.review.observe import observe
from board.sheet.run_sheet import RunSheet
from board.view.closing import closing, decided_words
from tests.screens.conftest import Kitchen


@pytest.fixture
def asking(little: RunSheet) -> Kitchen:
    slots = tuple(
        msgspec.structs.replace(slot, question="thin it?") if slot.id == "chop" else slot for slot in little.slots
    )
    return Kitchen(msgspec.structs.replace(little, slots=slots), "16:58")


@pytest.mark.parametrize(
    ("key", "status", "event"), [("space", "under-way", StepStarted), ("x", "left-out", StepLeftOut)]
)
async def test_it_asks_and_either_answer_can_be_taken_back(
    asking: Kitchen, key: str, status: str, event: type[StepStarted | StepLeftOut]
) -> None:
    async with asking.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        asking.set("17:00")
        await pilot.pause()
        call = asking.app.live.chosen_call
        assert call is not None
        assert call.headline == "Thin it?"
        assert "space yes" in asking.shown()
        assert "x no" in asking.shown()
        assert "leave out" not in asking.shown()

        await pilot.press(key)
        await pilot.pause()
        assert asking.status("chop") == status
        assert isinstance(asking.host.evening.state.history[-1], event)

        asking.app.live.steady.over()
        await pilot.press("u")
        await pilot.pause()
        assert asking.status("chop") in ("to-come", "called")
        assert "Thin it?" in str(asking.app.live.chosen_call)


@pytest.mark.parametrize(("key", "yes"), [("space", True), ("x", False)])
async def test_its_answer_is_looked_back_on_and_is_no_step_left_out(asking: Kitchen, key: str, yes: bool) -> None:
    async with asking.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        asking.set("17:00")
        await pilot.pause()
        await pilot.press(key)
        await pilot.pause()

    evening = asking.host.evening
    opened = evening.told[0]
    assert isinstance(opened, EveningOpened)
    review, past = measured(evening.state, opened), observe(opened, evening.state.history)
    assert review.decided() == [("thin it?", yes)]
    assert review.left_out() == []
    assert decided_words(review) == [f"thin it? {'yes' if yes else 'no'}"]
    assert any("Decided" in text for line in closing(review, 80) for text, _ in line)
    assert [(question, answer) for _, question, answer in past.decided] == [("thin it?", yes)]
