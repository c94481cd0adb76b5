"""The frame and the style of every page that prints: HTML 5 that needs nothing else, on A4 or US Letter.

The page runs no script and fetches nothing: it forbids both to the browser. Bodies come in escaped.
"""

from html import escape
from typing import Literal

from board.base import words as shared

PaperSize = Literal["a4", "letter"]
PAPERS: dict[PaperSize, str] = {"a4": "A4", "letter": "letter"}  # as CSS names them
_MADE_HERE = '<meta name="generator" content="platecall">'
_HEAD_BYTES = 300  # the mark is within the first so many bytes

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
td.box { width: 1.5em; } td.box::before { content: "BOX"; }
td.time { white-space: nowrap; width: 6.2em; font-variant-numeric: tabular-nums; }
td.where { width: 27%; color: #333; } td.who { width: 10%; color: #333; }
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
"""


def document(title: str, body: str, paper: PaperSize, *, wall: bool = False) -> str:
    """A whole HTML document, UTF-8. `title` is escaped here; `body` is HTML already; `wall`: in large type."""
    style = _STYLE.replace("PAPER", PAPERS[paper]).replace("BOX", shared.SIGN["box"])
    return (
        '<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n'
        f"{_MADE_HERE}\n"
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">\n"
        f"<title>{escape(title)}</title>\n<style>{style}</style>\n</head>\n"
        f"<body{class_('wall', worn=wall)}>\n{body}\n</body>\n</html>\n"
    )


def is_page(data: bytes) -> bool:
    """Whether a file's content is a page made here; any other page is somebody's own."""
    return data.startswith(b"<!doctype html>") and _MADE_HERE.encode() in data[:_HEAD_BYTES]


def class_(name: str, *, worn: bool = True) -> str:
    """The attribute, or nothing."""
    return f' class="{name}"' if worn else ""
