"""The Textual app around an evening: theme, clock, sounds, leaving. No rules."""

import gc
from collections.abc import Callable, Sequence

from board.base.clock import VirtualClock
from board.base.plain import one_line
from board.screens import words
from board.screens.ask import NoteScreen
from board.screens.chime import Bell
from board.screens.dressed import DressedApp, Fallen
from board.screens.live import LiveScreen
from board.screens.palette import next_theme
from board.screens.sharing import Page
from board.screens.speech import Speaker
from board.session.plan_watcher import PlanWatcher
from board.session.replan.advisor import Advisor
from board.session.session import Evening
from board.sheet.changed import Changed


class BoardApp(DressedApp[None]):
    """The command board of one evening. `virtual`: a rehearsal's clock, or None if the evening is real.

    `remember(name)` saves a theme and may raise OSError. `say` is the command that speaks the calls. `page`: for
    helpers' phones, served while the board runs. `fallen`: how the app before it ended, in whose place it is opened.
    """

    def __init__(
        self,
        evening: Evening,
        *,
        virtual: VirtualClock | None = None,
        bell: bool = True,
        chime: Bell | None = None,
        greeting: str = "",
        theme: str | None = None,
        remembered: str | None = None,
        remember: Callable[[str], None] | None = None,
        say: Sequence[str] | None = None,
        advisor: Advisor | None = None,
        plan_eye: PlanWatcher | None = None,
        changed: Changed | None = None,
        page: Page | None = None,
        fallen: Fallen | None = None,
    ) -> None:
        super().__init__(theme=theme, remembered=remembered)
        self.advisor = advisor
        self.evening = evening
        self.virtual = virtual
        self.chime = chime or Bell(self.bell, self.set_timer)
        self.before = fallen
        self.greeting = greeting if fallen is None else words.opened_in_place(fallen.why)
        self.bell_on = bell
        self.plan_eye = plan_eye
        self.changed = changed
        self.page = page
        self.remember = remember
        self.voice = Speaker(say, self._voice_failed) if say else None

    def on_mount(self) -> None:
        self.dress()
        self.live = LiveScreen(
            self.evening,
            self.chime,
            self.virtual,
            on_leave=self.exit,
            on_theme=self.step_theme,
            bell=self.bell_on,
            voice=self.voice,
            greeting=self.greeting,
            advisor=self.advisor,
            plan_eye=self.plan_eye,
            changed=self.changed,
            page=self.page,
        )
        self.push_screen(self.live)  # not waited for: what it pushes at once would be drawn before the theme is known
        if self.before is not None and self.before.note is not None:
            self.live.looking.go_on_noting(*self.before.note, self.greeting)
        self.call_after_refresh(self.live.sharing.begin)
        self.call_after_refresh(gc.enable)  # the command line switched it off while modules loaded

    async def on_unmount(self) -> None:
        if self.voice is not None:
            self.voice.stop()
        if self.page is not None:
            await self.page.end()

    def step_theme(self) -> str:
        """Switches to the next theme and saves it. Returns what to say: its name, or why it cannot be saved."""
        self.theme = next_theme(self.theme)
        try:
            if self.remember is not None:
                self.remember(self.theme)
        except OSError as wrong:
            return words.theme_not_kept(self.theme, one_line(wrong.strerror or wrong, 60))
        return words.theme_now(self.theme)

    def note_typed(self) -> tuple[str, str | None] | None:
        for screen in reversed(self.screen_stack):
            if type(screen) is NoteScreen:  # none of its kin, whose line is no note
                return screen.typed(), screen.slot
        return None

    def _voice_failed(self, said: str) -> None:
        self.live.say(said, grave=True)

    async def action_quit(self) -> None:
        """Asks before leaving, even with ctrl+q; over a smaller screen it closes that one first."""
        if isinstance(self.screen, LiveScreen):
            self.screen.action_leave()
        else:
            await super().action_quit()
