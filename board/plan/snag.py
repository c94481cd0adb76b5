"""A finding about a plan: how much it matters, where it stands, what is wrong and how to mend it."""

from dataclasses import dataclass
from enum import IntEnum

from board.plain import one_line, plain


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
    """One finding. `code` is stable; `mend` is a sentence that says what to do."""

    code: str
    weight: Weight
    message: str
    mend: str = ""
    place: Place | None = None

    def render(self) -> str:
        """`file:line:column: CODE message`, then the line as written with its spot marked, then how to mend it."""
        lines = [one_line(f"{self.code} {self.message}")]
        if self.place is not None:
            where = f"{self.place.file}:{self.place.line}:{self.place.column}"
            lines[0] = f"{one_line(where)}: {lines[0]}"
            if self.place.text.strip():
                shown = plain(self.place.text.expandtabs(2)).rstrip()[:120]
                lines += [f"    {shown}", "    " + " " * min(self.place.column - 1, 119) + "^"]
        if self.mend:
            lines.append(f"    {one_line(self.mend)}")
        return "\n".join(lines)


def in_order(snags: list[Snag]) -> list[Snag]:
    """Heaviest first, then as they stand in the file."""
    return sorted(
        snags,
        key=lambda s: (-s.weight, s.place.line if s.place else 0, s.place.column if s.place else 0, s.code),
    )
