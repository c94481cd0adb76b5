"""What the board does unasked: it raises due calls and warns. Pure: (state, what is due) → events."""

from datetime import datetime

from board.evening.calls import Call
from board.evening.events import CallRaised, Event, KeepingWarned, StepFinished
from board.evening.forecast import Forecast
from board.evening.readings import is_past_best, warns_from
from board.evening.state import State


def raise_calls(state: State, due: list[Call], at: datetime) -> list[Event]:
    """Events for due calls not raised yet; a step whose end needs nobody just ends."""
    found: list[Event] = []
    for call in due:
        n = state.last_n + 1 + len(found)
        if call.silent:
            found.append(StepFinished(n=n, at=at, slot=call.slot, by_itself=True))
        elif call.raised is None:
            found.append(CallRaised(n=n, at=at, slot=call.slot, part=call.part, number=call.number))
    return found


def warn_keeping(state: State, forecast: Forecast) -> list[Event]:
    """One warning for each waiting result that will soon be past its best, before it is taken up; not for what the
    timetable lets stand so long."""
    found: list[Event] = []
    for each in forecast.keeping:
        said = state.warned.get(each.slot)
        if not is_past_best(state, each, forecast.now):
            continue
        if warns_from(each) <= forecast.now and (said is None or said < each.since):
            found.append(KeepingWarned(n=state.last_n + 1 + len(found), at=forecast.now, slot=each.slot))
    return found
