"""How much there is to drink. The arithmetic is tested; the constants are common practice, no source, but NIAAA's."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.facts.drinks import (
    BOTTLE_MILLILITRES,
    FLUTES_A_BOTTLE,
    USUAL,
    WINE_GLASSES_A_BOTTLE,
    Rate,
    coffee_grams,
    ethanol_grams,
    servings,
    standard_drinks,
    whole_bottles,
)


def test_a_bottle_of_wine_is_five_glasses_of_150_ml() -> None:
    """Common practice, no source."""
    assert BOTTLE_MILLILITRES / WINE_GLASSES_A_BOTTLE == 150
    assert [whole_bottles(n, WINE_GLASSES_A_BOTTLE) for n in (0, 1, 5, 6, 10, 11)] == [0, 1, 1, 2, 2, 3]


def test_a_bottle_of_sparkling_is_six_flutes_at_least() -> None:
    """Common practice, no source: 6 to 8."""
    assert 6 <= FLUTES_A_BOTTLE <= 8


def test_two_in_the_first_hour_and_one_an_hour_after() -> None:
    """Common practice, no source: 8 people over 4 hours take 8 × (2 + 3) = 40 glasses, 8 bottles."""
    glasses = servings(USUAL["wine"], 8, 4, 4)

    assert glasses == 40
    assert whole_bottles(glasses, WINE_GLASSES_A_BOTTLE) == 8


def test_by_the_course_and_once() -> None:
    assert servings(Rate(2, "glass", "course"), 6, 3, 4) == 48
    assert servings(Rate(0.6, "kg"), 10, 3, 4) == 6


def test_half_an_hour_takes_half_of_the_first() -> None:
    assert servings(USUAL["wine"], 4, 0.5, 1) == 4


def test_a_pound_of_coffee_is_fifty_cups() -> None:
    """Common practice, no source; 1 lb = 453.59237 g, NIST Handbook 44."""
    assert coffee_grams(50) == pytest.approx(453.59237)


def test_ice_lies_within_what_is_usual() -> None:
    """Common practice, no source: 0.5 to 0.7 kg a guest."""
    assert 0.5 <= USUAL["ice"].amount <= 0.7


def test_standard_drinks_of_a_bottle() -> None:
    """NIAAA: a US standard drink is 14 g of ethanol; 750 ml at 12 % are 71.0 g, 5.07 drinks."""
    assert ethanol_grams(750, 12) == pytest.approx(71.0, abs=0.05)
    assert standard_drinks(750, 12) == pytest.approx(5.07, abs=0.005)


@given(st.integers(0, 200), st.floats(0, 24), st.integers(1, 10))
def test_more_people_or_hours_never_take_less(people: int, hours: float, courses: int) -> None:
    for rate in USUAL.values():
        here = servings(rate, people, hours, courses)
        assert here <= servings(rate, people + 1, hours, courses)
        assert here <= servings(rate, people, hours + 1, courses)
