"""Where a step stands and what it uses: `oven at 200 C (190 to 210 C), 1 shelf, roasting tin`."""

import re
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, model_validator

from board.plan.durations import parse_minutes
from board.plan.phrase import Phrase

Lane = Literal["oven", "stovetop", "fridge", "front-of-house", "worktop"]
LANES: tuple[Lane, ...] = ("oven", "stovetop", "fridge", "front-of-house", "worktop")
STATIONS = (*LANES, "freezer", "room", "hot")

ACCEPTS_EITHER_SIDE = 10.0  # °C around a single setting; common practice, no source

_TEMPERATURE = re.compile(r"(-?\d+(?:\.\d+)?)\s*°?\s*([CF])?", re.IGNORECASE)
_RANGE = re.compile(
    r"(-?\d+(?:\.\d+)?)\s*°?\s*[CF]?\s*(?:to|–|-)\s*(-?\d+(?:\.\d+)?)\s*°?\s*([CF])", re.IGNORECASE
)


def to_celsius(degrees: float, unit: str) -> float:
    """°F → °C exactly by definition (NIST SP 811, B.8); °C is returned as it is. Not rounded."""
    return (degrees - 32) * 5 / 9 if unit.upper() == "F" else degrees


def parse_celsius(text: str) -> float:
    """One temperature with its unit, in °C. Raises ValueError."""
    match = _TEMPERATURE.fullmatch(text.strip())
    if match is None:
        raise ValueError(f"{text!r} is not a temperature; write for example 180 C or 350 F")
    if match[2] is None:
        raise ValueError(f"{text!r} has no unit; write {text} C or {text} F")
    return to_celsius(float(match[1]), match[2])


class Heat(BaseModel):
    """An oven setting wanted, with the range the dish accepts. °C."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    want: float
    low: float
    high: float
    range_given: bool = True

    @model_validator(mode="after")
    def _in_order(self) -> "Heat":
        if not self.low <= self.want <= self.high:
            raise ValueError(f"{self.want:g} C lies outside its own range {self.low:g} to {self.high:g} C")
        return self


def parse_heat(text: str) -> dict[str, object]:
    """`200 C`, `190 to 210 C`, `200 C (190 to 210 C)`; also in °F."""
    text = text.strip()
    inner = re.fullmatch(r"([^(]+)\(([^)]*)\)", text)
    span = _RANGE.fullmatch((inner[2] if inner else text).strip())
    if inner and span is None:
        raise ValueError(f"{inner[2]!r} is not a range of heat; write for example (190 to 210 C)")
    if span:
        low, high = to_celsius(float(span[1]), span[3]), to_celsius(float(span[2]), span[3])
        if low > high:
            raise ValueError(f"{span[0]!r} runs backwards; write the lower temperature first")
        return {"want": parse_celsius(inner[1]) if inner else (low + high) / 2, "low": low, "high": high}
    want = parse_celsius(text)
    either_side = ACCEPTS_EITHER_SIDE
    return {"want": want, "low": want - either_side, "high": want + either_side, "range_given": False}


class Station(BaseModel):
    """A place to work or to stand, with what is taken there. Amounts that were not given are None."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    place: Literal["oven", "stovetop", "fridge", "front-of-house", "worktop", "freezer", "room", "hot"]
    oven: str | None = None
    heat: Annotated[Heat, Phrase(parse_heat, "200 C (190 to 210 C)")] | None = None
    shelves: int | None = Field(default=None, ge=1)
    rings: int | None = Field(default=None, ge=1)
    litres: float | None = Field(default=None, gt=0, le=10_000)
    tools: dict[str, Annotated[int, Field(ge=1)]] = {}

    @property
    def lane(self) -> Lane | None:
        """The lane of the board it is shown in; None for a place that is no lane."""
        if self.place == "freezer":
            return "fridge"
        return self.place if self.place in LANES else None  # type: ignore[return-value]  # narrowed by the test


_COUNTED = re.compile(r"(?:(\d+)|an?|one)\s+(shelf|shelves|rings?)", re.IGNORECASE)
_LITRES = re.compile(r"(\d+(?:[.,]\d+)?)\s*(?:litres?|liters?|l)", re.IGNORECASE)
_TOOL = re.compile(r"(?:(\d+)\s+)?(.+)")


def parse_station(text: str) -> dict[str, object]:
    """`stovetop, 1 ring, big pot`; `oven at 200 C (190 to 210 C), 1 shelf`; `fridge, 4 litres`."""
    pieces = [p.strip() for p in re.split(r",(?![^(]*\))", text)]
    head, _, heat = (p.strip() for p in pieces[0].partition(" at "))
    if not head:
        raise ValueError("the place is missing; write for example stovetop, 1 ring, big pot")
    place = head.lower().removeprefix("the ")
    found: dict[str, object] = {"place": place} if place in STATIONS else {"place": "oven", "oven": head}
    tools: dict[str, int] = {}
    for piece in ([heat] if heat else []) + pieces[1:]:
        bare = piece.removeprefix("at ").strip()
        if not bare:
            raise ValueError(f"{text!r} has a comma with nothing after it")
        if re.match(r"-?\d+(?:\.\d+)?\s*(?:°|[CF]\b|to\b|–|-)", bare) or piece is heat:
            found["heat"] = parse_heat(bare)
        elif match := _COUNTED.fullmatch(bare):
            found["shelves" if match[2].lower().startswith("shel") else "rings"] = int(match[1] or 1)
        elif match := _LITRES.fullmatch(bare):
            found["litres"] = float(match[1].replace(",", "."))
        elif match := _TOOL.fullmatch(bare):
            tools[match[2].removeprefix("the ")] = int(match[1] or 1)
    if tools:
        found["tools"] = tools
    return found


On = Annotated[Station, Phrase(parse_station, "stovetop, 1 ring, big pot")]


class Keep(BaseModel):
    """How long a result stays good, in minutes, and where it stands meanwhile."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    minutes: int
    where: Station


_KEEP = re.compile(
    r"(.+?)\s*(?:,|\s)\s*(?:in\s+the|on\s+the|at\s+the|in|on|at)?\s*\b(room|fridge|freezer|hot|oven|stovetop)\b(.*)"
)


def parse_keep(text: str) -> dict[str, object]:
    """`3 days in the fridge, 4 litres`; `40 min in the oven at 90 C (80 to 100 C)`; `30 min hot`; `2 h`."""
    match = _KEEP.fullmatch(text.strip())
    if match is None:
        try:
            return {"minutes": parse_minutes(text), "where": {"place": "room"}}
        except ValueError as wrong:
            raise ValueError(
                f"{wrong}; a thing keeps, for example, 3 days in the fridge (or room, freezer, hot, oven, stovetop)"
            ) from None
    return {"minutes": parse_minutes(match[1]), "where": parse_station(match[2] + match[3])}


Keeps = Annotated[Keep, Phrase(parse_keep, "3 days in the fridge, 4 litres")]


class HeatRate(BaseModel):
    """How fast an oven changes: so many minutes from one temperature to another. °C."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    minutes: int = Field(ge=1)
    start: float
    end: float


def parse_heats(text: str) -> dict[str, object]:
    """`15 min to 180 C`, from a cold oven."""
    match = re.fullmatch(r"(.+?)\s+to\s+(.+)", text)
    if match is None:
        raise ValueError(f"{text!r} does not say how fast; write for example 15 min to 180 C")
    return {"minutes": parse_minutes(match[1]), "start": 20.0, "end": parse_celsius(match[2])}


def parse_cools(text: str) -> dict[str, object]:
    """`25 min from 200 to 120 C`."""
    match = re.fullmatch(r"(.+?)\s+from\s+(.+?)\s+to\s+(.+)", text)
    if match is None:
        raise ValueError(f"{text!r} does not say how fast; write for example 25 min from 200 to 120 C")
    unit = match[3].strip()[-1]
    start = match[2] if match[2].strip()[-1].isalpha() else f"{match[2]} {unit}"
    return {"minutes": parse_minutes(match[1]), "start": parse_celsius(start), "end": parse_celsius(match[3])}
