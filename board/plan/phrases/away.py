"""When somebody is away, as a host writes it: by the clock, by what happens, or only for how long."""

import re
from typing import Annotated

from pydantic import BaseModel, ConfigDict, Field, model_validator

from board.plan.phrases.durations import WholeMinutes, parse_minutes
from board.plan.phrases.phrase import Phrase
from board.plan.phrases.when import CLOCK_PATTERN, Day, parse_clock, parse_day, parse_day_span

HOW = "write for example sat 17:40 - 18:10, 10 min from guests arrive, 25 min before guests arrive or fri, 30 min"
_CLOCK = re.compile(r"\d[:h]\d|\b\d{1,2}\.\d{2}\b(?!\s*(?:h|min|d))|\d\s*[ap]\.?m\b", re.IGNORECASE)
_BY_WHAT_HAPPENS = re.compile(r"(\S.*?)\s+(from|before|until|till|after)\s+(.+)", re.IGNORECASE | re.DOTALL)
_OFFSET = re.compile(r"(.*?\d.*?)\s+(before|after)\s+(.+)", re.IGNORECASE | re.DOTALL)
_ON_A_DAY = re.compile(r"(.+?)\s+on\s+(?!the\b)(.+)|(.+?)\s+(on the day|the day before)", re.IGNORECASE | re.DOTALL)


class Happening(BaseModel):
    """Something of the plan that happens, `guests arrive`, `Main served`, `Main cleared`; so many minutes later, or
    sooner if below zero."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    event: Annotated[str, Field(min_length=1, max_length=300)]
    minutes: Annotated[int, Field(ge=-24 * 60, le=24 * 60)] = 0


def parse_happening(text: str) -> dict[str, object]:
    """`guests arrive`, `1 h before guests arrive`, `20 min after Main served`. Raises ValueError."""
    match = _OFFSET.fullmatch(text.strip())
    if match is None:
        return {"event": text.strip()}
    minutes = parse_minutes(match[1])
    if minutes > 24 * 60:
        raise ValueError(f"{text!r} is more than a day off; check the figure")
    return {"event": match[3].strip(), "minutes": minutes if match[2].lower() == "after" else -minutes}


class Away(BaseModel):
    """From `start` to `end` by the clock, on a day; or for a length, from or up to what happens, or with neither at the
    meal it is called by."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    day: Annotated[Day, Phrase(parse_day, "day before")] | None = None
    start: Annotated[str, Phrase(parse_clock, "17:40", CLOCK_PATTERN)] | None = None
    end: Annotated[str, Phrase(parse_clock, "18:10", CLOCK_PATTERN)] | None = None
    length: WholeMinutes | None = None
    from_: Annotated[Happening, Phrase(parse_happening, "guests arrive")] | None = Field(None, alias="from")
    before: Annotated[Happening, Phrase(parse_happening, "guests arrive")] | None = None

    @model_validator(mode="after")
    def _one_way_of_saying_it(self) -> "Away":
        clock = self.start is not None and self.end is not None
        happens = [each for each in (self.from_, self.before) if each is not None]
        if clock != (self.length is None) or (self.start is None) != (self.end is None):
            raise ValueError(f"a time away is from `start` to `end`, or for a `length`; {HOW}")
        if (clock and happens) or len(happens) > 1 or (happens and self.day is not None):
            raise ValueError(f"a time away is told in two ways at once; {HOW}")
        if self.length == 0:
            raise ValueError(f"a time away of 0 min is none; {HOW}")
        return self


def parse_away(text: str) -> dict[str, object]:
    """`sat 17:40 - 18:10`, `10 min from guests arrive`, `25 min before guests arrive`, `30 min from 1 h before guests
    arrive`, `30 min`, `fri, 30 min`, `30 min on Friday`. Raises ValueError."""
    if _CLOCK.search(text):
        return parse_day_span(text)
    if match := _BY_WHAT_HAPPENS.fullmatch(text.strip()):
        return _by_what_happens(text, match[1], match[2].lower(), match[3])
    if on := _ON_A_DAY.fullmatch(text.strip()):
        return {"day": parse_day(on[2] or on[4]), "length": _length(text, on[1] or on[3])}
    day, comma, length = text.strip().partition(",")
    if comma:
        return {"day": parse_day(day), "length": _length(text, length)}
    first, _, rest = text.strip().partition(" ")
    try:
        return {"day": parse_day(first), "length": _length(text, rest)}
    except ValueError:
        return {"length": _length(text, text)}


def _by_what_happens(text: str, length: str, joint: str, event: str) -> dict[str, object]:
    if joint == "after":
        raise ValueError(f"{text!r} can be read in two ways; write {length} from {event}")
    if re.fullmatch(r"\s*(?:\d+\s+|the\s+|a\s+)?days?", length):  # `2 days before`
        raise ValueError(f"{text!r} does not say how long; {HOW}")
    return {"length": _length(text, length), "from" if joint == "from" else "before": parse_happening(event)}


def _length(text: str, length: str) -> int:
    try:
        return parse_minutes(length)
    except ValueError as wrong:
        reason, _, _ = str(wrong).partition(";")
        raise ValueError(f"{text.strip()!r} is no time away: {reason}; {HOW}") from None
