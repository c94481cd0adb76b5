"""Small kitchens in which something cannot be had, for tests. Facts of the trade: common practice, no source."""

import math
from collections.abc import Callable

from board.checks.plan.every import check, stops
from board.plan.load import PlanFile
from board.schedule.conflicts.explain import clashes_of
from board.schedule.conflicts.proposal import Case
from board.schedule.conflicts.ways_out import Found, Means, WayOut, ways_out
from board.schedule.formulate import problem_of
from board.schedule.solver.feasible import can, can_be_whole
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import to_run_sheet
from tests.conftest import read

HEAD = """
event: Supper with a clash
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [6 guests]
"""

# Squash roasts at 210 °C for 30 min before the main, while a finished pot keeps warm in an oven of 90 °C; there is one
# oven.
SQUASH_AND_POT = (
    HEAD
    + """
kitchen:  # the flat's own
  ovens: 1
  rings: 4
hands:
  host:
    hours:
      on the day: 14:00 - 23:30
courses:
  - course: Main
    at: 19:30
    dishes:
      - dish: Pot of barley
        steps:
          - step: cook the barley
            where: stovetop, 1 ring
            takes: 30 min
            attended: all
            not after: 18:30     # before the guests come
            keeps: 75 min in the oven at 90 C (80 to 100 C)
      - dish: Roast squash
        steps:
          - step: cut the squash into wedges
            takes: 15 min
          - step: roast the squash
            where: oven at 210 C (200 to 220 C)
            takes: 30 min
            keeps: 10 min
            best within: 5 min
"""
)

# Slices dry for about an hour in a low oven and rest in it, switched off and closed.
PEAR_SLICES = (
    HEAD
    + """
hands:
  host:
    hours:
      {day}: {hours}
      on the day: 17:30 - 23:30
courses:
  - course: Sweet
    at: 20:30
    dishes:
      - dish: Dried pears
        steps:
          - step: core and slice the pears
            takes: 25 min
          - step: dry the pear slices
            where: oven at 110 C (105 to 115 C)
            takes: 50 to 55 to 70 min
          - step: rest the pear slices in the closed oven
            where: oven off
            takes: 40 min
            keeps: 2 days in the room
            day: day before
      - dish: Tray bake
        steps:
          - step: bake the tray
            where: oven at 180 C
            takes: 40 min
            keeps: 2 days in the room
            day: day before
"""
)

# Seeds are toasted for a moment, barley turned in them at once in the same pan, then the pan keeps warm.
ONE_PAN = (
    HEAD
    + """
kitchen:
  tools: {big pan: 1}
hands:
  host:
    hours:
      on the day: 14:00 - 23:30
courses:
  - course: Main
    at: 19:30
    dishes:
      - dish: Barley with seeds
        steps:
          - step: toast the seeds
            where: stovetop, 1 ring, big pan
            takes: 3 min
            keeps: 10 min on the stovetop, 1 ring, big pan
          - step: turn the barley in the seeds
            where: stovetop, 1 ring, big pan
            takes: 5 min
            after: toast the seeds, at once
            keeps: 40 min on the stovetop, 1 ring, big pan
      - dish: Flatbreads
        steps:
          - step: fry the flatbreads
            where: stovetop, 1 ring, big pan
            takes: 20 min
            keeps: 60 min hot
"""
)


class Worked:
    """A plan worked out, with the clashes behind what it gives up."""

    def __init__(self, text: str) -> None:
        self.text = text.lstrip("\n")
        file = read(self.text)
        assert isinstance(file, PlanFile), file
        self.file = file
        self.problem = problem_of(file.plan, file.filled)
        self.solution = solve(self.problem)
        self.clashes = clashes_of(self.problem, self.solution, can)
        self.sheet = to_run_sheet(file, self.problem, self.solution, self.clashes)

    def fought_over(self) -> list[set[tuple[str, str | int]]]:
        """Each clash as its steps and the things they take."""
        found = []
        for clash in (clash for clashes in self.clashes.values() for clash in clashes):
            names = {(self.file.filled.tasks[self.problem.jobs[t.job].id].node.name, t.what) for t in clash.taken}
            if names not in found:
                found.append(names)
        return found

    def found(self, wanted: int = 50, left: Callable[[], float] = lambda: math.inf) -> Found:
        case = Case(self.file, self.problem, self.solution, self.clashes)
        means = Means(
            lambda q, aims: solve(q, 10, aims), can_be_whole, lambda f: not stops(check(f)), lambda _, __: True,
            lambda _: None, left,
        )  # fmt: skip
        return ways_out(self.text, case, self.sheet, wanted, means)

    def ways(self, wanted: int = 50) -> list[WayOut]:
        return self.found(wanted).ways
