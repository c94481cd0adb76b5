"""A recipe file → a dish for a plan, to paste under a course's `dishes:`. Pure: bytes in, text out."""

import textwrap
from collections.abc import Iterator
from dataclasses import dataclass

from board.importing.recipe import words
from board.importing.recipe.documents import documents, text_of
from board.importing.recipe.drafting import Draft, drafts
from board.importing.recipe.finding import find_recipe
from board.importing.recipe.foods import foods_of
from board.importing.recipe.reading import Recipe, read_recipe
from board.plan.edit.yaml_text import scalar

INDENT = " " * 6  # indent of a course's dishes in the bundled plans
WIDEST = 110
LONGEST_REMARK = 160


@dataclass(frozen=True)
class DishText:
    """`text`: YAML with comments. `recipes`: how many the file holds; the first was taken. `language`: of
    its words, where that is not English."""

    name: str
    text: str
    recipes: int
    language: str = ""


def dish_from(data: bytes) -> DishText:
    """The first recipe of a file as a dish. Raises documents.NotARecipe, in words for the host."""
    found = find_recipe(documents(text_of(data)))
    recipe = read_recipe(found)
    lines = [f"{INDENT}{line}".rstrip() for line in _lines(recipe)]
    return DishText(recipe.name, "\n".join(lines) + "\n", found.count, recipe.language)


def _lines(recipe: Recipe) -> Iterator[str]:
    for head in words.RECIPE_HEAD:
        yield from _comment(head)
    if recipe.language:
        yield from _comment(words.recipe_foreign(recipe.language))
    yield f"- dish: {scalar(recipe.name)}"
    if recipe.serves is not None:
        remark = "" if recipe.yields == str(recipe.serves) else words.recipe_yield(recipe.yields)
        yield "  " + _with(f"for: {recipe.serves}", remark)
    else:
        yield from _comment(words.recipe_for_unknown(recipe.yields), "  ")
    if recipe.source:
        yield f"  source: {scalar(recipe.source)}"
    if recipe.foods:
        yield "  ingredients:"
        for food in (food for each in recipe.foods for food in foods_of(each, english=not recipe.language)):
            yield "    " + _with(f"- {scalar(food.line)}", food.remark)
    if recipe.foods_left_out:
        yield from _comment(words.recipe_foods_left_out(recipe.foods_left_out), "    ")
    if recipe.foods_unread:
        yield from _comment(words.recipe_foods_unread(recipe.foods_unread), "    ")
    steps = drafts(recipe)
    if tools := sorted({draft.tool for draft in steps if draft.tool}):
        yield from _comment(words.recipe_tools(tools), "  ")
    yield "  steps:"
    section = ""
    for draft in steps:
        if draft.section != section and draft.section:
            yield from _comment(draft.section, "    ")
        section = draft.section
        yield from _step(draft)
    if recipe.steps_left_out:
        yield from _comment(words.recipe_steps_left_out(recipe.steps_left_out), "    ")


def _step(draft: Draft) -> Iterator[str]:
    for remark in draft.remarks:
        yield from _comment(remark, "    ")
    yield f"    - step: {scalar(draft.name)}"
    keys = [("where", draft.where, draft.where_why), ("takes", draft.takes, draft.takes_why)]
    keys.append(("attended", draft.attended, words.RECIPE_HANDS))
    given = [(key, value, why) for key, value, why in keys if value]
    for key, value, why in given:
        yield "      " + _with(f"{key}: {scalar(value)}", words.recipe_guessed(why) if why else "")
    if draft.how:
        yield f"      how: {scalar(draft.how)}"
    if draft.uses:
        uses = ", ".join(scalar(each, in_flow=True) for each in draft.uses)
        yield "      " + _with(f"uses: [{uses}]", words.RECIPE_USES)
    if draft.cooks:
        yield from _comment(words.RECIPE_UNTIL, "      ")
    if guessed := [key for key, _, why in given if why]:
        yield f"      guessed: [{', '.join(guessed)}]"


def _with(line: str, remark: str) -> str:
    if not remark:
        return line
    return f"{line}  # {remark if len(remark) <= LONGEST_REMARK else remark[:LONGEST_REMARK] + '…'}"


def _comment(text: str, indent: str = "") -> list[str]:
    return textwrap.wrap(text, WIDEST, initial_indent=f"{indent}# ", subsequent_indent=f"{indent}# ",
                         break_on_hyphens=False)  # fmt: skip
