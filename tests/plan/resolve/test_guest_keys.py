"""What a plan says of labels, foods of its own, and who is served a dish: read right, and refused with its place."""

import pytest
from pydantic import TypeAdapter

from board.plan.edit.edits import DropDish
from board.plan.edit.save import CannotEdit
from board.plan.load import PlanFile
from board.plan.phrases.quantities import Ingredient, IngredientLine
from board.plan.resolve.served import served
from tests.conftest import read

LINE: TypeAdapter[Ingredient] = TypeAdapter(IngredientLine)

SOUND = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: ['Ines, no tree nuts', 'Tomas, vegetarian', 3 others, host]
hands:
  host:
    hours: {on the day: '9:00 - 23:30'}
foods: {aunt's spice mix: mustard and celery, sour berries: nothing}
courses:
  - course: Main
    at: 19:15
    dishes:
      - dish: Beef shin
        for: 5
        ingredients:
          - 1 kg beef shin (butcher)
        steps: [{step: braise the beef, takes: 2 h}]
      - dish: Lentils
        for: 1
        only for: Tomas
        instead of: Beef shin
        ingredients:
          - 100 g lentils (store cupboard), may contain wheat
        steps: [{step: cook the lentils, takes: 30 min}]
      - dish: Nut bread
        not for: Ines
        ingredients: [1 loaf walnut bread]
        steps: [{step: slice the bread, takes: 5 min}]
"""


@pytest.mark.parametrize(
    ("text", "contains", "may", "free"),
    [
        ("100 g dark chocolate (baking), may contain tree nuts", (), ("tree nuts",), ()),
        ("100 g dark chocolate, may contain tree nuts (baking)", (), ("tree nuts",), ()),
        ("100 g dark chocolate, contains milk and soy", ("milk", "soy"), (), ()),
        ("100 g oats, free from gluten", (), (), ("gluten",)),
        ("100 g oats, Free From gluten and nuts, may contain traces of soy", (), ("soy",), ("gluten", "nuts")),
        ("1 pack mix (baking), contains milk, eggs, and soy", ("milk", "eggs", "soy"), (), ()),
        ("to taste salt, free from mustard", (), (), ("mustard",)),
    ],
)
def test_a_label_stands_after_the_food(
    text: str, contains: tuple[str, ...], may: tuple[str, ...], free: tuple[str, ...]
) -> None:
    found = LINE.validate_python(text)

    assert (found.contains, found.may_contain, found.free_from) == (contains, may, free)
    assert "," not in found.food
    assert found.section == ("baking" if "(baking)" in text else None)


def test_a_food_that_contains_no_label_is_read_as_before() -> None:
    found = LINE.validate_python("2 rye loaves, thinly sliced (bakery)")

    assert found == Ingredient(food="rye loaves, thinly sliced", low=2, high=2, section="bakery")


def test_the_long_form_has_the_same_words() -> None:
    found = LINE.validate_python({"food": "oats", "free from": ["gluten"]})

    assert found.free_from == ("gluten",)


def test_who_is_served_what() -> None:
    file = read(SOUND)
    assert isinstance(file, PlanFile)

    beef, lentils, bread = served(file.plan, file.plan.courses[0])

    assert beef == (0, 2, 3)
    assert lentils == (1,)
    assert bread == (1, 2, 3)
    assert file.plan.foods == {"aunt's spice mix": ["mustard", "celery"], "sour berries": []}


def test_names_may_stand_in_a_row_or_in_a_list() -> None:
    for names in ("Tomas and Ines", "Tomas, Ines", "[tomas, INES]", "Tomas, Ines, and host"):
        file = read(SOUND.replace("only for: Tomas", f"only for: {names}"))
        assert isinstance(file, PlanFile), names
        assert served(file.plan, file.plan.courses[0])[1][:2] == (0, 1)


def test_nothing_to_eat_is_said_and_not_the_same_as_silence() -> None:
    said = read(SOUND.replace("ingredients: [1 loaf walnut bread]", "ingredients: nothing"))
    assert isinstance(said, PlanFile)
    dish = said.plan.courses[0].dishes[2]

    assert dish.ingredients == []
    assert "ingredients" in dish.model_fields_set


# What is changed in SOUND: from, to; then line:column, code, words of the message or of how to mend it.
BAD = {
    "a guest mistyped": ("only for: Tomas", "only for: Tomsa", "21:19", "plan 8", "Did you mean 'Tomas'?"),
    "a guest mistyped in a list": ("only for: Tomas", "only for: [Tomas, Ina]", "21:27", "plan 8", "no guest is"),
    "a guest left out who is not there": ("not for: Ines", "not for: Inez", "27:18", "plan 8", "Did you mean 'Ines'?"),
    "a dish mistyped": ("of: Beef shin", "of: Beef chin", "22:21", "plan 8", "Did you mean 'Beef shin'?"),
    "a dish of no course": ("of: Beef shin", "of: Trifle", "22:21", "plan 8", "Name a dish of the same course"),
    "a dish instead of itself": ("of: Beef shin", "of: Lentils", "22:21", "plan 10", "instead of itself"),
    "instead of, but for whom": ("        only for: Tomas\n", "", "21:21", "plan 6", "needs `only for`"),
    "a ring of dishes": (
        "      - dish: Beef shin\n", "      - dish: Beef shin\n        only for: Ines\n        instead of: Lentils\n",
        "16:21", "plan 10", "stands instead of another dish itself",
    ),
    "only for nobody": ("only for: Tomas", "only for: []", "21:19", "plan 7", "needs at least one entry"),
    "a mistyped key": ("only for: Tomas", "olny for: Tomas", "21:9", "plan 5", "Did you mean 'only for'?"),
    "an allergen mistyped on a label": (
        "may contain wheat", "may contain whaet", "24:13", "plan 7", "Did you mean 'wheat'?",
    ),
    "a label that says nothing": ("may contain wheat", "may contain", "24:13", "plan 7", "does not say what"),
    "a label against itself": (
        "may contain wheat", "contains milk, free from dairy", "24:13", "plan 7", "either contains or free from",
    ),
    "an allergen mistyped in foods": (
        "mustard and celery", "mustart and celery", "9:27", "plan 7", "Did you mean 'mustard'?",
    ),
    "a food that says nothing": ("mustard and celery", "3", "9:27", "plan 7", "'3' is not"),
    "keys for a food": ("mustard and celery", "{a: b}", "9:27", "plan 7", "keys stand"),
    "ingredients in words": (": [1 loaf walnut bread]", ": bread", "28:22", "plan 7", "takes a list"),
}  # fmt: skip


@pytest.mark.parametrize("slip", BAD)
def test_each_slip_is_told_with_its_place(slip: str) -> None:
    old, new, where, code, words = BAD[slip]
    assert old in SOUND
    found = read(SOUND.replace(old, new, 1))

    assert isinstance(found, list)
    told = found[0].render()
    assert {snag.code for snag in found} == {code}, told
    assert told.startswith(f"supper.yaml:{where}: {code}: "), told
    assert words in told


def test_a_name_of_two_lines_of_guests_is_refused_where_a_dish_names_it() -> None:
    text = SOUND.replace("3 others, host", "others, 3 others").replace("not for: Ines", "not for: others")

    found = read(text)

    assert isinstance(found, list)
    assert [(snag.code, "2 lines of guests" in snag.message) for snag in found] == [("plan 9", True)]


def test_guests_that_cannot_be_read_do_not_make_their_names_wrong_too() -> None:
    found = read(SOUND.replace("'Tomas, vegetarian'", "'Tomas, vegitarian'"))

    assert isinstance(found, list)
    assert [snag.code for snag in found] == ["plan 7"]


def test_a_dish_that_another_stands_instead_of_is_not_left_out() -> None:
    """Else the guests it was made for would stand without a dish that can be named."""
    file = read(SOUND)
    assert isinstance(file, PlanFile)

    refused = DropDish("Main", "Beef shin").made(SOUND, file)
    done = DropDish("Main", "Lentils").made(SOUND, file)

    assert isinstance(refused, CannotEdit)
    assert "Lentils stands instead of" in refused.reason
    assert not isinstance(done, CannotEdit)
