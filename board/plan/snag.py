"""A finding about a plan: how much it matters, where it is, what is wrong and how to fix it."""

import re
from dataclasses import dataclass
from enum import IntEnum
from typing import Literal

import msgspec

from board.base.plain import one_line, plain
from board.base.wrap import columns


class Weight(IntEnum):
    """How much a snag matters; larger is worse."""

    NOTE = 1
    MIND = 2
    ASK = 3  # the program does not know, and the host has to find out
    STOP = 4


@dataclass(frozen=True, slots=True)
class Place:
    """A position in a file. Lines and columns count from 1."""

    file: str
    line: int
    column: int
    text: str = ""  # the line as written


class About(msgspec.Struct, frozen=True, gc=False, omit_defaults=True):
    """What a finding is about: work by its ids, the rest in the plan's words (unsafe for a terminal as they are)."""

    tasks: tuple[str, ...] = ()
    course: str = ""
    dish: str = ""
    guests: tuple[str, ...] = ()
    foods: tuple[str, ...] = ()
    tool: str = ""


THE_PLAN = About()  # nothing in particular


class Fix(msgspec.Struct, frozen=True, gc=False, omit_defaults=True):
    """A mend for a program to make. At `loc`, a path in the plan: `add` one more item, `put` a value, `call` a key
    otherwise, `swap` the word `old` in a text, `settle` a guessed key as it stands. `new`: the item or value as YAML on
    one line, the key, the word.

    Or one that the host has a word in: `begin` the missing key at `loc`, with `new` as a line to go on from, empty
    where it is a list; `ask` about every guess."""

    how: Literal["add", "put", "call", "swap", "settle", "begin", "ask"]
    loc: tuple[str | int, ...]
    new: str
    old: str = ""


@dataclass(frozen=True, slots=True)
class Snag:
    """One finding. `code`: its stable name in `findings.FINDINGS`. `mend`: a sentence that says what to do. `source`:
    what it stands on. `fix`: the same mend for a program to make, where there is one.

    `safety`: it could hurt a guest; a timetable can still be made. `severe`: it could kill one. `about`: said of all
    that can stop a meal, so that they are told apart by more than their words.
    """

    code: str
    weight: Weight
    message: str
    mend: str = ""
    place: Place | None = None
    safety: bool = False
    source: str = ""
    severe: bool = False
    about: About = THE_PLAN
    fix: Fix | None = None

    def render(self) -> str:
        """`file:line:column: code: message`, the source line with a caret, then the fix and what it stands on."""
        lines = [self.what()]
        if self.place is not None and self.place.text.strip():
            shown, before = _around(self.place)
            lines += [f"    {shown}", f"    {' ' * before}^"]
        if mend := self.what_to_do():
            lines.append(f"    {mend}")
        return "\n".join(lines)

    def what(self) -> str:
        """`file:line:column: code: message`, one safe line."""
        told = f"{self.code}: {_brief(self.message)}"
        if self.place is None:
            return told
        return f"{one_line(self.place.file)}:{self.place.line}:{self.place.column}: {told}"

    def what_to_do(self) -> str:
        """The fix, then what the finding stands on, one safe line; empty if there is neither."""
        return " ".join(filter(None, (_brief(self.mend), f"[{_brief(self.source)}]" if self.source else "")))


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
    """By harm: heaviest first, among those what could hurt a guest first, an allergy before food that spoils; then in
    file order."""
    return sorted(snags, key=_standing)


_HARM = ("guests", "food")  # rooms of findings, the worst first


def _standing(snag: Snag) -> tuple[int, bool, bool, int, int, int, str]:
    line, column = (snag.place.line, snag.place.column) if snag.place else (0, 0)
    room = snag.code.partition(" ")[0]
    harm = _HARM.index(room) if room in _HARM else len(_HARM)
    return -snag.weight, not snag.severe, not snag.safety, harm, line, column, snag.code
