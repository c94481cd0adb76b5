"""A night in which the kitchen has its own mind: steps take what they take, guests are late, a call goes unheard.

What happens is drawn before the evening begins, from a seed. It comes to the board only through what a host could tell
it: a step that is not ready when its end is answered is stretched, late guests are delayed. So the log of such a
rehearsal is read like any other, and all that has happened of a night can be told from it.
"""

import math
import random
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING, Literal

from board.base import words as shared
from board.base.plain import one_line
from board.evening.calls import Call
from board.evening.events import CallRaised, EveningOpened, GuestsDelayed, NightDrawn, Part
from board.evening.slip_wishes import oven_of, waiting_for_guests
from board.evening.state import State
from board.evening.wishes import DelayGuests, Lengthen
from board.rehearsal import words
from board.review.measure import measured
from board.review.trace import away_planned_and_actual
from board.session.session import Evening
from board.sheet.run_sheet import Lasts, RunSheet, Slot
from board.view.present import Present

if TYPE_CHECKING:
    from board.learning.changes import Lesson

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
    unheard; `oven`: the slow one; `evenings`: from how many, beside the plan, the lengths were drawn."""

    lasts: Mapping[str, timedelta] = field(default_factory=dict)
    sits: Mapping[str, timedelta] = field(default_factory=dict)
    guests_late: int = 0
    forgotten: Mapping[str, timedelta] = field(default_factory=dict)
    oven: str | None = None
    evenings: int = 0


def night_event(night: Night, at: datetime) -> NightDrawn:
    """The night as the log keeps it; not numbered yet."""

    def pairs(lengths: Mapping[str, timedelta]) -> tuple[tuple[str, int], ...]:
        return tuple((about, round(length / MINUTE)) for about, length in lengths.items())

    return NightDrawn(
        n=0,
        at=at,
        lasts=pairs(night.lasts),
        sits=pairs(night.sits),
        guests_late=night.guests_late,
        forgotten=pairs(night.forgotten),
        oven=night.oven,
        evenings=night.evenings,
    )


def night_in(event: NightDrawn) -> Night:
    """The night that the log keeps."""
    lasts, sits, forgotten = (
        {about: minutes * MINUTE for about, minutes in pairs} for pairs in (event.lasts, event.sits, event.forgotten)
    )
    return Night(lasts, sits, event.guests_late, forgotten, event.oven, event.evenings)


@dataclass(frozen=True)
class NightWish:
    """A night to draw. `learned`: what so many `evenings` showed, and the plan does not say yet."""

    mishaps: Mishaps
    seed: int = 1
    learned: "tuple[Lesson, ...]" = ()
    evenings: int = 0

    def draw(self, sheet: RunSheet) -> Night:
        """The same wish draws the same night of a sheet."""
        if not self.learned:
            return draw_night(sheet, self.mishaps, self.seed)
        from board.learning.changes import taught  # only here: a board without a night does not wait for it

        night = draw_night(taught(sheet, self.learned), self.mishaps, self.seed)
        return replace(night, evenings=self.evenings)


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


@dataclass(frozen=True, slots=True)
class Instead:
    """What comes of an answer that the night does not bear out: the wish that tells the board, if it must be told, and
    a line for the host."""

    wish: Lengthen | DelayGuests | None
    said: str


def really_over(night: Night, state: State, slot: Slot) -> datetime | None:
    """When a step under way is over in truth; None for all else."""
    step = state.steps[slot.id]
    if step.status != "under-way" or step.started is None or slot.id not in night.lasts:
        return None
    return step.started + night.lasts[slot.id]


def instead(night: Night, state: State, slot: Slot, part: Part, now: datetime) -> Instead | None:
    """What happens instead of an answer; None where it is as the host says."""
    over = really_over(night, state, slot)
    if part == "end" and over is not None and over > now:
        step = state.steps[slot.id]
        looks = max(now, over - night.lasts[slot.id] + step.lasts(slot), step.put_off.get("end", now))
        longer, left = math.ceil((over - looks) / MINUTE), math.ceil((over - now) / MINUTE)
        wish = (
            Lengthen((slot.id,), longer) if longer > 0 else None
        )  # a stretch begins where the board looks for the end
        return Instead(wish, words.not_ready(one_line(slot.name), left))
    if slot.kind == "arrive" and night.guests_late and not _delayed(state, None):
        return Instead(DelayGuests(night.guests_late), words.guests_are_late(night.guests_late))
    return _still_eating(night, state, slot, now)


def _still_eating(night: Night, state: State, slot: Slot, now: datetime) -> Instead | None:
    """Guests who have not done with the course that this waits for."""
    for course in state.sheet.courses:
        served = state.steps[course.serve].finished
        if served is None or course.name not in night.sits or _delayed(state, course.name):
            continue
        if slot.id not in waiting_for_guests(state, course.name):
            continue
        left = math.ceil((served + night.sits[course.name] - now) / MINUTE)
        if left > 0:
            return Instead(DelayGuests(left, course.name), words.guests_sit(one_line(course.name), left))
    return None


def _delayed(state: State, course: str | None) -> bool:
    """Whether the board was told already; a thing happens once a night."""
    return any(isinstance(event, GuestsDelayed) and event.course == course for event in state.history)


def unheard_until(night: Night, state: State, slot: str) -> datetime | None:
    """Until when the call at a step's end goes unheard, from when it was first raised; None where it is heard."""
    if slot not in night.forgotten:
        return None
    raised = (e.at for e in state.history if isinstance(e, CallRaised) and (e.slot, e.part) == (slot, "end"))
    first = next(raised, None)
    return None if first is None else first + night.forgotten[slot]


def is_unheard(night: Night, present: Present, call: Call) -> bool:
    """Whether the host does not hear a call that is due."""
    until = unheard_until(night, present.state, call.slot) if call.part == "end" else None
    return until is not None and present.now < until


def truly_over(night: Night, present: Present) -> Iterator[tuple[Slot, bool]]:
    """What is over in truth while it is under way on the board, and whether its end is called or going to be heard of;
    not what ends by itself."""
    called = {call.slot for call in present.due if call.part == "end"} | set(night.forgotten)
    for slot in present.state.sheet.slots:
        over = really_over(night, present.state, slot)
        put_off = present.state.steps[slot.id].put_off.get("end", present.now) > present.now
        if over is not None and over <= present.now and not slot.ends_by_itself and not put_off:
            yield slot, slot.id in called


def night_score(evening: Evening, night: Night) -> Iterator[str]:
    """How the night went, in words: what was drawn and came to pass, and what came of it."""
    state = evening.state
    yield words.night_title()
    if night.evenings:
        yield words.night_learned(night.evenings)
    if _delayed(state, None) and night.guests_late:
        yield words.night_guests(night.guests_late)
    if night.oven is not None:
        yield words.night_oven(one_line(night.oven))
    slots = evening.sheet.by_id()
    for id_, minutes in night.forgotten.items():
        if id_ in slots and unheard_until(night, state, id_) is not None:
            yield words.night_forgotten(one_line(slots[id_].name), round(minutes / MINUTE))
    for course in evening.look().courses:
        if course.is_served:
            yield words.night_course(one_line(course.name), course.late_minutes, course.may_slip)
        else:
            yield words.night_not_served(one_line(course.name))
    opened = next(event for event in evening.told if isinstance(event, EveningOpened))
    for kept in measured(state, opened).kept_longest():
        if kept.share > 1:
            yield words.night_kept(one_line(kept.slot.name), kept.stood_minutes, kept.limit_minutes)
    yield shared.away_was(*away_planned_and_actual(state))
