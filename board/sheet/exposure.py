"""How long what a dish is made of stands neither hot nor cold enough, over its whole path. Pure; minutes.

Bench, room, carrying, table and buffet all count, and are added up: going back into the fridge stops a clock and does
not set it back. Cooking through begins a new one, for the cooked food. Oven, ring, fridge and a bath of water or ice do
not count; what cools or reheats there has rules of its own. Of several parts of a dish, the one that stood longest
counts.

Only what was raw begins anew. Heated again, by a step that reheats or by a second cooking, food keeps the minutes that
it stood since it was first cooked: some of what grows meanwhile leaves poisons that heat does not undo. That is the
safe side (FDA Food Code 3-501.19, from memory: what is held by time alone is eaten or thrown away, and no reheating
gives it more time).

What a step of another dish takes up as a dish's last (custard into a tart, chicken carried out with all the cold
dishes) is followed through that dish to the table; what else stood there before does not count for it. Where the host
says of the other dish that it does not spoil (`perishable: no`: platters on ice), their word covers what lies on it
too, as it does in `plan.taken_up`, but only while it lies there: the minutes before, and those at the table, count.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta

from board.sheet.run_sheet import RunSheet, Slot, SpoilClock

Span = tuple[datetime, datetime]
Times = Mapping[str, Span]  # of every slot


@dataclass(frozen=True, slots=True)
class Exposed:
    """A while in which the food stood out: during a slot, after it where it was kept, on the table, or until it was
    put away."""

    start: datetime
    end: datetime
    slot: str
    what: str  # during, kept, table, left


@dataclass(frozen=True, slots=True)
class Exposure:
    """A dish's clock: all stretches of the part that stood longest, oldest first, to the end of its path."""

    clock: SpoilClock
    stretches: tuple[Exposed, ...]

    def minutes(self, until: datetime | None = None) -> float:
        """Added up; of what lies before a moment, where one is given."""
        return sum(_overlap(each, until) for each in self.stretches)

    def running(self, now: datetime) -> bool:
        """Whether the food stands out at that moment."""
        return any(each.start <= now < each.end for each in self.stretches)

    def runs_out(self) -> datetime | None:
        """When the limit is reached, if it is before its path ends."""
        left = timedelta(minutes=self.clock.limit_minutes)
        for each in self.stretches:
            if each.end - each.start > left:
                return each.start + left
            left -= each.end - each.start
        return None


def _overlap(each: Exposed, until: datetime | None) -> float:
    end = each.end if until is None else min(each.end, until)
    return max(0.0, (end - each.start).total_seconds() / 60)


def exposures(sheet: RunSheet, times: Times, left_out: frozenset[str] = frozenset()) -> list[Exposure]:
    """Every clock of the sheet, with the times its slots have (planned, forecast or actual)."""
    path = _Path(sheet, times, left_out)
    return [Exposure(clock, tuple(path.of(clock))) for clock in sheet.clocks]


def planned(sheet: RunSheet) -> list[Exposure]:
    """As the sheet has it."""
    return exposures(sheet, _planned_times(sheet))


def _planned_times(sheet: RunSheet) -> Times:
    return {slot.id: (slot.start, slot.end) for slot in sheet.slots}


@dataclass(frozen=True, slots=True)
class RawFood:
    """What a slot cooks through: which food, in the plan's words, and how the raw part that stood longest had stood
    out until then, oldest first."""

    cooking: Slot
    food: str
    stretches: tuple[Exposed, ...]

    def minutes(self, until: datetime | None = None) -> float:
        """Added up; of what lies before a moment, where one is given."""
        return sum(_overlap(each, until) for each in self.stretches)


def before_cooking(sheet: RunSheet, times: Times, left_out: frozenset[str] = frozenset()) -> list[RawFood]:
    """All raw food that stands out before it is cooked through, with the times the slots have. Which part of a dish is
    the raw one no plan says, so the one that stood longest counts."""
    path = _Path(sheet, times, left_out)
    found = []
    for slot in path.slots.values():
        stretches = path.raw_until(slot) if slot.fresh else ()
        through = dict.fromkeys([slot.id, *(each.slot for each in stretches)])
        food = next((raw for id_ in through if (raw := path.slots[id_].raw)), slot.cooks)
        if stretches and food is not None:
            found.append(RawFood(slot, food, stretches))
    return found


def planned_before_cooking(sheet: RunSheet) -> list[RawFood]:
    """As the sheet has it."""
    return before_cooking(sheet, _planned_times(sheet))


Stretches = tuple[Exposed, ...]


@dataclass(frozen=True, slots=True)
class _Stood:
    """The stretches of what is raw, and of what was cooked through, each of the part that stood longest; None: there
    is no such part."""

    raw: Stretches | None = None
    cooked: Stretches | None = None

    def longest(self) -> Stretches:
        return max((each for each in (self.raw, self.cooked) if each is not None), key=_total, default=())

    def and_then(self, more: Stretches) -> "_Stood":
        raw, cooked = self.raw, self.cooked
        return _Stood(None if raw is None else raw + more, None if cooked is None else cooked + more)

    def cooked_through(self) -> "_Stood":
        """What was raw begins anew; what was cooked before goes on."""
        return _Stood(cooked=self.cooked or ())


def _met(parts: list[_Stood]) -> _Stood:
    """Several parts in one; of nothing, something raw that has not stood out yet."""
    raw = [each.raw for each in parts if each.raw is not None]
    cooked = [each.cooked for each in parts if each.cooked is not None]
    if not raw and not cooked:
        return _Stood(raw=())
    return _Stood(max(raw, key=_total, default=None), max(cooked, key=_total, default=None))


class _Path:
    """The path of one dish through its slots, to the table and away from it."""

    def __init__(self, sheet: RunSheet, times: Times, left_out: frozenset[str]) -> None:
        self.slots = {slot.id: slot for slot in sheet.slots if slot.id not in left_out}
        self.times = times
        self.before: dict[str, list[Slot]] = {}
        for slot in self.slots.values():
            for other in slot.then:
                self.before.setdefault(other, []).append(slot)
        self.known: dict[str, _Stood] = {}

    def of(self, clock: SpoilClock) -> Iterator[Exposed]:
        if clock.serve not in self.slots:
            return
        found = self._of_dish_before(clock, clock.serve, {})
        yield from found.longest() if found is not None else ()
        served = self._span(clock.serve)
        yield Exposed(*served, clock.serve, "during")
        cleared = self._span(clock.clear)[1] if clock.clear in self.slots else served[1]
        yield from _stretch(served[1], cleared, clock.serve, "table")
        if clock.away is not None and clock.away in self.slots:
            yield from _stretch(cleared, self._span(clock.away)[1], clock.away, "left")

    def _of_dish_before(self, clock: SpoilClock, taker: str, known: dict[str, _Stood | None]) -> _Stood | None:
        """What a clock's dish gives to be taken up there; None where that is nothing. `known`: answers by slot."""
        makers = [slot for slot in self.before.get(taker, []) if slot.kind == "step"]
        found = [
            stood.and_then(self._kept(slot, taker))
            for slot in makers
            if taker == clock.serve or not _is_of(slot, clock) or self._ends_in_others(slot, clock)
            if (stood := self._of_dish_in(clock, slot, known)) is not None
        ]
        return _met(found) if found else None

    def _of_dish_in(self, clock: SpoilClock, slot: Slot, known: dict[str, _Stood | None]) -> _Stood | None:
        """What a clock's dish has in a slot, until its end, without what other dishes have in it."""
        if _is_of(slot, clock):
            return self._through(slot)
        if slot.id not in known:
            before = self._of_dish_before(clock, slot.id, known)
            known[slot.id] = before if before is None else self._and_in(before, slot)
        return known[slot.id]

    def _ends_in_others(self, slot: Slot, clock: SpoilClock) -> bool:
        """Whether its result goes into other dishes only; else `after` may say no more than what is done first."""
        takers = [self.slots[id_] for id_ in slot.then if id_ in self.slots]
        return not any(each.kind == "serve" or _is_of(each, clock) for each in takers)

    def raw_until(self, slot: Slot) -> Stretches:
        """What the raw part that stood longest had stood out when a slot begins."""
        return self._taken_up(slot).raw or ()

    def _taken_up(self, slot: Slot) -> _Stood:
        """What it takes up: the results of steps of dishes, not jobs and dials."""
        makers = [other for other in self.before.get(slot.id, []) if other.kind == "step"]
        return _met([self._until_taken(other, slot.id) for other in makers])

    def _until_taken(self, slot: Slot, taker: str) -> _Stood:
        return self._through(slot).and_then(self._kept(slot, taker))

    def _through(self, slot: Slot) -> _Stood:
        """Until the end of a slot."""
        if slot.id not in self.known:
            self.known[slot.id] = self._and_in(self._taken_up(slot), slot)
        return self.known[slot.id]

    def _and_in(self, before: _Stood, slot: Slot) -> _Stood:
        """What it was when the slot began, and the slot."""
        before = before.cooked_through() if slot.fresh else before
        return before.and_then(tuple(_stretch(*self._span(slot.id), slot.id, "during")) if slot.exposed else ())

    def _kept(self, slot: Slot, taker: str) -> Stretches:
        """From its end until it is taken up, where it stands out meanwhile."""
        out = slot.keeping is not None and slot.keeping.exposed
        return tuple(_stretch(self._span(slot.id)[1], self._span(taker)[0], slot.id, "kept")) if out else ()

    def _span(self, id_: str) -> Span:
        return self.times[id_]


def _is_of(slot: Slot, clock: SpoilClock) -> bool:
    return (slot.dish, slot.course) == (clock.dish, clock.course)


def _stretch(start: datetime, end: datetime, slot: str, what: str) -> Iterator[Exposed]:
    if end > start:
        yield Exposed(start, end, slot, what)


def _total(stretches: Stretches) -> timedelta:
    return sum((each.end - each.start for each in stretches), timedelta())
