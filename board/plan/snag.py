"""A finding about a plan: how much it matters, where it is, what is wrong and how to fix it."""

import re
from dataclasses import dataclass
from enum import IntEnum

from board.base.plain import one_line, plain
from board.base.wrap import columns


class Weight(IntEnum):
    """How much a snag matters; larger is worse."""

    NOTE = 1
    MIND = 2
    STOP = 3


@dataclass(frozen=True, slots=True)
class Place:
    """A position in a file. Lines and columns count from 1."""

    file: str
    line: int
    column: int
    text: str = ""  # the line as written


@dataclass(frozen=True, slots=True)
class Snag:
    """One finding. `code`: its stable name in `findings.FINDINGS`. `mend`: a sentence that says what to do.

    `safety`: it could hurt a guest; a timetable can still be made. `severe`: it could be anaphylaxis.
    """

    code: str
    weight: Weight
    message: str
    mend: str = ""
    place: Place | None = None
    safety: bool = False
    severe: bool = False

    def render(self) -> str:
        """`file:line:column: code: message`, the source line with a caret, then the fix."""
        lines = [f"{self.code}: {_brief(self.message)}"]
        if self.place is not None:
            lines[0] = f"{one_line(self.place.file)}:{self.place.line}:{self.place.column}: {lines[0]}"
            if self.place.text.strip():
                shown, before = _around(self.place)
                lines += [f"    {shown}", f"    {' ' * before}^"]
        if self.mend:
            lines.append(f"    {_brief(self.mend)}")
        return "\n".join(lines)


_WIDEST = 120  # characters shown of a source line
_LONG_QUOTE = re.compile(r"'([^']{60})[^']{20,}'")


def _brief(words: str) -> str:
    """One safe line; long quotes from the file are shortened."""
    return one_line(_LONG_QUOTE.sub(r"'\1…'", words), limit=400)


def _around(place: Place) -> tuple[str, int]:
    """The line around its position, safe to print, and the columns before that position."""
    text = plain(place.text).replace("\t", " ").replace("\n", " ").rstrip()
    spot = min(place.column - 1, len(text))
    first = 0 if spot < _WIDEST - 20 else spot - _WIDEST // 2
    shown = ("…" if first else "") + text[first : first + _WIDEST]
    before = shown[: spot - first + (1 if first else 0)]
    return shown, columns(before)


def in_order(snags: list[Snag]) -> list[Snag]:
    """Heaviest first, then what could be anaphylaxis, then in file order."""
    return sorted(snags, key=_standing)


def _standing(snag: Snag) -> tuple[int, bool, int, int, str]:
    line, column = (snag.place.line, snag.place.column) if snag.place else (0, 0)
    return -snag.weight, not snag.severe, line, column, snag.code
