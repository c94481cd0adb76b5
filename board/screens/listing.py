"""A list of lines with one chosen: scrolls to keep it in view and draws only what is seen."""

from collections.abc import Sequence

from rich.cells import cell_len
from textual import events
from textual.binding import Binding, BindingType
from textual.message import Message

from board.screens.lines import Line, Lines

# Keys of a screen that has `action_move(rows)` and `action_leaf(pages)`.
MOVES: list[BindingType] = [
    Binding("up", "move(-1)", show=False),
    Binding("down", "move(1)", show=False),
    Binding("pageup", "leaf(-1)", show=False),
    Binding("pagedown", "leaf(1)", show=False),
    Binding("home", "move(-100000)", show=False),
    Binding("end", "move(100000)", show=False),
]


class Listing(Lines):
    """Rows of styled text. If the last row is chosen, the choice follows new rows."""

    class Moved(Message):
        """Another row was chosen."""

    def __init__(self, *, id: str, choosing: bool = True) -> None:
        super().__init__(id=id)
        self.rows: tuple[Line, ...] = ()
        self.at = 0
        self.top = 0
        self.choosing = choosing  # without it, the list only scrolls

    def show(self, rows: Sequence[Line], at: int | None = None) -> None:
        """Shows new rows with row `at` chosen; if None, the same row, or the last if the last was chosen."""
        was_last = self.at >= len(self.rows) - 1
        self.rows = tuple(rows)
        self.at = at if at is not None else len(self.rows) - 1 if was_last and self.choosing else self.at
        self._place()

    def move(self, rows: int) -> None:
        """Moves down by that many rows; below 0, up."""
        if self.choosing:
            self.at = max(0, min(self.at + rows, len(self.rows) - 1))
        else:
            self.top += rows
        self._place()
        self.post_message(self.Moved())

    def page(self) -> int:
        """Rows in view, less one that stays for context."""
        return max(1, self.size.height - 1)

    def on_resize(self) -> None:
        self._place()

    def on_mouse_scroll_down(self) -> None:
        self.move(3)

    def on_mouse_scroll_up(self) -> None:
        self.move(-3)

    def on_click(self, event: events.Click) -> None:
        if self.choosing:
            self.move(self.top + event.y - self.at)

    def _place(self) -> None:
        """Scrolls just enough to keep the chosen row in view, and never past the end."""
        height = max(1, self.size.height)
        self.at = max(0, min(self.at, len(self.rows) - 1))
        if self.choosing:
            self.top = max(self.at - height + 1, min(self.top, self.at))
        self.top = max(0, min(self.top, len(self.rows) - height))
        seen = self.rows[self.top : self.top + height]
        self.put([self._line(self.top + n, line) for n, line in enumerate(seen)])

    def _line(self, number: int, line: Line) -> Line:
        if not self.choosing or number != self.at:
            return line
        text = "".join(text for text, _ in line)
        return ((f"{text}{' ' * max(0, self.size.width - cell_len(text))}", "chosen"),)
