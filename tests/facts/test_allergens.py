"""The two lists of allergens, name by name.

US: FALCPA 2004 (Public Law 108-282), FASTER Act 2021 (Public Law 117-11); the tree nuts by FDA's Questions and Answers
Regarding Food Allergens, Edition 5 (January 2025), Table 1, read in copies of the table. EU: Regulation (EU) No
1169/2011, Annex II, read in copies.
"""

import pytest

from board.facts.allergens import (
    EU_ALL,
    EU_FOURTEEN,
    EU_LAW,
    US_ALL,
    US_LAW,
    US_NINE,
    Allergen,
    declared_by,
)
from board.facts.food import facts
from board.facts.named import known_words, named
from board.facts.origins import Origin

A = Allergen


def test_the_us_list_has_its_nine() -> None:
    assert {name: {a.value for a in held} for name, held in US_NINE.items()} == {
        "milk": {"milk"},
        "eggs": {"eggs"},
        "fish": {"fish"},
        "crustacean shellfish": {"crustaceans"},
        "tree nuts": {
            "almonds", "hazelnuts", "walnuts", "cashews", "pecans", "Brazil nuts", "pistachios", "macadamias",
            "pine nuts",
        },
        "peanuts": {"peanuts"},
        "wheat": {"wheat"},
        "soybeans": {"soy"},
        "sesame": {"sesame"},
    }  # fmt: skip


def test_the_eu_list_has_its_fourteen() -> None:
    assert {name: {a.value for a in held} for name, held in EU_FOURTEEN.items()} == {
        "cereals containing gluten": {"wheat", "rye", "barley", "oats"},
        "crustaceans": {"crustaceans"},
        "eggs": {"eggs"},
        "fish": {"fish"},
        "peanuts": {"peanuts"},
        "soybeans": {"soy"},
        "milk": {"milk"},
        "nuts": {
            "almonds", "hazelnuts", "walnuts", "cashews", "pecans", "Brazil nuts", "pistachios", "macadamias",
        },
        "celery": {"celery"},
        "mustard": {"mustard"},
        "sesame": {"sesame"},
        "sulphur dioxide and sulphites": {"sulphites"},
        "lupin": {"lupin"},
        "molluscs": {"molluscs"},
    }  # fmt: skip


def test_the_two_lists_differ_by_these() -> None:
    assert {a.value for a in EU_ALL - US_ALL} == {
        "rye", "barley", "oats", "celery", "mustard", "sulphites", "lupin", "molluscs",
    }  # fmt: skip
    assert {A.PINE_NUTS} == US_ALL - EU_ALL
    assert set(Allergen) - US_ALL - EU_ALL == {A.CHESTNUTS, A.COCONUT}


@pytest.mark.parametrize(
    ("food", "us", "eu"),
    [
        ("mussels", False, True),
        ("squid", False, True),
        ("prawns", True, True),
        ("pearl barley", False, True),
        ("spelt flour", True, True),
        ("celeriac", False, True),
        ("pine nuts", True, False),
        ("chestnuts", False, False),
        ("coconut milk", False, False),
        ("tahini", True, True),
        ("lupin flour", False, True),
    ],
)
def test_a_food_is_declared_by_the_one_law_the_other_both_or_none(food: str, us: bool, eu: bool) -> None:
    found = facts(food)
    assert found is not None

    laws = {law for allergen in found.allergens for law in declared_by(allergen)}

    assert laws == {law for law, there in ((US_LAW, us), (EU_LAW, eu)) if there}


def test_barley_holds_gluten_and_no_wheat() -> None:
    found = facts("barley")

    assert found is not None
    assert found.allergens == {A.BARLEY}
    assert Origin.GLUTEN in found.origins


@pytest.mark.parametrize("word", known_words())
def test_every_word_names_something_in_the_singular_and_the_plural(word: str) -> None:
    found = named(word)

    assert found is not None
    assert found.holds
    assert found.cleared >= found.holds or Origin.GLUTEN in found.holds or word == "animal products"
    assert named(word.upper()) == found
    if not word.endswith("ss"):
        assert named(word.removesuffix("s")) == found


def test_no_nuts_means_peanuts_too_and_asks_about_what_is_no_nut_by_law() -> None:
    nuts, tree_nuts = named("nuts"), named("tree nuts")
    assert nuts is not None
    assert tree_nuts is not None

    assert nuts.holds == tree_nuts.holds | {A.PEANUTS}
    assert nuts.asks == tree_nuts.asks == {A.CHESTNUTS, A.COCONUT}


def test_free_from_gluten_does_not_say_free_from_wheat() -> None:
    """Wheat starch without gluten is sold: Regulation (EU) No 828/2014 allows up to 20 mg/kg (from memory)."""
    gluten = named("gluten")

    assert gluten is not None
    assert A.WHEAT not in gluten.cleared
