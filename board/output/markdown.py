"""Leaves as Markdown (CommonMark, with the tables and boxes of GitHub's kind). Foreign text never becomes markup."""

import re
from collections.abc import Iterator, Sequence

from board.output import words
from board.output.leaves import Leaf, Row

_MARKS = re.compile(r"([\\`*_\[\]<>&#|~])")
_BEGINS = re.compile(r"^([-+]|\d+(?=[.)]))")  # what would start a list


def safe(text: str) -> str:
    """Text with every character that Markdown would interpret escaped."""
    escaped = _MARKS.sub(r"\\\1", text)
    return _BEGINS.sub(lambda found: f"\\{found[1]}" if found[1] in "-+" else f"{found[1]}\\", escaped)


def markdown(leaves: Sequence[Leaf]) -> str:
    """One document; leaves are parted by a rule."""
    return "\n\n---\n\n".join("\n".join(_leaf(leaf)) for leaf in leaves) + "\n"


def _leaf(leaf: Leaf) -> Iterator[str]:
    yield f"# {safe(leaf.title)}"
    yield ""
    yield f"**{safe(leaf.about)}**"
    yield ""
    yield from (f"- {safe(course)}" for course in leaf.courses)
    for day in leaf.days:
        yield ""
        yield f"## {safe(day.title)}"
        yield ""
        yield from (_row(row) for row in day.rows)
    yield ""
    yield f"## {words.LEAF_NOTES}"
    yield ""
    yield from (f"- {safe(note)}" for note in leaf.notes)


def _row(row: Row) -> str:
    what = f"**{safe(row.what)}**" if row.course else safe(row.what)
    tail = " · ".join(safe(piece) for piece in (row.where, *row.told, row.who) if piece)
    return f"- [ ] {row.start}–{row.end} {what} — {tail}"
