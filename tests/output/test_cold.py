"""How full the fridge and the freezer are, reckoned by hand from a plan."""

from collections.abc import Callable
from datetime import timedelta

import msgspec
import pytest

from board.app.timetables import with_all
from board.checks.sheet.assessed import of_plan
from board.output.cold import cold_form, cold_lines
from board.plan.load import PlanFile
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet.cold import cold_days
from board.sheet.run_sheet import InCold, RunSheet
from tests.conftest import HEAD, at

DINNER = (
    HEAD
    + """
kitchen: {fridge: 12 litres, freezer: 6 litres}
drinks: {ice: 0.5 kg a guest}
shopping:
  on the day: 10:00 - 11:00
courses:
  - course: Peas
    at: 19:30
    drink: dry cider, 5 bottles, chilled 2 h, opened 10 min before
    dishes:
      - dish: Pea soup
        ingredients: [500 g frozen peas, 2 frozen herb cubes]
        steps:
          - step: boil the peas
            takes: 20 min
            where: stovetop
            keeps: 3 h in the fridge, 4 litres
          - step: season the soup
            takes: 5 min
"""
)


@pytest.fixture(scope="module")
def dinner(plan_from: Callable[[str], PlanFile]) -> RunSheet:
    file = plan_from(DINNER)
    return with_all(of_plan(file), make_sheet(file, solve)).the_sheet


def test_bottles_keep_their_litres_until_they_are_opened(dinner: RunSheet) -> None:
    """Five bottles at 1.2 litres: six, from when they are put in until the first is opened, not only for two hours."""
    slots = dinner.by_id()
    chill = next(s for s in dinner.slots if s.name.startswith("chill"))
    open_ = next(s for s in dinner.slots if s.name.startswith("open"))

    stays = [each for each in dinner.cold if each.what == chill.id]

    assert {each.litres for each in stays} == {6.0}
    assert min(each.start for each in stays) == chill.start
    assert max(each.end for each in stays) == open_.start
    assert all(slots[each.what].lane == "fridge" for each in stays)


def test_ice_and_frozen_food_lie_in_the_freezer_from_the_shopping_on(dinner: RunSheet) -> None:
    """Eight guests at half a kilo of ice, 8 litres until they come; half a kilo of peas, one litre until they are
    boiled. The trip ends at 11:00 in Dublin, which is UTC in November. Two cubes have no weight."""
    boil = next(s for s in dinner.slots if "boil" in s.name)

    assert {each.what: (each.litres, each.start, each.end) for each in dinner.cold if each.bought} == {
        "ice": (8.0, at("11:00"), at("18:30")),
        "frozen peas": (1.0, at("11:00"), boil.start),
        "frozen herb cubes": (None, at("11:00"), boil.start),
    }


def test_the_sheet_says_when_each_is_fullest_and_what_is_too_much(dinner: RunSheet) -> None:
    lines = list(cold_lines(dinner))

    assert "⊗ freezer: fullest Sat 11:00, 9 of 6 l, 3 l too many" in lines
    assert any(line.startswith("fridge: fullest Sat ") and line.endswith(" of 12 l") for line in lines)
    assert "freezer: not counted, for the plan gives no litres: frozen herb cubes" in lines
    assert lines[-1].startswith("Ice and bought frozen food: 2 litres a kilo")


def in_cold(*stays: tuple[str, str, float | None]) -> RunSheet:
    cold = tuple(InCold("fridge", str(n), at(start), at(end), litres) for n, (start, end, litres) in enumerate(stays))
    return RunSheet(
        "Cold", "UTC", "0", "2026-11-28", at("18:30"), (), (), cold_stays=cold, cold_litres={"fridge": 40.0}
    )


def test_the_fullest_moment_may_fall_within_an_hour_and_what_leaves_makes_room_at_once() -> None:
    """10 l from 9:00 to 14:20; 20 l 10:30 to 14:20; 8 l 14:10 to 15:00; 5 l from 14:20 on: 38 at 14:10, 13 at 14:20."""
    (day,) = cold_days(
        in_cold(("9:00", "14:20", 10), ("10:30", "14:20", 20), ("14:10", "15:00", 8), ("14:20", "16:00", 5))
    )

    assert (day.at, day.litres, day.room, day.over) == (at("14:10"), 38, 40, 0)
    assert [(when.hour, litres) for when, litres in day.hours] == [(9, 10), (10, 30), (14, 38), (15, 5), (16, 0)]


def test_what_stays_overnight_fills_both_days_in_the_plans_zone() -> None:
    """17:00 to 23:00 in UTC is 22:30 to 4:30 in Kolkata."""
    late = msgspec.structs.replace(in_cold(("17:00", "23:00", 4)), zone="Asia/Kolkata")

    assert [(day.at.strftime("%a %H:%M"), day.litres) for day in cold_days(late)] == [
        ("Sat 22:30", 4),
        ("Sun 00:00", 4),
    ]


def test_for_other_programs_there_is_every_stay(dinner: RunSheet) -> None:
    form = cold_form(dinner)

    assert len(form["things"]) == len(dinner.cold)
    assert {day["place"] for day in form["days"]} == {"fridge", "freezer"}
    assert all(set(day) == {"place", "fullest", "litres", "room", "hours"} for day in form["days"])


def test_a_day_ends_at_midnight(dinner: RunSheet) -> None:
    for day in cold_days(dinner):
        assert all(timedelta(0) <= when - day.hours[0][0] < timedelta(days=1) for when, _ in day.hours)
