"""Soft limits a timetable may break, one by one: a course late, a dish out too long, something kept too long, work out
of hours. Pure."""

from dataclasses import dataclass
from typing import Literal

from board.schedule.clocks import stretches, total
from board.schedule.dependencies import end_of, way_of
from board.schedule.problem import Problem
from board.schedule.solution import Solution
from board.schedule.windows import allowed_starts

Kind = Literal["out-of-hours", "not-at-once", "late", "clock", "not-ready", "waits", "past-limit", "no-place"]

LEVEL: dict[Kind, int] = {  # a lower level is dearer, in the order of the aims
    "out-of-hours": 0,
    "not-at-once": 0,
    "late": 1,
    "clock": 2,
    "not-ready": 3,
    "waits": 3,
    "past-limit": 3,
    "no-place": 3,
}


@dataclass(frozen=True, slots=True)
class Violation:
    """One broken limit. `index` is of a job (out-of-hours, no-place), a serving (late), a clock or an order
    (the rest)."""

    kind: Kind
    index: int

    @property
    def level(self) -> int:
        return LEVEL[self.kind]


def amounts(problem: Problem, solution: Solution) -> dict[Violation, int]:
    """By how much each limit is broken, in minutes (hours and places: 1); limits kept are left out."""
    found: dict[Violation, int] = {}
    for n, job in enumerate(problem.jobs):
        way, start = way_of(problem, solution, n), solution.starts[n]
        windows = allowed_starts(problem, job, way, *problem.crew(solution.who[n]))
        found[Violation("out-of-hours", n)] = int(job.fixed is None and not any(a <= start < b for a, b in windows))
        found[Violation("no-place", n)] = int(not solution.kept[n])
    for n, serving in enumerate(problem.servings):
        found[Violation("late", n)] = end_of(problem, solution, serving.job) - serving.wanted
    for n, (clock, out) in enumerate(zip(problem.clocks, stretches(problem, solution), strict=True)):
        found[Violation("clock", n)] = total(out) - clock.limit
    for n, order in enumerate(problem.orders):
        wait = solution.starts[order.second] - end_of(problem, solution, order.first)
        hold = way_of(problem, solution, order.first).hold
        limit = hold.limit if hold is not None else None
        if order.most is not None and not order.usual:
            found[Violation("not-at-once" if order.most == order.least else "waits", n)] = wait - order.most
        if not order.firm:
            found[Violation("not-ready", n)] = order.ready - wait
        if limit is not None and order.takes_up:
            found[Violation("past-limit", n)] = wait - (limit if solution.kept[order.first] else 0)
    return {violation: amount for violation, amount in found.items() if amount > 0}
