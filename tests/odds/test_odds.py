"""The odds by hand and by property: chance, times, blame, help; one rule for the board and for many evenings."""

import json
from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta

import msgspec
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from board.evening.forecast import Forecaster
from board.evening.state import begin
from board.odds import many
from board.odds.draw import Minutes, three_point
from board.odds.many import odds, on_time
from board.odds.result import TIMETABLE, Odds
from board.odds.simulate import Evenings
from board.output.odds import odds_form
from board.sheet.run_sheet import Attended, CourseSlot, Dependency, Lasts, RunSheet, Slot
from tests.examples import times
from tests.odds.little import Piece, at, fixed, sheet_of

CHAIN = {
    "boil": Piece(0, Lasts(10, 20, 40)),
    "mash": Piece(20, Lasts(5, 10, 20), after=["boil"]),
    "serve": Piece(32, fixed(3), after=["mash"]),
}


class Listed:
    """Draws what a test lists, an evening a place, in the order in which the sheet is drawn."""

    def __init__(self, *drawn: list[float]) -> None:
        self.left: Iterator[list[float]] = iter(drawn)

    def __call__(self, lasts: Lasts, rng: np.random.Generator, evenings: int) -> Minutes:
        return np.array(next(self.left), dtype=np.float64)


def test_a_chain_of_two_reckoned_by_hand() -> None:
    """Served 18:35 as planned, give 2. Four evenings of (boil, mash):

    (20, 10): mash 20–30, serve at 32 as planned, out at 35: 0 late.
    (25, 10): mash 25–35, serve 35–38: 3 late.
    (26, 12): mash 26–38, serve 38–41: 6 late; boil ran 6 over, mash 2: the boil.
    (24, 18): mash 24–42, serve 42–45: 10 late; boil ran 4 over, mash 8: the mash.
    """
    found = odds(sheet_of(CHAIN, wanted=35), 4, draw=Listed([20, 25, 26, 24], [10, 10, 12, 18]))

    course = found.courses[0]
    assert course.within == 0.5
    assert course.mean_late == (0 + 3 + 6 + 10) / 4
    assert course.by == {0.5: at(38), 0.8: at(45), 0.95: at(45)}
    assert course.spread == {0: 1, 3: 1, 6: 1, 10: 1}
    assert {(b.cause.id, b.share) for b in found.blame} == {("boil", 0.25), ("mash", 0.25)}
    # A minute sooner for either: 0, 2, 5 and 9 late, so one evening more is within 5 min, and 3 minutes are saved.
    for each in found.help:
        assert each.gain == {"Course": 0.25}
        assert each.saved == {"Course": 0.75}


def test_exactly_five_minutes_late_is_within_five() -> None:
    found = odds(sheet_of(CHAIN, wanted=35), 2, draw=Listed([27, 27.5], [10, 10]))

    assert found.courses[0].within == 0.5
    assert found.courses[0].spread == {5: 1, 6: 1}


def test_blame_goes_no_further_back_than_what_began_on_time() -> None:
    """The boil runs 10 over into a wait of 15; the mash begins when planned, so its own 8 over made the course late."""
    loose = {**CHAIN, "mash": Piece(35, Lasts(5, 10, 20), after=["boil"]), "serve": Piece(45, fixed(3), after=["mash"])}

    found = odds(sheet_of(loose, wanted=48), 1, draw=Listed([30], [18]))

    assert [(b.cause.id, b.share) for b in found.blame] == [("mash", 1.0)]


def test_a_wait_on_a_start_does_not_blame_how_long_that_lasts() -> None:
    """The fry waits for a pot until 2 min after the boil's start; that the boil runs long holds nothing up."""
    pieces = {
        "chop": Piece(0, Lasts(5, 10, 40)),
        "boil": Piece(10, Lasts(10, 20, 90), after=["chop"]),
        "fry": Piece(12, Lasts(5, 10, 20)),
        "serve": Piece(22, fixed(3), after=["fry"]),
    }
    sheet = sheet_of(pieces, wanted=25, waits={"fry": [Dependency("boil", "start", 2, "big pot")]})

    found = odds(sheet, 1, draw=Listed([30], [90], [12]))

    assert [b.cause.id for b in found.blame] == ["chop"]


def test_a_course_that_is_planned_late_is_the_timetables_doing() -> None:
    found = odds(sheet_of(CHAIN, wanted=20), 2, draw=Listed([20, 28], [10, 10]))

    assert found.courses[0].within == 0
    # 15 late by the plan; in the second evening 6 more, of which the boil's 8 over are less than the plan's 15.
    assert [(b.cause, b.share) for b in found.blame] == [(TIMETABLE, 1.0)]


def dinner() -> RunSheet:
    """Soup out at 18:05, eaten in 20 to 25 to 40 min, cleared 18:30 in 5 min, Main served at 18:40 in 5 min."""
    order = ("end", 0, "order")
    slots = (
        Slot("serve/soup", "serve soup", "serve", "front-of-house", at(0), at(5), lasts=fixed(5)),
        Slot("clear/soup", "clear soup", "clear", "front-of-house", at(30), at(35), lasts=fixed(5),
             waits=(Dependency("serve/soup", "end", 25, "order"),)),
        Slot("serve/main", "serve main", "serve", "front-of-house", at(40), at(45), lasts=fixed(5),
             waits=(Dependency("clear/soup", *order),)),
    )  # fmt: skip
    courses = (
        CourseSlot("Soup", at(5), at(5), "serve/soup", "clear/soup", 0, eaten=Lasts(20, 25, 40)),
        CourseSlot("Main", at(45), at(45), "serve/main", "clear/main", 0, eaten=Lasts(30, 40, 50)),
    )
    return RunSheet("Dinner", "UTC", "0" * 64, "2026-11-28", at(0), courses, slots)


def test_guests_who_sit_long_make_the_next_course_late() -> None:
    """25 min: on time. 36: cleared at 46, Main out at 51, 6 late. A minute sooner, it is 5 late. 39: 9 late."""
    found = odds(dinner(), 3, draw=Listed([25, 36, 39]))

    main = found.courses[1]
    assert found.sittings == 1  # how long the last course is eaten holds nothing up
    assert main.spread == {0: 1, 6: 1, 9: 1}
    assert [(b.course, b.cause.kind, b.cause.name) for b in found.blame] == [("Main", "sitting", "Soup")]
    assert found.help[0].gain["Main"] == pytest.approx(1 / 3)


def test_the_standing_course_before_keeps_the_table_waiting() -> None:
    """After a course eaten standing, sitting down waits for the same guests as the clearing does."""
    sheet = dinner()
    seat = Slot("seat", "to the table", "seat", "front-of-house", at(30), at(32), lasts=fixed(2),
                waits=(Dependency("serve/soup", "end", 25, "order"),))  # fmt: skip
    main = msgspec.structs.replace(sheet.slots[2], waits=(Dependency("seat", "end", 0, "order"),))
    soup = msgspec.structs.replace(sheet.courses[0], standing=True)
    sheet = msgspec.structs.replace(sheet, slots=(*sheet.slots[:2], seat, main), courses=(soup, sheet.courses[1]))

    found = odds(sheet, 1, draw=Listed([40]))

    # Soup out at 5, eaten till 45, to the table till 47, Main out at 52, wanted at 45.
    assert found.courses[1].spread == {7: 1}
    assert [(b.cause.kind, b.cause.name) for b in found.blame] == [("sitting", "Soup")]


def test_the_same_seed_gives_the_same_answer_and_another_another(lantern_sheet: RunSheet) -> None:
    first, again, other = (odds(lantern_sheet, 600, seed) for seed in (4, 4, 5))

    assert json.dumps(odds_form(first)) == json.dumps(odds_form(again))
    assert first.courses != other.courses


@pytest.mark.parametrize("evenings", [1, 500, 12_000])
def test_how_often_on_time_is_what_the_odds_say(lantern_sheet: RunSheet, evenings: int) -> None:
    found = odds(lantern_sheet, evenings, 7)

    assert on_time(lantern_sheet, evenings, 7) == {course.name: course.within for course in found.courses}


def test_more_evenings_say_the_same_within_their_error(lantern_sheet: RunSheet) -> None:
    """Within four standard errors of the two."""
    few, more = odds(lantern_sheet, 2_000, 11), odds(lantern_sheet, 10_000, 12)

    for one, other in zip(few.courses, more.courses, strict=True):
        assert abs(one.within - other.within) <= 4 * few.error / 1.96 * (1 + 5**-0.5)


def test_evenings_are_counted_once_however_they_are_batched(
    lantern_sheet: RunSheet, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(many, "AT_ONCE", 300)

    found = odds(lantern_sheet, 1_000, 2)

    assert all(sum(course.spread.values()) == 1_000 for course in found.courses)


def expect_blame_to_sum_up(found: Odds) -> None:
    for course in found.courses:
        blamed = sum(b.share for b in found.blame if b.course == course.name)
        assert blamed == pytest.approx(1 - course.within)


def test_every_late_evening_is_blamed_on_one_thing(lantern_sheet: RunSheet) -> None:
    expect_blame_to_sum_up(odds(lantern_sheet, 3_000, 3))


def test_what_the_odds_say_of_time_is_in_order(lantern_sheet: RunSheet) -> None:
    found = odds(lantern_sheet, 3_000, 3)

    for course in found.courses:
        assert course.by[0.5] <= course.by[0.8] <= course.by[0.95]
        late = sum(max(0, minute - 1) * n for minute, n in course.spread.items()) / found.evenings
        assert late <= course.mean_late <= late + 1


@settings(max_examples=times(40), deadline=None)
@given(low=st.integers(1, 20), up=st.integers(1, 20), more=st.integers(1, 20), seed=st.integers(0, 99))
def test_a_longer_worst_case_never_raises_the_chance(low: int, up: int, more: int, seed: int) -> None:
    """Drawn so that the same evening is the same quantile of low to high, whatever they are: only longer is longer."""

    def even(lasts: Lasts, rng: np.random.Generator, evenings: int) -> Minutes:
        return lasts.low + (lasts.high - lasts.low) * rng.random(evenings)

    def within(high: int) -> float:
        boil = Piece(0, Lasts(low, low, high))
        pieces = {**CHAIN, "boil": boil, "mash": Piece(low, Lasts(5, 10, 20), ["boil"]),
                  "serve": Piece(low + 10, fixed(3), ["mash"])}  # fmt: skip
        return odds(sheet_of(pieces, wanted=low + 13), 300, seed, even).courses[0].within

    assert within(low + up + more) <= within(low + up)


def test_a_plan_without_spreads_is_its_timetable(lantern_sheet: RunSheet) -> None:
    still = msgspec.structs.replace(
        lantern_sheet,
        slots=tuple(msgspec.structs.replace(s, lasts=fixed(s.lasts.likely) if s.lasts else None)
                    for s in lantern_sheet.slots),
        courses=tuple(msgspec.structs.replace(c, eaten=None) for c in lantern_sheet.courses),
    )  # fmt: skip

    found = odds(still, 100)

    assert found.never_varies
    assert [course.by[0.95] for course in found.courses] == [course.served for course in still.courses]
    assert found.blame == found.help == ()


def night(sheet: RunSheet, lengths: dict[str, int]) -> RunSheet:
    """The sheet with other lengths: what the forecast would hold if it knew how long things will last."""

    def other(slot: Slot) -> Slot:
        if slot.id not in lengths:
            return slot
        end = slot.start + timedelta(minutes=lengths[slot.id])
        parts = tuple(Attended(p.start, end if p.kind == "all" else p.end, p.who, p.kind) for p in slot.attended)
        return msgspec.structs.replace(slot, end=end, attended=parts)

    return msgspec.structs.replace(sheet, slots=tuple(other(slot) for slot in sheet.slots))


def stays_where_it_is(sheet: RunSheet) -> RunSheet:
    """The sheet with nothing on it that the board would move later to shorten how long it stands."""

    def other(slot: Slot) -> Slot:
        kind = "job" if slot.kind == "heat" else slot.kind
        return msgspec.structs.replace(slot, kind=kind, keeping=None, best_within=None)

    return msgspec.structs.replace(sheet, slots=tuple(other(slot) for slot in sheet.slots))


@settings(max_examples=times(60), deadline=None)
@given(data=st.data())
def test_the_forecast_and_the_odds_play_an_evening_alike(lantern_sheet: RunSheet, data: st.DataObject) -> None:
    """The live forecast, told beforehand how long things will last, has every course out at the very same time; where
    it moves work later for what keeps badly, never later than that."""
    sittings = msgspec.structs.replace(
        lantern_sheet, courses=tuple(msgspec.structs.replace(c, eaten=None) for c in lantern_sheet.courses)
    )
    evenings = Evenings(sittings, three_point)
    lengths = {each.cause.id: data.draw(st.integers(each.lasts.low, each.lasts.high + 60)) for each in evenings.varying}
    drawn = {each.cause: np.array([float(lengths[each.cause.id])]) for each in evenings.varying}
    sheet = night(sittings, lengths)

    late = evenings.late(evenings.play(drawn), 1)

    def forecast(of: RunSheet) -> dict[str, float]:
        found = Forecaster(of).forecast(begin(of), of.slots[0].start - timedelta(hours=1))
        return {c.name: (c.served - c.wanted) / timedelta(minutes=1) for c in found.courses}

    assert forecast(stays_where_it_is(sheet)) == {name: minutes[0] for name, minutes in late.items()}
    assert all(minutes <= late[name][0] for name, minutes in forecast(sheet).items())


@settings(max_examples=times(40), deadline=None)
@given(number=st.integers(0, 99), seed=st.integers(0, 1000))
def test_played_again_is_played_from_the_start(lantern_sheet: RunSheet, number: int, seed: int) -> None:
    """The short way to what a minute brings, against the long one."""
    evenings = Evenings(lantern_sheet, lambda lasts, rng, n: rng.uniform(lasts.low, lasts.high + 40, n))
    drawn = evenings.draw(np.random.default_rng(seed), 50)
    each = evenings.varying[number % len(evenings.varying)]

    short = evenings.play_sooner(drawn, evenings.play(drawn), each)
    long = evenings.play({**drawn, each.cause: drawn[each.cause] - 1})

    for slot in lantern_sheet.slots:
        assert np.array_equal(np.broadcast_to(short.end[slot.id], 50), np.broadcast_to(long.end[slot.id], 50))


def test_the_error_of_ten_thousand_evenings_is_a_point(lantern_sheet: RunSheet) -> None:
    """1.96 · √(p(1 − p)/n) at p = ½: the normal approximation of a binomial share, any statistics textbook."""
    error = replace(odds(lantern_sheet, 100), evenings=10_000).error

    assert error == pytest.approx(0.0098)
