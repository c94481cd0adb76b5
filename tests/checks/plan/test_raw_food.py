"""Which of a dish's foods are raw: also beside words that nobody knows. Common practice, no source."""

import pytest

from board.checks.raw_food import raw_class_of


@pytest.mark.parametrize(
    ("food", "raw"),
    [
        ("cod fillets with glimmer sauce", "fish"),
        ("chicken thighs, rubbed with zorgle", "poultry"),
        ("steak tartare", "ground meat"),
        ("eggs, snarked", "eggs"),
        ("duck confit", None),
        ("sardines in oil", None),
        ("poached salmon with glimmer sauce", None),
        ("vegan chicken pieces", None),
        ("glimmer sauce", None),
    ],
)
def test_a_strange_word_makes_no_raw_food_of_anything_and_hides_none(food: str, raw: str | None) -> None:
    assert raw_class_of(food) == raw
