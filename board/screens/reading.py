"""Enters a probe reading: which step, the figure typed, and what it means before it is kept."""

from collections.abc import Mapping, Sequence
from types import MappingProxyType
from typing import ClassVar

from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Vertical
from textual.content import Content
from textual.screen import ModalScreen
from textual.widgets import Input, Static

from board.base import words as shared
from board.base.plain import one_line
from board.evening.events import Part
from board.facts.degrees import read_degrees
from board.facts.limits import Degrees
from board.screens import words
from board.screens.ask import hint
from board.sheet.run_sheet import Slot
from board.view.board import Viewer
from board.view.reading import reading_words

WITHOUT = "w"
NOT_HOT: Mapping[str, Degrees] = MappingProxyType({})
# What a click on the hint's words does.
HINT_ACTIONS = ("keep", "choose(-1)", "choose(1)", "dismiss")
ANSWER_ACTIONS = ("keep", "without", "dismiss")


class Figure(Input):
    """The input for the figure; leaves the key for going on without one to the screen, as no figure contains it."""

    def check_consume_key(self, key: str, character: str | None) -> bool:
        return key != WITHOUT and super().check_consume_key(key, character)


class ReadingScreen(ModalScreen[tuple[str, float | None] | None]):
    """Dismisses with the slot and °C (°C None: skip the reading), or with None. `slots`: those that can be read, the
    likeliest first. `answers`: the part of the call that asked, if one did. `hot`: what food kept hot must show."""

    CSS_PATH = "ask.tcss"
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape", "dismiss(None)", show=False),
        Binding("up", "choose(-1)", show=False),
        Binding("down", "choose(1)", show=False),
        Binding(WITHOUT, "without", show=False, priority=True),
    ]

    def __init__(
        self, viewer: Viewer, slots: Sequence[str], answers: Part | None = None, hot: Mapping[str, Degrees] = NOT_HOT
    ) -> None:
        super().__init__()
        self.viewer = viewer
        self.slots = slots
        self.answers = answers
        self.hot = hot
        self.at = 0

    def compose(self) -> ComposeResult:
        self.about = Static("", markup=False)
        self.figure = Figure(max_length=20)
        self.answer = Static("", markup=False)
        with Vertical(classes="box"):
            yield Static(Content.styled(words.READING_TITLE, "bold"))
            yield self.about
            yield self.figure
            yield self.answer
            yield self._hint()
            yield Static(Content(words.READING_CAUTION), classes="hint")

    def _hint(self) -> Static:
        if self.answers is None:
            return hint(zip(words.READING_HINTS, HINT_ACTIONS, strict=True))
        said = words.READING_HINTS_AT_LOOK if self.answers == "look-in" else words.READING_HINTS_AT_END
        return hint(zip(said, ANSWER_ACTIONS, strict=True))

    def on_mount(self) -> None:
        self.show()

    def _wanted(self) -> float:
        id_ = self.slots[self.at]
        return self.hot[id_].celsius if id_ in self.hot else self.viewer.slots[id_].core_celsius or 0.0

    def show(self) -> None:
        """Shows the step, and what the figure so far means for it."""
        slot = self.viewer.slots[self.slots[self.at]]
        title = self._title(slot)
        self.about.update(Content.styled(title, "bold $accent"))
        self._answer(self.figure.value, asked=False)

    def _title(self, slot: Slot) -> str:
        """The step, and the temperature it wants."""
        name = one_line(slot.name, 60)
        if slot.id in self.hot:
            return words.reading_for(name, self._wanted(), self.viewer.sheet.fahrenheit)
        if slot.core_celsius is None:
            return words.reading_of_cooling(name)
        title = words.reading_for(name, slot.core_celsius, self.viewer.sheet.fahrenheit)
        return shared.held_for(title, slot.hold_minutes) if slot.hold_minutes else title

    def _answer(self, text: str, *, asked: bool) -> float | None:
        """What the figure means; a wrong one is reported only after enter."""
        fahrenheit = self.viewer.sheet.fahrenheit
        found = read_degrees(text, fahrenheit=fahrenheit, wanted=self._wanted())
        if isinstance(found, float):
            told = reading_words(self.viewer, self.slots[self.at], found, self.hot.get(self.slots[self.at]))
            self.answer.update(Content(told))
            return found
        told = words.READING_TROUBLE[found] if asked else words.reading_unit(fahrenheit)
        self.answer.update(Content.styled(told, "bold $warning" if asked else "$soft"))
        return None

    def on_input_changed(self, event: Input.Changed) -> None:
        self._answer(event.value, asked=False)

    def on_input_submitted(self) -> None:
        self.action_keep()

    def action_keep(self) -> None:
        found = self._answer(self.figure.value, asked=True)
        if found is not None and self.is_current:  # a bouncing enter comes twice but must close once
            self.dismiss((self.slots[self.at], found))

    def action_without(self) -> None:
        """If a call asked for it: goes on without a reading."""
        if self.answers is not None and self.is_current:
            self.dismiss((self.slots[self.at], None))

    def action_choose(self, step: int) -> None:
        self.at = (self.at + step) % len(self.slots)
        self.show()
