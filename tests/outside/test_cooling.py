"""Cooling of a dish against Newton's law worked by hand, and against what is published of depth.

Newton: T = Ta + (T0 − Ta)·e^(−kt). Worked: 86 → 65 °C in 15 min at 21 °C gives k = ln(65/44)/15 = 0.02601 a minute.
Dickerson & Read, "Cooling rates of foods", 1973 (abstract read): doubling the shortest dimension of what is cooled by
conduction makes cooling four times as long; most plastics are of little weight.
"""

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from board.facts.cooling import COOLING_PLACES, USUAL_CELSIUS, VESSELS, CoolingPlace, Estimate, Vessel, estimate, fitted
from board.sheet import said

vessels, places = st.sampled_from(VESSELS), st.sampled_from(COOLING_PLACES)
depths = st.floats(1, 30)


def test_two_readings_give_the_constant_of_the_worked_example() -> None:
    found = fitted([(0, 86), (15, 65)], 21)

    assert found is not None
    assert found.constant_per_minute == pytest.approx(0.02601, abs=5e-6)
    assert found.minutes_to(86, 65) == pytest.approx(15)
    assert found.celsius_after(86, 30) == pytest.approx(21 + 44 * 44 / 65)  # 50.78 °C after as long again


def test_readings_may_begin_at_any_moment_and_come_in_any_order() -> None:
    begun = fitted([(0, 86), (15, 65)], 21)
    later = fitted([(115, 65), (100, 86)], 21)

    assert begun is not None
    assert later is not None
    assert later.constant_per_minute == pytest.approx(begun.constant_per_minute)


@given(st.floats(0.002, 0.1), st.floats(30, 90), st.lists(st.integers(0, 60), min_size=2, max_size=6, unique=True))
def test_readings_along_newtons_law_give_its_constant_back(k: float, above: float, moments: list[int]) -> None:
    readings = [(minute, 4 + above * math.exp(-k * minute)) for minute in moments]

    found = fitted(readings, 4)

    assert found is not None
    assert found.constant_per_minute == pytest.approx(k, rel=1e-6)


def test_three_readings_that_do_not_agree_are_fitted_by_least_squares() -> None:
    """ln(T − Ta) = 4, 3.5, 2.6 at 0, 10, 20 min: slope (2.6 − 4)/20 = −0.07, the middle one weighing nothing."""
    found = fitted([(0, math.exp(4)), (10, math.exp(3.5)), (20, math.exp(2.6))], 0)

    assert found is not None
    assert found.constant_per_minute == pytest.approx(0.07)


@pytest.mark.parametrize(
    "readings",
    [
        [],
        [(0, 60)],
        [(5, 60), (5, 50)],  # one moment
        [(0, 60), (10, 60)],
        [(0, 50), (10, 60)],
        [(0, 60), (10, 4)],  # as cold as where it stands: no law tells how long ago
        [(0, 60), (10, 2)],
        [(0, 3), (10, 2)],
        [(0, math.nan), (10, 20)],
        [(0, math.inf), (10, 20)],
    ],
)
def test_readings_that_do_not_fall_towards_their_surroundings_tell_nothing(readings: list[tuple[float, float]]) -> None:
    assert fitted(readings, 4) is None


@given(depths, vessels, places, st.floats(45, 95), st.floats(17, 40))
def test_twice_as_deep_takes_four_times_as_long(
    depth: float, vessel: Vessel, place: CoolingPlace, start: float, end: float
) -> None:
    """Dickerson & Read 1973."""
    once, twice = estimate(depth, vessel, place, 4), estimate(2 * depth, vessel, place, 4)

    assert twice.minutes_to(start, end) == pytest.approx(4 * once.minutes_to(start, end))


def test_stew_five_centimetres_deep_in_metal_in_the_fridge_takes_two_hours() -> None:
    """Common practice, no source."""
    assert estimate(5, "metal", "fridge", 4).minutes_to(57, 21) == pytest.approx(120, abs=10)


def test_a_deep_pot_of_stew_cools_all_night() -> None:
    """Dickerson & Read 1973: a 14-gallon container of beef stew took 84 h from 115 to 50 °F.

    Its shape is not in the abstract; a cube of 53 litres is 38 cm deep. The estimate must not promise less.
    """
    stew = estimate(38, "metal", "fridge", 4)

    assert stew.minutes_to((115 - 32) / 1.8, (50 - 32) / 1.8) > 84 * 60


@pytest.mark.parametrize("vessel", VESSELS)
def test_ice_cools_faster_than_water_and_water_than_air(vessel: Vessel) -> None:
    """Common practice, no source."""
    minutes = {place: estimate(8, vessel, place).minutes_to(57, 21) for place in COOLING_PLACES}

    assert minutes["ice bath"] < minutes["cold water"] < minutes["fridge"] < minutes["room"]


@given(depths, vessels, places, st.floats(30, 95), st.floats(0, 600))
def test_minutes_and_degrees_are_each_others_inverse(
    depth: float, vessel: Vessel, place: CoolingPlace, start: float, minutes: float
) -> None:
    found = estimate(depth, vessel, place)
    left = found.celsius_after(start, minutes)

    assume(left - found.ambient_celsius > 1e-6)  # nearer to it, floats no longer tell the two apart
    assert found.minutes_to(start, left) == pytest.approx(minutes, rel=1e-3, abs=1e-6)
    assert found.ambient_celsius < left <= start


@given(depths, vessels, places, st.floats(30, 95), st.floats(0, 300), st.floats(0, 300))
def test_cooling_on_from_where_it_stands_is_cooling_through(
    depth: float, vessel: Vessel, place: CoolingPlace, start: float, first: float, then: float
) -> None:
    found = estimate(depth, vessel, place)

    assert found.celsius_after(found.celsius_after(start, first), then) == pytest.approx(
        found.celsius_after(start, first + then)
    )


def test_nothing_gets_colder_than_where_it_stands() -> None:
    room = estimate(5, "metal", "room")

    assert room.minutes_to(57, 21) < math.inf
    assert room.minutes_to(57, 20) == math.inf
    assert room.minutes_to(57, 5) == math.inf
    assert room.minutes_to(20, 57) == 0


def test_an_estimate_says_what_it_takes_for_granted_and_that_its_figures_have_no_source() -> None:
    deep, shallow = estimate(8, "glass", "fridge"), estimate(2, "glass", "fridge")

    told = [said.cooling(each) for each in deep.assumptions]
    assert "8 cm deep" in told[0]
    assert "glass" in told[0]
    assert "fridge at 4 °C" in told[0]
    assert any("common practice, no source" in each for each in told)
    assert any("Dickerson & Read 1973" in each for each in told)
    assert any("may well take longer" in said.cooling(each) for each in shallow.assumptions)
    assert not any("may well take longer" in each for each in told)


@pytest.mark.parametrize("place", COOLING_PLACES)
def test_where_nobody_measured_it_is_as_warm_as_usual(place: CoolingPlace) -> None:
    assert estimate(5, "metal", place).ambient_celsius == USUAL_CELSIUS[place]
    assert estimate(5, "metal", place, 9.5).ambient_celsius == 9.5


@pytest.mark.parametrize("depth", [0, -2, math.inf, math.nan])
def test_a_depth_that_is_none_is_refused(depth: float) -> None:
    with pytest.raises(ValueError, match="deeper"):
        estimate(depth, "metal", "fridge")


def test_probe_readings_go_before_an_estimate() -> None:
    """Two readings make an estimate of their own, which says so."""
    found = fitted([(0, 70), (20, 52)], 4)

    assert isinstance(found, Estimate)
    assert any("probe" in said.cooling(each) for each in found.assumptions)
