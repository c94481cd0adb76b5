"""How long foods keep raw: USDA FSIS / FoodSafety.gov cold storage chart where named, else common practice."""

import pytest

from board.facts.other_names import NAMES
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


@pytest.mark.parametrize(
    ("food", "days", "most"),
    [("raw pork sausages", 1, 2), ("smoked sausage", 7, None), ("fresh egg pasta", 1, None), ("ravioli", 1, None),
     ("fresh chicken stock", 3, None), ("home-made beef stock", 3, None)],
)  # fmt: skip
def test_sausages_fresh_pasta_and_fresh_stock_by_the_chart_from_memory(food: str, days: int, most: int | None) -> None:
    """Raw sausages 1–2 days, cooked or smoked 1 week, soups and stocks 3–4 days; FoodKeeper: fresh pasta 1–2 days."""
    keep = raw_keep(food)
    assert (keep.days, keep.most) == (days, most)
    assert keep.source.endswith("from memory")


@pytest.mark.parametrize("food", ["egg pasta", "pasta", "dried tortellini", "chicken stock", "stock cubes"])
def test_what_is_dry_or_in_a_carton_keeps_for_months(food: str) -> None:
    assert raw_keep(food).days == 180


@pytest.mark.parametrize("names", [names for names in NAMES if raw_keep(names[0]) is not UNKNOWN], ids=lambda n: n[0])
def test_a_food_keeps_as_long_under_each_of_its_names(names: tuple[str, ...]) -> None:
    assert {raw_keep(name) for name in names} == {raw_keep(names[0])}


@pytest.mark.parametrize(
    ("food", "days"), [("baking soda", 180), ("eggplants", 3), ("scallions", 3), ("cornstarch", 180)]
)
def test_a_food_under_its_other_name_is_known(food: str, days: int) -> None:
    assert raw_keep(food).days == days
