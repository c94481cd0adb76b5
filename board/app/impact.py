"""What lessons change: how often each course is on time, and what starts at another time, from new timetables."""

import time
from collections.abc import Mapping, Sequence
from contextlib import suppress

from board.app import words
from board.app.learning import Learning, changed
from board.app.timetables import Telling, sheet_of
from board.base.errors import Trouble
from board.learning.changes import Lesson, taught
from board.learning.effect import Alone, CourseEffect, Effect
from board.learning.moves import moved_most, moves
from board.plan.edit.edits import Together, try_all, untried
from board.sheet import said
from board.sheet.run_sheet import RunSheet
from board.sheet.told import What, which

PLAYED_EVENINGS, SEED = 4_000, 1
LEAST_SHARE = 0.01  # of the evenings; a host would not notice less
MOST_ALONE = 5  # lessons solved on their own, unless all are asked for
ALONE_SECONDS = 10.0
LEAST_SECONDS = 0.5  # for a timetable, however little time is left

Shares = Mapping[str, float]


def effect(learning: Learning, taken: Sequence[Lesson], limit: float | None = None, *, each: bool = False) -> Effect:
    """What these lessons change in the plan. `limit`: seconds for all its timetables; `each`: also solve every lesson
    that matters on its own, not only the strongest. Raises Trouble."""
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
    if len(taken) > 1:
        tried = len(alone) if each else min(len(alone), MOST_ALONE)
        with Telling() as telling:
            for n, one in enumerate(alone[:tried]):
                if until is not None and time.perf_counter() >= until:
                    break
                seconds = min(left() or ALONE_SECONDS, ALONE_SECONDS)
                telling.trying(words.trying_alone(n + 1, tried, one.lesson.name))
                with suppress(Trouble):
                    other = _anew(learning, [one.lesson], seconds, before)
                    alone[n] = _worked_out(one, before, other, shares(other))
    gone = _given_up(before)
    there = _given_up(after) if after is not None else gone
    return Effect(
        courses=tuple(CourseEffect(name, by_plan[name], as_learned[name], anew.get(name)) for name in by_plan),
        alone=tuple(alone),
        given_up=tuple(sorted(text for told, text in there.items() if told not in gone)),
        no_longer=tuple(sorted(text for told, text in gone.items() if told not in there)),
        moved=moves(before, after) if after is not None else (),
        stopped=stopped,
        stops=_new_stops(before, after) if after is not None else (),
        proved=after is None or after.proved,
    )


def stops_taken_up(learning: Learning, limit: float | None = None) -> tuple[str, ...]:
    """Stops, in words, in the plan file as it is now that were not there before it was changed. Raises Trouble."""
    return _new_stops(sheet_of(learning.path, plan=learning.file, limit=limit), sheet_of(learning.path, limit=limit))


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
    if more and not after.proved:
        return alone
    courses = tuple(CourseEffect(c.name, c.by_plan, c.as_learned, shares[c.name]) for c in alone.courses)
    moved = moved_most(before, after, alone.lesson.about)
    return Alone(alone.number, alone.lesson, courses, found=True, moved=moved, given_up=more)
