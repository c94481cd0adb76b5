"""What `check` says about packs and prices."""

from collections.abc import Callable

import pytest

from board.checks.plan.buying import (
    packs_and_prices_are_of_what_is_needed,
    points_have_one_meaning,
    prices_by_the_pack_have_a_pack,
)
from board.checks.plan.every import check
from board.plan.load import PlanFile
from board.plan.snag import Weight
from tests.conftest import read
from tests.plan.test_bad_plans import SOUND
from tests.shopping.test_list import plan

PlanFrom = Callable[[str], PlanFile]


@pytest.mark.parametrize("line", ["packs: {{{}: 250 g}}", "prices: {{{}: 2 a kg}}"])
def test_b01__of_a_food_nothing_needs(plan_from: PlanFrom, line: str) -> None:
    """`packs: {buter: 250 g}` where dishes need butter; `packs: {Butter: 250 g}` is fine."""
    bad = packs_and_prices_are_of_what_is_needed(plan_from(plan("100 g butter", more=line.format("buter") + "\n")))
    good = packs_and_prices_are_of_what_is_needed(plan_from(plan("100 g butter", more=line.format("Butter") + "\n")))

    assert good == []
    (snag,) = bad
    assert snag.code == "buying 1"
    assert "Did you mean 'butter'?" in snag.message
    assert snag.place is not None
    assert snag.place.text.startswith(line[:5])


def test_b02__a_price_by_the_pack_without_a_pack(plan_from: PlanFrom) -> None:
    """`prices: {butter: 2.40 a pack}` alone; with `packs: {butter: 250 g}` it is fine."""
    price = "prices: {butter: 2.40 a pack}\n"
    (snag,) = prices_by_the_pack_have_a_pack(plan_from(plan("100 g butter", more=price)))

    assert (snag.code, snag.place is not None and snag.place.column) == ("buying 2", 18)
    assert (
        prices_by_the_pack_have_a_pack(plan_from(plan("100 g butter", more=price + "packs: {butter: 250 g}\n"))) == []
    )
    assert prices_by_the_pack_have_a_pack(plan_from(plan("100 g butter", more="prices: {butter: 9 a kg}\n"))) == []


def test_drinks_that_are_reckoned_can_have_prices(plan_from: PlanFrom) -> None:
    more = "drinks: usual\nprices: {wine: 9 a bottle, ice: 2 a kg}\n"

    assert packs_and_prices_are_of_what_is_needed(plan_from(plan("100 g butter", more=more))) == []


@pytest.mark.parametrize(
    ("jobs", "more", "told"),
    [
        ("chill the wine", "", True),
        ("open the red wine", "", True),
        ("Chill two bottles of cider", "", True),
        ("chill the wine glasses", "", False),
        ("chill the soup", "", False),
        ("open the wine list", "pantry: [white wine]\n", False),
        ("chill the wine", "pantry: [white wine]\n", False),
        ("chill the wine", "pantry: [white wine vinegar]\n", True),
        ("chill the wine", "drinks: usual\n", False),
        ("{job: chill the wine, supplies: 3 bottles white wine (drinks)}", "", False),
    ],
)
def test_n07_what_is_chilled_or_opened_is_bought(jobs: str, more: str, told: bool) -> None:
    found = read(SOUND + f"jobs: [{jobs if jobs[0] == '{' else '{job: ' + jobs + ', takes: 10 min}'}]\n{more}")
    assert isinstance(found, PlanFile), found

    snags = [snag for snag in check(found) if snag.code == "buying 4"]

    assert [snag.weight for snag in snags] == ([Weight.NOTE] if told else [])


@pytest.mark.parametrize(
    ("lines", "told"),
    [
        (["1.000 g rice", "1,5 l water"], ["1.000 g of rice is read as 1, and may be meant as 1000"]),
        (["1.250 ml stock"], ["1.250 ml of stock is read as 1.25, and may be meant as 1250"]),
        (["1.250 kg beef", "1,5 l water"], ["1.250 kg of beef is read as 1.25, and may be meant as 1250"]),
        (["1.250 kg beef", "1.5 l water"], []),
        (["1000 g rice", "1.5 g saffron", "0.125 g salt", "1.25 l water"], []),
    ],
)
def test_a_point_that_may_part_thousands_is_asked_about(
    plan_from: Callable[[str], PlanFile], lines: list[str], told: list[str]
) -> None:
    """ISO 80000-1, 7.3.2, and BIPM's SI Brochure, 5.4.4: the decimal marker is a point or a comma, and neither parts
    groups of three digits; those who write a comma often part thousands by a point: common practice, no source."""
    file = plan_from(plan(", ".join(f"'{line}'" for line in lines)))

    found = points_have_one_meaning(file)

    assert [(snag.message, snag.weight) for snag in found] == [(each, Weight.ASK) for each in told]
