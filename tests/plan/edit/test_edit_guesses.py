"""Guesses written back as known, and what a host types for a value."""

import textwrap

import pytest

from board.plan.edit.edit_guesses import SettleStep, retyped
from board.plan.edit.edits import CannotEdit, Together
from board.plan.load import PlanFile, read_plan
from tests.conftest import HEAD

PLAN = HEAD + textwrap.dedent("""\
    courses:
      - course: Main
        at: 19:30
        dishes:
          - dish: Gratin   # Ada's
            ingredients: [1 kg potatoes]
            steps:
              - step: slice the potatoes
                takes: 15 min  # guessed: by the weight
                guessed: takes
              # hot
              - step: bake the gratin
                where: oven at 160 C (150 to 170 C), 1 shelf
                takes: {low: 50, likely: 60, high: 70}
                guessed: [where, takes]   # by the recipe
              - {step: scatter the herbs, takes: 2 min, guessed: [takes]}
    """)
STEPS = ("courses", 0, "dishes", 0, "steps")


def file() -> PlanFile:
    found = read_plan(PLAN, "supper.yaml")
    assert isinstance(found, PlanFile)
    return found


def settled(*steps: SettleStep) -> str:
    made = Together(steps).made(PLAN, file())
    assert not isinstance(made, CannotEdit)
    return made[0]


def test_what_is_taken_as_it_stands_only_leaves_the_list() -> None:
    new = settled(SettleStep((*STEPS, 0), {"takes": None}), SettleStep((*STEPS, 2), {"takes": None}))

    assert new == PLAN.replace("            guessed: takes\n", "").replace(", guessed: [takes]}", "}")


def test_one_of_two_leaves_the_other_and_a_new_figure_stands_in_its_place() -> None:
    new = settled(SettleStep((*STEPS, 1), {"takes": "45 to 55 to 60 min"}))

    assert new == PLAN.replace("{low: 50, likely: 60, high: 70}", "45 to 55 to 60 min").replace(
        "[where, takes]", "[where]"
    )


def test_a_value_that_the_plan_could_not_hold_changes_nothing() -> None:
    made = SettleStep((*STEPS, 1), {"where": "oven at 900 C, 1 shelf"}).made(PLAN, file())

    assert isinstance(made, CannotEdit)
    assert isinstance(SettleStep(("courses", 0), {"takes": None}).made(PLAN, file()), CannotEdit)


@pytest.mark.parametrize(
    ("key", "text", "typed", "value"),
    [
        ("takes", "2 h", "45", "45 min"),
        ("takes", "2 h", "20 30", "20 to 30 min"),
        ("takes", "2 h", "40-45–60", "40 to 45 to 60 min"),
        ("takes", "2 h", "1 h 30 to 2 h", "1 h 30 to 2 h"),
        ("best within", "10 min", "15", "15 min"),
        ("keeps", "2 days in the fridge", "3", "3 days in the fridge"),
        ("keeps", "2 days in the fridge", "4 h in the room", "4 h in the room"),
        ("where", "oven at 180 C (170 to 190 C), 1 shelf", "200", "oven at 200 C, 1 shelf"),
        ("attended", "3 min at the start, 1 min every 15 min", "5", "5 min at the start, 1 min every 15 min"),
        ("cooks", "poultry", "fish", "fish"),
    ],
)
def test_figures_stand_for_figures_and_words_for_all_of_it(key: str, text: str, typed: str, value: str) -> None:
    assert retyped(key, text, typed) == value


@pytest.mark.parametrize(
    ("key", "text", "typed", "said"),
    [
        ("takes", "2 h", "60 50", "must rise"),
        ("takes", "2 h", "9x", "not a unit"),
        ("attended", "none", "5", "no figure to change"),
        ("where", "oven at 180 C", "9999", "no temperature of a kitchen"),
        ("cooks", "poultry", "shoe", "shoe"),
    ],
)
def test_what_cannot_be_read_is_told_in_the_words_of_a_plan(key: str, text: str, typed: str, said: str) -> None:
    with pytest.raises(ValueError, match=said):
        retyped(key, text, typed)
