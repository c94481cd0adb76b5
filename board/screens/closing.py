"""The closing page over the board: how the evening went. It places what the view says."""

from typing import ClassVar

from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.screen import ModalScreen
from textual.widgets import Static

from board.base.plain import one_line
from board.evening.events import EveningOpened
from board.review.measure import measured
from board.screens import words
from board.screens.listing import MOVES, Listing
from board.session.session import Evening
from board.view.closing import PageLine, Tone, closing

ROLES: dict[Tone, str] = {
    "title": "accent",
    "head": "accent",
    "text": "text",
    "soft": "soft",
    "late": "presses",
    "planned": "soft",
    "actual": "accent",
}


def page_of(evening: Evening, width: int) -> tuple[PageLine, ...]:
    """The page as it is now; a fault is shown in its place, so that leaving never fails."""
    try:
        opened = next(e for e in evening.told if isinstance(e, EveningOpened))
        return closing(measured(evening.state, opened), width)
    except Exception as wrong:
        return (((words.board_fault(one_line(wrong, 80)), "late"),),)


class ClosingScreen(ModalScreen[None]):
    """One page, scrolled if the window is too small for it."""

    CSS_PATH = "look.tcss"
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,q,ctrl+q,enter,e", "dismiss(None)", show=False),
        *MOVES,
        Binding("space", "leaf(1)", show=False),
    ]

    def __init__(self, evening: Evening) -> None:
        super().__init__()
        self.evening = evening

    def compose(self) -> ComposeResult:
        self.page = Listing(id="page", choosing=False)
        yield self.page
        yield Static(words.CLOSING_KEYS, id="page-keys", markup=False)

    def on_mount(self) -> None:
        self.call_after_refresh(self._fill)

    def on_resize(self) -> None:
        self.call_after_refresh(self._fill)

    def _fill(self) -> None:
        if width := self.page.size.width:
            self.page.show([tuple((text, ROLES[tone]) for text, tone in line) for line in page_of(self.evening, width)])

    def action_move(self, rows: int) -> None:
        self.page.move(rows)

    def action_leaf(self, pages: int) -> None:
        self.page.move(pages * self.page.page())
