"""Words in letters three rows high; plain bold words where those do not fit.

The letters are those of the font Future by Sam Hocevar, free for any use: box-drawing strokes, like the digits beside
them.
"""

import json
from functools import lru_cache
from pathlib import Path

from board.base import words as shared
from board.base.plain import one_line, to_ascii_letters

ROWS = 3


@lru_cache(maxsize=256)
def big(text: str, width: int, lines: int) -> tuple[str, ...] | None:
    """The text in at most `lines` lines of large letters, as rows of strokes; None if it does not fit."""
    letters = to_ascii_letters(one_line(text))
    if letters is None or width < 20 or lines < 1 or not _letters().keys() >= set(letters):
        return None
    wrapped = _wrapped(letters, width)
    if wrapped is None or len(wrapped) > lines:
        return None
    return tuple(row for line in wrapped for row in _drawn(line))


@lru_cache(maxsize=64)
def bigger(text: str, width: int) -> tuple[str, ...] | None:
    """The same letters twice as large, on one line of six rows; None if they do not fit."""
    rows = big(text, width // 2, 1)
    return tuple(half for row in rows for half in _halves(row)) if rows is not None else None


def _halves(row: str) -> tuple[str, str]:
    """Each stroke on two by two cells: itself, and what continues it to the right and below."""
    upper = "".join(sign + (shared.SIGN["hands"] if sign in shared.LETTERS_RIGHT else " ") for sign in row)
    lower = "".join((shared.SIGN["now"] if sign in shared.LETTERS_DOWN else " ") + " " for sign in row)
    return upper, lower


def _wrapped(text: str, width: int) -> list[str] | None:
    """Words broken into lines that fit once drawn; None if one word is too wide."""
    found: list[str] = []
    for word in text.split():
        longer = f"{found[-1]} {word}" if found else word
        if found and len(_drawn(longer)[0]) <= width:
            found[-1] = longer
        elif len(_drawn(word)[0]) <= width:
            found.append(word)
        else:
            return None
    return found


@lru_cache(maxsize=1)
def _letters() -> dict[str, list[str]]:
    found: dict[str, list[str]] = json.loads(Path(__file__).with_name("letters.json").read_text(encoding="utf-8"))
    return found


@lru_cache(maxsize=1024)
def _drawn(text: str) -> tuple[str, ...]:
    letters = _letters()
    rows = ["".join(letters[sign][row] for sign in text).rstrip() for row in range(ROWS)]
    width = max(map(len, rows))
    return tuple(row.ljust(width) for row in rows)
