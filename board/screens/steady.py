"""A key that bounces answers once, and one on its way down as the call changes answers nothing."""

from textual.message_pump import MessagePump
from textual.timer import Timer

from board.evening.state import CallKey

SETTLE_SECONDS = 0.4


class Steady:
    """Whether keys may answer at this moment; `pump` keeps the time."""

    def __init__(self, pump: MessagePump) -> None:
        self._pump = pump
        self._timer: Timer | None = None
        self._stands: CallKey | None = None

    @property
    def is_bouncing(self) -> bool:
        """Too soon for a key to mean anything."""
        return self._timer is not None

    def settle(self) -> None:
        """For a moment from now keys answer nothing."""
        if self._timer is not None:
            self._timer.stop()
        self._timer = self._pump.set_timer(SETTLE_SECONDS, self.over)

    def over(self) -> None:
        """What stands there now has been seen."""
        self._timer = None

    def shows(self, key: CallKey | None) -> None:
        """What answers go to now; if it came up by itself, a key on its way down was meant for what stood before."""
        if key is not None and key != self._stands:
            self.settle()
        self._stands = key

    def chose(self, key: CallKey) -> None:
        """The host asked for this one to be shown, and expects it."""
        self._stands = key
