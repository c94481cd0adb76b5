"""Suppers of one course each, with their sheets, and what the checks of food safety say of them."""

import textwrap

from board.checks.sheet.every import safety_check
from board.plan.load import PlanFile
from board.plan.snag import Snag
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet.run_sheet import RunSheet
from tests.conftest import read

TEXT = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
rules: {rules}
air: {air}
guests: [8 guests]
hands:
  host:
    hours: {hours}
kitchen:
  fridge: {fridge}
  freezer: 20 litres
courses:
  - course: Main
    at: 20:00
    standing: yes
    outdoors: {outdoors}
    serve: 5 min
    clear: 5 min
    eaten in: {eaten}
    dishes:
      - dish: {dish}
        {food}
        steps:
{steps}
{more}jobs: {jobs}
"""
DAYS = (
    "{8 days before: '9:00 - 23:30', 5 days before: '9:00 - 23:30', 4 days before: '9:00 - 23:30', "
    "3 days before: '9:00 - 23:30', day before: '9:00 - 23:30', on the day: '9:00 - 23:30'}"
)


def supper(
    steps: str,
    *,
    rules: str = "home",
    air: str = "{indoors: 20 C}",
    outdoors: str = "no",
    eaten: str = "30 min",
    fridge: str = "60 litres",
    dish: str = "Test dish",
    food: str = "ingredients: [1 kg tofu]",
    jobs: str = "[]",
    more: str = "",
) -> tuple[PlanFile, RunSheet]:
    """A plan of one dish, whose steps are YAML list entries, and its sheet. `more`: further dishes and courses."""
    indented = _steps(steps)
    found = read(
        TEXT.format(
            rules=rules, air=air, outdoors=outdoors, eaten=eaten, fridge=fridge, dish=dish, food=food, jobs=jobs,
            hours=DAYS, steps=indented, more=more,
        )
    )  # fmt: skip
    assert isinstance(found, PlanFile), "\n".join(snag.render() for snag in found)
    return found, make_sheet(found, solve)


def _steps(text: str) -> str:
    return textwrap.indent(textwrap.dedent(text).strip("\n"), "          ")


def three_dishes(steps: str, food: str = "ingredients: [1 kg tofu]") -> tuple[PlanFile, RunSheet]:
    """The same steps in two dishes of a course, and in a dish of another course that is called as one of them; each
    step's name ends in THIS."""
    first, second, third = (_steps(steps.replace("THIS", word)) for word in ("one", "two", "three"))
    dish = "      - dish: {}\n        {}\n        steps:\n{}\n"
    later = "  - course: Later\n    at: 21:00\n    dishes:\n"
    more = dish.format("Other dish", food, second) + later + dish.format("Test dish", food, third)
    return supper(first, food=food, more=more)


def said(found: tuple[PlanFile, RunSheet], code: str) -> list[Snag]:
    """The snags of one code; each is of safety, has its place, and says how to mend it."""
    snags = [snag for snag in safety_check(*found) if snag.code == code]
    assert all(snag.safety and snag.place is not None and snag.mend for snag in snags)
    return snags


def weights(found: tuple[PlanFile, RunSheet], code: str) -> list[str]:
    return [snag.weight.name for snag in said(found, code)]


def line_of(snag: Snag) -> str:
    assert snag.place is not None
    return snag.place.text.strip()
