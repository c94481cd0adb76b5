"""One evening in progress: the session behind the live board, the rehearsal, the plain output and the tests.

Every answer takes the same way: decide on events, write them to the log, fold them into the state. If the log cannot be
written the evening goes on, and `unkept` says so. Knows no screen; takes the time from the given clock.
"""

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

import msgspec

from board.base.clock import JUMP_SECONDS, Clock, Jump
from board.evening.behind import behind
from board.evening.calls import Call, calls
from board.evening.clocks import LiveClock, has_clocks, live_clocks, warn_clocks
from board.evening.decide import decide
from board.evening.events import (
    BoardReopened,
    ClockJumped,
    ClockWarned,
    EveningOpened,
    Event,
    KeepingWarned,
    NightDrawn,
    OfferedCourse,
    OfferMade,
    Said,
    StepFinished,
    StopsAccepted,
    newest,
)
from board.evening.fold import fold_all
from board.evening.forecast import Forecast, Forecaster, Standing
from board.evening.raise_due import raise_calls, warn_keeping
from board.evening.state import CallKey, State, begin
from board.evening.wishes import Later, Push, Refusal, Wish, later_again, push_from_now
from board.log.write import Keeper, Memory, RunLog
from board.sheet.run_sheet import RunSheet
from board.view.present import Present

if TYPE_CHECKING:
    from board.session.replan.gain import Offer


class Evening:
    """Holds the log, the state and the clock of one evening. Moments are aware datetimes."""

    def __init__(self, sheet: RunSheet, clock: Clock, keeper: Keeper, past: Sequence[Event] = ()) -> None:
        self.clock = clock
        self.keeper = keeper
        self.state = fold_all(begin(sheet), past)
        self.told: list[Event] = list(past)  # including what was undone
        self.forecaster = Forecaster(self.state.sheet)
        self._newest = newest(past)
        self._due: set[CallKey] | None = None  # keys due at the last tick
        self._offered: RunSheet | None = None  # the last sheet that was
        self._clocks: tuple[State, datetime, tuple[LiveClock, ...]] | None = None  # the state and minute they are for
        self._last: Present | None = None  # as it was worked out last

    @property
    def sheet(self) -> RunSheet:
        """The sheet the evening follows now."""
        return self.state.sheet

    def tick(self) -> Present:
        """The present. Raises calls that have come due, and logs them."""
        self._note_jump(self.clock.jumped())
        self.keeper.mind()
        now = self.now()
        if (last := self._as_before(now)) is not None:
            return replace(
                last,
                now=now,
                forecast=replace(last.forecast, now=now),
                raised=(),
                warned=(),
                clock_warned=(),
                unkept=self.keeper.unkept,
                copy_trouble=self.keeper.copy_trouble,
            )
        forecast, due, coming, fresh = self._called(now)
        # A call that comes due again, after a push or after the clock was set back, is heard again.
        again = set() if self._due is None else {call.key for call in due} - self._due
        self._due = {call.key for call in due}
        raised = tuple(call for call in due if call.key in fresh | again)
        warned = self._warned(forecast)
        clocks = self.clocks(forecast)
        said = self._clock_warned(clocks, now)
        ahead = tuple(due), tuple(coming), raised
        self._last = Present(
            now,
            self.state,
            forecast,
            *ahead,
            warned,
            clocks,
            said,
            unkept=self.keeper.unkept,
            copy_trouble=self.keeper.copy_trouble,
            behind=any(call.overtaken for call in due) and bool(self.behind()),
        )
        return self._last

    def _as_before(self, now: datetime) -> Present | None:
        """What was worked out last, where it still holds: in the same minute, nothing has happened and nothing has come
        due. Everything a host is told is told by the minute."""
        last = self._last
        if last is None or last.state is not self.state or not timedelta() <= now - last.now < timedelta(minutes=1):
            return None
        if now.replace(second=0, microsecond=0) > last.now or any(call.due <= now for call in last.coming):
            return None
        return last

    def _called(self, now: datetime) -> tuple[Forecast, list[Call], list[Call], set[CallKey]]:
        """Raises what has come due, and ends what ends by itself: the forecast after that, calls due and to come, and
        which of those due are new. A call that is raised moves nothing, an end may."""
        forecast = self.forecaster.forecast(self.state, now)
        due, coming = calls(forecast, self.state)
        fresh = {call.key for call in due if call.raised is None}
        while new := raise_calls(self.state, due, now):
            self._keep(new)
            if any(isinstance(event, StepFinished) for event in new):
                forecast = self.forecaster.forecast(self.state, now)
            due, coming = calls(forecast, self.state)
            fresh |= {call.key for call in due if call.raised is None}
        return forecast, due, coming, fresh

    def clocks(self, forecast: Forecast) -> tuple[LiveClock, ...]:
        """How long each dish has stood out. Worked out again after every event, else once a minute."""
        if not has_clocks(self.state.sheet):
            return ()
        known, minute = self._clocks, forecast.now.replace(second=0, microsecond=0)
        if known is None or known[0] is not self.state or known[1] != minute:
            known = self._clocks = (self.state, minute, live_clocks(self.state, forecast))
        return known[2]

    def _clock_warned(self, clocks: tuple[LiveClock, ...], now: datetime) -> tuple[ClockWarned, ...]:
        """Warnings about the clocks that are due now for the first time; logged."""
        new = warn_clocks(self.state, clocks, now)
        if new:
            self._keep(new)
        return tuple(event for event in new if isinstance(event, ClockWarned))

    def _warned(self, forecast: Forecast) -> tuple[Standing, ...]:
        """Results that are now close to the end of their shelf life, for the first time; logged."""
        new = warn_keeping(self.state, forecast)
        if new:
            self._keep(new)
        slots = {event.slot for event in new if isinstance(event, KeepingWarned)}
        return tuple(each for each in forecast.keeping if each.slot in slots)

    def now(self) -> datetime:
        """The clock's time, but never before the last event, in case the clock is slightly behind it."""
        now = self.clock.now()
        return now if self._newest is None else max(now, self._newest)

    def _note_jump(self, jump: Jump | None) -> None:
        """Logs a jump of the clock. A clock far behind the last event, as after reopening a board, is logged as a jump
        too."""
        now = self.clock.now()
        if jump is not None:
            self._newest = None  # it was by the old clock
            self._keep([ClockJumped(n=self.state.last_n + 1, at=now, seconds=jump.seconds, slept=jump.slept)])
        elif self._newest is not None and (behind := self._newest - now) > timedelta(seconds=JUMP_SECONDS):
            # Nobody knows how long ago that was, so the last event counts as having happened just now.
            self._newest = None
            self._keep([ClockJumped(n=self.state.last_n + 1, at=now, seconds=-behind.total_seconds())])

    def peek(self) -> Present:
        """The present, without raising or logging anything."""
        now = self.now()
        forecast = self.forecaster.forecast(self.state, now)
        due, coming = calls(forecast, self.state)
        return Present(now, self.state, forecast, tuple(due), tuple(coming), clocks=self.clocks(forecast))

    def look(self) -> Forecast:
        """The forecast of the rest, without raising or logging anything."""
        return self.forecaster.forecast(self.state, self.now())

    def wish(self, wish: Wish) -> Refusal | None:
        """Does what the host wants and returns None, or returns why not."""
        self._note_jump(self.clock.jumped())
        decided = decide(self.state, wish, self.now())
        if isinstance(decided, Refusal):
            return decided
        self._keep(decided)
        return None

    def what_if(self, wish: Wish) -> Forecast | Refusal:
        """The forecast if a wish were carried out, or why it cannot be. Changes nothing."""
        now = self.now()
        decided = decide(self.state, wish, now)
        if isinstance(decided, Refusal):
            return decided
        then = fold_all(self.state, decided)
        forecaster = self.forecaster if then.sheet is self.state.sheet else Forecaster(then.sheet)
        return forecaster.forecast(then, now)

    def behind(self) -> tuple[Said, ...]:
        """What should be done by now and was never told."""
        return behind(self.state, self.forecaster, self.now())

    def push(self, course: str, minutes: int) -> Push:
        """The wish to send a course out this many minutes later than it is forecast now. Raises KeyError for an unknown
        course."""
        return push_from_now(self.state, self.look(), course, minutes)

    def later(self, call: CallKey) -> Later:
        """The wish to be asked again five minutes from now, or five minutes after the time it was put off to."""
        return later_again(self.state, *call, self.now())

    def put_off_till(self, call: CallKey) -> datetime | None:
        """The moment a call was put off to; None unless it is still ahead."""
        until = self.state.steps[call[0]].put_off.get(call[1])
        return until if until is not None and until > self.now() else None

    def accept_stops(self) -> None:
        """Logs that the host read the plan's stops and begins all the same."""
        stops = self.sheet.stops
        self._keep([StopsAccepted(n=self.state.last_n + 1, at=self.now(), stops=stops)])

    def offered(self, offer: "Offer") -> None:
        """Logs a timetable that is offered, once each."""
        if self._offered is not offer.sheet:
            self._offered = offer.sheet
            courses = tuple(OfferedCourse(*each) for each in offer.courses)
            gained = tuple((kind, much) for kind, much in offer.gained.items() if much)
            self._keep([OfferMade(n=self.state.last_n + 1, at=self.now(), courses=courses, gained=gained)])

    def begin_night(self, night: NightDrawn) -> None:
        """Logs the night of mishaps that a rehearsal goes by from now on, numbered as the next event."""
        self._keep([msgspec.structs.replace(night, n=self.state.last_n + 1, at=self.now())])

    def _keep(self, events: Sequence[Event]) -> None:
        self.keeper.append(events)
        self.state = fold_all(self.state, events)
        if self.forecaster.sheet is not self.state.sheet:
            self.forecaster = Forecaster(self.state.sheet)
        self.told.extend(events)
        if events:
            self._newest = newest(events)

    def close(self) -> None:
        """Closes the log."""
        self.keeper.close()


def open_evening(sheet: RunSheet, clock: Clock, log: RunLog, *, rehearsal: bool) -> Evening:
    """A new evening in an empty log, or the log's evening resumed. Raises OSError if a new log cannot be begun."""
    if log.contents is None:
        opened = EveningOpened(n=1, at=clock.now(), rehearsal=rehearsal, sheet=sheet)
        log.begin(opened)
        return Evening(sheet, clock, log, [opened])
    opened = log.contents.opened
    past = [opened, *log.contents.events]
    evening = Evening(opened.sheet, clock, log, past)
    evening._note_jump(None)
    evening._keep([BoardReopened(n=evening.state.last_n + 1, at=evening.now())])
    return evening


def unlogged_evening(sheet: RunSheet, clock: Clock, *, rehearsal: bool = True) -> Evening:
    """A new evening that is kept in memory only."""
    return Evening(sheet, clock, Memory(), [EveningOpened(n=1, at=clock.now(), rehearsal=rehearsal, sheet=sheet)])
