"""Leaves as one HTML page that needs nothing else and prints on A4 or US Letter, a leaf a sheet of paper.

Foreign text is escaped; the page runs no script and fetches nothing.
"""

from collections.abc import Iterator, Sequence
from html import escape
from typing import Literal

from board import words
from board.paper.leaves import Leaf, Row

PaperSize = Literal["a4", "letter"]
PAPERS: dict[PaperSize, str] = {"a4": "A4", "letter": "letter"}  # as CSS names them

_STYLE = """
@page { size: PAPER; margin: 14mm; }
* { box-sizing: border-box; }
body { font: 11pt/1.35 Georgia, 'Liberation Serif', 'Times New Roman', serif; color: #000; background: #fff;
       max-width: 182mm; margin: 0 auto; }
body.wall { font-size: 15pt; }
section { break-before: page; }
section:first-of-type { break-before: auto; }
h1 { font-size: 1.5em; margin: 0; }
h2 { font-size: 1.15em; margin: 1.1em 0 .3em; border-bottom: 1.5pt solid #000; break-after: avoid; }
p.about { margin: .1em 0 .5em; font-style: italic; }
ul.courses { list-style: none; padding: 0; margin: 0; columns: 2; }
table { width: 100%; border-collapse: collapse; }
tr { break-inside: avoid; }
td { vertical-align: top; padding: .22em .5em .22em 0; border-bottom: .4pt solid #999; }
td.box { width: 1.5em; } td.box::before { content: "\\25A1"; }
td.time { white-space: nowrap; width: 6.2em; font-variant-numeric: tabular-nums; }
td.where { width: 27%; color: #333; } td.who { width: 10%; color: #333; }
tr.course td { font-weight: bold; border-bottom: 1.2pt solid #000; }
small { display: block; font-weight: normal; color: #333; font-size: .88em; }
.notes { font-size: .88em; } .notes ul { padding-left: 1.1em; margin: .2em 0; }
"""


def page(leaves: Sequence[Leaf], paper: PaperSize, *, wall: bool = False) -> str:
    """A whole HTML document, UTF-8."""
    title = escape(leaves[0].title) if leaves else ""
    body = "\n".join("\n".join(_leaf(leaf)) for leaf in leaves)
    return (
        f'<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n<title>{title}</title>\n'
        f"<style>{_STYLE.replace('PAPER', PAPERS[paper])}</style>\n</head>\n"
        f"<body{_class('wall', wall)}>\n{body}\n</body>\n</html>\n"
    )


def is_page(data: bytes) -> bool:
    """Whether a file's content is a page like these."""
    return data.lstrip().lower().startswith(b"<!doctype html>")


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
        f"<tr{_class('course', row.course)}>"
        f'<td class="box"></td><td class="time">{escape(row.start)}–{escape(row.end)}</td>'
        f'<td>{escape(row.what)}{told}</td><td class="where">{escape(row.where)}</td>'
        + (f'<td class="who">{escape(row.who)}</td>' if row.who else "")
        + "</tr>"
    )


def _class(name: str, worn: bool) -> str:
    return f' class="{name}"' if worn else ""
