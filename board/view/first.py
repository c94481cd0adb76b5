"""The board's first picture in plain lines, to read while the screen library loads. Pure: BoardView → lines."""

from collections.abc import Iterator

from board.base import words as shared
from board.view import words
from board.view.board import BoardView
from board.view.wrap_words import cut, wrap_words

COMING_FROM = 9  # row in which the calls ahead begin, from 0


def first_lines(view: BoardView, columns: int, rows: int, mode: str = "") -> list[str]:
    """What is due, what is next, how the evening stands: at most `rows` lines of at most `columns` cells.

    Laid out roughly as the board will be. `mode`: the word for a rehearsal, or empty.
    """
    lines = [cut(line, columns) for line in _said(view, columns, mode)]
    room = max(0, rows - max(len(lines), COMING_FROM) - 1)
    coming = [cut(f" {call.clock}  {call.sign} {call.headline}  {call.detail}", columns) for call in view.coming[:room]]
    if coming:
        lines += [""] * (COMING_FROM - len(lines)) + coming
    return [*lines[: rows - 1], cut(words.OPENING, columns)]


def _said(view: BoardView, columns: int, mode: str) -> Iterator[str]:
    course = view.course
    standing = f"{view.standing_sign} {view.standing}   " if view.standing else ""
    yield f" {standing}{course.told if course else shared.ALL_SERVED}"
    yield f" {view.seated}" if view.seated else f" {view.title} · {view.day}"
    yield f" {view.clock}   {mode}"
    yield ""
    if not view.due:
        yield f" {view.headline}"
        yield f" {view.detail}"
    for call in view.due:
        waiting = f"{shared.INSISTENCE_SIGN[call.insistence]}{call.countdown}"
        yield from (f" {line}" for line in wrap_words(f"{call.sign} {call.headline}", columns - 2, 2))
        told = (f"{waiting} · {call.detail}", call.look_for, call.caution)
        yield from (f"   {line}" for text in told if text for line in wrap_words(text, columns - 4))
