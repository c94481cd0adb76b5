"""The one rule for what moves when something slips. Pure; moments in whatever unit the caller counts.

A slot starts when the sheet says or when its last wait is over, whichever is later, and no sooner than its hands are
free. They go by the sheet's order; what moves late lets other work go first that is done by then. Looks and ends come
when they are due, and what the hands are at meanwhile takes longer (`busy`).

Two callers: the forecast plays one evening with floats; the odds play many at once with arrays, one place an evening.
"""

from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from types import MappingProxyType
from typing import Any, Generic

from board.evening.busy import Hands, Reckoning, Stretch, T, together
from board.evening.hands import Wanted, wanted
from board.evening.order import Node, in_order
from board.sheet.company import FRONT_OF_HOUSE
from board.sheet.run_sheet import HANDS, ORDER, Dependency, Slot
from board.sheet.slack import READY

Pair = tuple[str, str]  # a slot, and one it waits for
NEVER = float("-inf")


@dataclass(frozen=True, slots=True)
class Going(Generic[T]):
    """An evening's inputs, by slot: the earliest start and the length.

    `known`: start and end of what is over. `begun`: start of what is under way, and the moment it ends no sooner than.
    `left_out`: takes no time; its successors wait for its predecessors instead. `sits`: by pair, a wait after an end
    that differs from the sheet's.
    """

    earliest: Mapping[str, T]
    lasts: Mapping[str, T]
    known: Mapping[str, tuple[T, T]] = field(default_factory=lambda: MappingProxyType({}))
    begun: Mapping[str, tuple[T, T]] = field(default_factory=lambda: MappingProxyType({}))
    left_out: Collection[str] = frozenset()
    sits: Mapping[Pair, T] = field(default_factory=lambda: MappingProxyType({}))


@dataclass(frozen=True, slots=True)
class Played(Generic[T]):
    """An evening played to its end: each slot's start and end, how much longer its hands took for what they gave way
    to, and everybody's stretches, by person and by what they began with."""

    start: dict[str, T]
    end: dict[str, T]
    longer: dict[str, Any]
    hands: dict[str, Hands[T]]
    stretches: dict[Node, tuple[Stretch[T], ...]]


class Rule(Generic[T]):
    """Plays evenings by one sheet. `slots` are in the run sheet's order.

    `moment` turns a time into the caller's unit, of which `minute` make a minute.
    """

    def __init__(
        self, slots: Sequence[Slot], moment: Callable[[datetime], float], minute: float, reckon: Reckoning[T]
    ) -> None:
        self.minute = minute
        self.reckon = reckon
        self.planned = {s.id: moment(s.start) for s in slots}
        self.length = {s.id: moment(s.end) - moment(s.start) for s in slots}
        self.wanted = {s.id: each for s in slots if (each := wanted(s, minute)) is not None}
        self.walk = minute * _walk(slots)
        self.waits = {s.id: tuple(w for w in s.waits if w.reason not in (READY, HANDS)) for s in slots}
        self.nodes = in_order(slots, self.wanted)

    def play(self, going: Going[T]) -> Played[T]:
        """Starts and ends by the whole rule."""
        played = self.blank()
        self._what_is_known(going, played)
        for node in self.nodes:
            if node[0] not in going.known and node[0] not in going.begun:
                self.place(node, going, played)
        return played

    def blank(self) -> Played[T]:
        people = {who for wants in self.wanted.values() for who in wants.who}
        return Played({}, {}, {}, {who: Hands(self.walk, self.reckon) for who in people}, {})

    def place(self, node: Node, going: Going[T], played: Played[T]) -> None:
        """Sets a slot's start, or its end, from those of what it waits for and from the hands there are."""
        id_, is_end = node
        if is_end:
            self._end(id_, going, played)
        elif id_ in going.left_out:
            ready = [over for wait, over in self.over(id_, going, played) if wait.reason == ORDER]
            played.start[id_] = self.reckon.latest(ready) if ready else going.earliest[id_]
        else:
            self._start(id_, going, played)

    def over(self, id_: str, going: Going[T], played: Played[T]) -> Iterator[tuple[Dependency, T]]:
        """A slot's waits, and when each is over. What is merely best ready before does not hold the slot up; for hands
        it waits by what they are at."""
        for wait in self.waits[id_]:
            over: Any = played.end[wait.after] if wait.anchor == "end" else played.start[wait.after]
            pair = (id_, wait.after)
            if wait.anchor == "end" and pair in going.sits:
                over = over + going.sits[pair]
            elif wait.minutes:
                over = over + wait.minutes * self.minute
            yield wait, over

    def _start(self, id_: str, going: Going[T], played: Played[T]) -> None:
        waits = [over for _, over in self.over(id_, going, played)]
        start: Any = self.reckon.latest([going.earliest[id_], *waits])
        wants = self.wanted.get(id_)
        longer: Any = 0.0
        if wants is not None:
            hands = self._hands(wants, played)
            if wants.works:
                length, wanted = self._first(wants, going.lasts[id_]), start
                start, longer = hands.free(start, length, wants.front)
                self._take((id_, False), start, start + length + longer, None, wanted, played)
            self._look(id_, start, going.lasts[id_], longer, played)
        played.start[id_], played.longer[id_] = start, longer

    def _end(self, id_: str, going: Going[T], played: Played[T]) -> None:
        start: Any = played.start[id_]
        if id_ in going.left_out:
            played.end[id_] = start
            return
        longer, wants = played.longer[id_], self.wanted.get(id_)
        due = start + going.lasts[id_] + longer
        played.end[id_] = self._finish(id_, due, going.lasts[id_], played) if wants and wants.last else due

    def _first(self, wants: Wanted, lasts: Any) -> Any:
        return lasts if wants.whole else self._least(wants.first, lasts)

    def _least(self, one: float, other: Any) -> Any:
        if self.reckon.bounds(other)[0] >= one:
            return one
        return -self.reckon.latest([-one, -other])  # type: ignore[operator]  # floats and arrays both can

    def _look(self, id_: str, start: Any, lasts: Any, longer: Any, played: Played[T]) -> None:
        """The looks of what has started; none goes past its end."""
        wants = self.wanted[id_]
        for offset, length in wants.looks:
            hands = self._hands(wants, played)
            at = self._least(offset, lasts)
            due, length = start + longer + at, self._least(length, lasts - at)
            begin = hands.free_briefly(due, length, wants.front)
            self._take((id_, False), begin, begin + length, length, due, played)

    def _hands(self, wants: Wanted, played: Played[T]) -> Hands[T]:
        """Of all who do it."""
        return together([played.hands[who] for who in wants.who])

    def _finish(self, id_: str, due: Any, lasts: Any, played: Played[T]) -> Any:
        """The end of what is due, and wants hands for it."""
        wants = self.wanted[id_]
        length = self._least(wants.last, lasts)
        wanted = due - length
        begin = self._hands(wants, played).free_briefly(wanted, length, wants.front)
        end = due if begin is wanted else due + (begin - wanted)
        self._take((id_, True), begin, end, length, wanted, played)
        return end

    def _take(self, node: Node, begin: Any, over: Any, length: Any, wanted: Any, played: Played[T]) -> None:
        """Hands on a slot for a look-in or an end of a length; None: for its work."""
        wants, bounds = self.wanted[node[0]], self.reckon.bounds
        stretch: Stretch[T] = Stretch(
            node=node,
            begin=begin,
            over=over,
            length=length,
            to_end=node[1] or (wants.whole and length is None),
            front=wants.front,
            wanted=bounds(wanted)[0],
            low=bounds(begin)[0],
            high=bounds(over)[1],
        )
        for who in wants.who:
            played.hands[who].take(stretch)
        played.stretches[node] = (*played.stretches.get(node, ()), stretch)

    def _what_is_known(self, going: Going[T], played: Played[T]) -> None:
        """What is over and what is under way: first the looks and ends, for which the rest takes longer."""
        for id_, (start, end) in going.known.items():
            played.start[id_], played.end[id_] = start, end
            if id_ in self.wanted:
                lasts, wants = end - start, self.wanted[id_]
                self._look(id_, start, lasts, 0.0, played)
                if wants.last:
                    length = self._least(wants.last, lasts)
                    self._take((id_, True), end - length, end, length, end - length, played)
        for id_, (start, no_sooner) in going.begun.items():
            due: Any = self.reckon.latest([start + going.lasts[id_], no_sooner])
            played.start[id_], played.end[id_] = start, due
            if id_ in self.wanted:
                self._look(id_, start, due - start, 0.0, played)
                if self.wanted[id_].last:
                    played.end[id_] = self._finish(id_, due, due - start, played)
        for id_, (start, no_sooner) in going.begun.items():
            if id_ in self.wanted and self.wanted[id_].works:
                wants = self.wanted[id_]
                length = self._first(wants, going.lasts[id_])
                hands = self._hands(wants, played)
                over = start + length + hands.longer(start, length, wants.front)
                if wants.whole:
                    over = played.end[id_] = self.reckon.latest([over, no_sooner])
                self._take((id_, False), start, over, None, start, played)


def _walk(slots: Sequence[Slot]) -> int:
    """Minutes between kitchen and table, as a sheet's waits for hands have them."""
    front = {slot.id: slot.lane == FRONT_OF_HOUSE for slot in slots}
    return max(
        (
            wait.minutes
            for slot in slots
            for wait in slot.waits
            if wait.reason == HANDS and wait.anchor == "end" and front[slot.id] != front[wait.after]
        ),
        default=0,
    )
