"""What every app around a board shares: its theme, its terminal, small screens that ctrl+q closes first, and an end
that is told apart: left by the host, by a signal, or fallen by a fault."""

import asyncio
import os
import signal
from contextlib import suppress
from dataclasses import dataclass
from typing import Any

from textual.app import App, ReturnType
from textual.driver import Driver
from textual.events import Event, Key
from textual.screen import ModalScreen
from textual.widgets import Input

from board.base.plain import one_line
from board.base.signals import ENDING, heard_in
from board.base.words import THEMES
from board.files.preferences import NO_COLOUR, first_theme
from board.screens.held import Held
from board.screens.palette import LOOKS, has_few_colours


@dataclass(frozen=True, slots=True)
class Fallen:
    """An app that fell: by what, and the note that was being typed, with the step it is about."""

    why: str
    note: tuple[str, str | None] | None = None


class DressedApp(App[ReturnType]):
    """`theme`: the one asked for; `remembered`: the one chosen last time. `ended_by`: the signal that ended it."""

    ENABLE_COMMAND_PALETTE = False

    def __init__(self, *, theme: str | None = None, remembered: str | None = None) -> None:
        environ = dict(os.environ)
        os.environ.pop(NO_COLOUR, None)  # Textual would turn the chosen theme grey
        super().__init__()
        self.first = first_theme(theme, remembered, environ, few_colours=has_few_colours(self))
        self._held = Held()
        self.fallen: Fallen | None = None
        self.ended_by: int | None = None

    def dress(self) -> None:
        """Sets the first theme; call before anything is shown."""
        for look in LOOKS.values():
            self.register_theme(look.theme)
        self.theme = self.first

    def get_theme_variable_defaults(self) -> dict[str, str]:
        """Of the first look, for a screen whose styles are read before a theme is worn."""
        return dict(LOOKS[THEMES[0]].theme.variables)

    def get_driver_class(self) -> type[Driver]:
        """Textual's own for a Unix terminal ends the app at a byte that is no UTF-8."""
        found = super().get_driver_class()
        if os.name == "nt":
            return found
        from board.screens.terminal import sturdy  # only here: it needs a Unix

        return sturdy(found)

    def send(self, sequence: str) -> None:
        """Writes a control sequence to the terminal, if there is one."""
        if not self.is_headless and self._driver is not None:
            self._driver.write(sequence)

    # --- how it ends -----------------------------------------------------------------------------------------
    async def run_async(self, **options: Any) -> ReturnType | None:
        """As Textual's, but a signal to end is an end in good order."""
        loop = asyncio.get_running_loop()
        before = {each: signal.getsignal(each) for each in (*ENDING, signal.SIGINT)}
        for each in before:
            heard_in(loop, each, self.end_by)
        try:
            return await super().run_async(**options)
        finally:
            for each, handler in before.items():
                with suppress(NotImplementedError):
                    loop.remove_signal_handler(each)
                signal.signal(each, handler)

    def end_by(self, number: int) -> None:
        self.ended_by = number
        self.exit()

    def hung_up(self) -> None:
        """The terminal is gone."""
        self.end_by(signal.SIGHUP)

    def fell(self, wrong: BaseException) -> None:
        """Keeps the first fault and what was being typed then."""
        if self.fallen is None:
            self.fallen = Fallen(one_line(f"{type(wrong).__name__}: {wrong}", 80), self.note_typed())

    def note_typed(self) -> tuple[str, str | None] | None:
        """The note being typed and the step it is about."""
        return None

    def _handle_exception(self, error: Exception) -> None:
        self.fell(error)
        super()._handle_exception(error)

    def panic(self, *renderables: Any) -> None:
        self.fell(RuntimeError("panic"))
        super().panic(*renderables)

    def _print_error_renderables(self) -> None:
        """Who opens it again says what is to be said; a traceback over the board helps nobody."""
        self._exit_renderables.clear()

    async def on_event(self, event: Event) -> None:
        """Capital letters are the same keys as small ones, except where a text is typed; a held key is one act. A
        screen that takes every key sees to both itself, once it is the key's turn."""
        if isinstance(event, Key) and not event.is_forwarded and not getattr(self.screen, "takes_every_key", False):
            in_text, moment = isinstance(self.focused, Input), event.time
            small = event.key.lower()
            if not in_text and len(small) == 1 and small != event.key:
                event = Key(small, small)
            figure = event.key.isdecimal() and getattr(self.screen, "types_figures", False)
            if self._held.repeats(event.key, moment, in_text=in_text or figure):
                return
        await super().on_event(event)

    async def action_help_quit(self) -> None:  # type: ignore[override]  # Textual awaits whatever is awaitable
        """Of ctrl+c where nothing is marked to be copied: it asks as ctrl+q does."""
        await self.run_action("quit")

    async def action_quit(self) -> None:
        """Over a smaller screen, closes that one first."""
        if isinstance(self.screen, ModalScreen):
            self.screen.dismiss(None)
        else:
            self.exit()
