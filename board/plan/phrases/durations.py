"""Durations as a cook writes them, in whole minutes: `25 min`, `1 h 30`, `PT1H30M`, `10 to 15 to 20 min`."""

import math
import re
from dataclasses import dataclass
from datetime import timedelta
from typing import Annotated, Any

from pydantic import (
    BaseModel,
    BeforeValidator,
    ConfigDict,
    Field,
    TypeAdapter,
    ValidationError,
    model_validator,
)

from board.base.words.times import short as short
from board.plan.phrases.phrase import Phrase, near

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


def _in_any_case(word: str) -> str:
    return "".join(f"[{c.upper()}{c}]" for c in word)


# A unit stands somewhere, or a word that has its own.
LENGTH_PATTERN = (
    "(^|[^A-Za-z])("
    + "|".join(_in_any_case(word) for word in [*_UNIT_OF, "overnight"])
    + r"|[pP][tT]?\d.*)($|[^A-Za-z])"
)
BOOK_PATTERN = r"^\s*" + r"\s+".join(map(_in_any_case, ("as", "in", "the", "book"))) + r"\s*$"
_NUMBER = r"\d*\s*[½¼¾]|\d+(?:[.,]\d+)?"
_PIECE = re.compile(rf"\s*({_NUMBER})\s*([a-zA-Z]*)\.?\s*(?:and\b)?\s*")
_BARE = re.compile(rf"({_NUMBER})(\s*(?:to|–|-)\s*({_NUMBER}))*")
_TWO_READINGS = re.compile(r"[1-9]\d{0,2},\d{3}(?!\d)")  # 1,500: decimal comma or thousands
_FRACTION = {"½": 0.5, "¼": 0.25, "¾": 0.75}
_ISO = TypeAdapter(timedelta)
OVERNIGHT = "8 h"  # common practice, no source
_NUMBERS = dict(
    zip(
        ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"],
        range(1, 13),
        strict=True,
    )
)
_NUMBERS |= {"a": 1, "an": 1, "fifteen": 15, "twenty": 20, "thirty": 30, "forty": 40, "forty-five": 45, "fifty": 50}
_NUMBERS |= {"sixty": 60, "ninety": 90}
_NUMBER_WORD = rf"\d+|{'|'.join(sorted(_NUMBERS, key=len, reverse=True))}"
_UNIT_WORD = "hours?|days?|weeks?|minutes?|mins?"
_SPOKEN: tuple[tuple[re.Pattern[str], str], ...] = (
    (re.compile(r"\bovernight\b", re.I), OVERNIGHT),
    (re.compile(r"\b(?:three|3)[\s-]+quarters\s+of\s+an\s+hour\b", re.I), "45 min"),
    (re.compile(r"\b(?:a\s+)?quarter\s+(?:of\s+)?an\s+hour\b", re.I), "15 min"),
    (re.compile(rf"\b({_NUMBER_WORD})\s+and\s+a\s+half\s+({_UNIT_WORD})\b", re.I), r"\1 \2 ½ \2"),
    (re.compile(rf"\b({_NUMBER_WORD})\s+({_UNIT_WORD})\s+and\s+a\s+half\b", re.I), r"\1 \2 ½ \2"),
    (re.compile(rf"\b(?:a\s+)?half[\s-]+(?:an?\s+)?({_UNIT_WORD})\b", re.I), r"½ \1"),
    (re.compile(r"(?<![\d/])(\d+\s+)?1/2(?!\d)"), r"\1½"),
)
_IN_WORDS = re.compile(rf"\b({_NUMBER_WORD})(?=\s+(?:{_UNIT_WORD})\b)", re.I)


def _in_figures(text: str) -> str:
    """`half an hour` as `½ hour`, `two hours` as `2 hours`, `overnight` as so many hours."""
    for spoken, figures in _SPOKEN:
        text = spoken.sub(figures, text)
    return _IN_WORDS.sub(lambda each: str(_NUMBERS.get(each[1].lower(), each[1])), text)


def decimal(text: str) -> float:
    """A number with a decimal point or comma. Raises ValueError for `1,500`, which is ambiguous."""
    if _TWO_READINGS.fullmatch(text):
        whole, after = text.split(",")
        raise ValueError(f"{text!r} can be read in two ways; write {whole}{after} or {whole}.{after}")
    return float(text.replace(",", "."))


def _number(text: str) -> float:
    text = text.strip()
    if text[-1] in _FRACTION:
        return float(text[:-1].strip() or 0) + _FRACTION[text[-1]]
    return decimal(text)


def parse_minutes(text: str) -> int:
    """Whole minutes, rounded up. Raises ValueError with a message for the host."""
    minutes = _parse(text)
    if minutes > LONGEST_MINUTES:
        raise ValueError(f"{text!r} is longer than a year; check the unit")
    if minutes < 0:
        raise ValueError(f"{text!r} lies below zero; a length of time cannot")
    return math.ceil(round(minutes, 6))


def _parse(text: str) -> float:
    """Minutes, unrounded."""
    text = text.strip()
    if not text:
        raise ValueError("a length of time is missing; write for example 25 min")
    if text.upper().startswith(("P", "+P")) and not text.islower():
        try:
            return _ISO.validate_python(text).total_seconds() / 60
        except ValidationError:
            raise ValueError(f"{text!r} is not an ISO 8601 duration; write for example PT1H30M or 1 h 30") from None
    if _BARE.fullmatch(text):
        raise ValueError(f"{text!r} has no unit; write for example {text} min")
    typed, text = text, _in_figures(text)
    position, total, last_unit = 0, 0.0, ""
    while position < len(text):
        piece = _PIECE.match(text, position)
        word = piece[2].lower() if piece else ""
        if piece is None or (not word and last_unit != "hour"):
            raise ValueError(f"{typed!r} is not a length of time; write for example 25 min, 1 h 30 or 2 days")
        if word and word not in _UNIT_OF:
            raise ValueError(f"{word!r} is not a unit of time; use min, h or days.{near(word, _UNIT_OF)}")
        last_unit = _UNIT_OF[word] if word else "min"  # `1 h 30`
        total += _number(piece[1]) * _UNITS[last_unit]
        position = piece.end()
    return total


_SPOKEN_UNIT = r"(?:hours?|hrs?|h|minutes?|mins?|min)"
_IN_TEXT = re.compile(
    rf"(?<![\w.,/-])(?P<low>{_NUMBER})\s*(?:(?:to|or|-|–)\s*(?P<high>{_NUMBER})\s*)?(?P<unit>{_SPOKEN_UNIT})\b"
    rf"(?:\s*(?:and\s+)?(?P<more>{_NUMBER})(?:\s*(?P<more_unit>{_SPOKEN_UNIT})\b|(?=\s*(?:$|[,;.)]))))?",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class LengthInText:
    """A length that a text names, in minutes, and the text on either side of it."""

    low: int
    high: int
    before: str
    after: str


def lengths_in(text: str) -> list[LengthInText]:
    """The lengths of minutes and hours in a text, such as `simmer for 20 to 30 minutes`; those of days, and those in a
    compound (`a 3-hour broth`), are left out. `overnight` is none of them."""
    text = re.sub(r"\bovernight\b", "night", text, flags=re.IGNORECASE)
    text = _in_figures(text)
    found = []
    for each in _IN_TEXT.finditer(text):
        try:
            unit = _UNITS[_UNIT_OF[each["unit"].lower()]]
            low, high = (_number(each[name] or each["low"]) * unit for name in ("low", "high"))
            more = _number(each["more"]) * _UNITS[_UNIT_OF[(each["more_unit"] or "min").lower()]] if each["more"] else 0
        except ValueError:  # `1,500 min`
            continue
        if 0 < low <= high <= LONGEST_MINUTES:
            low, high = math.ceil(low + more), math.ceil(high + more)
            found.append(LengthInText(low, high, text[: each.start()].rstrip(), text[each.end() :].lstrip()))
    return found


def _long_minutes(value: Any) -> Any:
    """In a long form, text such as `25 min` is parsed; a whole number is minutes."""
    if isinstance(value, bool):
        raise ValueError("a plain yes or no says too little here; write, for example, 25 min")
    return parse_minutes(value) if isinstance(value, str) else value


WholeMinutes = Annotated[int, BeforeValidator(_long_minutes), Field(ge=0, le=LONGEST_MINUTES)]


class Spread(BaseModel):
    """How long something takes: low, likely and high, in whole minutes; all equal for a single figure."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    low: WholeMinutes
    likely: WholeMinutes
    high: WholeMinutes

    @model_validator(mode="after")
    def _in_order(self) -> "Spread":
        if not self.low <= self.likely <= self.high:
            raise ValueError(
                f"low, likely and high must rise: {self.low}, {self.likely}, {self.high} min do not; "
                "write the shortest first, for example 10 to 15 to 20 min"
            )
        return self


_SPREAD_SIGN = re.compile(r"\s+to\s+|\s*–\s*|(?<=[\d a-zA-Z])\s*-\s*(?=\d)")


def parse_spread(text: str) -> dict[str, int]:
    """`25 min`: one figure; `20 to 30 min`: likely is the middle; `10 to 15 to 20 min`: all three. Raises
    ValueError."""
    pieces = [p for p in _SPREAD_SIGN.split(text.strip()) if p]
    if len(pieces) > 3:
        raise ValueError(f"{text!r} has more than three figures; write for example 10 to 15 to 20 min")
    if text.upper().startswith("P") or len(pieces) <= 1 or _BARE.fullmatch(text.strip()):
        minutes = parse_minutes(text)
        return {"low": minutes, "likely": minutes, "high": minutes}
    unit = re.search(r"[a-zA-Z]+(?=\.?\s*$)", pieces[-1])
    last = unit[0] if unit else ""
    figures = [parse_minutes(p if re.search(r"[a-zA-Z]", p) else f"{p} {last}") for p in pieces]
    if len(figures) == 2:
        figures.insert(1, math.ceil((figures[0] + figures[1]) / 2))
    return dict(zip(("low", "likely", "high"), figures, strict=True))


Minutes = Annotated[int, Phrase(parse_minutes, "25 min", LENGTH_PATTERN, numbers=False)]
Lasts = Annotated[Spread, Phrase(parse_spread, "10 to 15 to 20 min", LENGTH_PATTERN, numbers=False)]
# Of work, the cook's book may know it.
Takes = Annotated[Spread, Phrase(parse_spread, "10 to 15 to 20 min", f"{LENGTH_PATTERN}|{BOOK_PATTERN}", numbers=False)]


class Attention(BaseModel):
    """Which part of a step needs hands, in minutes: all of it, or its start, end and look-ins."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    whole: bool = False
    start: WholeMinutes = 0
    end: WholeMinutes = 0
    every: Annotated[WholeMinutes, Field(ge=1)] | None = None
    look: WholeMinutes = 0

    @model_validator(mode="after")
    def _look_ins_leave_time(self) -> "Attention":
        if self.every is not None and self.look > self.every:
            raise ValueError(
                f"a look-in of {self.look} min every {self.every} min never ends; write for example 1 min every 15 min"
            )
        return self


_AT_START = re.compile(r"(.+?)\s+(?:at\s+the\s+start|to\s+start)")
_AT_END = re.compile(r"(.+?)\s+(?:at\s+the\s+end|to\s+end)")
_EVERY = re.compile(r"(.+?)\s+every\s+(.+)")


def parse_attention(text: str) -> dict[str, object]:
    """`all`, `none`, or parts: `3 min at the start, 1 min every 15 min, 2 min at the end`. Raises ValueError."""
    folded = " ".join(text.lower().split())
    if folded in ("all", "all of it", "throughout", "the whole time"):
        return {"whole": True}
    if folded in ("none", "no", "nobody"):
        return {}
    found: dict[str, object] = {}
    for piece in re.split(r"\s*,\s*|\s+and\s+", folded):
        part = _attended_part(piece)
        if part.keys() & found.keys():
            raise ValueError(f"{piece!r} speaks of the same part twice; name the start, the end and one look-in")
        found.update(part)
    return found


def _attended_part(piece: str) -> dict[str, object]:
    """One part between commas."""
    if match := _AT_START.fullmatch(piece):
        return {"start": parse_minutes(match[1])}
    if match := _AT_END.fullmatch(piece):
        return {"end": parse_minutes(match[1])}
    if match := _EVERY.fullmatch(piece):
        every = parse_minutes(f"{match[2]} min" if _BARE.fullmatch(match[2]) else match[2])
        if every == 0:
            raise ValueError("a look-in every 0 min is not possible; write for example 1 min every 15 min")
        return {"look": parse_minutes(match[1]), "every": every}
    raise ValueError(
        f"{piece!r} does not say which part needs hands; write all, none, or for example "
        "3 min at the start, 1 min every 15 min, 2 min at the end"
    )


Attended = Annotated[Attention, Phrase(parse_attention, "2 min at the start, 1 min every 15 min")]


def takes_text(low: int, likely: int, high: int) -> str:
    """`10 to 15 to 20 min`, `2 h 30 to 2 h 45 to 3 h 15`, `25 min`; parses back to the same minutes."""
    if low == likely == high:
        return short(likely)
    if likely < 60 and high < 100:
        return f"{low} to {likely} to {high} min"
    return " to ".join(short(each) for each in (low, likely, high))
