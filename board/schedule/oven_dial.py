"""Oven settings over time, read off a solution: which steps share one, when it heats or cools. Pure; °C, minutes."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from itertools import pairwise, takewhile

from board.facts.heat import ROOM_CELSIUS, minutes_to_reheat
from board.schedule.problem import LONGEST_CHANGE, OvenFacts, OvenUse, Problem


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


DIAL_STEP = 5  # °C; ours
COLD_AFTER_MINUTES = 90  # an oven off for this long counts as cold; ours


Takes = Callable[[int, int], int]  # minutes an oven takes from one setting to another, in °C
# Whether the second goes on with the first's food, the dial turned over it.
TakesOver = Callable[[InOven, InOven], bool]


def settings(spells: list[InOven], takes: Takes, takes_over: TakesOver = lambda *_: False) -> list[Setting]:
    """The settings in order, as few as possible: each lasts as long as it suits everything inside.

    The dial is never turned while something bakes. Where there is no time to change between two things that one setting
    would suit, both have that setting; where that leaves too little time for what comes after, the nearest to what is
    wanted that leave enough are looked for among all.
    """
    return [setting for lit in _lit(_segments(spells)) for setting in _while_lit(lit, takes, takes_over)]


def _lit(segments: list[Setting]) -> list[list[Setting]]:
    """Stretches over which the oven stays on, a rest among them by itself."""
    found: list[list[Setting]] = []
    for segment in segments:
        last = found[-1][-1] if found else None
        if last is None or last.off or segment.off or segment.start - last.end >= COLD_AFTER_MINUTES:
            found.append([])
        found[-1].append(segment)
    return found


def _while_lit(segments: list[Setting], takes: Takes, takes_over: TakesOver) -> list[Setting]:
    found: list[Setting] = []
    while len(found) < len(segments):
        group, celsius = _as_long_as_one_setting_does(found, segments[len(found) :], takes, takes_over)
        found += [_at(segment, celsius) for segment in group]
    if all(_is_in_time(found[:n], found[n], takes, takes_over) for n in range(1, len(found))):
        return found
    return _all_in_time(segments, takes, takes_over) or found


def _at(segment: Setting, celsius: int) -> Setting:
    return Setting(segment.start, segment.end, celsius, segment.spells)


def _all_in_time(segments: list[Setting], takes: Takes, takes_over: TakesOver) -> list[Setting]:
    """The settings, in steps of a dial, that give every change its minutes: the fewest changes, then the nearest to
    what is wanted. Half-way through a segment in which nothing bakes it may be turned too, for what comes after. Empty
    if there are none."""
    uses = [spell.use for segment in segments for spell in segment.spells]
    heats = {heat for use in uses for heat in (use.want, *range(use.low, use.high + 1, DIAL_STEP), use.high)}
    reached: dict[tuple[int, int], tuple[int, int, list[Setting]]] = {(0, 0): (0, 0, [])}  # by heat, and since when
    for segment in (half for each in segments for half in _halves(each)):
        suits, wanted = _suiting(segment.spells), _wanted_first(segment)
        further: dict[tuple[int, int], tuple[int, int, list[Setting]]] = {}
        for (celsius, since), (turns, off, before) in reached.items():
            for heat in {0} if segment.off else {suits.nearest(heat) for heat in heats}:
                setting = _at(segment, heat)
                if before and not _is_in_time(before, setting, takes, takes_over):
                    continue
                turned = not before or heat != celsius
                now = (turns + turned, off + abs(heat - wanted), [*before, setting])
                key = (heat, segment.start if turned else since)
                further[key] = min(further.get(key, now), now, key=lambda each: each[:2])
        reached = further
    return min(reached.values(), key=lambda each: each[:2], default=(0, 0, []))[2]


def _halves(segment: Setting) -> list[Setting]:
    if segment.off or segment.end - segment.start < 2 or not all(spell.hold for spell in segment.spells):
        return [segment]
    middle = (segment.start + segment.end) // 2
    return [
        Setting(segment.start, middle, segment.celsius, segment.spells),
        Setting(middle, segment.end, segment.celsius, segment.spells),
    ]


def _is_in_time(before: list[Setting], setting: Setting, takes: Takes, takes_over: TakesOver) -> bool:
    """Whether the oven comes in time from its last setting to this one, by `_minutes_ahead`."""
    last = before[-1]
    if setting.off or last.off or setting.start - last.end >= COLD_AFTER_MINUTES:
        return True
    needed = takes(last.celsius, setting.celsius)
    return needed <= _time_to_change(before, setting, takes) or _in_no_time(last, setting, takes_over)


def _time_to_change(before: list[Setting], setting: Setting, takes: Takes) -> int:
    """Minutes there are for coming from the last setting to this one, while what is inside bears both."""
    last = before[-1]
    stood = takewhile(lambda s: s.celsius == last.celsius, reversed(before))
    since = max(min(s.start for s in stood), _may_turn_from(before, last.celsius, setting.celsius, takes))
    return max(setting.start - last.end, setting.start - since)


def _wanted_first(segment: Setting) -> int:
    return min(segment.spells, key=lambda s: s.start).use.want


def _segments(spells: list[InOven]) -> list[Setting]:
    """Intervals between moments when something goes in or out; empty ones left out, settings still open."""
    moments = sorted({m for spell in spells for m in (spell.start, spell.end)})
    found = []
    for start, end in pairwise(moments):
        inside = tuple(s for s in spells if s.start <= start and end <= s.end)
        if inside:
            found.append(Setting(start, end, 0, inside))
    return found


@dataclass(frozen=True, slots=True)
class _Range:
    """Temperatures that suit several uses, in whole °C; none where `low` is above `high`."""

    low: int
    high: int

    def __and__(self, other: "_Range") -> "_Range":
        return _Range(max(self.low, other.low), min(self.high, other.high))

    def __bool__(self) -> bool:
        return self.low <= self.high

    def nearest(self, celsius: int) -> int:
        return max(self.low, min(self.high, celsius))


def _suiting(spells: Iterable[InOven]) -> _Range:
    uses = [spell.use for spell in spells]
    return _Range(max(use.low for use in uses), min(use.high for use in uses))


def _as_long_as_one_setting_does(
    before: list[Setting], segments: list[Setting], takes: Takes, takes_over: TakesOver
) -> tuple[list[Setting], int]:
    """The leading segments (at least one) that one heat suits, with the oven on throughout, and that heat in °C."""
    group = segments[:1]
    if group[0].off:
        return group, 0
    suits = _suiting(group[0].spells)
    celsius = suits.nearest(_wanted_first(group[0]))
    last = before[-1] if before else None
    hurried = last is not None and not last.off and group[0].start - last.end < takes(last.celsius, celsius)
    if last is not None and hurried and not _in_no_time(last, group[0], takes_over):
        for spell in last.spells:  # the dial is turned with them inside
            suits = suits & _suiting([spell]) or suits
        celsius = suits.nearest(celsius)
    for segment in segments[1:]:
        if segment.off or segment.start - group[-1].end >= COLD_AFTER_MINUTES:
            break
        now = _suiting(segment.spells)
        both, wanted = suits & now, now.nearest(_wanted_first(segment))
        if now.nearest(celsius) != celsius and (
            not both
            or _in_no_time(group[-1], segment, takes_over)
            or segment.start - max(group[0].start, _may_turn_from(group, celsius, wanted, takes))
            >= takes(celsius, wanted)
        ):
            break
        suits, celsius = both, both.nearest(celsius)
        group.append(segment)
    return group, celsius


def _may_turn_from(inside: Iterable[Setting], before: int, celsius: int, takes: Takes) -> int:
    """The first minute from which the oven may go from one setting to another: what bakes is out, and what is kept
    bears both, or is out before it gets too hot or too cold."""
    spells = {spell for setting in inside for spell in setting.spells}
    firsts = [-LONGEST_CHANGE, *(spell.end for spell in spells if not spell.hold)]
    for spell in (s for s in spells if s.hold and not _bears(s, celsius)):
        farthest = spell.use.high if celsius > before else spell.use.low
        firsts.append(spell.end - max(0, takes(before, farthest) - 1))
    return max(firsts)


def _bears(spell: InOven, celsius: int) -> bool:
    return spell.use.low <= celsius <= spell.use.high


def _in_no_time(last: Setting, segment: Setting, takes_over: TakesOver) -> bool:
    """Whether the dial is turned over food that stays inside, and nothing waits for its heat, nor bakes on."""
    new = [spell for spell in segment.spells if spell not in last.spells]
    if any(not spell.hold for spell in segment.spells if spell not in new):
        return False
    return bool(new) and all(any(takes_over(first, spell) for first in last.spells) for spell in new)


def changes(problem: Problem, oven: int, dial: list[Setting]) -> list[Change]:
    """When to turn the dial for each setting the oven does not already have."""
    facts = problem.ovens[oven]
    found: list[Change] = []
    has = problem.ovens_now.get(oven)
    before: Setting | None = None
    if has is not None and has.celsius is not None:
        before = Setting(has.used_until, has.used_until, has.celsius, ())
    for number, setting in enumerate(dial):
        is_on = before is not None and not before.off and setting.start - before.end < COLD_AFTER_MINUTES
        stands_right = before is not None and is_on and before.celsius == setting.celsius
        if not setting.off and not stands_right:
            came_from = before.celsius if before is not None and is_on else None
            earliest = setting.start - _minutes_ahead(facts, before, setting, dial[:number], is_on)
            first = min(setting.spells, key=lambda s: (s.start != setting.start, s.hold, s.job))
            ajar = facts.rates.ajar is not None and came_from is not None and setting.celsius < came_from
            found.append(Change(earliest, setting.start, setting.celsius, came_from, first.job, ajar))
        before = setting
    return found


def _minutes_ahead(
    facts: OvenFacts, before: Setting | None, setting: Setting, earlier: list[Setting], is_on: bool
) -> int:
    """Minutes by which to turn the dial early: from cold, from the setting before, or from the heat that is left.

    What is still inside may stay meanwhile, as long as it bears the heat.
    """
    if before is None:
        return facts.change_minutes(round(ROOM_CELSIUS), setting.celsius)
    gap = setting.start - before.end
    if is_on:
        there_is = _time_to_change(earlier or [before], setting, facts.change_minutes)
        return min(facts.change_minutes(before.celsius, setting.celsius), there_is)
    return min(minutes_to_reheat(facts.rates, before.left_at, gap, setting.celsius), gap)
