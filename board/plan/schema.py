"""The JSON Schema of a plan, for editors. A plan's first line can point at it."""

from typing import Any

from board.plan.model.keys import KEYS, Key
from board.plan.model.long_forms import LONG_FORMS
from board.plan.model.model import Plan
from board.plan.resolve.from_shelf import KEY

# A dish that `platecall dishes fill` writes out; keys of a dish may stand beside it.
_WAITS_FOR_SHELF = {"type": "object", "properties": {KEY: {"type": "string"}}, "required": [KEY]}

_FROM_SHELF = Key("A dish of your own, which `platecall dishes fill` writes out.", "Onion tartlets")

_KEYS = {**{model.__name__: keys for model, (_, keys) in KEYS.items()}, **LONG_FORMS}

# Limits of union types come under the model library's own names, which JSON Schema ignores.
_KEYWORD = {"ge": "minimum", "le": "maximum", "gt": "exclusiveMinimum", "lt": "exclusiveMaximum"}


def json_schema() -> dict[str, Any]:
    """JSON Schema, draft 2020-12, with keys as in a plan file, each with its meaning. No null: a key without a value is
    a fault of the plan."""
    schema: dict[str, Any] = _without_null(Plan.model_json_schema(by_alias=True))
    for name, part in [("Plan", schema), *schema["$defs"].items()]:
        for key, about in part.get("properties", {}).items():
            about["description"] = _description(_KEYS[name][key])
    dishes = schema["$defs"]["Course"]["properties"]["dishes"]
    waits = {**_WAITS_FOR_SHELF, "properties": {KEY: {"type": "string", "description": _description(_FROM_SHELF)}}}
    dishes["items"] = {"anyOf": [dishes["items"], waits]}
    return {"$schema": "https://json-schema.org/draft/2020-12/schema", **schema, "title": "platecall plan"}


def _description(key: Key) -> str:
    """What editors show: meaning, unit and example."""
    example = " ".join(key.example.split())
    return " ".join(filter(None, (key.says, key.unit and f"Unit: {key.unit}.", f"Example: `{example}`")))


def _without_null(part: Any) -> Any:
    if isinstance(part, list):
        return [_without_null(each) for each in part if each != {"type": "null"}]
    if not isinstance(part, dict):
        return part
    made = {
        _KEYWORD.get(key, key): _without_null(each)
        for key, each in part.items()
        if not (key == "default" and each is None)
    }
    if isinstance(made.get("anyOf"), list) and len(made["anyOf"]) == 1:
        made = {**made.pop("anyOf")[0], **made}
    return made
