"""How ovens heat and cool: linear up, Newton's law down."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.facts.heat import (
    COOLS_FROM,
    COOLS_MINUTES,
    COOLS_TO,
    HEATS_MINUTES,
    HEATS_TO,
    ROOM_CELSIUS,
    OvenRates,
    cooling_constant,
    default_rates,
    heating_rate,
    minutes_between,
)

celsius = st.floats(-20, 500)
rates = st.builds(OvenRates, heating=st.floats(0.5, 60), cooling=st.floats(0.001, 0.5))


def test_heating_is_linear_in_time() -> None:
    ten_a_minute = OvenRates(heating=10, cooling=0.03)

    assert minutes_between(ten_a_minute, 20, 120) == 10
    assert minutes_between(ten_a_minute, 20, 220) == 20
    assert minutes_between(ten_a_minute, 180, 180) == 0


def test_a_cooling_constant_follows_from_two_readings() -> None:
    """Newton's law of cooling: 86 → 65 °C in 15 min at 21 °C: ln(65 / 44) / 15 = 0.02601 a minute."""
    assert cooling_constant(15, 86, 65, room=21) == pytest.approx(0.02601, abs=5e-6)


@given(rates, st.floats(40, 400), st.floats(0.5, 200))
def test_minutes_between_is_the_inverse_of_newtons_law(oven: OvenRates, start: float, minutes: float) -> None:
    """T = Ta + (T0 − Ta)·e^(−kt), written out anew."""
    end = ROOM_CELSIUS + (start - ROOM_CELSIUS) * math.exp(-oven.cooling * minutes)

    if end - ROOM_CELSIUS > 1e-6:  # nearer to the room's warmth, floats no longer tell the two apart
        assert minutes_between(oven, start, end) == pytest.approx(minutes, rel=1e-3)


@given(rates, celsius, st.floats(0.1, 300))
def test_minutes_between_is_the_inverse_of_linear_heating(oven: OvenRates, start: float, minutes: float) -> None:
    assert minutes_between(oven, start, start + oven.heating * minutes) == pytest.approx(minutes, rel=1e-9)


@given(st.floats(1, 300), st.floats(60, 400), st.floats(21, 59))
def test_the_constant_of_two_readings_gives_their_time_back(minutes: float, start: float, end: float) -> None:
    oven = OvenRates(heating=10, cooling=cooling_constant(minutes, start, end))

    assert minutes_between(oven, start, end) == pytest.approx(minutes)


@given(rates, celsius, celsius)
def test_no_change_takes_less_than_no_time(oven: OvenRates, start: float, end: float) -> None:
    assert minutes_between(oven, start, end) >= 0


@given(rates, st.floats(60, 400), st.floats(30, 59), st.floats(21, 29))
def test_going_down_in_two_steps_takes_as_long_as_in_one(
    oven: OvenRates, top: float, middle: float, low: float
) -> None:
    in_two = minutes_between(oven, top, middle) + minutes_between(oven, middle, low)

    assert minutes_between(oven, top, low) == pytest.approx(in_two)


def test_an_oven_never_cools_below_the_warmth_of_the_room() -> None:
    assert minutes_between(default_rates(), 200, ROOM_CELSIUS) == math.inf
    assert minutes_between(default_rates(), 200, 4) == math.inf


@pytest.mark.parametrize(("minutes", "start", "end"), [(0, 20, 180), (-5, 20, 180), (15, 180, 180), (15, 180, 20)])
def test_heating_that_does_not_rise_is_refused(minutes: float, start: float, end: float) -> None:
    with pytest.raises(ValueError, match="must rise"):
        heating_rate(minutes, start, end)


@pytest.mark.parametrize(
    ("minutes", "start", "end"),
    [(0, 200, 120), (-5, 200, 120), (25, 120, 200), (25, 120, 120), (25, 200, 20), (25, 200, 4)],
)
def test_cooling_that_does_not_fall_or_falls_too_far_is_refused(minutes: float, start: float, end: float) -> None:
    with pytest.raises(ValueError, match="stay above the room's 20 C"):
        cooling_constant(minutes, start, end)


def test_the_usual_figures_come_back_out_of_the_usual_rates() -> None:
    """About 15 min to 350 °F, and 25 min from 200 to 120 °C: common practice, no source."""
    usual = default_rates()

    assert minutes_between(usual, ROOM_CELSIUS, HEATS_TO) == pytest.approx(HEATS_MINUTES)
    assert minutes_between(usual, COOLS_FROM, COOLS_TO) == pytest.approx(COOLS_MINUTES)
    assert round((350 - 32) * 5 / 9) == 177  # 350 °F, by its definition (NIST SP 811); 175 is the usual dial mark
