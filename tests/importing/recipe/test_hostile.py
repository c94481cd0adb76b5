"""Files that mean no good, or are broken: one clear message or a dish that a plan takes, soon, and never a fault."""

import json
import time
import unicodedata
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from board.importing.recipe import words
from board.importing.recipe.dish import dish_from
from board.importing.recipe.documents import NotARecipe
from board.plan.load import PlanFile
from tests.importing.recipe.test_dish import made, plan_with, recipe

OPEN = '<script type="application/ld+json">'
MANY = 500_000


def told(data: bytes | str) -> str:
    with pytest.raises(NotARecipe) as wrong:
        dish_from(data.encode() if isinstance(data, str) else data)
    return str(wrong.value)


NONE: dict[str, tuple[bytes | str, str]] = {
    "nothing": ("", "no recipe"),
    "words": ("Just words.", "no recipe"),
    "a page without one": ("<html><p>No recipe here</p></html>", "no recipe"),
    "an empty object": ("{}", "no recipe"),
    "numbers": ("[1, 2]", "no recipe"),
    "a recipe that says nothing": ('{"@type": "Recipe"}', "no recipe"),
    "a person": ('{"@type": "Person", "name": "Ada"}', "no recipe"),
    "half an object": ('{"@type": ', "not JSON"),
    "brackets": ("{" * 40, "not JSON"),
    "lists without end": ("[" * MANY, "nested too deeply"),
    "objects without end": ('{"@type":' * (MANY // 2), "nested too deeply"),
    "a page of broken markup": (OPEN + "{broken</script>", "not JSON"),
    "a page of lists without end": (OPEN + "[" * MANY, "nested too deeply"),
    "a page about a person": (OPEN + '{"@type": "Person"}</script>', "no recipe"),
    "a long text": ("x" * 4_000_001, "too large"),
    "a picture": (b"\x89PNG\r\n\x1a\n\x00\xff\xfe" * 50, "no recipe"),
    "zeros": (b"\x00" * 1000, "no recipe"),
    "half a sign": (b"\xff\xfe\x00", "no recipe"),
    "many megabytes": (b"x" * 17_000_000, "too large"),
    "half a million nodes": (json.dumps([[{}] * 1000] * 500), "too large"),
}


@pytest.mark.parametrize("which", NONE)
def test_what_is_no_recipe_is_told_in_one_line(which: str) -> None:
    data, said = NONE[which]

    message = told(data)

    assert said in message
    assert "\n" not in message


@pytest.mark.parametrize(
    "sign",
    [
        "<",
        "<!",
        "<!--",
        "</",
        "<?",
        "<a ",
        "&",
        "&#",
        "<a b='",
        "<![CDATA[",
        OPEN,
        "<script ",
        "<script>",
        '<script a="',
    ],
)
def test_a_page_without_end_is_given_up_soon(sign: str) -> None:
    """The parser of the standard library takes hours over some of these."""
    began = time.perf_counter()

    told(sign * (1_000_000 // len(sign)))

    assert time.perf_counter() - began < 5


@pytest.mark.parametrize("depth", [20, 400])
def test_instructions_nested_without_end(depth: int) -> None:
    opened, closed = '{"@type": "HowToSection", "itemListElement": [' * depth, "]}" * depth
    food = '"recipeIngredient": "1 egg"'
    text = f'{{"@type": "Recipe", "name": "Onion", {food}, "recipeInstructions": {opened}"Stir."{closed}}}'

    (step,) = plan_with(dish_from(text.encode()).text).plan.courses[0].dishes[0].steps

    assert step.step == ("stir" if depth == 20 else "prepare the dish")


def test_nodes_that_hold_one_another() -> None:
    ring = [
        {"@type": "Recipe", "@id": "#a", "name": "Ring", "recipeInstructions": [{"@id": "#b"}, {"@id": "#a"}, "Stir."]},
        {"@type": "HowToSection", "@id": "#b", "itemListElement": [{"@id": "#c"}, {"@id": "#b"}]},
        {"@type": "HowToSection", "@id": "#c", "itemListElement": [{"@id": "#b"}, {"@type": "HowToStep", "@id": "#c"}]},
    ]

    assert [step.step for step in plan_with(made(ring).text).plan.courses[0].dishes[0].steps] == ["ring", "stir"]


def test_references_do_not_multiply_what_a_small_file_holds() -> None:
    nodes: list[Any] = [{"@id": f"#{n}", "itemListElement": [{"@id": f"#{n + 1}"}] * 10} for n in range(30)]
    value = [
        recipe(recipeInstructions={"@id": "#0"}, recipeIngredient="1 egg"),
        *nodes,
        {"@id": "#30", "text": "Stir."},
    ]
    began = time.perf_counter()

    made(value)

    assert time.perf_counter() - began < 2


def test_megabytes_of_steps_and_foods_end_somewhere_and_say_so() -> None:
    value = recipe(recipeInstructions=["Stir. " * 30] * 3000, recipeIngredient=["1 egg"] * 3000, name="Long " * 9000)

    text = made(value).text

    assert plan_with(text)
    assert "2920 more steps were left out" in text
    assert "2850 more ingredients were left out" in text


def test_control_signs_and_scripts_stay_words() -> None:
    evil = 'x\x1b]0;Y\x07\u202ez: "{*a &b !!python/object} # c\n- d\t\ufffe\ud800 <script>alert(1)</script>'
    found = made(recipe(name=evil, recipeIngredient=[evil], recipeYield=evil, recipeInstructions=[evil]))

    for sign in found.text:
        assert sign == "\n" or unicodedata.category(sign) not in ("Cc", "Cs", "Cf", "Cn")
    (dish,) = plan_with(found.text).plan.courses[0].dishes
    assert dish.dish.startswith('x\ufffd]0;Y\ufffd\ufffdz: "{*a &b !!python/object} # c - d')
    assert len(dish.steps) == 2


def test_numbers_that_are_none() -> None:
    text = (
        '{"@type": "Recipe", "name": NaN, "recipeYield": Infinity, "cookTime": -Infinity, "prepTime": 1e999, '
        f'"recipeInstructions": ["Stir."], "totalTime": {"9" * 6000}, "recipeIngredient": [NaN, 1e999, {"1" * 300}]}}'
    )

    assert dish_from(text.encode()).name == "Dish from a recipe"
    assert plan_with(dish_from(text.encode()).text)


@pytest.mark.parametrize(
    ("encoding", "declared"),
    [("utf-8", ""), ("utf-8-sig", ""), ("utf-16", ""), ("utf-16-le", ""), ("utf-16-be", ""), ("cp1252", ""),
     ("cp1252", "ISO-8859-1"), ("cp1250", "windows-1250")],
)  # fmt: skip
def test_encodings(encoding: str, declared: str) -> None:
    value = json.dumps(recipe(name="Käse für später", recipeInstructions="Rühren."), ensure_ascii=False)
    page = f'<html><meta charset="{declared}">{OPEN}{value}</script>'

    assert dish_from(page.encode(encoding)).name == "Käse für später"


@pytest.mark.parametrize("declared", ["zip", "idna", "unicode_escape", "no-such", "utf-7", "base64"])
def test_an_encoding_that_is_none_is_not_obeyed(declared: str) -> None:
    value = json.dumps(recipe(name="K\xe4se", recipeInstructions="Stir."), ensure_ascii=False)
    page = f'<html><meta charset="{declared}">{OPEN}{value}</script>'

    assert dish_from(page.encode("cp1252")).name == "K\ufffdse"


TEXT = st.text(max_size=60) | st.sampled_from(
    ["Bake at 180C for 25-30 minutes", "Simmer for ½ hour", "1 1/2 cups oil (x)", "PT20M", "Serves 4", "#a", "Recipe",
     "HowToStep", "HowToSection", "Preheat the oven to 200C and stir", "0/0 a", "1,500 g x", "a a", "Chill overnight"]
)  # fmt: skip
KEYS = st.sampled_from(
    ["@type", "@id", "@graph", "@value", "@list", "name", "text", "recipeYield", "recipeIngredient", "value",
     "itemListElement", "item", "position", "performTime", "prepTime", "cookTime", "totalTime", "schema:name",
     "recipeInstructions"]
)  # fmt: skip
JSON = st.recursive(
    TEXT | st.none() | st.booleans() | st.integers() | st.floats(),
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(KEYS, inner, max_size=5),
    max_leaves=25,
)


@settings(deadline=None)
@given(st.dictionaries(KEYS, JSON, max_size=8))
def test_whatever_stands_in_it_a_recipe_becomes_a_dish_that_a_plan_takes(value: dict[str, Any]) -> None:
    try:
        text = made({"name": "x", **value, "@type": "Recipe"}).text
    except NotARecipe as wrong:
        if str(wrong) != words.RECIPE_EMPTY:
            raise
        return

    assert isinstance(plan_with(text), PlanFile)


@settings(deadline=None)
@given(st.lists(TEXT, min_size=1, max_size=5), st.lists(TEXT, max_size=5), TEXT)
def test_whatever_its_words_every_line_is_read(steps: list[str], foods: list[str], name: str) -> None:
    text = made(recipe(name=name, recipeInstructions=steps, recipeIngredient=[*foods, "1 egg"], recipeYield=name)).text

    assert isinstance(plan_with(text), PlanFile)


@settings(deadline=None)
@given(st.binary(max_size=300) | st.text(max_size=300).map(str.encode))
def test_whatever_the_bytes_it_is_told(data: bytes) -> None:
    for whole in (data, OPEN.encode() + data, b'{"@type": "Recipe", "name": "' + data + b'"}'):
        try:
            text = dish_from(whole).text
        except NotARecipe:
            continue
        assert plan_with(text)
