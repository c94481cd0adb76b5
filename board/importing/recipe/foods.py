"""A recipe's ingredient → a plan's ingredient line, with the rest as a remark. Pure.

What `quantities.parse_ingredient` cannot read is never dropped: it becomes `to taste`, with a remark that says so.
"""

import re
import unicodedata
from dataclasses import dataclass

from board.base import words
from board.plan.phrases.quantities import Ingredient, parse_ingredient

_NUMBER_WORDS = {
    "a": "1", "an": "1", "one": "1", "two": "2", "three": "3", "four": "4", "five": "5", "six": "6", "seven": "7",
    "eight": "8", "nine": "9", "ten": "10", "eleven": "11", "twelve": "12", "half a": "1/2", "half an": "1/2",
    "a dozen": "12", "half a dozen": "6", "a couple of": "2",
}  # fmt: skip
_UNCOUNTED = r"(?:handful|pinch|bunch|sprig|splash|knob|little|few|dash|drizzle|bit|touch|good|generous)\b"
_NUMBER_WORD = re.compile(
    rf"({'|'.join(sorted(_NUMBER_WORDS, key=len, reverse=True))})\s+(?!{_UNCOUNTED})", re.IGNORECASE
)
_TABLESPOON = re.compile(r"(?<=[\d\s])(?:T|tbs|tbl|tblsp)\b\.?(?=\s)")
_DECILITRES = re.compile(r"(\d+)(?:[.,](\d))?\s*dl\b", re.IGNORECASE)
_THOUSANDS = re.compile(r"(?<!\d)(\d{1,2}),(\d{3})(?=\s*(?:g|ml|grams?)\b)")
_DASHED = re.compile(r"(\d)\s*[-–]\s*(\d+/\d+)")  # 1-1/2 cups
_OR = re.compile(r"^(\d+)\s+or\s+(\d+)\b", re.IGNORECASE)
_TO_TASTE = re.compile(r"[,\s]*\bto taste\s*$", re.IGNORECASE)
_BRACKETS = re.compile(r"[()\[\]]")
LONGEST_LINE = 250
_TAIL = re.compile(r"\s*\(([^()]*)\)\s*$")
_LABEL = re.compile(r"\b(?:contains?|free[\s-]+(?:from|of)|\w+-free)\b", re.IGNORECASE)
_FREE_FROM = re.compile(r",?\s+free[\s-]+(?:from|of)\b.*", re.IGNORECASE)
_WARNING = re.compile(r"\b(?:may contain|contains?)\s+[^;,]+")  # stays in the line, where guests are checked against it
# How a food is prepared or sold, not what it is.
_PREPARED = re.compile(
    r"\b(?:chopped|sliced|diced|minced|peeled|grated|melted|softened|soft|beaten|crushed|finely|roughly|thinly|thickly|"
    r"coarsely|halved|quartered|cubed|cut|torn|shredded|mashed|smashed|drained|rinsed|washed|trimmed|deseeded|seeded|"
    r"cored|pitted|stoned|zested|juiced|toasted|sifted|packed|divided|separated|warmed|warm|chilled|cold|"
    r"room temperature|to serve|for serving|to taste|to garnish|for dusting|for the tin|for frying|for greasing|"
    r"plus|extra|optional|about|approximately|roughly|picked|leaves only|bashed|bruised|podded|scrubbed|patted dry)\b",
    re.IGNORECASE,
)


@dataclass(frozen=True)
class Food:
    """`line`: for `ingredients:`. `remark`: what else the recipe says, or what is missing."""

    line: str
    remark: str = ""


def food_of(text: str) -> Food:
    """One ingredient. Raises nothing."""
    base, tail = _without_tail(_figures(text))
    if len(base) > LONGEST_LINE:
        base, tail = base[:LONGEST_LINE].rstrip(), words.recipe_whole(text)
    if _is_read(base):
        warned = next(
            (f"{base}, {each}" for each in _WARNING.findall(tail.lower()) if _is_read(f"{base}, {each}")), base
        )
        return Food(warned, tail)
    bare = _TO_TASTE.sub("", base)
    missing = words.RECIPE_AMOUNT_UNREAD if base[:1].isdigit() else words.RECIPE_NO_AMOUNT
    remark = tail if "to taste" in text.lower() else "; ".join(piece for piece in (tail, missing) if piece)
    for line in (f"to taste {bare}", f"to taste {_BRACKETS.sub('', text).strip()[:LONGEST_LINE]}"):
        if _is_read(line):
            return Food(line, remark)
    return Food("to taste ?", words.recipe_whole(text))


def _is_read(line: str) -> bool:
    """Whether the plan's own parser accepts it."""
    try:
        Ingredient.model_validate(parse_ingredient(line))
    except ValueError:
        return False
    return True


def _figures(text: str) -> str:
    """The text with figures a plan can read: `1⁄2`, `⅗`, `two`, `3 or 4`, `1-1/2`, `1,500 g`, `2 dl`."""
    text = "".join(_sign(sign) for sign in text.replace("\u2044", "/")).strip(" -•*·")
    text = " ".join(text.split())
    if match := _NUMBER_WORD.match(text):
        text = f"{_NUMBER_WORDS[match[1].lower()]} {text[match.end() :]}"
    text = _OR.sub(r"\1–\2", text)
    text = _DASHED.sub(r"\1 \2", text)
    text = _THOUSANDS.sub(r"\1\2", text)
    text = _TABLESPOON.sub("tbsp", text)
    return _DECILITRES.sub(lambda m: f"{int(m[1]) * 100 + int(m[2] or 0) * 10} ml", text)


def _sign(sign: str) -> str:
    """A fraction character that a plan does not know, as `3/5`."""
    if unicodedata.category(sign) != "No" or sign in "½⅓⅔¼¾⅛":
        return sign
    parts = unicodedata.normalize("NFKC", sign).split("\u2044")
    return f" {parts[0]}/{parts[1]} " if len(parts) == 2 and all(part.isdecimal() for part in parts) else sign


def _without_tail(text: str) -> tuple[str, str]:
    """Splits off remarks. Final brackets would be read as a shop section; preparation is a remark, the rest stays."""
    tails: list[str] = []
    while match := _TAIL.search(text):
        tails.insert(0, match[1].strip())
        text = text[: match.start()]
    if (free := _FREE_FROM.search(text)) is not None and free.start():  # a recipe's word is not a label's
        tails.insert(0, free[0].strip(" ,"))
        text = text[: free.start()]
    head, comma, after = text.partition(", ")
    if comma and (_PREPARED.search(after) or _LABEL.search(after)):
        tails.insert(0, after)
        text = head
    kept = [tail for tail in tails if tail and not _PREPARED.search(tail) and not _LABEL.search(tail)]
    remarks = [f"{tail}; {words.RECIPE_READ_LABEL}" if _LABEL.search(tail) else tail for tail in tails]
    return ", ".join([text.strip(), *kept]), "; ".join(
        tail for tail in remarks if tail.lower() not in ("", "to taste", *kept)
    )
