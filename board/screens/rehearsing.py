"""The rehearsal clock behind the board's keys: held, hurried, jumped forward. Each key says why it cannot work; on a
real evening, that time is real."""

from board.base import words as shared
from board.base.clock import VirtualClock
from board.screens import words
from board.view.present import Present

HURRIED = 3.0  # times real time


class Rehearsal:
    """`clock` is None on a real evening."""

    def __init__(self, clock: VirtualClock | None = None) -> None:
        self.clock = clock

    @property
    def is_on(self) -> bool:
        return self.clock is not None

    @property
    def is_hurried(self) -> bool:
        """Whether it is so fast that a board shown once a second would jump."""
        return self.clock is not None and self.clock.speed >= HURRIED

    def words(self) -> list[str]:
        """That this is a rehearsal, and its speed; nothing on a real evening."""
        if self.clock is None:
            return []
        return [shared.REHEARSAL, words.HELD if self.clock.paused else words.speed(self.clock.speed)]

    def begin(self) -> None:
        """Starts the clock, held until now so that no time passes while the board opens."""
        if self.clock is not None:
            self.clock.pause(False)

    def hold(self) -> str:
        """Holds the clock, or lets it run again."""
        if self.clock is None:
            return words.ONLY_REHEARSAL
        self.clock.pause(not self.clock.paused)
        return ""

    def hurry(self, times: float) -> str:
        """Multiplies its speed."""
        if self.clock is None:
            return words.ONLY_REHEARSAL
        self.clock.set_speed(self.clock.speed * times)
        return ""

    def jump(self, present: Present | None) -> str:
        """Jumps to the next call; not over one that waits."""
        if self.clock is None:
            return words.ONLY_REHEARSAL
        if present is not None and any(not call.silent for call in present.due):
            return words.A_CALL_WAITS
        coming = [call for call in present.coming if not call.silent] if present else []
        if not coming:
            return words.NOTHING_TO_JUMP
        self.clock.jump_to(coming[0].due)
        return ""
