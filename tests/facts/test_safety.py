"""When a core is warm, or cold, enough."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.facts.degrees import to_celsius
from board.facts.rule_sets import RULE_SET_NAMES, rule_set
from board.facts.safety import HOT_HOLDING_CELSIUS, lacking

PAIRS = sorted({limit.figures for name in RULE_SET_NAMES for limit in rule_set(name).every_limit()})


@pytest.mark.parametrize(("celsius_wanted", "fahrenheit"), [(63.0, 145), (68.0, 155), (74.0, 165), (57.0, 135)])
def test_the_pairs_a_code_writes_as_the_same_count_as_the_same(celsius_wanted: float, fahrenheit: int) -> None:
    """FDA Food Code 3-401.11(A): 145 °F/63 °C, 155 °F/68 °C, 165 °F/74 °C; 3-501.16: 135 °F/57 °C."""
    assert lacking(to_celsius(fahrenheit, "F"), celsius_wanted) == 0
    assert lacking(to_celsius(fahrenheit - 1, "F"), celsius_wanted) > 0


def test_a_reading_is_weighed_before_it_is_rounded() -> None:
    assert lacking(73.85, 74) == pytest.approx(0.15)  # 73.9 when rounded, 164.9 °F
    assert lacking(69.99, 70) == pytest.approx(0.01)
    assert lacking(70, 70) == 0


def test_what_cools_lacks_what_it_is_too_warm_by() -> None:
    """41 °F/5 °C: FDA Food Code 3-501.16."""
    assert lacking(9, 5, cooling=True) == 4
    assert lacking(to_celsius(41, "F"), 5, cooling=True) == 0
    assert lacking(3, 5, cooling=True) == 0


@pytest.mark.parametrize("pair", PAIRS)
def test_whichever_figure_of_a_limit_is_wanted_the_other_is_enough(pair: tuple[float, float]) -> None:
    for wanted in pair:
        for read in pair:
            assert lacking(read, wanted) == 0
            assert lacking(read, wanted, cooling=True) == 0


@pytest.mark.parametrize("pair", PAIRS)
def test_below_both_figures_it_lacks_and_above_both_it_is_too_warm(pair: tuple[float, float]) -> None:
    for wanted in pair:
        assert lacking(min(pair) - 0.6, wanted) > 0  # the table of roasts writes 155 °F as 68.3 °C, others as 68
        assert lacking(max(pair) + 0.6, wanted, cooling=True) > 0


@given(st.sampled_from([figure for pair in PAIRS for figure in pair]) | st.floats(-20, 120), st.floats(-20, 120))
def test_what_is_lacking_is_never_negative_and_never_grows_with_warmth(wanted: float, read: float) -> None:
    assert 0 <= lacking(read + 1, wanted) <= lacking(read, wanted)
    assert lacking(read + 1, wanted, cooling=True) >= lacking(read, wanted, cooling=True) >= 0


def test_hot_food_is_kept_at_60_celsius_at_home() -> None:
    """140 °F: USDA FSIS, keeping food hot."""
    assert to_celsius(140, "F") == HOT_HOLDING_CELSIUS == 60
