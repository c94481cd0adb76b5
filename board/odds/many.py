"""A run sheet → the odds of its evening. Pure: the same sheet, number of evenings and seed give the same result.

Evenings are played ten thousand at a time, so a million of them need little memory; of each, only the lateness of its
courses is kept.
"""

import math
from collections import Counter, defaultdict
from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import timedelta

import numpy as np

from board.odds.assumed import with_spreads
from board.odds.attribute import blame
from board.odds.draw import Draw, Minutes, three_point
from board.odds.result import BY_SHARES, WITHIN_MINUTES, Blame, Cause, CourseOdds, Help, Odds
from board.odds.simulate import Evenings
from board.sheet.run_sheet import CourseSlot, RunSheet

AT_ONCE = 10_000
CRUMB = 1e-6  # minutes; less than this is rounding, not lateness


@dataclass
class _Tally:
    """Sums over evenings, by course. With a cause one minute shorter, `more` evenings are within 5 min and `saved`
    minutes of lateness are avoided."""

    late: dict[str, list[Minutes]] = field(default_factory=dict)
    blamed: Counter[tuple[str, Cause]] = field(default_factory=Counter)
    more: Counter[tuple[Cause, str]] = field(default_factory=Counter)
    saved: defaultdict[tuple[Cause, str], float] = field(default_factory=lambda: defaultdict(float))


def odds(
    sheet: RunSheet, evenings: int = 10_000, seed: int = 1, draw: Draw = three_point, *, assume: bool = False
) -> Odds:
    """Plays that many evenings (at least 1). `draw` gives the minutes of whatever varies. `assume`: what has one figure
    gets the spread of its kind of work."""
    pieces = sittings = 0
    if assume:
        sheet, pieces, sittings = with_spreads(sheet)
    many = Evenings(sheet, draw)
    rng = np.random.Generator(np.random.PCG64(seed))
    tally = _Tally(late={course.name: [] for course in sheet.courses})
    for count in _batches(evenings):
        _play(many, rng, count, tally)
    late = {name: np.concatenate(parts) for name, parts in tally.late.items()}
    work = [slot for slot in sheet.slots if slot.lasts is not None and slot.end > slot.start]
    return Odds(
        plan=sheet.plan,
        zone=sheet.zone,
        evenings=evenings,
        seed=seed,
        pieces=len(work),
        spreads=sum(each.cause.kind == "work" for each in many.varying),
        sittings=sum(each.cause.kind == "sitting" for each in many.varying),
        assumed=(pieces, sittings),
        courses=tuple(_course(course, late[course.name]) for course in sheet.courses),
        blame=tuple(Blame(name, cause, n / evenings) for (name, cause), n in tally.blamed.most_common()),
        help=_help(many, tally, evenings),
    )


def on_time(
    sheet: RunSheet, evenings: int, seed: int = 1, draw: Draw = three_point, *, assume: bool = False
) -> dict[str, float]:
    """By course, the share of evenings within 5 min: the same as in `odds`, without looking for causes."""
    many = Evenings(with_spreads(sheet)[0] if assume else sheet, draw)
    rng = np.random.Generator(np.random.PCG64(seed))
    within: Counter[str] = Counter()
    for count in _batches(evenings):
        for name, minutes in many.late(many.play(many.draw(rng, count)), count).items():
            within[name] += _within(minutes)
    return {course.name: within[course.name] / evenings for course in sheet.courses}


def _batches(evenings: int) -> Iterator[int]:
    for done in range(0, evenings, AT_ONCE):
        yield min(AT_ONCE, evenings - done)


def _play(many: Evenings, rng: np.random.Generator, count: int, tally: _Tally) -> None:
    drawn = many.draw(rng, count)
    played = many.play(drawn)
    late = many.late(played, count)
    for name, minutes in late.items():
        tally.late[name].append(minutes)
    for name, causes in blame(many, drawn, played, late).items():
        for cause, n in causes.items():
            tally.blamed[name, cause] += n
    for each in many.varying:
        sooner = many.late(many.play_sooner(drawn, played, each), count)
        for name, minutes in sooner.items():
            tally.more[each.cause, name] += _within(minutes) - _within(late[name])
            tally.saved[each.cause, name] += _lateness(late[name]) - _lateness(minutes)


def _within(late: Minutes) -> int:
    return int(np.count_nonzero(late <= WITHIN_MINUTES))


def _lateness(late: Minutes) -> float:
    return float(np.maximum(late, 0.0).sum())


def _course(course: CourseSlot, late: Minutes) -> CourseOdds:
    times = np.quantile(late, BY_SHARES, method="inverted_cdf")
    minutes, evenings = np.unique(np.ceil(late - CRUMB).astype(np.int64), return_counts=True)
    return CourseOdds(
        name=course.name,
        wanted=course.wanted,
        planned=course.served,
        within=_within(late) / len(late),
        by={
            share: course.wanted + timedelta(minutes=math.ceil(time - CRUMB))
            for share, time in zip(BY_SHARES, times.tolist(), strict=True)
        },
        mean_late=_lateness(late) / len(late),
        spread=dict(zip(minutes.tolist(), evenings.tolist(), strict=True)),
    )


def _help(many: Evenings, tally: _Tally, evenings: int) -> tuple[Help, ...]:
    """Greatest first: by the summed gain in all courses' chances, then by the lateness saved."""
    found = [
        Help(
            each.cause,
            {name: tally.more[each.cause, name] / evenings for name in many.wanted},
            {name: tally.saved[each.cause, name] / evenings for name in many.wanted},
        )
        for each in many.varying
    ]
    return tuple(sorted(found, key=lambda help_: (-sum(help_.gain.values()), -sum(help_.saved.values()))))
