"""How long what spoils has stood out, as an evening goes: reckoned by hand, warned of once, and cheap.

Two hours in all, one where the air is above 90 °F/32 °C: USDA FSIS, "danger zone" (tests/outside holds the limits).
20 minutes' warning: common practice, no source.
"""

from datetime import timedelta
from typing import Any

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from board.base.clock import StoppedClock
from board.evening import clocks
from board.evening.events import ClockWarned, EveningOpened
from board.evening.forecast import Forecaster
from board.evening.wishes import Done, LeaveOut, TakeBack
from board.log.write import Memory
from board.session.session import Evening, unlogged_evening
from board.sheet.run_sheet import CourseSlot, Dependency, Keeping, RawLimit, RunSheet, Slot, SpoilClock
from board.view.standing import Standings
from tests.conftest import Host, at, follows, slot
from tests.evening.kitchens import play
from tests.examples import times

LIMIT = 120


def custard_supper(*, away: bool = False, air: int = LIMIT) -> RunSheet:
    """Custard: whisked on the bench 17:00-17:20 (raw eggs stand out), cooked through 17:20-17:40 on the ring (a new
    clock), kept in the room, filled on the bench 18:00-18:10, kept in the fridge, out to the table 19:00-19:10, cleared
    19:40-19:45; with `away`, put into the cold 19:45-19:55."""
    foh = "front-of-house"
    slots = [
        slot("whisk", "17:00", "17:20", exposed=True, then=("cook",), keeping=Keeping(30, "room", exposed=True), **OF),
        slot("cook", "17:20", "17:40", lane="stovetop", fresh=True, waits=follows("whisk"), then=("fill",),
             keeping=Keeping(60, "room", exposed=True), **OF),
        slot("fill", "18:00", "18:10", exposed=True, waits=follows("cook"), then=("serve",),
             keeping=Keeping(300, "fridge"), **OF),
        slot("serve", "19:00", "19:10", kind="serve", lane=foh, course="Sweet", waits=follows("fill"), then=("clear",)),
        slot("clear", "19:40", "19:45", kind="clear", lane=foh, course="Sweet",
             waits=(Dependency("serve", "end", 30, "order"),)),
    ]  # fmt: skip
    if away:
        slots.append(slot("put away", "19:45", "19:55", kind="job", waits=follows("clear")))
    course = CourseSlot("Sweet", at("19:10"), at("19:10"), "serve", "clear", may_slip=60)
    clock = SpoilClock("custard", "Sweet", air, "USDA FSIS", "serve", "clear", "put away" if away else None)
    return RunSheet("Custard supper", "UTC", "0" * 64, "2026-11-28", at("18:30"), (course,), tuple(slots),
                    hands=("host",), clocks=(clock,))  # fmt: skip


OF: dict[str, Any] = {"dish": "custard", "course": "Sweet"}
TO_THE_FILLING = (("17:00", "whisk"), ("17:20", "whisk"), ("17:20", "cook"), ("17:40", "cook"), ("18:00", "fill"))
TO_THE_TABLE = (*TO_THE_FILLING, ("18:10", "fill"), ("19:00", "serve"), ("19:10", "serve"))


def host_of(sheet: RunSheet) -> Host:
    return Host(sheet, at("16:58"))


def only(host: Host, clock: str) -> clocks.LiveClock:
    (found,) = host.at(clock).clocks
    return found


def warned(host: Host) -> list[tuple[str, str | None, str]]:
    return [(f"{e.at:%H:%M}", e.dish, e.what) for e in host.evening.told if isinstance(e, ClockWarned)]


def test_a_dishs_clock_by_hand() -> None:
    """By the sheet, with every answer on time:

    17:30  it is being cooked through: a new clock, nothing of it has stood out  0, no line at all
    17:55  cooked at 17:40, in the room since                                   15, runs; 105 left, till 19:40
    18:05  in the room 17:40-18:00, filled since 18:00                          25, runs
    18:30  in the fridge since 18:10                                            30, stands still
    19:05  going out since 19:00                                                35, runs
    19:30  on the table since 19:10 (30 + 10 + 20)                              60, runs; till 20:30
    """
    host = host_of(custard_supper())
    seen = {}
    for clock in ("17:30", "17:55", "18:05", "18:30", "19:05", "19:30"):
        play(host, *(each for each in TO_THE_TABLE if each[0] <= clock and each[0] > max(seen, default="")))
        seen[clock] = [(round(c.out_minutes), c.running) for c in host.at(clock).clocks]

    assert seen == {
        "17:30": [],
        "17:55": [(15, True)],
        "18:05": [(25, True)],
        "18:30": [(30, False)],
        "19:05": [(35, True)],
        "19:30": [(60, True)],
    }
    assert only(host, "19:30").until == at("20:30")
    assert only(host, "19:30").where == "table"


def test_a_clock_runs_from_the_very_moment_it_comes_off_the_heat() -> None:
    host = host_of(custard_supper())
    play(host, *TO_THE_FILLING[:-1])

    assert [(round(c.out_minutes), c.running) for c in host.at("17:40").clocks] == [(0, True)]


def test_what_waits_longer_than_planned_stands_out_longer() -> None:
    """Cooked at 17:40 and not filled until 18:20 instead of 18:00: 40 in the room and 5 at the filling."""
    host = host_of(custard_supper())
    play(host, *TO_THE_FILLING[:-1], ("18:20", "fill"))

    assert only(host, "18:25").out_minutes == pytest.approx(45)


def test_what_is_not_begun_has_not_stood_out_though_it_is_called() -> None:
    host = host_of(custard_supper())

    assert host.at("17:08").clocks == ()


def test_twenty_minutes_before_the_limit_it_is_said_once_and_at_the_limit_once() -> None:
    """Cooked at 17:40 and left in the room: 120 minutes are up at 19:40, so it is said at 19:20 and at 19:40."""
    host = host_of(custard_supper())
    play(host, *TO_THE_FILLING[:-1])

    for clock in ("19:19", "19:20", "19:21", "19:39", "19:40", "19:41", "20:30"):
        host.at(clock)

    assert warned(host) == [("19:20", "custard", "soon"), ("19:40", "custard", "over")]
    assert only(host, "20:30").over


def test_in_the_fridge_nothing_is_said_however_long() -> None:
    host = host_of(custard_supper())
    play(host, *TO_THE_FILLING, ("18:10", "fill"))

    host.at("22:30")

    assert only(host, "22:30").out_minutes == pytest.approx(30)
    assert warned(host) == []


def test_above_32_celsius_an_hour_is_all_there_is() -> None:
    """17:40 + 60 min, said at 18:20."""
    host = host_of(custard_supper(air=60))
    play(host, *TO_THE_FILLING[:-1])

    host.at("18:20")

    assert warned(host) == [("18:20", "custard", "soon")]
    assert only(host, "18:20").until == at("18:40")


def test_what_is_left_is_to_be_put_away_when_the_course_is_cleared_and_no_job_does() -> None:
    """30 before the table and 10 going out; on it from 19:10, cleared at 19:45 with 40 + 35 = 75; 45 are left: 20:30.

    Said when it is cleared, 20 minutes before (20:10), and at 20:30; told in the list until half an hour later.
    """
    host = host_of(custard_supper())
    play(host, *TO_THE_TABLE, ("19:40", "clear"), ("19:45", "clear"))
    host.at("19:45")
    assert warned(host) == [("19:45", None, "put-away")]
    (left,) = clocks.left_over(host.at("19:50").clocks, at("19:50"))
    assert (left.course, left.until, left.cleared, left.job) == ("Sweet", at("20:30"), True, False)

    for clock in ("20:09", "20:10", "20:29", "20:30", "20:59"):
        host.at(clock)

    assert warned(host)[1:] == [("20:10", None, "soon"), ("20:30", None, "over")]
    assert clocks.left_over(host.at("20:59").clocks, at("20:59")) != []
    assert clocks.left_over(host.at("21:00").clocks, at("21:00")) == []


def test_a_job_that_puts_it_away_ends_the_clock() -> None:
    """75 when it is cleared at 19:45, and 15 until it is in the cold at 20:00."""
    host = host_of(custard_supper(away=True))
    play(host, *TO_THE_TABLE, ("19:40", "clear"), ("19:45", "clear"))
    assert warned(host) == []
    play(host, ("19:50", "put away"), ("20:00", "put away"))

    present = host.at("20:30")

    assert warned(host) == []
    assert [(c.where, round(c.out_minutes)) for c in present.clocks] == [("away", 90)]
    assert clocks.told_of(present.clocks, present.now) == []
    assert clocks.left_over(present.clocks, present.now) == []


def test_a_job_that_is_left_out_puts_nothing_away() -> None:
    host = host_of(custard_supper(away=True))
    host.wish(LeaveOut("put away"))
    play(host, *TO_THE_TABLE, ("19:40", "clear"), ("19:45", "clear"))

    host.at("19:46")

    assert [what for *_, what in warned(host)] == ["put-away"]


def test_left_long_on_the_table_the_course_is_told_of_once() -> None:
    """40 when it is on the table at 19:10; the limit is at 20:30, nobody clears."""
    host = host_of(custard_supper())
    play(host, *TO_THE_TABLE)

    for clock in ("20:09", "20:10", "20:30", "20:40"):
        host.at(clock)

    assert warned(host) == [("20:10", None, "soon"), ("20:30", None, "over")]


def test_as_it_looks_it_will_be_out_too_long_before_it_is_eaten() -> None:
    """Limit 60. With the filling called at 18:00 and done at 18:05: 20 + 10, then fridge, 10 + 30 on the table: 70."""
    host = host_of(custard_supper(air=60))
    play(host, *TO_THE_FILLING)

    assert only(host, "18:05").too_long


@pytest.mark.parametrize(("limit", "too_long"), [(69, True), (70, False)])
def test_a_dish_may_be_eaten_until_its_very_limit(limit: int, too_long: bool) -> None:
    """30 before the table, 10 going out, 30 while it is eaten; then it is cleared and put away."""
    host = host_of(custard_supper(away=True, air=limit))
    play(host, *TO_THE_FILLING)

    assert only(host, "18:05").too_long == too_long


def test_a_board_opened_again_does_not_say_it_twice() -> None:
    host = host_of(custard_supper())
    play(host, *TO_THE_FILLING[:-1])
    host.at("19:25")
    past = list(host.evening.told)

    again = Evening(custard_supper(), StoppedClock(at("19:30")), Memory(), past)

    assert isinstance(past[0], EveningOpened)
    assert again.tick().clock_warned == ()
    assert [c.over for c in again.tick().clocks] == [False]


def test_a_dish_that_is_left_out_has_no_clock() -> None:
    host = host_of(custard_supper())
    play(host, *TO_THE_FILLING[:3])
    for id_ in ("whisk", "cook", "fill", "serve"):
        host.wish(LeaveOut(id_))

    assert host.at("23:00").clocks == ()


def test_clocks_are_reckoned_once_a_minute_and_when_something_happens(monkeypatch: pytest.MonkeyPatch) -> None:
    host = host_of(custard_supper())
    play(host, *TO_THE_FILLING[:-1])
    count = []
    reckon = clocks.live_clocks
    monkeypatch.setattr("board.session.session.live_clocks", lambda *a: count.append(1) or reckon(*a))

    for second in range(60):
        host.clock.set(at("17:45") + timedelta(seconds=second))
        host.evening.tick()
    assert len(count) == 1
    host.wish(Done("fill", "start"))
    host.evening.tick()

    assert len(count) == 2


def test_a_sheet_without_clocks_costs_nothing(host: Host, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("board.evening.clocks.exposures", None)

    assert host.at("17:10").clocks == ()


@settings(max_examples=times(60), deadline=None)
@given(st.lists(st.tuples(st.integers(0, 50), st.sampled_from(["done", "back", "wait"])), max_size=25))
def test_a_clock_never_goes_back_but_by_taking_back_and_by_cooking_through(moves: list[tuple[int, str]]) -> None:
    """And what it counts is never more than the time that passed."""
    sheet = custard_supper(away=True)
    clock = StoppedClock(at("16:58"))
    evening = unlogged_evening(sheet, clock)
    out = 0.0
    for minutes, kind in moves:
        clock.set(clock.now() + timedelta(minutes=minutes))
        present = evening.tick()
        now = sum(c.out_minutes for c in present.clocks)
        assert now >= out - 1e-6
        assert now <= (clock.now() - at("16:58")) / timedelta(minutes=1) + 1e-6
        if kind == "done" and present.due:
            evening.wish(Done(*present.due[0].key))
        elif kind == "back":
            evening.wish(TakeBack())
        fresh = evening.state.steps["cook"].status == "under-way"
        out = 0.0 if fresh or kind == "back" else now
        out = min(out, sum(c.out_minutes for c in clocks.live_clocks(evening.state, evening.look())))


def test_the_forecast_of_a_clock_does_not_need_the_evening() -> None:
    """The same from a state and a forecast alone; a sheet taken anew keeps what happened."""
    host = host_of(custard_supper())
    play(host, *TO_THE_FILLING)
    present = host.at("18:05")
    moved: tuple[Slot, ...] = tuple(msgspec.structs.replace(s) for s in host.evening.sheet.slots)
    state = msgspec.structs.replace(host.evening.sheet, slots=moved)

    again = clocks.live_clocks(present.state, Forecaster(state).forecast(present.state, present.now))

    assert again == present.clocks


# --- raw food ----------------------------------------------------------------------------------------------------
BIRD: dict[str, Any] = {"dish": "roast chicken", "course": "Main"}


def chicken_supper(*, limit: int = LIMIT) -> RunSheet:
    """Chicken: cut up on the bench 15:00-15:20, kept in the room, roasted through 16:30-17:30, kept in the room, out to
    the table 18:00-18:05, cleared 18:35."""
    room = Keeping(240, "room", exposed=True)
    slots = (
        slot("cut", "15:00", "15:20", exposed=True, then=("roast",), keeping=room, raw="whole chicken", **BIRD),
        slot("roast", "16:30", "17:30", lane="oven", fresh=True, waits=follows("cut"), then=("serve",),
             keeping=room, raw="whole chicken", cooks="poultry", **BIRD),
        slot("serve", "18:00", "18:05", kind="serve", lane="front-of-house", course="Main", waits=follows("roast"),
             then=("clear",)),
        slot("clear", "18:35", "18:40", kind="clear", lane="front-of-house", course="Main",
             waits=(Dependency("serve", "end", 30, "order"),)),
    )  # fmt: skip
    course = CourseSlot("Main", at("18:05"), at("18:05"), "serve", "clear", may_slip=60)
    clock = SpoilClock("roast chicken", "Main", LIMIT, "USDA FSIS", "serve", "clear")
    return RunSheet("Chicken supper", "UTC", "0" * 64, "2026-11-28", at("18:00"), (course,), slots, hands=("host",),
                    clocks=(clock,), raw_limit=RawLimit(limit, "USDA FSIS"))  # fmt: skip


def kitchen(limit: int = LIMIT) -> Host:
    host = Host(chicken_supper(limit=limit), at("14:58"))
    play(host, ("15:00", "cut"), ("15:20", "cut"))
    return host


def raw_and_cooked(host: Host, clock: str) -> list[tuple[str | None, int, bool]]:
    return [(each.raw, round(each.out_minutes), each.running) for each in host.at(clock).clocks]


def test_raw_food_has_a_clock_until_its_cooking_begins_and_the_cooked_food_another() -> None:
    """Out from 15:00; in the oven at 16:30 after 90 minutes, in time; done at 17:30, and out again from there."""
    host = kitchen()

    assert raw_and_cooked(host, "16:00") == [("whole chicken", 60, True)]
    assert host.at("16:00").clocks[0].until == at("17:00")
    play(host, ("16:30", "roast"))
    assert raw_and_cooked(host, "17:00") == []
    play(host, ("17:30", "roast"))
    assert raw_and_cooked(host, "17:45") == [(None, 15, True)]


def test_raw_food_out_too_long_is_said_by_itself_and_cooking_does_not_mend_it() -> None:
    """Left out: 120 minutes are up at 17:00, said at 16:40 and then. Roasted all the same 17:10-18:10 it is told of
    until it would be served, and what is then cooked has its own two warnings: 19:50 and 20:10."""
    host = kitchen()
    for clock in ("16:39", "16:40", "16:41", "17:00", "17:01"):
        host.at(clock)
    assert [(e.cooking, e.what) for e in host.evening.told if isinstance(e, ClockWarned)] == [
        ("roast", "soon"),
        ("roast", "over"),
    ]

    play(host, ("17:10", "roast"), ("18:10", "roast"))
    assert raw_and_cooked(host, "18:20") == [(None, 10, True), ("whole chicken", 130, False)]
    for clock in ("19:50", "20:10"):
        host.at(clock)

    assert [(f"{e.at:%H:%M}", e.cooking, e.what) for e in host.evening.told if isinstance(e, ClockWarned)] == [
        ("16:40", "roast", "soon"),
        ("17:00", "roast", "over"),
        ("19:50", None, "soon"),
        ("20:10", None, "over"),
    ]
    play(host, ("20:15", "serve"), ("20:20", "serve"))
    assert [raw for raw, *_ in raw_and_cooked(host, "20:21")] == [None]


def test_raw_food_that_will_stand_too_long_before_it_is_cooked_is_told_of_beforehand() -> None:
    """An hour where it is above 90 °F; called into the oven at 16:30, after 90 minutes."""
    assert kitchen(60).at("15:10").clocks[0].too_long
    assert kitchen(89).at("15:21").clocks[0].too_long
    assert not kitchen(90).at("15:21").clocks[0].too_long
    assert not kitchen().at("15:10").clocks[0].too_long


def test_raw_food_in_the_fridge_has_a_clock_that_stands_still() -> None:
    """Cut up 15:00-15:20, then in the fridge until the oven."""
    sheet = chicken_supper()
    cut, *rest = sheet.slots
    cold = msgspec.structs.replace(cut, keeping=Keeping(240, "fridge"))
    host = Host(msgspec.structs.replace(sheet, slots=(cold, *rest)), at("14:58"))
    play(host, ("15:00", "cut"), ("15:20", "cut"))

    assert raw_and_cooked(host, "16:00") == [("whole chicken", 20, False)]


def test_raw_food_on_a_sheet_of_before_has_no_clock() -> None:
    host = Host(msgspec.structs.replace(chicken_supper(), raw_limit=None), at("14:58"))
    play(host, ("15:00", "cut"), ("15:20", "cut"))

    assert raw_and_cooked(host, "16:50") == []


def test_what_the_board_says_of_raw_food() -> None:
    host = kitchen()
    say = Standings(host.evening.sheet.by_id(), lambda moment, _: f"{moment:%H:%M}")

    assert [line.text for line in say.lines(host.at("16:00"))] == [
        "roast chicken, raw whole chicken: out 60 min; cook or chill by 17:00"
    ]
    (warned,) = host.at("16:40").clock_warned
    told = say.clock_warning(warned, host.at("16:40"))
    assert told == "roast chicken, raw whole chicken: may be out 100 of 120 min; cook or chill by 17:00"
    assert [line.text for line in say.lines(host.at("17:00"))] == [
        "roast chicken, raw whole chicken: may be out 2 hours. If so, throw it out; cooking does not mend it"
    ]
