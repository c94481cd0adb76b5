"""The keys of the live board that change what is ahead: a push, something that went wrong, a better timetable."""

from __future__ import annotations  # the slip screen is only named here, and loaded when it is asked for

from typing import TYPE_CHECKING

from board.base import words
from board.base.plain import one_line
from board.evening.wishes import TakeSheet
from board.screens.ask import PushScreen
from board.screens.live_board import LiveBoard
from board.session.replan.advisor import Advisor

if TYPE_CHECKING:
    from board.screens.slip import SlipScreen, Taken

SLIPS_NAME = "slips"


class Ahead:
    """Opens the screens over one live board, and does what is wished there."""

    def __init__(self, live: LiveBoard, advisor: Advisor | None) -> None:
        self.live = live
        self.advisor = advisor
        self.slips: SlipScreen | None = None  # kept, once it was made

    def push(self, course: str | None = None) -> None:
        """Asks which course by how much; begins at the one given, else the next."""
        live = self.live
        ahead = [c.name for c in live.present.forecast.courses if c.is_ahead] if live.present else []
        if course is not None and course not in ahead:
            live.say(words.cannot_push(one_line(course)))
        elif ahead:
            live.app.push_screen(PushScreen(live.evening, live.viewer, course or ahead[0]), self._push)
        else:
            live.say(words.NOTHING_TO_PUSH)

    def _push(self, chosen: tuple[str, int] | None) -> None:
        self.live.steady.settle()
        if chosen is not None:
            course, minutes = chosen
            self.live.wish(self.live.evening.push(course, minutes), words.pushed(course, minutes))

    def slip(self) -> None:
        """Asks what went wrong."""
        chosen = self.live.chosen_slot
        if self.slips is None:
            from board.screens.slip import SlipScreen  # not before it is first asked for

            self.slips = SlipScreen(self.live.evening, self.live.viewer)
            self.live.app.install_screen(self.slips, SLIPS_NAME)
        self.slips.viewer = self.live.viewer
        self.slips.begin(chosen)
        self.live.app.push_screen(self.slips, self._slip)

    def _slip(self, taken: Taken | None) -> None:
        self.live.steady.settle()
        if taken is not None:
            self.live.wish(taken[0], words.slip_taken(taken[1]))

    def take_offer(self) -> None:
        """Goes on by the better timetable, where one is offered."""
        offer = self.advisor.offer if self.advisor is not None else None
        if offer is None or self.advisor is None:
            self.live.say(words.NO_OFFER)
        elif self.live.wish(TakeSheet(offer.sheet), words.OFFER_TAKEN):
            self.advisor.forget()
