"""The board as somebody sees it who only looks on: the same, with nothing to answer. Pure."""

from dataclasses import replace

from board.evening.calls import Call
from board.sheet.run_sheet import RunSheet
from board.view.board import BoardView, CallView, Viewer
from board.view.present import Present
from board.view.standing import Standings


class Onlooker(Viewer):
    """Makes views in which no call asks for an answer, and no line names a key."""

    def __init__(self, sheet: RunSheet) -> None:
        super().__init__(sheet)
        self.standings = Standings(self.slots, self.clock, keyed=False)

    def view(self, at: Present) -> BoardView:
        return replace(super().view(at), busy=None)

    def call(self, call: Call, at: Present, *, is_due: bool) -> CallView:
        return replace(super().call(call, at, is_due=is_due), answer="")
