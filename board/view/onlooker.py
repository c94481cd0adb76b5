"""The board as somebody sees it who only looks on: the same, with nothing to answer. Pure."""

from dataclasses import replace

from board.run.calls import Call
from board.view.board import BoardView, CallView, Moment, Viewer


class Onlooker(Viewer):
    """Makes views in which no call asks for an answer."""

    def view(self, at: Moment) -> BoardView:
        return replace(super().view(at), busy=None)

    def call(self, call: Call, at: Moment, *, is_due: bool) -> CallView:
        return replace(super().call(call, at, is_due=is_due), answer="")
