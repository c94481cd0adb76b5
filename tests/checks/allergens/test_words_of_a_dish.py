"""A dish's name and its steps against guests: a food named there and not among the ingredients is asked about."""

import pytest

from board.checks.allergens.guests_eat import Answer, matrix
from board.plan.load import PlanFile
from tests.conftest import read

PLAN = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: ['Ines, GUEST', host]
hands: {host: {hours: {on the day: '9:00 - 23:30'}}}
courses:
  - course: Main
    at: 19:15
    dishes:
      - dish: DISH
        ingredients: [LINE]
        steps:
          - {step: STEP, takes: 30 min}
      - dish: Almond tart
        not for: Ines
        ingredients: [100 g almonds]
        steps:
          - {step: bake the tart, takes: 30 min}
"""


def answer(guest: str, dish: str, line: str, step: str) -> Answer:
    words = PLAN.replace("GUEST", guest).replace("DISH", dish).replace("LINE", repr(line)).replace("STEP", step)
    found = read(words)
    assert isinstance(found, PlanFile), found
    return matrix(found).answers[0, 0]


@pytest.mark.parametrize(
    ("guest", "dish", "line", "step"),
    [
        ("no peanuts", "Chicken satay", "8 chicken thighs", "grill the skewers"),
        ("no peanuts", "Rice", "500 g rice", "stir in the peanut butter"),
        ("no milk", "Beans", "500 g beans", "butter the dish well"),
        ("coeliac", "Salmon en croute", "1 side salmon", "bake it"),
        ("vegetarian", "Beans", "500 g beans", "fry the bacon"),
        ("no coriander", "Rice", "500 g rice", "scatter with cilantro"),
    ],
)
def test_a_food_named_beside_the_ingredients_is_asked_about(guest: str, dish: str, line: str, step: str) -> None:
    found = answer(guest, dish, line, step)

    assert found.verdict.name in ("ASK", "NOT_SAFE")
    assert any("its name or its steps name" in reason.why for reason in found.reasons)


@pytest.mark.parametrize(
    ("guest", "dish", "line", "step"),
    [
        ("no milk", "Toast", "100 g vegan butter, free from milk", "butter the pan"),
        ("vegan", "Mushroom steaks", "6 mushrooms", "sear the steaks"),
        ("no milk", "Vegan cheese sauce", "500 ml oat drink", "simmer it"),
        ("no fish", "Beans", "500 g beans", "turn with a fish slice"),
        ("no tree nuts", "Beans", "500 g beans", "bake beside the almond tart"),
        ("coeliac", "Polenta cake", "500 g polenta", "bake the cake"),
        ("coeliac", "Flatbreads", "500 g gluten-free flour, free from gluten", "knead the dough"),
        ("no peanuts", "Chicken satay", "200 ml satay sauce, free from peanuts", "grill the skewers"),
    ],
)
def test_what_the_ingredients_account_for_is_not_asked_about(guest: str, dish: str, line: str, step: str) -> None:
    assert answer(guest, dish, line, step).verdict.name == "SAFE"
