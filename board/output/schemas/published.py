"""The JSON Schema of what each command prints with `--json`."""

from typing import Any

import msgspec

from board.output.schemas.book import BookForm
from board.output.schemas.check import CheckForm
from board.output.schemas.guests import GuestsForm
from board.output.schemas.lessons import LessonsForm
from board.output.schemas.logs import LogsForm
from board.output.schemas.odds import OddsForm
from board.output.schemas.provisions import ProvisionsForm
from board.output.schemas.review import EveningForm
from board.output.schemas.sheet import SheetForm
from board.output.schemas.table import TableForm

FORMAT = 2  # raised where a key changes its meaning or goes; a new key leaves it
FORMS: dict[str, Any] = {
    "book": BookForm,
    "check": CheckForm,
    "guests": GuestsForm,
    "lessons": LessonsForm,
    "logs": LogsForm,
    "odds": OddsForm,
    "provisions": ProvisionsForm,
    "review": EveningForm,
    "sheet": SheetForm,
    "table": TableForm,
}


def numbered(form: object) -> object:
    """One object, or a list of them, each with the number of its format."""
    if isinstance(form, list):
        return [numbered(each) for each in form]
    return {"format": FORMAT, **form} if isinstance(form, dict) else form


def schema_of(name: str) -> dict[str, Any]:
    """JSON Schema, draft 2020-12, of one of `FORMS`. Several evenings are a list. Raises KeyError."""
    (made,), parts = msgspec.json.schema_components([FORMS[name]], ref_template="#/$defs/{name}")
    whole = parts[FORMS[name].__name__]
    whole["properties"] = {"format": {"const": FORMAT}, **whole["properties"]}
    whole["required"] = ["format", *whole["required"]]
    several = {"anyOf": [made, {"type": "array", "items": made}]} if name == "review" else made
    return {"$schema": "https://json-schema.org/draft/2020-12/schema", **several, "$defs": parts}
