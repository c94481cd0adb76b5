"""How a call is heard: strokes of the terminal's bell."""

from collections.abc import Callable

STROKE_SECONDS = 0.35  # apart; closer together, terminals merge them into one


class Bell:
    """The terminal's bell. `later(seconds, do)` does something after so long, and does not wait for it."""

    def __init__(self, ring: Callable[[], None], later: Callable[[float, Callable[[], None]], object]) -> None:
        self._ring = ring
        self._later = later
        self._left = 0

    def ring(self, strokes: int = 1) -> None:
        """So many strokes; while some are still to come, the pattern only grows to what is asked."""
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
