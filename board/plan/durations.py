"""Durations as a cook writes them, in whole minutes: `25 min`, `1 h 30`, `PT1H30M`, `10 to 15 to 20 min`."""

import math
import re
from datetime import timedelta
from typing import Annotated, Any

from pydantic import BaseModel, ConfigDict, TypeAdapter, ValidationError, model_validator

from board.plan.phrase import Phrase

MINUTES_PER_DAY = 24 * 60
LONGEST_MINUTES = 400 * MINUTES_PER_DAY

_UNITS = {"week": 7 * MINUTES_PER_DAY, "day": MINUTES_PER_DAY, "hour": 60, "min": 1, "sec": 1 / 60}
_UNIT_OF = {
    **dict.fromkeys(("w", "week", "weeks"), "week"),
    **dict.fromkeys(("d", "day", "days"), "day"),
    **dict.fromkeys(("h", "hr", "hrs", "hour", "hours"), "hour"),
    **dict.fromkeys(("m", "min", "mins", "minute", "minutes"), "min"),
    **dict.fromkeys(("s", "sec", "secs", "second", "seconds"), "sec"),
}
_NUMBER = r"\d+(?:[.,]\d+)?|\d*\s*[½¼¾]"
_PIECE = re.compile(rf"\s*({_NUMBER})\s*([a-zA-Z]*)\.?\s*(?:and\b)?\s*")
_FRACTION = {"½": 0.5, "¼": 0.25, "¾": 0.75}
_ISO = TypeAdapter(timedelta)


def _number(text: str) -> float:
    text = text.strip()
    if text[-1] in _FRACTION:
        return float(text[:-1].strip() or 0) + _FRACTION[text[-1]]
    return float(text.replace(",", "."))


def parse_minutes(text: str) -> int:
    """Whole minutes, rounded up. Raises ValueError with a message for the host."""
    return _in_range(math.ceil(round(_parse(text), 6)), text)


def _in_range(minutes: int, text: str) -> int:
    if not 0 <= minutes <= LONGEST_MINUTES:
        raise ValueError(f"{text!r} is longer than a year; check the unit")
    return minutes


def _parse(text: str) -> float:
    """Minutes, not yet rounded."""
    text = text.strip()
    if text.upper().startswith(("P", "+P")) and not text.islower():
        try:
            return _ISO.validate_python(text).total_seconds() / 60
        except ValidationError:
            raise ValueError(
                f"{text!r} is not an ISO 8601 duration; write for example PT1H30M or 1 h 30"
            ) from None
    position, total, last_unit = 0, 0.0, ""
    while position < len(text):
        piece = _PIECE.match(text, position)
        if piece is None:
            raise ValueError(f"{text!r} is not a length of time; write for example 25 min, 1 h 30 or 2 days")
        number, word = piece[1], piece[2].lower()
        if word in _UNIT_OF:
            last_unit = _UNIT_OF[word]
        elif word == "" and last_unit == "hour":
            last_unit = "min"  # `1 h 30`
        elif word == "":
            raise ValueError(f"{text!r} has no unit; write for example {text} min")
        else:
            raise ValueError(f"{word!r} is not a unit of time; use min, h or days")
        total += _number(number) * _UNITS[last_unit]
        position = piece.end()
    if not text:
        raise ValueError("a length of time is missing; write for example 25 min")
    return total


class Spread(BaseModel):
    """How long something takes: low, likely and high, in whole minutes; all equal when one figure was given."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    low: int
    likely: int
    high: int

    @model_validator(mode="before")
    @classmethod
    def _words(cls, value: Any) -> Any:
        if isinstance(value, dict):
            return {k: parse_minutes(str(v)) if isinstance(v, str) else v for k, v in value.items()}
        return value

    @model_validator(mode="after")
    def _in_order(self) -> "Spread":
        if not self.low <= self.likely <= self.high:
            raise ValueError(
                f"low, likely and high must rise: {self.low}, {self.likely}, {self.high} min do not"
            )
        if self.low < 0:
            raise ValueError("a length of time cannot be below zero")
        return self


_SPREAD_SIGN = re.compile(r"\s+to\s+|\s*–\s*|(?<=[\d a-zA-Z])\s*-\s*(?=\d)")


def parse_spread(text: str) -> dict[str, int]:
    """`25 min` → one figure; `20 to 30 min` → the middle is likely; `10 to 15 to 20 min` → all three."""
    if text.upper().startswith("P"):
        minutes = parse_minutes(text)
        return {"low": minutes, "likely": minutes, "high": minutes}
    pieces = [p for p in _SPREAD_SIGN.split(text) if p]
    if not 1 <= len(pieces) <= 3:
        raise ValueError(f"{text!r} is not a length of time; write for example 25 min or 10 to 15 to 20 min")
    unit = re.search(r"([a-zA-Z]+)\.?\s*$", pieces[-1])
    if unit is None and len(pieces) > 1 and not re.search(r"h", pieces[-1]):
        raise ValueError(f"{text!r} has no unit; write for example {text} min")
    with_units = [
        p if re.search(r"[a-zA-Z]", p) else f"{p} {unit[1] if unit else ''}".strip() for p in pieces
    ]
    figures = [parse_minutes(p) for p in with_units]
    if len(figures) == 2:
        figures = [figures[0], math.ceil((figures[0] + figures[1]) / 2), figures[1]]
    return {"low": figures[0], "likely": figures[len(figures) // 2], "high": figures[-1]}


Minutes = Annotated[int, Phrase(parse_minutes, "25 min")]
Takes = Annotated[Spread, Phrase(parse_spread, "10 to 15 to 20 min")]


class Attention(BaseModel):
    """Which part of a step needs hands, in minutes: all of it, or its start, its end, and a look-in every so often."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    whole: bool = False
    start: int = 0
    end: int = 0
    every: int | None = None
    look: int = 0


_AT_START = re.compile(r"(.+?)\s+(?:at\s+the\s+start|to\s+start)$")
_AT_END = re.compile(r"(.+?)\s+(?:at\s+the\s+end|to\s+end)$")
_EVERY = re.compile(r"(.+?)\s+every\s+(.+)$")


def parse_attention(text: str) -> dict[str, object]:
    """`all`, `none`, or pieces: `3 min at the start, 1 min every 15 min, 2 min at the end`."""
    folded = " ".join(text.lower().split())
    if folded in ("all", "all of it", "throughout", "the whole time"):
        return {"whole": True}
    if folded in ("none", "no", "nobody"):
        return {}
    found: dict[str, object] = {}
    for piece in re.split(r"\s*,\s*|\s+and\s+", folded):
        if match := _AT_START.fullmatch(piece):
            found["start"] = parse_minutes(match[1])
        elif match := _AT_END.fullmatch(piece):
            found["end"] = parse_minutes(match[1])
        elif match := _EVERY.fullmatch(piece):
            every = match[2] if re.search(r"[a-z]", match[2]) else match[2] + " min"
            found["look"], found["every"] = parse_minutes(match[1]), parse_minutes(every)
            if found["every"] == 0:
                raise ValueError(
                    "a look-in every 0 min is not possible; write for example 1 min every 15 min"
                )
        else:
            raise ValueError(
                f"{piece!r} does not say which part needs hands; write all, none, or for example "
                "3 min at the start, 1 min every 15 min, 2 min at the end"
            )
    return found


Attended = Annotated[Attention, Phrase(parse_attention, "2 min at the start, 1 min every 15 min")]


def short(minutes: int) -> str:
    """`25 min`, `1 h 30`, `2 days`; the way the program writes a length of time."""
    if minutes >= MINUTES_PER_DAY and minutes % MINUTES_PER_DAY == 0:
        days = minutes // MINUTES_PER_DAY
        return "1 day" if days == 1 else f"{days} days"
    hours, rest = divmod(minutes, 60)
    if hours == 0:
        return f"{rest} min"
    return f"{hours} h {rest:02d}" if rest else f"{hours} h"
