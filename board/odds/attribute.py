"""What made a course late: the greatest overrun on the unbroken chain of predecessors of its serving.

The chain runs from the serving back through the waits that held each slot up, to one that started as planned.
"""

from dataclasses import dataclass, field
from typing import Any

import numpy as np
from numpy.typing import NDArray

from board.evening.rule import Pair, Played, Times
from board.odds.draw import Minutes
from board.odds.result import TIMETABLE, WITHIN_MINUTES, Cause
from board.odds.simulate import Drawn, Evenings
from board.sheet.run_sheet import CourseSlot, Slot

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


def _only(which: NDArray[np.intp], drawn: Drawn, played: Played[Any]) -> tuple[Drawn, Times[Any], dict[Pair, Any]]:
    """The same data for some evenings only."""

    def pick(value: Any) -> Any:
        return value[which] if isinstance(value, np.ndarray) else value

    times = Times(*({id_: pick(v) for id_, v in side.items()} for side in (played.times.start, played.times.end)))
    return {cause: pick(v) for cause, v in drawn.items()}, times, {pair: pick(v) for pair, v in played.void.items()}


@dataclass
class _Back:
    """A walk back from one serving, over many evenings. `reached`: evenings in which a slot's start is next on the
    chain; `through`: those in which the whole slot is."""

    evenings: Evenings
    drawn: Drawn
    times: Times[Any]
    void: dict[Pair, Any]
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
        for slot in reversed(self.evenings.sheet.slots):
            self._step(slot)
        counts = np.bincount(self.worst, minlength=len(self.causes))
        return {cause: int(n) for cause, n in zip(self.causes, counts, strict=True) if n}

    def _step(self, slot: Slot) -> None:
        through = self.through.pop(slot.id, None)
        if through is not None and slot.id in self.work:
            each = self.work[slot.id]
            self._weigh(each.cause, through, self.drawn[each.cause] - each.planned)
        reached = _either(self.reached.pop(slot.id, None), through)
        if reached is None:
            return
        start = self.times.start[slot.id]
        held = reached & (start > self.evenings.rule.planned[slot.id])
        for wait, over in self.evenings.rule.over(slot, self.going, self.void, self.times):
            if not held.any():
                return
            by = held & (over == start)
            held &= ~by
            onto = self.through if wait.anchor == "end" else self.reached
            onto[wait.after] = by | onto[wait.after] if wait.after in onto else by
            each_sitting = self.sitting.get((slot.id, wait.after)) if wait.anchor == "end" else None
            if each_sitting is not None:
                self._weigh(each_sitting.cause, by, self.drawn[each_sitting.cause] - each_sitting.planned)

    def _weigh(self, cause: Cause, where: Mask, overrun: Minutes) -> None:
        more = where & (overrun > self.greatest)
        if more.any():
            self.worst[more] = self._number(cause)
            self.greatest[more] = overrun[more]

    def _number(self, cause: Cause) -> int:
        if cause not in self.causes:
            self.causes.append(cause)
        return self.causes.index(cause)


def _either(one: Mask | None, other: Mask | None) -> Mask | None:
    if one is None or other is None:
        return other if one is None else one
    return one | other
