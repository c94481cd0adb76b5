"""How a call is heard: the terminal's bell. Tests hand in one that records."""

from collections.abc import Callable
from typing import Protocol


class Chime(Protocol):
    def ring(self) -> None: ...


class Bell:
    """The terminal's bell."""

    def __init__(self, ring: Callable[[], None]) -> None:
        self._ring = ring

    def ring(self) -> None:
        self._ring()
