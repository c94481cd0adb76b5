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
    after_job: int | None  # whose leaving it waits for


COLD_AFTER_MINUTES = 90  # an oven left off that long is taken as cold


def settings(spells: list[InOven]) -> list[Setting]:
    """The dial over time. Between two moments at which something enters or leaves, it suits all inside."""
    moments = sorted({m for spell in spells for m in (spell.start, spell.end)})
    found: list[Setting] = []
    for start, end in pairwise(moments):
        inside = tuple(s for s in spells if s.start <= start and end <= s.end)
        if not inside:
            continue
        low, high = max(s.use.low for s in inside), min(s.use.high for s in inside)
        before = found[-1] if found and found[-1].end == start else None
        keep = (
            before.celsius if before and low <= before.celsius <= high else min(inside, key=lambda s: s.start).use.want
        )
        found.append(Setting(start, end, max(low, min(high, keep)), inside))
    return found


def changes(question: Question, oven: int, dial: list[Setting]) -> list[Change]:
    """When to turn the dial ahead of each setting that the oven does not already have."""
    facts = question.ovens[oven]
    found: list[Change] = []
    before: Setting | None = None
    for setting in dial:
        known = before is not None and setting.start - before.end < COLD_AFTER_MINUTES
        if not (known and before is not None and before.celsius == setting.celsius):
            came_from = before.celsius if known and before else None
            minutes = facts.change_minutes(came_from if came_from is not None else round(ROOM_CELSIUS), setting.celsius)
            newcomer = min((s for s in setting.spells if s.start == setting.start), key=lambda s: s.job, default=None)
            if newcomer is not None and not newcomer.hold:
                earliest = before.end if known and before else 0
                start = max(setting.start - minutes, earliest)
                left = max(before.spells, key=lambda s: s.end).job if known and before else None
                found.append(Change(start, setting.start, setting.celsius, came_from, newcomer.job, left))
        before = setting
    return found
