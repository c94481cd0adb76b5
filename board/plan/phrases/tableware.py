"""What a place is laid with: `soup bowl, soup spoon, 2 wine glasses`. Singular and plural name the same piece."""

import re
from typing import Annotated, Any

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field

from board.facts.tableware import piece_key
from board.plan.phrases.phrase import Phrase

MOST_OF_A_KIND = 200
_FIGURES = {"a": 1, "an": 1, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6}
_COUNTED = re.compile(rf"(?:(\d+|{'|'.join(_FIGURES)})\s+)?(.+)", re.IGNORECASE)


class Pieces(BaseModel):
    """A number of one piece. `piece`: its name, singular, in lower case."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    piece: str = Field(min_length=1, max_length=60)
    count: int = Field(default=1, ge=1, le=MOST_OF_A_KIND)


def parse_pieces(text: str) -> dict[str, object]:
    """`2 wine glasses`, `a soup bowl`. Raises ValueError."""
    found = _COUNTED.fullmatch(text.strip())
    if found is None or not re.search(r"[^\W\d_]", found[2]) or re.match(r"[-+\d]", found[2]):
        raise ValueError(f"{text!r} is no piece of a table; write for example 2 wine glasses")
    said = found[1].lower() if found[1] else "one"
    count = _FIGURES[said] if said in _FIGURES else int(said[:9])
    if not 1 <= count <= MOST_OF_A_KIND:
        raise ValueError(f"{text!r} is not a number of pieces; write 1 to {MOST_OF_A_KIND}")
    return {"piece": piece_key(found[2]), "count": count}


def _read(value: Any) -> Any:
    """`nothing` is an empty list; text is split at its commas."""
    if not isinstance(value, str):
        return value
    if value.strip().casefold() == "nothing":
        return []
    return [piece.strip() for piece in value.split(",")]


PiecesLine = Annotated[Pieces, Phrase(parse_pieces, "2 wine glasses")]
LaidWith = Annotated[
    list[PiecesLine], BeforeValidator(_read, json_schema_input_type=str | list[PiecesLine]), Field(max_length=30)
]
