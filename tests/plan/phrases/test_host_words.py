"""Words a host types that no plan of ours had: read where they are plain, and else told with the accepted word."""

import pytest

from board.plan.load import PlanFile
from board.plan.phrases.durations import parse_minutes
from board.plan.phrases.stations import parse_keep, parse_station
from board.plan.phrases.when import parse_clock, parse_moment
from tests.conftest import HEAD, read

PLAN = f"""{HEAD}
kitchen:
  ovens: {{cooker: {{heats: 10 min to 180 C}}}}
  tools: {{wide pan: 2, fish slices: 1, oven dish: 1}}
courses:
  - course: Main
    at: 20:00
    dishes:
      - dish: Carrots
        ingredients: [1 kg carrots]
        steps:
          - {{step: boil the carrots, takes: 20 min, where: stovetop}}
"""


@pytest.mark.parametrize(
    ("typed", "place"),
    [("hob", "stovetop"), ("stove, 1 burner", "stovetop"), ("the cooker, 1 ring", "stovetop"), ("Cooktop", "stovetop"),
     ("counter", "worktop"), ("bench", "worktop"), ("refrigerator", "fridge"), ("deep freezer", "freezer")],
)  # fmt: skip
def test_a_place_under_its_other_names(typed: str, place: str) -> None:
    assert parse_station(typed)["place"] == place


@pytest.mark.parametrize("typed", ["cooker at 180 C", "cooker, 180 C", "cooker off"])
def test_with_a_setting_it_is_an_oven_of_that_name(typed: str) -> None:
    assert parse_station(typed)["oven"] == "cooker"


@pytest.mark.parametrize(
    ("typed", "minutes"),
    [("half an hour", 30), ("half hour", 30), ("an hour", 60), ("a quarter of an hour", 15), ("quarter of an hour", 15),
     ("three quarters of an hour", 45), ("an hour and a half", 90), ("one and a half hours", 90), ("1 1/2 hours", 90),
     ("two and a half hours", 150), ("2 hours and a half", 150), ("twenty minutes", 20), ("half a day", 720),
     ("overnight", 480), ("a day", 1440), ("Two Hours", 120), ("1/2 h", 30)],
)  # fmt: skip
def test_a_length_in_words(typed: str, minutes: int) -> None:
    assert parse_minutes(typed) == minutes


def test_what_keeps_overnight_keeps_in_its_place() -> None:
    kept = parse_keep("overnight in the refrigerator")

    assert kept == {"minutes": 480, "where": {"place": "fridge"}}


@pytest.mark.parametrize(
    ("typed", "clock"),
    [("19.30", "19:30"), ("7.30pm", "19:30"), ("7.30 p.m.", "19:30"), ("19h30", "19:30"), ("noon", "12:00"),
     ("12.15 am", "00:15"), ("9.05", "09:05")],
)  # fmt: skip
def test_a_time_of_day_as_it_is_said(typed: str, clock: str) -> None:
    assert parse_clock(typed) == clock


@pytest.mark.parametrize("typed", ["24.00", "7.60 pm", "13.00 pm", "7.5", "1.30.00"])
def test_what_is_no_time_of_day_is_none(typed: str) -> None:
    with pytest.raises(ValueError, match="not a time of day"):
        parse_clock(typed)


def test_figures_without_a_colon_are_told_with_it() -> None:
    with pytest.raises(ValueError, match="write for example 19:30"):
        parse_clock("1930")


def test_a_point_in_time_reads_the_same() -> None:
    assert parse_moment("day before, 17.30") == parse_moment("day before, 17:30")


@pytest.mark.parametrize(
    ("where", "tools"),
    [("2 wide pans", {"wide pan": 2}), ("wide pans", {"wide pan": 1}), ("fish slice", {"fish slices": 1}),
     ("2 wide pans, oven dishes", {"wide pan": 2, "oven dish": 1})],
)  # fmt: skip
def test_one_and_several_are_the_same_tool(where: str, tools: dict[str, int]) -> None:
    found = read(PLAN.replace("where: stovetop}", f'where: "hob, {where}"}}'))

    assert isinstance(found, PlanFile), found
    place = found.plan.courses[0].dishes[0].steps[0].where
    assert place is not None
    assert (place.place, place.tools) == ("stovetop", tools)


def test_a_comma_inside_braces_is_told_as_that() -> None:
    found = read(PLAN.replace("where: stovetop}", "where: stovetop, 1 ring}"))

    assert isinstance(found, list)
    assert "inside { } a comma ends the value" in found[0].message
    assert 'where: "stovetop, 1 ring"' in found[0].mend


def test_a_word_that_is_refused_names_the_accepted_one() -> None:
    found = read(PLAN.replace("where: stovetop}", "where: stove at 180 C}"))

    assert isinstance(found, list)
    assert "Did you mean 'stovetop'?" in found[0].message


@pytest.mark.parametrize("guest", ['"Sam, shellfish allergy"', "Sam (shellfish allergy)", '"Sam, shellfish allergies"'])
def test_an_allergy_is_read(guest: str) -> None:
    found = read(PLAN.replace("[8 guests]", f"[{guest}]"))

    assert isinstance(found, PlanFile), found
    assert found.plan.guests[0].avoids == ("shellfish",)
