"""A finding about a plan: how much it matters, where it stands, what is wrong and how to mend it."""

import re
from dataclasses import dataclass
from enum import IntEnum

from board.base.plain import one_line, plain
from board.base.wrap import columns


class Weight(IntEnum):
    """How much a snag matters; the larger, the more."""

    NOTE = 1
    MIND = 2
    STOP = 3


@dataclass(frozen=True, slots=True)
class Place:
    """A spot in a file. Lines and columns count from 1."""

    file: str
    line: int
    column: int
    text: str = ""  # the line as written


@dataclass(frozen=True, slots=True)
class Snag:
    """One finding. `code` is its stable name, of `findings.FINDINGS`; `mend` is a sentence that says what to do.

    `safety`: it is about harm to somebody who eats; a timetable can be made all the same.
    """

    code: str
    weight: Weight
    message: str
    mend: str = ""
    place: Place | None = None
    safety: bool = False

    def render(self) -> str:
        """`file:line:column: code: message`, the line as written with its spot marked, then how to mend it."""
        lines = [f"{self.code}: {_brief(self.message)}"]
        if self.place is not None:
            lines[0] = f"{one_line(self.place.file)}:{self.place.line}:{self.place.column}: {lines[0]}"
            if self.place.text.strip():
                shown, before = _around(self.place)
                lines += [f"    {shown}", f"    {' ' * before}^"]
        if self.mend:
            lines.append(f"    {_brief(self.mend)}")
        return "\n".join(lines)


_WIDEST = 120  # characters shown of a line of the file
_LONG_QUOTE = re.compile(r"'([^']{60})[^']{20,}'")


def _brief(words: str) -> str:
    """One safe line, with long pieces quoted from the file cut short."""
    return one_line(_LONG_QUOTE.sub(r"'\1…'", words), limit=400)


def _around(place: Place) -> tuple[str, int]:
    """The part of the line around its spot, safe to print, and how many of its columns stand before it."""
    text = plain(place.text).replace("\t", " ").replace("\n", " ").rstrip()
    spot = min(place.column - 1, len(text))
    first = 0 if spot < _WIDEST - 20 else spot - _WIDEST // 2
    shown = ("…" if first else "") + text[first : first + _WIDEST]
    before = shown[: spot - first + (1 if first else 0)]
    return shown, columns(before)


def in_order(snags: list[Snag]) -> list[Snag]:
    """Heaviest first, then as they stand in the file."""
    return sorted(snags, key=_standing)


def _standing(snag: Snag) -> tuple[int, int, int, str]:
    line, column = (snag.place.line, snag.place.column) if snag.place else (0, 0)
    return -snag.weight, line, column, snag.code
