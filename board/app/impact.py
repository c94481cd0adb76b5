"""What lessons change: how often each course is on time, and what starts at another time, from new timetables."""

import time
from collections.abc import Mapping, Sequence
from contextlib import suppress
from dataclasses import replace

from board.app import words
from board.app.learning import Learning, Taking, changed
from board.app.terminal import interrupts
from board.app.timetables import Telling, sheet_of
from board.base.errors import Trouble
from board.learning.changes import Lesson, taught
from board.learning.effect import Alone, CourseEffect, Effect
from board.learning.moves import moved_most, moves
from board.plan.edit.edits import Together, try_all, untried
from board.schedule.solution import COSTLY
from board.sheet import said
from board.sheet.run_sheet import RunSheet
from board.sheet.told import What, which

PLAYED_EVENINGS, SEED = 4_000, 1
LEAST_SHARE = 0.01  # of the evenings; a host would not notice less
ALONE_SECONDS = 10.0
LEAST_SECONDS = 0.5  # for a timetable, however little time is left

Shares = Mapping[str, float]


def effect(learning: Learning, taken: Sequence[Lesson], limit: float | None = None, *, each: bool = False) -> Effect:
    """What these lessons change in the plan. `limit`: seconds for all its timetables; `each`: also solve every lesson
    that matters on its own, until the keyboard stops it. Raises Trouble."""
    until = None if limit is None else time.perf_counter() + limit

    def left() -> float | None:
        return None if until is None else max(LEAST_SECONDS, until - time.perf_counter())

    before = sheet_of(learning.path, plan=learning.file, limit=None if limit is None else limit / 3)
    after: RunSheet | None = None
    stopped = None
    try:
        after = _anew(learning, taken, left(), before)
    except Trouble as trouble:
        stopped = str(trouble)

    from board.odds.many import on_time  # after the sheets: a plan that fails need not wait for numpy

    def shares(sheet: RunSheet) -> Shares:
        return on_time(sheet, PLAYED_EVENINGS, SEED, assume=True)

    by_plan, as_learned = shares(before), shares(taught(before, taken))
    anew = shares(after) if after is not None else {}
    numbers = {lesson.name: n for n, lesson in enumerate(learning.found.lessons, 1)}
    alone = [
        Alone(numbers[lesson.name], lesson, courses)
        for lesson in taken
        if (courses := _changed_odds(by_plan, shares(taught(before, [lesson]))))
    ]
    alone.sort(key=lambda a: (-_most(a), a.number))
    unweighed: list[int] = []
    if each and len(taken) > 1:
        with Telling() as telling, interrupts() as stopped_at, suppress(KeyboardInterrupt):
            unweighed = [one.number for one in alone]
            for n, one in enumerate(alone):
                if stopped_at.is_set() or (until is not None and time.perf_counter() >= until):
                    break
                seconds = min(left() or ALONE_SECONDS, ALONE_SECONDS)
                telling.trying(words.trying_alone(n + 1, len(alone), one.lesson.name))
                with suppress(Trouble):
                    other = _anew(learning, [one.lesson], seconds, before)
                    if not stopped_at.is_set():
                        alone[n] = _worked_out(one, before, other, shares(other))
                if not stopped_at.is_set():
                    unweighed.remove(one.number)
    courses = tuple(CourseEffect(name, by_plan[name], as_learned[name], anew.get(name)) for name in by_plan)
    if after is None:
        return Effect(courses, tuple(alone), stopped=stopped, unweighed=tuple(unweighed))
    changed_by = _between(before, after)
    return replace(changed_by, courses=courses, alone=tuple(alone), unweighed=tuple(unweighed))


def effect_of_taking(learning: Learning, made: Taking, limit: float | None = None) -> Effect:
    """What the timetable of the plan with lessons in it, not written yet, moves and gives up. It is kept, so that it is
    the plan's once that is written. Raises Trouble."""
    before = sheet_of(learning.path, plan=learning.file, limit=limit)
    return _between(before, sheet_of(learning.path, plan=made.file, limit=limit, near=before))


def _between(before: RunSheet, after: RunSheet) -> Effect:
    """What another timetable moves and gives up."""
    gone, there = _given_up(before), _given_up(after)
    return Effect(
        given_up=tuple(sorted(text for told, text in there.items() if told not in gone)),
        no_longer=tuple(sorted(text for told, text in gone.items() if told not in there)),
        moved=moves(before, after),
        stops=_new_stops(before, after),
        proved=_least_given_up(after),
    )


def _least_given_up(sheet: RunSheet) -> bool:
    """Whether no timetable is known to give up less; what has moved as little as may be is the best in no more."""
    return not any(each.aim in COSTLY for each in sheet.still_open)


def _new_stops(before: RunSheet, after: RunSheet) -> tuple[str, ...]:
    known = {which(stop) for stop in before.stops}
    return tuple(said.stop(stop) for stop in after.stops if which(stop) not in known)


def _given_up(sheet: RunSheet) -> dict[What | str, str]:
    """What a sheet gives up, with its words."""
    return {each.what: said.what(sheet, each.what) for each in sheet.given_up}


def _anew(learning: Learning, taken: Sequence[Lesson], limit: float | None, before: RunSheet) -> RunSheet:
    """The timetable of the plan with these lessons in it, with as little moved as may be. Raises Trouble."""
    tried = try_all(untried(learning.text, learning.file), [Together(tuple(lesson.edit for lesson in taken))])
    file = changed(learning, taken)[1] if tried is None else tried.file  # a refusal is told by the one that writes
    return sheet_of(learning.path, plan=file, limit=limit, near=before)


def _changed_odds(by_plan: Shares, as_learned: Shares) -> tuple[CourseEffect, ...]:
    return tuple(
        CourseEffect(name, share, as_learned[name], None)
        for name, share in by_plan.items()
        if abs(as_learned[name] - share) >= LEAST_SHARE
    )


def _most(alone: Alone) -> float:
    return max(abs(each.by_plan - each.as_learned) for each in alone.courses)


def _worked_out(alone: Alone, before: RunSheet, after: RunSheet, shares: Shares) -> Alone:
    """A lesson solved on its own. If the solution is not proved and gives up more than the present timetable, the time
    was too short: returned unchanged."""
    gone = _given_up(before)
    more = (*_new_stops(before, after), *(text for told, text in _given_up(after).items() if told not in gone))
    if more and not _least_given_up(after):
        return alone
    courses = tuple(CourseEffect(c.name, c.by_plan, c.as_learned, shares[c.name]) for c in alone.courses)
    moved = moved_most(before, after, alone.lesson.about)
    return Alone(alone.number, alone.lesson, courses, found=True, moved=moved, given_up=more)
