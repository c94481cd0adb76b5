"""People's leaves as one page that prints, a leaf on sheets of its own. Foreign text is escaped."""

from collections.abc import Iterator, Sequence
from html import escape
from itertools import count

from board.base import words as shared
from board.output import words
from board.output.frame import PaperSize, class_, document, ticked
from board.output.leaves import Leaf, Row


def page(leaves: Sequence[Leaf], paper: PaperSize) -> str:
    """A whole HTML document, UTF-8."""
    number = count(1)
    body = "\n".join("\n".join(_leaf(leaf, number)) for leaf in leaves)
    heads = [shared.said_together([leaf.title, leaf.about]) for leaf in leaves]
    return document(leaves[0].title if leaves else "", body, paper, heads=heads)


def _leaf(leaf: Leaf, number: "count[int]") -> Iterator[str]:
    yield "<section>"
    yield f'<h1>{escape(leaf.title)}</h1>\n<p class="about">{escape(leaf.about)}</p>'
    yield '<ul class="courses">' + "".join(f"<li>{escape(course)}</li>" for course in leaf.courses) + "</ul>"
    for day in leaf.days:  # its heading stands above each sheet of paper that it goes on to
        yield f'<table class="ticks">\n<thead><tr><th colspan="4"><h2>{escape(day.title)}</h2></th></tr></thead>'
        for block in day.blocks:
            yield '<tbody class="block">'
            yield from (_row(row, next(number)) for row in block)
            yield "</tbody>"
        yield "</table>"
    yield from notes(leaf.notes)
    yield "</section>"


def notes(lines: Sequence[str]) -> Iterator[str]:
    """What must be known, below."""
    told = "".join(f"<li>{escape(note)}</li>" for note in lines)
    yield f'<div class="notes whole"><h2>{escape(words.LEAF_NOTES)}</h2><ul>{told}</ul></div>'


def _row(row: Row, number: int) -> str:
    box, what = ticked(number, escape(row.what))
    told = "".join(f"<small>{escape(piece)}</small>" for piece in row.told)
    return (
        f"<tr{class_('course', worn=row.course)}>"
        f'<td class="box">{box}</td><td class="time">{escape(row.start)}–{escape(row.end)}</td>'
        f'<td>{what}{told}</td><td class="where">{escape(row.where)}</td></tr>'
    )
