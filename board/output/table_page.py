"""The table as a page that prints: who sits where, one cover, what to get out with a box a piece. Foreign text is
escaped."""

import itertools
from collections.abc import Iterator
from html import escape

from board.output import words
from board.output.frame import PaperSize, document, ticked
from board.output.table import Chair, Row, TableLeaf
from board.output.table_out import how_many, legend, piece_of, remarks, to_mind, words_of


def table_page(leaf: TableLeaf, paper: PaperSize) -> str:
    """A whole HTML document, UTF-8."""
    body = [*_seats(leaf), *_cover(leaf), *_get_out(leaf)]
    body += (f'<p class="notes">{escape(line)}</p>' for line in remarks(leaf))
    return document(leaf.title, "\n".join(["<section>", f"<h1>{escape(leaf.title)}</h1>", *body, "</section>"]), paper)


def _seats(leaf: TableLeaf) -> Iterator[str]:
    yield f"<h2>{escape(words.TABLE_SEATS)}</h2>"
    if leaf.left is None or leaf.right is None:
        yield f"<p>{escape(words.TABLE_NO_SEATS if leaf.guests else words.TABLE_NO_SEATS_NO_WORDS)}</p>"
    else:
        yield f'<p class="about">{escape(words.TABLE_FACING if leaf.facing else words.TABLE_AROUND)}</p>'
        pairs = itertools.zip_longest(leaf.left, leaf.right)
        rows = (f"<tr><td>{_chair(left)}</td><td>{_chair(right)}</td></tr>" for left, right in pairs)
        yield f'<table class="seats">{"".join(rows)}</table>'
        if leaf.guests:
            yield f"<p>{escape(words.TABLE_NOT_SEATED)}:</p>"
    if leaf.guests:
        yield f"<ul>{''.join(f'<li>{_chair(chair)}</li>' for chair in leaf.guests)}</ul>"


def _chair(chair: Chair | None) -> str:
    if chair is None:
        return ""
    name = escape(chair.name or words.TABLE_EMPTY)
    return f"{name}<small>{escape(words.TABLE_MUST_NOT + words_of(chair))}</small>" if chair.must_not else name


def _cover(leaf: TableLeaf) -> Iterator[str]:
    yield f'<div class="whole">\n<h2>{escape(leaf.cover_title)}</h2>'
    if leaf.cover.lines:
        drawn = escape("\n".join(leaf.cover.lines))
        yield f'<pre role="img" aria-label="{escape(leaf.cover_title)}">{drawn}</pre>'
    else:
        yield f"<p>{escape(words.TABLE_STANDING)}</p>"
    brought = (f"{words.TABLE_BROUGHT}: {piece_of(leaf, piece)}" for piece in leaf.cover.brought)
    if told := [*legend(leaf), *brought]:
        yield f'<div class="notes"><ul class="short">{"".join(f"<li>{escape(line)}</li>" for line in told)}</ul></div>'
    yield "</div>"


def _get_out(leaf: TableLeaf) -> Iterator[str]:
    yield f"<h2>{escape(words.TABLE_GET_OUT)}</h2>"
    number = itertools.count(1)
    for group, rows in leaf.groups:
        heads = (
            f'<th colspan="2">{escape(words.TABLE_GROUPS[group])}</th>',
            *(f'<th class="n">{escape(head)}</th>' for head in (words.TABLE_ASKED, words.TABLE_THERE)),
            f"<th>{escape(words.TABLE_MIND)}</th>",
        )
        yield f'<table class="count whole">\n<thead><tr>{"".join(heads)}</tr></thead>\n<tbody>'
        yield from (_row(row, next(number)) for row in rows)
        yield "</tbody></table>"


def _row(row: Row, number: int) -> str:
    box, piece = ticked(number, escape(row.piece))
    return (
        f'<tr><td class="box">{box}</td><td>{piece}</td><td class="n">{row.asked}</td>'
        f'<td class="n">{escape(how_many(row))}</td><td class="mind">{escape(to_mind(row))}</td></tr>'
    )
