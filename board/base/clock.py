"""The clocks. The only code that reads the time; all other code is passed it.

Times are aware datetimes in UTC, so adding minutes adds elapsed time in every zone and on every night.
"""

import time
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from typing import NamedTuple, Protocol

JUMP_SECONDS = 20.0  # anything less is a time server's small correction


def seconds_passed() -> float:
    """Since some moment in the past; stands still while the machine sleeps, on some systems."""
    return time.monotonic()


class Jump(NamedTuple):
    """Seconds by which the wall clock moved further than time did; `slept`: because the machine slept."""

    seconds: float
    slept: bool


class Clock(Protocol):
    """Tells the evening what time it is."""

    def now(self) -> datetime:
        """The present time, aware, in UTC."""
        ...

    def jumped(self) -> Jump | None:
        """The jump since the last call; None if there was none."""
        ...


def _clock_that_counts_sleep() -> Callable[[], float] | None:
    """A clock that cannot be set and runs during sleep, if the system has one."""
    which = getattr(time, "CLOCK_BOOTTIME", None)
    return None if which is None else lambda: time.clock_gettime(which)


_COUNTS_SLEEP = _clock_that_counts_sleep()


class WallClock:
    """The real time of day, checked for jumps against two clocks that cannot be set."""

    def __init__(
        self,
        wall: Callable[[], float] = time.time,
        awake: Callable[[], float] = time.monotonic,
        with_sleep: Callable[[], float] | None = _COUNTS_SLEEP,
    ) -> None:
        """`awake` may stop while the machine sleeps; `with_sleep`, if available, does not."""
        self._wall, self._awake, self._with_sleep = wall, awake, with_sleep or awake
        self._tells_sleep = with_sleep is not None
        self._last = self._read()

    def now(self) -> datetime:
        return datetime.fromtimestamp(self._wall(), UTC)

    def jumped(self) -> Jump | None:
        before, self._last = self._last, self._read()
        wall, awake, with_sleep = (b - a for a, b in zip(before, self._last, strict=True))
        if abs(wall - with_sleep) > JUMP_SECONDS:
            # If no clock counts sleep, a jump ahead is taken for sleep: overdue calls are raised at once.
            return Jump(wall - with_sleep, not self._tells_sleep and wall > with_sleep)
        if wall - awake > JUMP_SECONDS:
            return Jump(wall - awake, True)
        return None

    def _read(self) -> tuple[float, float, float]:
        """All three clocks at one moment. If the process was stopped in between, they are read again."""
        while True:
            before = self._awake(), self._with_sleep()
            wall = self._wall()
            after = self._awake(), self._with_sleep()
            if max(b - a for a, b in zip(before, after, strict=True)) < 1.0:
                return wall, *after


class StoppedClock:
    """A clock that shows the time it was set to; for tests and plain runs."""

    def __init__(self, at: datetime) -> None:
        self._at = at.astimezone(UTC)

    def now(self) -> datetime:
        return self._at

    def jumped(self) -> Jump | None:
        return None  # it is only set on purpose

    def set(self, at: datetime) -> None:
        self._at = at.astimezone(UTC)


class VirtualClock:
    """A rehearsal's clock: starts at a given time, runs `speed` times as fast, can pause and jump forward."""

    FASTEST = 240.0

    def __init__(self, at: datetime, speed: float = 10.0, monotonic: Callable[[], float] = time.monotonic) -> None:
        self._monotonic = monotonic
        self._anchor = at.astimezone(UTC)
        self._since = monotonic()
        self._speed = speed
        self._paused = False

    @property
    def speed(self) -> float:
        return self._speed

    @property
    def paused(self) -> bool:
        return self._paused

    def now(self) -> datetime:
        if self._paused:
            return self._anchor
        return self._anchor + timedelta(seconds=(self._monotonic() - self._since) * self._speed)

    def jumped(self) -> Jump | None:
        return None  # it only counts elapsed time, and stops while the machine sleeps

    def _settle(self) -> None:
        self._anchor, self._since = self.now(), self._monotonic()

    def set_speed(self, speed: float) -> None:
        """Takes effect now; limited to 1 (real time) to FASTEST."""
        self._settle()
        self._speed = min(self.FASTEST, max(1.0, speed))

    def pause(self, paused: bool) -> None:
        self._settle()
        self._paused = paused

    def jump_to(self, at: datetime) -> None:
        """Forward only: a rehearsal never goes back before an answer."""
        self._settle()
        self._anchor = max(self._anchor, at.astimezone(UTC))
