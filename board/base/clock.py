"""The clocks. The only place that reads the time; everything else is told.

Times are aware datetimes in UTC, so adding minutes to them is elapsed time in every zone and on every night.
"""

import time
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from typing import NamedTuple, Protocol

JUMP_SECONDS = 20.0  # less is a time server's small correction


class Jump(NamedTuple):
    """How many seconds the wall clock went further than time did; `slept` where that is a machine's sleep."""

    seconds: float
    slept: bool


class Clock(Protocol):
    """Something that knows what time it is for the evening."""

    def now(self) -> datetime:
        """The present, aware, in UTC."""
        ...

    def jumped(self) -> Jump | None:
        """By how much it jumped since it was asked this last; None where it went as time does."""
        ...


def _clock_that_counts_sleep() -> Callable[[], float] | None:
    """One that nobody sets and that goes on while the machine sleeps, where the system has it."""
    which = getattr(time, "CLOCK_BOOTTIME", None)
    return None if which is None else lambda: time.clock_gettime(which)


_COUNTS_SLEEP = _clock_that_counts_sleep()


class WallClock:
    """The real time of day, watched for jumps against two clocks that nobody sets."""

    def __init__(
        self,
        wall: Callable[[], float] = time.time,
        awake: Callable[[], float] = time.monotonic,
        with_sleep: Callable[[], float] | None = _COUNTS_SLEEP,
    ) -> None:
        """`awake` may stand still while the machine sleeps; `with_sleep` does not, where it can be had."""
        self._wall, self._awake, self._with_sleep = wall, awake, with_sleep or awake
        self._tells_sleep = with_sleep is not None
        self._last = self._read()

    def now(self) -> datetime:
        return datetime.fromtimestamp(self._wall(), UTC)

    def jumped(self) -> Jump | None:
        before, self._last = self._last, self._read()
        wall, awake, with_sleep = (b - a for a, b in zip(before, self._last, strict=True))
        if abs(wall - with_sleep) > JUMP_SECONDS:
            # Where no clock counts sleep, ahead is taken for sleep: what came due is called at once.
            return Jump(wall - with_sleep, not self._tells_sleep and wall > with_sleep)
        if wall - awake > JUMP_SECONDS:
            return Jump(wall - awake, True)
        return None

    def _read(self) -> tuple[float, float, float]:
        """The three at one moment: the process may be stopped between two of them, and then they are read again."""
        while True:
            before = self._awake(), self._with_sleep()
            wall = self._wall()
            after = self._awake(), self._with_sleep()
            if max(b - a for a, b in zip(before, after, strict=True)) < 1.0:
                return wall, *after


class StoppedClock:
    """A clock that shows what it was set to; for tests and for plain runs."""

    def __init__(self, at: datetime) -> None:
        self._at = at.astimezone(UTC)

    def now(self) -> datetime:
        return self._at

    def jumped(self) -> Jump | None:
        return None  # it is set on purpose

    def set(self, at: datetime) -> None:
        self._at = at.astimezone(UTC)


class VirtualClock:
    """A rehearsal's clock: starts where told, runs `speed` times as fast, can be paused and moved forward."""

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
        return None  # it runs by time alone, and stands still while the machine sleeps

    def _settle(self) -> None:
        self._anchor, self._since = self.now(), self._monotonic()

    def set_speed(self, speed: float) -> None:
        """From now on; kept between real time and FASTEST."""
        self._settle()
        self._speed = min(self.FASTEST, max(1.0, speed))

    def pause(self, paused: bool) -> None:
        self._settle()
        self._paused = paused

    def jump_to(self, at: datetime) -> None:
        """Forward only: a rehearsal never goes back over what was answered."""
        self._settle()
        self._anchor = max(self._anchor, at.astimezone(UTC))
