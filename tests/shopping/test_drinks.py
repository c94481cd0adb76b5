"""Drinks from guests, hours and courses. Figures: common practice, no source, but NIAAA's."""

import pytest

from board.shopping.errands import Provisions
from tests.shopping.conftest import Listed

# From 18:30 to the end of the last course, eaten in 30 min from 22:00: 4 hours.
EVENING = """
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [Ines, "Maud, alcohol-free", "Ada, pregnant", 5 others]
hands: {{host: {{hours: {{on the day: '9:00 - 23:30'}}}}}}
{more}
courses:
  - {{course: Soup, at: '19:15', dishes: [{{dish: D, steps: [{{step: a, takes: 5 min}}]}}]}}
  - course: Main
    at: 22:00
    eaten in: 30 min
    drink: [{drink}]
    dishes: [{{dish: E, steps: [{{step: b, takes: 5 min}}]}}]
"""


def drinks(listed: Listed, more: str, drink: str = "") -> dict[str, tuple[float | None, str]]:
    found = listed(EVENING.format(more=more, drink=drink))
    return {b.item.key: (b.item.parts[0].need.high, b.item.parts[0].need.kind) for b in found.to_buy}


def test_the_usual_for_six_who_drink_and_two_who_do_not(listed: Listed) -> None:
    """Wine: 6 × (2 + 3) = 30 glasses, 6 bottles. Soft drinks: 2 × 5 glasses and one each for the six, 16 of 200 ml =
    3.2 l. Water 8 × 0.5 l, ice 8 × 0.6 kg, coffee 8 cups of 9.07 g."""
    found = drinks(listed, "drinks: usual")

    assert found == {
        "wine": (6, "bottle"), "soft drink": (pytest.approx(3200), "ml"), "table water": (pytest.approx(4000), "ml"),
        "ice": (pytest.approx(4800), "g"), "ground coffee": (pytest.approx(8 * 453.59237 / 50), "g"),
    }  # fmt: skip


def test_children_get_neither_alcohol_nor_coffee(listed: Listed) -> None:
    """4 × 5 = 20 glasses are 4 bottles; 4 × 5 and 4 glasses of 200 ml; 6 cups."""
    found = drinks(listed, "drinks: {wine: usual, soft drinks: usual, coffee: usual, children: 2}")

    assert found == {
        "wine": (4, "bottle"), "soft drink": (pytest.approx(4800), "ml"),
        "ground coffee": (pytest.approx(6 * 453.59237 / 50), "g"),
    }  # fmt: skip


def test_a_plans_own_figures_go_first(listed: Listed) -> None:
    """1 glass a course: 6 × 2 = 12, 3 bottles; sparkling 6 flutes, 1 bottle; beer 2 × 6."""
    more = "drinks: {wine: 1 glass a guest a course, sparkling: 1 flute a guest, beer: 2 bottles a guest, ice: none}"

    assert drinks(listed, more) == {"wine": (3, "bottle"), "sparkling wine": (1, "bottle"), "beer": (12, "bottle")}


@pytest.mark.parametrize(("drink", "how_much", "bottles"), [
    ("wine", "0.5 l a guest", 4), ("wine", "1 bottle a guest", 6),
    ("beer", "1 l a guest", 19), ("beer", "2 glasses a guest", 12),
])  # fmt: skip
def test_litres_and_glasses_are_bought_in_whole_bottles(
    listed: Listed, drink: str, how_much: str, bottles: int
) -> None:
    """Six who drink: 3 l of wine are 4 bottles of 750 ml; 6 l of beer are 18.2 bottles of 330 ml, 12 glasses are 12."""
    assert drinks(listed, f"drinks: {{{drink}: {how_much}}}") == {drink: (bottles, "bottle")}


def test_where_children_and_who_is_alcohol_free_are_all_there_is_no_wine(listed: Listed) -> None:
    """Two of the eight drink none; told of eight children, nobody is left. 8 × 5 glasses of 200 ml for all."""
    found = drinks(listed, "drinks: {wine: usual, soft drinks: usual, children: 8}")

    assert found == {"soft drink": (pytest.approx(8000), "ml")}


def test_soft_drinks_in_the_plans_own_figures_are_for_every_guest(listed: Listed) -> None:
    assert drinks(listed, "drinks: {soft drinks: 0.3 l a guest}") == {"soft drink": (pytest.approx(8 * 300), "ml")}


def test_with_nothing_else_to_drink_the_usual_soft_drinks_are_for_everybody(listed: Listed) -> None:
    """8 × 5 glasses of 200 ml; nobody waits for wine that is not there."""
    assert drinks(listed, "drinks: {wine: none, soft drinks: usual}") == {"soft drink": (pytest.approx(8000), "ml")}


def test_without_drinks_none_are_reckoned(listed: Listed) -> None:
    assert drinks(listed, "") == {}


def test_what_is_poured_with_a_course_is_bought(listed: Listed) -> None:
    found = listed(EVENING.format(more="", drink='"dry cider, 6 bottles, chilled 2 h, 12 %"'))

    (cider,) = found.to_buy
    assert (cider.item.food, cider.item.parts[0].need.high, cider.item.section) == ("dry cider", 6, "drinks")
    assert [need.for_what for need in cider.item.needs] == ["Main"]
    assert strong(found) == [("dry cider", pytest.approx(6 * 5.07, abs=0.03))]


@pytest.mark.parametrize(("poured", "wine", "rest"), [
    ('"white Burgundy, 4 bottles"', 2, {}),  # 30 usual glasses less 20 of 150 ml are 10
    ('"red wine, 1 bottle of 375 ml", "Riesling, 2 bottles"', 4, {}),  # 30 - 2.5 - 10 = 17.5 glasses
    ('"red wine, 9 bottles"', None, {}),  # more than the usual: no more
    ('"port, 1 bottle"', 6, {}),  # by the small glass, beside the wine
    ('"dry cider, 6 bottles"', 6, {}),
    ('"prosecco, 1 bottle"', 6, {}),  # none is usual here
    ('"apple juice, 2 bottles of 1 l"', 6, {"soft drink": 1200}),  # 16 glasses less 10 of 200 ml
    ('"sparkling water, 2 bottles of 1 l"', 6, {"table water": 2000}),  # 4 l less 2
])  # fmt: skip
def test_what_is_poured_with_a_course_is_part_of_the_usual(
    listed: Listed, poured: str, wine: int | None, rest: dict[str, float]
) -> None:
    """Of 30 glasses of wine, 16 of soft drinks and 4 l of water, as above."""
    found = listed(EVENING.format(more="drinks: usual", drink=poured))
    usual = [b.item for b in found.to_buy if b.item.needs[0].for_what == "drinks for the table"]
    bought = {item.key: item.parts[0].need.high for item in usual}

    assert bought.get("wine") == wine
    assert {key: bought[key] for key in rest} == {key: pytest.approx(much) for key, much in rest.items()}
    assert ("wine" in found.poured) == (wine != 6)


def test_a_figure_of_the_plans_own_is_bought_beside_what_is_poured(listed: Listed) -> None:
    found = drinks(listed, "drinks: {wine: 1 bottle a guest}", '"red wine, 2 bottles"')

    assert found == {"red wine": (2, "bottle"), "wine": (6, "bottle")}


def strong(found: Provisions) -> list[tuple[str, float]]:
    """NIAAA: 750 ml at 12 % are 5.07 US standard drinks of 14 g."""
    return [(strength.drink, strength.drinks) for strength in found.strengths]
