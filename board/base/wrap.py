"""Wraps lines at a terminal's width. A quoted line of a plan stays aligned with the caret below it.

Pure but for `asked_width`, which reads COLUMNS.
"""

import os
import re
import unicodedata
from itertools import pairwise

CARET = re.compile(r" *\^")
_FINDING = re.compile(r"(?:\S.*:\d+:\d+: )?[a-z]+ \d+: ")
_FIGURE = re.compile(
    r"\d+ h \d{1,2}(?: min)?\b|\d (?:h|min|s|kg|g|ml|cl|l|cm|litres?|lb|oz|°[CF]|%|[AaPp]\.?[Mm])(?![^\W_])|\d °(?!\w)"
)
_UNDER_FINDING = 4  # columns; the indent of lines below a finding
_NARROWEST = 20


def wrapped(text: str, width: int) -> str:
    """Lines at most `width` columns wide where words allow; continuations keep the line's indent.

    A line above a caret is cut instead, around the caret's column.
    """
    lines = text.split("\n")
    made: list[str] = []
    width = max(width, _NARROWEST)
    for number, line in enumerate(lines):
        below = lines[number + 1] if number + 1 < len(lines) else ""
        if CARET.fullmatch(line) and made:
            continue  # added with the line above
        if below and CARET.fullmatch(below):
            made += _cut_around(line, len(below) - 1, width)
        else:
            made += _broken(line, width)
    return "\n".join(made)


def words_of(text: str) -> list[str]:
    """What a line may be broken between: words, each figure with its unit as one (`1 h 30`, `74 °C`)."""
    within = {n for found in _FIGURE.finditer(text) for n in range(*found.span())}
    ends = [n for n, char in enumerate(text) if char == " " and n not in within]
    return [text[start + 1 : end] for start, end in pairwise([-1, *ends, len(text)])]


def asked_width() -> int | None:
    """The columns that the environment's COLUMNS asks for, as POSIX has it; None if it is not a number above 0.

    Source: POSIX.1-2017, Base Definitions 8.3.
    """
    asked = os.environ.get("COLUMNS", "")
    return max(_NARROWEST, int(asked)) if asked.isascii() and asked.isdecimal() and 0 < int(asked) < 10_000 else None


def columns(text: str) -> int:
    """Terminal columns of a text: two for wide characters, none for combining accents."""
    return sum(0 if unicodedata.combining(c) else 2 if unicodedata.east_asian_width(c) in "WF" else 1 for c in text)


def _broken(line: str, width: int) -> list[str]:
    if columns(line) <= width:
        return [line]
    start = line[: len(line) - len(line.lstrip())]
    indent = " " * _UNDER_FINDING if _FINDING.match(line) else start
    made: list[str] = []
    current = ""
    for word in words_of(line.strip()):
        before = start if not made else indent
        if current and columns(f"{before}{current} {word}") > width:
            made.append(before + current)
            current = word
        else:
            current = f"{current} {word}" if current else word
    return [*made, (indent if made else start) + current]


def _cut_around(line: str, caret: int, width: int) -> list[str]:
    """The line and its caret: cut at the right, and at the left if the caret would be lost."""
    if columns(line) <= width:
        return [line, " " * caret + "^"]
    start = line[: len(line) - len(line.lstrip())]
    text = line
    if caret >= width - 1:
        text = start + "…"
        rest, gone = line, 0
        while rest and gone <= caret - width // 2 + len(text):
            gone += columns(rest[0])
            rest = rest[1:]
        caret += columns(text) - gone
        text += rest
    while text and columns(text) > width - 1:
        text = text[:-1]
    return [text + "…" if text != line else text, " " * caret + "^"]
