"""The host's answers that still count, and which of them are undone together. Pure."""

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

# Events the same key press logs right before the one named first.
TOGETHER: dict[type[Event], tuple[type[Event], ...]] = {
    StepFinished: (ReadingTaken, ReadingSkipped, StepStarted),
    ReadingSkipped: (StepStarted,),
    LookedIn: (ReadingTaken,),
    CallPutOff: (ReadingTaken,),
}


def answers_of(state: State) -> list[Event]:
    """The host's answers that were not taken back, oldest first."""
    return [event for event in state.history if is_answer(event)]


def last_put_off(state: State, at: datetime) -> CallKey | None:
    """The call the last answer put off, while it is not due again at `at`; else None."""
    last = next(reversed(answers_of(state)), None)
    if not isinstance(last, CallPutOff):
        return None
    until = state.steps[last.slot].put_off.get(last.part) if last.slot in state.steps else None
    return (last.slot, last.part, last.number) if until is not None and until > at else None


def last_go(state: State) -> list[int]:
    """Event numbers to take back with the last answer, in order; empty if there is no answer."""
    answers = answers_of(state)
    if not answers:
        return []
    last = answers[-1]
    numbers = _done_with_one_key(answers)
    if isinstance(last, StepStarted):  # Undoing a start also undoes the end the board logged by itself
        numbers += [e.n for e in state.history if isinstance(e, StepFinished) and e.slot == last.slot and e.n > last.n]
    return sorted(numbers)


def _done_with_one_key(answers: list[Event]) -> list[int]:
    """Numbers of the last answer and of the events logged with it."""
    last = answers[-1]
    targets = [last.n]
    for before in reversed(answers[:-1]):
        is_pair = isinstance(before, TOGETHER.get(type(last), ())) and before.n == last.n - 1 and before.at == last.at
        is_along = isinstance(last, StepStarted) and last.along is True and before.n == last.n - 1
        if not is_along and (not is_pair or getattr(before, "slot", None) != getattr(last, "slot", None)):
            break
        targets.append(before.n)
        last = before
    return targets
