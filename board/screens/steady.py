"""Keeps keys from answering by accident: a bouncing key answers once, a key pressed as the call changes not at all."""

from textual.message_pump import MessagePump
from textual.timer import Timer

from board.evening.state import CallKey

SETTLE_SECONDS = 0.4


class Steady:
    """Whether keys may answer now; `pump` provides the time."""

    def __init__(self, pump: MessagePump) -> None:
        self._pump = pump
        self._timer: Timer | None = None
        self._stands: CallKey | None = None

    @property
    def is_bouncing(self) -> bool:
        """Whether it is too soon for a key to count."""
        return self._timer is not None

    def settle(self) -> None:
        """Makes keys answer nothing for a moment."""
        if self._timer is not None:
            self._timer.stop()
        self._timer = self._pump.set_timer(SETTLE_SECONDS, self.over)

    def over(self) -> None:
        """What is shown now has been seen."""
        self._timer = None

    def shows(self, key: CallKey | None) -> None:
        """Sets what answers go to. If it came up by itself, keys pause: one going down was meant for the last one."""
        if key is not None and key != self._stands:
            self.settle()
        self._stands = key

    def chose(self, key: CallKey) -> None:
        """The host asked for this one and expects it, so keys do not pause."""
        self._stands = key
