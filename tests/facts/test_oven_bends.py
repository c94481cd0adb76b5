"""Which dishes bear another heat, and for how long. Common practice, no source; minutes by Newton's law of cooling."""

import math

import pytest

from board.facts.oven_bends import bears_another_heat, minutes_at
from board.schedule.conflicts.words import way_bend

BEAR = (
    "Beef braise", "Lamb shank casserole", "Potato gratin", "Roast roots", "roast the chicken", "Roasties",
    "Vegetable lasagne", "Moussaka", "Pot roast", "Roasted squash", "Sweet potato wedges", "Lamb tagine",
    "Roast eggplant", "braise the short ribs", "Parsnips in honey",
)  # fmt: skip
BEAR_NOT = (
    "Pavlova", "Lemon meringue", "Baked custard", "Crème caramel", "Cheese soufflé", "Sponge cake", "Cupcakes",
    "Apple pie", "Potato pie", "Beef Wellington", "Carrot cake", "Sweet potato pie", "Parsnip cake", "Squash tart",
    "Soda bread", "Dinner rolls", "Potato bread", "Shortbread", "Chocolate chip cookies", "Scones", "Quiche",
    "Yorkshire puddings", "Roast potato focaccia", "Vegetable strudel", "Warm plates", "Salmon en croute", "Trout",
    "Beetroot brownies", "Pumpkin pie",
)  # fmt: skip


@pytest.mark.parametrize("dish", BEAR)
def test_what_braises_or_roasts_bears_another_heat(dish: str) -> None:
    assert bears_another_heat(dish, "put it in the oven")


@pytest.mark.parametrize("dish", BEAR_NOT)
def test_what_rises_sets_or_is_unknown_does_not(dish: str) -> None:
    assert not bears_another_heat(dish, "put it in the oven")


def test_minutes_go_by_how_much_hotter_the_oven_is_than_the_room() -> None:
    assert minutes_at(45, 170, 160) == 49  # 45 × 150 / 140 = 48.2
    assert minutes_at(60, 180, 200) == 54  # 60 × 160 / 180 = 53.3
    assert minutes_at(40, 180, 180) == 40


@pytest.mark.parametrize(("written", "core", "more"), [(180, 75, 1.03), (180, 95, 1.06), (140, 95, 1.16)])
def test_a_middle_near_the_ovens_heat_takes_a_little_more_than_that(written: int, core: int, more: float) -> None:
    """Against a body warmed all through at once, out of a fridge at 5 °C (lumped capacitance; Incropera and DeWitt,
    Fundamentals of Heat and Mass Transfer, chapter 5, from memory)."""

    def minutes(oven: int) -> float:
        return math.log((oven - 5) / (oven - core))

    told = minutes_at(1000, written, written - 20) / 1000
    truly = minutes(written - 20) / minutes(written)

    assert truly / told == pytest.approx(more, abs=0.01)
    assert "5 min longer or a little more" in way_bend("roast", written, written - 20, "Gratin", 5, in_fahrenheit=False)
