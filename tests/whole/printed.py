"""Data that a command printed, held against the schema that is published of it."""

import copy
import json
from typing import Any

import jsonschema

from board.output.schemas.published import schema_of


def keeps_to(name: str, printed: str) -> Any:
    """The data. Raises ValidationError, also for a key that the schema does not name."""
    strict: dict[str, Any] = copy.deepcopy(schema_of(name))
    for part in strict["$defs"].values():
        part["additionalProperties"] = False
    found = json.loads(printed)
    jsonschema.validate(found, strict, jsonschema.Draft202012Validator)
    return found
