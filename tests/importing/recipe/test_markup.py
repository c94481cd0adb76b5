"""Microdata (HTML Living Standard, 5.2) and RDFa (RDFa Lite 1.1, W3C); whose recipe it is, its language, and what is no
recipe at all."""

import json
from typing import Any

import pytest

from board.importing.recipe.dish import dish_from
from board.importing.recipe.documents import NotARecipe
from board.importing.recipe.markup import page_of
from tests.importing.recipe.test_dish import dish, made, plan_with, recipe

MICRODATA = """<!DOCTYPE html><html><head><link rel="canonical" href="https://example.org/cakes">
<meta property="og:site_name" content="Our table"></head><body>
<div itemscope itemtype="https://schema.org/Recipe"><h1 itemprop="name">Barley &amp; leek cakes</h1>
<p>By <span itemprop="author" itemscope itemtype="https://schema.org/Person"><b itemprop="name">Ada Invented</b></span>
<meta itemprop="recipeYield" content="Serves 4"><time itemprop="prepTime" datetime="PT15M">a quarter</time>
<ul><li itemprop="recipeIngredient">200 g pearl <em>barley</em><li itemprop="recipeIngredient">2 leeks</ul>
<div itemprop="recipeInstructions"><h2>Method</h2><ol><li>Shape the cakes.<li>Fry for 5&nbsp;minutes.</ol>
<script>alert(1)</script></div></div>"""


def test_microdata() -> None:
    found = plan_with(dish_from(MICRODATA.encode()).text).plan.courses[0].dishes[0]

    assert (found.dish, found.for_) == ("Barley & leek cakes", 4)
    assert [each.food for each in found.ingredients] == ["pearl barley", "leeks"]
    assert [step.step for step in found.steps] == ["shape the cakes", "fry for 5 minutes"]
    assert found.source == "Ada Invented, Our table, https://example.org/cakes"


def test_values_of_microdata() -> None:
    """HTML Living Standard, 5.2.4: content, href, src, datetime, value; else the text."""
    text = """<div itemscope itemtype=x/Recipe><meta itemprop=a content=1><a itemprop=b href=2>no</a><img itemprop=c
    src=3><time itemprop=d datetime=4>no</time><data itemprop=e value=5>no</data><p itemprop="f g">6<br>7</p></div>"""
    (node,) = page_of(text).microdata

    assert node == {"@type": ["Recipe"], "a": ["1"], "b": ["2"], "c": ["3"], "d": ["4"], "e": ["5"], "f": ["6\n7"],
                    "g": ["6\n7"]}  # fmt: skip


def test_rdfa_with_and_without_a_prefix() -> None:
    page = """<div {0} typeof="{1}Recipe"><b property="{1}name">Ring</b><i property="{1}recipeIngredient">1 egg</i>
    <p property="{1}recipeInstructions" typeof="{1}HowToStep"><i property="{1}text">Boil for 4 minutes.</i></div>"""
    for start, prefix in (('vocab="https://schema.org/"', ""), ('prefix="s: https://schema.org/"', "s:")):
        found = plan_with(dish_from(page.format(start, prefix).encode()).text).plan.courses[0].dishes[0]

        assert (found.dish, found.ingredients[0].food) == ("Ring", "egg")
        assert [step.step for step in found.steps] == ["boil for 4 minutes"]


def test_broken_json_is_no_loss_where_the_page_says_it_in_microdata_too() -> None:
    broken = MICRODATA.replace("</head>", '<script type="application/ld+json">{broken</script></head>')

    assert dish_from(broken.encode()).name == "Barley & leek cakes"


def test_of_two_markups_of_one_recipe_one_is_taken() -> None:
    script = json.dumps(recipe(name="By JSON", recipeInstructions="Stir."))
    twice = MICRODATA.replace("</head>", f'<script type="application/ld+json">{script}</script></head>')

    assert (dish_from(twice.encode()).name, dish_from(twice.encode()).recipes) == ("By JSON", 1)


@pytest.mark.parametrize(
    "page",
    [
        "<div itemscope itemtype=x/Recipe>" + ("<i itemprop=name>" * 240 + "x" + "</i>" * 240) * 600,
        "<div itemscope itemtype=x/Recipe>" + "<div itemprop=a itemscope>" * 100_000,
        "<div typeof=Recipe><p property='" + "a " * 500_000 + "'>x",
        "<div>" * 200_000,
    ],
    ids=["properties within properties", "items within items", "a million names", "depth"],
)
def test_markup_without_end_is_given_up_soon(page: str) -> None:
    with pytest.raises(NotARecipe):
        dish_from(page.encode())


@pytest.mark.parametrize(
    ("more", "source"),
    [
        ({"author": "Ada Invented", "url": "https://example.org/1"}, "Ada Invented, https://example.org/1"),
        ({"author": [{"name": "Ada"}, {"name": "Bo"}], "publisher": {"name": "Our table"}}, "Ada, Bo, Our table"),
        ({"author": {"@id": "#us"}, "mainEntityOfPage": {"@id": "https://example.org/2"}}, "Us"),
        ({"author": "https://example.org/ada", "url": "javascript:alert(1)"}, None),
        ({"author": "A\x1b[31m\u202eda <b>I</b>", "publisher": "A" * 5000}, "A\ufffd[31m\ufffdda I, " + "A" * 100),
        ({}, None),
    ],
)
def test_whose_recipe_it_is_stays_with_the_dish(more: dict[str, Any], source: str | None) -> None:
    us = {"@type": "Person", "@id": "#us", "name": "Us"}
    found = dish([recipe(recipeInstructions="Stir.", **more), us]).source

    assert found == source


@pytest.mark.parametrize(
    ("language", "foods", "steps"),
    [
        ("German", ["2 EL Öl", "250 g Mehl", "3 Eier"],
         "Die Butter mit dem Zucker rühren. Den Teig mit den Eiern in eine Form geben und für 40 Minuten backen."),
        ("French", ["2 c. à soupe d'huile", "250 g de farine"],
         "Mélanger la farine et le beurre dans un saladier. Ajouter les œufs, puis faire cuire pendant 30 minutes."),
        ("Spanish", ["2 cucharadas de aceite", "250 g de harina"],
         "Mezclar la harina con el agua y la sal. Añadir los huevos y dejar por una hora hasta que suba la masa."),
        ("Italian", ["2 cucchiai di olio", "250 g di farina"],
         "Versare la farina in una ciotola e aggiungere il latte. Cuocere per 30 minuti con il burro e lo zucchero."),
    ],
)  # fmt: skip
def test_another_language_is_noticed_and_nothing_guessed_from_it(language: str, foods: list[str], steps: str) -> None:
    found = made(recipe(recipeIngredient=foods, recipeInstructions=steps))
    taken = plan_with(found.text).plan.courses[0].dishes[0]

    assert found.language == language
    assert f"not English ({language})" in found.text
    assert all(step.where is None for step in taken.steps)
    assert (taken.ingredients[0].low, taken.ingredients[1].low) == (None, 250)
    assert "not English: read the amount again" in found.text


def test_english_is_no_other_language_and_another_script_is_told() -> None:
    assert made(recipe(recipeInstructions="Die-cut the pastry, then le voilà: serve it with a purée.")).language == ""
    assert made(recipe(recipeInstructions="Смешать муку с водой и солью.")).language == "another script"


def test_a_recipe_without_foods_and_steps_is_refused() -> None:
    with pytest.raises(NotARecipe, match="neither ingredients nor steps"):
        made(recipe(author="Ada", recipeIngredient=[], recipeInstructions=[{"@type": "HowToTip", "text": "Taste."}]))


@pytest.mark.parametrize(
    ("given", "serves"),
    [
        ("54 cookies", None), ("1 loaf", None), ("24 muffins", None), ("2 litres", None), (["24", "24 cookies"], None),
        ("Servings: 24 cookies", None), ("Serves four", 4), ("Serves 4 as a main, 6 as a starter", 4),
        ("6 as a starter", 6), ("Enough for 12 muffins", None), ("Enough for 6 hungry people", 6),
        ("8 wedges (8 servings)", 8), ("Makes 4 servings", 4),
    ],
)  # fmt: skip
def test_only_people_and_servings_are_eaters(given: Any, serves: int | None) -> None:
    found = made(recipe(recipeInstructions="Stir.", recipeYield=given)).text

    assert plan_with(found).plan.courses[0].dishes[0].for_ == serves
    assert ("# for: ?" in found) == (serves is None)
