"""How much a dish comes to, and how much of it each gets: `1.2 l`, `24 tartlets`, `150 to 200 ml`."""

import re
from typing import Annotated

from pydantic import BaseModel, ConfigDict, Field, model_validator

from board.facts.called import same_food
from board.plan.phrases.phrase import Phrase
from board.plan.phrases.quantities import MOST, parse_ingredient

_PIECES = frozenset({"", "piece", "portion", "serving", "helping"})


class Portion(BaseModel):
    """`low` to `high` of a unit of the kitchen, or of what is counted (`tartlet`); empty: pieces."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    low: float = Field(gt=0, le=MOST)
    high: float = Field(gt=0, le=MOST)
    unit: str = ""

    @model_validator(mode="after")
    def _sound(self) -> "Portion":
        if self.low > self.high:
            raise ValueError(f"{self.low:g} to {self.high:g} runs backwards; write the lower figure first")
        return self


def parse_portion(text: str) -> dict[str, object]:
    """A figure or two, then a unit or what is counted. Raises ValueError."""
    said = re.sub(r"^an?\s+", "1 ", re.sub(r"^about\s+", "", text.strip()))
    try:
        found = parse_ingredient(f"{said} x")
    except ValueError:
        found = {}
    low, high, food = found.get("low"), found.get("high"), str(found.get("food", ""))
    if low is None or found.get("size") or not (food == "x" or food.endswith(" x")):
        raise ValueError(f"{text!r} is no amount of a dish; write for example 1.2 l, 24 tartlets or 150 ml")
    counted = same_food(food.removesuffix("x").strip()) if food != "x" else ""
    unit = counted or str(found["unit"])
    return {"low": low, "high": high, "unit": "" if unit in _PIECES else unit}


PortionWords = Annotated[Portion, Phrase(parse_portion, "1.2 l")]
