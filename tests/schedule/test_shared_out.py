"""Among timetables equal in all aims and times, work is shared out, and a dish stays in the same hands."""

from collections.abc import Callable

import pytest

from board.plan.load import PlanFile
from board.sheet.run_sheet import RunSheet
from tests.schedule.audit.tampering import sheet_of

PLAN = """
event: Two helpers
date: 2026-11-28
zone: Europe/Dublin
arrive: '18:30'
guests: 6
kitchen: {ovens: 1, rings: 4, wash up: no}
hands:
  Anneli: {hired: yes, hours: {on the day: '12:00 - 23:00'}}
  Ben: {hired: yes, hours: {on the day: '12:00 - 23:00'}}
courses:
  - course: Buffet
    at: '19:00'
    standing: yes
    dishes:
"""
DISH = """
      - dish: {0}
        perishable: no
        steps:
          - {{step: cut the {0}, takes: 40 min, keeps: 1 day}}
          - {{step: season the {0}, takes: 30 min, keeps: 1 day}}
"""


@pytest.fixture(scope="module")
def buffet(plan_from: Callable[[str], PlanFile]) -> RunSheet:
    return sheet_of(plan_from(PLAN + "".join(DISH.format(each) for each in ("beetroot", "celery"))))


def test_two_helpers_have_about_as_much_to_do(buffet: RunSheet) -> None:
    minutes = {
        who: sum((p.end - p.start).total_seconds() / 60 for s in buffet.slots for p in s.attended if p.who == who)
        for who in buffet.hands
    }

    assert abs(minutes["Anneli"] - minutes["Ben"]) <= 30


def test_who_begins_a_dish_goes_on_with_it(buffet: RunSheet) -> None:
    slots = buffet.by_id()

    for dish in ("beetroot", "celery"):
        assert slots[f"{dish}/cut-the-{dish}"].people == slots[f"{dish}/season-the-{dish}"].people
