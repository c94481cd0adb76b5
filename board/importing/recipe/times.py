"""Durations in a recipe's words: `25–30 minutes`, `an hour and a half`. Pure; English."""

import math
import re
from dataclasses import dataclass

from board.plan.phrases.durations import short

LONGEST_MINUTES = 7 * 24 * 60
OVERNIGHT_MINUTES = 8 * 60  # common practice, no source
_WORDS = {
    "half an": 0.5, "half a": 0.5, "a couple of": 2, "a few": 3, "an": 1, "a": 1, "one": 1, "two": 2, "three": 3,
    "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10, "twelve": 12, "fifteen": 15,
    "twenty": 20, "twenty-five": 25, "thirty": 30, "forty": 40, "forty-five": 45, "fifty": 50, "sixty": 60,
    "ninety": 90,
}  # fmt: skip
_VULGAR = {"½": 0.5, "¼": 0.25, "¾": 0.75, "⅓": 1 / 3, "⅔": 2 / 3}
_FIGURE = (
    r"(?:\d{1,4}\s+\d/\d|\d/\d|\d{1,4}(?:[.,]\d{1,2})?\s?[½¼¾⅓⅔]?|[½¼¾⅓⅔]|\b(?:"
    + "|".join(sorted(_WORDS, key=len, reverse=True))
    + r")\b)"
)
_UNITS = {"s": 1 / 60, "m": 1, "h": 60, "d": 1440}
_UNIT = r"(seconds?|secs?|minutes?|mins?|hours?|hrs?|h|days?)\b\.?"
_JOINT = r"\s*(?:-|–|—|to|or)\s*"
_LENGTH = re.compile(
    rf"(?P<low>{_FIGURE})\s*-?\s*(?:{_UNIT})?(?:{_JOINT}(?:about\s+)?(?P<high>{_FIGURE}))?\s*-?\s*{_UNIT}"
    r"(?P<half>\s+and\s+a\s+half)?",
    re.IGNORECASE,
)
_NOT_BEFORE = re.compile(
    r"(?:every|each|after|within|last|first|final|up to|once|twice|times|keeps?(?: for)?)\s+(?:the\s+)?$", re.IGNORECASE
)
# `rest 45 min before carving`: that long; `salt 30 min before serving`: at what time.
_WAITED = re.compile(
    r"\b(?:rest|stand|sit|hang|let|cool|chill|settle|leave|refrigerate|freeze|wait|prove|rise|soak)\b[^.;]{0,60}$",
    re.IGNORECASE,
)
_RATE = re.compile(
    r"\s*(?:per|for (?:each|every)|a|each|to the)\s+(?P<amount>\d{2,4}|half an?|1/2|½)?\s*"
    r"(?P<unit>g|grams?|kg|kilo(?:gram)?s?|lbs?|pounds?)\b",
    re.IGNORECASE,
)
_GRAMS = {"g": 1.0, "k": 1000.0, "l": 453.59237, "p": 453.59237}  # NIST Handbook 44, appendix C
_NOT_AFTER = re.compile(r"\s*(?:before|ahead|in advance|beforehand)\b", re.IGNORECASE)
_BOTH_SIDES = re.compile(r"\s*(?:per|on each|each|a|on both)\s+sides?\b|\s*on the other side\b", re.IGNORECASE)
_STORED = re.compile(r"\b(?:keeps?|store[ds]?|will keep|can be kept|lasts?)\b", re.IGNORECASE)
_OVERNIGHT = re.compile(r"\bovernight\b", re.IGNORECASE)
_ASIDE = re.compile(r"\([^()]*\)")


@dataclass(frozen=True)
class Length:
    """Low and high in minutes, and the words they came from."""

    low: int
    high: int
    said: tuple[str, ...]

    @property
    def likely(self) -> int:
        return math.ceil((self.low + self.high) / 2)

    def plus(self, other: "Length | None") -> "Length":
        if other is None:
            return self
        return Length(self.low + other.low, self.high + other.high, (*self.said, *other.said))

    def text(self) -> str:
        """As `takes:` is written."""
        if self.low == self.high:
            return short(self.low)
        return f"{self.low} to {short(self.high)}" if self.high < 60 else f"{short(self.low)} to {short(self.high)}"


@dataclass(frozen=True)
class Rate:
    """Minutes for so many grams, and the words they came from."""

    low: float
    high: float
    grams: float
    said: str

    def of(self, grams: float) -> Length:
        return Length(math.ceil(self.low * grams / self.grams), math.ceil(self.high * grams / self.grams), (self.said,))


def rate_in(text: str) -> Rate | None:
    """`12 to 15 minutes per pound`, `20 minutes for each 500 g`; None if there is none."""
    for match in _LENGTH.finditer(text):
        if (per := _RATE.match(text, match.end())) is not None:
            amount = (per["amount"] or "1").lower()
            grams = (float(amount) if amount.isdecimal() else 0.5) * _GRAMS[per["unit"][0].lower()]
            if grams >= 100:
                return Rate(*_of(match), grams, f"{match[0].strip()}{per[0]}")
    return None


def length_in(text: str) -> Length | None:
    """The sum of all durations a sentence gives for its work; None if it gives none."""
    spare = _ASIDE.sub(" ", text)
    if _STORED.search(spare):
        return None
    low = high = 0.0
    said: list[str] = []
    for match in _LENGTH.finditer(spare):
        before, after = spare[: match.start()], spare[match.end() :]
        if _NOT_BEFORE.search(before) or _is_ordinal(match) or _RATE.match(after):
            continue
        if _NOT_AFTER.match(after) and not _WAITED.search(before):
            continue
        own_low, own_high = _of(match)
        sides = 2 if _BOTH_SIDES.match(after) else 1
        low, high = low + sides * own_low, high + sides * own_high
        said.append(match[0].strip(" ."))
    if not said and (night := _OVERNIGHT.search(spare)):
        low = high = OVERNIGHT_MINUTES
        said.append(night[0])
    if not said or not 0 < high <= LONGEST_MINUTES:
        return None
    return Length(max(1, math.ceil(round(low, 6))), max(1, math.ceil(round(high, 6))), tuple(said))


def _is_ordinal(match: re.Match[str]) -> bool:
    """`a second layer` is no duration."""
    return match[4].lower() == "second" and match["low"].lower() in _WORDS


def _of(match: re.Match[str]) -> tuple[float, float]:
    unit = _UNITS[match[4][0].lower()]
    first_unit = _UNITS[match[2][0].lower()] if match[2] else unit
    low = _number(match["low"]) * first_unit
    high = _number(match["high"]) * unit if match["high"] else low
    half = 0.5 * unit if match["half"] else 0.0
    low, high = low + half, high + half
    return (low, high) if low <= high else (high, low)


def _number(text: str) -> float:
    text = " ".join(text.lower().split())
    if text in _WORDS:
        return _WORDS[text]
    total = 0.0
    for sign, part in _VULGAR.items():
        if sign in text:
            total += part
            text = text.replace(sign, " ")
    for piece in text.split():
        above, slash, below = piece.partition("/")
        total += float(above.replace(",", ".")) / (float(below) or 1) if slash else float(piece.replace(",", "."))
    return total
