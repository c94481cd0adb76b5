"""What the board says when clock or plan do not behave, by Pilot."""

import pytest

from board.base.clock import Jump
from board.screens import words
from board.screens.app import BoardApp
from board.screens.changed import ChangedScreen
from board.session.plan_watcher import PlanWatcher
from board.sheet.changed import Changed
from tests.conftest import at, slot
from tests.screens.conftest import Kitchen

SIZE = (80, 24)
EDITED = Changed(added=(slot("salad [b]", "18:00", "18:10"),))


class Eye(PlanWatcher):
    """Tells what it was given, once."""

    def __init__(self, found: Changed | None) -> None:
        self.found = found
        self._working = None

    def look(self) -> Changed | None:
        found, self.found = self.found, None
        return found


async def test_a_jump_of_the_clock_is_shown_for_a_while(kitchen: Kitchen, monkeypatch: pytest.MonkeyPatch) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        jumps = iter([Jump(3600, slept=False)])
        monkeypatch.setattr(kitchen.host.clock, "jumped", lambda: next(jumps, None))

        kitchen.set("17:58")
        await pilot.pause()
        assert "The clock was set ahead by 1 h 00" in kitchen.shown()
        kitchen.set("18:01")
        await pilot.pause()

        assert "The clock was set" not in kitchen.shown()


async def test_opened_again_with_an_edited_plan_the_board_says_what_changed_and_goes_on(kitchen: Kitchen) -> None:
    app = kitchen.app = BoardApp(kitchen.host.evening, chime=kitchen.chime, changed=EDITED)
    async with app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.pause()
        assert isinstance(app.screen, ChangedScreen)
        assert "+ salad [b], 18:00–18:10" in kitchen.shown()
        assert words.PLAN_GO_ON in kitchen.shown()

        await pilot.press("enter")
        await pilot.pause()

        assert app.screen is app.live


async def test_an_edit_meanwhile_waits_for_the_call_that_is_due(
    kitchen: Kitchen, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("board.screens.plan_changes.SOON_SECONDS", 0.05)
    app = kitchen.app = BoardApp(kitchen.host.evening, chime=kitchen.chime, plan_eye=Eye(EDITED))
    async with app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        kitchen.set("17:00")
        app.live.plan_news.look()
        await pilot.pause(0.2)
        assert app.screen is app.live

        await pilot.press("space")
        await pilot.pause(0.3)

        assert isinstance(app.screen, ChangedScreen)


async def test_a_fault_while_looking_at_the_plan_never_ends_the_board(kitchen: Kitchen) -> None:
    class Broken(Eye):
        def look(self) -> Changed | None:
            raise ZeroDivisionError("for a test")

    app = kitchen.app = BoardApp(kitchen.host.evening, chime=kitchen.chime, plan_eye=Broken(None))
    async with app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        app.live.plan_news.look()
        await pilot.pause()

        assert "for a test" in kitchen.shown()
        assert kitchen.host.evening.now() == at("16:58")
