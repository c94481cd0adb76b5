"""What a name gives beside its main thing is bought and served with it, or a dish of its own, or told. Common practice,
no source."""

import re

import pytest

from board.facts.phrases import NEUTRAL, holds, stems
from board.importing.starter.menu import read_menu
from board.importing.ways.finding import beside
from board.importing.ways.ways import Setting, apart, dish_lines, left_out, served_with, ways_for
from tests.examples import first
from tests.importing.starter.test_menu_plans import MENUS, NOON
from tests.importing.ways.dish_names import DISHES

AT = Setting(7, 1, 4)


def written(dish: str) -> list[str]:
    return dish_lines(dish, ways_for(dish)[0], AT)


@pytest.mark.parametrize(
    ("dish", "bought"),
    [
        ("venison burgers in brioche buns", "brioche buns"),
        ("duck liver parfait with sourdough toast", "sourdough toast"),
        ("chocolate mousse with shortbread", "shortbread"),
        ("raspberries and cream", "cream"),
        ("Tea with dates", "dates"),
        ("radishes and butter", "butter"),
        ("baked ricotta with quince paste", "quince paste"),
        ("mackerel with croutons & rémoulade", "rémoulade"),
    ],
)
def test_what_is_bought_beside_it_is_in_the_ingredients_and_in_the_step_that_serves_it(dish: str, bought: str) -> None:
    lines = written(dish) if ways_for(dish) else written(f"baked {dish}")
    line = next(line for line in lines if line.startswith("    - ") and bought in line and "step:" not in line)
    last = "\n".join(lines[max(n for n, line in enumerate(lines) if "- step: " in line) :])

    assert "# bought: from the name" in line
    assert f"with {bought}" in last or f", {bought}" in last or f"and {bought}" in last
    assert f"to taste {bought}" in line or bought in last.partition("uses: [")[2]
    assert bought in served_with(dish, ways_for(dish)[0])


def test_the_crackling_of_a_roast_is_part_of_it() -> None:
    assert not [
        line for line in written("roast pork belly with crackling") if re.search(r"- [\w ]*crackling", line[4:])
    ]
    assert [line for line in written("pork belly with apple sauce") if "apple sauce" in line]


def test_a_jar_in_the_name_of_the_thing_itself_is_bought_and_asked_about() -> None:
    assert any("miso" in line and "say at which step" in line for line in written("baked miso hake"))


def test_what_is_set_out_beside_a_drink_is_a_dish_of_its_own() -> None:
    assert apart("Coffee and petits fours") == ("Coffee", "petits fours")
    assert apart("gin and tonic") == ("gin and tonic",)


def test_an_egg_and_a_warm_sauce_are_dishes_of_their_own() -> None:
    assert apart("leeks with poached eggs and hollandaise") == ("leeks", "poached eggs", "hollandaise")
    assert any("cooks: eggs" in line for line in written("poached eggs"))


@pytest.mark.parametrize("dish", ["tomato soup with zork", "roast lamb with torshi and love"])
def test_what_nobody_knows_is_told(dish: str) -> None:
    assert left_out(dish, ways_for(dish)[0])


def joined() -> list[str]:
    """The dishes of the menus and of `dish_names` that name more than one thing."""
    texts = [path.read_text(encoding="utf-8") for path in sorted(MENUS.glob("*.txt"))]
    named = [dish for text in texts for course in read_menu(text, NOON.date()).courses for dish in course.dishes]
    found = dict.fromkeys([*named, *(dish for dish, _ in DISHES)])
    return [dish for dish in found if re.search(r" (?:with|and|&|in|on) |,", dish)]


@pytest.mark.parametrize("dish", first(12, joined()))
def test_no_word_of_a_dish_is_lost(dish: str) -> None:
    """Each piece beside the thing itself is in the plan's lines below the dish's name, or told as left out."""
    for each in apart(dish):
        if not (ways := ways_for(each)):
            continue  # bare: told as a whole
        plan = stems(" . ".join(dish_lines(each, ways[0], AT)[1:]))
        told = left_out(each, ways[0])
        for piece in beside(each):
            words = [word for word in stems(piece) if word not in NEUTRAL]
            wanted = words[:-1] if words[-1] == "sauce" else words[-1:]  # a sauce is made of its food
            assert piece in told or all(holds(plan, (word,)) for word in wanted), (piece, told)


@pytest.mark.parametrize(
    ("dish", "main"),
    [
        ("chocolate cake with orange", "dark chocolate"),
        ("steak with anchovies", "beef steaks"),
        ("moussaka with feta", "minced lamb"),
    ],
)
def test_what_a_dish_is_known_to_be_made_of_stays_in_it_whatever_stands_beside(dish: str, main: str) -> None:
    assert any(main in line for line in written(dish) if line.startswith("    - "))
