"""Plans of one dish and one rule set, and what the checks of food safety say of them."""

import textwrap

from board.checks.plan.every import check, stops
from board.plan.load import PlanFile
from board.plan.snag import Snag
from tests.conftest import read

TEXT = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
rules: {rules}
guests: [8 guests]
hands:
  host:
    hours: {{2 days before: '9:00 - 23:30', day before: '9:00 - 23:30', on the day: '9:00 - 23:30'}}
kitchen:
  {tools}fridge: 60 litres
  fridge at: {fridge}
courses:
  - course: Main
    at: 20:00
    serve: {serve}
    dishes:
      - dish: {dish}
        ingredients: [{ingredient}]
        steps:
"""
FIRST_STEP = 21  # the line on which the first step begins


def plan(
    steps: str,
    *,
    rules: str = "home",
    fridge: str = "3 C",
    serve: str = "5 min",
    ingredient: str = "1 kg food",
    dish: str = "Test dish",
    tools: str = "",
) -> PlanFile:
    """The steps as YAML list entries. `tools`: `board: 1, knife: 1`."""
    text = TEXT.format(
        rules=rules,
        fridge=fridge,
        serve=serve,
        ingredient=ingredient,
        dish=dish,
        tools=f"tools: {{{tools}}}\n  " if tools else "",
    )
    text += textwrap.indent(textwrap.dedent(steps).strip("\n"), "          ")
    found = read(text)
    assert isinstance(found, PlanFile), "\n".join(snag.render() for snag in found)
    return found


def said(file: PlanFile, code: str) -> list[Snag]:
    """The snags of one code; all of food safety's are marked so, and none keeps a timetable from being made."""
    found = [snag for snag in check(file) if snag.code == code]
    assert all(snag.safety and snag.place is not None and snag.mend for snag in found)
    assert stops(check(file)) == []
    return found


def weights(file: PlanFile, code: str) -> list[str]:
    return [snag.weight.name for snag in said(file, code)]


def line_of(snag: Snag) -> tuple[int, str]:
    """The number and the text of the line a snag points at."""
    assert snag.place is not None
    return snag.place.line, snag.place.text.strip()
