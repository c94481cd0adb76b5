"""Amounts as people and recipes write them, and lines that offer one food or another.

A dozen is 12; a pint is half a quart: NIST Handbook 44, appendix C; an imperial gallon is 4.54609 l: UK Units of
Measurement Regulations 1995, from memory.
"""

import pytest
from pydantic import TypeAdapter, ValidationError

from board.facts.units import EXACT, ROUNDED, volume
from board.plan.phrases.quantities import Ingredient, IngredientLine

LINE: TypeAdapter[Ingredient] = TypeAdapter(IngredientLine)


def read(text: str) -> tuple[float | None, str, str, str]:
    line = LINE.validate_python(text)
    return line.low, line.unit, line.size, line.food


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("1½ pints whole milk", (1.5, "pint", "", "whole milk")),
        ("2 qt fish stock", (2, "quart", "", "fish stock")),
        ("1.5 dl cream", (1.5, "dl", "", "cream")),
        ("50 cl cider", (50, "cl", "", "cider")),
        ("a dozen eggs", (12, "", "", "eggs")),
        ("2 dozen mussels", (24, "", "", "mussels")),
        ("half a dozen rolls", (6, "", "", "rolls")),
        ("1½ doz. quail eggs", (18, "", "", "quail eggs")),
        ("3 x 400 g tins chopped tomatoes", (3, "tin", "400 g", "chopped tomatoes")),
        ("3 \N{MULTIPLICATION SIGN} 400g cans of tomatoes", (3, "tin", "400 g", "tomatoes")),
        ("2 (14 oz) cans lentils", (2, "tin", "14 oz", "lentils")),
        ("2 jars (350 g each) artichokes", (2, "jar", "350 g", "artichokes")),
        ("a 400 g tin of chickpeas", (1, "tin", "400 g", "chickpeas")),
        ("28-ounce can tomatoes", (1, "tin", "28 oz", "tomatoes")),
        ("4 x 160 g hake fillets", (4, "", "160 g", "hake fillets")),
        ("1 cup (220 g) sugar", (220, "g", "", "sugar")),
        ("250 ml/1 cup milk", (250, "ml", "", "milk")),
        ("(2 cups) flour", (2, "cup", "", "flour")),
        ("1 lemon ((waxed))", (1, "", "", "lemon")),
        ("300gflour", (300, "g", "", "flour")),
        ("300 grapes", (300, "", "", "grapes")),
        ("two leeks", (2, "", "", "leeks")),
        ("about 2 kg of lamb", (2, "kg", "", "lamb")),
        ("1 kg or so potatoes", (1, "kg", "", "potatoes")),
        ("1-1/2 cups rice", (1.5, "cup", "", "rice")),
    ],
)
def test_amounts_are_read_as_people_write_them(text: str, wanted: tuple[float, str, str, str]) -> None:
    assert read(text) == wanted


def test_a_dozen_may_be_a_range_too() -> None:
    line = LINE.validate_python("1 to 2 dozen oysters")
    assert (line.low, line.high, line.unit, line.food) == (12, 24, "", "oysters")


def test_no_part_of_a_dozen_is_refused_in_words() -> None:
    with pytest.raises(ValidationError, match="divides by zero"):
        LINE.validate_python("1/0 dozen eggs")


def test_three_or_four_is_a_range() -> None:
    line = LINE.validate_python("3 or 4 eggs")
    assert (line.low, line.high, line.food, line.choices) == (3, 4, "eggs", ())


def test_a_pint_is_of_the_plans_own_country() -> None:
    us, imperial = volume(1, "pint", EXACT), volume(1, "pint", ROUNDED)
    assert us is not None
    assert imperial is not None
    assert us.millilitres == pytest.approx(473.176473)
    assert imperial.millilitres == pytest.approx(568.26125)
    for standard in (EXACT, ROUNDED):
        quart, pint = volume(1, "quart", standard), volume(2, "pint", standard)
        assert quart == pint


@pytest.mark.parametrize(
    ("text", "offered"),
    [
        ("4 fennel bulbs or 3 celery hearts (veg)", [(4, "", "fennel bulbs"), (3, "", "celery hearts")]),
        ("1 tin tomatoes or 500 g fresh tomatoes", [(1, "tin", "tomatoes"), (500, "g", "fresh tomatoes")]),
        ("3 celery hearts or ½ celeriac", [(3, "", "celery hearts"), (0.5, "", "celeriac")]),
        ("60 g butter or margarine", [(60, "g", "butter"), (60, "g", "margarine")]),
        ("2 tbsp olive or rapeseed oil", [(2, "tbsp", "olive oil"), (2, "tbsp", "rapeseed oil")]),
        ("100 g black or green olives", [(100, "g", "black olives"), (100, "g", "green olives")]),
        ("200 g chard or spinach, washed", [(200, "g", "chard, washed"), (200, "g", "spinach, washed")]),
        ("1 kg potatoes, more or less", []),
        ("2 lemons or to taste", []),
    ],
)
def test_or_offers_both_foods_each_with_its_own_amount(text: str, offered: list[tuple[float, str, str]]) -> None:
    assert [(each.low, each.unit, each.food) for each in LINE.validate_python(text).choices] == offered


def test_a_line_that_offers_names_every_food_once_and_what_is_said_of_all() -> None:
    assert LINE.validate_python("200 g chard or spinach, washed (veg)").food == "chard or spinach, washed"


def test_the_host_takes_one_of_those_offered() -> None:
    assert read("4 fennel bulbs or 3 celery hearts, take celery (veg)") == (3, "", "", "celery hearts")
    assert LINE.validate_python("60 g butter or margarine, take butter").choices == ()


@pytest.mark.parametrize("text", ["60 g butter or margarine, take lard", "60 g butter, take butter"])
def test_what_is_not_offered_cannot_be_taken(text: str) -> None:
    with pytest.raises(ValidationError, match="write one of its foods after take"):
        LINE.validate_python(text)


@pytest.mark.parametrize(
    ("text", "food"),
    [
        ("sea salt and black pepper, to taste", "sea salt and black pepper"),
        ("a few gratings of nutmeg", "nutmeg"),
        ("a drizzle of honey", "honey"),
        ("some parsley", "parsley"),
        ("ice cubes, to serve", "ice cubes, to serve"),
        ("butter for frying the almonds", "butter for frying the almonds"),
        ("bread, to serve with aioli", "bread, to serve with aioli"),
    ],
)
def test_what_has_no_figure_is_taken_as_some_and_no_food_of_it_is_lost(text: str, food: str) -> None:
    assert read(text) == (None, "to taste", "", food)


def test_a_good_pinch_is_a_pinch() -> None:
    assert read("a good pinch of saffron, steeped in 2 tbsp hot milk")[1:] == (
        "pinch",
        "",
        "saffron, steeped in 2 tbsp hot milk",
    )
