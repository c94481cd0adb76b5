"""The clocks. The only place that reads the time; everything else is told.

Times are aware datetimes in UTC, so adding minutes to them is elapsed time in every zone and on every night.
"""

import time
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from typing import Protocol


class Clock(Protocol):
    """Something that knows what time it is for the evening."""

    def now(self) -> datetime:
        """The present, aware, in UTC."""
        ...


class WallClock:
    """The real time of day."""

    def now(self) -> datetime:
        return datetime.now(UTC)


class StoppedClock:
    """A clock that shows what it was set to; for tests and for plain runs."""

    def __init__(self, at: datetime) -> None:
        self._at = at.astimezone(UTC)

    def now(self) -> datetime:
        return self._at

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
