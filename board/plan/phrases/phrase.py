"""A field written as a short phrase or in its long form. Pydantic glue, no meaning of its own."""

import functools
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Any, get_origin

from pydantic import BaseModel, GetCoreSchemaHandler, GetJsonSchemaHandler
from pydantic.json_schema import JsonSchemaValue
from pydantic_core import CoreSchema, core_schema

from board.base.near import nearest

LONGEST_CHARACTERS = 400


@dataclass(frozen=True)
class Phrase:
    """Annotation: `parse` turns a scalar into the long form; a mapping or list is the long form already.

    `parse` raises ValueError: what is wrong, a semicolon, how to fix it.
    """

    parse: Callable[[str], Any]
    example: str
    pattern: str = ""  # for editors, ECMA 262: what every good phrase matches
    numbers: bool = True  # whether a bare number can be meant

    def _read(self, long_form: type | None, value: Any) -> Any:
        if value is None:
            raise ValueError(f"a value is missing here; write, for example, {self.example}")
        if isinstance(value, bool):
            raise ValueError(f"a plain yes or no says too little here; write, for example, {self.example}")
        if isinstance(value, str | int | float):
            text = str(value).strip()
            if len(text) > LONGEST_CHARACTERS:
                raise ValueError(f"this is far too long to be read; write, for example, {self.example}")
            return self.parse(text)
        if isinstance(value, dict | list) and (long_form is None or not isinstance(value, long_form)):
            given = "keys stand" if isinstance(value, dict) else "a list stands"
            raise ValueError(f"{given} where a few words are looked for; write, for example, {self.example}")
        return value

    def __get_pydantic_core_schema__(self, source: Any, handler: GetCoreSchemaHandler) -> CoreSchema:
        return core_schema.no_info_before_validator_function(
            functools.partial(self._read, _long_form(source)), handler(source)
        )

    def __get_pydantic_json_schema__(self, schema: CoreSchema, handler: GetJsonSchemaHandler) -> JsonSchemaValue:
        long_form = handler(schema)
        short: JsonSchemaValue = {
            "type": ["string", "number"] if self.numbers else "string",
            "examples": [self.example],
        }
        if self.pattern:
            short["pattern"] = self.pattern
        if long_form.get("type") in ("string", "integer", "number"):
            return short
        return {"anyOf": [short, long_form]}


def _long_form(source: Any) -> type | None:
    """How a type's long form is written in a file: a mapping, a list, or not at all."""
    if isinstance(source, type) and issubclass(source, BaseModel):
        return dict
    return list if get_origin(source) is list else None


def meant_by(word: str, known: Iterable[str]) -> str | None:
    """The nearest known word; None where none is near."""
    return next(iter(nearest(word, known)), None)


def near(word: str, known: Iterable[str]) -> str:
    """` Did you mean …?` for the nearest known word, or nothing."""
    found = meant_by(word, known)
    return f" Did you mean {found!r}?" if found else ""
