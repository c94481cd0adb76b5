"""An evening watched from elsewhere: the state of a log that another board writes, for everybody or for one person.
Takes no answers."""

from dataclasses import replace
from datetime import datetime

import msgspec

from board.base import words as shared
from board.base.clock import Clock
from board.evening.calls import calls
from board.evening.events import newest
from board.evening.fold import fold_all
from board.evening.forecast import Forecaster
from board.evening.state import CallKey, begin
from board.evening.wishes import Refusal, Wish
from board.log.follow import Follower
from board.log.write import Memory
from board.session.session import Evening
from board.sheet.run_sheet import RunSheet
from board.view.present import Present


def hand_called(sheet: RunSheet, name: str) -> str | None:
    """The person with that name, as the plan writes it; None if there is nobody."""
    return next((hand for hand in sheet.hands if hand.casefold() == name.strip().casefold()), None)


def steps_of(sheet: RunSheet, who: str) -> RunSheet:
    """The sheet with only the steps that person works on; all courses stay."""
    theirs = tuple(slot for slot in sheet.slots if any(part.who == who for part in slot.attended))
    return msgspec.structs.replace(sheet, slots=theirs)


class Watched(Evening):
    """The evening in a log. `sheet` is what is shown: only one person's steps if `who` is given."""

    def __init__(self, follower: Follower, clock: Clock, who: str | None = None) -> None:
        """The follower must have found an evening."""
        assert follower.opened is not None
        super().__init__(follower.opened.sheet, clock, Memory())
        self.follower = follower
        self._shown_of: RunSheet | None = None
        self._shown = follower.opened.sheet
        self.who = hand_called(follower.opened.sheet, who) or who if who else None
        self._taken = (0, 0)  # how often the log was read from its start; events folded so far
        self.take()

    @property
    def sheet(self) -> RunSheet:
        """What is shown of the sheet the evening follows now."""
        whole = self.state.sheet
        if self._shown_of is not whole:
            who = hand_called(whole, self.who) if self.who else None
            self._shown_of, self._shown = whole, whole if self.who is None else steps_of(whole, who or "")
        return self._shown

    @property
    def rehearsal(self) -> bool:
        """Whether the log is of a rehearsal."""
        return self.follower.opened is not None and self.follower.opened.rehearsal

    @property
    def said(self) -> str:
        """What is wrong with the name or the log; empty if nothing is."""
        unknown = self.who is not None and hand_called(self.state.sheet, self.who) is None
        if unknown and self.who:
            return shared.nobody_called(self.who, list(self.state.sheet.hands))
        return self.follower.said

    def take(self) -> None:
        """Folds the events the follower has read since."""
        opened, events = self.follower.opened, self.follower.events
        assert opened is not None
        whole, count = self._taken
        if whole != self.follower.whole:
            self.state = fold_all(begin(opened.sheet), [opened])
            self._due, count = None, 0
        self.state = fold_all(self.state, events[count:])
        if self.forecaster.sheet is not self.state.sheet:
            self.forecaster = Forecaster(self.state.sheet)
        self._newest = newest([opened, *events])
        self._taken = (self.follower.whole, len(events))

    def now(self) -> datetime:
        """The time of day. In a rehearsal, whose clock only its own board knows, the time of the newest event."""
        if self.rehearsal and self._newest is not None:
            return self._newest
        return super().now()

    def tick(self) -> Present:
        """The present according to the log; raises no calls and logs nothing."""
        if self.follower.look():
            self.take()
        now = self.now()
        forecast = self.forecaster.forecast(self.state, now)
        mine = {slot.id for slot in self.sheet.slots}
        due, coming = (
            tuple(call for call in found if call.slot in mine and not call.silent)
            for found in calls(forecast, self.state)
        )
        before: set[CallKey] = set() if self._due is None else self._due
        self._due = {call.key for call in due}
        raised = tuple(call for call in due if call.key not in before)
        keeping = tuple(each for each in forecast.keeping if each.slot in mine)
        clocks = self.clocks(forecast)
        return Present(now, self.state, replace(forecast, keeping=keeping), due, coming, raised, clocks=clocks)

    def wish(self, wish: Wish) -> Refusal:
        """Always a refusal: only the board that runs the evening takes answers."""
        return Refusal(shared.LOOKING_ON)
