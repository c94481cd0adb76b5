"""The board for somebody who only watches: the same, without answers. Pure."""

from dataclasses import replace

from board.evening.calls import Call
from board.sheet.run_sheet import RunSheet
from board.view import words
from board.view.board import BoardView, CallView, Viewer
from board.view.present import Present
from board.view.standing import Standings


class Onlooker(Viewer):
    """Makes views in which no call asks for an answer and no line names a key; `who`: of one person's steps."""

    def __init__(self, sheet: RunSheet, who: str | None = None) -> None:
        super().__init__(sheet, who)
        self.standings = Standings(self.slots, self.clock, keyed=False)

    def view(self, at: Present) -> BoardView:
        """The board at that moment, without a step to answer."""
        return replace(super().view(at), busy=None)

    def call(self, call: Call, at: Present, *, is_due: bool) -> CallView:
        """One call in words, without an answer."""
        return replace(super().call(call, at, is_due=is_due), answer="")

    def nothing_left(self, at: Present, others: bool) -> tuple[str, str]:
        """That is all there is to see; while steps of others are left, only their own are done."""
        left = others or not all(step.settled for step in at.state.steps.values())
        return words.NOTHING_YOURS if left else words.NOTHING_MORE, ""
