"""A recipe's ingredient becomes a plan's line: no food in it goes into a remark."""

import pytest

from board.facts.food import understood
from board.importing.recipe.foods import food_of, foods_of


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


@pytest.mark.parametrize(
    ("text", "lines"),
    [
        ("1 cup (220 g) rice", ["1 cup (220 g) rice"]), ("((2 tbsp oil))", ["2 tbsp oil"]),
        ("2 (400 g) tins tomatoes", ["2 (400 g) tins tomatoes"]), ("600 ml (1 pint) milk", ["600 ml milk"]),
        ("1 cup plus 1 tbsp sugar", ["1 cup sugar", "1 tbsp sugar"]), ("1 (9-inch) pie crust", ["1 pie crust"]),
        ("50 g butter, plus 1 tbsp to finish", ["50 g butter", "1 tbsp butter"]),
        ("a small bunch of dill", ["1 bunch of dill"]),
        ("3 eggs plus 2 yolks", ["3 eggs", "2 egg yolks"]), ("juice of 2 lemons", ["2 lemons"]),
        ("grated zest and juice of half an orange", ["1/2 orange"]), ("1 heaped tsp mustard", ["1 tsp mustard"]),
        ("1 carrot, 1 leek and 1 onion, all diced", ["1 carrot", "1 leek", "1 onion"]),
        ("1 tbsp each chopped parsley and chives", ["1 tbsp chopped parsley", "1 tbsp chives"]),
        ("½ x 400 g tin beans", ["200 g beans"]), ("2 lg eggs", ["2 large eggs"]),
        ("2 lb 4 oz/1 kg beef", ["1 kg beef"]),
        ("2 lb 4 oz beef", ["36 oz beef"]), ("1 package (8 oz) cream cheese", ["1 pack (8 oz) cream cheese"]),
        ("6 (about 1.5 kg) chicken legs", ["6 chicken legs"]), ("a 2 cm piece of ginger", ["1 piece of ginger"]),
        ("1 kg/2 lb 4 oz potatoes", ["1 kg potatoes"]),
    ],
)  # fmt: skip
def test_amounts_as_recipes_write_them(text: str, lines: list[str]) -> None:
    assert [food.line for food in foods_of(text)] == lines


@pytest.mark.parametrize("text", ["salt and 2 tsp pepper", "1 glass 12 g salt"])
def test_an_amount_that_could_not_be_read_is_told(text: str) -> None:
    assert "could not be read" in " ".join(food.remark for food in foods_of(text))
