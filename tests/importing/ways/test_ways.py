"""Ways of cooking: found by a dish's words, written as a dish that a plan takes and that its checks pass."""

import functools
import re
import textwrap

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from board.base.plain import one_line
from board.checks.plan.every import check
from board.checks.sheet.every import safety_check
from board.facts.food import facts
from board.facts.origins import Origin
from board.facts.rule_sets import rule_set
from board.importing.ways.finding import PATTERNS
from board.importing.ways.ways import Setting, Way, all_ways, dish_lines, ways_for
from board.plan.load import PlanFile, read_plan
from board.plan.model.courses import Dish
from board.plan.phrases.food_safety import rule_class
from board.plan.phrases.quantities import parse_ingredient
from board.plan.snag import Snag, Weight
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from tests.examples import first, times
from tests.importing.ways.dish_names import DISHES, FIRST
from tests.outside.test_food_rules_home import COOK

BY_NAME = {way.name: way for way in all_ways()}
USUAL = Setting(7, 1, 4)

# What `check` rightly asks of a way's own dish, besides its guesses: the host's word is wanted, or a choice of theirs.
ASKS = {
    "cured fish": {"food 23"},  # nobody but the shop knows whether the fish was frozen against parasites
    "raw plate": {"food 2", "food 23"},  # raw on purpose, at the guests' risk
    "shellfish on ice": {"food 2"},  # the same
    "in pastry": {"food 19"},  # browned and left to cool before it is wrapped, as such a dish is made
    "filled at the table": {"food 2"},  # tacos: the name tells no meat
    "rice cooked with everything": {"food 2"},  # paella: the same
}
# Its name tells no food, so how hot it must get follows from nothing but the host's word.
FOOD_UNSAID = {"food 2", "food 23"}


def text_of(lines: list[str], at: Setting) -> str:
    return f"""\
event: Supper
date: 2026-12-05
zone: Europe/Dublin
arrive: 18:30
guests:
  - {at.eaters - 1} guests
  - host
kitchen:
  ovens: {at.ovens}
  rings: {at.rings}
hands:
  host:
    hours:
      2 days before: 9:00 - 21:00
      day before: 9:00 - 21:00
      on the day: 8:00 - 23:30
courses:
  - course: Main
    at: 19:30
    dishes:
{textwrap.indent(chr(10).join(lines), "      ")}
jobs:
  - job: put what is left of Main into the cold
    where: worktop
    takes: 4 min
    after: clear Main, at most 20 min
    puts away: Main
"""


def plan_of(lines: list[str], at: Setting = USUAL) -> PlanFile:
    return _read(text_of(lines, at))


@functools.cache
def _read(text: str) -> PlanFile:
    found = read_plan(text, "supper.yaml")
    assert isinstance(found, PlanFile), "\n".join(snag.render() for snag in found)
    return found


def dish_of(name: str, way: Way | None, at: Setting = USUAL) -> Dish:
    return plan_of(dish_lines(name, way, at), at).plan.courses[0].dishes[0]


def more_than_guesses(file: PlanFile) -> list[Snag]:
    return [snag for snag in check(file) if snag.code != "unsure 1"]


@pytest.mark.parametrize("eaters", [7, *(pytest.param(eaters, marks=pytest.mark.slow) for eaters in (4, 12, 24))])
@pytest.mark.parametrize("way", first(40, FIRST))
def test_every_way_makes_a_dish_that_a_plan_takes(way: str, eaters: int) -> None:
    at = Setting(eaters, 1, 4)

    found = more_than_guesses(plan_of(dish_lines(FIRST[way], BY_NAME[way], at), at))

    assert {snag.code for snag in found} <= ASKS.get(way, set()), [snag.render() for snag in found]
    assert not any(snag.weight == Weight.STOP for snag in found)


@pytest.mark.parametrize("way", first(30, FIRST))
def test_a_name_that_tells_no_food_is_asked_about_and_never_guessed_safe(way: str) -> None:
    file = plan_of(dish_lines("Aunt Ottilie’s best", BY_NAME[way], USUAL))

    assert {snag.code for snag in more_than_guesses(file)} <= FOOD_UNSAID
    assert not any(snag.weight == Weight.STOP for snag in check(file))


@pytest.mark.slow
@pytest.mark.parametrize("way", FIRST)
def test_every_way_has_a_timetable_that_gives_nothing_up(way: str) -> None:
    """For as many as one pair of hands serves before what was scooped or dressed stands too long."""
    for eaters in (7, 14):
        at = Setting(eaters, 1, 4)
        file = plan_of(dish_lines(FIRST[way], BY_NAME[way], at), at)

        sheet = make_sheet(file, solve)

        assert sheet.given_up == ()
        told = [snag for snag in safety_check(file, sheet) if snag.code != "table 6"]
        assert [snag.render() for snag in told] == []


@pytest.mark.parametrize("dish", ["braised duck legs", "lemon parfait"])
def test_a_dish_made_ahead_has_a_timetable(dish: str) -> None:
    file = plan_of(dish_lines(dish, ways_for(dish)[0], USUAL))

    sheet = make_sheet(file, solve)

    assert sheet.given_up == ()
    assert safety_check(file, sheet) == []


@pytest.mark.parametrize(
    ("ovens", "rings"),
    first(0, [(0, 1), (0, 4), (1, 1), (1, 0), (0, 0), (2, 6)]),
)
def test_no_kitchen_gets_a_dish_that_it_cannot_cook(ovens: int, rings: int) -> None:
    at = Setting(12, ovens, rings)
    for way, dish in FIRST.items():
        lines = dish_lines(dish, BY_NAME[way], at)

        found = more_than_guesses(plan_of(lines, at))

        assert not any(snag.code.startswith("kitchen") for snag in found), way
        if "there is none" in "\n".join(lines):
            assert not ovens or not rings


def test_where_there_is_no_oven_another_way_is_taken_or_the_dish_says_so() -> None:
    at = Setting(6, 0, 2)

    assert dish_lines("potato gratin", BY_NAME["gratin"], at)[0] == (
        "- dish: potato gratin  # boiled potatoes: gratin needs an oven, and there is none"
    )
    assert any("crumble needs an oven" in line for line in dish_lines("rhubarb crumble", BY_NAME["crumble"], at))
    stovetop = [line for line in dish_lines("braised duck legs", BY_NAME["braised"], at) if "where: stovetop" in line]
    assert len(stovetop) == 4  # a lid and a low ring do what the oven does


@pytest.mark.parametrize(("dish", "way"), DISHES)
def test_a_dish_is_found_by_its_words(dish: str, way: str) -> None:
    """Common practice, no source."""
    assert [each.name for each in ways_for(dish)][:1] == [way]


def test_the_thing_itself_goes_before_what_was_done_and_what_goes_with_it() -> None:
    names = [way.name for way in ways_for("roast tomato soup with toast")]

    assert names == ["soup", "roast vegetables", "topped toasts"]


@pytest.mark.parametrize("dish", ["zork", "Grandfather's secret", "", "烤鸭", "12", "???"])
def test_what_says_nothing_of_how_it_is_made_fits_no_way(dish: str) -> None:
    assert ways_for(dish) == ()


def test_a_bare_dish_says_so() -> None:
    lines = dish_lines("zork", None, USUAL)

    assert any("nothing is known of how it is made" in line for line in lines)
    assert {snag.code for snag in check(plan_of(lines))} <= {"unsure 1", "food 16"}


def test_all_ways_stand_in_the_order_of_a_meal_each_under_its_own_name() -> None:
    courses = [way.course for way in all_ways()]

    assert len(BY_NAME) == len(all_ways()) == len(PATTERNS) == len(FIRST)
    assert list(dict.fromkeys(courses)) == ["nibbles", "starter", "main", "side", "cheese", "sweet", "drink"]
    assert courses == sorted(courses, key=list(dict.fromkeys(courses)).index)


@pytest.mark.parametrize("way", FIRST)
def test_every_figure_is_told_to_be_a_guess(way: str) -> None:
    for step in dish_of(FIRST[way], BY_NAME[way]).steps:
        filled = {
            key
            for key, value in [
                ("where", step.where), ("takes", step.takes), ("attended", step.attended), ("keeps", step.keeps),
                ("best within", step.best_within), ("cooks", step.cooks), ("reheats", step.reheats), ("until",
                    step.until),
                ("cools", step.cools), ("perishable", step.perishable),
            ]
            if value is not None
        }  # fmt: skip
        assert set(step.guessed) == filled


@pytest.mark.parametrize("way", FIRST)
def test_everything_bought_goes_in_at_one_step(way: str) -> None:
    dish = dish_of(FIRST[way], BY_NAME[way])
    asked = [line for line in dish_lines(FIRST[way], BY_NAME[way], USUAL) if "# from the name: say" in line]
    named_only = [line for line in asked if "- to taste " not in line]

    used = [(line.food, line.low, line.unit) for step in dish.steps for line in step.uses]

    wanted = [(line.food, line.low, line.unit) for line in dish.ingredients if line.unit != "to taste"]
    assert sorted(used) == sorted(wanted[: len(wanted) - len(named_only)])


@pytest.mark.parametrize("dish", [dish for dish, _ in DISHES])
def test_its_ingredients_are_foods_that_the_program_knows(dish: str) -> None:
    lines = dish_lines(dish, ways_for(dish)[0], USUAL)
    for line in lines[lines.index("  ingredients:") + 1 : lines.index("  steps:")]:
        food = str(parse_ingredient(line.removeprefix("    - ").partition("  #")[0])["food"])
        assert facts(food) is not None, food


HOSTILE = [
    "a: b", "'", '"', "# none", "- x", "{", "*a", "no", "12", "~", "\\n", "[b]bold[/b]", "<script>x</script>", "烤鸭",
    "بط", "утка с яблоками", "soup: 'hot' # \"cold\"", "duck " * 60, "\N{RIGHT-TO-LEFT OVERRIDE}duck",
    "a\tb", "🦆", "%", "@x",
    "!!map x", "{it}", "braised {it}", "1 kg duck, 2 l wine (butcher)",
]  # fmt: skip

# Dishes of each class of the chart, by what is in them: common practice, no source.
CLASSES = {
    "poultry": "braised duck legs; roast chicken; turkey burgers; chicken curry; chicken and leek pie; fried "
        "chicken; chicken soup; roast goose; chicken liver pâté",
    "ground meat": "meatballs; lamb koftas; spaghetti bolognese; shepherd's pie; chili con carne; meatloaf",
    "whole cut": "roast leg of lamb; sirloin steak; pork chops; beef stew; lamb shanks; beef bourguignon; rack of "
        "lamb; glazed gammon",
    "fish": "grilled salmon; baked cod; mussels in white wine; seared scallops; prawn linguine; poached salmon",
    "eggs": "quiche lorraine; onion tartlets; crème brûlée; Spanish omelette; lemon parfait; cheese soufflé; deviled "
        "eggs",
    "stuffed": "stuffed chicken breasts; stuffed pork loin",
}  # fmt: skip


@pytest.mark.parametrize(
    ("kind", "dish"), [(kind, dish) for kind, all_ in CLASSES.items() for dish in all_.split("; ")]
)
def test_the_core_temperature_is_that_of_the_chart(kind: str, dish: str) -> None:
    """FoodSafety.gov, safe minimum internal temperatures (USDA FSIS), as in tests/outside/test_food_rules_home.py."""
    chart = {food_class: (fahrenheit, celsius, rest) for food_class, fahrenheit, celsius, rest in COOK}
    _, celsius, rest = chart[kind]
    file = plan_of(dish_lines(dish, ways_for(dish)[0], USUAL))

    cooks = [task for task in file.filled.tasks.values() if task.care.cooks is not None]

    hottest = max(cooks, key=lambda task: chart[rule_class(str(task.care.cooks))][1])
    assert chart[rule_class(str(hottest.care.cooks))][1] >= celsius
    assert hottest.care.core is not None
    assert rule_set("home").cooked_enough(kind, hottest.care.core.celsius, hottest.care.core.minutes, rest)


def test_no_class_is_told_where_the_name_tells_no_food() -> None:
    assert all("cooks:" not in line for line in dish_lines("Sunday roast", BY_NAME["roast joint"], USUAL))


@pytest.mark.parametrize(
    "dish",
    ["vegan lasagne", "vegetarian chili con carne", "veggie burgers", "mushroom bourguignon", "vegetable terrine",
        "meat-free moussaka",
     "mushroom stew", "vegetarian shepherd's pie", "vegan pot roast", "vegetable paella", "lentil bolognese",
         "mushroom gravy"],
)  # fmt: skip
def test_a_dish_said_to_be_without_meat_gets_none(dish: str) -> None:
    for line in dish_of(dish, ways_for(dish)[0]).ingredients:
        known = facts(line.food)
        assert known is not None
        assert not known.origins & {Origin.MEAT, Origin.FISH, Origin.CRUSTACEAN, Origin.MOLLUSC}, line.food


def test_a_dish_gets_its_own_hours() -> None:
    """Common practice, no source: duck legs braise about two hours, shin of beef about three, chicken under one."""

    def likely(dish: str) -> int:
        steps = dish_of(dish, BY_NAME["braised"]).steps
        return next(step.takes.likely for step in steps if step.step.startswith("braise") and step.takes is not None)

    assert likely("braised duck legs") == 120
    assert likely("braised beef shin") == 180
    assert likely("braised chicken thighs") == 50


def test_handwork_grows_with_the_eaters_and_the_ovens_hours_do_not() -> None:
    few, many = (dish_of("roast carrots", BY_NAME["roast vegetables"], Setting(n, 1, 4)) for n in (6, 24))
    cut, roast = few.steps[0], few.steps[-1]
    cut_many, roast_many = many.steps[0], many.steps[-1]

    assert cut.takes is not None
    assert cut_many.takes is not None
    assert cut_many.takes.likely == 3 * cut.takes.likely
    assert roast.takes == roast_many.takes
    assert roast.where is not None
    assert roast_many.where is not None
    assert (roast.where.shelves, roast_many.where.shelves) == (1, 2)
    assert many.ingredients[0].low == pytest.approx(4.35)  # 24 × 180 g, in kg, in steps of 50 g


def test_a_step_names_the_tools_that_the_kitchen_has() -> None:
    lines = dish_lines("braised duck legs", BY_NAME["braised"], Setting(6, 1, 4, {"casserole": 1}))

    assert any(line.endswith("1 shelf, casserole") for line in lines)
    assert not any("frying pan" in line for line in lines)


def test_coffee_and_wine_by_the_cup_and_the_glass() -> None:
    """1 lb of ground coffee makes 50 cups; a bottle holds five glasses of 150 ml, two a guest. Common practice, no
    source."""
    coffee = dish_of("coffee", BY_NAME["coffee"], Setting(50, 1, 4)).ingredients[0]
    wine = dish_of("red wine", BY_NAME["wine, opened"], Setting(10, 1, 4)).ingredients[0]

    assert coffee.low == pytest.approx(453.59237, rel=0.01)
    assert (wine.low, wine.unit) == (4, "bottle")


@pytest.mark.parametrize("way", ["braised", "coffee"])
@pytest.mark.parametrize("name", HOSTILE)
def test_a_dishs_name_is_data_whatever_it_is(way: str, name: str) -> None:
    assert dish_of(name, BY_NAME[way]).dish == dish_of(name, None).dish
    assert "\n" not in "".join(dish_lines(name, BY_NAME[way], USUAL))


@settings(deadline=None, max_examples=times(40))
@given(st.text(max_size=300), st.sampled_from(sorted(BY_NAME)))
def test_any_name_and_any_way_make_a_plan(name: str, way: str) -> None:
    if not one_line(name):
        return

    assert dish_of(one_line(name), BY_NAME[way]).dish


def test_minutes_run_from_low_to_high() -> None:
    for each in PATTERNS:
        for minutes in [*(step.minutes for step in each.steps), *(each.own or {}).values()]:
            assert 0 < minutes[0] <= minutes[1] <= minutes[2]


def test_two_dishes_of_one_way_stand_beside_each_other() -> None:
    lines = [*dish_lines("apple pie", BY_NAME["fruit tart or pie"], USUAL), *dish_lines("leek quiche", BY_NAME[
        "quiche"], USUAL),
             *dish_lines("onion tartlets", BY_NAME["tartlets"], USUAL)]  # fmt: skip

    assert more_than_guesses(plan_of(lines)) == []


@pytest.mark.slow
def test_comments_stay_on_their_line() -> None:
    for dish, _ in DISHES:
        for line in dish_lines(dish, ways_for(dish)[0], Setting(24, 1, 1)):
            assert re.match(r"- dish: |  (?:for|ingredients|steps):|    - |      [a-z ]+: ", line)
