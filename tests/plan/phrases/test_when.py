"""Clock times, days and zones. The facts about clock changes are those of the IANA time zone database."""

from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from board.plan.phrases.when import (
    FIRST_YEAR,
    LAST_YEAR,
    Day,
    Moment,
    Span,
    instant,
    is_odd,
    is_small_hours,
    parse_clock,
    parse_date,
    parse_day,
    parse_day_span,
    parse_moment,
    parse_span,
    parse_spans,
    parse_zone,
    stretch,
)

BERLIN = ZoneInfo("Europe/Berlin")
SATURDAY = date(2026, 11, 28)


@pytest.mark.parametrize(
    ("text", "clock"),
    [
        ("19:30", "19:30"),
        ("9:05", "09:05"),
        ("0:15", "00:15"),
        ("23:59", "23:59"),
        ("7:30 pm", "19:30"),
        ("7:30pm", "19:30"),
        ("7:30 P.M.", "19:30"),
        ("7 pm", "19:00"),
        ("7 am", "07:00"),
        ("12 am", "00:00"),
        ("12:15 am", "00:15"),
        ("12 pm", "12:00"),
        ("12:15 pm", "12:15"),
    ],
)
def test_the_clock_has_24_hours_or_twice_12(text: str, clock: str) -> None:
    """12 am is midnight, 12 pm noon: common practice, no source."""
    assert parse_clock(text) == clock


@given(st.times())
def test_every_minute_of_the_day_is_read_as_written(time: object) -> None:
    assert parse_clock(f"{time:%H:%M}") == f"{time:%H:%M}"
    assert parse_clock(f"{time:%I:%M %p}") == f"{time:%H:%M}"


@pytest.mark.parametrize(
    "text",
    [
        "",
        "19",
        "1930",
        "19.3",
        "19:3",
        "24:00",
        "25:00",
        "19:60",
        "13 pm",
        "13:00 pm",
        "0 am",
        "half past seven",
        "٧:٣٠",
    ],
)
def test_what_is_no_clock_time_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match="is not a time of day; "):
        parse_clock(text)


def test_a_date_is_year_month_day() -> None:
    """ISO 8601, calendar date; from memory."""
    assert parse_date("2026-11-28") == SATURDAY
    assert parse_date("2028-02-29") == date(2028, 2, 29)


@pytest.mark.parametrize(
    "text",
    ["", "28/11/2026", "11/28/2026", "28.11.2026", "2026-2-3", "2026-02-30", "2027-02-29", "2026-13-01", "20261128",
     "0001-01-01", "1969-12-31", "2201-01-01", "9999-12-31", "２０２６-11-28"],
)  # fmt: skip
def test_what_is_no_date_or_too_far_off_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match="; write"):
        parse_date(text)


@given(
    st.dates(date(FIRST_YEAR, 1, 1), date(LAST_YEAR, 12, 31)), st.sampled_from(["UTC", "Pacific/Apia", "Europe/Dublin"])
)
def test_every_date_that_is_taken_has_an_instant_and_a_day_after(day: date, zone: str) -> None:
    start, end = stretch(day, Span(start="23:59", end="0:00"), ZoneInfo(zone))

    assert start.tzinfo is UTC
    assert start < end


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("on the day", SATURDAY),
        ("the day", SATURDAY),
        ("day before", date(2026, 11, 27)),
        ("The day before", date(2026, 11, 27)),
        ("2 days before", date(2026, 11, 26)),
        ("30 days before", date(2026, 10, 29)),
        ("sat", SATURDAY),
        ("Saturday", SATURDAY),
        ("fri", date(2026, 11, 27)),
        ("sun", date(2026, 11, 22)),
        ("2026-11-27", date(2026, 11, 27)),
    ],
)
def test_a_day_is_told_from_the_event(text: str, day: date) -> None:
    """28 November 2026 is a Saturday (proleptic Gregorian calendar, as Python's datetime has it)."""
    assert SATURDAY.strftime("%A") == "Saturday"
    assert Day.model_validate(parse_day(text)).on(SATURDAY) == day


@given(
    st.dates(date(1971, 1, 1), date(2199, 12, 31)), st.sampled_from(["mon", "tue", "wed", "thu", "fri", "sat", "sun"])
)
def test_a_weekday_is_the_last_one_on_or_before_the_event(event: date, word: str) -> None:
    day = Day.model_validate(parse_day(word)).on(event)

    assert day.strftime("%a").lower() == word
    assert timedelta(0) <= event - day < timedelta(7)


@pytest.mark.parametrize(
    "text", ["", "someday", "satur", "monthly", "367 days before", "9" * 5000 + " days before", "-1"]
)
def test_what_is_no_day_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match=r"; (write|check)"):
        parse_day(text)


@pytest.mark.parametrize(
    ("text", "day", "clock"),
    [
        ("17:40", {"days_before": 0}, "17:40"),
        ("sat 17:40", {"weekday": "sat"}, "17:40"),
        ("day before, 9:00", {"days_before": 1}, "09:00"),
        ("2 days before 9 am", {"days_before": 2}, "09:00"),
        ("2026-11-27 9:00", {"date": "2026-11-27"}, "09:00"),
    ],
)
def test_a_moment_is_a_clock_time_and_perhaps_a_day(text: str, day: dict[str, object], clock: str) -> None:
    assert Moment.model_validate(parse_moment(text)) == Moment(day=Day.model_validate(day), clock=clock)


@pytest.mark.parametrize("text", ["17:30 - 22:00", "17:30–22:00", "17:30-22:00", "5:30 pm to 10 pm"])
def test_a_stretch_of_time_may_be_written_in_many_ways(text: str) -> None:
    assert parse_span(text) == {"start": "17:30", "end": "22:00"}


def test_several_stretches_stand_with_commas_between() -> None:
    assert len(parse_spans("9:00 - 13:00, 14:00 - 18:00, 7 pm - 8 pm")) == 3


@pytest.mark.parametrize(
    "text", ["sat 17:40 - 18:10", "saturday, 17:40 to 18:10", "2026-11-28 17:40–18:10", "17:40-18:10"]
)
def test_a_stretch_of_a_day_is_on_that_day(text: str) -> None:
    read = parse_day_span(text)
    day = Day.model_validate(read.get("day", {"days_before": 0}))

    assert (day.on(SATURDAY), read["start"], read["end"]) == (SATURDAY, "17:40", "18:10")


def test_a_stretch_that_ends_before_it_begins_ends_on_the_next_day() -> None:
    start, end = stretch(SATURDAY, Span(start="19:00", end="1:30"), BERLIN)

    assert end - start == timedelta(hours=6, minutes=30)


@settings(deadline=None)  # the first look at a zone reads a file
@given(st.text() | st.text("0123456789:-–, apmtodaysbeforfiu", max_size=25))
def test_whatever_is_written_is_read_or_refused_in_words(text: str) -> None:
    for read in (parse_clock, parse_date, parse_day, parse_moment, parse_span, parse_spans, parse_day_span, parse_zone):
        try:
            assert read(text)
        except ValueError as refused:
            assert str(refused)  # noqa: PT017  # both endings are right


@pytest.mark.parametrize(
    "name", ["", "Europe/Dublinn", "Europe", "zone.tab", "../etc/passwd", "/etc/localtime", "a\0b", "x" * 999]
)
def test_what_is_no_zone_is_refused(name: str) -> None:
    with pytest.raises(ValueError, match="is not a time zone"):
        parse_zone(name)


def test_a_clock_time_that_comes_twice_is_the_first_of_the_two() -> None:
    """Berlin's clocks go back from 3:00 to 2:00 on 25 October 2026."""
    assert is_odd(date(2026, 10, 25), "02:30", BERLIN) == "doubled"
    assert instant(date(2026, 10, 25), "02:30", BERLIN) == datetime(2026, 10, 25, 0, 30, tzinfo=UTC)


def test_a_clock_time_that_is_skipped_moves_past_the_gap() -> None:
    """Berlin's clocks go forward from 2:00 to 3:00 on 29 March 2026: 2:30 becomes 3:30, which is 1:30 UTC."""
    assert is_odd(date(2026, 3, 29), "02:30", BERLIN) == "skipped"
    assert instant(date(2026, 3, 29), "02:30", BERLIN) == datetime(2026, 3, 29, 1, 30, tzinfo=UTC)


def test_any_other_clock_time_is_plain() -> None:
    assert is_odd(SATURDAY, "02:30", BERLIN) is None


@pytest.mark.parametrize(("sunday", "the_day_before_at"), [(date(2026, 10, 25), "20:00"), (date(2026, 3, 29), "18:00")])
def test_a_day_of_elapsed_time_is_24_hours_whatever_the_clocks_do(sunday: date, the_day_before_at: str) -> None:
    """From zoneinfo: 24 h back from Sunday 19:00 in Berlin, over either clock change of 2026."""
    earlier = instant(sunday, "19:00", BERLIN) - timedelta(hours=24)

    assert earlier == instant(sunday - timedelta(1), the_day_before_at, BERLIN)
    assert earlier.astimezone(BERLIN).strftime("%a %H:%M") == f"Sat {the_day_before_at}"


@pytest.mark.parametrize(("clock", "small"), [("00:00", True), ("05:59", True), ("06:00", False), ("18:30", False)])
def test_the_small_hours_last_until_six(clock: str, small: bool) -> None:
    assert is_small_hours(clock) is small
