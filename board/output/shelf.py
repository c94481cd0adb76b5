"""Dishes of one's own, as a list and one by one."""

from collections.abc import Iterable
from datetime import date

from rich.console import Console

from board.base.plain import one_line, plain
from board.importing.shelf.kept import Evening, KeptDish
from board.output import words
from board.output.tables import cell, table

LONGEST_NAME = 40  # characters in the list; `show` has all of it


def print_shelf(dishes: Iterable[tuple[KeptDish, Evening | None]], path: str, out: Console) -> None:
    """Every dish with its last evening. `path`: of the folder, as it is shown."""
    rows = table(
        (words.SHELF_DISH, "left"),
        (words.SHELF_COURSE, "left"),
        (words.SHELF_SERVES, "right"),
        (words.SHELF_HANDS, "right"),
        (words.SHELF_LAST, "left"),
        (words.SHELF_TO, "left"),
    )
    for kept, last in dishes:
        rows.add_row(
            cell(one_line(kept.name, LONGEST_NAME), "bold"),
            cell(one_line(kept.course or "", LONGEST_NAME)),
            cell(kept.dish.for_ or ""),
            cell("" if kept.hands is None else words.shelf_minutes(kept.hands)),
            cell(_day(last.on) if last else words.SHELF_NOT_YET),
            cell(words.shelf_to(last.to) if last else ""),
        )
    if rows.row_count:
        out.print(rows)
    else:
        out.print(cell(words.SHELF_EMPTY))
    out.print(cell(words.shelf_lies_at(path), "dim"))


def print_kept(kept: KeptDish, last: Evening | None, path: str, out: Console) -> None:
    """One dish: when it was last served, and its file as it is written."""
    out.print(cell(words.shelf_lies_at(path), "dim"))
    if last is not None:
        out.print(cell(words.shelf_last(_day(last.on), last.to)))
    out.print(plain(kept.text.rstrip()), soft_wrap=True)


def _day(on: date) -> str:
    return f"{on.day} {on:%b} {on.year}"
