"""Leaves as one page that prints, a leaf a sheet of paper. Foreign text is escaped."""

from collections.abc import Iterator, Sequence
from html import escape

from board.output import words
from board.output.frame import PaperSize, class_, document
from board.output.leaves import Leaf, Row


def page(leaves: Sequence[Leaf], paper: PaperSize, *, wall: bool = False) -> str:
    """A whole HTML document, UTF-8."""
    body = "\n".join("\n".join(_leaf(leaf)) for leaf in leaves)
    return document(leaves[0].title if leaves else "", body, paper, wall=wall)


def _leaf(leaf: Leaf) -> Iterator[str]:
    yield "<section>"
    yield f'<h1>{escape(leaf.title)}</h1>\n<p class="about">{escape(leaf.about)}</p>'
    yield '<ul class="courses">' + "".join(f"<li>{escape(course)}</li>" for course in leaf.courses) + "</ul>"
    for day in leaf.days:
        yield f"<h2>{escape(day.title)}</h2>\n<table>"
        yield from (_row(row) for row in day.rows)
        yield "</table>"
    notes = "".join(f"<li>{escape(note)}</li>" for note in leaf.notes)
    yield f'<div class="notes"><h2>{escape(words.LEAF_NOTES)}</h2><ul>{notes}</ul></div>'
    yield "</section>"


def _row(row: Row) -> str:
    told = "".join(f"<small>{escape(piece)}</small>" for piece in row.told)
    return (
        f"<tr{class_('course', worn=row.course)}>"
        f'<td class="box"></td><td class="time">{escape(row.start)}–{escape(row.end)}</td>'
        f'<td>{escape(row.what)}{told}</td><td class="where">{escape(row.where)}</td>'
        + (f'<td class="who">{escape(row.who)}</td>' if row.who else "")
        + "</tr>"
    )
