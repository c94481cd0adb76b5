"""A night of mishaps played line by line, by a host who answers at once what there is to answer.

A step that is ready early is ended; a forgotten call is answered when it is heard.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from zoneinfo import ZoneInfo

from board.base import words
from board.base.clock import StoppedClock
from board.base.plain import one_line
from board.evening.calls import Call
from board.evening.wishes import Close, Done, Refusal, Settle, Wish
from board.rehearsal.draw import Night, instead, night_score, really_over, unheard_until
from board.session.playthrough import Stuck
from board.session.session import Evening
from board.sheet.run_sheet import Slot
from board.view.board import headline
from board.view.present import Present


@dataclass
class _Play:
    """One night on one evening."""

    evening: Evening
    clock: StoppedClock
    night: Night

    def lines(self) -> Iterator[str]:
        slots = self.evening.sheet.by_id()
        served = set[str]()
        while True:
            present = self.evening.tick()
            at = words.day_and_clock(present.now.astimezone(ZoneInfo(self.evening.sheet.zone)))
            early = self._ready_early(present)
            call = next((call for call in present.due if self._heard(call, present)), None)
            if early is not None:
                self._wish(Settle(early.id))
                yield words.played_early(at, one_line(early.name))
            elif call is not None:
                yield self._answer(present, slots[call.slot], call, at)
            elif (moment := self._next(present)) is not None:
                self.clock.set(moment)
            else:
                break
            for course in self.evening.tick().forecast.courses:
                if course.is_served and course.name not in served:
                    served.add(course.name)
                    yield words.played_course(at, one_line(course.name), course.late_minutes)
        self._wish(Close())
        yield ""
        yield from night_score(self.evening, self.night)

    def _wish(self, wish: Wish) -> None:
        refused = self.evening.wish(wish)
        if isinstance(refused, Refusal):
            raise Stuck(refused.words)

    def _ready_early(self, present: Present) -> Slot | None:
        """What is over before its end is called, and needs somebody to say so."""
        called = {call.slot for call in present.due if call.part == "end"} | set(self.night.forgotten)
        for slot in self.evening.sheet.slots:
            over = really_over(self.night, present.state, slot)
            if over is not None and over <= present.now and slot.id not in called and not slot.ends_by_itself:
                return slot
        return None

    def _heard(self, call: Call, present: Present) -> bool:
        until = unheard_until(self.night, present.state, call.slot) if call.part == "end" else None
        return until is None or present.now >= until

    def _answer(self, present: Present, slot: Slot, call: Call, at: str) -> str:
        other = instead(self.night, present.state, slot, call.part, present.now)
        if other is not None:
            if other.wish is not None:
                self._wish(other.wish)
            return words.played_instead(at, other.said)
        self._wish(Done(*call.key))
        return words.played(at, words.PART_SIGN[call.part], one_line(headline(slot, call)))

    def _next(self, present: Present) -> datetime | None:
        slots = [slot for slot in self.evening.sheet.slots if not slot.ends_by_itself]
        moments = [
            *(call.due for call in present.coming[:1]),
            *(really_over(self.night, present.state, slot) for slot in slots),
            *(unheard_until(self.night, present.state, slot) for slot in self.night.forgotten),
        ]
        return min((moment for moment in moments if moment is not None and moment > present.now), default=None)


def play_night(evening: Evening, clock: StoppedClock, night: Night) -> Iterator[str]:
    """Lines as they happen; the clock is moved from one thing to the next. Raises Stuck, OSError."""
    yield from _Play(evening, clock, night).lines()
