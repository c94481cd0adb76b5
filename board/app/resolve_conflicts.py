"""From a plan with clashes to one without: finds ways out, and writes the chosen one into the plan file."""

import difflib
from dataclasses import dataclass
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
    from board.plan.load import PlanFile

TRIED_SECONDS = 6.0  # for one proposal


@dataclass(frozen=True)
class Mending:
    """A plan's text, its run sheet, and the ways out of what the sheet gives up."""

    text: str
    sheet: RunSheet
    ways: list[WayOut]


def find_ways(path: Path, number: int, limit: float | None = None) -> Mending:
    """Solves the plan within `limit` seconds and, if it gives something up, finds up to `number` ways out. Raises
    Trouble."""
    from board.checks.plan.every import check, endangers, stops
    from board.checks.sheet.assessed import of_plan
    from board.schedule.conflicts.explain import clashes_of
    from board.schedule.conflicts.proposals import Case
    from board.schedule.conflicts.ways_out import Means, ways_out
    from board.schedule.formulate import problem_of
    from board.schedule.problem import Problem
    from board.schedule.solution import Solution
    from board.schedule.solver.feasible import can, can_be_whole
    from board.schedule.solver.solve import LIMIT_SECONDS, NoAnswer, solve
    from board.schedule.to_run_sheet import to_run_sheet

    text = read_text(path)
    file = plan_in(text, path)
    assessed = of_plan(file)
    refuse_stopped(assessed.snags)
    problem = problem_of(file.plan, file.filled)
    with Telling() as telling:
        try:
            solution = solve(problem, limit or LIMIT_SECONDS, watch=telling.progress)
        except NoAnswer:
            raise Trouble(words.NO_ANSWER) from None
    clashes = clashes_of(problem, solution, can)
    sheet = with_all(assessed, to_run_sheet(file, problem, solution, clashes)).the_sheet
    if sheet.proved:
        cache().put(sheet)
    if not sheet.given_up:
        return Mending(text, sheet, [])

    def solved(asked: Problem, aims: tuple[str, ...]) -> Solution:
        return solve(asked, TRIED_SECONDS, aims)

    def sound(changed: "PlanFile") -> bool:
        snags = check(changed)
        return not stops(snags) and not endangers(assessed.snags, snags)

    case = Case(file, problem, solution, clashes)
    with Telling() as telling:
        means = Means(solved, can_be_whole, sound, telling.trying)
        ways = ways_out(text, case, sheet, number, means)
    return Mending(text, sheet, ways)


def take(path: Path, mending: Mending, number: int) -> list[str]:
    """Writes way out `number`, counted from 1, into the plan. Returns the changed lines, each with `+` or `-` before
    it. Raises Trouble."""
    from board.checks.sheet.assessed import of_plan

    if not 1 <= number <= len(mending.ways):
        raise Trouble(words.no_such_way(number, len(mending.ways)))
    way = mending.ways[number - 1]
    write_plan(path, mending.text, way.text)
    if way.sheet.proved:
        cache().put(with_all(of_plan(plan_in(way.text, path)), way.sheet).the_sheet)
    lines = difflib.unified_diff(mending.text.splitlines(), way.text.splitlines(), lineterm="", n=0)
    return [line for line in lines if line[:1] in "+-" and line[:3] not in ("+++", "---")]
