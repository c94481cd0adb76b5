"""What is browned round an ice stays frozen in the middle: no probe, but the caution for raw egg. FDA Food Code
3-302.13 takes pasteurised eggs where eggs are not cooked through; from memory. The minutes: common practice, no source.
"""

import pytest

from board.checks.allergens.guests_eat import matrix
from board.checks.plan.cautions import cautions
from board.checks.plan.how_hot import raw_food_is_cooked
from board.checks.sheet.cooling import hot_food_cools_in_time
from board.checks.sheet.timed import timed
from board.facts.eaten_raw import only_browns_ice
from board.plan.load import PlanFile
from board.plan.snag import Weight
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from tests.conftest import read

TEXT = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [4 guests]
hands: {{host: {{hours: {{on the day: '14:00 - 23:00'}}}}}}
kitchen: {{ovens: 1, rings: 4, fridge: 60 litres, freezer: 40 litres}}
courses:
  - course: Sweet
    at: 20:00
    dishes: [{{dish: {dish}, ingredients: [{foods}], steps: [{steps}]}}]
"""
WHISK = "{step: whisk the whites, takes: 8 min}, "
BROWN = "{step: bake until golden, where: oven at 230 C, takes: 4 min}"
ICE = "1 l lemon sorbet, 5 egg whites, 250 g sugar"


def plan(dish: str, foods: str, steps: str) -> PlanFile:
    file = read(TEXT.format(dish=dish, foods=foods, steps=steps))
    assert isinstance(file, PlanFile), file
    return file


@pytest.mark.parametrize(
    ("dish", "foods", "steps", "weights"),
    [
        ("Norwegian omelette", ICE, WHISK + BROWN, [Weight.MIND]),
        ("Baked Alaska", ICE, WHISK + "{step: torch the peaks, takes: 3 min}", [Weight.MIND]),
        ("Baked Alaska", ICE.replace("egg whites", "pasteurised egg whites"), WHISK + BROWN, []),
        ("Lemon tart", "1 jar lemon curd, 5 egg whites, 250 g sugar", WHISK + BROWN, [Weight.ASK]),  # no ice
        ("Pudding on sorbet", ICE, WHISK + BROWN.replace("4 min", "14 min"), [Weight.ASK]),  # no mere browning
        ("Crème brûlée with sorbet", ICE, "{step: bake the custard, where: oven at 110 C, takes: 40 min}, "
         "{step: torch the sugar, takes: 4 min}", [Weight.ASK]),
    ],
)  # fmt: skip
def test_no_core_temperature_is_asked_of_what_is_frozen_inside(
    dish: str, foods: str, steps: str, weights: list[Weight]
) -> None:
    file = plan(dish, foods, steps)
    found = raw_food_is_cooked(file)

    assert [snag.weight for snag in found] == weights
    assert all(("pasteurised" in snag.mend) == (snag.weight is Weight.MIND) for snag in found)
    assert any(each.topic == "raw-egg" for each in cautions(file)) == (weights == [Weight.MIND])


def test_nothing_hot_is_to_be_cooled_there() -> None:
    file = plan("Baked Alaska", ICE, WHISK + BROWN.replace("4 min", "4 min, keeps: 1 day in the freezer"))
    sheet = make_sheet(file, solve)

    assert hot_food_cools_in_time(timed(file, sheet, matrix(file))) == []


def test_a_few_minutes_and_the_words_for_browning_tell_it() -> None:
    assert only_browns_ice("Bombe", ["ice cream"], "brown the outside", 5)
    assert only_browns_ice("Baked Alaska", [], "bake", 4)
    assert not only_browns_ice("Bombe", ["ice cream"], "fry the eggs", 5)
    assert not only_browns_ice("Meringue", ["egg whites"], "brown the outside", 5)
