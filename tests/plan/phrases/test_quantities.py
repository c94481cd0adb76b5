"""Ingredients as a cook writes them."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError

from board.plan.phrases.quantities import UNITS, Ingredient, IngredientLine, parse_ingredient

LINE: TypeAdapter[Ingredient] = TypeAdapter(IngredientLine)


@pytest.mark.parametrize(
    ("text", "low", "high", "unit", "food", "section"),
    [
        ("1.2 kg celeriac (veg)", 1.2, 1.2, "kg", "celeriac", "veg"),
        ("1,2 kg celeriac", 1.2, 1.2, "kg", "celeriac", None),
        ("60g butter (dairy)", 60, 60, "g", "butter", "dairy"),
        ("4 eggs", 4, 4, "", "eggs", None),
        ("2–3 tbsp oil", 2, 3, "tbsp", "oil", None),
        ("2 to 3 tablespoons of oil", 2, 3, "tbsp", "oil", None),
        ("½ tsp salt", 0.5, 0.5, "tsp", "salt", None),
        ("1½ cups flour", 1.5, 1.5, "cup", "flour", None),
        ("1 ½ cups flour", 1.5, 1.5, "cup", "flour", None),
        ("1 1/2 cups flour", 1.5, 1.5, "cup", "flour", None),
        ("3/4 lb carrots", 0.75, 0.75, "lb", "carrots", None),
        ("8 fl oz cream", 8, 8, "fl oz", "cream", None),
        ("1 l whole milk", 1, 1, "l", "whole milk", None),
        ("1 large onion", 1, 1, "", "large onion", None),
        ("2 glasses of wine", 2, 2, "", "glasses of wine", None),
        ("3 cloves garlic", 3, 3, "clove", "garlic", None),
        ("2 tins tomatoes (store cupboard)", 2, 2, "tin", "tomatoes", "store cupboard"),
        ("1 kg potatoes (floury) (veg)", 1, 1, "kg", "potatoes (floury)", "veg"),
        ("0,125 l cream", 0.125, 0.125, "l", "cream", None),
    ],
)
def test_an_ingredient_is_amount_unit_food_and_section(
    text: str, low: float, high: float, unit: str, food: str, section: str | None
) -> None:
    assert LINE.validate_python(text) == Ingredient(food=food, low=low, high=high, unit=unit, section=section)


@pytest.mark.parametrize(
    ("text", "unit", "food"),
    [
        ("to taste salt", "to taste", "salt"),
        ("to taste, salt", "to taste", "salt"),
        ("a handful of parsley", "handful", "parsley"),
        ("a pinch of nutmeg", "pinch", "nutmeg"),
        ("A knob of butter", "knob", "butter"),
    ],
)
def test_some_amounts_have_no_figure(text: str, unit: str, food: str) -> None:
    assert LINE.validate_python(text) == Ingredient(food=food, unit=unit)


@pytest.mark.parametrize("unit", sorted({spelling for pair in UNITS.items() for spelling in (pair[0], *pair[1])}))
def test_every_spelling_of_a_unit_is_known(unit: str) -> None:
    found = LINE.validate_python(f"2 {unit} of something")

    assert found.unit == next(u for u, others in UNITS.items() if unit in (u, *others))
    assert found.food == "something"


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("", "has no amount"),
        ("celeriac", "has no amount"),
        ("-2 eggs", "has no amount"),
        ("1.2 kg", "does not say of what"),
        ("4", "does not say of what"),
        ("0 eggs", "lies above zero"),
        ("3 to 2 eggs", "runs backwards"),
        ("1/0 eggs", "divides by zero"),
        ("1,500 g flour", "write 1500 or 1.500"),
        ("9" * 300 + " kg flour", "check the figure"),
    ],
)
def test_an_ingredient_that_cannot_be_bought_is_refused(text: str, says: str) -> None:
    with pytest.raises(ValueError, match=says):
        LINE.validate_python(text)


def test_the_long_form_knows_the_same_units() -> None:
    assert LINE.validate_python({"food": "flour", "low": 1, "high": 2, "unit": "kg"}).unit == "kg"
    with pytest.raises(ValidationError, match="is not a unit of the kitchen; use g, kg"):
        LINE.validate_python({"food": "flour", "low": 1, "high": 2, "unit": "bushel"})
    with pytest.raises(ValidationError, match="check the figure"):
        LINE.validate_python({"food": "flour", "low": 1, "high": float("inf")})


@settings(deadline=None)  # the first line of all reads the table of foods
@given(st.text() | st.text("0123456789 /½,.–-()kgtolcupsaf", max_size=25))
def test_whatever_is_written_is_read_or_refused_in_words(text: str) -> None:
    try:
        assert parse_ingredient(text)["food"]
    except ValueError as refused:
        assert str(refused)  # noqa: PT017  # both endings are right


@given(
    st.decimals("0.01", "9999", places=2),
    st.sampled_from(sorted(UNITS)),
    st.sampled_from(["leeks", "rye bread", "œufs"]),
)
def test_a_decimal_amount_is_read_as_written(amount: object, unit: str, food: str) -> None:
    assert LINE.validate_python(f"{amount} {unit} {food}") == Ingredient(
        food=food, low=float(str(amount)), high=float(str(amount)), unit=unit
    )
