"""Lengths of time as a cook writes them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError

from board.plan.phrases.durations import (
    LONGEST_MINUTES,
    Attended,
    Attention,
    Spread,
    Takes,
    parse_attention,
    parse_minutes,
    parse_spread,
    short,
)

READERS = (parse_minutes, parse_spread, parse_attention)
TAKES = TypeAdapter(Takes)
ATTENDED = TypeAdapter(Attended)


@given(st.integers(0, LONGEST_MINUTES))
def test_what_the_program_writes_it_reads_again(minutes: int) -> None:
    assert parse_minutes(short(minutes)) == minutes


@pytest.mark.parametrize(
    ("text", "minutes"),
    [
        ("25 min", 25),
        ("25min", 25),
        ("25 minutes", 25),
        ("1 h", 60),
        ("1 h 30", 90),
        ("1 h 05", 65),
        ("1h30", 90),
        ("1 hour and 30 minutes", 90),
        ("1.5 h", 90),
        ("1,5 h", 90),
        ("½ h", 30),
        ("1½ h", 90),
        ("1 ½ h", 90),
        ("2 h. 15 min.", 135),
        ("2 days", 2880),
        ("1 day 6 h", 1800),
        ("1 week", 10080),
        ("0 min", 0),
        ("1,125 h", None),
        ("0,125 h", 8),
    ],
)
def test_a_length_of_time_may_be_written_in_many_ways(text: str, minutes: int | None) -> None:
    if minutes is None:
        with pytest.raises(ValueError, match="two ways"):
            parse_minutes(text)
    else:
        assert parse_minutes(text) == minutes


@pytest.mark.parametrize(
    ("text", "minutes"), [("PT1H30M", 90), ("PT45M", 45), ("P1D", 1440), ("P1DT6H", 1800), ("P1W", 10080), ("PT90S", 2)]
)
def test_iso_8601_durations_are_read(text: str, minutes: int) -> None:
    """ISO 8601-1:2019, 5.5.2: P, then days or weeks, then T and the time; from memory."""
    assert parse_minutes(text) == minutes


def test_a_part_of_a_minute_counts_as_a_whole_one() -> None:
    assert parse_minutes("61 s") == 2
    assert parse_minutes("0.1 h") == 6  # and not 7: floats must not tip a whole figure over


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("", "is missing"),
        ("   ", "is missing"),
        ("25", "write for example 25 min"),
        ("10 to 15", "write for example 10 to 15 min"),
        ("25 minuts", "Did you mean 'minutes'"),
        ("25 parsecs", "is not a unit of time"),
        ("soon", "is not a length of time"),
        ("1:30", "is not a length of time"),
        ("-5 min", "is not a length of time"),
        ("1 h to", "is not a length of time"),
        ("500 days", "longer than a year"),
        ("9" * 400 + " days", "longer than a year"),
        ("P1H", "ISO 8601"),
    ],
)
def test_what_is_no_length_of_time_says_so(text: str, says: str) -> None:
    with pytest.raises(ValueError, match=says):
        parse_minutes(text)


@given(st.text() | st.text("0123456789 .,½–-:PTHMDWhmindaysto", max_size=30))
def test_whatever_is_written_is_read_or_refused_in_words(text: str) -> None:
    for read in READERS:
        try:
            assert read(text) is not None
        except ValueError as refused:
            assert str(refused)  # noqa: PT017  # both endings are right


@pytest.mark.parametrize(
    ("text", "low", "likely", "high"),
    [
        ("25 min", 25, 25, 25),
        ("20 to 30 min", 20, 25, 30),
        ("20 to 25 min", 20, 23, 25),
        ("10 to 15 to 20 min", 10, 15, 20),
        ("10–15–20 min", 10, 15, 20),
        ("20-30 min", 20, 25, 30),
        ("45 min to 1 h 15", 45, 60, 75),
        ("1 h to 1 h 30", 60, 75, 90),
        ("2 h 30 to 2 h 45 to 3 h 15", 150, 165, 195),
        ("1½ to 2 h", 90, 105, 120),
        ("PT20M", 20, 20, 20),
    ],
)
def test_one_two_or_three_figures_make_low_likely_and_high(text: str, low: int, likely: int, high: int) -> None:
    assert TAKES.validate_python(text) == Spread(low=low, likely=likely, high=high)


@given(st.lists(st.integers(0, 3000), min_size=3, max_size=3).map(sorted))
def test_three_figures_in_order_are_read_as_written(figures: list[int]) -> None:
    text = " to ".join(short(minutes) for minutes in figures)

    assert list(parse_spread(text).values()) == figures


@pytest.mark.parametrize("text", ["30 to 20 min", "10 to 30 to 20 min", "20 to 15 to 30 min", "1 to 2 to 3 to 4 min"])
def test_figures_that_do_not_rise_or_are_too_many_are_refused(text: str) -> None:
    with pytest.raises(ValidationError, match=r"must rise|more than three"):
        TAKES.validate_python(text)


def test_the_long_form_takes_phrases_and_whole_minutes() -> None:
    assert TAKES.validate_python({"low": "5 min", "likely": 6, "high": "1 h"}) == Spread(low=5, likely=6, high=60)


@pytest.mark.parametrize(
    "value", [{"low": -1, "likely": 6, "high": 9}, {"low": True, "likely": 6, "high": 9}, True, None]
)
def test_a_long_form_with_no_length_of_time_in_it_is_refused(value: object) -> None:
    with pytest.raises(ValidationError):
        TAKES.validate_python(value)


@pytest.mark.parametrize(
    ("text", "attention"),
    [
        ("all", Attention(whole=True)),
        ("The whole time", Attention(whole=True)),
        ("none", Attention()),
        ("3 min at the start", Attention(start=3)),
        ("2 min at the end", Attention(end=2)),
        ("1 min every 15", Attention(every=15, look=1)),
        ("1 min every ½ h", Attention(every=30, look=1)),
        ("3 min at the start, 1 min every 15 min, 2 min at the end", Attention(start=3, every=15, look=1, end=2)),
        ("3 min to start and 2 min to end", Attention(start=3, end=2)),
    ],
)
def test_which_part_needs_hands_is_read_in_pieces(text: str, attention: Attention) -> None:
    assert ATTENDED.validate_python(text) == attention


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("3 min", "which part needs hands"),
        ("", "which part needs hands"),
        ("3 min at the start,", "which part needs hands"),
        ("1 min every 0 min", "is not possible"),
        ("1 min every 5 min, 2 min every 9 min", "same part twice"),
        ("3 at the start", "has no unit"),
    ],
)
def test_attention_that_cannot_be_told_is_refused(text: str, says: str) -> None:
    with pytest.raises(ValueError, match=says):
        parse_attention(text)
