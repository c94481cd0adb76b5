"""What goes in at a step: out of which line of its dish, how much in all, and scaled as the dish is."""

import pytest

from board.facts.units import EXACT, ROUNDED
from board.plan.load import PlanFile
from board.plan.model.courses import Dish
from board.plan.phrases.quantities import Ingredient, parse_ingredient
from board.plan.resolve.going_in import foods_of, goes_in, matching, reckoned
from tests.conftest import read

PLAN = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [host, 5 others]
hands: {host: {hours: {on the day: '9:00 - 23:30'}}}
courses:
  - course: Main
    at: 19:15
    dishes:
      - dish: Pie
        for: FOR
        ingredients: [LINES]
        steps:
          - {step: mix the dough, takes: 30 min, uses: [FIRST]}
          - {step: bake the pie, where: 'oven at 190 C', takes: 30 min, uses: [SECOND]}
"""


def line(text: str) -> Ingredient:
    return Ingredient.model_validate(parse_ingredient(text))


def file(lines: str, first: str, second: str = "", feeds: int = 6) -> PlanFile:
    text = PLAN.replace("LINES", lines).replace("FIRST", first).replace("SECOND", second).replace("FOR", str(feeds))
    found = read(text)
    assert isinstance(found, PlanFile), found
    return found


def dish(lines: str, first: str, second: str = "") -> Dish:
    return file(lines, first, second).plan.courses[0].dishes[0]


@pytest.mark.parametrize(
    ("use", "of"),
    [
        ("2 eggs", "3 eggs, baked through"),
        ("100 g flour", "250 g plain flour"),
        ("50 g melted butter", "60 g butter"),
        ("2 egg yolks", "3 eggs"),
        ("60 g butter", "60 g butter or 50 g lard"),
        ("1 onion", "3 Onions"),
    ],
)
def test_a_use_is_out_of_the_line_a_cook_would_take_it_from(use: str, of: str) -> None:
    other = line("1 kg carrots")

    found = matching(line(use), [other, line(of)])

    assert [each.food for each in found] == [(line(of).choices or (line(of),))[0].food]


@pytest.mark.parametrize(
    ("use", "of"),
    [("100 ml coconut milk", "200 ml milk"), ("50 g peanut butter", "60 g butter"), ("2 pears", "3 figs")],
)
def test_another_food_that_sounds_alike_is_another_food(use: str, of: str) -> None:
    assert matching(line(use), [line(of)]) == []


# A US cup is 236.588 ml and a pound 453.592 g (NIST Handbook 44, appendix C); a cup of butter weighs 227 g (USDA
# FoodData Central).
@pytest.mark.parametrize(
    ("has", "first", "second", "verdict"),
    [
        ("3 eggs", "2 eggs", "1 egg", "fits"),
        ("3 eggs", "2 eggs", "2 eggs", "over"),
        ("1 kg potatoes", "600 g potatoes", "400 g potatoes", "fits"),
        ("1 lb potatoes", "453 g potatoes", "", "fits"),
        ("1 lb potatoes", "455 g potatoes", "", "over"),
        ("1 l milk", "500 ml milk", "2 dl milk", "fits"),
        ("1 tbsp oil", "3 tsp oil", "", "fits"),
        ("1 tbsp oil", "4 tsp oil", "", "over"),
        ("2 to 3 tbsp oil", "2 to 3 tbsp oil", "", "fits"),
        ("230 g butter", "1 cup butter", "", "fits"),
        ("200 g butter", "1 cup butter", "", "over"),
        ("to taste salt", "1 tsp salt", "", "fits"),
        ("1 tsp salt", "to taste salt", "1 tsp salt", "fits"),
        ("1 jar mystery paste", "2 tbsp mystery paste", "", "unlike"),
        ("a bunch of thyme", "3 sprigs thyme", "", "unlike"),
        ("6 eggs", "6 egg yolks", "6 egg whites", "fits"),
        ("6 eggs", "6 egg yolks", "1 egg", "over"),
    ],
)
def test_what_goes_in_at_all_steps_is_added_up(has: str, first: str, second: str, verdict: str) -> None:
    for standard in (EXACT, ROUNDED):
        found = reckoned(dish(has, first, second), standard)

        assert [each.verdict for each in found] == [verdict]


def test_amounts_grow_with_their_dish_and_a_part_of_what_is_counted_is_not_rounded() -> None:
    plan = file("3 eggs, 250 g butter, 1 tsp salt", "1 egg, 250 g butter, 1 tsp salt", "2 eggs", feeds=4).plan
    first, second = plan.courses[0].dishes[0].steps

    egg, butter, salt = goes_in(plan, ("courses", 0, "dishes", 0, "steps", 0), first)
    (eggs,) = goes_in(plan, ("courses", 0, "dishes", 0, "steps", 1), second)

    assert egg.to_have == (1.5, 1.5)
    assert eggs.to_have == (3.0, 3.0)
    assert butter.to_have == (375.0, 375.0)
    assert salt.to_have == (1.375, 1.375)  # by less, as in the list: three quarters of each further batch


def test_all_that_is_counted_is_whole_as_it_is_bought() -> None:
    plan = file("3 eggs", "3 eggs", feeds=4).plan

    (eggs,) = goes_in(plan, ("courses", 0, "dishes", 0, "steps", 0), plan.courses[0].dishes[0].steps[0])

    assert eggs.to_have == (5.0, 5.0)


def test_a_food_that_only_a_step_names_is_in_the_dish_and_water_is_in_every_kitchen() -> None:
    found = foods_of(dish("3 eggs", "2 eggs, 50 g walnuts, 100 ml water"))

    assert [(loc, each.food) for loc, each in found] == [
        (("ingredients", 0), "eggs"),
        (("steps", 0, "uses", 1), "walnuts"),
    ]
