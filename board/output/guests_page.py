"""Who may eat what, as a page that prints: signs told apart by shape, then the reasons. Foreign text is escaped."""

from collections.abc import Iterator
from html import escape

from board.base import words as shared
from board.base.plain import one_line
from board.checks.allergens.guests_eat import Matrix
from board.output import words
from board.output.frame import PaperSize, as_html, document
from board.output.guests import guest_rows, in_short, reasons_by_guest, sign_of

MOST_DISHES = 8  # in one table: so many fit beside the names on a phone


def guests_page(event: str, found: Matrix, paper: PaperSize) -> str:
    """A whole HTML document, UTF-8."""
    title = one_line(words.guests_title(event))
    return document(title, "\n".join(_body(title, found)), paper)


def _body(title: str, found: Matrix) -> Iterator[str]:
    yield f'<section>\n<h1>{escape(title)}</h1>\n<p class="about">{escape(words.GUESTS_LEGEND)}</p>'
    tables = -(-len(found.dishes) // MOST_DISHES)
    for n in range(tables):
        yield from _table(found, range(len(found.dishes) * n // tables, len(found.dishes) * (n + 1) // tables))
    dishes = (f"<li>{as_html(f'{dish.course}: {dish.dish}')}</li>" for dish in found.dishes)
    yield f"<h2>{escape(words.GUESTS_DISHES)}</h2>\n<ol>{''.join(dishes)}</ol>"
    why = list(reasons_by_guest(found))
    if why:
        yield f"<h2>{escape(words.GUESTS_REASONS)}</h2>"
    for guest, lines in why:
        yield f"<h3>{as_html(guest)}</h3>\n<ul>{''.join(f'<li>{as_html(line)}</li>' for line in lines)}</ul>"
    yield from (f"<p>{escape(line)}</p>" for line in (in_short(found), shared.GUESTS_CAUTION) if line)
    yield "</section>"


def _table(found: Matrix, numbers: range) -> Iterator[str]:
    heads = "".join(f'<th scope="col" class="d">{d + 1}</th>' for d in numbers)
    yield f'<table class="eat">\n<thead><tr><th scope="col">{escape(words.GUESTS_GUEST)}</th>{heads}</tr></thead>'
    yield "<tbody>"
    for name, answers in guest_rows(found):
        signs = "".join(f'<td class="d">{escape(sign_of(answers[d]))}</td>' for d in numbers)
        yield f'<tr><th scope="row">{as_html(name)}</th>{signs}</tr>'
    yield "</tbody></table>"
