"""Things that wait for one another, each after those it waits for. In place of a function that calls itself, which a
long row of steps would take past the end of Python's stack. Pure."""

from collections.abc import Callable, Container, Hashable, Iterable, Iterator
from typing import TypeVar

K = TypeVar("K", bound=Hashable)


def in_turn(last: K, before: Callable[[K], Iterable[K]], known: Container[K]) -> Iterator[K]:
    """All that `last` waits for and is not known yet, and `last` itself. Each is to be known before the next is asked
    for. Nothing may wait for itself."""
    waiting = [last] if last not in known else []
    while waiting:
        unknown = next((each for each in before(waiting[-1]) if each not in known), None)
        if unknown is None:
            yield waiting.pop()
        else:
            waiting.append(unknown)
