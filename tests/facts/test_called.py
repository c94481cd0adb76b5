"""When two names are one food. Common practice, no source."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.facts.called import as_bought, same_food


@pytest.mark.parametrize(
    ("one", "other"),
    [("onions", "Onion"), ("fresh thyme", "thyme"), ("tomatoes", "tomato"), ("potatoes", "potato"), ("Eggs", "egg"),
     ("bay leaves", "bay leaf"), ("radishes", "radish"), ("cherries", "cherry"), ("egg whites", "egg white"),
     ("  plain   flour ", "plain flour"), ("anchovies", "anchovy"), ("loaves", "loaf"),
     ("eggs, hard-boiled", "eggs"), ("9 eggs, baked through", "9 egg")],
)  # fmt: skip
def test_plurals_capitals_and_fresh_do_not_count(one: str, other: str) -> None:
    assert same_food(one) == same_food(other)


@pytest.mark.parametrize(
    ("one", "other"),
    [("plain flour", "rye flour"), ("flour", "plain flour"), ("egg", "egg yolk"), ("thyme", "dried thyme"),
     ("cream", "sour cream"), ("bread", "bread, no seeds"), ("pepper", "black pepper"), ("couscous", "couscou")],
)  # fmt: skip
def test_different_forms_stay_apart(one: str, other: str) -> None:
    assert same_food(one) != same_food(other)


@pytest.mark.parametrize("name", ["couscous", "asparagus", "hummus", "molasses", "swiss", "watercress"])
def test_what_only_looks_like_a_plural_stays(name: str) -> None:
    assert same_food(name) == name


@given(st.text(min_size=1, max_size=40) | st.text("aesoy ,'xl", min_size=1, max_size=30))
def test_folding_twice_is_folding_once(name: str) -> None:
    assert same_food(same_food(name)) == same_food(name)


@pytest.mark.parametrize(
    ("name", "bought"),
    [
        ("eggs, baked through", "eggs"),
        ("8 eggs, hard-boiled", "8 eggs"),
        ("bread, no seeds", "bread, no seeds"),
        ("eggs", "eggs"),
        (", baked through", ", baked through"),
    ],
)
def test_nobody_buys_how_it_will_be_cooked(name: str, bought: str) -> None:
    assert as_bought(name) == bought
