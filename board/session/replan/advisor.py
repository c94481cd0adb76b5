"""Decides when to work out the rest of an evening again, and which result to offer. Reads no clock, waits for nothing.

The host is disturbed only if courses run late, dishes stand out past their clocks or things beyond their shelf life,
and only for a clear gain.
"""

from collections.abc import Callable
from datetime import datetime, timedelta

from board.evening.decide import decide
from board.evening.events import CallRaised, OfferMade
from board.evening.fold import fold_all
from board.evening.forecast import Forecast
from board.evening.state import State
from board.evening.wishes import Refusal, TakeSheet
from board.session.background import Background, RestOfEvening
from board.session.replan.gain import KEPT, LATE, LOST, Costs, Offer, costs, offer
from board.sheet.run_sheet import RunSheet

AGAIN = timedelta(minutes=2)  # evening time until an unchanged state is solved again; our choice


class Advisor:
    """Called at every tick; holds the current offer. `heard` is told of each."""

    def __init__(
        self,
        background: Background,
        weigh: Callable[[State, Forecast], Costs] = costs,
        heard: Callable[[Offer], None] | None = None,
    ) -> None:
        self.background = background
        self.weigh = weigh
        self.heard = heard
        self.offer: Offer | None = None
        self.found_nothing = False  # the last search ended without any timetable: its time was too short, or it failed
        self.searching = False
        self._asked: tuple[int, datetime] | None = None  # `_answers` at the last request, and its moment
        self._weighed: tuple[int, datetime] | None = None  # the same when it was weighed last, and the minute
        self._offered_at = 0

    def look(self, state: State, forecast: Forecast) -> Offer | None:
        """The current offer, or None; requests a new timetable if one might help."""
        now, answers = forecast.now, _answers(state)
        fresh = self.background.answer(RestOfEvening)
        self.searching = self.searching and fresh is None
        if fresh is not None:
            self.found_nothing = fresh.sheet is None
        if fresh is not None and fresh.sheet is not None:
            self._consider(state, fresh.sheet, now)
        elif self.offer is not None and answers != self._offered_at:
            self._consider(state, self.offer.sheet, now)
        if not self.searching and self._is_time(answers, now) and self._may_differ(answers, now):
            found = self.weigh(state, forecast)
            if found.late >= LATE or found.lost >= LOST or found.kept >= KEPT:
                self.searching = self.background.ask(RestOfEvening(state.history, now))
                self._asked = (answers, now)
        return self.offer

    def _is_time(self, answers: int, now: datetime) -> bool:
        return self._asked is None or self._asked[0] != answers or abs(now - self._asked[1]) >= AGAIN

    def _may_differ(self, answers: int, now: datetime) -> bool:
        """Whether a cost may be another than when it was weighed last: they go by minutes."""
        before, self._weighed = self._weighed, (answers, now.replace(second=0, microsecond=0))
        return before != self._weighed

    def _consider(self, state: State, sheet: RunSheet, now: datetime) -> None:
        """Offers the sheet if it still fits the evening and still gains enough."""
        decided = decide(state, TakeSheet(sheet), now)
        self.offer = None
        if not isinstance(decided, Refusal):
            self.offer = offer(state, sheet, fold_all(state, decided), now)
            self._offered_at = _answers(state)
        if self.offer is not None and self.heard is not None:
            self.heard(self.offer)

    def forget(self) -> None:
        """Drops the offer: it was taken or is not wanted."""
        self.offer = None


def _answers(state: State) -> int:
    """How many events there are besides raised calls and offers: a new number means that something happened."""
    return sum(not isinstance(event, CallRaised | OfferMade) for event in state.history)
