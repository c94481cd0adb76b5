"""What `table --json` prints."""

from typing import TypedDict

from board.output.schemas.units import Count


class ChairForm(TypedDict):
    """`must_not`: a list for each guest who may sit there."""

    name: str | None
    must_not: list[list[str]]


class SeatsForm(TypedDict):
    """`facing`: two sides that face each other; else one list around the table."""

    facing: bool
    left: list[ChairForm]
    right: list[ChairForm]


class MustNotForm(TypedDict):
    name: str
    count: Count
    must_not: list[str]


class LaidForm(TypedDict):
    """`course`: null is the whole meal."""

    course: str | None
    piece: str
    each: Count
    total: Count
    assumed: bool


class WashForm(TypedDict):
    count: Count
    after: str | None
    before: str | None


class PieceForm(TypedDict):
    """`there`: how many the house has, null where the plan does not say."""

    piece: str
    asked_for: Count
    there: Count | None
    borrow: Count
    wash: list[WashForm]


class TableForm(TypedDict):
    """Who sits where, and the pieces to eat from. `cover`: one cover, drawn in text."""

    plan: str
    guests: Count
    seats: SeatsForm | None
    must_not: list[MustNotForm]
    laid: list[LaidForm]
    pieces: list[PieceForm]
    wash_between: bool
    cover: list[str]
