"""The frame and the style of every page that prints: HTML 5 that needs nothing else, on A4 or US Letter.

The page runs no script and fetches nothing: it forbids both to the browser. Bodies come in escaped. Running heads are
margin boxes of CSS Paged Media Level 3; a browser without them prints the headings in the text alone.
"""

from collections.abc import Sequence
from html import escape
from typing import Literal

from board.base import words as shared
from board.base.plain import one_line

PaperSize = Literal["a4", "letter"]
Kind = Literal["", "wall", "card"]  # `wall`: in large type; `card`: lying across, without a head
PAPERS: dict[PaperSize, str] = {"a4": "A4", "letter": "letter"}  # as CSS names them
_MADE_HERE = '<meta name="generator" content="platecall">'
_HEAD_BYTES = 300  # the mark is within the first so many bytes

_STYLE = """
* { box-sizing: border-box; }
body { font: 11pt/1.35 Georgia, 'Liberation Serif', 'Times New Roman', serif; color: #000; background: #fff;
       max-width: 182mm; margin: 0 auto; }
section { break-before: page; }
section:first-of-type { break-before: auto; }
p, li { orphans: 2; widows: 2; } p, ul, ol { margin: .35em 0; }
h1 { font-size: 1.5em; margin: 0; }
h2 { font-size: 1.15em; margin: 1.1em 0 .3em; border-bottom: 1.5pt solid #000; break-after: avoid; }
p.about { margin: .1em 0 .5em; font-style: italic; }
ul.courses { list-style: none; padding: 0; margin: 0; columns: 2; }
table { width: 100%; border-collapse: collapse; }
tr, tbody.block { break-inside: avoid; }
tbody.block:last-child { break-before: avoid; } tbody.block:first-of-type { break-after: avoid; }
thead { break-after: avoid; } thead h2 { margin-top: .6em; text-align: left; }
th { padding: 0; font-weight: inherit; }
td { vertical-align: top; padding: .22em .5em .22em 0; border-bottom: .4pt solid #999; }
tbody.block td { border-bottom: none; } tbody.block tr:last-child td { border-bottom: .4pt solid #555; }
td.box { width: 1.5em; }
input { appearance: none; font: inherit; margin: 0; line-height: inherit; }
input::before { content: "BOX"; } input:checked::before { content: "TICKED"; }
td.time { white-space: nowrap; width: 6.2em; font-variant-numeric: tabular-nums; }
td.where { width: 27%; color: #333; }
tr.course td { font-weight: bold; border-bottom: 1.2pt solid #000; }
small { display: block; font-weight: normal; color: #333; font-size: .88em; }
.notes { font-size: .88em; } .notes ul { padding-left: 1.1em; margin: .2em 0; }
h3 { font-size: 1em; margin: .7em 0 .1em; break-after: avoid; }
.whole { break-inside: avoid; }
td.much { width: 21%; } td.food, td.dishes { overflow-wrap: anywhere; }
td.dishes { width: 30%; color: #333; font-size: .88em; }
td.cost { white-space: nowrap; text-align: right; width: 5.5em; font-variant-numeric: tabular-nums; }
.notes ul.short { columns: 2; }
section.told { overflow-wrap: anywhere; } section.told li { break-inside: avoid; }
table.told { table-layout: fixed; font-size: .78em; margin: .2em 0 .6em; }
table.told th { text-align: left; vertical-align: bottom; font-weight: normal; font-style: italic;
                padding: .2em .5em .2em 0; border-bottom: 1pt solid #000; }
table.told td { padding-top: .12em; padding-bottom: .12em; font-variant-numeric: tabular-nums; }
table.told.wide { font-size: .9em; table-layout: auto; } .wide td.day, .wide td.n { white-space: nowrap; }
table.told .n { text-align: right; }
table.told th.group { font-weight: bold; font-style: normal; padding-top: .6em; }
p.legend { margin: .1em 0; break-after: avoid; } tr.group { break-after: avoid; }
table.told col.bars { width: 34%; } table.told col.later { width: 7%; } table.told col.span { width: 9.5%; }
table.told col.min { width: 4.5%; } table.told col.took { width: 6.5%; } table.told col.answered { width: 8.5%; }
table.told .bars { padding-left: .3em; padding-right: 1.4em; }
.bars svg { display: block; width: 100%; height: 12px; overflow: visible; }
.bars text { font: 9.5px Georgia, 'Liberation Serif', 'Times New Roman', serif; }
.bars line { stroke: #ddd; stroke-width: .5; }
svg.sample { width: 2em; height: 12px; vertical-align: -2px; overflow: visible; }
svg svg { overflow: visible; }
rect { fill: #bbb; }
svg path { fill: none; stroke: #000; stroke-width: 1; }
.wall { max-width: 200mm; } .wall ul.rows { font: 22pt/1 'Times New Roman', 'Liberation Serif', serif; }
.wall ul.rows { list-style: none; margin: 0; padding: 0; }
.wall ul.rows li { padding: 0 0 1pt 1em; text-indent: -1em; border-bottom: .4pt solid #555; break-inside: avoid; }
.wall h1 { font-size: 26pt; line-height: 1; }
.wall time { font-weight: bold; font-size: 26pt; line-height: .8; font-variant-numeric: tabular-nums; }
.wall time ~ time { font-size: 24.5pt; }
.wall p.stop { font: bold 22pt/1.06 'Times New Roman', 'Liberation Serif', serif; margin: 0 0 4pt; }
.wall li:first-child { break-after: avoid; } .wall li:last-child { break-before: avoid; }
.card main { display: grid; grid-template-columns: 1fr 1fr; } body.card { max-width: none; }
.card section { break-before: auto; text-align: center; padding: 10mm 12mm; font-size: 12pt; line-height: 1.25; }
.card section + section { border-left: .4pt dashed #777; }
.card h2 { border: none; font-size: 1em; font-variant: small-caps; margin: 1em 0 .1em; } .card p { margin: .15em 0; }
.card h1 { margin-bottom: .4em; } .card p.own { font-size: .85em; font-style: italic; break-before: avoid; }
table.seats td { width: 50%; } table.seats td:first-child { text-align: right; border-right: 3pt double #000; }
table.seats td + td { padding-left: .8em; } table.seats td { padding-right: .8em; border-bottom: none; }
pre { font: 9pt/1.1 'Liberation Mono', 'Courier New', monospace; break-inside: avoid; }
td.n { text-align: right; width: 5.5em; } td.mind { width: 38%; padding-left: 1em; }
.count th { text-align: left; padding: .5em .5em .1em 0; border-bottom: 1pt solid #000; }
.count th.n { text-align: right; }
.count th:last-child { padding-left: 1em; } .count td { padding-top: .1em; padding-bottom: .1em; }
table.eat th { text-align: left; vertical-align: bottom; padding: .2em .5em .2em 0; border-bottom: 1pt solid #000; }
table.eat tbody th { font-weight: normal; vertical-align: top; border-bottom: .4pt solid #999; }
table.eat .d { text-align: center; width: 2em; padding-right: 0; }
@media screen { body { padding: 0 8px; } .card section { padding: 1em; } }
@media screen and (max-width: 40em) {
  body, .wall ul.rows, .wall p.stop { font-size: 16px; line-height: 1.4; } .wall li time, .wall h1 { font-size: 19px; }
  ul.courses, .notes ul.short { columns: 1; } .card main { display: block; } .card [aria-hidden] { display: none; }
  table.ticks, .ticks tbody, .ticks thead, .ticks th, .ticks td { display: block; width: auto; border: none; }
  .ticks tr { display: grid; grid-template-columns: 2.6em 1fr; border-bottom: 1px solid #999; }
  .ticks thead tr { display: block; border: none; } table.ticks tbody.block tr td { border: none; }
  .ticks td { grid-column: 2; padding: .1em 0; }
  .ticks td.box { grid-column: 1; grid-row: 1 / span 5; } .ticks td.cost { text-align: left; }
  input { font-size: 26px; line-height: 1; min-width: 32px; min-height: 32px; } .ticks label { display: inline-block; }
  .ticks label { padding-bottom: 4px; } .count td.n { width: auto; }
  pre { font-size: 8px; } section.told { font-size: 14px; }
  .told .bars { display: none; } table.told { table-layout: auto; overflow-wrap: normal; }
}
"""


def document(title: str, body: str, paper: PaperSize, *, heads: Sequence[str] = (), kind: Kind = "") -> str:
    """A whole HTML document, UTF-8. `title` is escaped here; `body` is HTML already. `heads`: what each section's
    sheets of paper carry above, beside the page; the title if there are none."""
    style = _STYLE.replace("BOX", shared.SIGN["box"]).replace("TICKED", shared.SIGN["finished"])
    return (
        '<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n'
        f"{_MADE_HERE}\n"
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">\n"
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        f"<title>{escape(title)}</title>\n<style>{_sheets(heads or [title], paper, kind)}{style}</style>\n</head>\n"
        f"<body{class_(kind, worn=bool(kind))}>\n<main>\n{body}\n</main>\n</body>\n</html>\n"
    )


def _sheets(heads: Sequence[str], paper: PaperSize, kind: Kind) -> str:
    """The sheets of paper: their size, margins and running heads, with the page out of how many."""
    if kind == "card":
        return f"@page {{ size: {PAPERS[paper]} landscape; margin: 0; }}"
    margin, points = ("12mm 8mm 7mm", 14) if kind == "wall" else ("16mm 14mm 12mm", 9)
    box = f"font: {points}pt Georgia, 'Liberation Serif', serif; vertical-align: bottom; padding-bottom: 1.5mm;"
    number = 'counter(page) " / " counter(pages)'
    made = [f"@page {{ size: {PAPERS[paper]}; margin: {margin}; @top-right {{ content: {number}; {box} }} }}"]
    for n, head in enumerate(heads, start=1):
        made.append(f"@page s{n} {{ @top-left {{ content: {css_text(head)}; width: 80%; {box} }} }}")
        made.append(f"section:nth-of-type({n}) {{ page: s{n}; }}")
    return "\n".join(made)


def as_html(text: object) -> str:
    """Foreign text as one safe line of HTML."""
    return escape(one_line(text))


def css_text(text: str) -> str:
    """Text as a string of CSS that can end neither the string nor the style it stands in."""
    safe = (c if c.isascii() and (c.isalnum() or c == " ") else "\\" + format(ord(c), "x") + " " for c in text)
    return '"' + "".join(safe) + '"'


def ticked(number: int, what: str) -> tuple[str, str]:
    """A box and the words beside it that tap it, as HTML; `what` is HTML. `number`: one of a page's boxes."""
    return f'<input type="checkbox" id="b{number}">', f'<label for="b{number}">{what}</label>'


def is_page(data: bytes) -> bool:
    """Whether a file's content is a page made here; any other page is somebody's own."""
    return data.startswith(b"<!doctype html>") and _MADE_HERE.encode() in data[:_HEAD_BYTES]


def class_(name: str, *, worn: bool = True) -> str:
    """The attribute, or nothing."""
    return f' class="{name}"' if worn else ""
