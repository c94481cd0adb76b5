"""food 15: raw food out of the fridge before it is cooked. Limit: USDA FSIS, danger zone: 2 h, and 1 h above 90 °F."""

import pytest

from tests.checks.sheet.suppers import line_of, said, supper, three_dishes, weights

ROAST = "- {step: roast it, where: oven at 180 C, takes: 40 min, cooks: poultry}"
CHICKEN = "ingredients: [1.6 kg chicken, 2 tbsp oil]"


def steps(*first: str) -> str:
    return "\n".join((*first, ROAST))


@pytest.mark.parametrize(
    ("first", "wanted"),
    [
        ("- {step: marinate it, where: worktop, takes: 5 h}", ["MIND"]),
        ("- {step: marinate it, where: worktop, takes: 121 min, before: 'roast it, at once'}", ["MIND"]),
        ("- {step: marinate it, where: worktop, takes: 2 h, before: 'roast it, at once'}", []),
        ("- {step: marinate it, takes: 5 h, where: fridge}", []),
        ("- {step: marinate it, where: worktop, takes: 5 h, perishable: no}", []),
    ],
)
def test_f15_raw_food_is_not_left_out_before_it_is_cooked(first: str, wanted: list[str]) -> None:
    assert weights(supper(steps(first), food=CHICKEN), "food 15") == wanted


def test_f15_tells_the_food_its_minutes_and_where_they_went() -> None:
    first = (
        "- {step: cut it up, takes: 30 min, keeps: 6 h in the room}",
        "- {step: salt it, takes: 10 min, after: 'cut it up, at least 3 h, at most 3 h', before: 'roast it, at once'}",
    )
    (snag,) = said(supper(steps(*first), food=CHICKEN), "food 15")

    assert line_of(snag).startswith("- {step: cut it up")
    assert "chicken may stand out raw for 3 h 40 before roast it" in snag.message
    assert "30 min cut it up, 180 min kept after cut it up, 10 min salt it" in snag.message
    assert "cooking does not mend it" in snag.mend


def test_f15_on_a_hot_day_an_hour_is_enough() -> None:
    """Above 90 °F: 1 h."""
    first = steps("- {step: marinate it, where: worktop, takes: 61 min, before: 'roast it, at once'}")

    assert weights(supper(first, food=CHICKEN, air="{indoors: 91 F}"), "food 15") == ["MIND"]
    assert weights(supper(first, food=CHICKEN, air="{indoors: 90 F}"), "food 15") == []


def test_f15_a_dish_with_nothing_raw_in_it_is_told_nothing() -> None:
    """Vegetables may stand in the room before they are cooked."""
    soup = "- {step: chop it, takes: 3 h}\n- {step: boil it, where: stovetop, takes: 40 min, until: 90 C}"
    carrots = "ingredients: [1.6 kg carrots, 200 ml cream]"

    assert weights(supper(soup, food=carrots), "food 15") == []


def test_what_is_cooked_or_reheated_spoils_though_its_ingredients_are_not_written() -> None:
    """`cooks: poultry` says that there is poultry in it."""
    found = supper(
        steps("- {step: marinate it, where: worktop, takes: 5 h, before: 'roast it, at once'}"),
        food="by time alone: no",
    )

    assert "poultry may stand out raw for 5 h" in said(found, "food 15")[0].message


def test_f15_is_told_once_for_each_dish() -> None:
    """However many dishes wait too long; of two birds in one dish, the one that waits longer."""
    found = three_dishes(
        "- {step: marinate THIS, where: worktop, takes: 5 h}\n"
        "- {step: roast THIS, where: stovetop, takes: 40 min, cooks: poultry}",
        food=CHICKEN,
    )

    assert weights(found, "food 15") == ["MIND"] * 3


@pytest.mark.parametrize(("legs", "wings"), [("3 h", "5 h"), ("5 h", "3 h")])
def test_f15_of_two_pieces_of_a_dish_the_one_that_waits_longer_is_told(legs: str, wings: str) -> None:
    found = steps(
        f"- {{step: marinate the legs, where: worktop, takes: {legs}}}",
        "- {step: fry the legs, where: stovetop, takes: 40 min, cooks: poultry}",
        f"- {{step: marinate the wings, where: worktop, takes: {wings}, after: nothing}}",
        "- {step: fry the wings, where: stovetop, takes: 40 min, cooks: poultry, after: marinate the wings}",
        "- {step: lay out, takes: 5 min, after: [fry the legs, fry the wings]}",
    ).removesuffix(f"\n{ROAST}")
    (snag,) = said(supper(found, food=CHICKEN), "food 15")

    assert f"before fry the {'legs' if legs == '5 h' else 'wings'}" in snag.message
