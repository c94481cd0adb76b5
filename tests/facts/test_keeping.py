"""The table of what keeps how long. Common practice, no source, unless a line names one."""

import pytest

from board.facts.keeping import PRACTICE, kind_of_dish, made_in


def name_of(step: str, dish: str = "", *, on_heat: bool = False) -> str | None:
    kind = made_in(step, dish, on_heat=on_heat)
    return kind.name if kind is not None else None


# British and American words for one thing.
ALIKE = {
    "cut vegetables": ("dice the aubergines", "dice the eggplants", "slice the courgettes", "slice the zucchini",
                       "top and tail the beans", "chop the spring onions", "chop the scallions"),
    "biscuits or cookies": ("bake the biscuits", "bake the cookies", "bake the shortbread"),
    "whipped cream": ("whip the double cream", "whip the heavy cream", "whisk the cream"),
    "pastry or biscuit dough": ("make the shortcrust pastry", "make the pie dough", "make the pie crust dough"),
    "leaves": ("wash the rocket", "wash the arugula", "wash and spin the lettuces"),
    "chopped herbs": ("chop the coriander", "chop the cilantro"),
    "steaks or chops": ("grill the steaks", "broil the steaks"),
    "mayonnaise": ("make the mayonnaise", "make the aioli"),
}  # fmt: skip


@pytest.mark.parametrize(("name", "step"), [(name, step) for name, steps in ALIKE.items() for step in steps])
def test_words_of_both_shores_name_one_kind(name: str, step: str) -> None:
    assert name_of(step) == name


def test_what_is_named_first_is_what_is_made() -> None:
    assert name_of("slice the bread for the soup") == "sliced bread"
    assert name_of("toss the pasta with the tomato sauce") == "pasta"
    assert name_of("whip the cream for the trifle") == "whipped cream"


def test_a_dish_is_what_its_name_ends_in() -> None:
    kinds = {dish: kind_of_dish(dish) for dish in ("Chicken pie with peas", "Squash soup", "Ice cream cake", "Zibble")}

    assert {dish: kind and kind.name for dish, kind in kinds.items()} == {
        "Chicken pie with peas": "lasagne, gratin or pie",
        "Squash soup": "soup or stock",
        "Ice cream cake": "a parfait or an ice cream cake",
        "Zibble": None,
    }


def test_nothing_raw_comes_off_the_heat() -> None:
    assert name_of("peel and boil the potatoes") == "peeled potatoes in water"
    assert name_of("peel and boil the potatoes", on_heat=True) == "roast or boiled potatoes"


def test_cooked_food_keeps_no_longer_than_the_chart_says() -> None:
    """FoodSafety.gov, cold food storage chart: soups and stews 3 to 4 days, hard-cooked eggs 1 week."""
    soup, stew = made_in("simmer the soup", "", on_heat=True), made_in("braise the beef", "", on_heat=True)
    eggs = made_in("hard-boil the eggs", "", on_heat=True)

    assert soup is not None
    assert stew is not None
    assert eggs is not None
    assert soup.fridge is not None
    assert soup.fridge <= 3 * 24 * 60
    assert stew.fridge is not None
    assert stew.fridge <= 3 * 24 * 60
    assert eggs.fridge is not None
    assert eggs.fridge <= 7 * 24 * 60
    assert all("FoodSafety.gov" in kind.source and PRACTICE in kind.source for kind in (soup, stew, eggs))
