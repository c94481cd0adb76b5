"""Soft limits a timetable may break, one by one: a course late, something kept too long, work out of hours. Pure."""

from dataclasses import dataclass
from typing import Literal

from board.schedule.dependencies import end_of, way_of
from board.schedule.problem import Problem
from board.schedule.solution import Solution
from board.schedule.windows import allowed_starts

Kind = Literal["out-of-hours", "not-at-once", "late", "not-ready", "waits", "past-limit", "no-place"]

LEVEL: dict[Kind, int] = {  # a lower level is dearer, in the order of the aims
    "out-of-hours": 0,
    "not-at-once": 0,
    "late": 1,
    "not-ready": 2,
    "waits": 2,
    "past-limit": 2,
    "no-place": 2,
}


@dataclass(frozen=True, slots=True)
class Violation:
    """One broken limit. `index` is of a job (out-of-hours, no-place), a serving (late) or an order (the rest)."""

    kind: Kind
    index: int

    @property
    def level(self) -> int:
        return LEVEL[self.kind]


def amounts(problem: Problem, solution: Solution) -> dict[Violation, int]:
    """By how much each limit is broken, in minutes (hours and places: 1); limits kept are left out."""
    found: dict[Violation, int] = {}
    for n, job in enumerate(problem.jobs):
        way, who, start = way_of(problem, solution, n), solution.who[n], solution.starts[n]
        hand = problem.hands[who] if who is not None else None
        windows = allowed_starts(problem, job, way, hand)
        found[Violation("out-of-hours", n)] = int(job.fixed is None and not any(a <= start < b for a, b in windows))
        found[Violation("no-place", n)] = int(not solution.kept[n])
    for n, serving in enumerate(problem.servings):
        found[Violation("late", n)] = end_of(problem, solution, serving.job) - serving.wanted
    for n, order in enumerate(problem.orders):
        wait = solution.starts[order.second] - end_of(problem, solution, order.first)
        hold = way_of(problem, solution, order.first).hold
        limit = hold.limit if hold is not None else None
        if order.most is not None and not order.usual:
            found[Violation("not-at-once" if order.most == order.least else "waits", n)] = wait - order.most
        if not order.firm:
            found[Violation("not-ready", n)] = order.ready - wait
        if limit is not None:
            found[Violation("past-limit", n)] = wait - (limit if solution.kept[order.first] else 0)
    return {violation: amount for violation, amount in found.items() if amount > 0}
