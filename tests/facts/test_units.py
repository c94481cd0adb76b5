"""Kitchen measures and weights. Oracle: pint's own registry of units; figures from NIST and USDA as named."""

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.facts.units import CUPS, EXACT, GRAMS, METRIC_MILLILITRES, PINTS, ROUNDED, Volume, cups, grams, volume
from board.facts.weights import CUP_WEIGHTS, PIECE_WEIGHTS, cup_weight, piece_weight
from board.plan.phrases.quantities import UNITS
from board.plan.resolve.amounts import Amount, measure_for

PINT = {"g": "gram", "kg": "kilogram", "oz": "ounce", "lb": "pound", "ml": "milliliter", "cl": "centiliter",
        "dl": "deciliter", "l": "liter", "pint": "pint", "quart": "quart", "tsp": "teaspoon", "tbsp": "tablespoon",
        "cup": "cup", "fl oz": "fluid_ounce"}  # fmt: skip
REGISTRY: pint.UnitRegistry[float] = pint.UnitRegistry()
AMOUNTS = st.floats(0.01, 10_000)


@given(AMOUNTS, st.sampled_from(sorted(GRAMS)))
def test_weights_are_those_of_pint(amount: float, unit: str) -> None:
    """NIST Handbook 44, appendix C: 1 lb = 453.59237 g exactly."""
    assert grams(amount, unit) == pytest.approx(REGISTRY.Quantity(amount, PINT[unit]).to("gram").magnitude, rel=1e-12)


@given(AMOUNTS, st.sampled_from(sorted({*CUPS, *METRIC_MILLILITRES, *PINTS})))
def test_exact_measures_are_those_of_pint(amount: float, unit: str) -> None:
    held = volume(amount, unit, EXACT)

    assert held is not None
    assert held.millilitres == pytest.approx(REGISTRY.Quantity(amount, PINT[unit]).to("ml").magnitude, rel=1e-12)


@pytest.mark.parametrize(
    ("unit", "millilitres"), [("cup", 236.5882365), ("tbsp", 14.78676478125), ("tsp", 4.92892159375)]
)
def test_exact_measures_from_the_inch(unit: str, millilitres: float) -> None:
    """NIST Handbook 44, appendix C: 1 in = 2.54 cm, 1 gallon = 231 in³."""
    held = volume(1, unit, EXACT)

    assert held is not None
    assert held.millilitres == pytest.approx(millilitres, rel=1e-12)


@pytest.mark.parametrize(("unit", "millilitres"), [("cup", 240), ("tbsp", 15), ("tsp", 5)])
def test_the_rounded_kitchen_table(unit: str, millilitres: float) -> None:
    """NIST Metric Kitchen."""
    assert volume(1, unit, ROUNDED) == Volume(pytest.approx(millilitres), ROUNDED)


def test_two_standards_are_never_added_up() -> None:
    one, other = volume(1, "cup", EXACT), volume(1, "cup", ROUNDED)

    assert one is not None
    assert other is not None
    assert (one + one).millilitres == pytest.approx(2 * 236.5882365)
    with pytest.raises(ValueError, match="not added up"):
        one + other


@pytest.mark.parametrize("unit", sorted(set(UNITS) - set(GRAMS) - set(METRIC_MILLILITRES) - set(CUPS) - set(PINTS)))
def test_what_only_counts_has_neither_weight_nor_volume(unit: str) -> None:
    assert grams(1, unit) is None
    assert volume(1, unit, EXACT) is None
    assert cups(1, unit, EXACT) is None


@pytest.mark.parametrize(("unit", "name"), [("pint", "imperial_pint"), ("quart", "imperial_quart")])
def test_outside_us_measures_a_pint_is_the_imperial_one_of_pint(unit: str, name: str) -> None:
    held = volume(3, unit, ROUNDED)
    assert held is not None
    assert held.millilitres == pytest.approx(REGISTRY.Quantity(3, name).to("ml").magnitude, rel=1e-6)


@pytest.mark.parametrize(
    ("food", "weight"),
    [("granulated sugar", 200), ("brown sugar", 220), ("all-purpose flour", 125), ("butter", 227), ("whole milk", 244),
     ("heavy cream", 238), ("plain whole yogurt", 245), ("honey", 339), ("olive oil", 216), ("long-grain rice", 185),
     ("cornstarch", 128), ("table salt", 292), ("cocoa", 86), ("oats", 81), ("chopped onions", 160), ("water", 237)],
)  # fmt: skip
def test_grams_of_a_cup(food: str, weight: float) -> None:
    """USDA National Nutrient Database for Standard Reference, household measures."""
    found = cup_weight(food)

    assert found is not None
    assert found.grams == weight
    assert found.source == "USDA SR"


def test_every_weight_says_where_it_is_from() -> None:
    assert all(weight.source for weight in (*CUP_WEIGHTS.values(), *PIECE_WEIGHTS.values()))
    assert len(CUP_WEIGHTS) >= 50


@pytest.mark.parametrize("food", ["dragon flour", "rye bread", "sugar snap peas", "salted caramel", "butternut squash"])
def test_a_food_that_is_not_known_is_not_guessed_at(food: str) -> None:
    assert cup_weight(food) is None
    assert piece_weight(food) is None


def test_an_egg_weighs_50_g() -> None:
    """USDA SR: a large egg, without its shell."""
    egg = piece_weight("eggs")

    assert egg is not None
    assert egg.grams == 50


def test_a_cup_and_a_half_of_sugar_is_300_g() -> None:
    """USDA SR, 200 g a cup; in either standard, since a table of weights weighs the cup itself."""
    for standard in (EXACT, ROUNDED):
        measure = measure_for("granulated sugar", {"cup", "g"}, standard)

        assert measure.amount(1.5, 1.5, "cup") == Amount("g", pytest.approx(300), pytest.approx(300))


def test_a_litre_of_milk_is_weighed_by_the_exact_cup() -> None:
    """USDA SR: 244 g in 236.588 ml, so 1031 g a litre; whole milk's density is about 1.03 (from memory)."""
    found = measure_for("whole milk", {"l", "kg"}, ROUNDED).amount(1, 1, "l")

    assert found.kind == "g"
    assert found.high == pytest.approx(1031.3, abs=0.1)
