"""What every app around a board shares: its theme, and small screens that ctrl+q closes first."""

import os

from textual.app import App, ReturnType
from textual.events import Event, Key
from textual.screen import ModalScreen
from textual.widgets import Input

from board.base.words import THEMES
from board.files.preferences import NO_COLOUR, first_theme
from board.screens.palette import LOOKS, has_few_colours


class DressedApp(App[ReturnType]):
    """`theme`: the one asked for; `remembered`: the one chosen last time."""

    ENABLE_COMMAND_PALETTE = False

    def __init__(self, *, theme: str | None = None, remembered: str | None = None) -> None:
        environ = dict(os.environ)
        os.environ.pop(NO_COLOUR, None)  # Textual would turn the chosen theme grey
        super().__init__()
        self.first = first_theme(theme, remembered, environ, few_colours=has_few_colours(self))

    def dress(self) -> None:
        """Sets the first theme; call before anything is shown."""
        for look in LOOKS.values():
            self.register_theme(look.theme)
        self.theme = self.first

    def get_theme_variable_defaults(self) -> dict[str, str]:
        """Of the first look, for a screen whose styles are read before a theme is worn."""
        return dict(LOOKS[THEMES[0]].theme.variables)

    def send(self, sequence: str) -> None:
        """Writes a control sequence to the terminal, if there is one."""
        if not self.is_headless and self._driver is not None:
            self._driver.write(sequence)

    async def on_event(self, event: Event) -> None:
        """Capital letters are the same keys as small ones, except where a text is typed."""
        if isinstance(event, Key) and not event.is_forwarded and not isinstance(self.focused, Input):
            small = event.key.lower()
            if len(small) == 1 and small != event.key:
                event = Key(small, small)
        await super().on_event(event)

    async def action_quit(self) -> None:
        """Over a smaller screen, closes that one first."""
        if isinstance(self.screen, ModalScreen):
            self.screen.dismiss(None)
        else:
            self.exit()
