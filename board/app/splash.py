"""The first picture on a terminal, drawn with the standard library alone.

The screen library takes half a second to load. Until then, a host who reopens the board, say after the laptop died
during the evening, can already read which call is due. The board then draws over it.
"""

import os
import sys
from contextlib import suppress

from board.session.session import Evening
from board.view.board import Viewer
from board.view.first import first_lines

ENTER, LEAVE = "\x1b[?1049h\x1b[?25l\x1b[H\x1b[2J", "\x1b[?25h\x1b[?1049l"  # xterm's alternate screen, cursor hidden


class FirstPicture:
    """Draws on the terminal's alternate screen, as the board does, so that the host's own lines come back at the
    end."""

    def __init__(self) -> None:
        self._stream = sys.__stderr__  # where the board draws
        self._stands = False

    def draw(self, evening: Evening, mode: str) -> None:
        """Shows what is due now, if the terminal can. Raises nothing: no fault here may keep the board from opening."""
        stream = self._stream
        if stream is None or not stream.isatty():
            return
        with suppress(Exception):
            size = os.get_terminal_size(stream.fileno())
            lines = first_lines(Viewer(evening.sheet).view(evening.peek()), size.columns, size.lines, mode)
            stream.write(ENTER + "\r\n".join(lines))
            stream.flush()
            self._stands = True

    def leave(self) -> None:
        """Returns to the host's own lines, if the board did not open and do so itself."""
        if self._stands and self._stream is not None:
            with suppress(OSError, ValueError):
                self._stream.write(LEAVE)
                self._stream.flush()
            self._stands = False
