"""A dish's clock over random paths: weighed against a sum written anew, and never lowered by more minutes."""

from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from typing import Any

import msgspec
import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.checks.sheet.clocks import dish_clocks
from board.plan.load import PlanFile
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet.exposure import exposures, planned, planned_before_cooking
from board.sheet.run_sheet import CourseSlot, Keeping, RunSheet, Slot, SpoilClock
from tests.conftest import at, read, slot

BEGIN = datetime(2026, 11, 28, 9, tzinfo=UTC)
OUT = ("worktop", "front-of-house", "room")
COLD_OR_HOT = ("fridge", "freezer", "oven", "stovetop", "hot")


@dataclass(frozen=True)
class Work:
    """A step somewhere for some minutes, its result kept somewhere for at least some; `fresh`: cooked through."""

    place: str
    minutes: int
    kept: str
    gap: int
    fresh: bool = False


Paths = tuple[tuple[Work, ...], ...]  # branches that meet on the plate

minutes = st.integers(0, 300)
steps = st.builds(
    Work,
    place=st.sampled_from(("worktop", "oven", "stovetop", "fridge", "freezer")),
    minutes=minutes,
    kept=st.sampled_from(("room", *COLD_OR_HOT)),
    gap=minutes,
    fresh=st.booleans(),
)
paths = st.lists(st.lists(steps, min_size=1, max_size=4).map(tuple), min_size=1, max_size=3).map(tuple)


def longest(branches: Paths) -> int:
    return max(sum(work.minutes + work.gap for work in branch) for branch in branches)


def clock_of(branches: Paths, served: int = 5, eaten: int = 30, plate: int | None = None) -> float:
    """Minutes on the clock, as the program has it; each branch as early as it can be, and the plate so many minutes
    after the beginning, or when all are there."""
    times: dict[str, tuple[datetime, datetime]] = {}
    slots: list[Slot] = []
    plated = BEGIN + timedelta(minutes=longest(branches) if plate is None else plate)
    for b, branch in enumerate(branches):
        now = BEGIN
        for n, work in enumerate(branch):
            id_, then = f"{b}/{n}", f"{b}/{n + 1}" if n + 1 < len(branch) else "serve"
            end = now + timedelta(minutes=work.minutes)
            times[id_] = (now, end)
            kept = Keeping(9999, work.kept, exposed=work.kept in OUT)
            lane = "fridge" if work.place == "freezer" else work.place
            slots.append(
                Slot(id_, id_, "step", lane, now, end, dish="Dish", course="Main", then=(then,), keeping=kept,
                     exposed=work.place in OUT, fresh=work.fresh)
            )  # fmt: skip
            now = end + timedelta(minutes=work.gap)
    out, cleared = plated + timedelta(minutes=served), plated + timedelta(minutes=served + eaten)
    times |= {"serve": (plated, out), "clear": (cleared, cleared)}
    slots.append(Slot("serve", "serve", "serve", "front-of-house", plated, out, course="Main", then=("clear",)))
    slots.append(Slot("clear", "clear", "clear", "front-of-house", cleared, cleared, course="Main"))
    clock = SpoilClock("Dish", "Main", 120, "test", "serve", "clear")
    course = CourseSlot("Main", out, out, "serve", "clear", 10)
    sheet = RunSheet("Test", "UTC", "0" * 64, "2026-11-28", out, (course,), tuple(slots), clocks=(clock,))
    (exposure,) = exposures(sheet, times)
    return exposure.minutes()


def summed(branches: Paths, served: int = 5, eaten: int = 30) -> float:
    """The same, written anew: of each branch what is out since it was first cooked through; the longest counts."""
    most = 0
    for branch in branches:
        end = longest((branch,))
        first = next((n for n, work in enumerate(branch) if work.fresh), 0)
        total = 0
        for n, work in enumerate(branch):
            if n < first:
                continue
            waits = work.gap + (longest(branches) - end if n == len(branch) - 1 else 0)
            total += (work.minutes if work.place in OUT else 0) + (waits if work.kept in OUT else 0)
        most = max(most, total)
    return most + served + eaten


@given(paths)
def test_a_clock_is_the_sum_of_what_is_out_since_it_was_first_cooked_through(branches: Paths) -> None:
    assert clock_of(branches) == summed(branches)


@given(paths, st.data())
def test_more_minutes_anywhere_never_lower_a_clock(branches: Paths, data: st.DataObject) -> None:
    """All that follows moves along, so that no other wait grows shorter."""
    b = data.draw(st.integers(0, len(branches) - 1))
    n = data.draw(st.integers(0, len(branches[b]) - 1))
    more, key = data.draw(st.integers(1, 200)), data.draw(st.sampled_from(("minutes", "gap")))
    work = branches[b][n]
    longer = replace(work, **{key: getattr(work, key) + more})
    changed = (*branches[:b], (*branches[b][:n], longer, *branches[b][n + 1 :]), *branches[b + 1 :])

    assert clock_of(changed, plate=longest(branches) + more) >= clock_of(branches)
    assert clock_of(branches, served=5 + more) >= clock_of(branches)
    assert clock_of(branches, eaten=30 + more) >= clock_of(branches)


BRAISED = Work("stovetop", 120, "room", 90, fresh=True)  # left to stand for an hour and a half


@pytest.mark.parametrize("again", [Work("stovetop", 20, "hot", 0), Work("stovetop", 20, "hot", 0, fresh=True)])
def test_heating_again_does_not_set_a_clock_back(again: Work) -> None:
    """90 in the room since it was braised, 5 going out, 30 on the table; reheated meanwhile, or cooked a second time.

    FDA Food Code 3-501.19, from memory: what is held by time alone is not given more time by reheating it.
    """
    assert clock_of(((BRAISED, again),)) == 90 + 5 + 30


def test_of_what_meets_only_the_raw_begins_anew_when_it_is_cooked() -> None:
    """Raw eggs stood out 100 minutes, braised meat 40 since it was done; baked together, only the 40 go on."""
    eggs, meat = slot("eggs", "16:00", "17:40", exposed=True), slot("braise", "15:00", "17:00", fresh=True)
    kept, none = Keeping(60, "room", exposed=True), Keeping(0, "room")
    parts = (msgspec.structs.replace(eggs, then=("bake",), keeping=none, **OF),
             msgspec.structs.replace(meat, then=("bake",), keeping=kept, **OF))  # fmt: skip
    bake = slot("bake", "17:40", "18:20", lane="oven", fresh=True, then=("serve",), raw="eggs", **OF)
    sheet = served_at("18:20", (*parts, bake), "Dish")

    assert minutes_of(sheet) == {"Dish": 40 + 5 + 30}
    assert [(raw.cooking.id, raw.food, raw.minutes()) for raw in planned_before_cooking(sheet)] == [
        ("bake", "eggs", 100)
    ]


@given(st.lists(steps, min_size=1, max_size=6))
def test_a_clock_never_counts_fridge_freezer_oven_and_ring(path: list[Work]) -> None:
    places = {"worktop": "fridge"}
    cold = tuple(replace(w, place=places.get(w.place, w.place), kept="fridge" if w.kept == "room" else w.kept)
                 for w in path)  # fmt: skip

    assert clock_of((cold,)) == 5 + 30


OF: dict[str, Any] = {"dish": "Dish", "course": "Main"}


def served_at(clock: str, before: tuple[Slot, ...], *dishes: str) -> RunSheet:
    """Those slots, 5 minutes to the table and 30 at it, and a clock for each of the dishes."""
    serve, clear = at(clock), at(clock) + timedelta(minutes=35)
    table = (
        Slot("serve", "serve", "serve", "front-of-house", serve, serve + timedelta(minutes=5), course="Main"),
        Slot("clear", "clear", "clear", "front-of-house", clear, clear, course="Main"),
    )
    course = CourseSlot("Main", serve, serve, "serve", "clear", 10)
    clocks = tuple(SpoilClock(dish, "Main", 120, "test", "serve", "clear") for dish in dishes)
    return RunSheet("Test", "UTC", "0" * 64, "2026-11-28", serve, (course,), (*before, *table), clocks=clocks)


def minutes_of(sheet: RunSheet) -> dict[str, float]:
    return {each.clock.dish: each.minutes() for each in planned(sheet)}


TART = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [8 guests]
hands: {host: {hours: {on the day: '9:00 - 23:30'}}}
courses:
  - course: Main
    at: 20:00
    dishes:
      - dish: Custard
        ingredients: [1 l milk]
        steps:
          - {step: whisk it, takes: 30 min, keeps: 10 h in the room}
      - dish: Tart
        ingredients: [1 kg flour]
        steps:
          - {step: fill it, takes: 10 min, after: 'whisk it, at least 3 h, at most 3 h', keeps: 5 h in the room}
          - {step: cut it, takes: 5 min, after: 'fill it, at least 2 h, at most 2 h', before: 'serve Main, at once'}
"""


def test_what_comes_from_another_dish_takes_its_minutes_along() -> None:
    """Flour does not spoil; a tart of it, filled with custard that stood out, does, unless the host says otherwise."""
    for old, new, wanted in (
        ("", "", {"Tart": 30 + 180 + 10 + 120 + 5 + 5 + 25}),
        ("- dish: Tart", "- dish: Tart\n        perishable: no", {}),
        ("[1 l milk]", "[1 l sugar]", {}),
    ):
        file = read(TART.replace(old, new) if old else TART)
        assert isinstance(file, PlanFile)
        clocks = dish_clocks(make_sheet(file, solve))

        assert {each.clock.dish: each.out_minutes for each in clocks if each.clock.dish == "Tart"} == wanted


def carried(*, on_ice: bool, chicken_then: tuple[str, ...] = ("carry",)) -> RunSheet:
    """Chicken sliced 12:00-12:20 and kept in the fridge; leaves dressed 11:00-11:10 and kept in the room; both carried
    out 13:00-13:10, put down until 13:15, five minutes to the table and thirty at it. `on_ice`: the host says that
    what is carried does not spoil."""
    room, fridge = Keeping(99, "room", exposed=True), Keeping(99, "fridge")
    platters: dict[str, Any] = {"dish": "Platters", "course": "Main"}
    slots = (
        slot("dress", "11:00", "11:10", exposed=True, then=("carry",), keeping=room, dish="Leaves", course="Main"),
        slot("slice", "12:00", "12:20", exposed=True, then=chicken_then, keeping=fridge, dish="Chicken", course="Main"),
        slot("carry", "13:00", "13:10", exposed=not on_ice, then=("serve",), **platters,
             keeping=Keeping(10, "room", exposed=not on_ice)),
    )  # fmt: skip
    return served_at("13:15", slots, "Chicken", "Leaves")


def test_what_another_dish_carries_out_keeps_its_own_minutes_and_takes_none_of_the_others() -> None:
    """Chicken: 20 sliced; 10 carried and 5 put down where there is no ice; 5 + 30 at the table. Leaves: 10 dressed, 110
    in the room, the same from there. By hand."""
    assert minutes_of(carried(on_ice=False)) == {"Chicken": 20 + 10 + 5 + 35, "Leaves": 10 + 110 + 10 + 5 + 35}


def test_the_hosts_word_for_what_carries_covers_what_lies_on_it_only_while_it_lies_there() -> None:
    assert minutes_of(carried(on_ice=True)) == {"Chicken": 20 + 35, "Leaves": 10 + 110 + 35}


def test_a_dish_that_goes_to_the_table_by_itself_is_not_followed_into_another() -> None:
    """`after: slice` may only say what is done first: the chicken's own way to the table counts, in the fridge."""
    assert minutes_of(carried(on_ice=False, chicken_then=("carry", "serve")))["Chicken"] == 20 + 35


def test_a_custard_in_a_tart_has_the_tarts_minutes_from_there_on() -> None:
    file = read(TART)
    assert isinstance(file, PlanFile)

    clocks = {each.clock.dish: each.out_minutes for each in dish_clocks(make_sheet(file, solve))}

    assert clocks == dict.fromkeys(("Custard", "Tart"), 30 + 180 + 10 + 120 + 5 + 5 + 25)


def test_what_is_cooked_through_in_another_dish_begins_anew_there() -> None:
    """Raw eggs stand out 90 minutes, then they are baked in a pie: 20 in the room, 5 + 30 at the table."""
    pie: dict[str, Any] = {"dish": "Pie", "course": "Main"}
    slots = (
        slot("beat", "16:00", "17:30", exposed=True, then=("bake",), keeping=Keeping(0, "room"), **OF),
        slot("bake", "17:30", "18:00", lane="oven", fresh=True, then=("serve",),
             keeping=Keeping(60, "room", exposed=True), **pie),
    )  # fmt: skip

    assert minutes_of(served_at("18:20", slots, "Dish")) == {"Dish": 20 + 35}
