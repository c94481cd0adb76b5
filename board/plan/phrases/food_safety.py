"""What a plan says about food safety: `until: 60 C for 12 min`, `thaws: 2.2 kg in the fridge`, `cools: 6 cm deep,
metal, ice bath`. The limits themselves are in the rule sets."""

import re
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field

from board.facts.cooling import COOLING_PLACES, VESSELS, CoolingPlace, Vessel
from board.facts.units import GRAMS
from board.plan.phrases.durations import decimal, parse_minutes
from board.plan.phrases.phrase import Phrase, near
from board.plan.phrases.stations import Degrees, parse_celsius

# What a step cooks, by the codes' classes; a roast is a whole cut that may have its own table.
FoodClass = Literal[
    "poultry", "ground meat", "whole cut", "roast", "injected meat", "fish", "eggs", "held eggs", "stuffed",
    "casserole", "leftovers",
]  # fmt: skip
ROAST = "roast"


def rule_class(cooks: str) -> str:
    """The class of food a rule set has a figure for."""
    return "whole cut" if cooks == ROAST else cooks


MOST_KILOS = 50.0


class Core(BaseModel):
    """The core temperature to reach, °C, and how many minutes to hold it."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    celsius: Degrees
    minutes: float = Field(default=0, ge=0, le=1440)


def parse_core(text: str) -> dict[str, object]:
    """`74 C`; `60 C for 12 min`; `165 F`. Raises ValueError."""
    head, said, held = text.partition(" for ")
    found: dict[str, object] = {"celsius": parse_celsius(head.strip())}
    if said:
        seconds = re.fullmatch(r"(\d+)\s*(?:s|sec|secs|seconds?)", held.strip(), re.IGNORECASE)
        found["minutes"] = int(seconds[1]) / 60 if seconds else parse_minutes(held.strip())
    return found


Until = Annotated[Core, Phrase(parse_core, "74 C, or 60 C for 12 min", "[CFcf]", numbers=False)]


class Thaw(BaseModel):
    """Kilograms to thaw, in the fridge or in cold water."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    kilos: float = Field(gt=0, le=MOST_KILOS)
    where: Literal["fridge", "cold water"] = "fridge"


_THAW = re.compile(
    r"(\d+(?:[.,]\d+)?)\s*(kg|g|lbs?|pounds?|kilos?)\b(?:\s*,)?(?:\s+in(?:\s+the)?)?\s*(.*)", re.IGNORECASE
)


def parse_thaw(text: str) -> dict[str, object]:
    """`2.2 kg in the fridge`, `5 lb in cold water`, `800 g`. Raises ValueError."""
    match = _THAW.fullmatch(text.strip())
    if match is None:
        raise ValueError(f"{text!r} does not say how much thaws; write for example 2.2 kg in the fridge")
    kilos = decimal(match[1])
    unit = match[2].lower()
    kilos *= 0.001 if unit == "g" else GRAMS["lb"] / 1000 if unit[0] in "lp" else 1
    where = match[3].strip().lower() or "fridge"
    if where not in ("fridge", "cold water"):
        raise ValueError(f"{where!r} is no safe place to thaw in; write in the fridge, or in cold water")
    return {"kilos": kilos, "where": where}


Thaws = Annotated[Thaw, Phrase(parse_thaw, "2.2 kg in the fridge")]


class Cooling(BaseModel):
    """How hot food is cooled: its depth in cm, its vessel, and what the vessel stands in."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    depth_cm: float = Field(gt=0, le=60)
    vessel: Vessel = "metal"
    bath: CoolingPlace | None = None  # None: decided by the step's place


_DEPTH = re.compile(r"(\d+(?:[.,]\d+)?)\s*(cm|mm|in|inch|inches)\s*(?:deep)?", re.IGNORECASE)


def parse_cooling(text: str) -> dict[str, object]:
    """`6 cm deep, metal, ice bath`: depth first, then vessel and bath in any order. Raises ValueError."""
    first, *rest = (piece.strip() for piece in re.split(r",(?!\d)", text))
    match = _DEPTH.fullmatch(first)
    if match is None:
        raise ValueError(f"{first!r} is not how deep the food lies; write for example 6 cm deep, metal, ice bath")
    unit = match[2].lower()
    centimetres = decimal(match[1]) * (0.1 if unit == "mm" else 1 if unit == "cm" else 2.54)
    found: dict[str, object] = {"depth_cm": centimetres}
    for piece in rest:
        bare = re.sub(r"^(?:in\s+)?(?:an?\s+|the\s+)?", "", piece.lower())
        if bare in VESSELS:
            found["vessel"] = bare
        elif bare in COOLING_PLACES:
            found["bath"] = bare
        else:
            known = (*VESSELS, *COOLING_PLACES)
            raise ValueError(f"{piece!r} is neither a vessel nor a bath.{near(bare, known)}; use {', '.join(known)}")
    return found


Cools = Annotated[Cooling, Phrase(parse_cooling, "6 cm deep, metal, ice bath")]
