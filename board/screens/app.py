"""The Textual app around an evening: theme, clock, leaving. No rules."""

import gc

from textual.app import App
from textual.screen import ModalScreen

from board.anew.advisor import Advisor
from board.clock import VirtualClock
from board.evening import Evening
from board.screens.chime import Bell, Chime
from board.screens.live import LiveScreen, PlanEye
from board.screens.palette import LANTERN
from board.timetable.changed import Changed


class BoardApp(App[None]):
    """The command board for one evening. `virtual` is the rehearsal's clock, None when it is real."""

    ENABLE_COMMAND_PALETTE = False

    def __init__(
        self,
        evening: Evening,
        *,
        virtual: VirtualClock | None = None,
        bell: bool = True,
        chime: Chime | None = None,
        greeting: str = "",
        advisor: Advisor | None = None,
        plan_eye: PlanEye | None = None,
        changed: Changed | None = None,
    ) -> None:
        super().__init__()
        self.advisor = advisor
        self.evening = evening
        self.virtual = virtual
        self.chime = chime or Bell(self.bell)
        self.greeting = greeting
        self.bell_on = bell
        self.plan_eye = plan_eye
        self.changed = changed

    def on_mount(self) -> None:
        self.register_theme(LANTERN)
        self.theme = LANTERN.name
        self.live = LiveScreen(
            self.evening,
            self.chime,
            self.virtual,
            on_leave=self.exit,
            bell=self.bell_on,
            greeting=self.greeting,
            advisor=self.advisor,
        )
        self.live.plan_eye, self.live.changed = self.plan_eye, self.changed
        self.push_screen(self.live)
        self.call_after_refresh(gc.enable)  # switched off by the command line while modules were loaded

    async def action_quit(self) -> None:
        """Leaving is asked for, even with ctrl+q; over a smaller screen it closes that one first."""
        if isinstance(self.screen, LiveScreen):
            self.screen.action_leave()
        elif isinstance(self.screen, ModalScreen):
            self.screen.dismiss(None)
        else:
            self.exit()
