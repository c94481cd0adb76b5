"""One evening in progress: the session behind the live board, rehearsal, plain output and tests.

Every answer goes the same way: decide what happens, keep it in the log, then fold it in. What is not kept has not
happened. Knows no screen; the time comes from the clock it was given.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from board.clock import Clock
from board.log.write import Keeper, Memory, RunLog
from board.run.calls import Call, calls
from board.run.decide import Push, Refusal, Wish, decide, push_from_now, raise_calls
from board.run.events import BoardReopened, EveningOpened, Event
from board.run.fold import fold_all
from board.run.forecast import Forecast, Forecaster
from board.run.state import State, begin
from board.timetable.run_sheet import RunSheet


@dataclass(frozen=True)
class Present:
    """All there is to know at one moment."""

    now: datetime
    state: State
    forecast: Forecast
    due: tuple[Call, ...]
    coming: tuple[Call, ...]
    raised: tuple[Call, ...] = ()  # calls raised at this very tick


class Evening:
    """Holds the log, the state and the clock of one evening."""

    def __init__(self, sheet: RunSheet, clock: Clock, keeper: Keeper, past: Sequence[Event] = ()) -> None:
        self.clock = clock
        self.keeper = keeper
        self.state = fold_all(begin(sheet), past)
        self.forecaster = Forecaster(self.state.sheet)

    @property
    def sheet(self) -> RunSheet:
        """The one the evening goes by now."""
        return self.state.sheet

    def tick(self) -> Present:
        """The present; calls that have come due are raised and kept. Raises OSError when they cannot be kept."""
        now = self.clock.now()
        forecast = self.forecaster.forecast(self.state, now)
        due, coming = calls(forecast, self.state)
        fresh = {call.key for call in due if call.raised is None}
        while new := raise_calls(self.state, due, now):
            self._keep(new)
            forecast = self.forecaster.forecast(self.state, now)
            due, coming = calls(forecast, self.state)
            fresh |= {call.key for call in due if call.raised is None}
        raised = tuple(call for call in due if call.key in fresh)
        return Present(now, self.state, forecast, tuple(due), tuple(coming), raised)

    def look(self) -> Forecast:
        """How the rest looks now; raises no calls and keeps nothing."""
        return self.forecaster.forecast(self.state, self.clock.now())

    def wish(self, wish: Wish) -> Refusal | None:
        """Does what the host wants, or says why not. Raises OSError when it cannot be kept; then nothing changed."""
        decided = decide(self.state, wish, self.clock.now())
        if isinstance(decided, Refusal):
            return decided
        self._keep(decided)
        return None

    def what_if(self, wish: Wish) -> Forecast | Refusal:
        """What a wish would bring, without doing it."""
        now = self.clock.now()
        decided = decide(self.state, wish, now)
        if isinstance(decided, Refusal):
            return decided
        then = fold_all(self.state, decided)
        forecaster = self.forecaster if then.sheet is self.state.sheet else Forecaster(then.sheet)
        return forecaster.forecast(then, now)

    def push(self, course: str, minutes: int) -> Push:
        """The wish to send a course out so many minutes later than it now looks."""
        return push_from_now(self.state, self.look(), course, minutes)

    def _keep(self, events: Sequence[Event]) -> None:
        self.keeper.append(events)
        self.state = fold_all(self.state, events)
        if self.forecaster.sheet is not self.state.sheet:
            self.forecaster = Forecaster(self.state.sheet)

    def close(self) -> None:
        self.keeper.close()


def open_evening(sheet: RunSheet, clock: Clock, log: RunLog, *, rehearsal: bool) -> Evening:
    """A new evening in an empty log, or the one the log holds, gone on with. Raises OSError."""
    if log.contents is None:
        opened = EveningOpened(n=1, at=clock.now(), rehearsal=rehearsal, sheet=sheet)
        log.begin(opened)
        return Evening(sheet, clock, log, [opened])
    opened = log.contents.opened
    past = [opened, *log.contents.events]
    evening = Evening(opened.sheet, clock, log, past)
    evening._keep([BoardReopened(n=evening.state.last_n + 1, at=clock.now())])
    return evening


def unlogged_evening(sheet: RunSheet, clock: Clock, *, rehearsal: bool = True) -> Evening:
    """An evening that is kept nowhere."""
    return Evening(sheet, clock, Memory(), [EveningOpened(n=1, at=clock.now(), rehearsal=rehearsal, sheet=sheet)])
