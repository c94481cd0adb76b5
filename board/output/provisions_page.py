"""Provisions as one page that prints: a box a food, by day and section of the shop. Foreign text is escaped.

A day with few foods is kept on one sheet of paper; a longer one flows on, and so wastes none.
"""

from collections.abc import Iterable, Iterator
from html import escape
from itertools import count

from board.base import words as shared
from board.base.plain import one_line
from board.output import words
from board.output.frame import PaperSize, as_html, class_, document, ticked
from board.output.provisions import costs, drinks_told, remarks
from board.shopping.errands import Errand, Provisions, Section
from board.shopping.rows import Row, errand_title, grown_rows, row_in_house, row_to_buy

MOST_KEPT_TOGETHER = 18  # foods, of a line or two each: less than a sheet


def provisions_page(found: Provisions, paper: PaperSize) -> str:
    """A whole HTML document, UTF-8."""
    title = one_line(shared.provisions_title(found.event, found.guests))
    return document(title, "\n".join(_body(title, found, count(1))), paper)


def _body(title: str, found: Provisions, number: "count[int]") -> Iterator[str]:
    yield f"<section>\n<h1>{escape(title)}</h1>"
    yield from (f'<p class="about">{as_html(remark)}</p>' for remark in remarks(found))
    for errand in found.errands:
        yield from _errand(errand, found, number)
    yield '<div class="notes">'
    in_house = (row_in_house(item, found.units) for item in found.in_house)
    yield from _list(words.PROVISIONS_IN_HOUSE, [f"{row.amount} {row.food}" for row in in_house], "short")
    yield from _list(shared.LEFT_TO_USE, found.left)
    yield from _grown(found)
    yield from _list(words.DRINKS_TITLE, drinks_told(found))
    yield from (f"<p><b>{as_html(cost)}</b></p>" for cost in costs(found))
    yield f"<p>{as_html(shared.PROVISIONS_CAUTION)}</p>\n</div>\n</section>"


def _errand(errand: Errand, found: Provisions, number: "count[int]") -> Iterator[str]:
    few = sum(len(section.bought) for section in errand.sections) <= MOST_KEPT_TOGETHER
    yield f"<div{class_('whole', worn=few)}>\n<h2>{as_html(errand_title(errand, found.zone))}</h2>"
    for section in errand.sections:
        yield from _section(section, found, number)
    yield "</div>"


def _section(section: Section, found: Provisions, number: "count[int]") -> Iterator[str]:
    priced = any(row_to_buy(bought, found.units).cost for bought in section.bought)
    yield f'<h3>{as_html(section.name or shared.PROVISIONS_NO_SECTION)}</h3>\n<table class="ticks">'
    yield from (_row(row_to_buy(bought, found.units), next(number), priced=priced) for bought in section.bought)
    yield "</table>"


def _row(row: Row, number: int, *, priced: bool) -> str:
    """`priced`: whether the table has a column of them, so that no line of it stops short."""
    box, food = ticked(number, as_html(row.food))
    told = f"<small>{as_html('; '.join(row.notes))}</small>" if row.notes else ""
    return (
        f'<tr><td class="box">{box}</td><td class="much">{as_html(row.amount)}</td>'
        f'<td class="food">{food}{told}</td><td class="dishes">{as_html(", ".join(row.dishes))}</td>'
        + (f'<td class="cost">{as_html(row.cost)}</td>' if priced else "")
        + "</tr>"
    )


def _grown(found: Provisions) -> Iterator[str]:
    grown = list(grown_rows(found))
    if grown:
        yield f"<h2>{as_html(words.PROVISIONS_GROWN)}</h2>"
    for title, lines in grown:
        yield f'<div class="whole">\n<h3>{as_html(title)}</h3>\n{_items(lines)}\n</div>'


def _list(title: str, lines: Iterable[str], kind: str = "") -> Iterator[str]:
    """A heading with its lines; nothing where there are none."""
    if told := list(lines):
        yield f"<h2>{as_html(title)}</h2>\n{_items(told, kind)}"


def _items(lines: Iterable[str], kind: str = "") -> str:
    return f"<ul{class_(kind, worn=bool(kind))}>{''.join(f'<li>{as_html(line)}</li>' for line in lines)}</ul>"
