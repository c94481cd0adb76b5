"""What a plan says about buying: trips to the shops, opening hours, what is in the house, packs and prices."""

import re
from typing import Annotated, Any

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, model_validator

from board.plan.phrases.durations import decimal
from board.plan.phrases.phrase import Phrase, near
from board.plan.phrases.quantities import MOST, UNITS, measure_of, parse_ingredient
from board.plan.phrases.when import DayKey, Span, parse_spans

Spans = Annotated[list[Span], Phrase(parse_spans, "16:00 - 17:30")]
OpenHours = dict[DayKey, Spans]


class InTheHouse(BaseModel):
    """Food that need not be bought; no amount means enough. `file`: a file that lists such food."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    food: str = ""
    low: float | None = None
    high: float | None = None
    unit: str = ""
    size: str = ""
    section: str | None = None
    file: str | None = None

    @property
    def measure(self) -> str:
        """What its amount counts."""
        return measure_of(self.size, self.unit)

    @model_validator(mode="after")
    def _sound(self) -> "InTheHouse":
        if bool(self.food) == bool(self.file):
            raise ValueError("what is in the house is a food, or a file that lists some; write for example 2 kg flour")
        if (self.low is None) != (self.high is None):
            raise ValueError("an amount has both low and high, or neither; write one figure twice")
        return self


def parse_in_the_house(text: str) -> dict[str, object]:
    """`2 kg flour`, `salt`, `pantry.yaml`. Raises ValueError."""
    if re.fullmatch(r"\S[^\n]*\.ya?ml", text, re.IGNORECASE):
        return {"file": text}
    if re.match(r"[\d½⅓⅔¼¾⅛-]", text):
        return {key: value for key, value in parse_ingredient(text).items() if key != "choices"}
    if not re.search(r"\w", text):
        raise ValueError(f"{text!r} names no food; write for example 2 kg flour, or salt")
    return {"food": text}


InTheHouseLine = Annotated[InTheHouse, Phrase(parse_in_the_house, "2 kg flour")]


def _pantry(value: Any) -> Any:
    """`pantry: pantry.yaml` is read like `pantry: [pantry.yaml]`."""
    return [value] if isinstance(value, str) else value


Pantry = Annotated[list[InTheHouseLine], BeforeValidator(_pantry, json_schema_input_type=str | list[InTheHouseLine])]


class Pack(BaseModel):
    """How much of a food is sold at once. No unit: pieces."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    amount: float = Field(gt=0, le=MOST)
    unit: str = ""


def parse_pack(text: str) -> dict[str, object]:
    """`250 g`, `6`, `1 l`, `a bunch`. Raises ValueError."""
    example = "write for example 250 g or 6"
    text = re.sub(r"^an?\s+", "1 ", text.strip(), flags=re.IGNORECASE)
    try:
        found = parse_ingredient(f"{text} x")
    except ValueError as wrong:
        said = str(wrong).partition("; ")[0] if "two ways" in str(wrong) else f"{text!r} is not the size of a pack"
        raise ValueError(f"{said}; {example}") from None
    if found.get("food") != "x" or found.get("low") is None or found["low"] != found["high"]:
        raise ValueError(f"{text!r} is not the size of a pack; {example}")
    return {"amount": found["low"], "unit": found["unit"]}


class Price(BaseModel):
    """Hundredths of the currency unit for a pack, a piece (`each`), or an amount."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    hundredths: int = Field(ge=0, le=100_000_000)
    sign: str = ""  # currency sign, if written
    amount: float = Field(default=1.0, gt=0, le=MOST)
    per: str = "pack"


_PRICE = re.compile(
    r"([^\w\s.,-])?\s*(\d+(?:[.,]\d{1,2})?)\s*([^\w\s.,/-])?\s*(?:(?:an?|per|for|/)\s*)?(\d+(?:[.,]\d+)?)?\s*"
    r"([A-Za-z][A-Za-z ]*)",
)
_EXAMPLES = "write for example 2.40 a pack, 14.50 a kg or 0.30 each"
_SPELLED = {spelling: unit for unit, others in UNITS.items() for spelling in (unit, *others) if unit != "pack"}
_PIECES = {"each": "each", "piece": "each", "pack": "pack", "packet": "pack"}


def parse_price(text: str) -> dict[str, object]:
    """`2.40 a pack`, `14.50 a kg`, `€0.30 each`, `1.20 per 100 g`. The unit is required. Raises ValueError."""
    match = _PRICE.fullmatch(text.strip())
    if match is None:
        raise ValueError(f"{text!r} is not a price of so much; {_EXAMPLES}")
    word = match[5].strip().lower()
    per = _PIECES.get(word) or _SPELLED.get(word)
    if per is None:
        known = [*_PIECES, *_SPELLED]
        raise ValueError(f"{word!r} is no pack, piece or unit of the kitchen.{near(word, known)}; {_EXAMPLES}")
    whole, _, part = match[2].replace(",", ".").partition(".")
    hundredths = int(whole[:12]) * 100 + int(f"{part}00"[:2])
    amount = decimal(match[4]) if match[4] else 1.0
    return {"hundredths": hundredths, "sign": match[1] or match[3] or "", "amount": amount, "per": per}


PackLine = Annotated[Pack, Phrase(parse_pack, "250 g")]
PriceLine = Annotated[Price, Phrase(parse_price, "2.40 a pack")]
