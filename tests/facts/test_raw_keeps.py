"""How long foods keep raw: USDA FSIS / FoodSafety.gov cold storage chart where named, else common practice."""

import pytest

from board.facts.raw_keeps import FSIS, PRACTICE, UNKNOWN, raw_keep


@pytest.mark.parametrize(
    ("food", "days"), [("chicken thighs", 1), ("minced beef", 1), ("beef shin", 3), ("pork chops", 3), ("salmon", 1),
                       ("egg whites", 2)],
)  # fmt: skip
def test_the_lower_figure_of_the_chart(food: str, days: int) -> None:
    """Raw poultry and ground meat 1–2 days, steaks, chops and roasts 3–5, fatty fish 1–3, raw whites 2–4."""
    assert (raw_keep(food).days, raw_keep(food).source) == (days, FSIS)


@pytest.mark.parametrize(
    ("food", "other"), [("chicken stock", "chicken"), ("coconut milk", "milk"), ("dried thyme", "thyme"),
                        ("butter beans", "butter"), ("peas, frozen", "peas"), ("apple juice", "apple")],
)  # fmt: skip
def test_the_longest_words_and_what_makes_it_last_win(food: str, other: str) -> None:
    assert raw_keep(food).days > raw_keep(other).days


def test_an_unknown_food_goes_by_its_section_and_else_by_little() -> None:
    assert raw_keep("kohlrabi", "veg").days == 3
    assert raw_keep("kohlrabi", "fishmonger").days == 1
    assert raw_keep("kohlrabi") == UNKNOWN
    assert UNKNOWN.source == PRACTICE
