"""How a call sounds: strokes of the terminal's bell. Tests pass in a recorder."""

from collections.abc import Callable

STROKE_SECONDS = 0.35  # apart; terminals merge strokes that are closer


class Bell:
    """The terminal's bell. `later(seconds, do)` runs `do` after that long, without waiting for it."""

    def __init__(self, ring: Callable[[], None], later: Callable[[float, Callable[[], None]], object]) -> None:
        self._ring = ring
        self._later = later
        self._left = 0

    def ring(self, strokes: int = 1) -> None:
        """Rings `strokes` times; while ringing, the larger of `strokes` and the strokes left."""
        if self._left:
            self._left = max(self._left, strokes)
        elif strokes > 0:
            self._left = strokes
            self._stroke()

    def _stroke(self) -> None:
        self._ring()
        self._left -= 1
        if self._left > 0:
            self._later(STROKE_SECONDS, self._stroke)
