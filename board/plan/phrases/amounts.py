"""How people write amounts → how a plan's parser reads them: `2 × 400 g tins`, `(2 cups) flour`, `two`. Pure."""

import re
import unicodedata

_NUMBER_WORDS = {
    "half a": "1/2", "half an": "1/2", "a couple of": "2", "a": "1", "an": "1",
    "one": "1", "two": "2", "three": "3", "four": "4", "five": "5", "six": "6", "seven": "7", "eight": "8", "nine": "9",
    "ten": "10", "eleven": "11", "twelve": "12",
}  # fmt: skip
_UNCOUNTED = r"(?:handful|pinch|bunch|sprig|splash|knob|little|few|dash|drizzle|bit|touch|good|generous|glug|lot)\b"
_NUMBER_WORD = re.compile(
    rf"({'|'.join(sorted(_NUMBER_WORDS, key=len, reverse=True))})\s+(?!{_UNCOUNTED})", re.IGNORECASE
)
_TABLESPOON = re.compile(r"(?<=[\d\s½⅓⅔¼¾⅛])(?:T|[Tt]bs|[Tt]bl|[Tt]blsp|[Tt]bsps)\b\.?(?=\s)")
_DASHED = re.compile(r"(\d)\s*[-–]\s*(\d+/\d+)")  # 1-1/2 cups
_OR = re.compile(r"^(\d+)\s+or\s+(\d+)\b(?!\s*/)", re.IGNORECASE)
_ABOUT = re.compile(r"^(?:about|around|approx(?:imately|\.)?|roughly|ca?\.|circa|~)\s*(?=[\d½⅓⅔¼¾⅛])", re.IGNORECASE)
_OR_SO = re.compile(r"\bor so\b\s*", re.IGNORECASE)
_LEADING = re.compile(r"^\(([\d½⅓⅔¼¾⅛][^()]*)\)\s*")  # (2 cups) flour
_DOUBLED = re.compile(r"\(\s*(\([^()]*\))\s*\)")


def plainly(text: str) -> str:
    """The text with figures as a plan's parser reads them: `1⁄2`, `⅗`, `two`, `3 or 4`, `1-1/2`,
    `about 2 kg`, `((…))`. Raises nothing."""
    text = "".join(_sign(sign) for sign in text.replace("\u2044", "/"))
    text = " ".join(text.replace("\N{MULTIPLICATION SIGN}", "x").split())
    text = _DOUBLED.sub(r"\1", text)
    text = _ABOUT.sub("", _OR_SO.sub("", _LEADING.sub(r"\1 ", text)))
    if match := _NUMBER_WORD.match(text):
        text = f"{_NUMBER_WORDS[match[1].lower()]} {text[match.end() :]}"
    text = _OR.sub(r"\1–\2", text)
    text = _DASHED.sub(r"\1 \2", text)
    return _TABLESPOON.sub("tbsp", text)


def _sign(sign: str) -> str:
    """A fraction character that the parser does not know, as `3/5`."""
    if unicodedata.category(sign) != "No" or sign in "½⅓⅔¼¾⅛":
        return sign
    parts = unicodedata.normalize("NFKC", sign).split("\u2044")
    return f" {parts[0]}/{parts[1]} " if len(parts) == 2 and all(part.isdecimal() for part in parts) else sign
