"""A hundred saved pages of our own, each with the truth beside it: `pages/recipes.txt` in many shapes and wordings.

In the file, `= name` begins a recipe; `yield: words -> eaters`; `- line => amount and food`; `* sentence => place and
minutes` begins an instruction, `+` goes on with it. Places: hand, ring, oven, grill, fridge, freezer, rest, an
appliance; `heat` an oven heated up, `none` what is no work at all. All wording and figures are ours.
"""

import html
import json
import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

WRITTEN = Path(__file__).parent / "pages" / "recipes.txt"


@dataclass(frozen=True)
class Line:
    said: str
    truth: str


@dataclass(frozen=True)
class Written:
    name: str
    yields: Line
    foods: tuple[Line, ...]
    instructions: tuple[tuple[Line, ...], ...]

    @property
    def acts(self) -> list[Line]:
        return [act for each in self.instructions for act in each]

    def texts(self) -> list[str]:
        return [" ".join(act.said for act in each) for each in self.instructions]


@dataclass(frozen=True)
class Page:
    written: Written
    shape: str
    data: bytes
    held_out: bool


def written() -> list[Written]:
    found = []
    for block in WRITTEN.read_text(encoding="utf-8").split("\n= "):
        name, *lines = block.strip().removeprefix("= ").splitlines()
        foods: list[Line] = []
        instructions: list[list[Line]] = []
        yields = Line("", "?")
        for line in lines:
            said, _, truth = re.split(r"\s(=>|->)\s", line)
            if line.startswith("yield: "):
                yields = Line(said.removeprefix("yield: "), truth)
            elif line.startswith("- "):
                foods.append(Line(said[2:], truth))
            elif line.startswith("* "):
                instructions.append([Line(said[2:], truth)])
            else:
                instructions[-1].append(Line(said[2:], truth))
        found.append(Written(name, yields, tuple(foods), tuple(map(tuple, instructions))))
    return found


# Other ways to write the same: unit words, fractions, ranges, degrees.
SPELT = (
    (r"(?<=\d)\s?g\b", " grams"), (r"(?<=\d)\s?kg\b", " kilograms"), (r"(?<=\d) ?ml\b", " millilitres"),
    (r"\btbsp\b", "tablespoons"), (r"\btsp\b", "teaspoons"), ("½", " 1/2"), ("¼", " 1/4"), ("–", " to "),
    (r"\bminutes\b", "mins"), (r"°C\b", " degrees C"), (r"\b(\d) hours\b", r"\1 hrs"),
)  # fmt: skip
CLIPPED = (
    (r"(?<=\d) g\b", "g"), (r"(?<=\d) ml\b", "ml"), (r"\btablespoons?\b", "Tbsp"), (r"\bteaspoons?\b", "tsp."),
    (r"\b1 1/2\b", "1½"), (r"(?<!\d )\b1/2\b", "½"), (r"(?<!\d )\b1/4\b", "¼"), ("–", "-"), (r"\bminutes\b", "min"),
    (r"\bpounds\b", "lbs"), (r"\bhours\b", "hrs"),
)  # fmt: skip


def reworded(recipe: Written, rules: tuple[tuple[str, str], ...]) -> Written:
    def of(line: Line) -> Line:
        said = line.said
        for pattern, new in rules:
            said = re.sub(pattern, new, said)
        return Line(re.sub(r" {2,}", " ", said).strip(), line.truth)

    return replace(
        recipe, foods=tuple(map(of, recipe.foods)), instructions=tuple(tuple(map(of, i)) for i in recipe.instructions)
    )


def _node(recipe: Written, instructions: Any, **more: Any) -> dict[str, Any]:
    foods = [food.said for food in recipe.foods]
    return {"@context": "https://schema.org", "@type": "Recipe", "name": recipe.name, "recipeYield": recipe.yields.said,
            "recipeIngredient": foods, "recipeInstructions": instructions, **more}  # fmt: skip


def _steps(recipe: Written) -> list[dict[str, Any]]:
    return [{"@type": "HowToStep", "text": text} for text in recipe.texts()]


def _ld(value: Any, body: str = "") -> str:
    script = f'<script type="application/ld+json">{json.dumps(value, ensure_ascii=False)}</script>'
    return f"<!DOCTYPE html><html lang=en><head><meta charset=utf-8>{script}</head><body>{body}</body></html>"


def graph(recipe: Written) -> str:
    steps = [{**step, "@id": f"#s{n}"} for n, step in enumerate(_steps(recipe))]
    node = _node(recipe, [{"@id": step["@id"]} for step in steps], **{"@id": "#recipe", "author": {"@id": "#us"}})
    us = {"@type": "Organization", "@id": "#us", "name": "Kitchen of our own"}
    return _ld({"@graph": [{"@type": "WebPage", "mainEntity": {"@id": "#recipe"}}, us, *steps, node]})


def sections(recipe: Written) -> str:
    half = len(recipe.instructions) // 2
    steps = _steps(recipe)
    parts = [{"@type": "HowToSection", "name": name, "itemListElement": inner}
             for name, inner in (("Get ready", steps[:half]), ("Cook", steps[half:]))]  # fmt: skip
    return _ld(_node(recipe, parts))


def paragraph(recipe: Written) -> str:
    return _ld(_node(recipe, " ".join(recipe.texts())))


def strings(recipe: Written) -> str:
    return json.dumps([_node(recipe, recipe.texts())])


def numbered(recipe: Written) -> str:
    return _ld([_node(recipe, "\n".join(f"{n}. {text}" for n, text in enumerate(recipe.texts(), 1)))])


def entities(recipe: Written) -> str:
    node = _node(recipe, "".join(f"<p>{html.escape(text)}</p>" for text in recipe.texts()))
    node["recipeIngredient"] = [
        html.escape(food.said).replace("½", "&frac12;").replace(" ", "&nbsp;", 1) for food in recipe.foods
    ]
    return _ld({"@type": ["Article"], "mainEntity": node})


def several(recipe: Written) -> str:
    other = {"@type": "Recipe", "name": "Another one", "recipeInstructions": "Stir.", "recipeIngredient": ["1 egg"]}
    return _ld([{"@type": "WebSite", "name": "Ours"}, _node(recipe, _steps(recipe)), other])


def microdata(recipe: Written) -> str:
    foods = "".join(f"<li itemprop=recipeIngredient>{html.escape(food.said)}" for food in recipe.foods)
    steps = "".join(f'<li itemprop="recipeInstructions">{html.escape(text)}</li>' for text in recipe.texts())
    return (
        f"<!DOCTYPE html><html><body><nav><ul><li>Home<li>All</ul></nav><div itemscope "
        f'itemtype="https://schema.org/Recipe"><h1 itemprop=name>{html.escape(recipe.name)}</h1><p>By <span '
        f'itemprop=author>Ada Invented</span><p itemprop="recipeYield">{recipe.yields.said}<ul>{foods}</ul>'
        f"<ol>{steps}</ol></div></body></html>"
    )


def microdata_block(recipe: Written) -> str:
    foods = "".join(
        f'<tr><td><span itemprop="ingredients"><b>{html.escape(food.said)}</b></span>' for food in recipe.foods
    )
    steps = "".join(f"<li><span>{html.escape(text)}</span></li>" for text in recipe.texts())
    return (
        f'<html><body itemscope itemtype="http://schema.org/Recipe"><meta itemprop="name" '
        f'content="{html.escape(recipe.name)}"><meta itemprop=recipeYield content="{recipe.yields.said}">'
        f"<table>{foods}</table><div itemprop=recipeInstructions><h3>Method</h3><ol>{steps}</ol></div>"
    )


def microdata_nested(recipe: Written) -> str:
    steps = "".join(
        f'<div itemprop="recipeInstructions" itemscope itemtype="https://schema.org/HowToStep"><img src="{n}.jpg" '
        f'itemprop="image"><p itemprop="text">{html.escape(text)}</p></div>'
        for n, text in enumerate(recipe.texts())
    )
    foods = "".join(f"<p itemprop=recipeIngredient>{html.escape(food.said)}</p>" for food in recipe.foods)
    return (
        f'<html><body><article itemscope itemtype="https://schema.org/Recipe"><span itemprop="author" itemscope '
        f'itemtype="https://schema.org/Person"><i itemprop="name">Ada Invented</i></span><h2 itemprop="name">'
        f'{html.escape(recipe.name)}</h2><b itemprop="recipeYield">{recipe.yields.said}</b>{foods}{steps}</article>'
    )


def rdfa(recipe: Written) -> str:
    foods = "".join(f'<li property="recipeIngredient">{html.escape(food.said)}</li>' for food in recipe.foods)
    steps = "".join(f'<p property="recipeInstructions">{html.escape(text)}</p>' for text in recipe.texts())
    return (
        f'<html><body vocab="https://schema.org/"><div typeof="Recipe"><h1 property="name">{html.escape(recipe.name)}'
        f'</h1><span property="recipeYield" content="{recipe.yields.said}">some</span><ul>{foods}</ul>{steps}</div>'
    )


def rdfa_prefixed(recipe: Written) -> str:
    foods = "".join(f'<li property="schema:recipeIngredient">{html.escape(food.said)}</li>' for food in recipe.foods)
    steps = "".join(
        f'<li property="schema:recipeInstructions" typeof="schema:HowToStep"><span property="schema:text">'
        f"{html.escape(text)}</span></li>"
        for text in recipe.texts()
    )
    return (
        f'<html prefix="schema: https://schema.org/"><body><div typeof="schema:Recipe"><h1 property="schema:name">'
        f'{html.escape(recipe.name)}</h1><meta property="schema:recipeYield" content="{recipe.yields.said}">'
        f"<ul>{foods}</ul><ol>{steps}</ol></div>"
    )


FIRST = 34  # written later, and in other voices, when the reader was done
SHAPES: tuple[Callable[[Written], str], ...] = (
    graph, microdata, sections, rdfa, paragraph, microdata_nested, strings, rdfa_prefixed, numbered, microdata_block,
    entities, several,
)  # fmt: skip


def pages() -> Iterator[Page]:
    """Each recipe in three wordings and shapes; every third recipe is held out."""
    for number, recipe in enumerate(written()):
        for way, rules in enumerate(((), SPELT, CLIPPED)):
            own = reworded(recipe, rules)
            shape = SHAPES[(number * 3 + way * 5) % len(SHAPES)]
            yield Page(own, shape.__name__, shape(own).encode(), number % 3 == 2 or number >= FIRST)
