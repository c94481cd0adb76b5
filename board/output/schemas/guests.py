"""What `guests --json` prints."""

from typing import Literal, TypedDict

from board.output.schemas.units import Count

VerdictWord = Literal["nothing found", "ask", "not safe"]


class GuestForm(TypedDict):
    """`severe`: which of these can be anaphylaxis. `not_understood`: words to ask about, as written."""

    name: str
    count: Count
    avoids: list[str]
    diets: list[str]
    severe: list[str]
    not_understood: list[str]


class DishForm(TypedDict):
    course: str
    dish: str
    ingredients_listed: bool


class ReasonForm(TypedDict):
    verdict: VerdictWord
    need: str
    ingredient: str | None
    why: str
    source: str
    mend: str | None


class AnswerForm(TypedDict):
    """`guest` and `dish`: their places in the lists, from 0."""

    guest: Count
    dish: Count
    verdict: VerdictWord
    served: bool
    reasons: list[ReasonForm]


class GuestsForm(TypedDict):
    """Every guest against every dish."""

    plan: str
    guests: list[GuestForm]
    dishes: list[DishForm]
    answers: list[AnswerForm]
