"""The keys of the live board that look back or take something down: look back, notes, readings, the closing page.

Their screens are loaded when they are first asked for, so that the board is painted without them.
"""

from collections.abc import Callable
from typing import Any, Protocol

from textual.app import App

from board import words
from board.evening import Evening, Present
from board.run.decide import TakeReading, Wish, WriteNote
from board.run.readings import can_be_read
from board.view.board import BoardView, Viewer


class Board(Protocol):
    """The live board, as far as this needs it. `heard`: what it said last, and whether that was grave."""

    evening: Evening
    viewer: Viewer
    present: Present | None
    board: BoardView | None
    heard: tuple[str, bool]

    @property
    def app(self) -> App[Any]: ...
    def wish(self, wish: Wish, said: str = "") -> bool: ...
    def say(self, text: str, *, grave: bool = False) -> None: ...


class Looking:
    """Opens the screens over one live board, and does what is wished there."""

    def __init__(self, live: Board, settle_key: Callable[[], None]) -> None:
        self.live = live
        self.settle_key = settle_key  # a key that bounces out of such a screen answers nothing

    def back(self) -> None:
        from board.screens.look import LookScreen

        self.live.app.push_screen(LookScreen(self.live, self.keep_note, self.ask_reading), lambda _: self.settle_key())

    def keep_note(self, text: str | None, slot: str | None) -> None:
        self.settle_key()
        if text:
            self.live.wish(WriteNote(text, slot), words.NOTE_KEPT)

    def read_any(self, first: str | None) -> None:
        """Asks for a reading of what is under way or keeping, `first` before the others."""
        present = self.live.present
        slots = can_be_read(present.state, present.forecast, first) if present else []
        if slots:
            self._ask(slots)
        else:
            self.live.say(words.NOTHING_TO_READ)

    def ask_reading(self, slot: str | None) -> None:
        """Asks for a reading of that step, or says why there can be none."""
        found = self.live.viewer.slots[slot] if slot else None
        if found is None:
            self.live.say(words.NO_STEP_CHOSEN)
        elif found.core_celsius is None:
            self.live.say(words.no_core(found.name), grave=True)
        else:
            self._ask([found.id])

    def _ask(self, slots: list[str]) -> None:
        from board.screens.reading import ReadingScreen

        self.live.app.push_screen(ReadingScreen(self.live.viewer, self.live.evening.state, slots), self._take)

    def _take(self, taken: tuple[str, float] | None) -> None:
        self.settle_key()
        if taken is not None:
            from board.view.look import reading_said

            evening = self.live.evening
            said = reading_said(self.live.viewer, evening.state, *taken, evening.clock.now())
            self.live.wish(TakeReading(*taken), said)

    def close(self, then: Callable[[], None]) -> None:
        """The closing page; when it is left, so is the board."""
        from board.screens.closing import ClosingScreen

        self.live.app.push_screen(ClosingScreen(self.live.evening), lambda _: then())
