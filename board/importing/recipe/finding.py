"""Finds schema.org Recipe nodes (https://schema.org/Recipe) among JSON values, wherever nested: alone, in a list, in
`@graph`, under another node. Pure. Follows JSON-LD's `@id`, `@value` and `@list`; `@context` is assumed to be
schema.org's."""

import html
import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Any

from board.importing.recipe import words
from board.importing.recipe.documents import Documents, NotARecipe

Node = dict[str, Any]
MOST_VALUES = 400_000
_OURS = re.compile(r"(?:https?://schema\.org/|schema:)?(\w+)")
_TELLING = ("name", "recipeIngredient", "ingredients", "recipeInstructions")


@dataclass(frozen=True)
class Found:
    """The first recipe, how many there are, the file's nodes by `@id`, and the page's site and address. `also`: what
    else the page says of that recipe, in a node of the same `@id` (JSON-LD 1.1, 3.3) or in other markup."""

    recipe: Node
    count: int
    by_id: dict[str, Node]
    also: tuple[Node, ...] = ()
    site: str = ""
    address: str = ""


def find_recipe(documents: Documents) -> Found:
    """The recipes of a file, by the first of its readings that has one. Raises NotARecipe if there is none."""
    found = [each for values in documents.readings if (each := _among(values)) is not None]
    if not found:
        raise NotARecipe(words.NO_RECIPE)
    first = found[0]
    same = [each.recipe for each in found[1:] if _name(each.recipe) == _name(first.recipe)]
    return replace(first, also=(*first.also, *same), site=documents.site, address=documents.address)


def _name(node: Node) -> str:
    """Microdata's values are lists, and a name may have line breaks and entities."""
    name = node.get("name")
    return "".join(filter(str.isalnum, html.unescape(str(name[0] if isinstance(name, list) and name else name))))


def _among(documents: list[Any]) -> Found | None:
    nodes = list(_nodes(documents))
    by_id: dict[str, Node] = {}
    for node in nodes:
        own = node.get("@id")
        if isinstance(own, str) and len(node) > len(by_id.get(own, ())):
            by_id[own] = node  # the fullest node with this id; the others only refer to it
    recipes: dict[int | str, Node] = {}
    for node in nodes:
        own = node.get("@id")
        full = by_id[own] if isinstance(own, str) else node
        if is_a(full, "Recipe") and any(key in full for key in _TELLING):
            recipes.setdefault(id(full), full)
    if not recipes:
        return None
    first = next(iter(recipes.values()))
    own = first.get("@id")
    also = [node for node in nodes if own is not None and node.get("@id") == own and node is not first]
    return Found(first, len(recipes), by_id, tuple(also))


def is_a(node: Node, kind: str) -> bool:
    """Whether a node's `@type`, or one of its types, is `kind`."""
    kinds = node.get("@type")
    return any(_short(each) == kind for each in (kinds if isinstance(kinds, list) else [kinds]))


def _short(word: Any) -> str:
    match = _OURS.fullmatch(word.strip()) if isinstance(word, str) else None
    return match[1] if match else ""


def _nodes(documents: list[Any]) -> Iterator[Node]:
    """Every mapping, outer before inner, in file order; keys lose the vocabulary's address."""
    waiting: list[Any] = list(reversed(documents))
    seen = 0
    while waiting:
        value = waiting.pop()
        seen += 1
        if seen > MOST_VALUES:
            raise NotARecipe(words.RECIPE_TOO_LARGE)
        if isinstance(value, dict):
            for key in [key for key in value if _short(key) not in ("", key)]:
                value.setdefault(_short(key), value.pop(key))
            yield value
            waiting += [inner for inner in reversed(value.values()) if isinstance(inner, dict | list)]
        elif isinstance(value, list):
            waiting += [inner for inner in reversed(value) if isinstance(inner, dict | list)]
