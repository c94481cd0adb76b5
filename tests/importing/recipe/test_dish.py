"""Recipes of our own invention, in the forms of the schema.org vocabulary, as dishes that a plan takes.

The forms follow the vocabulary's own pages, each named beside its test: https://schema.org/Recipe (its example has a
paragraph of instructions, `350 degrees` without a unit, `one hour`), /HowToSection, /HowToStep, /HowToDirection,
/HowToTip, /ItemList, /QuantitativeValue; JSON-LD 1.1 (W3C) for @graph, @id, @list and @value.
"""

import json
import textwrap
from typing import Any

import pytest

from board.checks.plan.every import check
from board.importing.recipe.dish import DishText, dish_from
from board.plan.load import PlanFile, read_plan
from board.plan.model.courses import Dish
from board.plan.snag import Weight

HEAD = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [4 guests]
hands: {host: {hours: {day before: '8:00 - 22:00', on the day: '8:00 - 23:30'}}}
kitchen: {tools: {microwave: 1, blender: 1, food processor: 1, slow cooker: 1, air fryer: 1, barbecue: 1}}
courses:
  - course: Main
    at: 20:00
    dishes:
"""


def recipe(**more: Any) -> dict[str, Any]:
    return {"@context": "https://schema.org", "@type": "Recipe", "name": "Lantern loaf", **more}


def made(value: Any) -> DishText:
    return dish_from(json.dumps(value).encode())


def plan_with(text: str) -> PlanFile:
    """A small plan with the dish pasted under its course."""
    found = read_plan(HEAD + text, "supper.yaml")
    assert isinstance(found, PlanFile), text + "\n".join(snag.render() for snag in found)
    return found


def dish(value: Any) -> Dish:
    return plan_with(made(value).text).plan.courses[0].dishes[0]


def steps(*instructions: Any, **more: Any) -> list[tuple[str, str | None, tuple[int, int], list[str]]]:
    """Each step as (its name, its place, low and high minutes, what was guessed)."""
    found = dish(recipe(recipeInstructions=list(instructions), **more))
    return [
        (
            step.step,
            step.where.place if step.where else None,
            (step.takes.low, step.takes.high) if step.takes else (0, 0),
            list(step.guessed),
        )
        for step in found.steps
    ]


def settings(*instructions: str) -> list[float | None]:
    """°C of the oven, step by step."""
    found = dish(recipe(recipeInstructions=list(instructions)))
    return [round(step.where.heat.want, 1) if step.where and step.where.heat else None for step in found.steps]


PARAGRAPH = recipe(
    author="Ada Invented",
    prepTime="PT15M",
    cookTime="PT1H",
    recipeYield="1 loaf",
    recipeIngredient=["3 or 4 ripe pears, smashed", "1 egg", "3/4 cup of sugar"],
    recipeInstructions="Preheat the oven to 350 degrees. Stir all of it in a bowl. Add the oats last. "
    "Pour the batter into a loaf tin and bake for one hour.",
)


def test_the_form_of_the_vocabularys_own_example() -> None:
    """https://schema.org/Recipe, Example 1: one paragraph, no unit of heat, a length in words."""
    assert made(PARAGRAPH).text == textwrap.indent(
        textwrap.dedent("""\
        # Drafted from a recipe file. What is listed under `guessed` is a guess from its words: mend it, then take it
        # out.
        # No guess is made when food is cooked through: a thermometer, the label and your local food-safety code say
        # so.
        - dish: Lantern loaf
          # for: ?  the recipe says: 1 loaf
          source: Ada Invented
          ingredients:
            - 3–4 ripe pears  # smashed
            - 1 egg
            - 3/4 cup of sugar
          steps:
            # The recipe: Preheat the oven to 350 degrees. (the timetable heats the oven itself)
            - step: stir all of it in a bowl
              takes: 15 min  # guessed: a share of the 15 min of preparation
              how: Stir all of it in a bowl. Add the oats last.
              guessed: [takes]
            - step: pour the batter into a loaf tin and bake for one hour
              where: oven at 350 F, 1 shelf  # guessed: from “bake”, “350 degrees”; 350 has no unit: taken as °F
              takes: 1 h  # guessed: from “one hour”
              # until: ? check with a thermometer
              guessed: [where, takes]
        """),
        "      ",
    )


def test_check_tells_how_many_guesses_there_are_until_each_is_confirmed() -> None:
    text = made(PARAGRAPH).text

    def told(text: str) -> list[str]:
        asked = [snag for snag in check(plan_with(text)) if snag.code == "unsure 1"]
        assert {snag.weight for snag in asked} <= {Weight.ASK}
        assert all("`platecall settle PLAN`" in snag.mend for snag in asked)
        return [snag.message for snag in asked]

    assert [each.partition(":")[0] for each in told(text)] == ["3 guesses are not confirmed"]
    fewer = told(text.replace("guessed: [where, takes]", "guessed: takes"))
    assert [each.partition(":")[0] for each in fewer] == ["2 guesses are not confirmed"]
    confirmed = "".join(line for line in text.splitlines(keepends=True) if not line.strip().startswith("guessed:"))
    assert told(confirmed) == []


def test_a_guess_without_its_line_is_told_at_the_list_and_another_word_is_refused() -> None:
    text = made(PARAGRAPH).text.replace("guessed: [takes]", "guessed: [attended]")
    found = next(snag for snag in check(plan_with(text)) if "`attended`" in snag.message)
    refused = read_plan(HEAD + text.replace("[attended]", "[look for]"), "supper.yaml")

    assert found.code == "unsure 1"
    assert found.place is not None
    assert "guessed: [attended]" in found.place.text
    assert isinstance(refused, list)
    assert [snag.code for snag in refused] == ["plan 7"]


def test_sections_steps_directions_and_tips() -> None:
    """https://schema.org/HowToSection, /HowToStep, /HowToDirection (performTime), /HowToTip, /ItemList, /ListItem."""
    value = recipe(
        recipeInstructions=[
            {
                "@type": "HowToSection",
                "name": "Filling",
                "itemListElement": [
                    {"@type": "HowToStep", "text": "Peel the quinces.", "performTime": "PT12M"},
                    {
                        "@type": "HowToStep",
                        "position": 2,
                        "itemListElement": [
                            {"@type": "HowToDirection", "position": 2, "text": "Cover with water."},
                            {"@type": "HowToDirection", "position": 1, "text": "Put them into a bowl."},
                            {"@type": "HowToTip", "position": 3, "text": "They brown fast."},
                        ],
                    },
                ],
            },
            {
                "@type": "ItemList",
                "itemListElement": {"@type": "ListItem", "item": {"@type": "HowToStep", "name": "Fold in the nuts"}},
            },
        ]
    )

    text = made(value).text
    found = dish(value).steps

    assert [step.step for step in found] == ["peel the quinces", "put them into a bowl", "cover with water",
                                             "fold in the nuts"]  # fmt: skip
    assert "# Filling\n" in text
    assert "brown fast" not in text
    assert found[0].takes is not None
    assert (found[0].takes.likely, found[0].guessed) == (12, [])  # the recipe says so itself


def test_graph_references_lists_and_types_in_full() -> None:
    """JSON-LD 1.1: the recipe in @graph, its steps by @id, @list and @value; types and keys by their whole address."""
    value = {
        "@graph": [
            {"@type": "WebPage", "mainEntity": {"@id": "#r"}},
            {"@id": "#s2", "@type": "HowToStep", "text": {"@value": "Fry for 5 minutes.", "@language": "en"}},
            {
                "@id": "#r",
                "@type": ["Thing", "https://schema.org/Recipe"],
                "schema:name": ["Barley cakes"],
                "http://schema.org/recipeInstructions": {"@list": ["Shape the cakes.", {"@id": "#s2"}]},
                "recipeIngredient": {"@list": ["200 g barley"]},
            },
        ]
    }

    found = made(value)

    assert (found.name, found.recipes) == ("Barley cakes", 1)
    assert [step.step for step in dish(value).steps] == ["shape the cakes", "fry for 5 minutes"]
    assert dish(value).ingredients[0].food == "barley"


PAGE = """<!DOCTYPE html><html><head><title>Loaf</title>
<!-- <script type="application/ld+json">{"@type": "Recipe", "name": "Commented out"}</script> -->
<script>var a = "<script type='application/ld+json'>";</script>
<script type="application/ld+json">{"@type": "WebSite", "name": "x"}</script>
<SCRIPT data-x="1" TYPE='application/ld+json; charset=utf-8'>
//<![CDATA[
%s
//]]>
</SCRIPT></head><body><h1>Loaf &amp; more</h1></body></html>"""


def test_a_page_is_read_for_its_script_of_json_ld_alone() -> None:
    found = dish_from((PAGE % json.dumps(PARAGRAPH)).encode())

    assert found.text == made(PARAGRAPH).text


def test_of_several_recipes_the_first_is_taken_and_their_number_told() -> None:
    page = PAGE % json.dumps([recipe(name="First", recipeInstructions="Stir."), recipe(recipeInstructions="Bake.")])

    found = dish_from(page.encode())

    assert (found.name, found.recipes) == ("First", 2)


@pytest.mark.parametrize(
    ("given", "serves"),
    [
        ("Serves 4-6", 4), ("4", 4), (6, 6), (["4", "4 servings"], 4), ("12 muffins", None), ("Makes 12 buns", None),
        ("12 buns (serves 6)", 6), ("6 to 8 portions", 6), ({"@type": "QuantitativeValue", "value": 8}, 8),
        ("for 10 people", 10), ("1 loaf", None), (4.0, 4), (0, None), (-3, None), (True, None), ("", None),
        (None, None),
        ("9999 servings", None), ([], None),
    ],
)  # fmt: skip
def test_yields(given: Any, serves: int | None) -> None:
    """https://schema.org/Recipe: recipeYield is Text or a QuantitativeValue."""
    assert dish(recipe(recipeInstructions="Stir.", recipeYield=given)).for_ == serves


@pytest.mark.parametrize(
    ("given", "food", "low", "high", "unit"),
    [
        ("1 1/2 cups plain flour", "plain flour", 1.5, 1.5, "cup"),
        ("1-1/2 cups plain flour", "plain flour", 1.5, 1.5, "cup"),
        ("1⁄2 tsp salt", "salt", 0.5, 0.5, "tsp"),
        ("1½ kg celeriac", "celeriac", 1.5, 1.5, "kg"),
        ("⅗ cup milk", "milk", 0.6, 0.6, "cup"),
        ("2&frac12; cups oats", "oats", 2.5, 2.5, "cup"),
        ("&frac14;&nbsp;cup <b>oil</b>", "oil", 0.25, 0.25, "cup"),
        ("2–3 tbsp oil", "oil", 2, 3, "tbsp"),
        ("3 or 4 pears", "pears", 3, 4, ""),
        ("two eggs", "eggs", 2, 2, ""),
        ("An onion", "onion", 1, 1, ""),
        ("half a lemon", "lemon", 0.5, 0.5, ""),
        ("2 T. vinegar", "vinegar", 2, 2, "tbsp"),
        ("2,5 dl cream", "cream", 2.5, 2.5, "dl"),
        ("1,500 g potatoes", "potatoes", 1500, 1500, "g"),
        ("A pinch of saffron", "saffron", None, None, "pinch"),
        ("Salt and pepper", "Salt and pepper", None, None, "to taste"),
        ("salt, to taste", "salt", None, None, "to taste"),
        ("a little oil", "oil", None, None, "to taste"),
        ("2 onions (finely chopped)", "onions", 2, 2, ""),
        ("400 g tomatoes, peeled and chopped (about 6)", "tomatoes", 400, 400, "g"),
        ("0 eggs", "0 eggs", None, None, "to taste"),
        ("5/0 cups air", "5/0 cups air", None, None, "to taste"),
    ],
)  # fmt: skip
def test_ingredients(given: str, food: str, low: float | None, high: float | None, unit: str) -> None:
    (found,) = dish(recipe(recipeInstructions="Stir.", recipeIngredient=[given])).ingredients

    assert (found.food, found.unit, found.section) == (food, unit, None)
    assert (found.low, found.high) == (pytest.approx(low) if low else None, pytest.approx(high) if high else None)


def test_what_a_recipe_says_of_allergens_is_never_lost() -> None:
    """A warning stays in the line, where guests are matched with it; `free from` is the label's word alone."""
    foods = ["100 g oats (free from gluten)", "1 bar chocolate, contains milk", "200 g flour free from gluten, sifted"]
    text = made(recipe(recipeIngredient=foods)).text

    assert "- 100 g oats  # free from gluten; read the label\n" in text
    assert "- 200 g flour  # free from gluten, sifted; read the label\n" in text
    assert "- 1 bar chocolate, contains milk  # contains milk; read the label\n" in text


@pytest.mark.parametrize(
    ("said", "low", "high"),
    [
        ("for 25 minutes", 25, 25), ("25–30 minutes", 25, 30), ("25 to 30 mins", 25, 30), ("for an hour", 60, 60),
        ("1 hour 30 minutes", 90, 90), ("1 1/2 hours", 90, 90), ("1½ hours", 90, 90), ("an hour and a half", 90, 90),
        ("half an hour", 30, 30), ("45 minutes to an hour", 45, 60), ("2-3 hrs", 120, 180), ("30 seconds", 1, 1),
        ("90 secs", 2, 2), ("about twenty minutes", 20, 20), ("3 minutes per side", 6, 6), ("a 20-minute", 20, 20),
        ("10 minutes, stirring every 2 minutes", 10, 10), ("5 minutes, add the rice and go on for 12 minutes", 17, 17),
        ("40 minutes (or 60 minutes from frozen)", 40, 40), ("30 to 20 minutes", 20, 30), ("0.5 hours", 30, 30),
    ],
)  # fmt: skip
def test_lengths_in_words(said: str, low: int, high: int) -> None:
    ((_, place, takes, guessed),) = steps(f"Simmer {said} with the lid on.")

    assert (place, takes) == ("stovetop", (low, high))
    assert {"where", "takes"} <= set(guessed)


@pytest.mark.parametrize(
    "said",
    [
        "Add a second layer.",
        "Stir after 5 minutes.",
        "It keeps for 3 days in a jar.",
        "Salt 30 minutes before serving.",
    ],
)
def test_what_is_no_length_of_the_step(said: str) -> None:
    ((_, _, takes, guessed),) = steps(said)

    assert takes == (10, 10)
    assert guessed == ["takes"]


@pytest.mark.parametrize(
    ("said", "celsius"),
    [
        ("Bake at 180°C for 20 minutes.", 180), ("Bake at 180C/160C fan/gas 4.", 180), ("Bake at fan 160C.", 160),
        ("Bake at 350°F (175°C).", 175), ("Bake at 350 F.", 176.7), ("Bake at 400 degrees.", 204.4),
        ("Bake at 200 degrees.", 200), ("Roast at gas mark 6.", 200), ("Roast in a hot oven.", 180),
        ("Bake 20 minutes until it reads 75°C inside.", 180), ("Grill for 5 minutes.", 240), ("Bake at 9000 C.", 180),
        ("Bake for 180 minutes.", 180),
    ],
)  # fmt: skip
def test_the_ovens_setting_in_words(said: str, celsius: float) -> None:
    assert settings(said) == [celsius]


def test_a_setting_goes_on_until_another_is_named_and_heating_is_no_step() -> None:
    said = (
        "Preheat the oven to 220°C/200°C fan and line a tin.",
        "Bake for 10 minutes, then bake at 160°C for 1 hour.",
        "Roast the crumbs.",
    )

    assert settings(*said) == [None, 220, 160, 160]
    assert steps(*said)[0][0] == "line a tin"


def test_places_in_words() -> None:
    found = steps(
        "Mix the flour and the butter. Press into the tin.",
        "Chill for 30 minutes.",
        "Freeze overnight.",
        "Fry the onions for 5 minutes. Add the chilli.",
        "Leave to rise for 1 hour.",
        "Remove from the oven, add the rest of the brown sugar, and serve with baked beans.",
    )

    assert [place for _, place, _, _ in found] == [None, "fridge", "freezer", "stovetop", "worktop", None]
    assert found[2][2] == (480, 480)


def test_what_runs_by_itself_needs_hands_only_now_and_then() -> None:
    long, short, rise = dish(recipe(recipeInstructions=["Simmer for 1 hour.", "Simmer for 5 minutes.",
                                                        "Leave to rise for 1 hour."])).steps  # fmt: skip

    assert long.attended is not None
    assert (long.attended.start, long.attended.every, long.attended.whole) == (3, 10, False)
    assert short.attended is None
    assert rise.attended is not None
    assert "attended" in long.guessed
    assert "attended" in rise.guessed


@pytest.mark.parametrize("said", ["Roast the chicken until it reaches 74°C.", "Simmer until 165 F inside, 20 minutes."])
def test_when_food_is_cooked_through_is_never_guessed(said: str) -> None:
    text = made(recipe(recipeInstructions=said)).text
    (step,) = plan_with(text).plan.courses[0].dishes[0].steps

    assert step.until is None
    assert step.cooks is None
    assert "# until: ? check with a thermometer\n" in text


def test_times_of_the_whole_are_shared_by_what_has_none() -> None:
    """https://schema.org/Recipe: prepTime, cookTime, totalTime as ISO 8601 durations."""
    said = ["Peel.", "Chop.", "Fry.", "Simmer for 20 minutes."]

    assert [t for _, _, t, _ in steps(*said, prepTime="PT30M", cookTime="PT0H35M")] == [
        (15, 15), (15, 15), (15, 15), (20, 20)
    ]  # fmt: skip
    assert [t for _, _, t, _ in steps(*said, totalTime="PT50M")] == [(10, 10), (10, 10), (10, 10), (20, 20)]
    assert [t for _, _, t, _ in steps(*said, prepTime="soon", cookTime="PT0M")] == [(10, 10)] * 3 + [(20, 20)]


def test_numbered_lines_and_markup_in_one_text() -> None:
    said = "<p>1. Peel the beets.</p><ol><li>Step 2: Slice them &ndash; thin.</li></ol>3) Dress&nbsp;them\n\n4. Serve"

    assert [name for name, *_ in steps(said)] == ["peel the beets", "slice them – thin", "dress them", "serve"]


def test_long_and_doubled_instructions_stay_apart_and_whole_in_a_remark() -> None:
    long = "Stir " + "and stir " * 60
    text = made(recipe(recipeInstructions=[long, "Stir.", "Stir."])).text
    names = [step.step for step in plan_with(text).plan.courses[0].dishes[0].steps]

    assert len(names[0]) <= 75
    assert names[1:] == ["stir", "stir (2)"]
    assert text.replace("\n          # ", " ").count("and stir") >= 60


def test_what_a_recipe_does_not_say_is_left_to_the_host() -> None:
    foods_only = made(recipe(recipeIngredient=["1 egg"])).text

    assert "the recipe has no steps; write them here" in foods_only
    assert [step.step for step in plan_with(foods_only).plan.courses[0].dishes[0].steps] == ["prepare the dish"]
    assert dish({"@type": "Recipe", "recipeInstructions": ["Stir."]}).dish == "Dish from a recipe"


def foods(value: Any) -> list[tuple[float | None, str, str]]:
    return [(each.low, each.unit, each.food) for each in dish(value).ingredients]


TART = [(100, "g", "peanuts"), (1, "", "egg"), (200, "g", "flour")]


@pytest.mark.parametrize(
    "listed",
    [
        {"recipeIngredient": [["100 g peanuts", "1 egg"], "200 g flour"]},
        {"recipeIngredient": {"@list": [{"@list": ["100 g peanuts", ["1 egg"]]}, "200 g flour"]}},
        {"recipeIngredient": "100 g peanuts", "ingredients": ["100 g Peanuts", "1 egg"], "supply": ["200 g flour"]},
        {"recipeIngredient": [{"@type": "PropertyValue", "name": "peanuts", "value": "100 g"},
                              {"@type": "PropertyValue", "name": "egg", "value": 1},
                              {"name": "flour", "value": 200, "unitCode": "GRM"}]},
        {"recipeIngredient": [{"@type": "PropertyValue", "name": "peanuts", "value": 100, "unitText": "g"},
                              {"@type": "HowToSupply", "name": "egg", "requiredQuantity": 1},
                              {"name": ["flour"], "value": {"@type": "QuantitativeValue", "value": 200,
                                                            "unitText": "g"}}]},
        {"recipeIngredient": {"itemListElement": [{"@type": "ListItem", "item": {"name": "100 g peanuts"}},
                                                  {"item": [{"text": "1 egg"}]}, {"name": "200 g flour"}]}},
    ],
)  # fmt: skip
def test_no_ingredient_is_lost_by_the_form_it_is_written_in(listed: dict[str, Any]) -> None:
    """https://schema.org/recipeIngredient (Text, ItemList or PropertyValue), /ingredients (the older name),
    /PropertyValue, /HowToSupply, /unitCode (UN/CEFACT Recommendation 20: GRM is gram); JSON-LD 1.1 for @list."""
    assert foods(recipe(recipeInstructions="Bake.", **listed)) == TART


def test_the_same_recipe_said_twice_on_a_page_is_read_twice() -> None:
    """JSON-LD 1.1, 3.3: nodes of one @id are one node. Beside it, older markup of the same recipe."""
    twice = [recipe(**{"@id": "#a", "recipeIngredient": ["100 g peanuts"], "recipeInstructions": "Bake."}),
             {"@id": "#a", "@type": "Recipe", "ingredients": ["1 egg"]}]  # fmt: skip
    item = "<div itemscope itemtype='https://schema.org/Recipe'><b itemprop=name>{}</b><i itemprop={}>{}</i></div>"
    page = f"<script type='application/ld+json'>{json.dumps(twice)}</script>"
    page += item.format("Lantern loaf", "ingredients", "200 g flour") + item.format("Other", "ingredients", "1 leek")

    found = plan_with(dish_from(page.encode()).text).plan.courses[0].dishes[0]

    assert [(each.low, each.unit, each.food) for each in found.ingredients] == TART


def test_an_ingredient_that_cannot_be_read_is_told() -> None:
    deep: Any = "1 egg"
    for _ in range(40):
        deep = [deep]
    found = made(recipe(recipeIngredient=["1 leek", {"image": "x.png"}, deep], recipeInstructions="Bake."))

    assert "2 entries among the recipe's ingredients could not be read" in found.text


@pytest.mark.parametrize(
    ("said", "where", "told"),
    [
        ("Bake at 350 for 90 minutes.", "350 F", "350 has no unit: taken as °F"),
        ("Bake at 180 until golden.", "180 C", "180 has no unit: taken as °C"),
        ("Bake in a 350 degree oven.", "350 F", "350 has no unit: taken as °F"),
        ("Bake at 350 °F.", "350 F", ""),
        ("Bake for 90 minutes.", "180 C", "no setting is given"),
    ],
)
def test_a_setting_without_a_unit_says_so(said: str, where: str, told: str) -> None:
    text = made(recipe(recipeInstructions=said)).text

    assert f"oven at {where}" in text
    assert (told in text) if told else ("no unit" not in text)
    assert (told == "no setting is given") == ("no setting is given" in text)
