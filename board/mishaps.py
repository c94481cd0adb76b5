"""A rehearsal in which the kitchen has its own mind: steps take what they take, guests are late, answers forgotten.

What happens is drawn before the evening begins, from a seed, and told to the board only through what a host could tell
it: a step that is not ready when its end is called is stretched, one that is ready early is ended, late guests are
delayed. So the log of such a rehearsal is read like any other.
"""

import math
import random
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Literal
from zoneinfo import ZoneInfo

from board import words
from board.clock import StoppedClock
from board.evening import Evening, Present
from board.lessons.measure import measured
from board.lessons.trace import away_planned_and_actual
from board.plain import one_line
from board.playthrough import Stuck
from board.run.calls import Call
from board.run.decide import Close, Done, Refusal, Settle, Wish
from board.run.events import EveningOpened
from board.run.slip_wishes import DelayGuests, Stretch, oven_of, waiting_for_guests
from board.timetable.run_sheet import Lasts, RunSheet, Slot
from board.view.board import headline

Mishaps = Literal["calm", "usual", "rough"]
MINUTE = timedelta(minutes=1)


@dataclass(frozen=True, slots=True)
class Rough:
    """How rough a night may be; all figures are common practice, no source. Minutes are drawn evenly between two."""

    guests_late: tuple[int, int] = (0, 0)
    guests_chance: float = 0.0
    forgotten: int = 0
    forgotten_minutes: tuple[int, int] = (5, 10)
    oven_slower: float = 0.0  # share by which one oven, if there is any, takes longer


NIGHTS: dict[Mishaps, Rough] = {
    "calm": Rough(),
    "usual": Rough(guests_late=(5, 15), guests_chance=0.5, forgotten=1),
    "rough": Rough(guests_late=(10, 25), guests_chance=0.9, forgotten=3, forgotten_minutes=(6, 15), oven_slower=0.2),
}


@dataclass(frozen=True)
class Night:
    """What really happens. `lasts`: by slot; `sits`: by course; `forgotten`: by slot, how long its call at the end goes
    unheard; `oven`: the slow one."""

    lasts: Mapping[str, timedelta] = field(default_factory=dict)
    sits: Mapping[str, timedelta] = field(default_factory=dict)
    guests_late: int = 0
    forgotten: Mapping[str, timedelta] = field(default_factory=dict)
    oven: str | None = None


def draw_night(sheet: RunSheet, mishaps: Mishaps, seed: int) -> Night:
    """The same sheet, roughness and seed draw the same night. Lengths: the odds' own three-point draw."""
    rng, rough = random.Random(seed), NIGHTS[mishaps]
    ovens = sorted({oven for slot in sheet.slots if (oven := oven_of(slot))})
    slow = rng.choice(ovens) if ovens and rough.oven_slower else None
    lasts = {}
    for slot in sheet.slots:
        minutes = _drawn(slot.lasts, rng) if slot.lasts is not None else (slot.end - slot.start) / MINUTE
        if slow is not None and oven_of(slot) == slow:
            minutes *= 1 + rough.oven_slower
        if slot.kind in ("step", "job", "heat") and slot.end > slot.start:
            lasts[slot.id] = max(1, round(minutes)) * MINUTE
    sits = {c.name: round(_drawn(c.eaten, rng)) * MINUTE for c in sheet.courses if c.eaten is not None}
    late = rng.randint(*rough.guests_late) if rng.random() < rough.guests_chance else 0
    can_be_forgotten = [s.id for s in sheet.slots if s.id in lasts and not s.ends_by_itself]
    picked = rng.sample(can_be_forgotten, min(rough.forgotten, len(can_be_forgotten)))
    forgotten = {id_: rng.randint(*rough.forgotten_minutes) * MINUTE for id_ in picked}
    return Night(lasts, sits, late, forgotten, slow)


def _drawn(lasts: Lasts, rng: random.Random) -> float:
    if lasts.low >= lasts.high:
        return float(lasts.likely)
    from board.odds.draw import shape  # only here: a plain rehearsal does not wait for arrays

    return lasts.low + (lasts.high - lasts.low) * rng.betavariate(*shape(lasts))


@dataclass
class _Play:
    """One night on one evening. `waits`: calls left unheard, until when."""

    evening: Evening
    clock: StoppedClock
    night: Night
    late_told: bool = False
    sat: set[str] = field(default_factory=set)
    waits: dict[str, datetime] = field(default_factory=dict)

    def lines(self) -> Iterator[str]:
        slots = self.evening.sheet.by_id()
        served = set[str]()
        while True:
            present = self.evening.tick()
            at = self._clock(present)
            early = self._ready_early(present)
            call = next((call for call in present.due if self._heard(call, present.now)), None)
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
        yield from self._score(present)

    def _score(self, present: Present) -> Iterator[str]:
        """How the night went, in words: what was drawn, and what came of it."""
        yield ""
        yield words.night_title()
        if self.late_told:
            yield words.night_guests(self.night.guests_late)
        if self.night.oven is not None:
            yield words.night_oven(one_line(self.night.oven))
        slots = self.evening.sheet.by_id()
        for id_, minutes in self.night.forgotten.items():
            if id_ in self.waits:
                yield words.night_forgotten(one_line(slots[id_].name), round(minutes / MINUTE))
        for course in present.forecast.courses:
            yield words.night_course(one_line(course.name), course.late_minutes, course.may_slip)
        review = measured(present.state, self._opened())
        for kept in review.kept_longest():
            if kept.share > 1:
                yield words.night_kept(one_line(kept.slot.name), kept.stood_minutes, kept.limit_minutes)
        planned, actual = away_planned_and_actual(present.state)
        yield words.away_was(planned, actual)

    def _opened(self) -> EveningOpened:
        return next(event for event in self.evening.told if isinstance(event, EveningOpened))

    def _clock(self, present: Present) -> str:
        return words.day_and_clock(present.now.astimezone(ZoneInfo(self.evening.sheet.zone)))

    def _wish(self, wish: Wish) -> None:
        refused = self.evening.wish(wish)
        if isinstance(refused, Refusal):
            raise Stuck(refused.words)

    def _ends(self, present: Present, slot: Slot) -> datetime | None:
        """When a step under way is really over."""
        step = present.state.steps[slot.id]
        if step.status != "under-way" or step.started is None or slot.id not in self.night.lasts:
            return None
        return step.started + self.night.lasts[slot.id]

    def _ready_early(self, present: Present) -> Slot | None:
        """What is over before its end is called, and needs somebody to say so."""
        called = {call.slot for call in present.due if call.part == "end"} | set(self.night.forgotten)
        for slot in self.evening.sheet.slots:
            ends = self._ends(present, slot)
            if ends is not None and ends <= present.now and slot.id not in called and not slot.ends_by_itself:
                return slot
        return None

    def _heard(self, call: Call, now: datetime) -> bool:
        """A forgotten call is heard only so long after it was raised."""
        if call.part != "end" or call.slot not in self.night.forgotten:
            return True
        until = self.waits.setdefault(call.slot, now + self.night.forgotten[call.slot])
        return now >= until

    def _answer(self, present: Present, slot: Slot, call: Call, at: str) -> str:
        ends = self._ends(present, slot)
        if call.part == "end" and ends is not None and ends > present.now:
            minutes = math.ceil((ends - present.now) / MINUTE)
            self._wish(Stretch((slot.id,), minutes))
            return words.played_not_ready(at, one_line(slot.name), minutes)
        if slot.kind == "arrive" and self.night.guests_late and not self.late_told:
            self.late_told = True
            self._wish(DelayGuests(self.night.guests_late))
            return words.played_guests_late(at, self.night.guests_late)
        course = self._still_eating(present, slot)
        if course is not None:
            minutes, name = course
            self._wish(DelayGuests(minutes, name))
            return words.played_sat_long(at, one_line(name), minutes)
        self._wish(Done(*call.key))
        return words.played(at, words.PART_SIGN[call.part], one_line(headline(slot, call)))

    def _still_eating(self, present: Present, slot: Slot) -> tuple[int, str] | None:
        """The course whose guests have not done when something that waits for them is called, and for how long yet."""
        for course in self.evening.sheet.courses:
            served = present.state.steps[course.serve].finished
            if served is None or course.name not in self.night.sits or course.name in self.sat:
                continue
            if slot.id not in waiting_for_guests(present.state, course.name):
                continue
            self.sat.add(course.name)
            left = math.ceil((served + self.night.sits[course.name] - present.now) / MINUTE)
            if left > 0:
                return left, course.name
        return None

    def _next(self, present: Present) -> datetime | None:
        ends = [self._ends(present, slot) for slot in self.evening.sheet.slots if not slot.ends_by_itself]
        moments = [
            *(call.due for call in present.coming[:1]),
            *(end for end in ends if end is not None),
            *self.waits.values(),
        ]
        return min((moment for moment in moments if moment > present.now), default=None)


def play_night(evening: Evening, clock: StoppedClock, night: Night) -> Iterator[str]:
    """Lines as they happen; the clock is moved from one thing to the next. Raises Stuck, OSError."""
    yield from _Play(evening, clock, night).lines()
