"""An oven's rates from the turns of its dial."""

import math
import random

import pytest

from board.facts.heat import cooling_constant
from board.learning.ovens import DEFAULTS, Rate, Way, learn_ovens
from board.review.observe import OvenTurn
from tests.review.past import evening

HEATS: dict[tuple[str, Way], Rate] = {("oven", "heats"): Rate(14, 20, 180)}
COOLS: dict[tuple[str, Way], Rate] = {("oven", "cools"): Rate(22, 190, 110), ("oven", "cools ajar"): Rate(9, 190, 110)}


def test_one_turn_worked_by_hand() -> None:
    """From 20 to 100 °C in 8 min is 16 min to 180; 14 counts a quarter beside it: e^((ln 14 / 4 + ln 16) / 1.25)."""
    found = learn_ovens({("oven", "heats"): Rate(14, 20, 180)}, [evening(1, {}, [OvenTurn("oven", 20, 100, False, 8)])])

    assert found["oven", "heats"].middle == pytest.approx(math.exp((math.log(14) / 4 + math.log(16)) / 1.25))


def test_a_planted_heating_rate_is_found_within_five_per_cent() -> None:
    rng, minutes_a_degree = random.Random(3), 21 / 160  # the plan says 14
    nights = [
        evening(n, {}, [OvenTurn("oven", before, after, False, (after - before) * minutes_a_degree * rng.gauss(1, 0.05))
                        for before, after in ((20, 180), (150, 210), (80, 190), (20, 220))])
        for n in range(8)
    ]  # fmt: skip
    found = learn_ovens(HEATS, nights)["oven", "heats"]

    assert found.middle == pytest.approx(21, rel=0.05)
    assert found.evenings == 8


def test_a_planted_cooling_rate_is_found_within_five_per_cent() -> None:
    """Newton's law from a reading of 30 min from 190 to 110 °C, on other settings."""
    rng, constant = random.Random(4), cooling_constant(30, 190, 110)
    turns = [
        OvenTurn("oven", before, after, False, math.log((before - 20) / (after - 20)) / constant * rng.gauss(1, 0.05))
        for before, after in ((210, 150), (190, 95), (150, 90)) * 8
    ]
    found = learn_ovens(COOLS, [evening(1, {}, turns)])

    assert found["oven", "cools"].middle == pytest.approx(30, rel=0.05)
    assert ("oven", "cools ajar") not in found


def test_what_tells_nothing_is_left_out() -> None:
    turns = [
        OvenTurn("oven", 20, 180, False, 60, "forgotten"),
        OvenTurn("stranger", 20, 180, False, 20),
        OvenTurn("oven", 100, 15, False, 20),
    ]

    assert learn_ovens({**HEATS, **COOLS}, [evening(1, {}, turns)]) == {}


def test_an_oven_renamed_in_its_capitals_is_still_known() -> None:
    found = learn_ovens(
        {("Big  Oven", "heats"): Rate(14, 20, 180)}, [evening(1, {}, [OvenTurn("big oven", 20, 180, False, 14)])]
    )

    assert list(found) == [("Big  Oven", "heats")]


def test_an_oven_without_figures_of_its_own_begins_with_the_usual_ones() -> None:
    assert DEFAULTS["heats"] == Rate(15, 20, 175)
