"""Keys of a plan file as the manual tells them: meaning from `KEYS`, what a value must be from the models."""

import functools
from collections.abc import Iterator, Mapping
from typing import Any

from pydantic import BaseModel

from board.manual import words
from board.plan.model.keys import KEYS, Key
from board.plan.schema import json_schema


def names() -> list[str]:
    """Every key, each once, in the order of the plan."""
    return list(dict.fromkeys(key for _, keys in KEYS.values() for key in keys))


def by_part() -> Iterator[tuple[str, list[str]]]:
    """Each part of a plan with its keys."""
    for part, keys in KEYS.values():
        yield part, list(keys)


def told(name: str) -> str:
    """What a key means wherever it stands, as Markdown; places that mean the same stand together."""
    schema = _schema()
    found: dict[tuple[Key, str], list[str]] = {}
    for model, (part, keys) in KEYS.items():
        if name in keys:
            found.setdefault((keys[name], _kind(schema, model, name)), []).append(part)
    return "\n\n".join(_entry(name, key, kind, parts) for (key, kind), parts in found.items())


@functools.cache
def _schema() -> dict[str, Any]:
    return json_schema()


def _entry(name: str, key: Key, kind: str, parts: list[str]) -> str:
    gap = "" if key.example.startswith("\n") else " "
    lines = [
        words.key_heading(name, parts),
        key.says,
        words.value_is(kind, key.unit),
        f"```yaml\n{name}:{gap}{key.example}\n```",
    ]
    return "\n\n".join(lines)


def _kind(schema: dict[str, Any], model: type[BaseModel], name: str) -> str:
    part = schema if model.__name__ == "Plan" else schema["$defs"][model.__name__]
    needed = name in part.get("required", ())
    return words.kind(_shape(schema, part["properties"][name]), needed=needed)


def _shape(schema: dict[str, Any], given: Mapping[str, Any]) -> str:
    """What may be written, out of the forms a value has: the shortest form goes first."""
    shapes = [shape for each in _forms(given) if (shape := _one(schema, each))]
    return words.or_else(list(dict.fromkeys(shapes)))


def _forms(given: Mapping[str, Any]) -> Iterator[Mapping[str, Any]]:
    for each in given.get("anyOf", [given]):
        if "anyOf" in each:
            yield from _forms(each)
        else:
            yield each


def _one(schema: dict[str, Any], form: Mapping[str, Any]) -> str:
    if "$ref" in form:
        target = schema["$defs"][form["$ref"].rpartition("/")[2]]
        own = next((part for model, (part, _) in KEYS.items() if model.__name__ == form["$ref"].rpartition("/")[2]), "")
        if "enum" in target:
            return _one(schema, target)
        return words.keys_of(own) if own else ""  # a long form that no host needs: the short one says the same
    if "enum" in form or "const" in form:
        values = [str(value) for value in form.get("enum", [form.get("const")])]
        return words.YES_NO if values == ["yes", "no"] else words.one_of(values)
    types = form.get("type")
    if types == "array":
        return words.list_of(_shape(schema, form.get("items", {})))
    if types == "object":
        return words.NAMES if form.get("additionalProperties") else ""
    if types == "integer":
        return words.whole_number(form.get("minimum"), form.get("maximum"))
    return {"boolean": words.YES_NO, "string": words.TEXT, "number": words.NUMBER}.get(
        str(types), words.TEXT if isinstance(types, list) else ""
    )
