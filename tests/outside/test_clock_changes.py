"""Work that crosses a night when the clocks change is reckoned in elapsed time.

Source: IANA time zone database, Europe/Berlin 2026, as zoneinfo reads it: clocks go back on 25 October at 3:00 and
forward on 29 March at 2:00. So 24 hours before Sunday 19:00 is Saturday 20:00, and Saturday 18:00.
"""

from collections.abc import Callable
from datetime import timedelta
from zoneinfo import ZoneInfo

import pytest

from board.output.sheet_form import outside_form
from board.plan.load import PlanFile
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet

PLAN = """
event: Change of clocks
date: {date}
zone: Europe/Berlin
arrive: 18:30
guests: [4 guests]
hands:
  host:
    hours: {{day before: 10:00 - 23:00, on the day: 10:00 - 23:00}}
courses:
  - course: Only
    at: 19:00
    serve: 0 min
    dishes:
      - dish: Set cream
        steps:
          - step: chill the cream
            where: fridge
            takes: 24 h
            attended: none
            before: serve Only, at once
            keeps: 1 h in the fridge
"""
BERLIN = ZoneInfo("Europe/Berlin")


@pytest.mark.parametrize(
    ("date", "began", "offset"), [("2026-10-25", "Sat 20:00", "+02:00"), ("2026-03-29", "Sat 18:00", "+01:00")]
)
def test_a_full_day_before_sunday_seven(
    plan_from: Callable[[str], PlanFile], date: str, began: str, offset: str
) -> None:
    sheet = make_sheet(plan_from(PLAN.format(date=date)), solve)
    chill = next(slot for slot in sheet.slots if slot.name == "chill the cream")

    assert chill.start.astimezone(BERLIN).strftime("%a %H:%M") == began
    assert chill.end - chill.start == timedelta(hours=24)
    assert chill.end.astimezone(BERLIN).strftime("%a %H:%M") == "Sun 19:00"
    shown = next(s for s in outside_form(sheet, valid=True)["steps"] if s["id"] == chill.id)
    assert shown["start"].endswith(f"{began[-5:]}:00{offset}")
