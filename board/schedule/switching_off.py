"""When ovens and rings are switched off, read off a timetable: after the last use before they stand unused. Pure."""

from collections.abc import Iterator

from board.schedule.dependencies import Spell
from board.schedule.oven_dial import COLD_AFTER_MINUTES, InOven, Setting

RINGS_UNUSED_MINUTES = 4 * 60  # rings that nobody needs for so long are looked at again; ours


def ovens_off(dial: list[Setting]) -> Iterator[tuple[int, tuple[InOven, ...]]]:
    """The minute of each, and what was in the oven since it was lit; none where a rest has switched it off already."""
    inside: dict[InOven, None] = {}
    for number, setting in enumerate(dial):
        following = dial[number + 1] if number + 1 < len(dial) else None
        inside |= dict.fromkeys(setting.spells)
        if setting.off:
            inside = {}
        elif following is None or following.start - setting.end >= COLD_AFTER_MINUTES:
            yield setting.end, tuple(inside)
            inside = {}


def rings_off(spells: list[Spell]) -> Iterator[tuple[int, tuple[tuple[int, str], ...]]]:
    """The minute at the end of each stretch of cooking on rings, and the jobs whose end or start frees them; `spells`
    in order of start."""
    frees: dict[tuple[int, str], None] = {}
    end = 0
    for spell in spells:
        if frees and spell.start - end >= RINGS_UNUSED_MINUTES:
            yield end, tuple(frees)
            frees = {}
        frees[spell.free_after, spell.anchor] = None
        end = max(end, spell.end)
    if frees:
        yield end, tuple(frees)
