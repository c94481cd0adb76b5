"""What is told of the keys of a plan is all of them, and each example can be written so."""

from io import StringIO
from typing import Annotated, Any

import pytest
from pydantic import BaseModel, TypeAdapter, ValidationError
from ruamel.yaml import YAML

from board.plan.model.keys import KEYS, Key
from board.plan.model.model import Plan
from board.plan.model.part import PlanModel
from board.plan.schema import json_schema

ALL = [(model, name, key) for model, (_, keys) in KEYS.items() for name, key in keys.items()]


def keys_of(model: type[BaseModel]) -> dict[str, Any]:
    return {field.alias or name: field for name, field in model.model_fields.items()}


def parts(model: type[PlanModel] = PlanModel) -> set[type[PlanModel]]:
    """Every part of a plan that a host writes keys in."""
    found = set[type[PlanModel]]()
    for each in model.__subclasses__():
        found |= {each} | parts(each)
    return found


def test_every_key_of_every_part_is_told_and_no_other() -> None:
    inside = {each for each in parts() if each.__module__.startswith("board.plan.model")} - {_shared()}

    assert {model for model in inside if model not in KEYS} == set()
    assert {name for model, (_, keys) in KEYS.items() for name in set(keys) ^ set(keys_of(model))} == set()


def _shared() -> type[PlanModel]:
    """What steps and jobs have in common, which nobody writes by itself."""
    from board.plan.model.work import Work

    return Work


def read(model: type[BaseModel], name: str, value: object) -> object:
    field = keys_of(model)[name]
    whole = field.annotation
    for each in field.metadata:
        whole = Annotated[whole, each]
    return TypeAdapter(whole).validate_python(value)


@pytest.mark.parametrize(("model", "name", "key"), ALL, ids=lambda each: getattr(each, "__name__", str(each)[:20]))
def test_its_example_can_be_written_so(model: type[BaseModel], name: str, key: Key) -> None:
    read(model, name, YAML(typ="safe").load(StringIO(key.example)))


def test_the_test_itself_would_see_a_bad_example() -> None:
    with pytest.raises(ValidationError):
        read(Plan, "date", "some day")


def test_the_schema_describes_every_key() -> None:
    schema = json_schema()
    for model, name, key in ALL:
        part = schema if model is Plan else schema["$defs"][model.__name__]
        assert part["properties"][name]["description"].startswith(key.says)
