"""The JSON Schema of a plan, for editors. A plan's first line can point at it."""

from typing import Any

from board.plan.model.keys import KEYS
from board.plan.model.model import Plan
from board.plan.resolve.from_shelf import KEY

# A dish that `platecall dishes fill` writes out; keys of a dish may stand beside it.
_WAITS_FOR_SHELF = {"type": "object", "properties": {KEY: {"type": "string"}}, "required": [KEY]}


def json_schema() -> dict[str, Any]:
    """JSON Schema, draft 2020-12, with keys as in a plan file."""
    schema = Plan.model_json_schema(by_alias=True)
    for model, (_, keys) in KEYS.items():
        part = schema if model is Plan else schema["$defs"][model.__name__]
        for name, key in keys.items():
            part["properties"][name]["description"] = " ".join(filter(None, (key.says, f"Example: {key.example}")))
    dishes = schema["$defs"]["Course"]["properties"]["dishes"]
    dishes["items"] = {"anyOf": [dishes["items"], _WAITS_FOR_SHELF]}
    return {"$schema": "https://json-schema.org/draft/2020-12/schema", **schema, "title": "platecall plan"}
