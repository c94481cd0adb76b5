"""The usual cautions, each once where the plan's own words tell of the danger. Common practice, no source."""

import pytest

from board.base import words as shared
from board.checks.plan.cautions import cautions, tells
from board.facts.dangers import ALCOHOL, BLADES, EVERY, FLAME, FLOWERS, HOT_FAT, RAW_EGG
from board.plan.load import PlanFile, read_plan

PLAN = """
event: Small supper
date: 2026-12-05
zone: Europe/Dublin
arrive: 18:30
guests: [4 guests]
hands: {{host: {{hours: {{on the day: '12:00 - 23:00'}}}}}}
courses:
  - course: Main
    at: 19:30
    dishes:
      - dish: {dish}
        ingredients: [{ingredients}]
        steps:
          - step: {step}
            where: {on}
            takes: 30 min
            attended: {attended}
jobs: [{jobs}]
"""


def topics(
    dish: str = "Rice", ingredients: str = "", step: str = "stir it", on: str = "worktop", attended: str = "all",
    jobs: str = "",
) -> set[str]:  # fmt: skip
    found = read_plan(
        PLAN.format(dish=dish, ingredients=ingredients, step=step, on=on, attended=attended, jobs=jobs), "plan.yaml"
    )
    assert isinstance(found, PlanFile), [snag.render() for snag in found]
    return {each.topic for each in cautions(found)}


def test_a_plan_without_dangers_has_no_cautions() -> None:
    assert topics() == set()


@pytest.mark.parametrize(
    ("part", "topic"),
    [
        ({"ingredients": "200 ml red wine"}, "alcohol"),
        ({"jobs": "chill the beer"}, "alcohol"),
        ({"jobs": "light the candles"}, "flame"),
        ({"jobs": "set fire to the wicks"}, "flame"),
        ({"jobs": "light the stove"}, "flame"),
        ({"jobs": "put a match to the logs"}, "flame"),
        ({"jobs": "snuff the tapers"}, "flame"),
        ({"step": "flambé the pears"}, "flame"),
        ({"step": "carve the roast"}, "blades"),
        ({"step": "deep-fry the fritters"}, "hot-fat"),
        ({"step": "cook the caramel"}, "hot-fat"),
        ({"jobs": "arrange the flowers"}, "flowers"),
        ({"dish": "Chocolate mousse", "ingredients": "4 eggs"}, "raw-egg"),
        ({"ingredients": "2 egg yolks"}, "raw-egg"),  # nothing heats them
        ({"ingredients": "100 g bean sprouts"}, "raw-sprouts"),
        ({"ingredients": "50 g sprouted lentils"}, "raw-sprouts"),
        ({"on": "stovetop", "attended": "2 min at the start"}, "heat-alone"),
        ({"step": "light the barbecue"}, "charcoal"),
    ],
)
def test_each_danger_is_told_of(part: dict[str, str], topic: str) -> None:
    assert topic in topics(**part)


@pytest.mark.parametrize(
    ("part", "topic"),
    [
        ({"jobs": "carry out the wicker chairs"}, "flame"),
        ({"jobs": "switch on the LED candles"}, "flame"),
        ({"ingredients": "2 tbsp cider vinegar"}, "alcohol"),
        ({"ingredients": "1 portion ginger"}, "alcohol"),
        ({"ingredients": "500 ml alcohol-free cider"}, "alcohol"),
        ({"jobs": "lay out the cutlery"}, "blades"),
        ({"ingredients": "1 cauliflower"}, "flowers"),
        ({"step": "wash the flowers and leaves"}, "flowers"),  # of a dish: its food
        ({"ingredients": "1 eggplant"}, "raw-egg"),
        ({"ingredients": "2 eggs", "on": "stovetop"}, "raw-egg"),
        ({"on": "stovetop", "attended": "all"}, "heat-alone"),
    ],
)
def test_and_what_only_sounds_like_one_is_not(part: dict[str, str], topic: str) -> None:
    assert topic not in topics(**part)


def test_each_is_told_once_with_all_it_is_about() -> None:
    found = read_plan(
        PLAN.format(dish="Stew", ingredients="1 bottle red wine", step="slice it", on="worktop", attended="all",
                    jobs="open the wine, chill the beer, arrange the flowers"), "plan.yaml",
    )  # fmt: skip
    assert isinstance(found, PlanFile)
    alcohol = [each for each in cautions(found) if each.topic == "alcohol"]

    assert [each.about for each in alcohol] == [("Stew", "open the wine", "chill the beer")]


def test_every_danger_has_its_words() -> None:
    assert {danger.topic for danger in EVERY} | {"heat-alone", "raw-food"} == set(shared.CAUTIONS)


@pytest.mark.parametrize("danger", [ALCOHOL, FLAME, BLADES, HOT_FAT, FLOWERS, RAW_EGG])
def test_words_that_do_not_count_do_not_tell(danger: object) -> None:
    assert not any(tells(danger, word) for word in danger.never)  # type: ignore[attr-defined, arg-type]


@pytest.mark.parametrize(
    "part",
    [
        {"ingredients": "100 g brussels sprouts"},
        {"ingredients": "100 g tinned bean sprouts"},
        {"ingredients": "100 g bean sprouts", "on": "stovetop"},
        {"step": "rinse the bean sprouts"},  # the dish's ingredients tell
    ],
)
def test_sprouts_that_are_cooked_or_of_another_kind_are_no_raw_sprouts(part: dict[str, str]) -> None:
    assert "raw-sprouts" not in topics(**part)


def _with_drinks(drinks: str, course_drink: str = "") -> dict[str, tuple[str, ...]]:
    text = PLAN.format(dish="Rice", ingredients="", step="stir it", on="worktop", attended="all", jobs="")
    text = text.replace("courses:", f"drinks: {drinks}\ncourses:", 1)
    text = text.replace("    at: 19:30\n", f"    at: 19:30\n{course_drink}", 1)
    found = read_plan(text, "plan.yaml")
    assert isinstance(found, PlanFile), [snag.render() for snag in found]
    return {each.topic: each.about for each in cautions(found)}


@pytest.mark.parametrize(
    ("drinks", "about"),
    [
        ("usual", ("wine",)),
        ("{beer: 1 bottle a guest, sparkling: usual}", ("sparkling", "beer")),
        ("{wine: none, water: usual}", None),
        ("{soft drinks: usual, coffee: usual}", None),
    ],
)
def test_the_drinks_tell_of_alcohol(drinks: str, about: tuple[str, ...] | None) -> None:
    assert _with_drinks(drinks).get("alcohol") == about


@pytest.mark.parametrize(
    ("drink", "about"),
    [
        ("dry riesling, 3 bottles, 12 %", ("dry riesling",)),
        ("red wine, 3 bottles, opened 30 min before", ("red wine",)),
        ("elderflower pressé, 3 bottles, chilled 2 h, 0 %", None),
        ("alcohol-free beer, 6 bottles", None),
        ("apple juice, 3 bottles", None),
    ],
)
def test_what_is_poured_with_a_course_tells_of_alcohol_once(drink: str, about: tuple[str, ...] | None) -> None:
    told = _with_drinks("{water: usual}", f"    drink: '{drink}'\n")

    assert told.get("alcohol") == about
