"""A lamp that is seen when the board is not: the call and its minutes in the terminal's title, and a notification.

Sequences: OSC 2 sets the title (xterm, Control Sequences, "Operating System Commands"); OSC 9 notifies in iTerm2 and
those that follow it, OSC 777 in rxvt-unicode and those that follow it.
"""

from collections.abc import Callable, Mapping

from board.base.plain import one_line
from board.files.preferences import notifies
from board.screens import words
from board.view.board import BoardView
from board.view.wrap_words import cut

TITLE_CELLS = 60


class Lamp:
    """`write` sends a sequence to the terminal. The title it had comes back at the end (XTWINOPS 22 and 23)."""

    def __init__(self, write: Callable[[str], None], environ: Mapping[str, str]) -> None:
        self._write = write
        self._how = notifies(environ)
        self._title = ""

    def shows(self, view: BoardView) -> None:
        """The title, written only where it changed."""
        title = cut(one_line(_title(view)), TITLE_CELLS)
        if title != self._title:
            self._write("" if self._title else "\x1b[22;2t")
            self._title = title
            self._write(f"\x1b]2;{title}\x07")

    def out(self) -> None:
        """Gives the terminal its own title back."""
        if self._title:
            self._write("\x1b[23;2t")

    def notify(self, headline: str) -> None:
        """One notification, where the terminal is known to understand it. It begins with a word, for a figure and a
        semicolon would be a command of another kind."""
        said = cut(one_line(words.notified(headline)).replace(";", ","), TITLE_CELLS)
        if self._how == "9":
            self._write(f"\x1b]9;{said}\x07")
        elif self._how == "777":
            self._write(f"\x1b]777;notify;{words.PROGRAM};{said}\x07")


def _title(view: BoardView) -> str:
    if view.due:
        call = view.due[0]
        return words.title_of_call(call.headline, call.waits, len(view.due) - 1)
    told = view.course.told if view.course is not None else ""
    return words.title_of_quiet(view.headline, told)
