"""What all paper shares: a console that writes plain text of a known width, and rows in columns."""

import re
import sys
from collections.abc import Iterable
from typing import TextIO

from rich.console import Console
from rich.padding import Padding
from rich.segment import Segment
from rich.table import Table
from rich.text import Text

from board.base.plain import one_line
from board.base.wrap import asked_width

PLAIN_WIDTH = 100
_TRAILING = re.compile(r" +$", re.MULTILINE)


class _Console(Console):
    """Leaves a closed pipe to the command's own handling: it is no failure."""

    def on_broken_pipe(self) -> None:
        raise BrokenPipeError

    def _render_buffer(self, buffer: Iterable[Segment]) -> str:
        """Into a file or a pipe, no line ends in the spaces that fill up a table's cells."""
        text = super()._render_buffer(buffer)
        return text if self.is_terminal else _TRAILING.sub("", text)


def console(out: TextIO | None = None) -> Console:
    """Colours on a terminal only; a known width elsewhere, so that the same plan prints the same, or the one
    that COLUMNS asks for."""
    stream = out or sys.stdout
    is_terminal = stream.isatty()
    return _Console(
        file=stream,
        width=None if is_terminal else asked_width() or PLAIN_WIDTH,
        highlight=False,
        markup=False,
        emoji=False,
        soft_wrap=False,
    )


def table(*columns: tuple[str, str]) -> Table:
    """A borderless table; each column is its title and `left` or `right`."""
    made = Table(box=None, pad_edge=False, show_edge=False, header_style="dim")
    for title, side in columns:
        made.add_column(title, justify="right" if side == "right" else "left", no_wrap=side == "right")
    return made


def paragraph(text: object, style: str = "", indent: int = 0) -> Padding:
    """Foreign text, safe, with all its lines indented."""
    return Padding(cell(text, style), (0, 0, 0, indent), expand=False)


def cell(text: object, style: str = "", indent: int = 0) -> Text:
    """Foreign text, safe, never read as markup."""
    return Text(" " * indent + one_line(text), style=style)
