"""A field that reads as a short phrase or as its long form. Pydantic glue, no meaning of its own."""

import difflib
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Any

from pydantic import GetCoreSchemaHandler, GetJsonSchemaHandler
from pydantic.json_schema import JsonSchemaValue
from pydantic_core import CoreSchema, core_schema


@dataclass(frozen=True)
class Phrase:
    """Annotation: a scalar is read by `parse` into the long form; a mapping or list is taken as the long form.

    `parse` raises ValueError whose text says what is wrong and how to mend it.
    """

    parse: Callable[[str], Any]
    example: str

    def _read(self, value: Any) -> Any:
        if isinstance(value, bool) or value is None:
            raise ValueError(f"a value is missing here; write, for example, {self.example}")
        if isinstance(value, str | int | float):
            return self.parse(str(value).strip())
        return value

    def __get_pydantic_core_schema__(self, source: Any, handler: GetCoreSchemaHandler) -> CoreSchema:
        return core_schema.no_info_before_validator_function(self._read, handler(source))

    def __get_pydantic_json_schema__(
        self, schema: CoreSchema, handler: GetJsonSchemaHandler
    ) -> JsonSchemaValue:
        long_form = handler(schema)
        short = {"type": ["string", "number"], "examples": [self.example]}
        if long_form.get("type") in ("string", "integer", "number"):
            return short
        return {"anyOf": [short, long_form]}


def near(word: str, known: Iterable[str]) -> str:
    """` Did you mean …?` for the nearest known word, or nothing."""
    by_fold = {k.casefold(): k for k in known}
    match = difflib.get_close_matches(word.casefold(), list(by_fold), n=1, cutoff=0.6)
    return f" Did you mean {by_fold[match[0]]!r}?" if match else ""
