"""What the host wants → what happens, or why it cannot. Pure: (state, wish, at) → events or a refusal."""

from datetime import datetime, timedelta
from typing import assert_never
from zoneinfo import ZoneInfo

import msgspec

from board.base import words as shared
from board.evening import words
from board.evening.answers import last_go
from board.evening.behind import wrong_with
from board.evening.events import (
    CallPutOff,
    CoursePushed,
    EveningClosed,
    Event,
    LeftoversPutAway,
    LookedIn,
    NoteWritten,
    Part,
    ReadingSkipped,
    ReadingTaken,
    Said,
    SheetTaken,
    StepFinished,
    StepLeftOut,
    StepsSaid,
    StepStarted,
    TakenBack,
)
from board.evening.fold import fold_all
from board.evening.gone_cold import gone_cold
from board.evening.hands import called
from board.evening.leftovers import job_of, left_since, put_away_at
from board.evening.readings import asked_again, hold_left, lacks, last_reading, takes_readings, wants_reading
from board.evening.slip_wishes import decide_slip
from board.evening.slipped import guests_expected
from board.evening.state import State
from board.evening.wishes import (
    Close,
    DelayGuests,
    Done,
    DropDish,
    EndUnread,
    HelperDone,
    Later,
    LeaveOut,
    Lengthen,
    Push,
    PutAway,
    Refusal,
    Say,
    Settle,
    TakeBack,
    TakeReading,
    TakeSheet,
    Wish,
    WriteNote,
)
from board.sheet.run_sheet import RunSheet, Slot

LONGEST_NOTE = 2000


GUESTS_COME_EARLY = timedelta(hours=6)  # earlier than that, the key was a mistake; ours


def decide(state: State, wish: Wish, at: datetime) -> list[Event] | Refusal:
    """The events of a wish, numbered on from the state's last, or a refusal. `at`: aware, UTC."""
    n = state.last_n + 1
    match wish:
        case Done(slot=slot, part=part, number=number, then=then):
            done = _done(state, slot, part, number, at)
            return done if then is None or isinstance(done, Refusal) else [*done, *_begun_along(state, done, then, at)]
        case HelperDone():
            return _helper_done(state, wish, at)
        case Settle(slot=slot):
            return _end_unread(state, slot, at)
        case Later(slot=slot, part=part, number=number, minutes=minutes):
            if _settled(state, slot) and part != "reheat":
                return Refusal(words.already_settled(_name(state, slot)))
            return [CallPutOff(n=n, at=at, slot=slot, part=part, number=number, minutes=max(1, minutes))]
        case LeaveOut(slot=slot) if slot in gone_cold(state):
            return _give_up(state, _slot(state, slot), at)
        case LeaveOut(slot=slot):
            if _settled(state, slot):
                return Refusal(words.already_settled(_name(state, slot)))
            if _slot(state, slot).kind == "arrive":
                return Refusal(words.cannot_leave_out(_name(state, slot)))
            return [StepLeftOut(n=n, at=at, slot=slot)]
        case Push(course=course, minutes=minutes):
            return _push(state, course, minutes, at)
        case TakeSheet(sheet=sheet):
            return _take_sheet(state, sheet, at)
        case Lengthen() | DelayGuests() | DropDish():
            slip = decide_slip(state, wish, at)
            return Refusal(slip) if isinstance(slip, str) else [slip]
        case WriteNote(text=text, slot=about):
            text = text.strip()[:LONGEST_NOTE]
            return [NoteWritten(n=n, at=at, text=text, slot=about)] if text else Refusal(words.EMPTY_NOTE)
        case TakeReading():
            return _read(state, wish, at)
        case EndUnread(slot=slot):
            return _end_unread(state, slot, at)
        case PutAway(course=course):
            return _put_away(state, course, at)
        case Say(steps=steps):
            return _say(state, steps, at)
        case TakeBack():
            targets = tuple(last_go(state))
            return [TakenBack(n=n, at=at, targets=targets)] if targets else Refusal(words.NOTHING_TO_TAKE_BACK)
        case Close():
            return [EveningClosed(n=n, at=at)]
        case _:
            assert_never(wish)


def _slot(state: State, id_: str) -> Slot:
    return next(slot for slot in state.sheet.slots if slot.id == id_)


def _name(state: State, id_: str) -> str:
    return _slot(state, id_).name


def _settled(state: State, id_: str) -> bool:
    return state.steps[id_].settled


def _give_up(state: State, slot: Slot, at: datetime) -> list[Event] | Refusal:
    """What was kept hot and is too cold is left out with its whole dish."""
    if slot.dish is None:
        return [StepLeftOut(n=state.last_n + 1, at=at, slot=slot.id)]
    return decide(state, DropDish(slot.dish, slot.course), at)


def _done(state: State, id_: str, part: Part, number: int, at: datetime) -> list[Event] | Refusal:
    slot, step, n = _slot(state, id_), state.steps[id_], state.last_n + 1
    if step.settled:
        return Refusal(words.already_settled(slot.name))
    if part == "look-in":
        return [LookedIn(n=n, at=at, slot=id_, number=number)]
    if part == "end" or step.status == "under-way":
        return _settle(state, id_, at)
    waiting = _still_waits(state, slot)
    if waiting:
        return Refusal(words.waits_for_first(slot.name, waiting))
    if slot.end == slot.start:
        return _settle(state, id_, at)
    return [StepStarted(n=n, at=at, slot=id_)]


def _begun_along(state: State, done: list[Event], then: str, at: datetime) -> list[Event]:
    """The start of what follows at once, if it can begin now."""
    begun = _done(fold_all(state, done), then, "start", 0, at)
    if isinstance(begun, Refusal):
        return []
    return [msgspec.structs.replace(event, along=True) if isinstance(event, StepStarted) else event for event in begun]


def _helper_done(state: State, wish: HelperDone, at: datetime) -> list[Event] | Refusal:
    """As at the board, but for what only the board asks: whose call it is, that it is open, what a probe shows."""
    slot = next((slot for slot in state.sheet.slots if slot.id == wish.slot), None)
    if slot is None:
        return Refusal(words.NO_SUCH_CALL)
    if wish.who not in called(state.sheet, slot, wish.part):
        return Refusal(words.not_theirs(slot.name, wish.who))
    if wish.part == "reheat":
        return Refusal(words.read_at_the_board(slot.name))
    if not _is_open(state, slot, wish.part, wish.number):
        return Refusal(words.answered_already(slot.name))
    if wish.part == "end" and (wants_reading(state, slot) or hold_left(state, slot, at)):
        return Refusal(words.read_at_the_board(slot.name))
    done = _done(state, wish.slot, wish.part, wish.number, at)
    if isinstance(done, Refusal):
        return done
    return [msgspec.structs.replace(event, by=wish.who) for event in done]


def _is_open(state: State, slot: Slot, part: Part, number: int) -> bool:
    """Whether that call is still to be answered, now or later."""
    step = state.steps[slot.id]
    if part == "start":
        return step.status == "to-come"
    looks = sum(each.kind == "look-in" for each in slot.parts)
    return step.status == "under-way" and (part == "end" or step.looked_in <= number < looks)


def _settle(state: State, id_: str, at: datetime) -> list[Event] | Refusal:
    slot, step, n = _slot(state, id_), state.steps[id_], state.last_n + 1
    if step.settled:
        return Refusal(words.already_settled(slot.name))
    if slot.kind == "arrive" and (due := guests_expected(state, id_, at)) - at > GUESTS_COME_EARLY:
        return Refusal(words.too_early_for_guests(due.astimezone(ZoneInfo(state.sheet.zone))))
    if step.status == "under-way":
        read = last_reading(state, id_)
        if read is not None and lacks(slot, read.celsius):
            return Refusal(words.core_lacks(slot.name, slot.core_celsius or 0.0, read.celsius, state.sheet.fahrenheit))
        if read is not None and (left := hold_left(state, slot, at)):
            return Refusal(words.not_held(slot.name, slot.hold_minutes, left))
        return [StepFinished(n=n, at=at, slot=id_)]
    waiting = _still_waits(state, slot)
    if waiting:
        return Refusal(words.waits_for_first(slot.name, waiting))
    return [StepStarted(n=n, at=at, slot=id_), StepFinished(n=n + 1, at=at, slot=id_)]


def _still_waits(state: State, slot: Slot) -> str | None:
    """The name of the first unsettled predecessor, or None."""
    unsettled = (w.after for w in slot.waits if w.must and not state.steps[w.after].settled)
    first = next(unsettled, None)
    return _name(state, first) if first else None


def _end_unread(state: State, id_: str, at: datetime) -> list[Event] | Refusal:
    """Ends the step; a core temperature that was wanted but never read gets an event of its own, before the end."""
    ended = _settle(state, id_, at)
    if isinstance(ended, Refusal) or _slot(state, id_).core_celsius is None or last_reading(state, id_) is not None:
        return ended
    *begun, over = ended
    skipped = ReadingSkipped(n=over.n, at=at, slot=id_)
    return [*begun, skipped, StepFinished(n=over.n + 1, at=at, slot=id_)]


def _read(state: State, wish: TakeReading, at: datetime) -> list[Event] | Refusal:
    """The reading. If the step is about to end and its core falls short, or has not been held long enough, the end call
    is put off. A call the reading also answers is answered once nothing is lacking."""
    id_, celsius, n = wish.slot, wish.celsius, state.last_n + 1
    slot, step = _slot(state, id_), state.steps[id_]
    if not takes_readings(slot):
        return Refusal(shared.no_core(slot.name))
    if step.status == "to-come":
        return Refusal(words.not_begun(slot.name))
    if step.status == "left-out":
        return Refusal(words.already_settled(slot.name))
    taken: list[Event] = [ReadingTaken(n=n, at=at, slot=id_, celsius=celsius)]
    if again := asked_again(state, slot, celsius, at):
        taken.append(CallPutOff(n=n + 1, at=at, slot=id_, part="end", minutes=again.minutes))
    elif step.status == "under-way" and wish.part == "look-in":
        taken.append(LookedIn(n=n + 1, at=at, slot=id_, number=wish.number))
    elif step.status == "under-way" and wish.part == "end" and _may_end(state, slot, celsius, at):
        taken.append(StepFinished(n=n + 1, at=at, slot=id_))
    return taken


def _may_end(state: State, slot: Slot, celsius: float, at: datetime) -> bool:
    """Whether this reading gives the step all it still lacked."""
    return not lacks(slot, celsius) and not (slot.core_celsius is not None and hold_left(state, slot, at))


def _put_away(state: State, course: str, at: datetime) -> list[Event] | Refusal:
    """Only for a cleared course whose leftovers no job puts away; where a job does, its call is answered instead."""
    clock = next((each for each in state.sheet.clocks if each.course == course), None)
    if clock is None or left_since(state, clock) is None or put_away_at(state, clock) is not None:
        return Refusal(shared.NOTHING_TO_PUT_AWAY)
    job = job_of(state, clock)
    if job is not None:
        return Refusal(words.job_puts_away(_name(state, job), course))
    return [LeftoversPutAway(n=state.last_n + 1, at=at, course=course)]


def _say(state: State, steps: tuple[Said, ...], at: datetime) -> list[Event] | Refusal:
    wrong = wrong_with(state, steps, at)
    if wrong is not None:
        slots, (id_, why, other) = state.sheet.by_id(), wrong
        name, first = (slots[each].name if each in slots else each for each in (id_, other))
        return Refusal(words.cannot_be_so(name, why, first))
    return [StepsSaid(n=state.last_n + 1, at=at, steps=steps)] if steps else Refusal(words.NOTHING_SAID)


def _push(state: State, course: str, minutes: int, at: datetime) -> list[Event] | Refusal:
    found = next((c for c in state.sheet.courses if c.name == course), None)
    if found is None or _settled(state, found.serve):
        return Refusal(shared.cannot_push(course))
    if minutes + state.pushed.get(course, 0) < 0:
        return Refusal(words.cannot_push_earlier(course))
    return [CoursePushed(n=state.last_n + 1, at=at, course=course, minutes=minutes)]


def _take_sheet(state: State, sheet: RunSheet, at: datetime) -> list[Event] | Refusal:
    """Refused unless the new sheet holds everything that has started, unchanged."""
    there = sheet.by_id()
    begun = [slot for slot in state.sheet.slots if state.steps[slot.id].status in ("under-way", "finished")]
    if any(slot.id not in there or there[slot.id].start != slot.start for slot in begun):
        return Refusal(words.SHEET_OUT_OF_DATE)
    return [SheetTaken(n=state.last_n + 1, at=at, sheet=sheet)]
