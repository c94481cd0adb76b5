"""How a call is heard. The terminal's bell, or nothing; tests record."""

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


class Silent:
    def ring(self) -> None:
        pass
