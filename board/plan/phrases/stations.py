"""Where a step is done and what it uses: `oven at 200 C (190 to 210 C), 1 shelf, roasting tin`."""

import re
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, model_validator

from board.facts.degrees import to_celsius
from board.facts.heat import ROOM_CELSIUS
from board.plan.phrases.durations import LENGTH_PATTERN, WholeMinutes, decimal, parse_minutes, short
from board.plan.phrases.phrase import Phrase

Lane = Literal["oven", "stovetop", "fridge", "front-of-house", "worktop"]
LANES: tuple[Lane, ...] = ("oven", "stovetop", "fridge", "front-of-house", "worktop")
OvenWay = Literal["heats", "cools", "cools ajar"]  # an oven's rates, by the plan's keys
STATIONS = (*LANES, "freezer", "room", "hot")

# What else a host calls a place. An oven of these names is written with its setting: `cooker at 180 C`.
PLACE_WORDS: dict[str, str] = {
    **dict.fromkeys(("hob", "stove", "cooker", "cooktop", "stove top", "hot plate", "burner", "range"), "stovetop"),
    **dict.fromkeys(("refrigerator",), "fridge"),
    **dict.fromkeys(("deep freezer", "deep freeze"), "freezer"),
    **dict.fromkeys(("counter", "countertop", "work surface", "workbench", "bench"), "worktop"),
    **dict.fromkeys(("front of house", "dining room"), "front-of-house"),
    **dict.fromkeys(("room temperature",), "room"),
}

# A word, no comma with nothing after it, and no oven without its setting.
WHERE_PATTERN = r"^(?!\s*([tT]he\s+)?[oO]ven\s*$)(?!.*,\s*(,|$)).*[^\d\s]"
DEGREES_PATTERN = r"^\s*-?\d+(\.\d+)?\s*°?\s*[CFcf]\s*$"

COLDEST, HOTTEST = -100.0, 600.0  # °C; no kitchen goes beyond

_TEMPERATURE = re.compile(r"(-?\d+(?:\.\d+)?)\s*°?\s*([CF])?", re.IGNORECASE)
_RANGE = re.compile(r"(-?[^–-]+?)(?:\s+to\s+|\s*–\s*|\s*-\s*)(.+)")


def parse_celsius(text: str) -> float:
    """One temperature with its unit, in °C. Raises ValueError."""
    match = _TEMPERATURE.fullmatch(text.strip())
    if match is None:
        raise ValueError(f"{text!r} is not a temperature; write for example 180 C or 350 F")
    if match[2] is None:
        raise ValueError(f"{text!r} has no unit; write {text} C or {text} F")
    celsius = to_celsius(float(match[1]), match[2])
    if not COLDEST <= celsius <= HOTTEST:
        raise ValueError(f"{text!r} is no temperature of a kitchen; check the figure and its unit")
    return celsius


Degrees = Annotated[float, Field(ge=COLDEST, le=HOTTEST)]


class Heat(BaseModel):
    """The oven setting wanted, and the range the dish accepts: of a setting written alone, that setting only. °C."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    want: Degrees
    low: Degrees
    high: Degrees

    @model_validator(mode="after")
    def _in_order(self) -> "Heat":
        if not self.low <= self.want <= self.high:
            raise ValueError(
                f"{self.want:g} C lies outside its own range {self.low:g} to {self.high:g} C; "
                "write the setting first, then what the dish accepts: 200 C (190 to 210 C)"
            )
        return self

    def meets(self, other: "Heat") -> bool:
        """Whether one setting does for both."""
        return max(self.low, other.low) <= min(self.high, other.high)


def parse_heat(text: str) -> dict[str, object]:
    """`200 C`, `190 to 210 C`, `200 C (190 to 210 C)`; also in °F. Raises ValueError."""
    text = text.strip()
    inner = re.fullmatch(r"([^(]+)\(([^)]*)\)", text)
    span = _span((inner[2] if inner else text).strip())
    if inner and span is None:
        raise ValueError(f"{inner[2]!r} is not a range of heat; write for example (190 to 210 C)")
    if span:
        low, high = span
        return {"want": parse_celsius(inner[1]) if inner else (low + high) / 2, "low": low, "high": high}
    want = parse_celsius(text)
    return {"want": want, "low": want, "high": want}


def _span(text: str) -> tuple[float, float] | None:
    """`190 to 210 C` in °C; None if it is no range. Raises ValueError if it runs backwards."""
    match = _RANGE.fullmatch(text)
    if match is None:
        return None
    high = parse_celsius(match[2])
    low = parse_celsius(match[1] if match[1][-1].isalpha() else match[1] + text[-1])
    if low > high:
        raise ValueError(f"{text!r} runs backwards; write the lower temperature first")
    return low, high


class Station(BaseModel):
    """A place to work or keep food, and what is used there. Amounts not given are None.

    `off`: the oven is switched off, and what was baked rests as it cools; `ajar`: with the door ajar.
    """

    model_config = ConfigDict(extra="forbid", frozen=True)

    place: Literal["oven", "stovetop", "fridge", "front-of-house", "worktop", "freezer", "room", "hot"]
    oven: str | None = None
    heat: Annotated[Heat, Phrase(parse_heat, "200 C (190 to 210 C)")] | None = None
    shelves: int | None = Field(default=None, ge=1, le=1000)
    rings: int | None = Field(default=None, ge=1, le=1000)
    litres: float | None = Field(default=None, gt=0, le=10_000)
    tools: dict[str, Annotated[int, Field(ge=1, le=1000)]] = {}
    off: bool = False
    ajar: bool = False

    @property
    def lane(self) -> Lane | None:
        """The board lane it is shown in; None if the place has none."""
        if self.place == "freezer":
            return "fridge"
        return self.place if self.place in LANES else None

    @property
    def on_heat(self) -> bool:
        """Whether it is an oven or a ring, lit or not."""
        return self.place in ("oven", "stovetop")

    @property
    def hot(self) -> bool:
        """Whether what is done or kept there needs somebody at home: a lit oven, a ring, or `hot`."""
        return not self.off and (self.on_heat or self.place == "hot" or bool(self.rings))


_COMMA = re.compile(r"(?:(?<!\d),|,(?!\d))(?![^(]*\))")  # not a decimal comma, nor one in brackets
_COUNTED = re.compile(r"(?:(\d+)|an?|one)\s+(shelf|shelves|rings?|burners?)", re.IGNORECASE)
_LITRES = re.compile(r"(\d+(?:[.,]\d+)?)\s*(?:litres?|liters?|l)", re.IGNORECASE)
_TOOL = re.compile(r"(?:(\d+)\s+)?(.+)", re.DOTALL)
_OFF = re.compile(r"(?:switched\s+|turned\s+)?off", re.IGNORECASE)
_DOOR = re.compile(r"(?:the\s+)?door\s+(ajar|shut|closed)", re.IGNORECASE)
_HEAD_OFF = re.compile(r"(.+?)\s+(?:switched\s+|turned\s+)?off", re.IGNORECASE)
_HEAT_FIRST = re.compile(r"-?\d+(?:\.\d+)?\s*(?:°|[CF]\b|to\b|–|-)", re.IGNORECASE)


def parse_station(text: str) -> dict[str, object]:
    """`stovetop, 1 ring, big pot`; `oven at 200 C (190 to 210 C), 1 shelf`; `fridge, 4 litres`; `oven off, door ajar`.
    Raises ValueError."""
    pieces = [p.strip() for p in _COMMA.split(text)]
    head, _, heat = (p.strip() for p in pieces[0].partition(" at "))
    if not head:
        raise ValueError("the place is missing; write for example stovetop, 1 ring, big pot")
    off = _HEAD_OFF.fullmatch(head)
    if off:
        head = off[1]
    place = head.lower().removeprefix("the ")
    found: dict[str, object] = {"place": place} if place in STATIONS else {"place": "oven", "oven": head}
    if place in PLACE_WORDS and not heat and not off and not any(map(_HEAT_FIRST.match, pieces[1:])):
        found = {"place": PLACE_WORDS[place]}
    if off:
        found["off"] = True
    tools: dict[str, int] = {}
    for piece in ([heat] if heat else []) + pieces[1:]:
        bare = piece.removeprefix("at ").strip()
        if not bare:
            raise ValueError(f"{text!r} has a comma with nothing after it")
        if piece is heat or _HEAT_FIRST.match(bare):
            found["heat"] = parse_heat(bare)
        elif _OFF.fullmatch(bare):
            found["off"] = True
        elif match := _DOOR.fullmatch(bare):
            found["ajar"] = match[1].lower() == "ajar"
        elif match := _COUNTED.fullmatch(bare):
            found["shelves" if match[2].lower().startswith("shel") else "rings"] = int(match[1] or 1)
        elif match := _LITRES.fullmatch(bare):
            found["litres"] = decimal(match[1])
        elif bare.isdecimal():
            raise ValueError(f"{bare!r} does not say of what; write for example 200 C, 1 shelf or 4 litres")
        elif match := _TOOL.fullmatch(bare):
            tools[match[2].removeprefix("the ")] = int(match[1] or 1)
    if tools:
        found["tools"] = tools
    return found


Where = Annotated[Station, Phrase(parse_station, "stovetop, 1 ring, big pot", WHERE_PATTERN, numbers=False)]


class Keep(BaseModel):
    """How many minutes a result stays good, and where it is kept."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    minutes: WholeMinutes
    where: Where


KEEPS_IN = ("room", "fridge", "freezer", "hot", "oven", "stovetop")
_KEEP = re.compile(r"(.+?)[\s,]+(?:(?:in|on|at)(?:\s+the)?\s+(.+)|((?:room|fridge|freezer|hot|oven|stovetop)\b.*))")


def parse_keep(text: str) -> dict[str, object]:
    """`3 days in the fridge, 4 litres`; `40 min in the oven at 90 C (80 to 100 C)`; `30 min hot`; `2 h`. Raises
    ValueError."""
    match = _KEEP.fullmatch(text.strip())
    try:
        minutes = parse_minutes(match[1] if match else text)
    except ValueError as wrong:
        said = str(wrong).partition("; ")[0]
        raise ValueError(f"{said}; write how long it keeps, then where: {_KEEP_EXAMPLES}") from None
    where = parse_station(match[2] or match[3]) if match else {"place": "room"}
    if where["place"] not in KEEPS_IN:
        raise ValueError(f"{where['place']!r} is no place where things keep; write for example {_KEEP_EXAMPLES}")
    return {"minutes": minutes, "where": where}


_KEEP_EXAMPLES = "3 days in the fridge, 2 h in the room, 30 min hot, 40 min in the oven at 90 C"

Keeps = Annotated[Keep, Phrase(parse_keep, "3 days in the fridge, 4 litres", LENGTH_PATTERN, numbers=False)]


class HeatRate(BaseModel):
    """How fast an oven heats or cools: the minutes from one temperature to another. °C."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    minutes: Annotated[WholeMinutes, Field(ge=1)]
    start: Degrees
    end: Degrees

    @property
    def text(self) -> str:
        """As written in a plan."""
        return rate_text(self.minutes, self.start, self.end)


def parse_heats(text: str) -> dict[str, object]:
    """`15 min to 180 C`, from a cold oven. Raises ValueError."""
    match = re.fullmatch(r"(.+?)\s+to\s+(.+)", text)
    if match is None:
        raise ValueError(f"{text!r} does not say how fast; write for example 15 min to 180 C")
    return {"minutes": parse_minutes(match[1]), "start": ROOM_CELSIUS, "end": parse_celsius(match[2])}


def parse_cools(text: str) -> dict[str, object]:
    """`25 min from 200 to 120 C`. Raises ValueError."""
    match = re.fullmatch(r"(.+?)\s+from\s+(.+?)\s+to\s+(.+)", text)
    if match is None:
        raise ValueError(f"{text!r} does not say how fast; write for example 25 min from 200 to 120 C")
    start = match[2].strip()
    if not start[-1:].isalpha():
        start += match[3].strip()[-1:]
    return {"minutes": parse_minutes(match[1]), "start": parse_celsius(start), "end": parse_celsius(match[3])}


def rate_text(minutes: int, start: float, end: float) -> str:
    """`15 min to 180 C` from a cold oven, otherwise `25 min from 200 to 120 C`; °C."""
    if start == ROOM_CELSIUS:
        return f"{short(minutes)} to {end:g} C"
    return f"{short(minutes)} from {start:g} to {end:g} C"
