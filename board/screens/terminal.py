"""The terminal as the screen library reads and writes it, so that nothing which comes in or goes wrong there ends an
app: bytes that are no UTF-8, sequences nobody knows, a terminal that went away."""

import os
import selectors
from codecs import getincrementaldecoder
from collections.abc import Callable
from contextlib import suppress
from functools import partial
from typing import IO, Any

from textual._xterm_parser import BRACKETED_PASTE_END, BRACKETED_PASTE_START, XTermParser
from textual.driver import Driver
from textual.drivers.linux_driver import LinuxDriver
from textual.events import Resize
from textual.message import Message
from textual.messages import InBandWindowResize

from board.base.clock import seconds_passed

SELECT_SECONDS = 0.1
ESCAPE = "\x1b"
PASTE_SECONDS = 2.0  # a paste that has said nothing for so long will not say that it is over


class Keys(XTermParser):
    """Keys, pastes and the mouse. What looks like them and cannot be read is left out."""

    # Only a sequence sets it, and one out of noise would bend every position of the mouse from then on.
    mouse_pixels = property(lambda self: False, lambda self, on: None)


def sturdy(usual: type[Driver]) -> type[Driver]:
    """In place of Textual's own for a Unix terminal, which ends an app at a byte that is no UTF-8."""
    return SturdyDriver if usual is LinuxDriver else usual


class SturdyDriver(LinuxDriver):
    """Reads with replacement and goes on after whatever cannot be understood. An app's `hung_up()` is called once when
    the terminal is gone."""

    def __init__(self, *args: Any, **options: Any) -> None:
        super().__init__(*args, **options)
        self._file = Writing(self._file, self._gone)  # type: ignore[assignment, arg-type]
        self._is_gone = False

    def _gone(self) -> None:
        if not self._is_gone:
            self._is_gone = True
            with suppress(RuntimeError):  # the loop has ended
                self._loop.call_soon_threadsafe(self._app.hung_up)  # type: ignore[attr-defined]

    def run_input_thread(self) -> None:
        decode = getincrementaldecoder("utf-8")("replace").decode
        reading = Reading(self.process_message)
        with selectors.SelectSelector() as selector:
            selector.register(self.fileno, selectors.EVENT_READ)
            while not self.exit_event.is_set():
                ready = selector.select(SELECT_SECONDS)
                try:
                    data = os.read(self.fileno, 4096) if ready else None
                except BlockingIOError:  # somebody who shares the terminal set it so
                    data = None
                except OSError:
                    data = b""
                if data == b"":
                    self._gone()
                    return
                reading.take(decode(data) if data else "")

    def process_message(self, message: Message) -> None:
        """Sizes are asked of the system: a sequence that names one may be noise."""
        if not isinstance(message, InBandWindowResize | Resize):
            super().process_message(message)


class Reading:
    """Text of a terminal → messages. Raises nothing."""

    def __init__(self, hand_on: Callable[[Message], None], now: Callable[[], float] = seconds_passed) -> None:
        self._hand_on = hand_on
        self._now = now
        self._keys = Keys()
        self._tail = ""
        self._pasting: float | None = None  # when a paste under way said something last
        self._pasted = ""

    def take(self, text: str) -> None:
        """What came in; nothing, to let what waits for more come to its end."""
        for sign in text:
            self._take(sign)
        if not text and self._pasting is not None and self._now() - self._pasting > PASTE_SECONDS:
            self._end_paste(self._pasted)
        self._each(self._keys.tick)

    def _take(self, sign: str) -> None:
        if self._pasting is None:
            self._tail = (self._tail + sign)[-len(BRACKETED_PASTE_START) :]
            self._each(lambda: self._keys.feed(sign))
            if self._tail == BRACKETED_PASTE_START:
                self._pasting, self._pasted = self._now(), ""
            return
        self._pasting = self._now()
        self._pasted += sign
        if self._pasted.endswith(BRACKETED_PASTE_END):
            self._end_paste(self._pasted.removesuffix(BRACKETED_PASTE_END))

    def _end_paste(self, text: str) -> None:
        """What was pasted is text, whatever sequences stand in it: none of them is a key."""
        self._pasting, self._pasted, self._tail = None, "", ""
        for sign in text.replace(ESCAPE, "") + BRACKETED_PASTE_END:
            self._each(partial(self._keys.feed, sign))

    def _each(self, found: Callable[[], Any]) -> None:
        try:
            for message in found():
                self._hand_on(message)
        except Exception:  # a parser that failed is of no more use
            self._keys = Keys()


class Writing:
    """A terminal's file that never raises, so that the thread which writes never dies; `gone` is called when it
    cannot be written any more."""

    def __init__(self, file: IO[str], gone: Callable[[], None]) -> None:
        self._file = file
        self._gone = gone

    def write(self, text: str) -> None:
        self._try(lambda: self._file.write(text))

    def flush(self) -> None:
        self._try(self._file.flush)

    def fileno(self) -> int:
        return self._file.fileno()

    def _try(self, act: Callable[[], object]) -> None:
        try:
            if not os.get_blocking(self._file.fileno()):
                os.set_blocking(self._file.fileno(), True)
            act()
        except (OSError, ValueError):
            self._gone()
