"""A whole evening for 14 in the heat, each dish's clock by hand.

Limits: USDA FSIS, danger zone 40-140 °F: 2 h, and 1 h when the air is above 90 °F (32 °C). Sums by hand.
"""

from collections.abc import Callable
from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from board.checks.sheet.assessed import of_plan, with_sheet
from board.checks.sheet.clocks import dish_clocks
from board.checks.sheet.every import safety_check
from board.plan.load import PlanFile
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet import said
from board.sheet.run_sheet import RunSheet

PLAN = """
event: Hot evening
date: 2026-07-18
zone: Europe/Dublin
arrive: 18:30
air: {indoors: 27 C, outdoors: 33 C}
guests: [13 guests, host]
kitchen: {fridge: 90 litres, fridge at: 3 C}
hands:
  host: {hours: {on the day: '8:00 - 23:59'}}
courses:
  - course: Bites
    at: 18:45
    standing: yes
    outdoors: yes
    serve: 5 min
    eaten in: 30 min
    dishes:
      - dish: Egg toasts
        ingredients: ['14 slices bread (bakery)', '12 eggs (dairy)']
        steps:
          - {step: mix the egg, takes: 20 min, keeps: 4 h in the fridge}
          - {step: spread the toasts, takes: 15 min, before: 'serve Bites, at once'}
      - dish: Cold pea soup
        ingredients: ['2 kg cooked peas (veg)', '1 l buttermilk (dairy)']
        steps:
          - {step: blend the soup, takes: 10 min, keeps: 4 h in the fridge}
  - course: Roast
    at: 20:00
    serve: 8 min
    eaten in: 40 min
    dishes:
      - dish: Roast chicken
        ingredients: ['4 kg chicken (butcher)']
        steps:
          - {step: trim the chicken, takes: 25 min, keeps: 30 min in the room}
          - {step: roast the chicken, where: oven at 190 C, takes: 50 min, attended: 2 min at the start, cooks: poultry}
          - step: let the chicken rest
            takes: 15 min
            attended: none
            after: roast the chicken, at once
            before: serve Roast, at once
      - dish: Bean salad
        ingredients: ['1 kg cooked beans (veg)', '200 ml single cream (dairy)']
        steps:
          - {step: chop the salad, takes: 12 min, keeps: 4 h in the fridge}
          - {step: dress the salad, takes: 6 min, before: 'serve Roast, at least 10 min, at most 10 min'}
  - course: Cream
    at: 21:10
    outdoors: yes
    serve: 4 min
    clear: 5 min
    eaten in: 25 min
    dishes:
      - dish: Lemon cream
        ingredients: ['1 l double cream (dairy)', '4 lemons (veg)']
        steps:
          - {step: cook the cream, where: stovetop, takes: 15 min, until: 85 C, keeps: 10 min hot}
          - step: cool the cream in ice
            takes: 60 min
            attended: 2 min at the start
            cools: 3 cm deep, metal, ice bath
            after: cook the cream, at once
            keeps: 0 min
          - {step: chill the cream, where: 'fridge, 4 litres', takes: 4 h, keeps: 1 day in the fridge}
          - {step: top the cream, takes: 9 min, before: 'serve Cream, at once'}
jobs:
  - {job: put the cream away, takes: 10 min, attended: all, after: 'clear Cream, at once', puts away: Cream}
"""
ZONE = ZoneInfo("Europe/Dublin")


@pytest.fixture(scope="module")
def evening(plan_from: Callable[[str], PlanFile]) -> tuple[PlanFile, RunSheet]:
    file = plan_from(PLAN)
    return file, make_sheet(file, solve)


def on(clock: str) -> datetime:
    return datetime.fromisoformat(f"2026-07-18T{clock}:00").replace(tzinfo=ZONE)


def test_every_clock_is_as_by_hand(evening: tuple[PlanFile, RunSheet]) -> None:
    """Minutes out until it is eaten; the limit; when it runs out.

    Bites go out 18:40-18:45, outdoors at 33 °C, so 1 h:
    - Egg toasts: bench 20, fridge (stops), bench 15 (18:25-18:40), carried 5, at hand 30: 70 > 60.
      35 at 18:40, 40 at 18:45, 60 at 19:05.
    - Cold pea soup: bench 10, fridge, carried 5, at hand 30: 45. 10 at 18:40, so 60 at 19:30.
    Roast goes out 19:52-20:00, indoors at 27 °C, so 2 h:
    - Roast chicken: trimmed 25 and kept, then roasted through: begins anew; rests 15, carried 8, eaten 40: 63.
      15 at 19:52, so 120 at 21:37.
    - Bean salad: bench 12, fridge, bench 6, kept in the room 10, carried 8, eaten 40: 76. 28 at 19:52, 120 at 21:24.
    Cream goes out 21:06-21:10, outdoors, so 1 h:
    - Lemon cream: cooked through; in ice and in the fridge (neither counts), bench 9, carried 4, eaten 25: 38.
      Cleared 5, put away 10: 53 in all, in time.
    """
    found = {c.clock.dish: (c.out_minutes, c.clock.limit_minutes, c.runs_out) for c in dish_clocks(evening[1])}

    assert found == {
        "Egg toasts": (70, 60, on("19:05")),
        "Cold pea soup": (45, 60, on("19:30")),
        "Roast chicken": (63, 120, on("21:37")),
        "Bean salad": (76, 120, on("21:24")),
        "Lemon cream": (38, 60, None),
    }


def test_the_snags_are_those_the_clocks_call_for(evening: tuple[PlanFile, RunSheet]) -> None:
    said = [(s.code, s.message) for s in safety_check(*evening) if s.code in ("food 10", "food 11")]

    assert [code for code, _ in said] == ["food 10", "food 11", "food 11"]  # no one job is in time for both
    assert said[0][1].startswith("Egg toasts: 1 h 10 neither hot nor cold enough")
    assert "Bites by Sat 19:30" in said[1][1]
    assert "Egg toasts" not in said[1][1]
    assert "Roast by Sat 21:24" in said[2][1]


def test_the_sheet_carries_what_must_be_mended(evening: tuple[PlanFile, RunSheet]) -> None:
    sheet = with_sheet(of_plan(evening[0]), evening[1]).the_sheet

    assert [said.stop(stop)[:20] for stop in sheet.stops] == ["food 10: Egg toasts:"]
