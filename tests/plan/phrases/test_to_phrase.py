"""What is said of a station or a keeping reads back as the very same."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.plan.phrases.stations import Keep, Station, parse_keep, parse_station
from board.plan.phrases.to_phrase import keep_text, station_text

TEXTS = [
    "oven at 200 C (190 to 210 C), 1 shelf, 2 roasting tin",
    "stovetop, 2 rings, big pot",
    "fridge, 4.5 litres",
    "oven off, door ajar",
    "oven off",
    "small oven at 107.5 C (100 to 110 C)",
    "worktop",
    "front-of-house",
]


@pytest.mark.parametrize("text", TEXTS)
def test_a_station_reads_back(text: str) -> None:
    station = Station.model_validate(parse_station(text))

    assert Station.model_validate(parse_station(station_text(station))) == station


@given(
    st.integers(1, 3 * 24 * 60),
    st.sampled_from(["room", "hot", "fridge", "freezer", "stovetop"]),
    st.one_of(st.none(), st.integers(1, 200)),
)
def test_a_keeping_reads_back(minutes: int, place: str, tenths: int | None) -> None:
    room = place in ("fridge", "freezer") and tenths is not None
    where = Station(place=place, litres=tenths / 10 if room and tenths else None)  # type: ignore[arg-type]
    keep = Keep(minutes=minutes, where=where)

    assert Keep.model_validate(parse_keep(keep_text(keep))) == keep
