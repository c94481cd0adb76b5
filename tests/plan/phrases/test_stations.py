"""Places, ovens, temperatures, and how results keep."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter

from board.facts.degrees import to_celsius
from board.plan.phrases.stations import (
    Heat,
    HeatRate,
    Keep,
    Keeps,
    Station,
    Where,
    parse_celsius,
    parse_cools,
    parse_heat,
    parse_heats,
    parse_keep,
    parse_station,
)

ON: TypeAdapter[Station] = TypeAdapter(Where)
KEEPS: TypeAdapter[Keep] = TypeAdapter(Keeps)


@pytest.mark.parametrize(
    ("fahrenheit", "celsius"), [(32, 0), (212, 100), (-40, -40), (140, 60), (41, 5), (165, 73 + 8 / 9)]
)
def test_fahrenheit_becomes_celsius_by_its_definition(fahrenheit: float, celsius: float) -> None:
    """t(°C) = (t(°F) − 32) / 1.8: NIST SP 811, appendix B.8; from memory."""
    assert to_celsius(fahrenheit, "F") == pytest.approx(celsius, abs=1e-12)


@pytest.mark.parametrize(("fahrenheit", "celsius"), [(225, 107), (400, 204), (350, 177), (450, 232)])
def test_oven_settings_in_fahrenheit_round_to_whole_celsius(fahrenheit: int, celsius: int) -> None:
    """The same definition, rounded."""
    assert round(parse_celsius(f"{fahrenheit} F")) == celsius


@given(st.floats(-100, 600))
def test_celsius_stays_as_it_is_and_comes_back_from_fahrenheit(celsius: float) -> None:
    assert to_celsius(celsius, "C") == celsius
    assert to_celsius(celsius * 9 / 5 + 32, "F") == pytest.approx(celsius)


@pytest.mark.parametrize(
    ("text", "celsius"),
    [("74 C", 74), ("74C", 74), ("74°C", 74), ("74 ° c", 74), ("-18 C", -18), ("165.2 f", 74), ("0 C", 0)],
)
def test_a_temperature_may_be_written_in_many_ways(text: str, celsius: float) -> None:
    assert parse_celsius(text) == pytest.approx(celsius)


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("74", "write 74 C or 74 F"),
        ("74°", "has no unit"),
        ("", "is not a temperature"),
        ("warm", "is not a temperature"),
        ("74 K", "is not a temperature"),
        ("601 C", "check the figure"),
        ("-101 C", "check the figure"),
        ("9" * 400 + " F", "check the figure"),
    ],
)
def test_what_is_no_temperature_of_a_kitchen_is_refused(text: str, says: str) -> None:
    with pytest.raises(ValueError, match=says):
        parse_celsius(text)


@pytest.mark.parametrize(
    ("text", "want", "low", "high"),
    [
        ("200 C (190 to 210 C)", 200, 190, 210),
        ("200 C (190–210 C)", 200, 190, 210),
        ("200 C (190 C - 210 C)", 200, 190, 210),
        ("190 to 210 C", 200, 190, 210),
        ("392 F (374 to 410 F)", 200, 190, 210),
        ("200 C (374 F to 210 C)", 200, 190, 210),
        ("-20 to -16 C", -18, -20, -16),
    ],
)
def test_a_setting_stands_with_the_range_the_dish_accepts(text: str, want: float, low: float, high: float) -> None:
    heat = Heat.model_validate(parse_heat(text))

    assert (heat.want, heat.low, heat.high) == pytest.approx((want, low, high))


@pytest.mark.parametrize("text", ["200 C", "392 F"])
def test_a_setting_alone_is_the_setting_used(text: str) -> None:
    heat = Heat.model_validate(parse_heat(text))

    assert (heat.low, heat.want, heat.high) == pytest.approx((200, 200, 200))


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("210 to 190 C", "runs backwards"),
        ("200 C (210 to 190 C)", "runs backwards"),
        ("200 C (210 to 220 C)", "outside its own range"),
        ("190 to 210", "has no unit"),
        ("200 C (about)", "not a range of heat"),
        ("200 C ()", "not a range of heat"),
    ],
)
def test_a_range_of_heat_that_cannot_be_is_refused(text: str, says: str) -> None:
    with pytest.raises(ValueError, match=says):
        Heat.model_validate(parse_heat(text))


@pytest.mark.parametrize(
    ("text", "station"),
    [
        ("worktop", Station(place="worktop")),
        ("the worktop, stick blender", Station(place="worktop", tools={"stick blender": 1})),
        ("stovetop, 1 ring, big pot", Station(place="stovetop", rings=1, tools={"big pot": 1})),
        ("Stovetop, 2 rings, 2 small pot", Station(place="stovetop", rings=2, tools={"small pot": 2})),
        ("fridge, 4 litres", Station(place="fridge", litres=4)),
        ("fridge, 0,5 l", Station(place="fridge", litres=0.5)),
        ("freezer, 1.5 liters, tray", Station(place="freezer", litres=1.5, tools={"tray": 1})),
        ("front-of-house", Station(place="front-of-house")),
        (
            "oven at 200 C (190 to 210 C), 1 shelf, roasting tin",
            Station(place="oven", shelves=1, heat=Heat(want=200, low=190, high=210), tools={"roasting tin": 1}),
        ),
        ("oven, 190 to 210 c, a shelf", Station(place="oven", shelves=1, heat=Heat(want=200, low=190, high=210))),
        (
            "small oven at 190 to 210 C",
            Station(place="oven", oven="small oven", heat=Heat(want=200, low=190, high=210)),
        ),
    ],
)
def test_a_place_is_read_with_all_that_is_taken_there(text: str, station: Station) -> None:
    assert ON.validate_python(text) == station


def test_the_freezer_is_shown_with_the_fridge_and_a_room_is_no_lane() -> None:
    assert Station(place="freezer").lane == "fridge"
    assert Station(place="oven").lane == "oven"
    assert Station(place="room").lane is None


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("", "the place is missing"),
        (", 1 ring", "the place is missing"),
        ("stovetop, ", "comma with nothing after it"),
        ("oven, 200", "200 C, 1 shelf"),
        ("oven at 200", "has no unit"),
        ("stovetop, 0 rings", "greater than or equal"),
        ("fridge, 99999 litres", "less than or equal"),
    ],
)
def test_a_place_that_cannot_be_told_is_refused(text: str, says: str) -> None:
    with pytest.raises(ValueError, match=says):
        ON.validate_python(text)


@pytest.mark.parametrize(
    ("text", "minutes", "place"),
    [
        ("2 h", 120, "room"),
        ("2 h in the room", 120, "room"),
        ("3 days in the fridge, 4 litres", 4320, "fridge"),
        ("3 days, fridge", 4320, "fridge"),
        ("1 week in the freezer", 10080, "freezer"),
        ("30 min hot", 30, "hot"),
        ("30 min on the stovetop, 1 ring, big pot", 30, "stovetop"),
        ("40 min in the oven at 90 C (80 to 100 C), 1 shelf", 40, "oven"),
    ],
)
def test_a_result_keeps_so_long_in_a_place(text: str, minutes: int, place: str) -> None:
    keep = KEEPS.validate_python(text)

    assert (keep.minutes, keep.where.place) == (minutes, place)


def test_a_result_keeps_in_an_oven_by_its_name() -> None:
    where = KEEPS.validate_python("40 min in the small oven at 90 C").where

    assert (where.place, where.oven) == ("oven", "small oven")


def test_the_long_form_of_keeps_takes_phrases_inside() -> None:
    keep = KEEPS.validate_python({"minutes": "3 days", "where": "fridge, 4 litres"})

    assert keep == Keep(minutes=4320, where=Station(place="fridge", litres=4))


@pytest.mark.parametrize("text", ["", "for ages", "long in the fridge", "3 in the fridge", "2 h on the worktop"])
def test_how_a_result_keeps_is_asked_for_with_examples(text: str) -> None:
    with pytest.raises(ValueError, match="3 days in the fridge, 2 h in the room, 30 min hot"):
        parse_keep(text)


def test_how_fast_an_oven_changes_is_read_in_either_unit() -> None:
    assert HeatRate.model_validate(parse_heats("15 min to 180 C")) == HeatRate(minutes=15, start=20, end=180)
    assert HeatRate.model_validate(parse_cools("25 min from 392 to 248 F")) == HeatRate(minutes=25, start=200, end=120)


@given(st.text() | st.text("0123456789 °CFto–-(),.shelfringl", max_size=30) | st.text("min from to", max_size=15))
def test_whatever_is_written_is_read_or_refused_in_words(text: str) -> None:
    for read in (parse_celsius, parse_heat, parse_station, parse_keep, parse_heats, parse_cools):
        try:
            assert read(text) is not None
        except ValueError as refused:
            assert str(refused)  # noqa: PT017  # both endings are right
