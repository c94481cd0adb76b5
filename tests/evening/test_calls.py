"""Which of several calls is due, and which of those that are is the dearest to leave, on steps side by side."""

from datetime import timedelta

import pytest

from board.evening.calls import calls
from board.evening.events import CallPutOff, CallRaised, Event, LookedIn, StepStarted
from board.evening.fold import fold_all
from board.evening.forecast import Forecast, SlotForecast
from board.evening.state import State, begin
from board.sheet.run_sheet import Attended, RunSheet, Slot
from tests.conftest import at, slot

NOW = at("18:10")


def evening(*slots: Slot, events: tuple[Event, ...] = ()) -> State:
    return fold_all(begin(RunSheet("Calls", "UTC", "0", "2026-11-28", at("19:00"), (), slots)), events)


def due(state: State, **gives: int | None) -> list[tuple[str, str]]:
    return [(call.slot, call.part) for call in calls(looked_at(state, **gives), state)[0]]


def looked_at(state: State, **gives: int | None) -> Forecast:
    """As the sheet has it, with this give."""
    slots = {s.id: SlotForecast(s.start, s.end, gives.get(s.id)) for s in state.sheet.slots}
    return Forecast(NOW, slots, (), ())


OLDER, NEWER = slot("older", "18:00", "18:30"), slot("newer", "18:05", "18:30")


@pytest.mark.parametrize(
    ("older", "newer", "first"),
    [
        (1, 0, "newer"),
        (1, 1, "older"),
        (0, -3, "older"),  # neither has anything left to lose
        (-3, 0, "older"),
        (None, 500, "newer"),
        (500, None, "older"),
    ],
)
def test_the_call_with_the_least_give_comes_first_and_of_two_alike_the_one_that_waits_longer(
    older: int | None, newer: int | None, first: str
) -> None:
    assert due(evening(NEWER, OLDER), older=older, newer=newer)[0] == (first, "start")


@pytest.mark.parametrize(("give", "first"), [(0, "newer"), (1, "sauce"), (2, "sauce")])
def test_looking_in_presses_like_a_minute_of_give(give: int, first: str) -> None:
    """Called to look in at 18:03, to begin at 18:05."""
    look = (Attended(at("18:03"), at("18:04"), "host", "look-in"), Attended(at("18:30"), at("18:31"), "host", "end"))
    sauce = slot("sauce", "17:50", "18:31", lane="stovetop", attended=look)
    state = evening(NEWER, sauce, events=(StepStarted(n=1, at=at("17:50"), slot="sauce"),))

    assert due(state, newer=give)[0][0] == first


@pytest.mark.parametrize(
    ("lane", "kind", "first"),
    [
        ("oven", "step", "hot"),
        ("stovetop", "step", "hot"),
        ("worktop", "step", "newer"),
        ("oven", "heat", "newer"),
    ],
)
def test_what_burns_comes_before_all(lane: str, kind: str, first: str) -> None:
    takes_out = (Attended(at("18:07"), at("18:09"), "host", "end"),)
    hot = slot("hot", "17:30", "18:09", lane=lane, kind=kind, attended=takes_out)
    state = evening(NEWER, hot, events=(StepStarted(n=1, at=at("17:30"), slot="hot"),))

    assert due(state, newer=0, hot=5)[0][0] == first


@pytest.mark.parametrize(("due_at", "first"), [("18:09", "arrive"), ("18:05", "hot")])
def test_what_burns_waits_for_guests_at_the_door_but_not_for_those_who_are_late(due_at: str, first: str) -> None:
    takes_out = (Attended(at("18:07"), at("18:09"), "host", "end"),)
    hot = slot("hot", "17:30", "18:09", lane="oven", attended=takes_out)
    guests = slot("arrive", due_at, due_at, kind="arrive")
    state = evening(guests, hot, events=(StepStarted(n=1, at=at("17:30"), slot="hot"),))

    assert due(state, hot=5)[0][0] == first


@pytest.mark.parametrize(("start", "is_due"), [("18:09", True), ("18:10", True), ("18:11", False)])
def test_a_call_is_due_from_its_minute_on(start: str, is_due: bool) -> None:
    assert due(evening(slot("chop", start, "18:30"))) == [("chop", "start")] * is_due


@pytest.mark.parametrize(("minutes", "overtaken"), [(5, True), (6, False), (0, False)])
def test_a_call_to_begin_is_overtaken_once_the_step_would_be_over(minutes: int, overtaken: bool) -> None:
    """Called at 18:05, five minutes ago."""
    chop = slot("chop", "18:05", f"18:{5 + minutes:02d}")
    state = evening(chop, events=(CallRaised(n=1, at=at("18:05"), slot="chop", part="start"),))
    ((call,), _) = calls(looked_at(state), state)

    assert call.overtaken == overtaken


def looked_in(*events: Event, end: str = "18:30") -> list[tuple[str, int, str]]:
    """The look-ins of a step begun at 17:50: planned after 5, 15 and 25 minutes, called so far."""
    parts = tuple(Attended(at(t), at(t) + timedelta(minutes=1), "host", "look-in") for t in ("17:55", "18:05", "18:15"))
    stir = slot("stir", "17:50", end, lane="stovetop", attended=parts)
    state = evening(stir, events=(StepStarted(n=1, at=at("17:50"), slot="stir"), *events))
    found, coming = calls(looked_at(state), state)
    return [(c.part, c.number, f"{c.due:%H:%M}") for c in (*found, *coming) if c.part == "look-in"]


@pytest.mark.parametrize(
    ("events", "asked"),
    [
        ((), [("look-in", 1, "18:05")]),  # the last that is due stands for those before
        ((LookedIn(n=2, at=at("17:55"), slot="stir", number=0),), [("look-in", 1, "18:05")]),
        ((LookedIn(n=2, at=at("18:05"), slot="stir", number=1),), [("look-in", 2, "18:15")]),
        ((LookedIn(n=2, at=at("18:05"), slot="stir", number=2),), []),
        ((CallPutOff(n=2, at=at("18:05"), slot="stir", part="look-in", minutes=4),), [("look-in", 1, "18:09")]),
        ((CallPutOff(n=2, at=at("18:05"), slot="stir", part="look-in", minutes=7),), [("look-in", 0, "18:12")]),
    ],
)
def test_the_next_look_in_that_nobody_answered_is_asked_for(
    events: tuple[Event, ...], asked: list[tuple[str, int, str]]
) -> None:
    assert looked_in(*events) == asked


@pytest.mark.parametrize(("end", "asked"), [("18:10", []), ("18:11", [("look-in", 1, "18:05")])])
def test_nobody_looks_in_on_what_is_over(end: str, asked: list[tuple[str, int, str]]) -> None:
    assert looked_in(end=end) == asked


@pytest.mark.parametrize(("end", "asked"), [("18:15", []), ("18:16", [("look-in", 2, "18:15")])])
def test_nobody_looks_in_as_it_ends(end: str, asked: list[tuple[str, int, str]]) -> None:
    assert looked_in(LookedIn(n=2, at=at("18:05"), slot="stir", number=1), end=end) == asked
