"""A plan file as a tree of lines, each the phrase it is in the file. Pure.

Made from the file's YAML alone, so a plan that cannot be used has its tree too; where the YAML itself cannot be read,
its lines stand as they are. What is shown is safe for a terminal; a phrase is the plan's own text.
"""

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass
from typing import Any, Literal

from board.base.plain import one_line
from board.plan.edit.yaml_text import Layout, flow
from board.plan.places import Loc, Places

PARTS = ("course", "dish", "step", "job")
Kind = Literal["course", "dish", "step", "job", "group", "line"]
_BESIDE = {
    "course": ("at",),
    "dish": ("for",),
    "step": ("takes", "where"),
    "job": ("takes", "day"),
}  # told while folded

TAB = 4  # columns


@dataclass(frozen=True, slots=True)
class Row:
    """One line of the tree. `loc`: the part it stands for; `edits`: the path of its phrase. `phrase`: as it is typed;
    None where there is none, or it takes several lines. `line`: in the file, from 1. `folds`: lines stand under it;
    `beside`: what is told of them while it is folded."""

    loc: Loc
    level: int
    kind: Kind
    key: str
    text: str
    line: int
    edits: Loc
    phrase: str | None = None
    folds: bool = False
    beside: str = ""


def rows_of(data: Any, places: Places) -> tuple[Row, ...]:
    """All lines of a plan, in the order of the file; none for data that has no keys."""
    return tuple(_Tree(places).children(data, (), 0))


def raw_rows(text: str) -> tuple[Row, ...]:
    """The lines of a text that is no YAML, set in as they are: that may be what is wrong. A path is the line's number,
    from 0."""
    lines = text.splitlines()
    return tuple(Row((n,), 0, "line", "", _set_in(line), n + 1, (n,), line) for n, line in enumerate(lines))


def _set_in(line: str) -> str:
    blanks = line[: len(line) - len(line.lstrip())]
    return " " * len(blanks.expandtabs(TAB)) + one_line(line)


def shown(rows: Sequence[Row], opened: Collection[Loc]) -> tuple[Row, ...]:
    """The lines to be seen, with these parts unfolded."""
    found: list[Row] = []
    hidden_below = -1  # level of the folded line we are under; -1: none
    for row in rows:
        if hidden_below >= 0 and row.level > hidden_below:
            continue
        found.append(row)
        hidden_below = row.level if row.folds and row.loc not in opened else -1
    return tuple(found)


def first_opened(rows: Sequence[Row]) -> frozenset[Loc]:
    """What is unfolded at first: the courses, down to their dishes' names."""
    return frozenset(row.loc for row in rows if row.loc and row.loc[0] == "courses" and len(row.loc) in (1, 2, 3))


def with_seen(rows: Sequence[Row], opened: Collection[Loc], loc: Loc) -> frozenset[Loc]:
    """The same, and unfolded down to a part."""
    return frozenset(opened) | {row.loc for row in rows if len(row.loc) < len(loc) and row.loc == loc[: len(row.loc)]}


def row_at_line(rows: Sequence[Row], line: int) -> Row | None:
    """The row that a line of the file stands in; the first before the first row. None for no rows."""
    before = [row for row in rows if row.line <= line]
    return max(before, key=lambda row: row.line) if before else next(iter(rows), None)


def row_at(rows: Sequence[Row], loc: Loc) -> int:
    """The number of the row of a path, or of the nearest part around it that is there; 0 if there is none."""
    number = {row.loc: n for n, row in enumerate(rows)}
    while loc and loc not in number:
        loc = loc[:-1]
    return number.get(loc, 0)


class _Tree:
    def __init__(self, places: Places) -> None:
        self.places = places

    def children(self, data: Any, loc: Loc, level: int, *, without: str = "") -> Iterator[Row]:
        if isinstance(data, dict):
            for key, value in data.items():
                if key != without:
                    yield from self._entry(key, value, (*loc, key), level)
        elif isinstance(data, list):
            for number, value in enumerate(data):
                yield from self._item(value, (*loc, number), level)

    def _entry(self, key: str, value: Any, loc: Loc, level: int) -> Iterator[Row]:
        line = self.places.keys.get(loc, (self._line(loc), 1))[0]
        if self._on_lines(value, loc):
            yield Row(loc, level, "group", one_line(key), "", line, loc, folds=True)
            yield from self.children(value, loc, level + 1)
        else:
            yield self._leaf(value, loc, level, "line", one_line(key), line)

    def _item(self, value: Any, loc: Loc, level: int) -> Iterator[Row]:
        line = self._line(loc)
        if not self._on_lines(value, loc):
            in_jobs = loc[:-1] == ("jobs",)
            yield self._leaf(value, loc, level, "job" if in_jobs else "line", "job" if in_jobs else "", line)
            return
        head = next((key for key in value if key in PARTS), next(iter(value))) if isinstance(value, dict) else ""
        kind: Kind = head if head in PARTS else "group"  # type: ignore[assignment]  # PARTS are kinds
        said = self._leaf(value[head], (*loc, head), level, kind, one_line(head), line) if head else None
        if said is None or self._on_lines(value[head], (*loc, head)):
            yield Row(loc, level, "group", "", "", line, loc, folds=True)
            yield from self.children(value, loc, level + 1)
            return
        beside = ", ".join(one_line(_phrase(value[key])) for key in _BESIDE.get(kind, ()) if key in value)
        yield Row(loc, level, kind, said.key, said.text, line, said.edits, said.phrase, len(value) > 1, beside)
        yield from self.children(value, loc, level + 1, without=head)

    def _leaf(self, value: Any, loc: Loc, level: int, kind: Kind, key: str, line: int) -> Row:
        phrase = _phrase(value)
        return Row(loc, level, kind, key, one_line(phrase), line, loc, None if "\n" in phrase else phrase)

    def _line(self, loc: Loc) -> int:
        return self.places.of(loc).line

    def _on_lines(self, value: Any, loc: Loc) -> bool:
        """Whether it has lines of its own; else it stands on one, in brackets or not."""
        if not isinstance(value, dict | list) or not value:
            return False
        place = self.places.of(loc)
        in_brackets = place.text[place.column - 1 : place.column] in ("[", "{")
        return not in_brackets or any(line != place.line for line in self._lines(value, loc))

    def _lines(self, value: Any, loc: Loc) -> Iterator[int]:
        yield self._line(loc)
        inside = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
        for key, each in inside:
            yield from self._lines(each, (*loc, key))


def _phrase(value: Any) -> str:
    """As it is typed: text without its quotes, all else as YAML on one line."""
    if isinstance(value, str):
        return value
    return "" if value is None else flow(value, Layout())
