"""The JSON Schema of a plan, for editors. A plan's first line can point at it."""

from typing import Any

from board.plan.model.model import Plan


def json_schema() -> dict[str, Any]:
    """JSON Schema, draft 2020-12, with keys as in a plan file."""
    schema = Plan.model_json_schema(by_alias=True)
    return {"$schema": "https://json-schema.org/draft/2020-12/schema", **schema, "title": "platecall plan"}
