"""Who sits where: names in order around the table, or two lists of names that face each other."""

import re
from typing import Annotated, Any

from pydantic import AfterValidator, BaseModel, BeforeValidator, ConfigDict, Field, RootModel

from board.plan.phrases.phrase import Phrase

MOST_SIDE_BY_SIDE = 200
EMPTY = ("empty", "nobody")
_COUNTED = re.compile(r"(?:(\d+)\s+)?(.+)")


class Seat(BaseModel):
    """A guest by name, or several unnamed guests side by side."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    name: str = Field(min_length=1, max_length=120)
    count: int = Field(default=1, ge=1, le=MOST_SIDE_BY_SIDE)


def parse_seat(text: str) -> dict[str, object]:
    """`Ines`; `2 others`; `empty`. Raises ValueError."""
    found = _COUNTED.fullmatch(text)
    if found is None or text.isdecimal():
        raise ValueError(f"{text!r} is no name for a seat; write a guest's name, 2 others, or empty")
    count = int(found[1][:9]) if found[1] else 1
    if not 1 <= count <= MOST_SIDE_BY_SIDE:
        raise ValueError(f"{text!r} is no number of seats; write 1 to {MOST_SIDE_BY_SIDE}")
    return {"name": found[2], "count": count}


SeatLine = Annotated[Seat, Phrase(parse_seat, "Ines")]


class Side(RootModel[list[SeatLine]]):
    """One place at the table; a list is one long side."""

    model_config = ConfigDict(frozen=True)


def _read_side(value: Any) -> Any:
    return value if isinstance(value, list) else [value]


def _around_or_facing(sides: list[Side]) -> list[Side]:
    if is_facing(sides) and len(sides) != 2:
        raise ValueError("a table has two long sides; write the names in one list around it, or in two lists")
    return sides


def is_facing(sides: list[Side]) -> bool:
    """Whether the seats are two sides that face each other."""
    return any(len(side.root) != 1 for side in sides)


Seats = Annotated[
    list[Annotated[Side, BeforeValidator(_read_side, json_schema_input_type=str | list[SeatLine])]],
    Field(min_length=1, max_length=500),
    AfterValidator(_around_or_facing),
]
