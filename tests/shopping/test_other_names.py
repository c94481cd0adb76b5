"""One line for one food on the list, whatever the plan calls it. Names: tests/facts/test_other_names.py."""

import pytest

from board.plan.resolve.amounts import Amount
from board.shopping.rows import row_to_buy
from tests.shopping.conftest import Listed
from tests.shopping.test_list import PANTRY, plan


@pytest.mark.parametrize(("dishes", "row"), [
    (("2 aubergines", "1 eggplant, diced"), ("3", 'aubergines (also "eggplant")')),
    (("1 zucchini", "2 courgettes", "3 large zucchinis"), ("6", 'zucchinis (also "courgettes")')),
    (("100 g finely chopped onions", "200 g onions, sliced"), ("300 g", "onions")),
    (("200 ml natural yoghurt", "100 ml natural yogurt"), ("300 ml", "natural yoghurt")),
    (("4 garlic cloves, crushed", "2 cloves of garlic"), ("6 cloves", "garlic")),
    (("2 thyme sprigs", "3 sprigs fresh thyme, leaves picked"), ("5 sprigs", "fresh thyme")),
    (("1 cup chopped onion", "200 g onions"), ("360 g", "onions")),  # USDA SR: 160 g a cup, chopped
    (("250 g butter", "2 tbsp melted butter"), ("280 g", "butter")),  # USDA SR: 227 g a cup, a sixteenth each
])  # fmt: skip
def test_one_food_is_one_line(listed: Listed, dishes: tuple[str, ...], row: tuple[str, str]) -> None:
    found = [row_to_buy(bought, None) for bought in listed(plan(*(f"'{dish}'" for dish in dishes))).to_buy]

    assert [(each.amount, each.food) for each in found] == [row]


def test_two_foods_are_two_lines(listed: Listed) -> None:
    dishes = ("1 lemon", "10 g lemon thyme", "200 ml double cream", "200 ml heavy cream", "2 tsp coriander seeds",
              "1 bunch cilantro", "1 tin chopped tomatoes", "2 tomatoes, chopped")  # fmt: skip

    assert len(listed(plan(*(f"'{dish}'" for dish in dishes))).to_buy) == len(dishes)


def test_what_is_in_the_house_packed_and_priced_may_be_called_otherwise(listed: Listed) -> None:
    """500 g wanted, 100 g there: a pack of 400 g at 1.10."""
    more = (
        PANTRY.format("100 g powdered sugar")
        + "packs: {confectioners' sugar: 400 g}\nprices: {icing sugar: 1.10 a pack}\n"
    )
    (bought,) = listed(plan("500 g icing sugar", more=more)).to_buy

    assert bought.item.parts[0].have == Amount("g", 100, 100)
    assert row_to_buy(bought, None).amount == "1 pack of 400 g"
    assert row_to_buy(bought, None).cost == "1.10"
