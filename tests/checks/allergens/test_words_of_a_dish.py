"""A dish's name and its steps against guests: a food named there and not among the ingredients is asked about."""

import pytest

from board.checks.allergens.guests_eat import Answer, matrix
from board.checks.allergens.words_of_a_dish import _is_understood
from board.plan.load import PlanFile
from tests.conftest import read
from tests.importing.ways.dish_names import DISHES

PLAN = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: ['Ines, GUEST', host]
hands: {host: {hours: {on the day: '9:00 - 23:30'}}}
courses:
  - course: Main
    at: 19:15
    dishes:
      - dish: DISH
        ingredients: [LINE]
        steps:
          - {step: STEP, takes: 30 min}
      - dish: Almond tart
        not for: Ines
        ingredients: [100 g almonds]
        steps:
          - {step: bake the tart, takes: 30 min}
"""


def answer(guest: str, dish: str, line: str, step: str) -> Answer:
    words = PLAN.replace("GUEST", guest).replace("DISH", dish).replace("LINE", repr(line)).replace("STEP", step)
    found = read(words)
    assert isinstance(found, PlanFile), found
    return matrix(found).answers[0, 0]


@pytest.mark.parametrize(
    ("guest", "dish", "line", "step"),
    [
        ("no peanuts", "Chicken satay", "8 chicken thighs", "grill the skewers"),
        ("no peanuts", "Rice", "500 g rice", "stir in the peanut butter"),
        ("no milk", "Beans", "500 g beans", "butter the dish well"),
        ("coeliac", "Salmon en croute", "1 side salmon", "bake it"),
        ("vegetarian", "Beans", "500 g beans", "fry the bacon"),
        ("no coriander", "Rice", "500 g rice", "scatter with cilantro"),
    ],
)
def test_a_food_named_beside_the_ingredients_is_asked_about(guest: str, dish: str, line: str, step: str) -> None:
    found = answer(guest, dish, line, step)

    assert found.verdict.name in ("ASK", "NOT_SAFE")
    assert any("its name or its steps name" in reason.why for reason in found.reasons)


@pytest.mark.parametrize(
    ("guest", "dish", "line", "step"),
    [
        ("no milk", "Toast", "100 g vegan butter, free from milk", "butter the pan"),
        ("vegan", "Mushroom steaks", "6 mushrooms", "sear the steaks"),
        ("no milk", "Vegan cheese sauce", "500 ml oat drink", "simmer it"),
        ("no fish", "Beans", "500 g beans", "turn with a fish slice"),
        ("no tree nuts", "Beans", "500 g beans", "bake beside the almond tart"),
        ("coeliac", "Polenta cake", "500 g polenta", "bake the cake"),
        ("coeliac", "Flatbreads", "500 g gluten-free flour, free from gluten", "knead the dough"),
        ("no peanuts", "Chicken satay", "200 ml satay sauce, free from peanuts", "grill the skewers"),
    ],
)
def test_what_the_ingredients_account_for_is_not_asked_about(guest: str, dish: str, line: str, step: str) -> None:
    assert answer(guest, dish, line, step).verdict.name == "SAFE"


@pytest.mark.parametrize(
    ("guest", "dish", "line", "named"),
    [
        ("no tree nuts", "Macarons", "100 g icing sugar", "almonds"),
        ("no tree nuts", "Bakewell tart", "200 g plain flour", "almonds"),
        ("no tree nuts", "Plum frangipane tart", "200 g plain flour", "almonds"),
        ("no tree nuts", "Battenberg cake", "200 g plain flour", "almonds"),
        ("no tree nuts", "Linzer torte", "200 g plain flour", "hazelnuts"),
        ("no tree nuts", "Simnel cake", "200 g plain flour", "often holds tree nuts"),
        ("no nuts", "Chicken korma", "8 chicken thighs", "often holds almonds, cashews and pistachios"),
        ("no sesame", "Chicken mole", "8 chicken thighs", "often holds sesame"),
        ("no sesame", "Hummus", "500 g chickpeas, may contain sesame", "holds sesame"),
        ("coeliac", "Lemon posset with shortbread", "500 ml double cream", "holds gluten"),
        ("coeliac", "Lemon ice and shortbread", "4 lemons", "holds gluten"),
        ("coeliac", "Lemon posset with shortbread", "500 ml chicken stock, free from gluten", "holds gluten"),
        ("no fish", "Thai green curry", "400 ml coconut milk", "often holds fish"),
        ("no fish", "Caesar salad", "2 cos lettuces", "often holds fish"),
        ("no fish", "Miso soup", "100 g miso", "often holds fish"),
        ("alcohol-free", "Christmas pudding", "500 g raisins", "often holds alcohol"),
        ("no tree nuts", "Vegan Bakewell tart", "200 g plain flour", "holds almonds"),
        ("no tree nuts", "Gluten-free Bakewell tart", "200 g rice flour", "holds almonds"),
        ("no eggs", "Vegetarian pad thai", "400 g rice noodles", "holds eggs"),
    ],
)
def test_a_dish_known_by_its_name_is_asked_about(guest: str, dish: str, line: str, named: str) -> None:
    found = answer(guest, dish, line, "make it")

    why = [reason.why for reason in found.reasons if "its name" in reason.why]
    assert len(why) == 1
    assert named in why[0]


@pytest.mark.parametrize(
    ("guest", "dish", "line"),
    [
        ("no tree nuts", "Apple tart", "6 apples"),
        ("coeliac", "Apple tart", "6 apples"),
        ("no eggs", "Potato salad", "2 kg potatoes"),
        ("no fish", "Carrot soup", "1 kg carrots"),
        ("no tree nuts", "Carrot soup", "1 kg carrots"),
        ("no tree nuts", "Chocolate cake", "100 g cocoa powder"),
        ("coeliac", "Chocolate cake", "100 g polenta"),
        ("no eggs", "Apple and pear crumble", "6 apples"),
        ("no peanuts", "Onion gravy", "4 onions"),
        ("no peanuts", "Mince pies", "300 g plain flour"),
        ("vegetarian", "Tomato bruschetta", "1 ciabatta"),
        ("pregnant", "Beetroot and walnut terrine", "6 beetroot"),
        ("coeliac", "Lemon posset with shortbread", "12 gluten-free shortbread"),
        ("coeliac", "Lemon posset with shortbread", "200 g gluten-free flour"),
        ("coeliac", "Lemon posset with gluten-free shortbread", "500 ml double cream"),
        ("no tree nuts", "Macarons without nuts", "100 g icing sugar"),
        ("no fish", "Thai green curry", "30 ml vegan fish sauce"),
        ("no milk", "Vegan korma", "2 aubergines"),
    ],
)
def test_a_name_that_tells_no_more_than_the_ingredients_is_not_asked_about(guest: str, dish: str, line: str) -> None:
    found = answer(guest, dish, line, "make it")

    assert not [reason.why for reason in found.reasons if "its name" in reason.why]


def test_an_ingredient_that_carries_what_the_name_says_tells_it_alone() -> None:
    found = answer("no tree nuts", "Bakewell tart", "200 g ground almonds", "bake it")

    assert found.verdict.name == "NOT_SAFE"
    assert not [reason.why for reason in found.reasons if "its name" in reason.why]


# What such dishes usually hold: common practice, no source.
@pytest.mark.parametrize(
    ("guest", "dish", "line", "named"),
    [
        ("no nuts", "Fesenjan", "1 kg duck legs", "often holds walnuts"),
        ("no tree nuts", "Khoresh-e fesenjan with rice", "500 g rice", "often holds walnuts"),
        ("no fish", "Pork larb", "500 g pork mince", "often holds fish"),
        ("no sesame", "Bibimbap", "500 g rice", "often holds sesame"),
        ("no peanuts", "Kung pao cauliflower", "1 cauliflower", "often holds peanuts"),
        ("no mustard", "Bisi bele bath", "300 g red lentils", "often holds mustard"),
        ("no molluscs", "Paella", "500 g paella rice", "often holds molluscs"),
        ("no eggs", "Chawanmushi", "500 ml water", "often holds eggs"),
        ("coeliac", "Lahmacun", "500 g lamb mince", "often holds gluten"),
        ("no celery", "Harira", "500 g chickpeas", "often holds celery"),
        ("no soy", "Japchae", "300 g glass noodles", "often holds soy"),
        ("no milk", "Risotto", "400 g risotto rice", "often holds milk"),
        ("no nuts", "Zorblax with rice", "500 g rice", "nobody here knows what that is"),
        ("no nuts", "Бо", "500 g rice", "nobody here knows"),
    ],
)  # fmt: skip
def test_a_dish_known_to_those_of_its_kitchen_is_asked_about(guest: str, dish: str, line: str, named: str) -> None:
    found = answer(guest, dish, line, "make it")

    assert found.verdict.name == "ASK"
    assert any(named in reason.why for reason in found.reasons)


@pytest.mark.parametrize(
    ("guest", "dish", "line"),
    [
        ("no crustaceans", "Chicken paella", "500 g chicken thighs"),
        ("no nuts", "Ropa vieja", "1 kg beef flank"),
        ("no nuts", "Fesenjan without nuts", "1 kg duck legs"),
        ("no milk", "Vegan risotto", "400 g risotto rice"),
        ("no milk", "Chana masala", "500 g chickpeas"),
        ("no nuts", "Crispy tatties", "1 kg potatoes"),
        ("no nuts", "Grandma's Sunday best", "1 kg beef topside"),
        ("no eggs", "Panna cotta", "500 ml double cream"),
        ("no sesame", "Mixed grill", "8 lamb chops"),
        ("pregnant", "Zorblax", "500 g rice"),
    ],
)
def test_a_name_that_holds_none_of_it_is_not_asked_about(guest: str, dish: str, line: str) -> None:
    assert answer(guest, dish, line, "make it").verdict.name == "SAFE"


def test_no_dish_that_has_a_way_here_is_unknown_by_its_name() -> None:
    """A cook would laugh at `nobody knows what chips are`."""
    found = read(PLAN.replace("GUEST", "no nuts").replace("LINE", "100 g salt"))
    assert isinstance(found, PlanFile), found
    dish = found.plan.courses[0].dishes[0]

    said = {name: dish.model_copy(update={"dish": name}) for name, _ in DISHES}
    assert [name for name, each in said.items() if not _is_understood(found.plan, each, (("salt",),))] == []


def test_the_host_may_say_that_nothing_else_goes_into_a_dish() -> None:
    words = PLAN.replace("GUEST", "no nuts").replace("DISH", "Zorblax").replace("LINE", "'500 g rice'")
    found = read(words.replace("STEP", "make it") + "foods: {Zorblax: nothing}\n")

    assert isinstance(found, PlanFile), found
    assert matrix(found).answers[0, 0].verdict.name == "SAFE"


@pytest.mark.parametrize(
    ("guest", "food", "asked"),
    [
        ("alcohol-free", "Victoria sponge", False),
        ("alcohol-free", "carrot cake", False),
        ("alcohol-free", "miso soup", False),
        ("alcohol-free", "trifle", True),
        ("no fish", "tomato soup", False),
        ("no fish", "miso soup", True),
        ("vegetarian", "lemon drizzle cake", False),
        ("vegetarian", "cheesecake", True),  # gelatine in one that is set
    ],
)
def test_what_no_cook_would_ask_of_a_plain_cake_or_soup_is_not_asked(guest: str, food: str, asked: bool) -> None:
    """Common practice, no source."""
    assert (answer(guest, "Supper", f"1 {food}", "serve it").verdict.name == "ASK") is asked
