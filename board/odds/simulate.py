"""A run sheet played forward for many evenings at once, by the board's own rule.

Every call is answered on time; only lengths vary. On the night, the board also moves some work later to keep results
within their shelf life. That makes no course later, at times one sooner, and is left out here.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

import numpy as np

from board.evening.busy import Reckoning
from board.evening.rule import NEVER, Going, Pair, Played, Rule
from board.odds.draw import Draw, Minutes
from board.odds.result import Cause
from board.odds.sensitivity import play_again
from board.sheet.run_sheet import Lasts, RunSheet
from board.sheet.sittings import sitting_wait

Drawn = dict[Cause, Minutes]


@dataclass(frozen=True, slots=True)
class Varying:
    """What may last longer or shorter than planned. `touches`: the slots whose length, or whose wait, that is."""

    cause: Cause
    lasts: Lasts
    planned: float
    touches: frozenset[str]
    waits: tuple[Pair, ...] = ()  # of a sitting: which slots wait for the guests


class Evenings:
    """Plays many evenings of one sheet. Minutes are fractional, counted from the start of its first slot."""

    def __init__(self, sheet: RunSheet, draw: Draw) -> None:
        self.sheet = sheet
        self.draw_minutes = draw
        first = min(slot.start for slot in sheet.slots)

        def minutes(moment: datetime) -> float:
            return (moment - first).total_seconds() / 60

        self.rule: Rule[Any] = Rule(sheet.slots, minutes, 1.0, ARRAYS)
        self.wanted = {course.name: minutes(course.wanted) for course in sheet.courses}
        self.varying = (*self._work(), *self._sittings())

    def draw(self, rng: np.random.Generator, evenings: int) -> Drawn:
        """Minutes of everything that varies, always drawn in the sheet's order."""
        return {each.cause: self.draw_minutes(each.lasts, rng, evenings) for each in self.varying}

    def going(self, drawn: Mapping[Cause, Minutes]) -> Going[Any]:
        lasts: dict[str, Any] = dict(self.rule.length)
        sits: dict[Pair, Any] = {}
        for each in self.varying:
            if each.cause.kind == "work":
                lasts[each.cause.id] = drawn[each.cause]
            sits |= dict.fromkeys(each.waits, drawn[each.cause])
        return Going(self.rule.planned, lasts, sits=sits)

    def play(self, drawn: Mapping[Cause, Minutes]) -> Played[Any]:
        return self.rule.play(self.going(drawn))

    def play_sooner(self, drawn: Mapping[Cause, Minutes], played: Played[Any], each: Varying) -> Played[Any]:
        """The same evenings with one thing a minute shorter and everything else as drawn."""
        sooner = {**drawn, each.cause: drawn[each.cause] - 1}
        return play_again(self.rule, played, self.going(sooner), each.touches)

    def late(self, played: Played[Any], evenings: int) -> dict[str, Minutes]:
        """By course, minutes from wanted to out; below 0 if early."""
        return {
            course.name: np.broadcast_to(played.end[course.serve] - self.wanted[course.name], evenings)
            for course in self.sheet.courses
        }

    def _work(self) -> Iterator[Varying]:
        for slot in self.sheet.slots:
            if slot.lasts is not None and slot.lasts.low < slot.lasts.high:
                cause = Cause("work", slot.id, slot.name)
                yield Varying(cause, slot.lasts, self.rule.length[slot.id], frozenset((slot.id,)))

    def _sittings(self) -> Iterator[Varying]:
        for course in self.sheet.courses:
            if course.eaten is None or course.eaten.low == course.eaten.high:
                continue
            waiting = [slot.id for slot in self.sheet.slots if sitting_wait(slot, course) is not None]
            if waiting:
                cause = Cause("sitting", course.serve, course.name)
                pairs = tuple((id_, course.serve) for id_ in waiting)
                yield Varying(cause, course.eaten, course.eaten.likely, frozenset(waiting), pairs)


def _latest(moments: Sequence[Any]) -> Any:
    fixed = max((m for m in moments if not isinstance(m, np.ndarray)), default=NEVER)
    drawn = [m for m in moments if isinstance(m, np.ndarray)]
    if not drawn:
        return fixed
    found = np.maximum(drawn[0], fixed)
    for moment in drawn[1:]:
        np.maximum(found, moment, out=found)
    return found


def _some(holds: Any) -> bool:
    return bool(holds.any()) if isinstance(holds, np.ndarray) else bool(holds)


def _bounds(moment: Any) -> tuple[float, float]:
    if isinstance(moment, np.ndarray):
        return float(moment.min()), float(moment.max())
    return moment, moment


ARRAYS: Reckoning[Any] = Reckoning(_latest, _some, _bounds)
