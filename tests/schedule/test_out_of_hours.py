"""Work that no hours suit lies as little off them as may be, and each hour it breaks is told, no other."""

from collections.abc import Callable

import pytest

from board.plan.load import PlanFile
from board.schedule.audit.validate import validate
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet import said
from board.sheet.run_sheet import RunSheet

SUPPER = """
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [6 guests]
kitchen: {wash up: no}
hands: {host: {hours: {on the day: '9:00 - 12:00, 15:00 - 23:00'}}}
courses:
  - course: Main
    at: 19:15
    dishes:
      - dish: Roast
        steps:
          - {step: roast it, ROAST}
          - {step: carve it, takes: 10 min, keeps: 1 h}
"""
NO_TIME = "it does not fit into the time it was given"
NO_HOURS = "no hours of a free pair of hands are left for it"
NOBODY = "something hot would run with nobody at home"
OVEN = "where: oven at 140 C, takes: 9 h, keeps: 6 h"


def worked(plan_from: Callable[[str], PlanFile], roast: str) -> tuple[RunSheet, list[str]]:
    """The sheet, and why each thing is given up that has to do with the roasting."""
    file = plan_from(SUPPER.replace("ROAST", roast))
    sheet = make_sheet(file, solve)
    assert validate(file, sheet) == []
    told = [given for given in sheet.given_up if "roast it" in said.what(sheet, given.what)]
    return sheet, [said.why(sheet, given.why) for given in told]


@pytest.mark.parametrize(
    ("roast", "reasons"),
    [
        (f"{OVEN}, attended: none", [NOBODY]),
        (f"{OVEN}, attended: all", [NO_HOURS, NOBODY]),
        ("where: worktop, takes: 9 h, keeps: 6 h, attended: all", [NO_HOURS]),
        ("where: worktop, takes: 1 h, attended: all, not before: '10:00', not after: '10:30'", [NO_TIME]),
        (f"{OVEN}, attended: all, not after: '12:30'", [NO_TIME, NO_HOURS, NOBODY]),
    ],
)
def test_each_of_its_hours_that_is_broken_is_told_and_no_other(
    plan_from: Callable[[str], PlanFile], roast: str, reasons: list[str]
) -> None:
    _, why = worked(plan_from, roast)

    assert why == ["; and on top of that: ".join(reasons)]


def test_a_roast_longer_than_anybody_is_home_lies_no_further_out_than_it_must(
    plan_from: Callable[[str], PlanFile],
) -> None:
    """Begun at 14:00 it would be alone for an hour only, and late: it goes as near to that as the course allows."""
    sheet, _ = worked(plan_from, f"{OVEN}, attended: none")
    roast = sheet.by_id()["roast/roast-it"]
    assert roast.end == sheet.by_id()["roast/carve-it"].start
