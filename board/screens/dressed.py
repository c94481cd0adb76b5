"""What every app around a board shares: the theme it wears, and small screens that ctrl+q closes first."""

import os

from textual.app import App, ReturnType
from textual.screen import ModalScreen

from board.files.preferences import NO_COLOUR, first_theme
from board.screens.palette import LOOKS, has_few_colours


class DressedApp(App[ReturnType]):
    """`theme` was asked for, `remembered` is the one last chosen."""

    ENABLE_COMMAND_PALETTE = False

    def __init__(self, *, theme: str | None = None, remembered: str | None = None) -> None:
        environ = dict(os.environ)
        os.environ.pop(NO_COLOUR, None)  # the screen library would turn a theme that was asked for grey
        super().__init__()
        self.first = first_theme(theme, remembered, environ, few_colours=has_few_colours(self))

    def dress(self) -> None:
        """Wears the first theme; to be called before anything is shown."""
        for look in LOOKS.values():
            self.register_theme(look.theme)
        self.theme = self.first

    async def action_quit(self) -> None:
        """Over a smaller screen it closes that one first."""
        if isinstance(self.screen, ModalScreen):
            self.screen.dismiss(None)
        else:
            self.exit()
