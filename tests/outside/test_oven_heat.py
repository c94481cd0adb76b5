"""Ovens that heat and cool, against closed forms, against a worked example, and against small steps in time.

Newton's law of cooling, T = Ta + (T0 − Ta)·e^(−kt): with 86 °C falling to 65 °C in 15 min in a room at 21 °C,
k = ln(65/44)/15 = 0.02601 a minute (a worked example of that law, recomputed).
Euler's method, as in any textbook of numerical analysis: T(t + h) = T(t) − k·(T(t) − Ta)·h; its error shrinks
with h.
"""

import math
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from board.facts.heat import (
    ROOM_CELSIUS,
    OvenRates,
    celsius_after,
    cooling_constant,
    default_rates,
    minutes_between,
    minutes_to_reheat,
)
from board.plan.model.kitchen import Oven
from board.schedule.audit.validate_heat import heat_of
from tests.examples import times

K_OF_THE_EXAMPLE = 0.02601

ovens = st.builds(
    OvenRates,
    heating=st.floats(2, 30),
    cooling=st.floats(0.003, 0.08),
    ajar=st.none() | st.floats(0.003, 0.15),
)


def euler(start: float, minutes: float, k: float, room: float, seconds: float = 3.0) -> float:
    """Cooling in small steps: in each the oven loses its share of what it is warmer than the room."""
    celsius, steps = start, round(minutes * 60 / seconds)
    for _ in range(steps):
        celsius -= k * (celsius - room) * seconds / 60
    return celsius


def test_the_worked_example_gives_its_constant() -> None:
    assert cooling_constant(15, 86, 65, room=21) == pytest.approx(K_OF_THE_EXAMPLE, abs=5e-6)


def test_the_worked_example_falls_to_its_second_reading_and_on() -> None:
    """As k is known from it: after 15 min 65 °C, after as long again 21 + 44·(44/65) = 50.78 °C."""
    rates = OvenRates(heating=10, cooling=K_OF_THE_EXAMPLE)

    assert celsius_after(rates, 86, 15, room=21) == pytest.approx(65, abs=0.01)
    assert celsius_after(rates, 86, 30, room=21) == pytest.approx(50.78, abs=0.01)
    assert celsius_after(rates, 86, 0, room=21) == 86


def test_a_rest_of_forty_minutes_at_the_usual_rate() -> None:
    """From 110 °C, at 25 min from 200 to 120 °C: k = ln(180/100)/25; 20 + 90·(100/180)^(40/25) = 55.14 °C.

    The rate and the room's 20 °C are common practice, no source.
    """
    assert celsius_after(default_rates(), 110, 40) == pytest.approx(20 + 90 * (100 / 180) ** 1.6, abs=1e-3)
    assert celsius_after(default_rates(), 110, 40) == pytest.approx(55.14, abs=0.005)


def test_with_the_door_ajar_its_own_constant_counts_and_where_none_is_known_the_other() -> None:
    known = OvenRates(heating=10, cooling=0.02, ajar=0.07)
    unknown = OvenRates(heating=10, cooling=0.02)

    assert celsius_after(known, 120, 10, ajar=True) == pytest.approx(20 + 100 * math.exp(-0.7))
    assert celsius_after(known, 120, 10) == pytest.approx(20 + 100 * math.exp(-0.2))
    assert celsius_after(unknown, 120, 10, ajar=True) == celsius_after(unknown, 120, 10)


@settings(deadline=None, max_examples=times(60))
@given(ovens, st.floats(40, 280), st.integers(0, 150), st.booleans())
def test_cooling_in_small_steps_comes_to_the_same(rates: OvenRates, start: float, minutes: int, ajar: bool) -> None:
    k = rates.ajar if ajar and rates.ajar is not None else rates.cooling

    assert celsius_after(rates, start, minutes, ajar=ajar) == pytest.approx(
        euler(start, minutes, k, ROOM_CELSIUS), abs=0.5
    )


def test_smaller_steps_come_nearer() -> None:
    """Halving Euler's step halves its error, for it is of the first order."""
    exact = celsius_after(default_rates(), 220, 40)
    off = [abs(euler(220, 40, default_rates().cooling, ROOM_CELSIUS, seconds) - exact) for seconds in (8, 4, 2, 1)]

    assert [before / after for before, after in pairwise(off)] == pytest.approx([2] * 3, rel=0.01)


@given(ovens, st.floats(40, 280), st.floats(0, 100), st.floats(0, 100))
def test_cooling_on_from_where_it_stands_is_cooling_through(
    rates: OvenRates, start: float, first: float, then: float
) -> None:
    on = celsius_after(rates, celsius_after(rates, start, first), then)

    assert on == pytest.approx(celsius_after(rates, start, first + then))


@settings(deadline=None, max_examples=times(60))
@given(ovens, st.floats(30, 280), st.integers(0, 200), st.floats(60, 260))
def test_it_is_switched_on_again_at_the_last_minute_that_does(
    rates: OvenRates, left: float, gap: int, want: float
) -> None:
    """Played out in steps: it cools, is switched on, and reaches the heat in time; a minute later it does not."""
    minutes = minutes_to_reheat(rates, left, gap, want)

    if minutes > gap:
        assert all(not _stands_at_the_heat(rates, left, gap, on, want, slack=-0.6) for on in (0, gap // 2, gap))
    else:
        assert _stands_at_the_heat(rates, left, gap, minutes, want, slack=0.6)
        if minutes > 0:
            assert not _stands_at_the_heat(rates, left, gap, minutes - 1, want, slack=-0.6)


def _stands_at_the_heat(rates: OvenRates, left: float, gap: int, on: int, want: float, slack: float) -> bool:
    """Whether an oven off for `gap - on` minutes, and on for `on`, comes to within `slack` °C of what is wanted."""
    k = max(rates.cooling, rates.ajar or 0.0)
    celsius = euler(left, gap - on, rates.cooling, ROOM_CELSIUS)
    if celsius <= want:
        return celsius + rates.heating * on >= want - slack
    return euler(celsius, on, k, ROOM_CELSIUS) <= want + slack


def test_reheating_by_hand() -> None:
    """From 41.28 °C to 180 °C, 155 °C in 15 min: 138.72/(155/15) = 13.42, so 14 min when it is switched on at once.

    An hour later it has fallen to 20 + 21.28·e^(−60k) = 25.2 °C, and needs 14.98, so 15 min.
    """
    rates = default_rates()

    assert minutes_to_reheat(rates, 41.28, 14, 180) == 14
    assert minutes_to_reheat(rates, 41.28, 75, 180) == 15
    assert minutes_to_reheat(rates, 41.28, 13, 180) > 13
    assert minutes_to_reheat(rates, 180, 0, 180) == 0


def test_a_hotter_oven_than_wanted_cools_on_by_itself() -> None:
    """200 °C to 80 °C with k = ln(180/100)/25: ln(180/60)/k = 46.73 min; with that gap and more nothing is heated."""
    rates = default_rates()

    assert minutes_to_reheat(rates, 200, 46, 80) > 46
    assert minutes_to_reheat(rates, 200, 47, 80) <= 1
    assert minutes_between(rates, 200, 80) == pytest.approx(46.73, abs=0.005)


figures = st.fixed_dictionaries(
    {},
    optional={
        "heats": st.integers(5, 40).map(lambda minutes: f"{minutes} min to 180 C"),
        "cools": st.integers(5, 90).map(lambda minutes: f"{minutes} min from 200 to 120 C"),
        "cools ajar": st.integers(3, 60).map(lambda minutes: f"{minutes} min from 180 to 90 C"),
    },
)


@given(figures, st.floats(30, 280), st.floats(0, 200), st.floats(21, 260), st.booleans())
def test_the_validators_own_formulae_come_to_the_same(
    said: dict[str, str], start: float, minutes: float, want: float, ajar: bool
) -> None:
    """Written twice, apart, and checked here by closed forms of the figures as a host writes them."""

    def number(key: str, usual: int) -> int:
        return int(said[key].split()[0]) if key in said else usual

    gains = 160 / number("heats", 1) if "heats" in said else 155 / 15
    shut = math.log(180 / 100) / number("cools", 25)
    wide = math.log(160 / 70) / number("cools ajar", 1) if "cools ajar" in said else None
    ours, rates = heat_of(Oven.model_validate(said)), OvenRates(gains, shut, wide)

    assert ours.left(start, minutes, ajar=ajar) == pytest.approx(celsius_after(rates, start, minutes, ajar=ajar))
    assert ours.minutes(start, want) == pytest.approx(minutes_between(rates, start, want))
