"""Shared by all parts of a plan: how keys are written, and common value types."""

from typing import Annotated, Any, Literal

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field

from board.plan.phrases.phrase import Phrase
from board.plan.phrases.stations import DEGREES_PATTERN, parse_celsius
from board.plan.phrases.when import CLOCK_PATTERN, parse_clock

Celsius = Annotated[float, Phrase(parse_celsius, "74 C", DEGREES_PATTERN, numbers=False)]
Clock = Annotated[str, Phrase(parse_clock, "19:30", CLOCK_PATTERN)]
Words = Annotated[str, Field(min_length=1, max_length=300)]
LongWords = Annotated[str, Field(min_length=1, max_length=5000)]


def one_or_many(value: Any) -> Any:
    """`after: x` is read like `after: [x]`."""
    return value if isinstance(value, list) or value is None else [value]


Noted = Annotated[list[LongWords], BeforeValidator(one_or_many, json_schema_input_type=str | list[str])]


def _yes_no(text: str) -> bool:
    """In YAML 1.2 `yes` is text, but hosts write it anyway."""
    if text.lower() in ("yes", "no"):
        return text.lower() == "yes"
    raise ValueError(f"{text!r} is neither yes nor no; write yes or no")


def _read_yes_no(value: Any) -> Any:
    return _yes_no(value) if isinstance(value, str) else value


YesNo = Annotated[bool, BeforeValidator(_read_yes_no, json_schema_input_type=bool | Literal["yes", "no"])]


class PlanModel(BaseModel):
    """A part of a plan: frozen, and unknown keys are refused."""

    model_config = ConfigDict(
        extra="forbid",
        frozen=True,
        alias_generator=lambda name: name.rstrip("_").replace("_", " "),
    )
