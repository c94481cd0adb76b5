"""What a name says is bought is one line to buy and the steps that serve it. Common practice, no source."""

from datetime import date

import pytest

from board.importing.starter.menu import read_menu
from board.importing.ways.ways import Setting, apart, dish_lines, ways_for
from board.plan.phrases.quantities import parse_ingredient

AT = Setting(7, 1, 4)


@pytest.mark.parametrize(
    ("dish", "food", "steps"),
    [
        ("focaccia (bought)", "focaccia", ["warm the focaccia"]),
        ("ready-made ravioli", "ravioli", ["boil the ravioli"]),
        ("shop-bought sorbet", "sorbet", ["soften the sorbet", "scoop the sorbet"]),
        ("gelato from the shop", "gelato", ["soften the gelato", "scoop the gelato"]),
        ("bought carrot cake", "carrot cake", ["plate the carrot cake"]),
        ("pear tart (from the bakery)", "pear tart", ["plate the pear tart"]),
        ("tarte tatin from the pâtisserie", "tarte tatin", ["plate the tarte tatin"]),
        ("halva, bought", "halva", ["plate the halva"]),
        ("quiche from our baker's", "quiche", ["plate the quiche"]),
    ],
)
def test_a_dish_said_to_be_bought_is_bought_and_served(dish: str, food: str, steps: list[str]) -> None:
    lines = dish_lines(dish, ways_for(dish)[0], AT)
    bought = lines[lines.index("  ingredients:") + 1 : lines.index("  steps:")]

    assert parse_ingredient(bought[0].removeprefix("    - "))["food"] == food
    assert len([line for line in bought if "to taste" not in line]) == 1
    assert [line.partition("step: ")[2] for line in lines if "- step: " in line] == steps


@pytest.mark.parametrize("dish", ["sea bass from the market", "bought leg of lamb, roast", "green beans from the shop"])
def test_what_a_shop_sells_raw_is_cooked(dish: str) -> None:
    assert not ways_for(dish)[0].name.startswith("bought")


def test_it_stands_where_such_a_dish_stands() -> None:
    assert ways_for("bought lemon tart")[0].course == "sweet"


def test_what_is_bought_beside_a_dish_is_that_alone() -> None:
    assert ways_for("lamb curry with naan (bought)")[0].name == "curry"
    assert apart("plum tart with shop-bought ice cream") == ("plum tart", "shop-bought ice cream")


def test_a_comma_before_bought_is_no_new_dish() -> None:
    (course,) = read_menu("Main: lamb stew, naan, bought, peas", date(2026, 11, 29)).courses

    assert course.dishes == ("lamb stew", "naan, bought", "peas")
