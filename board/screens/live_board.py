"""The live board as its key handlers see it."""

from typing import Any, Protocol

from textual.app import App

from board.evening.state import CallKey
from board.evening.wishes import Wish
from board.screens.steady import Steady
from board.session.session import Evening, Present
from board.view.board import BoardView, CallView, Viewer


class LiveBoard(Protocol):
    """`board`: the view of the present as last shown; `chosen`: the call the host moved to; `chosen_call`: the one keys
    act on; `heard`: the last message, and whether it was serious."""

    evening: Evening
    viewer: Viewer
    present: Present | None
    board: BoardView | None
    chosen: CallKey | None
    steady: Steady
    heard: tuple[str, bool]

    @property
    def app(self) -> App[Any]: ...
    @property
    def chosen_call(self) -> CallView | None: ...
    def wish(self, wish: Wish, said: str = "") -> bool: ...
    def say(self, text: str, *, grave: bool = False) -> None: ...


def chosen_slot(live: LiveBoard) -> str | None:
    """The slot of the call that keys act on."""
    call = live.chosen_call
    return call.key[0] if call is not None else None
