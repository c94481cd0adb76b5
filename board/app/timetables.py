"""The timetable of a plan file: cached, or solved now with its progress shown. Only here is the solver loaded for a
whole plan."""

import sys
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from board.app import words
from board.base import words as shared
from board.base.errors import Trouble
from board.base.plain import one_line
from board.base.plan_digest import digest_of
from board.files.paths import cache
from board.files.plans import STDIN, read_plan_file, read_text
from board.sheet.changed import changed
from board.sheet.run_sheet import RunSheet, Slot

if TYPE_CHECKING:
    import threading
    from collections.abc import Callable, Iterable

    from board.checks.sheet.assessed import Assessed
    from board.plan.load import PlanFile
    from board.plan.snag import Snag
    from board.schedule.problem import Problem
    from board.schedule.solution import Solution
    from board.schedule.solver.solve import Progress, Stay

# Of the seconds a host gives, the share for the search, and by when what explains has ended: the rest is for reading,
# checking and printing. Ours.
SEARCHING, EXPLAINED = 0.6, 0.72
MORE_SECONDS = 20.0  # to explain, where no limit is given


def sheet_of(
    path: Path,
    *,
    plan: "PlanFile | None" = None,
    fresh: bool = False,
    limit: float | None = None,
    near: RunSheet | None = None,
) -> RunSheet:
    """The plan's run sheet: from the cache, or solved within `limit` seconds; if not `fresh`, with as little moved as
    may be from the last one of the file, or from the sheet `near`, which then counts for more than company, give and
    the like. `plan`: the file, if it was read already. Raises Trouble.

    A sheet that is not proved optimal under a `limit` is not cached.
    """
    digest = plan.digest if plan is not None else digest_of(read_text(path))
    if digest and not fresh and (sheet := cache().get(digest)) is not None:
        return sheet
    stay: Stay = "last" if near is None else "first"
    if near is None and not fresh:
        near = cache().last(path)

    from board.checks.sheet.assessed import of_plan

    assessed = of_plan(plan if plan is not None else read_plan_file(path))
    refuse_stopped(assessed.snags)
    return _made(assessed, limit, near, stay).the_sheet


def with_timetable(
    plan: "Assessed",
    path: Path,
    *,
    limit: float | None = None,
    near: RunSheet | None = None,
    halt: "threading.Event | None" = None,
) -> "Assessed":
    """A plan without stops, with its timetable, made as `sheet_of` does; `halt`, once it is set, ends the search.
    Raises Trouble."""
    if (sheet := cache().get(plan.file.digest)) is not None:
        return with_all(plan, sheet)
    return _made(plan, limit, near if near is not None else cache().last(path), halt=halt)


def in_memory(plan: "Assessed", *, limit: float | None = None) -> "Assessed":
    """A plan without stops, with its timetable, of which nothing is kept. Raises Trouble."""
    return with_all(plan, _work_out(plan.file, limit, None))


def _made(
    plan: "Assessed",
    limit: float | None,
    near: RunSheet | None,
    stay: "Stay" = "last",
    halt: "threading.Event | None" = None,
) -> "Assessed":
    """With a new timetable, which is cached unless it is unproved under a `limit` or its search was ended, or its plan
    only tried: without a digest."""
    assessed = with_all(plan, _work_out(plan.file, limit, near, stay, halt))
    cut_short = limit is not None or (halt is not None and halt.is_set())
    if plan.file.digest and (assessed.the_sheet.proved or not cut_short):
        cache().put(assessed.the_sheet)
    return assessed


def with_all(plan: "Assessed", sheet: RunSheet) -> "Assessed":
    """The plan with a sheet that carries all that is kept with it: warnings, and what is bought for the freezer."""
    from board.checks.sheet.assessed import with_sheet
    from board.shopping.freezer import with_bought_frozen

    return with_sheet(plan, with_bought_frozen(plan.file, sheet))


def moved_since(path: Path, sheet: RunSheet, teller: str) -> tuple[tuple[Slot, Slot], ...]:
    """What begins at another time than in the plan file's sheet before (as it was, as it is), in order of time; told
    once by each `teller`."""
    before = cache().before(path, sheet, teller) if path != STDIN else None
    if before is None:
        return ()
    return tuple((old, new) for old, new in changed(before, sheet).moved if old.start != new.start)


def refuse_stopped(snags: "Iterable[Snag]") -> None:
    """Raises Trouble (code 2) if a plan has snags that must be mended first."""
    from board.checks.plan.every import stops

    if found := stops(snags):
        raise Trouble("\n".join([*(snag.render() for snag in found), shared.MORE_MAY_SHOW]), code=2)


def _work_out(
    plan: "PlanFile",
    limit: float | None,
    near: RunSheet | None,
    stay: "Stay" = "last",
    halt: "threading.Event | None" = None,
) -> RunSheet:
    """Solves the plan, with its progress shown on a terminal. Raises Trouble if no solution was found."""
    from board.schedule.near import starts_on
    from board.schedule.solver.feasible import can
    from board.schedule.solver.search import Clock
    from board.schedule.solver.solve import LIMIT_SECONDS, NoAnswer, solve
    from board.schedule.to_run_sheet import make_sheet

    seconds = limit * SEARCHING if limit else LIMIT_SECONDS
    clock = Clock(limit * EXPLAINED if limit else LIMIT_SECONDS + MORE_SECONDS, halt)

    def solved(problem: "Problem") -> "Solution":
        known = starts_on(near, problem, plan.plan.date) if near is not None else None
        kept = stay if known is not None else None
        return solve(problem, seconds, watch=telling.progress, near=known, stay=kept, halt=halt)

    with Telling() as telling:
        try:
            # Of a plan that is only tried, nobody asks what stands behind what is given up.
            return make_sheet(plan, solved, partial(can, clock=clock) if plan.digest else None, clock.left)
        except NoAnswer:
            raise Trouble(words.NO_ANSWER) from None


class Telling:
    """A line on the terminal with the progress of a long search; cleared at the end, silent without a terminal."""

    def __enter__(self) -> "Telling":
        watched = sys.stderr.isatty()
        self.progress: Callable[[Progress], None] | None = self._progress if watched else None
        self._watched = watched
        return self

    def _progress(self, progress: "Progress") -> None:
        self._say(words.progress(progress.aim, progress.value, progress.bound))

    def trying(self, what: str) -> None:
        """Shows what is being tried."""
        if self._watched:
            self._say(words.trying(one_line(what)))

    def _say(self, text: str) -> None:
        sys.stderr.write(f"\r\x1b[K{text[:78]}")
        sys.stderr.flush()

    def __exit__(self, *_: object) -> None:
        if self._watched:
            sys.stderr.write("\r\x1b[K")
