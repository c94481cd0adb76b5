"""The cook's book, as text and for other programs."""

from collections.abc import Callable, Sequence

from rich.console import Console

from board.base import words as shared
from board.learning.book import RATES, Book, Learned, kinds_in, ovens_in, steps_in
from board.learning.ovens import Rate
from board.output import words
from board.output.schemas.book import BookForm, FiguresForm
from board.output.tables import cell, table
from board.plan.phrases.durations import takes_text


def print_book(book: Book, path: str, out: Console) -> None:
    """Steps, kinds of work that hold more than one, and ovens, each from how many evenings. `path`: as it is shown."""
    out.print(cell(words.book_title(len(book.evenings)), "bold"))
    out.print(cell(shared.book_lies_at(path), "dim"))
    if not book.evenings:
        out.print(cell(words.BOOK_EMPTY))
        return
    for titles, learned, where in (
        ((words.BOOK_STEP, words.BOOK_LANE), steps_in(book), str),
        ((words.BOOK_KIND, words.BOOK_LANE), kinds_in(book, least_steps=2), str),
        ((words.BOOK_OVEN, words.BOOK_WAY), ovens_in(book), _way),
    ):
        if learned:
            out.print()
            _rows(titles, learned, where, out)
    out.print()
    out.print(cell(words.BOOK_USE))
    out.print(cell(words.LESSONS_CAUTION, "dim"))


def _rows(titles: tuple[str, str], learned: Sequence[Learned], where: Callable[[str], str], out: Console) -> None:
    rows = table(
        *((title, "left") for title in (*titles, words.BOOK_TAKES)),
        (words.BOOK_EVENINGS, "right"),
        (words.BOOK_RANGE, "left"),
    )
    for each in learned:
        low, high = each.estimate.range
        span = words.between(round(low), round(high))
        takes, evenings = cell(_takes(each), "bold"), cell(str(each.estimate.evenings))
        rows.add_row(cell(each.name), cell(where(each.where)), takes, evenings, cell(span))
    out.print(rows)


def _takes(learned: Learned) -> str:
    return takes_text(learned.lasts.low, learned.lasts.likely, learned.lasts.high)


def _way(way: str) -> str:
    rate = _rate(way)
    return words.book_way(way, rate.start, rate.end)


def book_form(book: Book) -> BookForm:
    """The book for other programs. Minutes."""
    return {
        "evenings": [{"mark": mark, "date": date, "plan": plan} for mark, (date, plan) in book.evenings.items()],
        "steps": [{"step": each.name, "lane": each.where, **_figures(each)} for each in steps_in(book)],
        "kinds": [{"first_word": each.name, "lane": each.where, **_figures(each)} for each in kinds_in(book)],
        "ovens": [
            {"oven": each.name, "way": each.where, "from_celsius": rate.start, "to_celsius": rate.end, **_figures(each)}
            for each in ovens_in(book)
            for rate in (_rate(each.where),)
        ],
    }


def _rate(way: str) -> Rate:
    return next(rate for each, rate in RATES.items() if each == way)


def _figures(learned: Learned) -> FiguresForm:
    return {
        "low_minutes": learned.lasts.low,
        "likely_minutes": learned.lasts.likely,
        "high_minutes": learned.lasts.high,
        "range_80_minutes": [round(each, 2) for each in learned.estimate.range],
        "evenings": learned.estimate.evenings,
    }
