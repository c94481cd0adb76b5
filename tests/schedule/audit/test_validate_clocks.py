"""The validator knows the clocks of dishes: what stands out for longer than they give must be told, and nothing else.

Limits: USDA FSIS, danger zone: 2 h, and 1 h when the air is above 90 °F. Sums by hand.
"""

from collections.abc import Callable
from datetime import timedelta

import pytest
from msgspec.structs import replace

from board.plan.load import PlanFile
from board.schedule.audit.validate import validate
from board.sheet.run_sheet import RunSheet
from board.sheet.told import GivenUp, PastClock
from tests.schedule.audit.tampering import minutes, moved, says, sheet_of, with_slot

PLAN = """
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [8 guests]
hands: {host: {hours: {on the day: '9:00 - 23:30'}}}
courses:
  - course: Main
    at: 20:15
    dishes:
      - dish: Cold chicken
        ingredients: [2 cooked chickens (butcher)]
        steps:
          - {step: joint the chicken, takes: 30 min, keeps: 6 h in the room}
          - {step: warm the sauce, where: stovetop, takes: 15 min, attended: none, until: 80 C, after: nothing,
             keeps: 6 h in the fridge}
      - dish: Platters
        ingredients: [1 kg crackers (bakery)]
        perishable: no
        steps:
          - {step: set out the platters, takes: 20 min, after: joint the chicken, keeps: 6 h in the room}
"""
JOINT, SAUCE, PLATTERS = (
    "cold-chicken/joint-the-chicken",
    "cold-chicken/warm-the-sauce",
    "platters/set-out-the-platters",
)
TOLD = "and it is not told"


@pytest.fixture(scope="module")
def chicken(plan_from: Callable[[str], PlanFile]) -> PlanFile:
    return plan_from(PLAN)


@pytest.fixture(scope="module")
def cold(chicken: PlanFile) -> RunSheet:
    return sheet_of(chicken)


def out_for(sheet: RunSheet, total: int) -> RunSheet:
    """The chicken jointed so early that it stands out so long: 30 on the bench, until the platters are begun, by the
    host's word not while it lies on them, then 5 carried and 25 at the table."""
    return moved(sheet, JOINT, sheet.by_id()[PLATTERS].start - minutes(total - 5 - 25))


def test_the_sheet_that_is_made_holds(chicken: PlanFile, cold: RunSheet) -> None:
    assert validate(chicken, cold) == []


@pytest.mark.parametrize(("total", "told"), [(120, False), (121, True)])
def test_what_stands_out_past_its_clock_must_be_told(chicken: PlanFile, cold: RunSheet, total: int, told: bool) -> None:
    wrong = f"Cold chicken stands out {total} min until it is eaten, and may for 120"

    assert says(validate(chicken, out_for(cold, total)), wrong, TOLD) == told


def test_told_rightly_it_is_no_fault(chicken: PlanFile, cold: RunSheet) -> None:
    late = out_for(cold, 135)
    told = GivenUp(PastClock("Cold chicken", "Main", 135, 120), "", 15)

    assert not says(validate(chicken, replace(late, given_up=(told,))), TOLD)
    assert says(validate(chicken, replace(late, given_up=(replace(told, minutes=14),))), TOLD)
    assert says(validate(chicken, replace(cold, given_up=(told,))), "told as given up, but it is not so")


def test_cold_and_what_is_cooked_through_do_not_count(chicken: PlanFile, cold: RunSheet) -> None:
    """The sauce lies in the fridge for the whole afternoon."""
    early = moved(cold, SAUCE, cold.by_id()[JOINT].start - timedelta(hours=4))

    assert not says(validate(chicken, early), "stands out")


def test_the_sheet_says_of_standing_out_what_the_plan_does(chicken: PlanFile, cold: RunSheet) -> None:
    keeping = cold.by_id()[JOINT].keeping
    assert keeping is not None
    assert cold.by_id()[JOINT].exposed
    wrong = "joint the chicken is told to stand out, or not to"

    assert says(validate(chicken, with_slot(cold, JOINT, exposed=False)), wrong)
    assert says(validate(chicken, with_slot(cold, JOINT, keeping=replace(keeping, exposed=False))), wrong)


def test_the_clocks_are_those_of_the_plan(chicken: PlanFile, cold: RunSheet) -> None:
    (clock,) = cold.clocks
    wrong = "other clocks than its plan calls for"

    assert says(validate(chicken, replace(cold, clocks=())), wrong)
    assert says(validate(chicken, replace(cold, clocks=(replace(clock, limit_minutes=240),))), wrong)
    assert says(validate(chicken, replace(cold, clocks=(replace(clock, dish="Platters"),))), wrong)


@pytest.mark.parametrize(
    ("rules", "air", "limit"),
    [
        ("home", "{outdoors: 33 C}", 60),
        ("home", "{outdoors: 90 F}", 120),
        ("retail", "{outdoors: 90 F}", 240),  # FDA Food Code 3-501.19: 4 h under a written procedure
    ],
)
def test_how_long_it_may_is_by_the_rules_and_the_air(
    plan_from: Callable[[str], PlanFile], rules: str, air: str, limit: int
) -> None:
    plan = PLAN.replace("arrive:", f"rules: {rules}\nair: {air}\narrive:").replace(
        "at: 20:15", "at: 20:15\n    outdoors: yes"
    )
    hot = plan_from(plan.replace("dish: Cold chicken", "dish: Cold chicken\n        by time alone: yes"))
    sheet = sheet_of(hot)

    assert [clock.limit_minutes for clock in sheet.clocks] == [limit]
    assert validate(hot, sheet) == []
