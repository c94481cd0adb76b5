"""What adds up on a dish's clock over its whole path, in whatever it is counted: stretches of a sheet that has its
times, or terms of one that has none yet. Pure.

Bench, room, carrying, table and buffet all count, and are added up: going back into the fridge stops a clock and does
not set it back. Cooking through begins a new one, for the cooked food. Oven, ring, fridge and a bath of water or ice do
not count; what cools or reheats there has rules of its own. Of several parts of a dish, the one that stood longest
counts.

Only what was raw begins anew. Heated again, by a step that reheats or by a second cooking, food keeps the minutes that
it stood since it was first cooked: some of what grows meanwhile leaves poisons that heat does not undo. That is the
safe side (FDA Food Code 3-501.19, from memory: what is held by time alone is eaten or thrown away, and no reheating
gives it more time).

What a step of another dish takes up as a dish's last (custard into a tart, chicken carried out with all the cold
dishes) is followed through that dish to the table; what else stood there before does not count for it. Where the host
says of the other dish that it does not spoil (`perishable: no`: platters on ice), their word covers what lies on it
too, as it does in `plan.taken_up`, but only while it lies there: the minutes before, and those at the table, count.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Generic, Protocol, TypeVar

from board.base.in_turn import in_turn
from board.sheet.run_sheet import SpoilClock

T = TypeVar("T")


class Passed(Protocol):
    """A piece of work that food passes through. `fresh`: it cooks through; `then`: ids of its successors."""

    @property
    def id(self) -> str: ...
    @property
    def kind(self) -> str: ...
    @property
    def dish(self) -> str | None: ...
    @property
    def course(self) -> str | None: ...
    @property
    def fresh(self) -> bool: ...
    @property
    def then(self) -> tuple[str, ...]: ...


class Counting(Protocol[T]):
    """In what it is counted. `nothing`: what has not stood out yet."""

    @property
    def nothing(self) -> T: ...

    def longest(self, parts: Sequence[T]) -> T:
        """Of one part or more, the one that stood longest."""
        ...

    def during(self, before: T, id_: str) -> T:
        """`before`, and the while that a piece of work lasts, where the food stands out meanwhile."""
        ...

    def kept(self, before: T, id_: str, taker: str) -> T:
        """`before`, and the while from its end until `taker` begins, where its result stands out meanwhile."""
        ...


@dataclass(frozen=True, slots=True)
class _Stood(Generic[T]):
    """How long what is raw stood, and what was cooked through, each of the part that stood longest; None: there is no
    such part."""

    raw: T | None = None
    cooked: T | None = None


class AddingUp(Generic[T]):
    """The paths of dishes through what they pass, from the kitchen to the table."""

    def __init__(self, passed: Iterable[Passed], counting: Counting[T]) -> None:
        self.counting = counting
        self.passed = {each.id: each for each in passed}
        self.before: dict[str, list[Passed]] = {}
        for each in self.passed.values():
            for other in each.then:
                self.before.setdefault(other, []).append(each)
        self.known: dict[str, _Stood[T]] = {}

    def until_served(self, clock: SpoilClock) -> T:
        """What a clock's dish has stood when its serving begins."""
        found = self._of_dish_before(clock, clock.serve, {})
        return self.counting.nothing if found is None else self._longest(found)

    def raw_until(self, id_: str) -> T:
        """What the raw part that stood longest had stood when a piece of work begins."""
        raw = self._taken_up(id_).raw
        return self.counting.nothing if raw is None else raw

    def _of_dish_before(self, clock: SpoilClock, taker: str, known: dict[str, _Stood[T] | None]) -> _Stood[T] | None:
        """What a clock's dish gives to be taken up there; None where that is nothing. `known`: answers by id."""
        found = [
            self._and_kept(stood, maker.id, taker)
            for maker in self._gives(clock, taker)
            if (stood := self._of_dish_in(clock, maker, known)) is not None
        ]
        return self._met(found) if found else None

    def _gives(self, clock: SpoilClock, taker: str) -> list[Passed]:
        """What may bring something of a clock's dish there."""
        return [
            maker
            for maker in self._makers(taker)
            if taker == clock.serve or not _is_of(maker, clock) or self._ends_in_others(maker, clock)
        ]

    def _of_dish_in(self, clock: SpoilClock, each: Passed, known: dict[str, _Stood[T] | None]) -> _Stood[T] | None:
        """What a clock's dish has in it, until its end, without what other dishes have in it."""
        if _is_of(each, clock):
            return self._through(each)

        def of_others(taker: str) -> list[str]:
            return [maker.id for maker in self._gives(clock, taker) if not _is_of(maker, clock)]

        for id_ in in_turn(each.id, of_others, known):
            before = self._of_dish_before(clock, id_, known)
            known[id_] = None if before is None else self._and_in(before, self.passed[id_])
        return known[each.id]

    def _ends_in_others(self, each: Passed, clock: SpoilClock) -> bool:
        """Whether its result goes into other dishes only; else `after` may say no more than what is done first."""
        takers = [self.passed[id_] for id_ in each.then if id_ in self.passed]
        return not any(taker.kind == "serve" or _is_of(taker, clock) for taker in takers)

    def _makers(self, taker: str) -> list[Passed]:
        """Whose results it takes up: steps of dishes, not jobs and dials."""
        return [each for each in self.before.get(taker, []) if each.kind == "step"]

    def _taken_up(self, id_: str) -> _Stood[T]:
        return self._met([self._and_kept(self._through(maker), maker.id, id_) for maker in self._makers(id_)])

    def _through(self, each: Passed) -> _Stood[T]:
        """Until its end."""
        for id_ in in_turn(each.id, lambda taker: [maker.id for maker in self._makers(taker)], self.known):
            self.known[id_] = self._and_in(self._taken_up(id_), self.passed[id_])
        return self.known[each.id]

    def _and_in(self, before: _Stood[T], each: Passed) -> _Stood[T]:
        """What it was when the work began, and the work. What was raw begins anew; what was cooked before goes on."""
        raw, cooked = before.raw, before.cooked
        if each.fresh:
            raw, cooked = None, self.counting.nothing if cooked is None else cooked
        during = self.counting.during
        return _Stood(*(None if stood is None else during(stood, each.id) for stood in (raw, cooked)))

    def _and_kept(self, before: _Stood[T], id_: str, taker: str) -> _Stood[T]:
        kept, both = self.counting.kept, (before.raw, before.cooked)
        return _Stood(*(None if stood is None else kept(stood, id_, taker) for stood in both))

    def _met(self, parts: list[_Stood[T]]) -> _Stood[T]:
        """Several parts in one; of nothing, something raw that has not stood out yet."""
        raw = [each.raw for each in parts if each.raw is not None]
        cooked = [each.cooked for each in parts if each.cooked is not None]
        if not raw and not cooked:
            return _Stood(raw=self.counting.nothing)
        longest = self.counting.longest
        return _Stood(longest(raw) if raw else None, longest(cooked) if cooked else None)

    def _longest(self, stood: _Stood[T]) -> T:
        return self.counting.longest([each for each in (stood.raw, stood.cooked) if each is not None])


def _is_of(each: Passed, clock: SpoilClock) -> bool:
    return (each.dish, each.course) == (clock.dish, clock.course)
