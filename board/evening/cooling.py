"""Whether cooling food will be cold in time, by probe readings, °C. Pure: (state, forecast, slot) → an outlook.

An estimate: two falling readings in the same place give the rate (Newton's law); otherwise the plan's own estimate
does. It never proves food safe; only the next reading can.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from board.evening.forecast import Forecast
from board.evening.readings import readings_of
from board.evening.state import Reading, State
from board.facts.cooling import Estimate, fitted
from board.facts.degrees import to_celsius
from board.sheet.run_sheet import Cooling, Slot, Stage

READ_COOLING_MINUTES = 20  # between two readings of cooling food; common practice, no source
NEVER = timedelta(days=3)  # anything slower is taken as never cold; ours


@dataclass(frozen=True, slots=True)
class StageOutlook:
    """When a stage's temperature is reached (None: never, where it stands) and how many minutes too late that is."""

    stage: Stage
    at: datetime | None
    late_minutes: float

    @property
    def in_time(self) -> bool:
        return self.at is not None and self.late_minutes <= 0


@dataclass(frozen=True, slots=True)
class CoolingOutlook:
    """The outlook for one dish's cooling. `readings`: how many the rate was fitted to; 0: the plan's estimate."""

    readings: int
    stages: tuple[StageOutlook, ...]

    @property
    def in_time(self) -> bool:
        return all(each.in_time for each in self.stages)


def outlook(state: State, forecast: Forecast, slot: Slot) -> CoolingOutlook | None:
    """The outlook from all readings of the slots that cool the same dish. None if there are no readings, or the sheet
    has no limits for it."""
    chain = [s for s in state.sheet.slots if s.cooling is not None and (s.dish, s.course) == (slot.dish, slot.course)]
    chain.sort(key=lambda each: forecast.slots[each.id].start)
    readings = sorted((r for each in chain for r in readings_of(state, each.id)), key=lambda r: (r.at, r.n))
    stages = slot.cooling.stages if slot.cooling is not None else ()
    if not readings or not stages:
        return None
    return _Chain(chain, readings, forecast).outlook(stages)


class _Chain:
    """The slots one dish cools in, in order, and the readings taken there."""

    def __init__(self, slots: list[Slot], readings: Sequence[Reading], forecast: Forecast) -> None:
        self.slots, self.readings = slots, readings
        self.ends = {slot.id: forecast.slots[slot.id].end for slot in slots}
        self.begun = forecast.slots[slots[0].id].start
        self.last = readings[-1]
        there = [r for r in readings if r.slot == self.last.slot]
        self.cooling = {slot.id: slot.cooling for slot in slots if slot.cooling is not None}
        ambient = self.cooling[self.last.slot].ambient
        found = fitted([(_minutes(there[0].at, r.at), r.celsius) for r in there], ambient)
        self.fit, self.used = found, len(there) if found is not None else 0

    def outlook(self, stages: Sequence[Stage]) -> CoolingOutlook:
        return CoolingOutlook(self.used, tuple(self._stage(stage) for stage in stages))

    def _stage(self, stage: Stage) -> StageOutlook:
        enough = max(stage.celsius, to_celsius(stage.fahrenheit, "F"))  # either figure will do, °C or °F
        at, passed = self._met(enough), self._passed(stage.begins)
        if at is None or passed is None:
            return StageOutlook(stage, None, float("inf"))
        return StageOutlook(stage, at, _minutes(passed, at) - stage.within_minutes)

    def _met(self, celsius: float) -> datetime | None:
        """When it reaches (or reached) a temperature: between two readings if they show it, else as forecast."""
        for before, after in zip([None, *self.readings], self.readings, strict=False):
            if after.celsius <= celsius:
                return after.at if before is None else min(after.at, self._fallen(before, celsius) or after.at)
        return self._will_fall(celsius)

    def _passed(self, celsius: float) -> datetime | None:
        """When it fell below the temperature that cooling counts from. If every reading is below that, the fall is
        extrapolated backwards, but not before cooling began."""
        first = self.readings[0]
        if first.celsius > celsius:
            return self._met(celsius)
        ago = self._law(first.slot).minutes_to(celsius, first.celsius)
        return max(self.begun, first.at - timedelta(minutes=min(ago, NEVER / timedelta(minutes=1))))

    def _fallen(self, reading: Reading, celsius: float) -> datetime | None:
        """When it reaches a temperature after a reading, if it stays where that was taken."""
        minutes = self._law(reading.slot).minutes_to(reading.celsius, celsius)
        return reading.at + timedelta(minutes=minutes) if minutes <= NEVER / timedelta(minutes=1) else None

    def _will_fall(self, celsius: float) -> datetime | None:
        """When it falls to a temperature, from the last reading on through the slots still to come."""
        at, warm = self.last.at, self.last.celsius
        for law, until in self._ahead():
            needs = law.minutes_to(warm, celsius)
            has = max(0.0, _minutes(at, until)) if until is not None else NEVER / timedelta(minutes=1)
            if needs <= has:
                return at + timedelta(minutes=needs)
            warm, at = law.celsius_after(warm, has), at + timedelta(minutes=has)
        return None

    def _ahead(self) -> Iterator[tuple[Estimate, datetime | None]]:
        """The rate of fall in the slot last read and in each later one, and until when; the last has no end."""
        at = next(n for n, slot in enumerate(self.slots) if slot.id == self.last.slot)
        for slot in self.slots[at:-1]:
            yield self._law(slot.id), self.ends[slot.id]
        yield self._law(self.slots[-1].id), None

    def _law(self, slot: str) -> Estimate:
        """The rate of fall in a slot: fitted where the last reading was taken, else estimated."""
        if slot == self.last.slot and self.fit is not None:
            return self.fit
        return _estimate(self.cooling[slot])


def _estimate(cooling: Cooling) -> Estimate:
    return Estimate(cooling.constant, cooling.ambient, cooling.assumed)


def _minutes(start: datetime, end: datetime) -> float:
    return (end - start) / timedelta(minutes=1)
