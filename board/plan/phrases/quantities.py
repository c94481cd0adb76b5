"""Ingredients as a cook writes them: `1.2 kg celeriac (veg)`, `2–3 tbsp oil`, `to taste salt`, `4 eggs`; and label
words: `100 g dark chocolate (baking), may contain tree nuts`."""

import re
import unicodedata
from typing import Annotated

from pydantic import BaseModel, ConfigDict, Field, model_validator

from board.facts.named import named
from board.plan.phrases.durations import decimal
from board.plan.phrases.labels import LabelWords, without_label
from board.plan.phrases.phrase import Phrase

# Kitchen units and their spellings. Mass and volume; the rest are counted.
UNITS: dict[str, tuple[str, ...]] = {
    "g": ("gram", "grams", "gr"),
    "kg": ("kilo", "kilos", "kilogram", "kilograms"),
    "oz": ("ounce", "ounces"),
    "lb": ("lbs", "pound", "pounds"),
    "ml": ("millilitre", "millilitres", "milliliter", "milliliters"),
    "cl": ("centilitre", "centilitres"),
    "l": ("litre", "litres", "liter", "liters"),
    "tsp": ("teaspoon", "teaspoons"),
    "tbsp": ("tablespoon", "tablespoons"),
    "cup": ("cups",),
    "fl oz": ("fluid ounce", "fluid ounces"),
    "pinch": ("pinches",),
    "handful": ("handfuls",),
    "bunch": ("bunches",),
    "sprig": ("sprigs",),
    "clove": ("cloves",),
    "stick": ("sticks",),
    "slice": ("slices",),
    "sheet": ("sheets",),
    "bottle": ("bottles",),
    "tin": ("tins", "can", "cans"),
    "jar": ("jars",),
    "pack": ("packs", "packet", "packets"),
}
_SPELLINGS = {spelling: unit for unit, others in UNITS.items() for spelling in (unit, *others)}
_UNIT_WORD = "|".join(sorted((re.escape(s) for s in _SPELLINGS), key=len, reverse=True))
_FIGURE = r"(?:\d+\s+\d+/\d+|\d+/\d+|\d+(?:[.,]\d+)?\s*[½⅓⅔¼¾⅛]?|[½⅓⅔¼¾⅛])"
_AMOUNT = re.compile(
    rf"({_FIGURE})\s*(?:(?:–|-|to)\s*({_FIGURE}))?\s*(?:({_UNIT_WORD})\b\.?)?\s*(?:of\s+)?(.*)", re.IGNORECASE
)
_UNCOUNTED = re.compile(
    r"(?:(to taste)[,]?|an?\s+(handful|pinch|bunch|sprig|splash|knob)(?:\s+of)?)\s+(.+)", re.IGNORECASE
)
MOST = 100_000.0  # of any unit
_SECTION = re.compile(r"(.*?)\s*\(([^()]*)\)\s*$")


class Ingredient(BaseModel):
    """One thing to buy or find. `low` equals `high` for a single figure; both are None for `to taste`.

    `contains`, `may_contain`, `free_from`: the label's own words.
    """

    model_config = ConfigDict(
        extra="forbid", frozen=True, populate_by_name=True, alias_generator=lambda name: name.replace("_", " ")
    )

    food: str = Field(min_length=1)
    low: float | None = None
    high: float | None = None
    unit: str = ""  # "": a count
    section: str | None = None
    contains: LabelWords = ()
    may_contain: LabelWords = ()
    free_from: LabelWords = ()

    @model_validator(mode="after")
    def _sound(self) -> "Ingredient":
        low, high = self.low, self.high
        if (low is None) != (high is None):
            raise ValueError("an amount has both low and high, or neither; write one figure twice")
        if low is not None and high is not None and low > high:
            raise ValueError(f"{low:g} to {high:g} runs backwards; write the lower figure first")
        if low is not None and high is not None and not 0 < low <= high <= MOST:
            raise ValueError("an amount lies above zero and is less than a lorry load; check the figure")
        if self.unit and self.unit not in {*UNITS, "to taste", "splash", "knob"}:
            raise ValueError(f"{self.unit!r} is not a unit of the kitchen; use {', '.join(UNITS)}")
        for word in self.free_from:
            if any(named(word) == named(other) for other in self.contains):
                raise ValueError(f"a label says either contains or free from {word}; read it again and keep one")
        return self


def _figure(text: str) -> float:
    vulgar = text[-1] if text[-1] in "½⅓⅔¼¾⅛" else ""
    total = unicodedata.numeric(vulgar) if vulgar else 0.0
    for piece in text.removesuffix(vulgar).split():
        above, slash, below = piece.partition("/")
        if slash and not float(below):
            raise ValueError(f"{text!r} divides by zero; write for example 1/2")
        total += decimal(above) / float(below or 1)
    return total


def parse_ingredient(text: str) -> dict[str, object]:
    """The shop section is in brackets at the end; label words go before or after it. Raises ValueError."""
    text, said = without_label(text)
    section: dict[str, object] = {**said}
    if match := _SECTION.fullmatch(text):
        text, section["section"] = match[1], match[2]
    if match := _UNCOUNTED.fullmatch(text):
        return {"food": match[3], "unit": (match[1] or match[2]).lower(), **section}
    match = _AMOUNT.fullmatch(text.strip())
    if match is None:
        raise ValueError(f"{text!r} has no amount; write for example 1.2 kg celeriac (veg) or to taste salt")
    low = _figure(match[1])
    high = _figure(match[2]) if match[2] else low
    if not match[4].strip():
        raise ValueError(f"{text!r} does not say of what; write for example 1.2 kg celeriac (veg)")
    unit = _SPELLINGS[match[3].lower()] if match[3] else ""
    return {"food": match[4].strip(), "low": low, "high": high, "unit": unit, **section}


IngredientLine = Annotated[Ingredient, Phrase(parse_ingredient, "1.2 kg celeriac (veg)")]
