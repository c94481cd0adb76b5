"""What the host did and has not taken back, and which of it goes back together. Pure."""

from datetime import datetime

from board.evening.events import (
    CallPutOff,
    Event,
    LookedIn,
    ReadingSkipped,
    ReadingTaken,
    StepFinished,
    StepStarted,
    is_answer,
)
from board.evening.state import CallKey, State

# What one key does besides the event named first, right before it.
TOGETHER: dict[type[Event], tuple[type[Event], ...]] = {
    StepFinished: (ReadingTaken, ReadingSkipped, StepStarted),
    ReadingSkipped: (StepStarted,),
    LookedIn: (ReadingTaken,),
    CallPutOff: (ReadingTaken,),
}


def answers_of(state: State) -> list[Event]:
    """What the host did and has not taken back, oldest first."""
    return [event for event in state.history if is_answer(event)]


def last_put_off(state: State, at: datetime) -> CallKey | None:
    """The call that was put off with the last answer and has not come again yet."""
    last = next(reversed(answers_of(state)), None)
    if not isinstance(last, CallPutOff):
        return None
    until = state.steps[last.slot].put_off.get(last.part) if last.slot in state.steps else None
    return (last.slot, last.part, last.number) if until is not None and until > at else None


def last_go(state: State) -> list[int]:
    """Numbers of what the last answer did, in order, all of which is taken back with it; empty without an answer."""
    answers = answers_of(state)
    if not answers:
        return []
    last = answers[-1]
    numbers = _done_with_one_key(answers)
    if isinstance(last, StepStarted):  # what ended by itself since never began
        numbers += [e.n for e in state.history if isinstance(e, StepFinished) and e.slot == last.slot and e.n > last.n]
    return sorted(numbers)


def _done_with_one_key(answers: list[Event]) -> list[int]:
    """Numbers of the last answer and of those before it that came with it."""
    last = answers[-1]
    targets = [last.n]
    for before in reversed(answers[:-1]):
        is_pair = isinstance(before, TOGETHER.get(type(last), ())) and before.n == last.n - 1 and before.at == last.at
        if not is_pair or getattr(before, "slot", None) != getattr(last, "slot", None):
            break
        targets.append(before.n)
        last = before
    return targets
