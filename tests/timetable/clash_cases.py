"""Small kitchens in which something cannot be had, for tests. Facts of the trade: common practice, no source."""

from board.checks.every import stops
from board.plan.load import PlanFile
from board.timetable.asking import ask
from board.timetable.cpsat.feasible import can, can_be_whole
from board.timetable.cpsat.solve import solve
from board.timetable.explain import clashes_of
from board.timetable.proposals import Case
from board.timetable.ways_out import Means, WayOut, ways_out
from board.timetable.write_up import write_up
from tests.conftest import read

HEAD = """
event: Supper with a clash
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [6 guests]
"""

# Halved small potatoes roast at 200 °C (400 °F) for about 30 min before the main, while a finished pan keeps warm in
# an oven of 93 °C (200 °F); there is one oven.
POTATOES_AND_PAN = (
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
      - dish: Pan of greens and lentils
        steps:
          - step: cook the greens and lentils
            where: stovetop, 1 ring
            takes: 30 min
            attended: all
            not after: 18:30     # before the guests come
            keeps: 75 min in the oven at 200 F (180 to 220 F)
      - dish: Roast potatoes
        steps:
          - step: halve the small potatoes
            takes: 15 min
          - step: roast the potatoes
            where: oven at 400 F (375 to 410 F)
            takes: 30 min
            keeps: 10 min
            best within: 5 min
"""
)

# Egg-white shells dry 45 to 60 min at 225 °F (107 °C) and rest a full hour in the switched-off closed oven.
SHELLS = (
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
      - dish: Egg-white shells
        steps:
          - step: whisk the whites and pipe the shells
            takes: 25 min
          - step: dry the shells
            where: oven at 225 F (215 to 235 F)
            takes: 45 to 50 to 60 min
          - step: rest the shells in the closed oven
            where: oven off
            takes: 60 min
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

# Pieces are browned no more than 2 min, vegetables coloured about 4 min in the same pan, then the pan keeps warm.
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
      - dish: Pan supper
        steps:
          - step: brown the pieces
            where: stovetop, 1 ring, big pan
            takes: 2 min
            keeps: 10 min on the stovetop, 1 ring, big pan
          - step: colour the vegetables
            where: stovetop, 1 ring, big pan
            takes: 4 min
            after: brown the pieces, at once
            keeps: 40 min on the stovetop, 1 ring, big pan
      - dish: Pancakes
        steps:
          - step: fry the pancakes
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
        self.question = ask(file.plan, file.filled)
        self.answer = solve(self.question)
        self.clashes = clashes_of(self.question, self.answer, can)
        self.sheet = write_up(file, self.question, self.answer, self.clashes)

    def fought_over(self) -> list[set[tuple[str, str | int]]]:
        """Each clash as its steps and the things they take."""
        found = []
        for clash in self.clashes.values():
            names = {(self.file.filled.tasks[self.question.jobs[t.job].id].node.name, t.what) for t in clash.taken}
            if names not in found:
                found.append(names)
        return found

    def ways(self, wanted: int = 50) -> list[WayOut]:
        case = Case(self.file, self.question, self.answer, self.clashes)
        means = Means(lambda q, aims: solve(q, 10, aims), can_be_whole, lambda f: not stops(f), lambda _: None)
        return ways_out(self.text, case, self.sheet, wanted, means)
