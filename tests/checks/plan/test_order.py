"""plan 20: steps of a dish that cannot be done in the order in which they are written. Common practice, no source."""

from pathlib import Path

import pytest

from board.checks.plan.order import steps_can_be_done_in_their_order
from board.plan.load import PlanFile
from board.plan.snag import Weight
from tests.checks.plan.kept_safe import plan
from tests.conftest import PLANS, read


def dish(steps: list[str], ingredient: str = "1 kg food", name: str = "Test dish") -> PlanFile:
    """A dish of steps by their names; `| key: value` after one adds to it."""
    lines = "".join(
        f"- {{step: {words.split(' | ')[0]}, takes: 20 min{''.join(', ' + more for more in words.split(' | ')[1:])}}}\n"
        for words in steps
    )
    return plan(lines, ingredient=ingredient, dish=name)


WRONG = [
    (["toss the penne with the ragu", "drain the penne", "boil the penne"], "drain the penne", "boil the penne"),
    (["drain the noodles", "simmer the broth", "boil the noodles"], "drain the noodles", "boil the noodles"),
    (["dress the potatoes", "boil the potatoes until tender"], "dress the potatoes", "boil the potatoes"),
    (["bake the rolls", "knead the dough", "let it rise"], "bake the rolls", "knead the dough"),
    (["bake the loaf", "second prove"], "bake the loaf", "second prove"),
    (["bake the scones", "mix the scone dough"], "bake the scones", "mix the scone dough"),
    (["roast the goose", "defrost the goose"], "roast the goose", "defrost the goose"),
    (["grill the lamb", "marinate the lamb overnight"], "grill the lamb", "marinate the lamb"),
    (["roast the pork", "brine the pork"], "roast the pork", "brine the pork"),
    (["simmer the chickpeas", "soak the chickpeas"], "simmer the chickpeas", "soak the chickpeas"),
    (["boil the dried beans", "leave the beans to soak overnight"], "boil the dried beans", "leave the beans"),
    (["carve the rib of beef", "roast the beef"], "carve the rib of beef", "roast the beef"),
    (["rest the duck", "carve it", "roast the duck"], "carve it", "roast the duck"),
]


@pytest.mark.parametrize(("steps", "early", "late"), WRONG)
def test_what_cannot_come_first_is_asked_about_once(steps: list[str], early: str, late: str) -> None:
    (snag,) = steps_can_be_done_in_their_order(dish(steps))

    assert (snag.code, snag.weight) == ("plan 20", Weight.ASK)
    assert early in snag.message
    assert late in snag.message
    assert snag.place is not None
    assert late in snag.place.text


RIGHT = [
    ["boil the penne", "drain the penne", "toss the penne with the ragu"],
    ["toss the leaves with the dressing", "boil the eggs"],
    ["dress the salad leaves", "boil the salad potatoes"],
    ["soak the lentils", "drain the lentils", "boil the lentils"],
    ["parboil the potatoes", "drain the potatoes", "boil the potatoes in milk"],
    ["rinse and drain the rice", "boil the rice"],
    ["drain the cod", "boil the beans"],
    ["toss the squash in oil", "roast the squash"],
    ["knead the dough", "let the dough rise", "bake the rolls", "mix the butter"],
    ["bake the bread", "slice the bread", "toast the bread"],
    ["bake the shell blind", "mix the filling", "bake the tart"],
    ["fry the onions", "mix the dough", "bake the rolls"],
    ["poach the plums", "mix the dough", "chill the dough"],
    ["bake the cake", "mix the icing", "ice the cake"],
    ["bake the roulade", "roll the roulade"],
    ["bake the tuiles", "shape the tuiles over a pin"],
    ["freeze the loaf", "thaw the loaf"],
    ["bake the loaf", "freeze the loaf", "thaw the loaf"],
    ["roast the peppers", "marinate the peppers"],
    ["poach the chicken", "marinate the chicken"],
    ["boil the eggs", "marinate the eggs"],
    ["bake the babas", "soak the babas in syrup"],
    ["brown the lamb", "marinate the lamb", "braise the lamb"],
    ["boil the beans hard", "soak the beans", "simmer the beans"],
    ["roast the beef", "rest the beef", "carve the beef"],
    ["carve the melon", "roast the almonds"],
    ["drain the penne", "boil the penne | after: nothing"],
    ["boil the soup", "prove nothing"],
    ["fry the livers", "soak the gelatine"],
    ["roast the chicken", "soak the bread"],
]


@pytest.mark.parametrize("steps", RIGHT)
def test_what_can_be_is_left_alone(steps: list[str]) -> None:
    assert steps_can_be_done_in_their_order(dish(steps)) == []


def test_what_is_drained_of_its_tin_boils_after() -> None:
    steps = ["drain the chickpeas", "boil the chickpeas"]

    assert steps_can_be_done_in_their_order(dish(steps, "2 tins chickpeas")) == []
    assert steps_can_be_done_in_their_order(dish(steps, "400 g chickpeas in brine")) == []
    assert len(steps_can_be_done_in_their_order(dish(steps, "400 g dried chickpeas"))) == 1


def test_what_lay_in_the_freezer_thaws_after_its_baking() -> None:
    steps = ["bake the rolls | keeps: 5 days in the freezer", "thaw the rolls"]

    assert steps_can_be_done_in_their_order(dish(steps)) == []


@pytest.mark.parametrize("path", sorted(PLANS.glob("*.yaml")), ids=lambda path: path.stem)
def test_the_bundled_plans_are_in_order(path: Path) -> None:
    file = read(path.read_text(encoding="utf-8"))

    assert isinstance(file, PlanFile)
    assert steps_can_be_done_in_their_order(file) == []
