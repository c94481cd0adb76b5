"""A dish for more or fewer than it is written for."""

from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.facts.by_hand import TABLE, by_hand, hand_factor
from board.plan.load import PlanFile
from board.plan.phrases.quantities import UNITS, Ingredient, parse_ingredient
from board.plan.resolve.scaling import factor_of, guests_fed, outgrows_its_times, scale, whole_up
from tests.conftest import HEAD

PLAIN = st.sampled_from(["plain flour", "celeriac", "butter", "double cream", "sugar"])


def line(text: str) -> Ingredient:
    return Ingredient.model_validate(parse_ingredient(text))


@given(st.floats(0.1, 1000), st.sampled_from(sorted(UNITS)), PLAIN, st.floats(0.1, 10))
def test_plain_amounts_are_scaled_in_proportion_and_back_again(
    amount: float, unit: str, food: str, factor: float
) -> None:
    there = scale(Ingredient(food=food, low=amount, high=amount, unit=unit), factor)
    assert there.low is not None
    back = scale(Ingredient(food=food, low=there.low, high=there.high, unit=unit), 1 / factor)

    assert there.low == there.high == pytest.approx(amount * factor)
    assert back.low == pytest.approx(amount)


def test_both_ends_of_a_range() -> None:
    found = scale(line("2 to 3 tbsp oil"), 2)

    assert (found.low, found.high, found.whole) == (4, 6, None)


@pytest.mark.parametrize("text", ["to taste salt", "a handful of parsley", "a knob of butter", "a pinch of nutmeg"])
def test_what_has_no_figure_stays(text: str) -> None:
    found = scale(line(text), 3)

    assert (found.low, found.high, found.factor) == (None, None, 1)


@pytest.mark.parametrize(("text", "factor", "exact", "whole"), [
    ("3 eggs", 1.5, 4.5, 5), ("1 vanilla pod", 0.5, 0.5, 1), ("1 tin butter beans", 1.25, 1.25, 2),
    ("2 eggs", 1.5, 3, None), ("½ lemon", 1, 0.5, None), ("3 eggs", 1 / 3, 1, None),
])  # fmt: skip
def test_things_counted_are_rounded_up_beside_the_exact_figure(
    text: str, factor: float, exact: float, whole: int | None
) -> None:
    found = scale(line(text), factor)

    assert found.high == pytest.approx(exact)
    assert found.whole == (None if whole is None else (whole, whole))


@pytest.mark.parametrize(("food", "kind", "doubled"), [
    ("salt", "salt", 1.75), ("flaky salt", "salt", 1.75), ("fresh yeast", "yeast", 1.75),
    ("baking powder", "leavening", 1.9), ("ground cloves", "strong spices", 1.5), ("cayenne", "strong spices", 1.5),
])  # fmt: skip
def test_hand_factors_where_in_proportion_is_too_much(food: str, kind: str, doubled: float) -> None:
    """Common practice, no source."""
    found = scale(line(f"10 g {food}"), 2)

    assert found.hand is not None
    assert found.hand.kind == kind
    assert found.factor == pytest.approx(doubled)
    assert found.high == pytest.approx(10 * doubled)


@pytest.mark.parametrize("food", ["salted butter", "salt cod", "cream of tartar", "sweet chilli sauce", "basalt"])
def test_what_only_sounds_like_it_grows_in_proportion(food: str) -> None:
    assert scale(line(f"10 g {food}"), 2).high == 20


@given(st.sampled_from(TABLE), st.floats(0.01, 20))
def test_a_hand_factor_lies_between_as_written_and_in_proportion(row: object, factor: float) -> None:
    found = hand_factor(row, factor)  # type: ignore[arg-type]

    assert min(1, factor) <= found + 1e-9
    assert found <= max(1, factor) + 1e-9


def test_pieces_and_cups_keep_the_ratio_of_their_weights() -> None:
    """USDA SR: granulated sugar 200 g a cup, a large egg 50 g. So 4 eggs to 1 cup weigh the same, and 10 to 2½."""
    eggs, sugar = (scale(line(text), 10 / 4).high for text in ("4 eggs", "1 cup granulated sugar"))

    assert (eggs, sugar) == (10, pytest.approx(2.5))
    assert eggs * 50 == pytest.approx(sugar * 200)


COURSE = """
courses:
  - course: Main
    at: 19:15
    dishes:
"""
STEPS = "steps: [{step: cook, takes: 10 min}]"


def fed(plan_from: Callable[[str], PlanFile], *dishes: str) -> list[int | None]:
    """Of eight guests."""
    lines = "".join(f"      - {{dish: D{n}, {dish + ', ' if dish else ''}{STEPS}}}\n" for n, dish in enumerate(dishes))
    plan = plan_from(HEAD.replace("[8 guests]", "[Tomas, 7 others]") + COURSE + lines).plan
    return [guests_fed(plan, plan.courses[0], dish) for dish in plan.courses[0].dishes]


@pytest.mark.parametrize(("dishes", "expected"), [
    (["for: 4"], [8]),
    (["for: 8"], [8]),
    (["for: 12"], [8]),
    ([""], [None]),
    (["for: 7", "for: 1"], [7, 1]),  # between them they feed the table
    (["for: 8", "for: 2"], [8, 2]),  # a small dish beside one for all
    (["for: 4", "for: 2"], [8, 8]),  # they do not
    (["for: 4, scale: as written"], [4]),
    (["for: 7, scale: linear", "for: 1"], [8, 1]),
    (["for: 4", "for: 4, only for: Tomas"], [4, 1]),  # eight between them, and one eats the second
    (["for: 4, not for: Tomas", "for: 2, only for: Tomas"], [7, 1]),
])  # fmt: skip
def test_whom_a_dish_must_feed(
    plan_from: Callable[[str], PlanFile], dishes: list[str], expected: list[int | None]
) -> None:
    assert fed(plan_from, *dishes) == expected


def test_the_bundled_plans_are_made_as_written(lantern: PlanFile) -> None:
    """Its beef is for seven, its lentils for the one who eats none."""
    plan = lantern.plan

    assert {factor_of(plan, course, dish) for course in plan.courses for dish in course.dishes} == {1.0}


def test_times_must_be_looked_at_from_half_as_much_again() -> None:
    assert not outgrows_its_times(1.5)
    assert outgrows_its_times(1.51)


@given(st.integers(0, 1000))
def test_a_hair_above_a_whole_number_is_that_number(number: int) -> None:
    assert whole_up(number + 1e-12) == number
    assert whole_up(number + 0.01) == number + 1


def test_nothing_is_by_hand_twice() -> None:
    assert by_hand("plain flour") is None
