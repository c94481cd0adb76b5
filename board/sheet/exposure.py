"""How long what a dish is made of stands neither hot nor cold enough, over its whole path: the stretches of a sheet, by
the rule in `adding_up`. Pure; minutes."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from board.sheet.adding_up import AddingUp
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
        stretches = path.added_up.raw_until(slot.id) if slot.fresh else ()
        through = dict.fromkeys([slot.id, *(each.slot for each in stretches)])
        food = next((raw for id_ in through if (raw := path.slots[id_].raw)), slot.cooks)
        if stretches and food is not None:
            found.append(RawFood(slot, food, stretches))
    return found


def planned_before_cooking(sheet: RunSheet) -> list[RawFood]:
    """As the sheet has it."""
    return before_cooking(sheet, _planned_times(sheet))


Stretches = tuple[Exposed, ...]


class _Counted:
    """Counts in stretches, by the times of the slots."""

    nothing: Stretches = ()

    def __init__(self, slots: Mapping[str, Slot], times: Times) -> None:
        self.slots = slots
        self.times = times

    def longest(self, parts: Sequence[Stretches]) -> Stretches:
        return max(parts, key=_total)

    def during(self, before: Stretches, id_: str) -> Stretches:
        return (*before, *_stretch(*self.times[id_], id_, "during")) if self.slots[id_].exposed else before

    def kept(self, before: Stretches, id_: str, taker: str) -> Stretches:
        keeping = self.slots[id_].keeping
        if keeping is None or not keeping.exposed:
            return before
        return (*before, *_stretch(self.times[id_][1], self.times[taker][0], id_, "kept"))


class _Path:
    """The path of one dish through its slots, to the table and away from it."""

    def __init__(self, sheet: RunSheet, times: Times, left_out: frozenset[str]) -> None:
        self.slots = {slot.id: slot for slot in sheet.slots if slot.id not in left_out}
        self.times = times
        self.added_up = AddingUp(self.slots.values(), _Counted(self.slots, times))

    def of(self, clock: SpoilClock) -> Iterator[Exposed]:
        if clock.serve not in self.slots:
            return
        yield from self.added_up.until_served(clock)
        served = self.times[clock.serve]
        yield Exposed(*served, clock.serve, "during")
        cleared = self.times[clock.clear][1] if clock.clear in self.slots else served[1]
        yield from _stretch(served[1], cleared, clock.serve, "table")
        if clock.away is not None and clock.away in self.slots:
            yield from _stretch(cleared, self.times[clock.away][1], clock.away, "left")


def _stretch(start: datetime, end: datetime, slot: str, what: str) -> Iterator[Exposed]:
    if end > start:
        yield Exposed(start, end, slot, what)


def _total(stretches: Stretches) -> timedelta:
    return sum((each.end - each.start for each in stretches), timedelta())
