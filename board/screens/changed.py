"""The question asked when the plan was edited while its evening runs."""

from collections.abc import Sequence
from typing import ClassVar

from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Vertical
from textual.content import Content
from textual.screen import ModalScreen
from textual.widgets import Static

from board.screens import words


class ChangedScreen(ModalScreen[None]):
    """What changed; the evening carries on with the timetable it began with."""

    CSS_PATH = "ask.tcss"
    BINDINGS: ClassVar[list[BindingType]] = [Binding("escape,enter,space,q", "dismiss(None)", show=False)]

    def __init__(self, lines: Sequence[str]) -> None:
        super().__init__()
        self.lines = lines

    def compose(self) -> ComposeResult:
        with Vertical(classes="box"):
            yield Static(Content.styled(words.PLAN_EDITED, "bold"))
            yield Static(Content("\n").join(Content(line) for line in ("", *self.lines, "")))
            yield Static(Content.styled(words.PLAN_GO_ON, "bold"))
