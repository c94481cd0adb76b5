"""The one rule for what moves when something slips. Pure; moments in whatever unit the caller counts.

A slot starts when the sheet says or when its last wait is over, whichever is later. A wait for hands is void if the
slot that has the hands first moves so late that the other fits in before it.

Two callers: the forecast plays one evening with floats; the odds play many at once with arrays, one place an evening.
"""

from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from types import MappingProxyType
from typing import Any, Generic, Protocol, TypeVar

from board.sheet.run_sheet import HANDS, ORDER, Dependency, Slot
from board.sheet.slack import READY

Pair = tuple[str, str]  # a slot, and one it waits for
NEVER = float("-inf")


class Moment(Protocol):
    """A float or an array of floats."""

    def __add__(self, other: Any, /) -> Any: ...
    def __gt__(self, other: Any, /) -> Any: ...
    def __ge__(self, other: Any, /) -> Any: ...


T = TypeVar("T", bound=Moment)


@dataclass(frozen=True, slots=True)
class Going(Generic[T]):
    """An evening's inputs, by slot: the earliest start and the length.

    `known`: start and end of what has started. `left_out`: takes no time; its successors wait for its predecessors
    instead. `sits`: by pair, a wait after an end that differs from the sheet's.
    """

    earliest: Mapping[str, T]
    lasts: Mapping[str, T]
    known: Mapping[str, tuple[T, T]] = field(default_factory=lambda: MappingProxyType({}))
    left_out: Collection[str] = frozenset()
    sits: Mapping[Pair, T] = field(default_factory=lambda: MappingProxyType({}))


@dataclass(frozen=True, slots=True)
class Times(Generic[T]):
    """Each slot's start and end."""

    start: dict[str, T]
    end: dict[str, T]


@dataclass(frozen=True, slots=True)
class Played(Generic[T]):
    """An evening played to its end. `void`: what is added to a pair's wait for hands, `NEVER` where it is void.

    `plain`: times with every wait kept; `alone`: times with no waits for hands, or None if nobody was held up.
    """

    times: Times[T]
    void: Mapping[Pair, T]
    plain: Times[T]
    alone: Times[T] | None


class Rule(Generic[T]):
    """Plays evenings by one sheet. `slots` are in the run sheet's order.

    `moment` turns a time into the caller's unit, of which `minute` make a minute; `latest` is the greatest of several;
    `when` turns a condition into what voids a wait: `NEVER` where it holds, 0 where not, None if it holds nowhere.
    """

    def __init__(
        self,
        slots: Sequence[Slot],
        moment: Callable[[datetime], float],
        minute: float,
        latest: Callable[[Sequence[Any]], T],
        when: Callable[[Any], T | None],
    ) -> None:
        self.slots = slots
        self.minute = minute
        self.latest = latest
        self.when = when
        self.planned = {s.id: moment(s.start) for s in slots}
        self.length = {s.id: moment(s.end) - moment(s.start) for s in slots}
        self.hand_pairs = tuple(dict.fromkeys((s.id, w.after) for s in slots for w in s.waits if w.reason == HANDS))
        self.no_hands: Mapping[Pair, float] = dict.fromkeys(self.hand_pairs, NEVER)
        self.whole = frozenset(s.id for s in slots if s.whole)
        # How long a slot needs hands from its start on.
        self.hands_on = {
            s.id: sum(moment(p.end) - moment(p.start) for p in s.attended if p.start == s.start) for s in slots
        }

    def play(self, going: Going[T]) -> Played[T]:
        """Starts and ends by the whole rule."""
        plain = self.forward(going, {})
        pairs = self._open_pairs(going)
        if not any(self.when(plain.start[first] > self.planned[first]) is not None for _, first in pairs):
            return Played(plain, {}, plain, None)
        alone = self.forward(going, self.no_hands)
        void = {pair: off for pair in pairs if (off := self.fits_before(pair, going, plain, alone)) is not None}
        return Played(self.forward(going, void) if void else plain, void, plain, alone)

    def forward(self, going: Going[T], void: Mapping[Pair, Any]) -> Times[T]:
        """Starts and ends with the waits in `void` voided."""
        times: Times[T] = Times({}, {})
        for slot in self.slots:
            self.place(slot, going, void, times)
        return times

    def place(self, slot: Slot, going: Going[T], void: Mapping[Pair, Any], times: Times[T]) -> None:
        """Sets one slot's start and end from those of what it waits for."""
        id_ = slot.id
        if id_ in going.known:
            times.start[id_], times.end[id_] = going.known[id_]
        elif id_ in going.left_out:
            ready = [over for wait, over in self.over(slot, going, void, times) if wait.reason == ORDER]
            times.start[id_] = times.end[id_] = self.latest(ready) if ready else going.earliest[id_]
        else:
            waits = [over for _, over in self.over(slot, going, void, times)]
            times.start[id_] = self.latest([going.earliest[id_], *waits])
            times.end[id_] = times.start[id_] + going.lasts[id_]

    def over(
        self, slot: Slot, going: Going[T], void: Mapping[Pair, Any], times: Times[T]
    ) -> Iterator[tuple[Dependency, T]]:
        """A slot's waits, and when each is over. What is merely best ready before does not hold the slot up."""
        for wait in slot.waits:
            if wait.reason == READY:
                continue
            pair = (slot.id, wait.after)
            over: Any = times.end[wait.after] if wait.anchor == "end" else times.start[wait.after]
            if wait.anchor == "end" and pair in going.sits:
                over = over + going.sits[pair]
            elif wait.minutes:
                over = over + wait.minutes * self.minute
            if wait.reason == HANDS and pair in void:
                over = over + void[pair]
            yield wait, over

    def _open_pairs(self, going: Going[T]) -> list[Pair]:
        """Pairs whose first slot has not started, so that the second may still go before it."""
        return [p for p in self.hand_pairs if p[1] not in going.known and p[1] not in going.left_out]

    def fits_before(self, pair: Pair, going: Going[T], plain: Times[T], alone: Times[T]) -> T | None:
        """What voids a wait for hands: without such waits, the second slot is done before the first needs them."""
        second, first = pair
        hands_on: Any = going.lasts[second] if second in self.whole else self.hands_on[second]
        return self.when(plain.start[first] >= alone.start[second] + hands_on)
