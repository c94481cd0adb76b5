"""Whose plate is different, course by course."""

from board.checks.allergens.guests_eat import matrix
from board.checks.allergens.plates import plates
from board.plan.load import PlanFile, read_plan
from board.sheet import said
from board.sheet.told import Plate

PLAN = """
event: Supper
date: 2026-12-05
zone: Europe/Dublin
arrive: 19:00
guests: ['Ines, no tree nuts', 'Tomas, vegetarian', 3 others]
hands: {host: {hours: {on the day: '12:00 - 23:00'}}}
courses:
  - course: Soup
    at: 19:15
    dishes:
      - dish: Carrot soup
        ingredients: [1 kg carrots, 1 l water]
        steps: [{step: simmer it, where: stovetop, takes: 30 min}]
  - course: Main
    at: 20:00
    dishes:
      - dish: Beef stew
        ingredients: [1 kg beef shin, 2 carrots]
        steps: [{step: braise it, where: stovetop, takes: 2 h}]
      - dish: Bean stew
        only for: Tomas
        instead of: Beef stew
        ingredients: [400 g butter beans, 2 carrots]
        steps: [{step: warm it, where: stovetop, takes: 20 min}]
      - dish: Walnut bread
        not for: Ines
        ingredients: [500 g rye flour, 100 g walnuts]
        steps: [{step: slice it, takes: 5 min}]
      - dish: Odd relish
        ingredients: [100 g glimmer paste]
        steps: [{step: spoon it out, takes: 5 min}]
"""


def test_by_hand() -> None:
    """Tomas has his own stew. Ines has no walnut bread, and of the relish nobody knows what is in it: that is asked
    about for her, whom it could hurt, and not for him."""
    file = read_plan(PLAN, "plan.yaml")
    assert isinstance(file, PlanFile)

    assert plates(file, matrix(file)) == {
        "Soup": (),
        "Main": (
            Plate("Ines", ("no tree nuts",), never=("Walnut bread",), asked=("Odd relish",)),
            Plate("Tomas", ("vegetarian",), own=("Bean stew",), never=("Beef stew",)),
        ),
    }
    assert [said.plate(each) for each in plates(file, matrix(file))["Main"]] == [
        "Ines (no tree nuts): not Walnut bread, ask before serving Odd relish",
        "Tomas (vegetarian): Bean stew, not Beef stew",
    ]
