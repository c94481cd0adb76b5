"""A run sheet played forward for many evenings at once, by the board's own rule.

Every call is answered on time; what varies is how long things last. What the board moves later on the night so that
it stands no longer than it keeps is left where it was: that makes no course later.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

import numpy as np
from numpy.typing import NDArray

from board.evening.rule import NEVER, Going, Pair, Played, Rule, Times
from board.odds.draw import Draw, Minutes
from board.odds.result import Cause
from board.odds.sensitivity import play_again
from board.sheet.run_sheet import Lasts, RunSheet
from board.sheet.sittings import sitting_wait

Drawn = dict[Cause, Minutes]


@dataclass(frozen=True, slots=True)
class Varying:
    """What may last longer or shorter than the sheet says. `touches`: slots that last as long, or that wait so."""

    cause: Cause
    lasts: Lasts
    planned: float
    touches: frozenset[str]
    waits: tuple[Pair, ...] = ()  # of a sitting: what waits for the guests


class Evenings:
    """Holds what never changes about a sheet. Minutes are fractional, counted from its first slot's start."""

    def __init__(self, sheet: RunSheet, draw: Draw) -> None:
        self.sheet = sheet
        self.draw_minutes = draw
        first = min(slot.start for slot in sheet.slots)

        def minutes(moment: datetime) -> float:
            return (moment - first).total_seconds() / 60

        self.rule: Rule[Any] = Rule(sheet.slots, minutes, 1.0, _latest, _where)
        self.wanted = {course.name: minutes(course.wanted) for course in sheet.courses}
        self.varying = (*self._work(), *self._sittings())

    def draw(self, rng: np.random.Generator, evenings: int) -> Drawn:
        """Minutes of all that varies, always drawn in the order of the sheet."""
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

    def play_sooner(self, drawn: Mapping[Cause, Minutes], played: Played[Any], each: Varying) -> Times[Any]:
        """The same evenings, with one thing over a minute sooner and all else as drawn."""
        sooner = {**drawn, each.cause: drawn[each.cause] - 1}
        return play_again(self.rule, played, self.going(sooner), each.touches)

    def late(self, times: Times[Any], evenings: int) -> dict[str, Minutes]:
        """By course, minutes from wanted to out; below 0 when it is early."""
        return {
            course.name: np.broadcast_to(times.end[course.serve] - self.wanted[course.name], evenings)
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


def _where(holds: Any) -> Any:
    """What voids a wait in the evenings in which a condition holds; None where it holds in none."""
    if not np.any(holds):
        return None
    nowhere: NDArray[np.float64] = np.where(holds, NEVER, 0.0)
    return nowhere
