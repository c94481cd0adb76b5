"""What `provisions --json` prints."""

from typing import Literal, TypedDict

from board.output.schemas.units import Amount, Cents, Count, Date


class PartForm(TypedDict):
    """`kind`: what is counted. `need`, `in_house`: low and high. `short`: what the house lacks."""

    kind: str
    need: list[Amount] | None
    in_house: list[Amount] | None
    short: Amount | None
    buy: Amount | None
    packs: Count | None
    left_over: Amount | None
    cost: Cents | None


ItemForm = TypedDict(
    "ItemForm", {"food": str, "shown": str, "for": list[str], "parts": list[PartForm], "notes": list[str]}
)


class BoughtForm(ItemForm):
    """`keeps_days`: null where nobody knows."""

    keeps_days: float | None
    keeps_source: str
    doubt: Literal["no trip before", "keeps too short", "shop shut"] | None


class SectionForm(TypedDict):
    section: str | None
    items: list[BoughtForm]


class ErrandForm(TypedDict):
    day: Date | None
    trip: str | None
    sections: list[SectionForm]


class ScaledForm(TypedDict):
    dish: str
    written_for: int
    factor: float


class CostForm(TypedDict):
    sign: str | None
    hundredths: Cents


class StrengthForm(TypedDict):
    drink: str
    us_standard_drinks: float


class ProvisionsForm(TypedDict):
    """What to buy, by day and by section of the shop. `unpriced`: how many things have no price."""

    plan: str
    guests: Count
    errands: list[ErrandForm]
    in_house: list[ItemForm]
    scaled: list[ScaledForm]
    left: list[str]
    costs: list[CostForm]
    unpriced: Count
    strengths: list[StrengthForm]
