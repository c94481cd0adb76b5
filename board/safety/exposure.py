"""How long what a dish is made of stands neither hot nor cold enough, over its whole path. Pure; minutes.

Bench, room, carrying, table and buffet all count, and are added up: going back into the fridge stops a clock and does
not set it back. Cooking through begins a new one, for the cooked food. Oven, ring, fridge and a bath of water or ice do
not count; what cools or reheats there has rules of its own. Of several parts of a dish, the one that stood longest
counts.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta

from board.timetable.run_sheet import RunSheet, Slot, SpoilClock

Span = tuple[datetime, datetime]
Times = Mapping[str, Span]  # of every slot


@dataclass(frozen=True, slots=True)
class Stretch:
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
    stretches: tuple[Stretch, ...]

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


def _overlap(each: Stretch, until: datetime | None) -> float:
    end = each.end if until is None else min(each.end, until)
    return max(0.0, (end - each.start).total_seconds() / 60)


def exposures(sheet: RunSheet, times: Times, left_out: frozenset[str] = frozenset()) -> list[Exposure]:
    """Every clock of the sheet, with the times its slots have (planned, forecast or actual)."""
    path = _Path(sheet, times, left_out)
    return [Exposure(clock, tuple(path.of(clock))) for clock in sheet.clocks]


def planned(sheet: RunSheet) -> list[Exposure]:
    """As the sheet has it."""
    return exposures(sheet, {slot.id: (slot.start, slot.end) for slot in sheet.slots})


def before_cooking(sheet: RunSheet) -> list[tuple[Slot, tuple[Stretch, ...]]]:
    """Each slot that cooks its food through, with what the raw part that stood longest had stood out until then."""
    path = _Path(sheet, {slot.id: (slot.start, slot.end) for slot in sheet.slots}, frozenset())
    return [(slot, found) for slot in sheet.slots if slot.fresh and (found := path.taken_up_by(slot))]


class _Path:
    """The path of one dish through its slots, to the table and away from it."""

    def __init__(self, sheet: RunSheet, times: Times, left_out: frozenset[str]) -> None:
        self.slots = {slot.id: slot for slot in sheet.slots if slot.id not in left_out}
        self.times = times
        self.before: dict[str, list[Slot]] = {}
        for slot in self.slots.values():
            for other in slot.then:
                self.before.setdefault(other, []).append(slot)
        self.known: dict[str, list[Stretch]] = {}

    def of(self, clock: SpoilClock) -> Iterator[Stretch]:
        if clock.serve not in self.slots:
            return
        own = [slot for slot in self.before.get(clock.serve, []) if slot.dish == clock.dish]
        yield from self._longest(own, clock.serve)
        served = self._span(clock.serve)
        yield Stretch(*served, clock.serve, "during")
        cleared = self._span(clock.clear)[1] if clock.clear in self.slots else served[1]
        yield from _stretch(served[1], cleared, clock.serve, "table")
        if clock.away is not None and clock.away in self.slots:
            yield from _stretch(cleared, self._span(clock.away)[1], clock.away, "left")

    def taken_up_by(self, slot: Slot) -> tuple[Stretch, ...]:
        """What the part that stood longest had stood out when a slot begins."""
        return tuple(self._longest(self._makers(slot), slot.id))

    def _longest(self, before: list[Slot], taker: str) -> list[Stretch]:
        """Of what goes into something, the path that stood out longest until it was taken up."""
        return max((self._until_taken(slot, taker) for slot in before), key=_total, default=[])

    def _until_taken(self, slot: Slot, taker: str) -> list[Stretch]:
        found = list(self._through(slot))
        if slot.keeping is not None and slot.keeping.exposed:
            found += _stretch(self._span(slot.id)[1], self._span(taker)[0], slot.id, "kept")
        return found

    def _through(self, slot: Slot) -> list[Stretch]:
        """Until the end of a slot."""
        if slot.id not in self.known:
            start, end = self._span(slot.id)
            before = [] if slot.fresh else self._longest(self._makers(slot), slot.id)
            self.known[slot.id] = before + (list(_stretch(start, end, slot.id, "during")) if slot.exposed else [])
        return self.known[slot.id]

    def _makers(self, slot: Slot) -> list[Slot]:
        """What it takes up: the results of steps of dishes, not jobs and dials."""
        return [other for other in self.before.get(slot.id, []) if other.kind == "step"]

    def _span(self, id_: str) -> Span:
        return self.times[id_]


def _stretch(start: datetime, end: datetime, slot: str, what: str) -> Iterator[Stretch]:
    if end > start:
        yield Stretch(start, end, slot, what)


def _total(stretches: list[Stretch]) -> timedelta:
    return sum((each.end - each.start for each in stretches), timedelta())
