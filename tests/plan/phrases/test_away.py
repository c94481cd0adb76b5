"""When somebody is away, in a host's words: by the clock, by what happens, or only for how long."""

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError

from board.plan.model.hands import Hand
from board.plan.phrases.away import Away, Happening, parse_away

FRI = {"weekday": "fri"}


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("17:25 - 17:55", {"start": "17:25", "end": "17:55"}),
        ("sat 5:40 pm to 6:10 pm", {"day": {"weekday": "sat"}, "start": "17:40", "end": "18:10"}),
        ("10 min from guests arrive", {"length": 10, "from": {"event": "guests arrive"}}),
        ("25 min before guests arrive", {"length": 25, "before": {"event": "guests arrive"}}),
        ("25 min until Main served", {"length": 25, "before": {"event": "Main served"}}),
        ("1 h 30 from Main served", {"length": 90, "from": {"event": "Main served"}}),
        ("25 min from 1 h before guests arrive", {"length": 25, "from": {"event": "guests arrive", "minutes": -60}}),
        ("25 min before 20 min before guests arrive", {"length": 25, "before": {"event": "guests arrive",
                                                                                  "minutes": -20}}),
        ("5 min from 10 min after Soup cleared", {"length": 5, "from": {"event": "Soup cleared", "minutes": 10}}),
        ("30 min", {"length": 30}),
        ("PT30M", {"length": 30}),
        ("fri, 30 min", {"day": FRI, "length": 30}),
        ("friday 30 min", {"day": FRI, "length": 30}),
        ("30 min on Friday", {"day": FRI, "length": 30}),
        ("day before, 45 min", {"day": {"days_before": 1}, "length": 45}),
        ("45 min the day before", {"day": {"days_before": 1}, "length": 45}),
        ("45 min on the day", {"day": {"days_before": 0}, "length": 45}),
    ],
)  # fmt: skip
def test_a_time_away_is_read(text: str, read: dict[str, Any]) -> None:
    assert parse_away(text) == read
    assert Away.model_validate(parse_away(text))


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("soon", "'soon' is no time away"),
        ("20 to 30 min", "'20 to 30 min' is no time away"),
        ("30", "'30' is no time away: '30' has no unit; write for example"),
        ("0 min", "a time away of 0 min is none; write"),
        ("10 min after guests arrive", "can be read in two ways; write 10 min from guests arrive"),
        ("2 days before", "'2 days before' is no time away"),
        ("ten from guests arrive", "'ten from guests arrive' is no time away"),
        ("30 min on Blursday", "'Blursday' is not a day"),
        ("10 min from 3 days after Main served", "is more than a day off"),
        ("17:40 - 18:70", "not a time of day"),
    ],
)  # fmt: skip
def test_what_cannot_be_read_is_told_once_with_a_line_to_write(text: str, said: str) -> None:
    with pytest.raises(ValidationError) as wrong:
        TypeAdapter(Hand).validate_python({"hours": {}, "away": {"dress": text}})

    (only,) = wrong.value.errors()
    assert said in str(only["ctx"]["error"])
    assert "; " in str(only["ctx"]["error"])


@pytest.mark.parametrize(
    "long",
    [
        {"start": "17:40"}, {"length": 10, "start": "17:40", "end": "18:00"}, {},
        {"length": 10, "from": "guests arrive", "before": "guests arrive"},
        {"length": 10, "day": "fri", "from": "guests arrive"},
    ],
)  # fmt: skip
def test_a_long_form_says_it_in_one_way_only(long: dict[str, Any]) -> None:
    with pytest.raises(ValidationError, match="a time away is"):
        Away.model_validate(long)


def test_the_long_form_says_the_same() -> None:
    long = {"length": "10 min", "from": "5 min after guests arrive"}

    assert Away.model_validate(long).from_ == Happening(event="guests arrive", minutes=5)


@settings(deadline=None)
@given(st.text() | st.text("0123456789:-, minhoursfrombeforeguestsarrivefri", max_size=40))
def test_whatever_is_written_is_read_or_refused_in_words(text: str) -> None:
    try:
        assert parse_away(text)
    except ValueError as refused:
        assert str(refused)  # noqa: PT017  # both endings are right
