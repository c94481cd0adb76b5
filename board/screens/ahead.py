"""The live board's keys that change what is to come: a push, a slip, a better timetable."""

from __future__ import annotations  # the slip screen is only named here; it loads when first opened

from typing import TYPE_CHECKING

from board.base import words as shared
from board.base.plain import one_line
from board.evening.wishes import TakeSheet
from board.screens import words
from board.screens.ask import PushScreen
from board.screens.live_board import LiveBoard
from board.session.replan.advisor import Advisor

if TYPE_CHECKING:
    from board.screens.slip import SlipScreen, Taken

SLIPS_NAME = "slips"


class Ahead:
    """Opens these screens over one live board and acts on what the host chooses."""

    def __init__(self, live: LiveBoard, advisor: Advisor | None) -> None:
        self.live = live
        self.advisor = advisor
        self.slips: SlipScreen | None = None  # kept once made

    def push(self, course: str | None = None) -> None:
        """Asks which course to push and by how much, starting at `course`, else at the next."""
        live = self.live
        ahead = [c.name for c in live.present.forecast.courses if c.is_ahead] if live.present else []
        if course is not None and course not in ahead:
            live.say(shared.cannot_push(one_line(course)))
        elif ahead:
            live.app.push_screen(PushScreen(live.evening, live.viewer, course or ahead[0]), self._push)
        else:
            live.say(words.NOTHING_TO_PUSH)

    def _push(self, chosen: tuple[str, int] | None) -> None:
        self.live.steady.settle()
        if chosen is not None:
            course, minutes = chosen
            self.live.wish(self.live.evening.push(course, minutes), shared.pushed(course, minutes))

    def slip(self) -> None:
        """Asks what went wrong."""
        chosen = self.live.chosen[0] if self.live.chosen is not None else None
        if self.slips is None:
            from board.screens.slip import SlipScreen  # loaded when first opened

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
        """Switches to the better timetable, if one is offered."""
        offer = self.advisor.offer if self.advisor is not None else None
        if self.advisor is None:
            self.live.say(words.NO_OFFER)
        elif offer is None and self.advisor.searching:
            self.live.say(words.OFFER_SOUGHT)
        elif offer is None:
            self.live.say(words.NOTHING_FOUND_YET if self.advisor.found_nothing else words.NO_OFFER)
        elif self.live.wish(TakeSheet(offer.sheet), shared.OFFER_TAKEN):
            self.advisor.forget()
