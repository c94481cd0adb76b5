"""What a plan says about drinks: amounts for each guest, and what is poured with a course."""

import re
from typing import Annotated, Any, Literal

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field

from board.facts.drinks import CHILL_MINUTES, Rate
from board.plan.model.part import PlanModel
from board.plan.phrases.durations import WholeMinutes, decimal, parse_minutes
from board.plan.phrases.phrase import Phrase, near

EXAMPLE = "2 glasses a guest in the first hour, 1 an hour after"
_UNITS = {"glass": "glass", "glasses": "glass", "flute": "glass", "flutes": "glass", "bottle": "bottle",
          "bottles": "bottle", "cup": "cup", "cups": "cup", "ml": "ml", "l": "l", "litre": "l", "litres": "l",
          "liter": "l", "liters": "l", "g": "g", "kg": "kg"}  # fmt: skip
_NUMBER = r"\d+(?:[.,]\d+)?"
_RATE = re.compile(
    rf"({_NUMBER}|an?|one|two|three)\s*([A-Za-z]+)\s+(?:a|an|per|each|for each)\s+guest"
    rf"(?:\s*,?\s+(?:(?:a|an|per|each|every)\s+(course|hour)"
    rf"|in\s+the\s+first\s+hour\s*,?\s*(?:and\s+)?({_NUMBER}|one|two|three)\s+(?:an|every|each|per)\s+hour"
    rf"\s+after(?:wards)?))?",
    re.IGNORECASE,
)
_SAID = {"a": 1.0, "an": 1.0, "one": 1.0, "two": 2.0, "three": 3.0}
MOST_A_GUEST = 50.0


class HowMuch(BaseModel):
    """An amount for each guest: once, each course, or each hour. `usual`: the figure from the program's table."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    usual: bool = False
    amount: float = Field(default=0.0, ge=0, le=MOST_A_GUEST)
    unit: Literal["glass", "bottle", "cup", "l", "kg"] = "glass"
    each: Literal["once", "course", "hour"] = "once"
    first_hour: float | None = Field(default=None, ge=0, le=MOST_A_GUEST)

    @property
    def some(self) -> bool:
        """Whether any is wanted."""
        return self.usual or self.amount > 0 or bool(self.first_hour)

    def rate(self) -> Rate:
        return Rate(self.amount, self.unit, self.each, self.first_hour)


def _number(text: str) -> float:
    return _SAID[text.lower()] if text.lower() in _SAID else decimal(text)


def parse_how_much(text: str) -> dict[str, object]:
    """`usual`, `none`, `1 glass a guest a course`, `2 glasses a guest in the first hour, 1 an hour after`. Raises
    ValueError."""
    folded = " ".join(text.split())
    if folded.lower() in ("usual", "as usual", "yes"):
        return {"usual": True}
    if folded.lower() in ("none", "no", "nothing"):
        return {}
    match = _RATE.fullmatch(folded)
    if match is None:
        raise ValueError(f"{text!r} does not say how much a guest; write for example {EXAMPLE}, or usual")
    unit = _UNITS.get(match[2].lower())
    if unit is None:
        raise ValueError(f"{match[2]!r} is no measure of a drink.{near(match[2], _UNITS)}; write for example {EXAMPLE}")
    scale = 1000 if unit in ("ml", "g") else 1
    amount = _number(match[1]) / scale
    after = _number(match[4]) / scale if match[4] else None
    if max(amount, after or 0.0) > MOST_A_GUEST:
        raise ValueError(f"{text!r} is more than a guest can take; check the figure")
    unit = {"ml": "l", "g": "kg"}.get(unit, unit)
    if after is not None:
        return {"amount": after, "unit": unit, "each": "hour", "first_hour": amount}
    return {"amount": amount, "unit": unit, "each": (match[3] or "once").lower()}


HowMuchLine = Annotated[HowMuch, Phrase(parse_how_much, EXAMPLE)]


class Pairing(BaseModel):
    """What is poured with a course. Minutes to chill, and to open before the course; None: not at all."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    drink: str = Field(min_length=1, max_length=100)
    bottles: int = Field(ge=1, le=500)
    bottle_millilitres: float = Field(default=750, gt=0, le=20_000)
    chilled: WholeMinutes | None = None
    opened: WholeMinutes | None = None
    percent: float | None = Field(default=None, ge=0, le=96)


PAIRING_EXAMPLE = "dry cider, 6 bottles, chilled 2 h, opened 10 min before"
_BOTTLES = re.compile(rf"(\d+)\s+bottles?(?:\s+of\s+({_NUMBER})\s*(ml|cl|l))?", re.IGNORECASE)
_PERCENT = re.compile(rf"({_NUMBER})\s*%(?:\s*(?:alcohol|abv|vol\.?))?", re.IGNORECASE)
_CHILLED = re.compile(r"chilled(?:\s+(?:for\s+)?(.+))?", re.IGNORECASE)
_OPENED = re.compile(r"opened\s+(.+?)\s+before", re.IGNORECASE)


def parse_pairing(text: str) -> dict[str, object]:
    """The drink first; bottles, chilling, opening and strength in any order. Raises ValueError."""
    drink, *pieces = (piece.strip() for piece in text.split(","))
    found: dict[str, object] = {"drink": drink}
    for piece in pieces:
        if match := _BOTTLES.fullmatch(piece):
            found["bottles"] = int(match[1])
            if match[2]:
                found["bottle_millilitres"] = decimal(match[2]) * {"ml": 1, "cl": 10, "l": 1000}[match[3].lower()]
        elif match := _PERCENT.fullmatch(piece):
            found["percent"] = decimal(match[1])
        elif match := _CHILLED.fullmatch(piece):
            found["chilled"] = parse_minutes(match[1]) if match[1] else CHILL_MINUTES
        elif match := _OPENED.fullmatch(piece):
            found["opened"] = parse_minutes(match[1])
        else:
            raise ValueError(f"{piece!r} says nothing of a drink that is known; write for example {PAIRING_EXAMPLE}")
    if not re.search(r"\w", drink) or "bottles" not in found:
        raise ValueError(f"{text!r} does not say how many bottles of what; write for example {PAIRING_EXAMPLE}")
    return found


PairingLine = Annotated[Pairing, Phrase(parse_pairing, PAIRING_EXAMPLE)]


class Drinks(PlanModel):
    """How much of each drink; one left out is not calculated. `children`: guests who get no alcohol and no coffee."""

    wine: HowMuchLine | None = None
    sparkling: HowMuchLine | None = None
    beer: HowMuchLine | None = None
    soft_drinks: HowMuchLine | None = None
    water: HowMuchLine | None = None
    ice: HowMuchLine | None = None
    coffee: HowMuchLine | None = None
    children: int = Field(default=0, ge=0, le=200)


_ALL_USUAL = ("wine", "soft drinks", "water", "ice", "coffee")


def _drinks(value: Any) -> Any:
    """`drinks: usual` means the usual amounts of the usual drinks."""
    if isinstance(value, str) and value.lower() in ("usual", "as usual", "yes"):
        return dict.fromkeys(_ALL_USUAL, "usual")
    if isinstance(value, str):
        raise ValueError(f"{value!r} is not how much there is to drink; write usual, or for example wine: usual")
    return value


DrinksLine = Annotated[Drinks, BeforeValidator(_drinks, json_schema_input_type=str | Drinks)]
