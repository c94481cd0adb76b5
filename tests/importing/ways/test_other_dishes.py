"""A dish of its own make-up is not passed off as another; a likely one is told. Common practice, no source."""

import pytest

from board.importing.ways.ways import Setting, dish_lines, taken_for, ways_for
from tests.importing.ways.dish_names import DISHES


@pytest.mark.parametrize(
    "dish",
    ["chicken fesenjan", "prawn nigiri", "tres leches cake", "Grand Marnier soufflé", "miso soup", "margaritas"],
)  # fmt: skip
def test_a_dish_of_another_make_up_has_no_way_here(dish: str) -> None:
    assert ways_for(dish) == ()


@pytest.mark.parametrize("dish", ["Ottilie's hotpot", "Savoyard tart", "Zorkian beef stew", "chicken torshi"])
def test_a_word_that_may_make_it_another_dish_is_told(dish: str) -> None:
    (way, *_) = ways_for(dish)

    assert taken_for(dish, way) == way.name
    assert "look at it" in dish_lines(dish, way, Setting(7, 1, 4))[0]


@pytest.mark.parametrize("dish", ["leek soup", "roast leg of lamb", "smoked mackerel pâté", "glazed carrots", "olives"])
def test_a_plain_name_is_not(dish: str) -> None:
    assert taken_for(dish, ways_for(dish)[0]) is None


def test_few_ordinary_dishes_are_in_doubt() -> None:
    some = [dish for dish, _ in DISHES[::24]]

    assert sum(taken_for(dish, ways_for(dish)[0]) is not None for dish in some) <= len(some) / 10


def test_a_cake_that_holds_cream_or_milk_is_no_cake_for_the_room() -> None:
    for dish in ("cake with cream and berries", "custard cake", "cream sponge"):
        cake = "\n".join(dish_lines(dish, next(way for way in ways_for(dish) if way.name == "cake"), Setting(7, 1, 4)))
        assert "2 days in the room" not in cake
        assert "perishable: no" not in cake
