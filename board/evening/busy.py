"""One pair of hands does one thing at a time. Pure; moments in whatever unit the caller counts.

Work begins when its hands are free for it. For a look-in, or the end of a step, they leave what they are at, which then
takes so much longer. Between the kitchen and the table they walk.
"""

from bisect import bisect_right
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from typing import Any, Generic, Protocol, TypeVar

from board.evening.order import Node


class Moment(Protocol):
    """A float or an array of floats."""

    def __add__(self, other: Any, /) -> Any: ...
    def __sub__(self, other: Any, /) -> Any: ...


T = TypeVar("T", bound=Moment)


@dataclass(frozen=True, slots=True)
class Reckoning(Generic[T]):
    """How one caller reckons with its moments, floats or arrays of them, none below 0. `bounds`: the least and the
    greatest."""

    latest: Callable[[Sequence[Any]], T]
    some: Callable[[Any], bool]
    bounds: Callable[[Any], tuple[float, float]]


FLOATS: Reckoning[float] = Reckoning(max, bool, lambda one: (one, one))


@dataclass(slots=True)  # not frozen, which would take thrice as long to make; never changed
class Stretch(Generic[T]):
    """Hands on a slot, from its start or at its end (`node`). `length`: of a look-in or an end, which other work gives
    way to; else None. `to_end`: until the slot ends.

    `wanted`: the earliest it could have begun had the hands been free; `low`, `high`: all of it lies between.
    """

    node: Node
    begin: T
    over: T
    length: Any
    to_end: bool
    front: bool
    wanted: float
    low: float
    high: float


@dataclass(slots=True)
class Hands(Generic[T]):
    """One person's stretches so far; `walk` lies between one at the table and one in the kitchen."""

    walk: float
    reckon: Reckoning[T]
    taken: list[Stretch[T]] = field(default_factory=list)  # by `high`
    highs: list[float] = field(default_factory=list)

    def take(self, stretch: Stretch[T]) -> None:
        at = bisect_right(self.highs, stretch.high)
        self.highs.insert(at, stretch.high)
        self.taken.insert(at, stretch)

    def free(self, ready: Any, length: Any, front: bool) -> tuple[Any, Any]:
        """When work that is ready begins, and how much longer it takes for what it gives way to."""
        start = ready
        while True:
            longer = self.longer(start, length, front)
            over = start + length + longer
            held = False
            for each, begin, end in self._near(start, over, front):
                hit = (start < end) & (begin < over if each.length is None else begin <= start)
                if self.reckon.some(hit):
                    start = self.reckon.latest([start, hit * end])
                    held = True
            if not held:
                return start, longer

    def longer(self, start: Any, length: Any, front: bool) -> Any:
        """How much longer work takes that begins then, for the looks and ends that come in the midst of it."""
        longer: Any = 0.0
        while True:
            over = start + length + longer
            more: Any = 0.0
            for each, begin, _ in self._near(start, over, front, briefly=True):
                within = (start < begin) & (begin < over)
                if self.reckon.some(within):
                    away = 0.0 if each.front == front else self.walk
                    more = more + within * (each.length + 2 * away)
            if more is longer or not self.reckon.some(more > longer):
                return longer
            longer = more

    def free_briefly(self, due: Any, length: Any, front: bool) -> Any:
        """When a look-in or an end that is due comes about: at once, but for what was there before it."""
        start, held = due, True
        while held:
            over = start + length
            held = False
            for _, begin, end in self._near(start, over, front):
                hit = (start < end) & (begin < over)
                if self.reckon.some(hit):
                    start = self.reckon.latest([start, hit * end])
                    held = True
        return start

    def _near(
        self, start: Any, over: Any, front: bool, *, briefly: bool = False
    ) -> Iterator[tuple[Stretch[T], Any, Any]]:
        """What is not over before, nor begins after, in each and every evening; and from when to when it keeps other
        work off, the walk included."""
        first, last = self.reckon.bounds(start)[0], self.reckon.bounds(over)[1]
        for each in self.taken[bisect_right(self.highs, first - self.walk) :]:
            if briefly and each.length is None:
                continue
            away = 0.0 if each.front == front else self.walk
            if each.high + away > first and each.low - away < last:
                yield (each, each.begin - away, each.over + away) if away else (each, each.begin, each.over)


def together(several: Sequence[Hands[T]]) -> Hands[T]:
    """Several people as one pair of hands, which is at whatever any of them is at; what they do together is there once.
    Only to be asked: they are `take`n one by one."""
    first, *others = several
    if not others:
        return first
    found = Hands(first.walk, first.reckon)
    for stretch in {id(each): each for hands in several for each in hands.taken}.values():
        found.take(stretch)
    return found
