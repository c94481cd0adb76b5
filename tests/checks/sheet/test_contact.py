"""guests 7: a tool that held what hurts a guest goes unwashed into a dish they are served. Common practice, no
source."""

import pytest

from board.checks.allergens.guests_eat import matrix
from board.checks.sheet.contact import tools_are_washed_between
from board.checks.sheet.timed import timed
from board.plan.load import PlanFile, read_plan
from board.plan.snag import Snag
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet

PLAN = """
event: Supper with one pan
date: 2026-12-05
zone: Europe/Dublin
arrive: 19:00
guests: ['{guest}', 3 others]
kitchen: {{tools: {{frying pan: {pans}, pot: 1}}, wash up: {wash_up}}}
hands: {{host: {{hours: {{on the day: '12:00 - 23:00'}}}}}}
courses:
  - course: Bites
    at: 19:15
    dishes:
      - dish: {first}
        ingredients: [200 g walnuts (nuts), 2 tbsp olive oil (store cupboard)]
        not for: [{not_for}]
        steps:
          - {{step: fry the walnuts, where: 'stovetop, 1 ring, frying pan', takes: 10 min, keeps: 1 day in the room}}
  - course: Main
    at: 20:00
    dishes:
      - dish: Potatoes
        ingredients: [1 kg potatoes (veg), 2 tbsp olive oil (store cupboard)]
        steps:
          - step: fry the potatoes
            where: 'stovetop, 1 ring, {second_pan}'
            takes: 20 min
            after: ['{after}']
jobs: {jobs}
"""
WASH = """
  - {job: wash up, takes: 5 min, washes: frying pan, after: fry the walnuts, before: fry the potatoes}"""


def found(
    guest: str = "Ines, no tree nuts",
    pans: int = 1,
    first: str = "Fried walnuts",
    not_for: str = "Ines",
    second_pan: str = "frying pan",
    after: str = "fry the walnuts",
    jobs: str = "[]",
    food: str = "walnuts",
    wash_up: str = "no",
) -> list[Snag]:
    text = PLAN.format(
        guest=guest,
        pans=pans,
        first=first,
        not_for=not_for,
        second_pan=second_pan,
        after=after,
        jobs=jobs,
        wash_up=wash_up,
    ).replace("200 g walnuts", f"200 g {food}")
    plan = read_plan(text, "plan.yaml")
    assert isinstance(plan, PlanFile), [snag.render() for snag in plan]
    return tools_are_washed_between(timed(plan, make_sheet(plan, solve), matrix(plan)))


def test_an_unwashed_pan_is_told_of_once_with_tool_food_dishes_and_guest() -> None:
    (snag,) = found()

    assert snag.code == "guests 7"
    assert snag.safety
    assert "the frying pan holds walnuts for Fried walnuts, and then Potatoes, which Ines is served" in snag.message
    assert "`washes: frying pan`" in snag.mend
    assert snag.place is not None
    assert "fry the potatoes" in snag.place.text


def test_a_wash_between_ends_it() -> None:
    assert found(jobs=WASH) == []


def test_so_does_the_one_that_the_timetable_has_of_its_own() -> None:
    assert found(wash_up="yes") == []


def test_a_wash_of_something_else_does_not() -> None:
    assert len(found(jobs=WASH.replace("washes: frying pan", "washes: pot"))) == 1


def test_another_tool_is_no_contact() -> None:
    assert found(second_pan="pot") == []


def test_nor_is_the_same_one_used_first_for_what_they_eat() -> None:
    """The potatoes come out of the pan before the walnuts go in."""
    jobs = "[{job: stir, takes: 1 min, after: fry the potatoes, before: fry the walnuts}]"
    assert found(after="nothing", jobs=jobs) == []


def test_nor_where_nobody_is_hurt_by_it() -> None:
    assert found(guest="Ines, vegetarian") == []


def test_nor_where_what_it_held_is_not_eaten_but_hurts_nobody() -> None:
    """Bacon fat in the pan is no matter of safety for who eats no meat."""
    assert found(guest="Ines, vegetarian", food="bacon") == []


def test_two_dishes_of_one_name_in_two_courses_are_two_dishes() -> None:
    assert len(found(first="Potatoes")) == 1


def test_washing_may_begin_as_the_pan_comes_free() -> None:
    assert found(jobs=WASH.replace("after: fry the walnuts", "after: 'fry the walnuts, at once'")) == []


@pytest.mark.parametrize(("pans", "advice"), [(1, "use another tool"), (2, "Keep one frying pan apart")])
def test_of_several_alike_one_can_be_kept_apart(pans: int, advice: str) -> None:
    (snag,) = found(pans=pans)

    assert advice in snag.mend


HELD = """
event: Supper with two dishes to bake in
date: 2026-12-05
zone: Europe/Dublin
arrive: 19:00
guests: ['Ines, no tree nuts', 3 others]
kitchen: {{tools: {{pie dish: 3}}}}
hands: {{host: {{hours: {{on the day: '12:00 - 23:00'}}}}}}
courses:
  - course: Main
    at: 20:00
    dishes:
      - dish: {first}
        ingredients: [{first_of}]
        {first_for}
        steps:
          - {{step: fill the first, where: 'worktop, pie dish', takes: 20 min, keeps: '3 h in the room{kept}'}}
          - step: bake the first
            where: 'oven at 180 C, {dishes}'
            takes: 40 min
            after: [fill the first, fill the second]
      - dish: {second}
        ingredients: [{second_of}]
        {second_for}
        steps:
          - {{step: fill the second, where: 'worktop, pie dish', takes: 10 min, after: fill the first}}
"""
WALNUTS = ("Walnut bake", "200 g walnuts (nuts)", "not for: Ines")
POTATOES = ("Potatoes", "1 kg potatoes (veg)", "for: 4")


@pytest.mark.parametrize(
    ("first", "kept", "dishes", "told"),
    [
        (POTATOES, ", pie dish", "pie dish", False),  # the potatoes stand in it all the while
        (POTATOES, "", "pie dish", True),  # it was free meanwhile
        (POTATOES, ", pie dish", "2 pie dish", True),  # one more is taken, and that may be the walnuts'
        (WALNUTS, ", pie dish", "pie dish", False),  # the walnuts stand in it still
        (WALNUTS, "", "pie dish", True),  # it is free again
    ],
)
def test_what_one_dish_stands_in_meanwhile_is_not_what_the_other_takes(
    first: tuple[str, str, str], kept: str, dishes: str, told: bool
) -> None:
    second = WALNUTS if first is POTATOES else POTATOES
    names = {
        f"{which}{part}": text
        for which, dish in (("first", first), ("second", second))
        for part, text in zip(("", "_of", "_for"), dish, strict=True)
    }
    plan = read_plan(HELD.format(**names, kept=kept, dishes=dishes), "plan.yaml")
    assert isinstance(plan, PlanFile), [snag.render() for snag in plan]

    snags = tools_are_washed_between(timed(plan, make_sheet(plan, solve), matrix(plan)))
    assert [snag.code for snag in snags] == ["guests 7"] * told
