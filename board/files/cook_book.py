"""The cook's book on disk: one file in the user's data folder, written as a whole."""

from collections.abc import Callable
from contextlib import AbstractContextManager
from pathlib import Path
from typing import TYPE_CHECKING

from board.base import words as shared
from board.base.errors import why_of
from board.base.plain import one_line
from board.files import words
from board.files.held import held

if TYPE_CHECKING:
    from board.learning.book import Book

LARGEST_BYTES = 16_000_000


class BookTrouble(Exception):
    """The book cannot be read or written; the text is ready for the terminal. `broken`: a file is there, but it is not
    a book."""

    def __init__(self, text: str, *, broken: bool = False) -> None:
        super().__init__(text)
        self.broken = broken


def book_file() -> Path:
    """The path of the book, whether it exists or not."""
    from platformdirs import user_data_path  # imported only when a book is asked for

    return user_data_path("platecall") / "book.yaml"


def read_book_file(path: Path) -> "Book":
    """The book; an empty one if there is no file. Raises BookTrouble."""
    from board.learning.book import Book

    data = _bytes(path)
    return Book() if data is None else _book_in(data, path)


def rewrite(path: Path, change: Callable[["Book"], "Book"]) -> None:
    """Reads the book, changes it and writes it as a whole, under a lock; writes nothing if nothing changed.

    Raises BookTrouble; the book is then as it was.
    """
    from board.learning.book_text import book_text

    with _held(path):
        before = read_book_file(path)
        after = change(before)
        if after != before:
            _write(path, book_text(after).encode())


def _held(path: Path) -> AbstractContextManager[None]:
    """The book's lock, held. Raises BookTrouble."""
    in_use = BookTrouble(words.book_in_use(one_line(path)))
    return held(path.with_name(path.name + ".lock"), in_use, lambda wrong: _not_written(path, wrong))


def _write(path: Path, data: bytes) -> None:
    """Writes the file as a whole, for the host alone. Raises BookTrouble."""
    from board.log.disk import replace_whole

    try:
        replace_whole(path, data)
    except OSError as wrong:
        raise _not_written(path, wrong) from None


def _book_in(data: bytes, path: Path) -> "Book":
    from board.learning.book_text import read_book

    shown = one_line(path)
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as wrong:
        line = data.count(b"\n", 0, wrong.start) + 1
        raise BookTrouble(words.not_utf8(shown, line), broken=True) from None
    found = read_book(text, shown)
    if isinstance(found, list):
        snags = [snag.render() for snag in found]
        raise BookTrouble("\n".join([words.BOOK_BROKEN, *snags]), broken=True)
    return found


def _bytes(path: Path) -> bytes | None:
    """The file's bytes; None if there is no file. Raises BookTrouble."""
    shown = one_line(path)
    try:
        if path.exists() and (not path.is_file() or path.stat().st_size > LARGEST_BYTES):
            raise BookTrouble(words.too_large(shown) if path.is_file() else shared.not_a_file(shown), broken=True)
        return path.read_bytes()
    except FileNotFoundError:
        return None
    except OSError as wrong:
        raise BookTrouble(shared.cannot_read(shown, why_of(wrong))) from None


def _not_written(path: Path, wrong: Exception) -> BookTrouble:
    return BookTrouble(words.book_not_written(one_line(path), why_of(wrong)))
