"""Oven settings over time, read off a solution: which steps share one, when it heats or cools. Pure; °C, minutes."""

from dataclasses import dataclass
from itertools import pairwise

from board.facts.heat import ROOM_CELSIUS, minutes_to_reheat
from board.schedule.problem import OvenFacts, OvenUse, Problem


@dataclass(frozen=True, slots=True)
class InOven:
    """A job (or, with `hold`, its result) in an oven from minute to minute."""

    job: int
    start: int
    end: int
    use: OvenUse
    hold: bool = False


@dataclass(frozen=True, slots=True)
class Setting:
    """The dial at `celsius` from minute to minute, for these uses; 0 while the oven is off for a rest."""

    start: int
    end: int
    celsius: int
    spells: tuple[InOven, ...]

    @property
    def off(self) -> bool:
        return any(spell.use.off for spell in self.spells)

    @property
    def left_at(self) -> int:
        """How warm the oven is at its end, °C."""
        return max(spell.use.want for spell in self.spells) if self.off else self.celsius


@dataclass(frozen=True, slots=True)
class Change:
    """The dial is turned at `start` so that the oven is ready at `end`, for `job`. `ajar`: it cools door ajar."""

    start: int
    end: int
    celsius: int
    before: int | None  # °C it changes from; None if it was off
    job: int
    ajar: bool = False


COLD_AFTER_MINUTES = 90  # an oven off for this long counts as cold; ours


def settings(spells: list[InOven]) -> list[Setting]:
    """The settings in order, as few as possible: each lasts as long as it suits everything inside."""
    segments = _segments(spells)
    found: list[Setting] = []
    while segments:
        group = _as_long_as_one_setting_does(segments)
        low = max(s.use.low for segment in group for s in segment.spells)
        high = min(s.use.high for segment in group for s in segment.spells)
        celsius = 0 if group[0].off else max(low, min(high, _wanted_first(group[0])))
        found += [Setting(s.start, s.end, celsius, s.spells) for s in group]
        segments = segments[len(group) :]
    return found


def _wanted_first(segment: Setting) -> int:
    return min(segment.spells, key=lambda s: s.start).use.want


def _within_all(segment: Setting, want: int) -> int:
    """The temperature nearest to `want` that suits everything inside."""
    low, high = max(s.use.low for s in segment.spells), min(s.use.high for s in segment.spells)
    return max(low, min(high, want))


def _segments(spells: list[InOven]) -> list[Setting]:
    """Intervals between moments when something goes in or out; empty ones left out, settings still open."""
    moments = sorted({m for spell in spells for m in (spell.start, spell.end)})
    found = []
    for start, end in pairwise(moments):
        inside = tuple(s for s in spells if s.start <= start and end <= s.end)
        if inside:
            found.append(Setting(start, end, 0, inside))
    return found


def _as_long_as_one_setting_does(segments: list[Setting]) -> list[Setting]:
    """The leading segments (at least one) that the first one's heat suits, with the oven on throughout."""
    group: list[Setting] = []
    want = _within_all(segments[0], _wanted_first(segments[0]))
    for segment in segments:
        suits = all(s.use.low <= want <= s.use.high for s in segment.spells)
        if group and (not suits or segment.off or group[0].off or segment.start - group[-1].end >= COLD_AFTER_MINUTES):
            break
        group.append(segment)
    return group


def changes(problem: Problem, oven: int, dial: list[Setting]) -> list[Change]:
    """When to turn the dial for each setting the oven does not already have."""
    facts = problem.ovens[oven]
    found: list[Change] = []
    has = problem.ovens_now.get(oven)
    before: Setting | None = None
    if has is not None and has.celsius is not None:
        before = Setting(has.used_until, has.used_until, has.celsius, ())
    for setting in dial:
        is_on = before is not None and not before.off and setting.start - before.end < COLD_AFTER_MINUTES
        stands_right = before is not None and is_on and before.celsius == setting.celsius
        if not setting.off and not stands_right:
            came_from = before.celsius if before is not None and is_on else None
            earliest = setting.start - _minutes_ahead(facts, before, setting, is_on)
            first = min(setting.spells, key=lambda s: (s.start != setting.start, s.hold, s.job))
            ajar = facts.rates.ajar is not None and came_from is not None and setting.celsius < came_from
            found.append(Change(earliest, setting.start, setting.celsius, came_from, first.job, ajar))
        before = setting
    return found


def _minutes_ahead(facts: OvenFacts, before: Setting | None, setting: Setting, is_on: bool) -> int:
    """Minutes by which to turn the dial early: from cold, from the setting before, or from the heat that is left."""
    if before is None:
        return facts.change_minutes(round(ROOM_CELSIUS), setting.celsius)
    gap = setting.start - before.end
    if is_on:
        return min(facts.change_minutes(before.celsius, setting.celsius), gap)
    return min(minutes_to_reheat(facts.rates, before.left_at, gap, setting.celsius), gap)
