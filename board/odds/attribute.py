"""What made a course late: the greatest overrun on the unbroken chain of predecessors of its serving.

The chain runs from the serving back through the waits that held each slot up, or the work its hands were at, to one
that started as planned.
"""

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from board.evening.busy import Hands, Stretch, together
from board.evening.order import Node
from board.evening.rule import Played
from board.odds.draw import Minutes
from board.odds.result import TIMETABLE, WITHIN_MINUTES, Cause
from board.odds.simulate import Drawn, Evenings
from board.sheet.run_sheet import CourseSlot

Mask = NDArray[np.bool_]


def blame(
    evenings: Evenings, drawn: Drawn, played: Played[Any], late: dict[str, Minutes]
) -> dict[str, dict[Cause, int]]:
    """By course: in how many of these evenings each cause made it more than 5 min late."""
    found = {}
    for course in evenings.sheet.courses:
        which = np.flatnonzero(late[course.name] > WITHIN_MINUTES)
        found[course.name] = (
            _Back(evenings, *_only(which, drawn, played), len(which)).walk(course) if len(which) else {}
        )
    return found


def _only(which: NDArray[np.intp], drawn: Drawn, played: Played[Any]) -> tuple[Drawn, Played[Any]]:
    """The same data for some evenings only."""

    def pick(value: Any) -> Any:
        return value[which] if isinstance(value, np.ndarray) else value

    hands: dict[str, Hands[Any]] = {}
    stretches: dict[Node, tuple[Stretch[Any], ...]] = {}
    for who, of_one in played.hands.items():
        taken = [
            replace(each, begin=pick(each.begin), over=pick(each.over), length=pick(each.length))
            for each in of_one.taken
        ]
        hands[who] = replace(of_one, taken=taken)
        for each in taken:
            stretches[each.node] = (*stretches.get(each.node, ()), each)
    start, end, longer = (
        {id_: pick(v) for id_, v in side.items()} for side in (played.start, played.end, played.longer)
    )
    some = Played(start, end, longer, hands, stretches)
    return {cause: pick(v) for cause, v in drawn.items()}, some


@dataclass
class _Back:
    """A walk back from one serving, over many evenings. `reached`: evenings in which a slot's start is next on the
    chain; `through`: those in which the whole slot is."""

    evenings: Evenings
    drawn: Drawn
    played: Played[Any]
    count: int
    reached: dict[str, Mask] = field(default_factory=dict)
    through: dict[str, Mask] = field(default_factory=dict)

    def walk(self, course: CourseSlot) -> dict[Cause, int]:
        """How often each cause had the greatest overrun on the chain."""
        self.going = self.evenings.going(self.drawn)
        self.work = {v.cause.id: v for v in self.evenings.varying if v.cause.kind == "work"}
        self.sitting = {pair: v for v in self.evenings.varying for pair in v.waits}
        self.causes = [TIMETABLE]
        self.worst = np.zeros(self.count, dtype=np.int64)
        planned_late = max(0.0, (course.served - course.wanted).total_seconds() / 60)
        self.greatest: Minutes = np.full(self.count, planned_late)
        self.through[course.serve] = np.ones(self.count, dtype=np.bool_)
        self.place = {node: n for n, node in enumerate(self.evenings.rule.nodes)}
        for node in reversed(self.place):
            self._step(node)
        counts = np.bincount(self.worst, minlength=len(self.causes))
        return {cause: int(n) for cause, n in zip(self.causes, counts, strict=True) if n}

    def _step(self, node: Node) -> None:
        id_, is_end = node
        if not is_end:
            reached = self.reached.pop(id_, None)
            if reached is not None:
                self._held(id_, reached)
            return
        through = self.through.pop(id_, None)
        if through is None:
            return
        if id_ in self.work:
            each = self.work[id_]
            self._weigh(each.cause, through, self.drawn[each.cause] - each.planned)
        self._back_to(self.reached, id_, through)
        due = self.played.start[id_] + self.going.lasts[id_] + self.played.longer[id_]
        for stretch in self.played.stretches.get(node, ()):
            self._by_hands(stretch, through & (self.played.end[id_] > due))
        for stretch in self.played.stretches.get((id_, False), ()):
            if stretch.length is None:
                self._gave_way(stretch, through)

    def _held(self, id_: str, reached: Mask) -> None:
        """On to what held a start up: a wait, or what its hands were at."""
        start = self.played.start[id_]
        held = reached & (start > self.evenings.rule.planned[id_])
        for wait, over in self.evenings.rule.over(id_, self.going, self.played):
            if not held.any():
                return
            by = held & (over == start)
            held &= ~by
            self._back_to(self.through if wait.anchor == "end" else self.reached, wait.after, by)
            each_sitting = self.sitting.get((id_, wait.after)) if wait.anchor == "end" else None
            if each_sitting is not None:
                self._weigh(each_sitting.cause, by, self.drawn[each_sitting.cause] - each_sitting.planned)
        for stretch in self.played.stretches.get((id_, False), ()):
            if stretch.length is None:
                self._by_hands(stretch, held)

    def _by_hands(self, stretch: Stretch[Any], held: Mask) -> None:
        """On to what its hands were at until it began."""
        for other, away in self._others(stretch):
            if not held.any():
                return
            by = held & (other.over + away == stretch.begin)
            held = held & ~by
            self._onto(other, by)

    def _gave_way(self, stretch: Stretch[Any], through: Mask) -> None:
        """On to what its hands did in the midst of it."""
        for other, away in self._others(stretch):
            if other.length is not None:
                self._onto(other, through & (stretch.begin < other.begin - away) & (other.begin - away < stretch.over))

    def _others(self, stretch: Stretch[Any]) -> Iterator[tuple[Stretch[Any], float]]:
        """What its hands were given to before it was worked out, shortly before it or in it, and how far away."""
        rule = self.evenings.rule
        for other in together([self.played.hands[who] for who in rule.wanted[stretch.node[0]].who]).taken:
            near = other.low - rule.walk < stretch.high and stretch.low <= other.high + rule.walk
            if near and self.place[other.node] < self.place[stretch.node]:
                yield other, rule.walk if other.front != stretch.front else 0.0

    def _onto(self, other: Stretch[Any], by: Mask) -> None:
        self._back_to(self.through if other.to_end else self.reached, other.node[0], by)

    def _back_to(self, where: dict[str, Mask], id_: str, by: Mask) -> None:
        where[id_] = by | where[id_] if id_ in where else by

    def _weigh(self, cause: Cause, where: Mask, overrun: Minutes) -> None:
        more = where & (overrun > self.greatest)
        if more.any():
            self.worst[more] = self._number(cause)
            self.greatest[more] = overrun[more]

    def _number(self, cause: Cause) -> int:
        if cause not in self.causes:
            self.causes.append(cause)
        return self.causes.index(cause)
