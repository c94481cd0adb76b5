"""What an oven is set to and when, read off an answer: which steps share a setting, when it must heat or cool. Pure."""

from dataclasses import dataclass
from itertools import pairwise

from board.kitchen.heat import ROOM_CELSIUS
from board.timetable.question import OvenUse, Question


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
    """The dial at so many °C from minute to minute, for these spells."""

    start: int
    end: int
    celsius: int
    spells: tuple[InOven, ...]


@dataclass(frozen=True, slots=True)
class Change:
    """The dial is turned at `start` so that the oven is ready at `end`, for `job`."""

    start: int
    end: int
    celsius: int
    before: int | None  # °C it comes from; None from cold
    job: int


COLD_AFTER_MINUTES = 90  # an oven left off that long is taken as cold


def settings(spells: list[InOven]) -> list[Setting]:
    """The dial over time. It is turned as seldom as can be: each setting suits all it can from its start on."""
    segments = _segments(spells)
    found: list[Setting] = []
    while segments:
        group = _as_long_as_one_setting_does(segments)
        low = max(s.use.low for segment in group for s in segment.spells)
        high = min(s.use.high for segment in group for s in segment.spells)
        celsius = max(low, min(high, _wanted_first(group[0])))
        found += [Setting(s.start, s.end, celsius, s.spells) for s in group]
        segments = segments[len(group) :]
    return found


def _wanted_first(segment: Setting) -> int:
    return min(segment.spells, key=lambda s: s.start).use.want


def _segments(spells: list[InOven]) -> list[Setting]:
    """Stretches between two moments at which something enters or leaves; empty ones left out, no setting yet."""
    moments = sorted({m for spell in spells for m in (spell.start, spell.end)})
    found = []
    for start, end in pairwise(moments):
        inside = tuple(s for s in spells if s.start <= start and end <= s.end)
        if inside:
            found.append(Setting(start, end, 0, inside))
    return found


def _as_long_as_one_setting_does(segments: list[Setting]) -> list[Setting]:
    """The first segments that the heat wanted first suits, while the oven stays on between them. At least one."""
    group: list[Setting] = []
    want = _wanted_first(segments[0])
    for segment in segments:
        suits = all(s.use.low <= want <= s.use.high for s in segment.spells)
        if group and (not suits or segment.start - group[-1].end >= COLD_AFTER_MINUTES):
            break
        group.append(segment)
    return group


def changes(question: Question, oven: int, dial: list[Setting]) -> list[Change]:
    """When to turn the dial ahead of each setting that the oven does not already have."""
    facts = question.ovens[oven]
    found: list[Change] = []
    before: Setting | None = None
    for setting in dial:
        is_on = before is not None and setting.start - before.end < COLD_AFTER_MINUTES
        if before is None or not is_on or before.celsius != setting.celsius:
            came_from = before.celsius if before is not None and is_on else None
            minutes = facts.change_minutes(round(ROOM_CELSIUS) if came_from is None else came_from, setting.celsius)
            earliest = setting.start - minutes if before is None else max(setting.start - minutes, before.end)
            first = min(setting.spells, key=lambda s: (s.start != setting.start, s.hold, s.job))
            found.append(Change(earliest, setting.start, setting.celsius, came_from, first.job))
        before = setting
    return found
