"""Two dishes that want one oven at different figures: one that bears it takes the other's, if the host says so."""

import pytest

from board.plan.load import PlanFile, read_plan
from board.schedule.conflicts.ways_out import WayOut
from tests.schedule.conflicts.clash_cases import HEAD, Worked

Dish = tuple[str, str, str, int, str]  # dish, step, heat, minutes, more keys


def plan(*dishes: Dish) -> str:
    text = HEAD + "hands: {host: {hours: {on the day: '16:00 - 23:00'}}}\ncourses:\n  - course: Main\n"
    text += "    at: 19:30\n    dishes:\n"
    for dish, step, heat, minutes, more in dishes:
        keys = f"step: {step}, where: 'oven at {heat}, 1 shelf', takes: {minutes} min, keeps: 5 min hot{more}"
        text += f"      - {{dish: {dish}, steps: [{{{keys}}}]}}\n"
    return text


def bends(*dishes: Dish) -> list[WayOut]:
    return [way for way in Worked(plan(*dishes)).ways() if "to share the oven" in way.what]


LAMB: Dish = ("Roast lamb", "roast the lamb", "170 C", 60, ", until: 63 C")
GRATIN: Dish = ("Potato gratin", "bake the gratin", "160 C", 50, "")
CAKE: Dish = ("Honey cake", "bake the cake", "160 C", 45, "")
MERINGUE: Dish = ("Meringues", "dry the meringues", "150 C", 60, "")


def test_it_says_what_was_written_what_is_set_and_the_minutes() -> None:
    """60 × 150 / 140 = 64.3; 50 × 140 / 150 = 46.7."""
    assert {way.what for way in bends(LAMB, GRATIN)} <= {
        "'roast the lamb': written 170 °C, set to 160 °C to share the oven with Potato gratin, "
        "5 min longer or a little more",
        "'bake the gratin': written 160 °C, set to 170 °C to share the oven with Roast lamb, "
        "3 min shorter or a little more",
    }
    assert bends(LAMB, GRATIN)


def test_what_it_writes_is_the_plans_own_words_and_the_core_stays() -> None:
    way = next(way for way in bends(LAMB, CAKE))
    file = read_plan(way.text, "plan.yaml")

    assert "oven at 160 C, 1 shelf" in way.text
    assert isinstance(file, PlanFile)
    task = file.filled.tasks["roast-lamb/roast-the-lamb"]
    assert task.ways[0].takes.likely == 65
    assert task.care.core is not None
    assert task.care.core.celsius == 63


@pytest.mark.parametrize(
    "pair",
    [
        (CAKE, MERINGUE),
        (("Soda bread", "bake the bread", "200 C", 40, ""), ("Lemon tart", "bake the tart", "190 C", 30, "")),
        (("Roast roots", "roast the roots", "200 C", 40, ""), CAKE),
    ],
)
def test_what_does_not_bear_it_or_lies_too_far_away_is_not_asked(pair: tuple[Dish, Dish]) -> None:
    assert bends(*pair) == []


def test_a_plan_in_fahrenheit_is_bent_in_fahrenheit() -> None:
    (way,) = bends(
        ("Short ribs", "braise the short ribs", "325 F", 120, ""),
        ("Cornbread", "bake the cornbread", "350 F", 30, ""),
    )

    assert way.what.startswith(
        "'braise the short ribs': written 325 °F, set to 350 °F to share the oven with Cornbread"
    )
    assert "oven at 350 F, 1 shelf" in way.text
