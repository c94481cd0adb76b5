"""A recipe's ingredient becomes a plan's line: no food in it goes into a remark."""

import pytest

from board.facts.food import understood
from board.importing.recipe.foods import food_of


@pytest.mark.parametrize(
    ("text", "line", "remark"),
    [
        ("1 egg, beaten with 2 tbsp cream", "1 egg, beaten with 2 tbsp cream", ""),
        ("600 g chicken thighs, marinated in buttermilk", "600 g chicken thighs, marinated in buttermilk", ""),
        ("1 loaf rye bread (spread with butter)", "1 loaf rye bread, spread with butter", ""),
        ("120 g butter (or margarine)", "120 g butter or margarine", ""),
        ("2 onions, finely chopped", "2 onions", "finely chopped"),
        ("2 eggs (at room temperature)", "2 eggs", "at room temperature"),
        ("1 x 400 g tin chickpeas, drained", "1 x 400 g tin chickpeas", "drained"),
        ("250 g flour (gluten-free)", "250 g flour", "gluten-free; read the label"),
    ],
)
def test_only_mere_preparation_becomes_a_remark(text: str, line: str, remark: str) -> None:
    found = food_of(text)
    assert (found.line, found.remark) == (line, remark)


@pytest.mark.parametrize("food", ["cream", "almonds", "soy sauce", "prawns", "mustard", "sesame seeds", "white wine"])
@pytest.mark.parametrize("joined", ["2 carrots, dressed with {}", "2 carrots (tossed in {})", "2 carrots, {}, chopped"])
def test_a_food_behind_a_comma_or_in_brackets_stays_where_guests_are_checked(food: str, joined: str) -> None:
    traits = {trait for part in understood(food).known for trait in part.traits}
    line = food_of(joined.format(food)).line
    found = understood(line.partition(" ")[2])
    assert traits <= {trait for part in (*found.known, *found.named) for trait in part.traits}
