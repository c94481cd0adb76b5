"""One step after another of which it takes up nothing: nothing has to keep till then."""

from collections.abc import Callable

import pytest

from board.plan.load import PlanFile
from board.plan.model.work import parse_ref
from board.schedule.audit.validate import validate
from board.sheet.run_sheet import RunSheet
from board.sheet.told import PastLimit
from tests.schedule.audit.tampering import sheet_of

PLAN = """
event: Squash for four
date: 2026-11-28
zone: Europe/Dublin
arrive: '18:30'
guests: 4
kitchen: {ovens: 1, rings: 4, tools: {small pan: 1}, wash up: no}
hands: {host: {hours: {on the day: '15:00 - 23:00'}}}
courses:
  - course: Starter
    at: '18:45'
    standing: yes
    dishes:
      - dish: Crumbs on toast
        steps: [{step: fry the crumbs, where: 'stovetop, small pan', takes: 10 min, keeps: 15 min}]
  - course: Main
    at: '20:30'
    dishes:
      - dish: Squash with sage
        perishable: no
        steps:
          - {step: fry the sage, where: 'stovetop, small pan', takes: 5 min, keeps: 10 min,
             after: 'fry the crumbs, order only'}
"""
CRUMBS, SAGE = "crumbs-on-toast/fry-the-crumbs", "squash-with-sage/fry-the-sage"


@pytest.mark.parametrize(("said", "given_up"), [(", order only", False), ("", True)])
def test_nothing_has_to_keep_until_what_only_comes_later(
    plan_from: Callable[[str], PlanFile], said: str, given_up: bool
) -> None:
    """The sage is fried nearly two hours after the crumbs, which keep a quarter of an hour."""
    plan = plan_from(PLAN.replace(", order only", said))
    sheet: RunSheet = sheet_of(plan)
    crumbs, sage = sheet.by_id()[CRUMBS], sheet.by_id()[SAGE]

    assert crumbs.end < sage.start
    assert any(isinstance(told.what, PastLimit) for told in sheet.given_up) is given_up
    assert (SAGE in crumbs.then) is given_up
    assert any(wait.after == CRUMBS and wait.reason == "order" for wait in sage.waits)
    assert validate(plan, sheet) == []


def test_what_nothing_of_its_course_takes_up_goes_to_the_table(plan_from: Callable[[str], PlanFile]) -> None:
    sauce = (
        "{step: fry the crumbs, takes: 5 min, keeps: 1 h}, {step: stir a sauce, takes: 5 min, after: 'fry the crumbs"
    )
    plan = plan_from(PLAN[: PLAN.index("[{step: fry")] + f"[{sauce}, order only'}}]\n")

    taken_up = {(link.first, link.second) for link in plan.filled.taken_up}
    assert (CRUMBS, "serve/starter") in taken_up
    assert (CRUMBS, "crumbs-on-toast/stir-a-sauce") not in taken_up


def test_it_is_written_after_the_step_it_follows() -> None:
    assert parse_ref("fry the crumbs, at least 5 min, order only") == {
        "step": "fry the crumbs",
        "at least": "5 min",
        "order only": True,
    }
