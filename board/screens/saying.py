"""The row for messages: each stays until a key was pressed, or until another takes its place."""

from textual.timer import Timer

from board.screens import steady
from board.screens.panels import Wrapped


class Saying(Wrapped):
    """One row, two for a long message. What lasts, such as that the log cannot be written, stands before what was
    said."""

    _said = ("", False)
    _lasting = ""
    _new: Timer | None = None

    def say(self, text: str, *, grave: bool) -> None:
        """Shows a message. A key that goes down with it was not pressed by somebody who had read it."""
        self._said = (text, grave)
        if self._new is not None:
            self._new.stop()
        self._new = self.set_timer(steady.SETTLE_SECONDS, self._is_old)
        self._again()

    def read(self) -> None:
        """A key was pressed: what was said is gone, unless it has only just come."""
        if self._new is None:
            self._said = ("", False)
            self._again()

    def lasts(self, text: str) -> None:
        """Shows `text` for as long as it applies; if empty, what was said."""
        self._lasting = text
        self._again()

    def _is_old(self) -> None:
        self._new = None

    def _again(self) -> None:
        text, grave = (self._lasting, True) if self._lasting else self._said
        self.set_class(grave, "-grave")
        self.show(text)
