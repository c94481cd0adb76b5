"""What goes with a dish and is cooked on its own is a dish of its own; what belongs into it, or is bought, is not.
Common practice, no source."""

import pytest

from board.importing.ways.ways import apart


@pytest.mark.parametrize(
    ("said", "dishes"),
    [
        ("pear tart with cinnamon ice cream", ["pear tart", "cinnamon ice cream"]),
        ("roast duck with mashed potatoes and cherries", ["roast duck with cherries", "mashed potatoes"]),
        ("lentil curry with rice", ["lentil curry", "rice"]),
        ("plum crumble with custard & cream", ["plum crumble with cream", "custard"]),
        ("fish and chips", ["battered fish", "chips"]),
        ("steak frites", ["steak", "chips"]),
        ("mussels and fries", ["mussels", "fries"]),
        ("haddock, chips and mushy peas", ["battered haddock with mushy peas", "chips"]),
        ("pork chops and apple sauce", ["pork chops with apple sauce"]),
        ("apple pie and custard", ["apple pie", "custard"]),
        ("beef and ale stew and mash", ["beef and ale stew", "mash"]),
        ("roast chicken and potatoes", ["roast chicken", "roast potatoes"]),
        ("chicken curry, rice and naan", ["chicken curry with naan", "rice"]),
        ("scones and jam", ["scones with jam"]),
    ],
)
def test_what_is_cooked_beside_it_is_a_dish_of_its_own(said: str, dishes: list[str]) -> None:
    assert sorted(apart(said)) == sorted(dishes)


@pytest.mark.parametrize(
    "said",
    [
        "smoked mackerel with rye bread",  # bought
        "beef stew with dumplings",  # go into the pot
        "pasta with tomato sauce",  # one dish
        "lemon tart with raspberries",  # nothing to cook
        "rice with peas",
        "ice cream",
        "with custard",
        "ham and pea soup",
        "leek and potato gratin",
        "grilled chicken and mango salad",
        "steak and kidney pie",
        "rosemary and garlic roast potatoes",
        "mac and cheese",
        "spinach and ricotta cannelloni",
        " with ",
        "",
    ],
)
def test_what_belongs_into_it_or_is_bought_stays_with_it(said: str) -> None:
    assert apart(said) == (said,)
