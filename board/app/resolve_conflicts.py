"""From a plan with clashes to one without: finds ways out, and writes the chosen one into the plan file."""

import difflib
from dataclasses import dataclass
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from board.app import words
from board.app.timetables import Telling, refuse_stopped, with_all
from board.base.errors import Trouble
from board.files.paths import cache
from board.files.plans import plan_in, read_text, write_plan
from board.schedule.conflicts.ways_out import WayOut
from board.sheet.run_sheet import RunSheet

if TYPE_CHECKING:
    import threading

    from board.plan.load import PlanFile

ALL_SECONDS = 120.0  # for the timetable, its clashes and the ways out together, unless the host says otherwise
OF_ALL, OF_THE_REST = 0.5, 0.3  # the most of it for the timetable; and of what is left, for the clashes, or one search
TRIED_SECONDS = 6.0  # for one proposal
FIRST_SECONDS, LEAST_SECONDS = 3.0, 0.5  # at the least, for the timetable; and for a proposal that is worked out
HANDFUL = 5  # ways out that are always looked for, so that one has the same number whenever it is asked for


@dataclass(frozen=True)
class Mending:
    """A plan's text, its run sheet, and the ways out of what the sheet gives up. `all_tried`: there was time for all
    that might be behind it or help."""

    text: str
    sheet: RunSheet
    ways: list[WayOut]
    all_tried: bool = True


def find_ways(path: Path, number: int, limit: float | None = None) -> Mending:
    """Solves the plan and, if it gives something up, finds up to `number` ways out, all of it within `limit` seconds.
    Raises Trouble."""
    return ways_of(read_text(path), path, number, limit)


def ways_of(
    text: str, path: Path, number: int, limit: float | None = None, halt: "threading.Event | None" = None
) -> Mending:
    """The same of a text that may not be in the plan's file yet; `halt`, once it is set, ends the search."""
    from board.checks.plan.every import check, endangers, stops
    from board.checks.sheet.assessed import of_plan
    from board.schedule.conflicts.explain import clashes_of
    from board.schedule.conflicts.proposal import Case
    from board.schedule.conflicts.ways_out import Means, ways_out
    from board.schedule.formulate import problem_of
    from board.schedule.near import starts_of, starts_on
    from board.schedule.problem import Problem
    from board.schedule.solution import AIMS, Solution
    from board.schedule.solver.feasible import can, can_be_whole
    from board.schedule.solver.search import Clock
    from board.schedule.solver.solve import LIMIT_SECONDS, NoAnswer, solve
    from board.schedule.to_run_sheet import to_run_sheet

    clock = Clock(limit or ALL_SECONDS, halt)
    left, can_still = clock.left, partial(can, clock=clock)
    file = plan_in(text, path)
    assessed = of_plan(file)
    refuse_stopped(assessed.snags)
    problem = problem_of(file.plan, file.filled)
    with Telling() as telling:
        try:
            share = max(OF_ALL * left(), min(FIRST_SECONDS, left()))
            last = cache().last(path)
            near = starts_on(last, problem, file.plan.date) if last is not None else None
            seconds = min(LIMIT_SECONDS, share)
            solution = solve(
                problem,
                seconds,
                watch=telling.progress,
                near=near,
                stay="last" if near is not None else None,
                halt=halt,
            )
        except NoAnswer:
            raise Trouble(words.NO_ANSWER) from None
    spared = (1 - OF_THE_REST) * left()
    clashes = clashes_of(problem, solution, can_still, lambda: left() - spared)
    all_told = left() > spared
    assessed = with_all(assessed, to_run_sheet(file, problem, solution, clashes))
    sheet = assessed.the_sheet
    if sheet.proved and all_told:
        cache().put(sheet)
    if not sheet.given_up:
        return Mending(text, sheet, [])

    def solved(asked: Problem, aims: tuple[str, ...]) -> Solution | None:
        longest = TRIED_SECONDS if aims == AIMS else max(TRIED_SECONDS, OF_THE_REST * left())
        try:
            seconds = max(LEAST_SECONDS, min(longest, left()))
            return solve(
                asked,
                seconds,
                aims,
                near=starts_of(solution, problem, asked),
                stay="last" if aims == AIMS else None,
                halt=halt,
            )
        except NoAnswer:
            return None

    def sound(changed: "PlanFile") -> bool:
        snags = check(changed)
        return not stops(snags) and not endangers(assessed.snags, snags)

    def safe(changed: "PlanFile", timetable: RunSheet) -> bool:
        return not endangers(assessed.snags, with_all(of_plan(changed), timetable).snags)

    case = Case(file, problem, solution, clashes)
    with Telling() as telling:
        means = Means(solved, partial(can_be_whole, clock=clock), sound, safe, telling.trying, left)
        found = ways_out(text, case, sheet, max(number, HANDFUL), means)
    return Mending(text, sheet, found.ways, found.all_tried and all_told)


def take(path: Path, mending: Mending, number: int) -> tuple[WayOut, list[str]]:
    """Writes way out `number`, counted from 1, into the plan. Returns it and the changed lines, each with `+` or `-`
    before it. Raises Trouble."""
    from board.checks.sheet.assessed import of_plan

    if not 1 <= number <= len(mending.ways):
        raise Trouble(words.no_such_way(number, len(mending.ways)))
    way = mending.ways[number - 1]
    write_plan(path, mending.text, way.text)
    if way.sheet.proved and not way.remains:  # what remains is told with the clash behind it
        cache().put(with_all(of_plan(plan_in(way.text, path)), way.sheet).the_sheet)
    lines = difflib.unified_diff(mending.text.splitlines(), way.text.splitlines(), lineterm="", n=0)
    return way, [line for line in lines if line[:1] in "+-" and line[:3] not in ("+++", "---")]
