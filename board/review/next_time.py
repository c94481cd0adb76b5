"""What went by unheard, was read too low or was left out, and what in the plan would help. Pure; codes, no words."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Literal

from board.evening.hands import called
from board.evening.readings import lacks
from board.evening.state import State
from board.evening.unheated import left_cold
from board.review.trace import answered_late
from board.sheet.company import host_of
from board.sheet.run_sheet import Slot

MISSED_MINUTES = 5  # a call waiting longer went by; ours
MINUTE = timedelta(minutes=1)

Change = Literal["hand", "apart", "louder", "longer", "probe", "less", "unheated"]


@dataclass(frozen=True, slots=True)
class NextTime:
    """A change to the plan that would have helped.

    `change`: another hand for it (`who`), work put further apart from `beside`, a louder call, a longer time by
    `minutes`, a call that asks for the reading, or less at once on `where` than what is `beside` it; unheated: its dish
    went out without it, which is to be dropped then, or given longer. `at`: when it happened; `minutes`: how long a
    call waited, or how much longer it took until it was hot enough.
    """

    slot: Slot
    change: Change
    at: datetime
    part: str = ""
    minutes: int = 0
    who: str = ""
    where: str = ""
    beside: tuple[Slot, ...] = ()


def next_time(state: State) -> tuple[NextTime, ...]:
    """What to change, by its time. Calls answered within MISSED_MINUTES teach nothing, nor does what was only said."""
    found = [*_missed(state), *_read_low(state), *_unread(state), *_left_out(state)]
    return tuple(sorted(found, key=lambda each: (each.at, each.slot.id)))


def _missed(state: State) -> Iterator[NextTime]:
    for answer in answered_late(state, MISSED_MINUTES):
        slot = answer.slot
        in_hand = slot.whole and answer.part == "end"  # whoever is at it needs no bell
        if slot.kind not in ("step", "job") or in_hand:
            continue
        part: Literal["start", "end"] = "start" if answer.part == "start" else "end"
        people = called(state.sheet, slot, part)
        at_work = {who: _at_work(state, who, answer.called, answer.answered, slot) for who in _people(state)}
        busy = [work for who in people if (work := at_work.get(who)) is not None]
        made = NextTime(slot, "louder", answer.called, answer.part, answer.minutes, beside=tuple(busy))
        if len(busy) < len(people):  # somebody it was for could have heard it
            yield made
            continue
        free = [who for who in _people(state) if who not in people and at_work[who] is None]
        yield NextTime(
            slot, "hand" if free else "apart", answer.called, answer.part, answer.minutes, free[0] if free else "",
            beside=tuple(busy),
        )  # fmt: skip


def _people(state: State) -> tuple[str, ...]:
    return state.sheet.hands or (host_of(state.sheet),)


def _at_work(state: State, who: str, since: datetime, until: datetime, but: Slot) -> Slot | None:
    """The work on which a person's hands were for more than half of that time; None if they were free."""
    longest: tuple[timedelta, Slot] | None = None
    busy = timedelta()
    for slot in state.sheet.slots:
        step = state.steps[slot.id]
        if (
            slot.id == but.id
            or step.started is None
            or not any(p.who == who and p.kind == "all" for p in slot.attended)
        ):
            continue
        here = min(step.finished or until, until) - max(step.started, since)
        if here > timedelta():
            busy += here
            longest = max(longest or (here, slot), (here, slot), key=lambda each: each[0])
    return longest[1] if longest is not None and busy > (until - since) / 2 else None


def _read_low(state: State) -> Iterator[NextTime]:
    """Read too low when it should have been done: how much longer it took."""
    slots = state.sheet.by_id()
    for id_ in dict.fromkeys(reading.slot for reading in state.readings):
        slot, finished = slots.get(id_), state.steps[id_].finished if id_ in state.steps else None
        if slot is None or finished is None or state.steps[id_].said or slot.core_celsius is None:
            continue
        low = [r.at for r in state.readings if r.slot == id_ and r.at <= finished and lacks(slot, r.celsius)]
        if low and (minutes := round((finished - low[0]) / MINUTE)) > 0:
            yield NextTime(slot, "longer", low[0], "end", minutes)


def _unread(state: State) -> Iterator[NextTime]:
    slots = state.sheet.by_id()
    for id_ in state.unread:
        finished = state.steps[id_].finished
        if id_ in slots and finished is not None:
            yield NextTime(slots[id_], "probe", finished, "end")


def _left_out(state: State) -> Iterator[NextTime]:
    """The first step of a dish, or a job, that the host left out, with what was planned beside it at its place."""
    seen: set[str] = set()
    for slot in state.sheet.slots:
        step = state.steps[slot.id]
        if step.status != "left-out" or step.finished is not None or slot.decide or slot.kind not in ("step", "job"):
            continue
        if slot.dish and slot.dish in seen:
            continue
        seen.add(slot.dish or "")
        if left_cold(state, slot):
            yield NextTime(slot, "unheated", slot.start)
            continue
        where = next((use.what for use in slot.uses), "")
        beside = tuple(
            other
            for other in state.sheet.slots
            if other.id != slot.id and other.start < slot.end and slot.start < other.end and _shares(slot, other, where)
        )
        yield NextTime(slot, "less", slot.start, where=where, beside=beside)


def _shares(slot: Slot, other: Slot, where: str) -> bool:
    """Whether the other uses the same place, or, for handwork, the same hands."""
    if where:
        return other.kind != "heat" and any(use.what == where for use in other.uses)
    return bool({part.who for part in slot.attended} & {part.who for part in other.attended if part.kind == "all"})
