"""The schema that editors read: every key described, sound plans pass, and faults of shape that `check` tells are
told by it, too (JSON Schema 2020-12, by the reference library jsonschema; keywords by its vocabulary)."""

import json
import re
from collections.abc import Iterator
from typing import Any

import jsonschema
import pytest

from board.plan.load import PlanFile
from board.plan.model.long_forms import LONG_FORMS
from board.plan.places import read_yaml
from board.plan.schema import json_schema
from tests.conftest import PLANS, read
from tests.plan.test_bad_plans import SOUND

SCHEMA = json_schema()
GOOD = sorted([*PLANS.glob("*.yaml"), *(PLANS.parent / "tests/dinners").glob("*.yaml")])
# JSON Schema 2020-12, core, applicator, validation and meta-data vocabularies.
KEYWORDS = {
    "$schema", "$defs", "$ref", "title", "description", "type", "properties", "required", "additionalProperties",
    "propertyNames", "items", "prefixItems", "anyOf", "oneOf", "allOf", "enum", "const", "pattern", "examples",
    "default", "minimum", "maximum", "exclusiveMinimum", "exclusiveMaximum", "minLength", "maxLength", "minItems",
    "maxItems", "minProperties",
}  # fmt: skip


def _data(text: str) -> Any:
    return read_yaml(text, "supper.yaml")[0]


def _wrong(text: str) -> list[jsonschema.ValidationError]:
    return list(jsonschema.Draft202012Validator(SCHEMA).iter_errors(_data(text)))


def _parts(part: Any = SCHEMA) -> Iterator[dict[str, Any]]:
    """Every schema within the schema."""
    if isinstance(part, list):
        for each in part:
            yield from _parts(each)
    if isinstance(part, dict):
        yield part
        for key, inside in part.items():
            if key in ("properties", "$defs"):
                for each in inside.values():
                    yield from _parts(each)
            elif key not in ("default", "examples", "enum", "const"):
                yield from _parts(inside)


def test_every_key_has_a_description_with_an_example() -> None:
    keys = [about for part in _parts() for about in part.get("properties", {}).values()]

    assert len(keys) > 200
    assert [each for each in keys if "`" not in each.get("description", "")] == []


def test_every_meaning_of_a_long_form_is_of_a_key_that_there_is() -> None:
    assert {name: set(keys) for name, keys in LONG_FORMS.items()} == {
        name: set(SCHEMA["$defs"][name]["properties"]) for name in LONG_FORMS
    }


def test_it_is_a_schema_of_known_words_that_offers_no_null() -> None:
    jsonschema.Draft202012Validator.check_schema(SCHEMA)

    assert {key for part in _parts() for key in part} <= KEYWORDS
    assert '"null"' not in json.dumps(SCHEMA)
    assert [part for part in _parts() if "default" in part and part["default"] is None] == []
    for part in _parts():
        if "pattern" in part:
            re.compile(part["pattern"])


@pytest.mark.parametrize("plan", GOOD, ids=lambda path: path.stem)
def test_a_sound_plan_passes(plan: Any) -> None:
    assert _wrong(plan.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize(
    ("old", "new"),
    [("at: 20:15", "at: 19.30"), ("at: 20:15", "at: 8.15pm"), ("takes: 10 min", "takes: half an hour"),
     ("takes: 10 min", "takes: overnight"), ("takes: 10 min", "takes: PT1H30M"), ("takes: 10 min", "takes: 25 MIN"),
     ("takes: 10 min", "takes: 10 to 15 min")],
)  # fmt: skip
def test_what_check_reads_passes(old: str, new: str) -> None:
    text = SOUND.replace(old, new)

    assert text != SOUND
    assert isinstance(read(text), PlanFile)
    assert _wrong(text) == []


@pytest.mark.parametrize(
    ("old", "new"),
    [("2026-11-28", "28.11.2026"), ("2026-11-28", "2026-13-28"), ("arrive: 18:30", "arrive: half past six"),
     ("arrive: 18:30", "arrive: '25:00'"), ("takes: 10 min", "takes: 10"), ("takes: 10 min", "takes: a while"),
     ("takes: 10 min", "taks: 10 min"), ("takes: 10 min", "takes:"),
     ("takes: 10 min", "takes: 10 min\n            where: oven"),
     ("takes: 10 min", "takes: 10 min\n            where: 'stovetop, , big pot'"),
     ("takes: 10 min", "takes: 10 min\n            keeps: 3"),
     ("takes: 10 min", "takes: 10 min\n            until: 74")],
)  # fmt: skip
def test_what_check_refuses_is_refused(old: str, new: str) -> None:
    text = SOUND.replace(old, new)

    assert text != SOUND
    assert isinstance(read(text), list)
    assert _wrong(text)
