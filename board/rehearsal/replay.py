"""A night played on from any moment of an evening, by a host who answers each call at once and decides nothing more,
and what came of it. Without a log or a screen.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from board.base.clock import StoppedClock
from board.evening.calls import Call
from board.evening.decide import decide
from board.evening.events import EveningClosed, EveningOpened, Event
from board.evening.leftovers import left_out_of, spans
from board.evening.readings import lacks, last_reading
from board.evening.state import State
from board.evening.wishes import Refusal, TakeReading, Wish
from board.log.write import Memory
from board.rehearsal.draw import Night, unheard_until
from board.rehearsal.player import AsDrawn, Deed, advance
from board.review.measure import measured
from board.session.session import Evening
from board.sheet.exposure import exposures
from board.sheet.sittings import eaten_by
from board.view.present import Present

MINUTE = timedelta(minutes=1)


@dataclass(frozen=True, slots=True)
class Toll:
    """What came of a night, or the difference between two. `late`: minutes, by course, in the order of the sheet;
    `stood`: minutes results stood past what they keep; `unsafe`: minutes dishes stood out past their limit before they
    were eaten."""

    late: tuple[tuple[str, int], ...] = ()
    stood: int = 0
    unsafe: int = 0

    @property
    def minutes_late(self) -> int:
        """Of all courses."""
        return sum(minutes for _, minutes in self.late)

    @property
    def is_nothing(self) -> bool:
        return not any(minutes for _, minutes in self.late) and not self.stood and not self.unsafe

    def __add__(self, other: "Toll") -> "Toll":
        names = dict.fromkeys(name for name, _ in (*self.late, *other.late))
        mine, theirs = dict(self.late), dict(other.late)
        late = tuple((name, mine.get(name, 0) + theirs.get(name, 0)) for name in names)
        return Toll(late, self.stood + other.stood, self.unsafe + other.unsafe)

    def __neg__(self) -> "Toll":
        return Toll(tuple((name, -minutes) for name, minutes in self.late), -self.stood, -self.unsafe)

    def __sub__(self, other: "Toll") -> "Toll":
        return self + -other

    def betters(self, other: "Toll") -> bool:
        """Whether it is better than another in something and worse in nothing, courses taken together."""
        gain = other - self
        gains = (gain.minutes_late, gain.stood, gain.unsafe)
        return min(gains) >= 0 and max(gains) > 0


def total(tolls: Iterable[Toll]) -> Toll:
    """All of them added up."""
    return sum(tolls, Toll())


@dataclass(frozen=True, slots=True)
class Habits:
    """What a host goes on doing: how late they answer, by slot and part of it, and what they decide, and when."""

    late: Mapping[tuple[str, str], timedelta]
    decisions: Sequence[tuple[datetime, Wish]]


def played_on(night: Night, told: Sequence[Event], now: datetime, habits: Habits | None = None) -> Evening:
    """The evening whose first event is an `EveningOpened`, played to its end from `now`: every call answered at once
    and nothing decided, or by a host's habits. Raises Stuck."""
    opened = told[0]
    assert isinstance(opened, EveningOpened)
    clock = StoppedClock(now)
    past = [event for event in told if not isinstance(event, EveningClosed)]
    evening = _Unseen(opened.sheet, clock, Memory(), past)
    list(advance(evening, clock, _Straight(night) if habits is None else _AsBefore(night, habits)))
    return evening


def toll(evening: Evening) -> Toll:
    """What came of an evening played to its end."""
    state = evening.state
    opened = next(event for event in evening.told if isinstance(event, EveningOpened))
    late = tuple((c.name, 0 if c.is_left_out else c.late_minutes) for c in evening.look().courses)
    stood = sum(max(0, kept.stood_minutes - kept.limit_minutes) for kept in measured(state, opened).kept)
    return Toll(late, stood, _unsafe(state, evening.now()))


def _unsafe(state: State, now: datetime) -> int:
    sheet, found = state.sheet, 0
    for each in exposures(sheet, spans(state, now), left_out_of(state)):
        served = state.steps[each.clock.serve].finished
        if served is not None:
            eaten = eaten_by(sheet, each.clock.course, served)
            found += max(0, round(each.minutes(eaten)) - each.clock.limit_minutes)
    return found


class _Straight(AsDrawn):
    """A host as the night has it. A core that was read too cold is read again, and is hot enough, once it is asked
    for."""

    def done(self, present: Present, call: Call) -> Deed:
        slot = present.state.sheet.by_id()[call.slot]
        read = last_reading(present.state, call.slot)
        if call.part == "end" and read is not None and slot.core_celsius is not None and lacks(slot, read.celsius):
            return Deed(TakeReading(slot.id, slot.core_celsius, "end"))
        return super().done(present, call)


class _AsBefore(_Straight):
    """A host with habits. A decision that no longer fits is left."""

    def __init__(self, night: Night, habits: Habits) -> None:
        super().__init__(night)
        self.late = habits.late
        self.ahead = sorted(habits.decisions, key=lambda each: each[0])

    def deed(self, present: Present) -> Deed | None:
        while self.ahead and self.ahead[0][0] <= present.now:
            _, wish = self.ahead.pop(0)
            if not isinstance(decide(present.state, wish, present.now), Refusal):
                return Deed(wish)
        return super().deed(present)

    def hears(self, present: Present, call: Call) -> bool:
        return super().hears(present, call) and self._answers(present, call) <= present.now

    def next(self, present: Present) -> datetime | None:
        moments = [super().next(present), *(self._answers(present, call) for call in present.due)]
        moments += [moment for moment, _ in self.ahead[:1]]
        return min((moment for moment in moments if moment is not None and moment > present.now), default=None)

    def _answers(self, present: Present, call: Call) -> datetime:
        heard = call.raised or call.due
        if call.part == "end":
            heard = max(heard, unheard_until(self.night, present.state, call.slot) or heard)
        return heard + self.late.get((call.slot, call.part), timedelta())


class _Unseen(Evening):
    """An evening nobody looks at: clocks and warnings, which change nothing that follows, are not worked out."""

    def tick(self) -> Present:
        now = self.now()
        forecast, due, coming, _ = self._called(now)
        return Present(now, self.state, forecast, tuple(due), tuple(coming))
