"""The live board as what its keys do sees it: the evening, what is shown of it, what is wished, what is said."""

from abc import ABCMeta, abstractmethod

from textual.screen import Screen

from board.base.plain import one_line
from board.evening.state import CallKey
from board.evening.wishes import Refusal, Wish
from board.screens import words
from board.screens.steady import Steady
from board.session.session import Evening
from board.view.board import BoardView, CallView, Viewer
from board.view.choice import chosen_call
from board.view.present import Present


class _AbstractScreen(ABCMeta, type(Screen)):  # type: ignore[misc]  # mypy takes no computed base
    """The kind of class a screen is, with methods that each must have."""


class LiveBoard(Screen[None], metaclass=_AbstractScreen):  # type: ignore[metaclass]  # nor sees that it is Screen's
    """`present` and `board` are the last moment asked for and as it was shown; `chosen` is the call the host went to;
    `heard` is what was said last, and whether that was grave."""

    def __init__(self, evening: Evening) -> None:
        super().__init__()
        self.evening = evening
        self.viewer = self.new_viewer()
        self.steady = Steady(self)
        self.chosen: CallKey | None = None
        self.present: Present | None = None
        self.board: BoardView | None = None
        self.heard = ("", False)

    def new_viewer(self) -> Viewer:
        """Of the sheet the evening goes by now."""
        return Viewer(self.evening.sheet)

    @abstractmethod
    def tick(self) -> None:
        """Asks the evening what is due, and shows it."""

    @abstractmethod
    def say(self, text: str, *, grave: bool = False) -> None:
        """One line for a while."""

    def wish(self, wish: Wish, said: str = "") -> bool:
        """Hands a wish to the evening; says what came of it; shows the new present at once."""
        try:
            refusal = self.evening.wish(wish)
        except Exception as wrong:
            self.say(words.board_fault(one_line(wrong, 80)), grave=True)
            return False
        if isinstance(refusal, Refusal):
            self.say(refusal.words, grave=True)
            return False
        if said:
            self.say(said)
        self.chosen = None
        self.tick()
        return True

    @property
    def chosen_call(self) -> CallView | None:
        """The call keys act on, of those shown."""
        return chosen_call(self.board, self.chosen) if self.board is not None else None

    @property
    def chosen_slot(self) -> str | None:
        """The slot of the call keys act on."""
        call = self.chosen_call
        return call.key[0] if call is not None else None
